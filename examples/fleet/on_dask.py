"""The same sums on Dask distributed, a local cluster of two workers, one partition a file.

    python examples/fleet/on_dask.py FOLDER

Each worker lays the same call over its partition; the results are those of one machine to the last bit, which is
asserted. A cluster of many machines differs only in the address that ``Client`` is given.
"""

from __future__ import annotations

import sys
import time
from pathlib import Path

import dask
import dask.dataframe as dd
import find_drift
import pandas as pd
import pyarrow as pa
from dask.distributed import Client, LocalCluster


def sums_of_partition(frame: pd.DataFrame) -> pd.DataFrame:
    return find_drift.sums(find_drift.analysed(frame)).to_pandas()


def on_dask(folder: Path, workers: int = 2) -> pa.Table:
    """The sums of all files. The workers must be able to import this module."""
    here = str(Path(__file__).parent)
    with (
        # Each worker is one process with one thread: the column loop then has the core to itself.
        dask.config.set({"distributed.nanny.pre-spawn-environ.RAYON_NUM_THREADS": "1"}),
        LocalCluster(n_workers=workers, threads_per_worker=1, dashboard_address=None) as cluster,
        Client(cluster) as client,
    ):
        client.run(lambda: sys.path.insert(0, here))
        readings = dd.read_parquet(folder / "readings", columns=find_drift.READ, aggregate_files=False, split_row_groups=False)
        found = readings.map_partitions(sums_of_partition, meta=find_drift.SUMS_SCHEMA.empty_table().to_pandas()).compute()
    return pa.Table.from_pandas(found, schema=find_drift.SUMS_SCHEMA, preserve_index=False)


def main() -> None:
    folder = Path(sys.argv[1])
    start = time.perf_counter()
    found = on_dask(folder)
    took = time.perf_counter() - start
    here = find_drift.on_one_machine(folder)
    assert find_drift.decide(found).equals(find_drift.decide(here)), "the same to the last bit"
    assert found.sort_by("appliance").equals(here.sort_by("appliance")), "the same to the last bit"
    print(f"{found.num_rows} appliances on two workers in {took:.1f} s, start of the cluster included; the same to the last bit as one machine")


if __name__ == "__main__":
    main()
