"""The same sums on Spark, by ``mapInArrow``; needs pyspark and a Java runtime (Debian: default-jre-headless).

    python examples/fleet/on_spark.py FOLDER

Spark hands each task an iterator of Arrow record batches, which is what the call takes. The results are those of one
machine to the last bit, which is asserted.
"""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import find_drift
import pyarrow as pa


def sums_of_task(batches: Iterator[pa.RecordBatch]) -> Iterator[pa.RecordBatch]:
    yield from find_drift.sums(find_drift.analysed(batches)).to_batches()


def on_spark(folder: Path, workers: int = 2) -> pa.Table:
    """The sums of all files."""
    from pyspark.sql import SparkSession

    os.environ["PYSPARK_PYTHON"] = sys.executable
    session = (
        SparkSession.builder.master(f"local[{workers}]")
        .appName("fleet")
        .config("spark.ui.enabled", "false")
        .config("spark.sql.session.timeZone", "UTC")
        .config("spark.executorEnv.RAYON_NUM_THREADS", "1")
        # A file holds all rows of its appliances, in order: it must not be cut.
        .config("spark.sql.files.minPartitionNum", "1")
        .config("spark.sql.files.maxPartitionBytes", str(1 << 40))
        .config("spark.sql.files.openCostInBytes", str(1 << 40))
        .getOrCreate()
    )
    try:
        session.sparkContext.addPyFile(find_drift.__file__)  # the workers import it
        readings = session.read.parquet(str(folder / "readings")).select(*find_drift.READ)
        shape = "appliance int, " + ", ".join(f"{name} double" for name in find_drift.SUMS)
        found = readings.mapInArrow(sums_of_task, shape).toArrow()
    finally:
        session.stop()
    return found.cast(find_drift.SUMS_SCHEMA)


def main() -> None:
    folder = Path(sys.argv[1])
    start = time.perf_counter()
    found = on_spark(folder)
    took = time.perf_counter() - start
    here = find_drift.on_one_machine(folder)
    assert found.sort_by("appliance").equals(here.sort_by("appliance")), "the same to the last bit"
    print(f"{found.num_rows} appliances on Spark in {took:.1f} s, its start included; the same to the last bit as one machine")


if __name__ == "__main__":
    main()
