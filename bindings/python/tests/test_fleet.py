"""The fleet example at small size: what is found against what the generator knows, on one machine and on a cluster."""

import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

pa = pytest.importorskip("pyarrow")
pq = pytest.importorskip("pyarrow.parquet")
EXAMPLE = Path(__file__).resolve().parents[3] / "examples" / "fleet"
sys.path.insert(0, str(EXAMPLE))

import find_drift
import generate


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    folder = tmp_path_factory.mktemp("fleet")
    generate.write(folder, appliances=250, years=4, seed=3)
    return folder


@pytest.fixture(scope="module")
def found(folder):
    return find_drift.decide(find_drift.on_one_machine(folder))


def test_no_reading_is_lost(folder, found):
    written = pq.read_table(folder / "readings")
    counted = written.group_by("appliance").aggregate([([], "count_all")]).sort_by("appliance")["count_all"].to_numpy()
    assert np.array_equal(found["readings"].to_numpy() + found["refused"].to_numpy(), counted)
    missing = written["carbon_monoxide_dry"].null_count
    cannot_be = np.sum((written["oxygen_dry"].to_numpy() > 20.9) | (written["flue_temperature"].to_numpy() < -20))
    assert np.sum(found["refused"]) == missing + cannot_be > 0


def test_slopes_are_the_truth_within_their_uncertainty(folder, found):
    truth = pq.read_table(folder / "truth.parquet").sort_by("appliance")
    off = (found["drift"].to_numpy() - truth["drift_per_year"].to_numpy()) / found["drift_standard_uncertainty"].to_numpy()
    # Mean square of 250 normal deviates: 1 within 0.45 (five standard deviations), and a stated uncertainty is no padding.
    assert abs(np.mean(off**2) - 1) < 0.45
    assert np.max(np.abs(off)) < 5
    assert np.allclose(found["carbon_monoxide_ratio_mean"], truth["ratio"], rtol=0.05)


def test_who_drifts_is_named_and_nobody_else(folder, found):
    truth = pq.read_table(folder / "truth.parquet").sort_by("appliance")["drift_per_year"].to_numpy()
    named, standard = found["drifting"].to_numpy(), found["drift_standard_uncertainty"].to_numpy()
    plainly = truth > find_drift.ALLOWED + 6 * standard
    assert plainly.sum() >= 5, "the test needs some that drift plainly"
    assert named[plainly].all()
    # Expected at most a quarter of a name; three or more would come by chance once in four hundred fleets.
    assert np.sum(named & (truth <= find_drift.ALLOWED)) <= 2


def test_one_month_proves_nothing(tmp_path):
    generate.write(tmp_path, appliances=3, years=0.1, seed=1)
    found = find_drift.decide(find_drift.on_one_machine(tmp_path))
    assert not any(found["enough_readings"].to_pylist()) and not any(found["drifting"].to_pylist())


def test_the_cut_of_the_stream_does_not_matter(folder):
    whole = find_drift.on_one_machine(folder)
    table = pq.read_table(folder / "readings", columns=find_drift.READ)
    assert find_drift.sums(find_drift.analysed(table.to_reader(max_chunksize=777))).equals(whole)


def test_a_cluster_gives_the_same_to_the_last_bit(folder):
    pytest.importorskip("distributed")
    done = subprocess.run([sys.executable, EXAMPLE / "on_dask.py", folder], capture_output=True, text=True, timeout=300, check=False)
    assert done.returncode == 0, done.stderr
    assert "250 appliances on two workers" in done.stdout
