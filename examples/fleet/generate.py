"""Readings of a fleet of INVENTED appliances over years, to Parquet, with the truth beside them.

    python examples/fleet/generate.py FOLDER [--appliances 3000] [--years 5] [--seed 1]

Each appliance burns G20 and is read once a day by an analyser of its own. Most keep their CO/CO2 ratio; some drift.
Readings have the noise and the steps of an instrument, a calibration error that is drawn anew each year, gaps, missing
values and rows that cannot be. A file holds all rows of some appliances, in order of time.
"""

from __future__ import annotations

import argparse
from pathlib import Path

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

DAYS_A_YEAR = 365.25
FIRST_DAY = np.datetime64("2021-01-01", "s")
APPLIANCES_A_FILE = 100
#: What one year's calibration leaves, standard uncertainty of the gain of the CO cell (invented).
CALIBRATION = 0.02
#: Scatter of an appliance from day to day, as a fraction of its CO/CO2 ratio (invented).
SCATTER = 0.25
#: Share of appliances that drift (invented).
DRIFTING = 0.08


def field(name: str, kind: pa.DataType, unit: str = "") -> pa.Field:
    return pa.field(name, kind, metadata={"unit": unit} if unit else None)


SCHEMA = pa.schema(
    [
        field("appliance", pa.int32()),
        field("time", pa.timestamp("s", "UTC")),
        field("oxygen_dry", pa.float64(), "%"),
        field("carbon_monoxide_dry", pa.float64(), "ppm"),
        field("flue_temperature", pa.float64(), "degC"),
        field("air_temperature", pa.float64(), "degC"),
    ]
)


def carbon_dioxide_of_methane(oxygen: np.ndarray, ratio: np.ndarray) -> np.ndarray:
    """CO2 in dry flue gas (mol/mol) by the balance of CH4 + 2 O2 in air of 20.95 % O2 and 0.04 % CO2, for CO = ratio CO2."""
    dry_air = 2.0 / 0.2095
    stoichiometric = dry_air * (1 - 0.2095) + 1.0
    carbon_dioxide = np.full_like(oxygen, 0.1)
    for _ in range(4):  # CO is some 1e-3 of CO2: each round gains three digits
        monoxide = ratio * carbon_dioxide
        surplus = oxygen - 0.5 * monoxide
        flue = stoichiometric / (1 - 0.5 * monoxide - surplus / 0.2095)
        carbon_dioxide = (1.0 + (1.0 + flue * surplus / 2.0) * dry_air * 0.0004) / flue - monoxide
    return carbon_dioxide


def fleet(appliances: int, seed: int) -> pa.Table:
    """The truth: CO/CO2 ratio of each appliance at mid-time, and its drift a year."""
    draw = np.random.default_rng(seed)
    drifts = draw.random(appliances) < DRIFTING
    ratio = draw.uniform(4e-4, 1.2e-3, appliances)
    # Up to what leaves the ratio positive from the first day on; down to what no rule can find.
    drift = np.where(drifts, draw.uniform(0.02, 0.25, appliances) * ratio, 0.0)
    return pa.table({"appliance": pa.array(np.arange(appliances), pa.int32()), "ratio": ratio, "drift_per_year": drift})


def readings(appliance: int, ratio: float, drift: float, years: float, seed: int) -> pa.Table:
    """All readings of one appliance."""
    draw = np.random.default_rng([seed, appliance])
    day = np.arange(int(years * DAYS_A_YEAR))
    # Gaps: single days, and one stretch of months in which nobody read.
    start = draw.integers(0, len(day))
    day = day[(draw.random(len(day)) > 0.03) & ~((day >= start) & (day < start + draw.integers(0, 120)))]
    year = day / DAYS_A_YEAR - years / 2
    real = (ratio + drift * year) * (1 + SCATTER * draw.standard_normal(len(day)))
    gain = 1 + CALIBRATION * draw.standard_normal(int(years) + 2)[(day / DAYS_A_YEAR).astype(int)]
    oxygen = draw.uniform(0.04, 0.06) + 0.004 * draw.standard_normal(len(day))
    monoxide = real * carbon_dioxide_of_methane(oxygen, real) * gain * 1e6 + 2.0 * draw.standard_normal(len(day))
    season = np.cos(2 * np.pi * day / DAYS_A_YEAR)
    flue = draw.uniform(80, 190) + 6 * draw.standard_normal(len(day))
    air = 12 - 8 * season + 2 * draw.standard_normal(len(day))
    columns = [oxygen * 100, np.maximum(monoxide, 0.0), flue, air]
    columns = [np.round(column, digits) for column, digits in zip(columns, (1, 0, 0, 0), strict=True)]
    # What cannot be: a cell fallen out, a probe not plugged in. What is not there: nulls.
    fault = draw.random(len(day))
    columns[0][fault < 0.002] = 25.0
    columns[2][(fault > 0.002) & (fault < 0.004)] = -999.0
    missing = (fault > 0.004) & (fault < 0.01)
    time = FIRST_DAY + (day * 86400 + draw.integers(0, 86400)).astype("timedelta64[s]")
    arrays = [pa.array(np.full(len(day), appliance), pa.int32()), pa.array(time).cast(SCHEMA.field("time").type)]
    arrays += [pa.array(column, mask=missing if i == 1 else None) for i, column in enumerate(columns)]
    return pa.Table.from_arrays(arrays, schema=SCHEMA)


def write(folder: Path, appliances: int, years: float, seed: int = 1) -> int:
    """Writes the files and ``truth.parquet``; gives the number of rows."""
    (folder / "readings").mkdir(parents=True, exist_ok=True)
    truth = fleet(appliances, seed)
    pq.write_table(truth, folder / "truth.parquet")
    rows = 0
    for first in range(0, appliances, APPLIANCES_A_FILE):
        some = truth.slice(first, APPLIANCES_A_FILE).to_pylist()
        table = pa.concat_tables(readings(a["appliance"], a["ratio"], a["drift_per_year"], years, seed) for a in some)
        pq.write_table(table, folder / "readings" / f"appliances-{first:06}.parquet")
        rows += table.num_rows
    return rows


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--appliances", type=int, default=3000)
    parser.add_argument("--years", type=float, default=5)
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    print(f"{write(given.folder, given.appliances, given.years, given.seed)} rows in {given.folder}")
