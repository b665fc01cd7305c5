"""A year of a fleet's flue readings from Parquet through a flue analysis back to Parquet, batch by batch.

    python benches/python/arrow_stream.py [rows]

Readings are invented. Prints the largest memory in use at any time, and the time a row of reading alone, of
reading and computing, and of NumPy arrays of the same readings through the same calculation.
"""

import resource
import sys
import tempfile
import time
from pathlib import Path

import flamewright as fw
import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq

ROWS = int(float(sys.argv[1])) if len(sys.argv) > 1 else 10_000_000
BATCH = 131_072
FIELDS = {"oxygen_dry": ("%", 2.0, 8.0), "carbon_monoxide_dry": ("ppm", 0.0, 200.0), "flue_temperature": ("degC", 45.0, 90.0), "air_temperature": ("degC", 5.0, 25.0)}
SCHEMA = pa.schema([pa.field("appliance", pa.int32()), *(pa.field(n, pa.float64(), metadata={"unit": unit}) for n, (unit, _, _) in FIELDS.items())])


def peak() -> float:
    """The largest memory in use so far, MB."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def readings(draw: np.random.Generator, rows: int) -> pa.RecordBatch:
    columns = [draw.integers(0, 5000, rows, dtype=np.int32), *(draw.uniform(low, high, rows) for _, low, high in FIELDS.values())]
    return pa.record_batch(columns, schema=SCHEMA)


def reader(source: Path) -> pa.RecordBatchReader:
    # A scanner of pyarrow's dataset reads ahead of a consumer that is slower than it, up to the whole
    # file: nearly 1 GB for ten million rows where it was tried. This keeps to what is asked for.
    file = pq.ParquetFile(source, pre_buffer=False)
    return pa.RecordBatchReader.from_batches(file.schema_arrow, file.iter_batches(batch_size=BATCH))


def main() -> None:
    draw = np.random.default_rng(1)
    with tempfile.TemporaryDirectory() as folder:
        source, result = Path(folder, "readings.parquet"), Path(folder, "results.parquet")
        with pq.ParquetWriter(source, SCHEMA, compression="zstd") as writer:
            for first in range(0, ROWS, BATCH):
                writer.write_batch(readings(draw, min(BATCH, ROWS - first)), row_group_size=BATCH)
        before = peak()

        started = time.perf_counter()
        read = sum(batch.num_rows for batch in reader(source))
        reading = (time.perf_counter() - started) / ROWS

        started = time.perf_counter()
        laid = pa.RecordBatchReader.from_stream(fw.flue_analysis.over(reader(source), fuel="G20", outputs=["efficiency_net", "carbon_monoxide_ratio", "excess_air"]))
        written = good = 0
        with pq.ParquetWriter(result, laid.schema, compression="zstd") as writer:
            for batch in laid:
                writer.write_batch(batch, row_group_size=BATCH)
                written += batch.num_rows
                good += batch.num_rows - batch.column("efficiency_net").null_count
        whole = (time.perf_counter() - started) / ROWS
        after = peak()
        assert read == written == ROWS == pq.ParquetFile(result).metadata.num_rows
        assert good == ROWS
        print(f"{ROWS} rows: largest memory {after:.0f} MB ({before:.0f} MB before the readings were read)")
        print(f"reading alone {1e9 * reading:.0f} ns a row; reading, computing, writing {1e9 * whole:.0f} ns a row")

    batch = readings(draw, 1_000_000)
    arrays = {n: (batch.column(n).to_numpy(), unit) for n, (unit, _, _) in FIELDS.items()}
    ways = {
        "arrays": lambda: fw.flue_analysis(fuel="G20", **arrays),
        "Arrow": lambda: pa.RecordBatchReader.from_stream(fw.flue_analysis.over(batch, fuel="G20")).read_all(),
        "Arrow, SI": lambda: pa.RecordBatchReader.from_stream(fw.flue_analysis.over(batch, fuel="G20", output_units="si")).read_all(),
        "Arrow, 3 results": lambda: pa.RecordBatchReader.from_stream(fw.flue_analysis.over(batch, fuel="G20", outputs=["efficiency_net", "carbon_monoxide_ratio", "excess_air"])).read_all(),
    }
    times = {name: [] for name in ways}
    for _ in range(9):
        for name, way in ways.items():
            started = time.perf_counter()
            way()
            times[name].append(time.perf_counter() - started)
    base = np.median(times["arrays"])
    for name, taken in times.items():
        print(f"{name:<17} {1e3 * np.median(taken):6.1f} ns a row, {np.median(taken) / base:.2f} of arrays")


if __name__ == "__main__":
    main()
