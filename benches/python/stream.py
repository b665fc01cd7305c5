"""Peak memory of a flue analysis streamed from Parquet to Parquet, ten million INVENTED rows, in a process of its own.

Needs the built wheel, numpy and pyarrow.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from pathlib import Path

ROWS = 10_000_000
GOAL = 300e6
WRITE = """
import sys, numpy as np, pyarrow as pa, pyarrow.parquet as pq
rows, draw = int(sys.argv[2]), np.random.default_rng(1)
columns = {"oxygen_dry": (2, 11, "%"), "carbon_monoxide_dry": (0, 500, "ppm"), "flue_temperature": (60, 210, "degC"), "air_temperature": (10, 30, "degC")}
schema = pa.schema([pa.field(n, pa.float64(), metadata={"unit": u}) for n, (_, _, u) in columns.items()])
with pq.ParquetWriter(sys.argv[1], schema) as out:
    for start in range(0, rows, 1 << 17):
        n = min(1 << 17, rows - start)
        out.write_table(pa.table([np.round(draw.uniform(a, b, n), 1) for a, b, _ in columns.values()], schema=schema))
"""
STREAM = """
import json, sys, time, resource
import flamewright as fw, pyarrow as pa, pyarrow.parquet as pq
started = time.perf_counter()
batches = pq.ParquetFile(sys.argv[1]).iter_batches(batch_size=1 << 16)
results = pa.RecordBatchReader.from_stream(fw.flue_analysis.over(batches, fuel="G20"))
rows = 0
with pq.ParquetWriter(sys.argv[2], results.schema, compression=None, use_dictionary=False) as out:
    for batch in results:
        out.write_batch(batch)
        rows += batch.num_rows
print(json.dumps([rows, time.perf_counter() - started, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024]))
"""


def main() -> None:
    from timing import Comparison, finish

    with tempfile.TemporaryDirectory() as folder:
        given, made = (str(Path(folder) / name) for name in ("readings.parquet", "results.parquet"))
        subprocess.run([sys.executable, "-c", WRITE, given, str(ROWS)], check=True)
        done = subprocess.run([sys.executable, "-c", STREAM, given, made], check=True, capture_output=True, text=True)
    rows, seconds, peak = json.loads(done.stdout)
    assert rows == ROWS
    note = f"{rows / seconds / 1e6:.2f} million rows a second, all 20 results and the readings written uncompressed; pyarrow itself included in the memory."
    finish([Comparison("peak memory, Parquet to Parquet, 10 million rows", "the goal itself", peak, None, "below", GOAL, "B", note)])


if __name__ == "__main__":
    main()
