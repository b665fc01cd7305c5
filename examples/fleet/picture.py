"""Draws what ``find_drift.py`` found: ``python examples/fleet/picture.py FOLDER``."""

from __future__ import annotations

import sys
from pathlib import Path

import find_drift
import matplotlib
import numpy as np
import pyarrow as pa
import pyarrow.compute as pc
import pyarrow.dataset as ds
import pyarrow.parquet as pq

matplotlib.use("Agg")
import matplotlib.pyplot as plt


def main() -> None:
    folder = Path(sys.argv[1])
    found = pq.read_table(folder / "drift.parquet").sort_by("appliance")
    truth = pq.read_table(folder / "truth.parquet").sort_by("appliance")["drift_per_year"].to_numpy() * 1e6
    slope, standard = found["drift"].to_numpy() * 1e6, found["drift_standard_uncertainty"].to_numpy() * 1e6
    named = found["drifting"].to_numpy()
    figure, (left, right) = plt.subplots(1, 2, figsize=(11, 4.2), constrained_layout=True)

    allowed = find_drift.ALLOWED * 1e6
    for which, colour, label in ((~named, "0.55", "not shown to drift"), (named, "tab:red", "named as drifting")):
        left.errorbar(truth[which], slope[which], 2 * standard[which], fmt=".", ms=3, lw=0.5, color=colour, label=f"{label} ({which.sum()})")
    left.axline((0, 0), slope=1, lw=0.8, color="tab:blue", label="found = true")
    left.axvline(allowed, lw=0.8, ls="--", color="k", label="allowed (invented policy)")
    left.set(xlabel="true drift of CO/CO₂, 10⁻⁶ a year", ylabel="drift found ± 2 standard uncertainties, 10⁻⁶ a year")
    left.legend(fontsize=8, loc="upper left")
    left.set_title(f"{len(named)} invented appliances, {int(np.sum(found['readings']))} readings", fontsize=10)

    # The one nearest to the limit of what is found: a fair example, not the best.
    nearest = int(np.argmin(np.where(named, slope, np.inf)))
    rows = ds.dataset(folder / "readings").to_table(filter=pc.field("appliance") == nearest, columns=find_drift.READ)
    one = pa.Table.from_batches(find_drift.analysed(rows))
    years = (one["time"].cast(pa.timestamp("s")).to_numpy() - find_drift.FIRST_DAY).astype(float) / find_drift.SECONDS_A_YEAR
    right.plot(years, one["carbon_monoxide_ratio"].to_numpy() * 1e6, ".", ms=2, color="0.55", label="readings")
    mean, middle = found["carbon_monoxide_ratio_mean"][nearest].as_py() * 1e6, years[one["status"].to_numpy() < 256].mean()
    ends = np.array([years.min(), years.max()])
    right.plot(ends, mean + slope[nearest] * (ends - middle), color="tab:red", label=f"drift ({slope[nearest]:.1f} ± {standard[nearest]:.1f}) × 10⁻⁶ a year")
    right.set(xlabel="years", ylabel="CO/CO₂, 10⁻⁶")
    right.set_title(f"appliance {nearest}: the slowest drift that was named", fontsize=10)
    right.legend(fontsize=8, loc="upper left")
    figure.savefig(Path(__file__).parent.parent / "pictures" / "fleet_drift.png", dpi=110)


if __name__ == "__main__":
    main()
