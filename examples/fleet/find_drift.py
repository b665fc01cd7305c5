"""Finds, among millions of readings, the appliances whose CO/CO2 ratio drifts, with uncertainty.

    python examples/fleet/find_drift.py FOLDER

FOLDER is what ``generate.py`` wrote. Readings are streamed batch by batch through the flue analysis; of each appliance
six sums are kept, however many readings it has. The slope of a straight line through its ratios, the standard
uncertainty of that slope and the decision go to ``FOLDER/drift.parquet``.

The policy is INVENTED, for this example only: an appliance counts as drifting where its ratio is shown to rise by more
than ALLOWED a year. The slope must exceed that by as many standard uncertainties as leave a chance of FALSE_ALARM or
less that an appliance which does not drift faster is named (normal distribution, one-sided; JCGM 106:2012, 8.3.2, a
guard band). That holds for each appliance: among 3000 one expects up to 3000 FALSE_ALARM such names.
"""

from __future__ import annotations

import argparse
import resource
import statistics
import time
from collections.abc import Iterable
from pathlib import Path
from typing import Any

import flamewright as fw
import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

ALLOWED = 2e-5  # a year; invented
FALSE_ALARM = 1e-3  # for each appliance that does not drift faster than ALLOWED
#: Standard uncertainty of the analyser's gain from one yearly calibration to the next (invented).
CALIBRATION = 0.02
FIRST_DAY = np.datetime64("2021-01-01", "s")
SECONDS_A_YEAR = 365.25 * 86400
UNITS = {"oxygen_dry": "%", "carbon_monoxide_dry": "ppm", "flue_temperature": "degC", "air_temperature": "degC"}
READ = ["appliance", "time", *UNITS]
SUMS = ["accepted", "refused", "t", "tt", "r", "tr", "rr"]
SUMS_SCHEMA = pa.schema([pa.field("appliance", pa.int32()), *(pa.field(name, pa.float64()) for name in SUMS)])


def analysed(table: Any) -> pa.RecordBatchReader:
    """The CO/CO2 ratio and the status of every reading of anything that hands over Arrow data, as a stream."""
    laid = fw.flue_analysis.over(
        table, fuel="G20", units=UNITS, outputs=["carbon_monoxide_ratio"], output_units="si", keep=["appliance", "time"], reasons=False
    )
    return pa.RecordBatchReader.from_stream(laid)


def sums(batches: Iterable[pa.RecordBatch]) -> pa.Table:
    """Sums over each appliance's accepted readings: times in years from the first day, ratios.

    Row by row in the order of the rows, so that it does not matter to the last bit how the stream was cut.
    """
    total = np.zeros((len(SUMS), 0))
    for batch in batches:
        appliance = batch["appliance"].to_numpy()
        if len(appliance) == 0:
            continue
        if (longest := int(appliance.max()) + 1) > total.shape[1]:
            total = np.pad(total, ((0, 0), (0, longest - total.shape[1])))
        fine = batch["status"].to_numpy() < 256  # 256 and more: refused
        year = (batch["time"].cast(pa.timestamp("s")).to_numpy() - FIRST_DAY).astype(float) / SECONDS_A_YEAR
        ratio = batch["carbon_monoxide_ratio"].to_numpy(zero_copy_only=False)
        np.add.at(total[1], appliance[~fine], 1.0)
        appliance, t, r = appliance[fine], year[fine], ratio[fine]
        for place, values in {0: np.ones_like(t), 2: t, 3: t * t, 4: r, 5: t * r, 6: r * r}.items():
            np.add.at(total[place], appliance, values)
    there = np.flatnonzero(total[0] + total[1])
    return pa.Table.from_arrays([pa.array(there, pa.int32()), *(pa.array(row[there]) for row in total)], schema=SUMS_SCHEMA)


def decide(found: pa.Table) -> pa.Table:
    """Slope, its standard uncertainty and the decision for each appliance, from :func:`sums`."""
    found = found.sort_by("appliance")
    n, refused, t, tt, r, tr, rr = (found[name].to_numpy() for name in SUMS)
    with np.errstate(divide="ignore", invalid="ignore"):
        spread = tt - t * t / n
        slope = (tr - t * r / n) / spread
        residual = np.maximum(rr - r * r / n - slope**2 * spread, 0.0) / (n - 2)
        # A gain drawn anew each year moves the yearly means: the variance of the slope of `years` equally spaced points.
        years = np.sqrt(12 * spread / n)
        calibration = CALIBRATION * (r / n) * np.sqrt(12 / (years * (years**2 - 1)))
        standard = np.sqrt(residual / spread + calibration**2)
    guard = statistics.NormalDist().inv_cdf(1 - FALSE_ALARM)
    enough = (n >= 100) & (years > 1.5)  # the normal distribution, and more than one calibration
    drifting = enough & (slope - guard * standard > ALLOWED)
    columns = {
        "appliance": (found["appliance"], ""),
        "readings": (n.astype(int), ""),
        "refused": (refused.astype(int), ""),
        "carbon_monoxide_ratio_mean": (r / n, "1"),
        "drift": (slope, "1/year"),
        "drift_standard_uncertainty": (standard, "1/year"),
        "enough_readings": (enough, ""),
        "drifting": (drifting, ""),
    }
    arrays = [column if isinstance(column, pa.ChunkedArray) else pa.array(column) for column, _ in columns.values()]
    fields = [pa.field(name, array.type, metadata={"unit": unit}) for (name, (_, unit)), array in zip(columns.items(), arrays, strict=True)]
    policy = {
        "policy": "INVENTED for this example",
        "allowed": f"{ALLOWED} 1/year",
        "false_alarm": f"{FALSE_ALARM} an appliance",
        "calculation": f"flamewright {fw.__version__}: flue_analysis of G20",
    }
    return pa.Table.from_arrays(arrays, schema=pa.schema(fields, metadata=policy))


def on_one_machine(folder: Path) -> pa.Table:
    """The sums of all files, streamed: one batch is in memory at a time."""
    files = sorted((folder / "readings").glob("*.parquet"))
    return sums(analysed(batch for file in files for batch in pq.ParquetFile(file).iter_batches(columns=READ)))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    folder = parser.parse_args().folder
    start = time.perf_counter()
    found = decide(on_one_machine(folder))
    pq.write_table(found, folder / "drift.parquet")
    took = time.perf_counter() - start
    rows = int(np.sum(found["readings"]) + np.sum(found["refused"]))
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024 / 1e6
    named = found.filter(found["drifting"])
    print(f"{rows} readings of {found.num_rows} appliances in {took:.1f} s: {rows / took / 1e6:.2f} million a second, peak memory {peak:.0f} MB")
    print(f"{np.sum(found['refused'])} readings refused; {named.num_rows} appliances drift by more than {ALLOWED} a year, the quickest of them:")
    for row in named.sort_by([("drift", "descending")]).slice(0, 5).to_pylist():
        print(
            f"  appliance {row['appliance']:5}  mean CO/CO2 {row['carbon_monoxide_ratio_mean']:.6f}  "
            f"drift ({row['drift'] * 1e6:.1f} ± {row['drift_standard_uncertainty'] * 1e6:.1f}) × 10⁻⁶ a year (standard uncertainty)"
        )
    truth = pq.read_table(folder / "truth.parquet").sort_by("appliance")
    print(check(found, truth))


def check(found: pa.Table, truth: pa.Table) -> str:
    """Names against the truth that the generator knows."""
    really = truth["drift_per_year"].to_numpy() > ALLOWED
    named = found["drifting"].to_numpy()
    return (
        f"against the truth: {np.sum(really & named)} of {np.sum(really)} that drift faster than allowed were named; "
        f"{np.sum(named & ~really)} of {np.sum(~really)} others were named falsely (expected at most {np.sum(~really) * FALSE_ALARM:.1f})"
    )


if __name__ == "__main__":
    main()
