"""One reading from Python: the fast path, text and pint, beside `fluids`, `fluids.units` and plain Python.

Contenders are called in shuffled order in one process; medians of processor time. `fluids` computes something else (the
friction factor of a pipe), so that it is a measure of what a call of a Python library costs; where both
compute the same (`friction_factor`), they must agree before times are printed. Needs the built wheel,
fluids and pint.
"""

from __future__ import annotations

import random
import statistics
import time
from collections import namedtuple
from collections.abc import Callable
from typing import Any

import flamewright as fw
import fluids
import fluids.units
import numpy as np

ROUNDS = 15
#: Most times a call of `fluids` on plain floats: a flue analysis has twenty results to hand over, that has one.
GOAL = 1.0
u = fluids.units.u

flue = fw.flue_analysis.fixed(fuel="G20")
water = fw.liquid_water.fixed()
friction = fw.friction_factor.fixed()
names = flue(oxygen_dry=0.05, carbon_monoxide_dry=3e-5, flue_temperature=453.15, air_temperature=291.15)._fields
Result = namedtuple("Result", names)
constant = tuple(float(i) + 0.5 for i in range(len(names)))
quantities = {
    "oxygen_dry": u.Quantity(5.0, "percent"),
    "carbon_monoxide_dry": u.Quantity(30e-4, "percent"),
    "flue_temperature": u.Quantity(180.0, "degC"),
    "air_temperature": u.Quantity(18.0, "degC"),
}
reynolds, roughness = u.Quantity(1e5, "dimensionless"), u.Quantity(1e-4, "dimensionless")


def nothing(*, oxygen_dry: float, carbon_monoxide_dry: float, flue_temperature: float, air_temperature: float) -> Any:
    """What a call that computes nothing costs in Python: keywords in, a named tuple of constants out."""
    return Result._make(constant)


CONTENDERS: dict[str, Callable[[], Any]] = {
    "nothing, named tuple of 20": lambda: nothing(oxygen_dry=0.05, carbon_monoxide_dry=3e-5, flue_temperature=453.15, air_temperature=291.15),
    "flue_analysis, fast path": lambda: flue(oxygen_dry=0.05, carbon_monoxide_dry=3e-5, flue_temperature=453.15, air_temperature=291.15),
    "liquid_water, fast path": lambda: water(temperature=333.15, pressure=2e5),
    "friction_factor, fast path": lambda: friction(reynolds_number=1e5, relative_roughness=1e-4),
    "flue_analysis, text": lambda: fw.flue_analysis(
        fuel="G20", oxygen_dry="5 %", carbon_monoxide_dry="30 ppm", flue_temperature="180 degC", air_temperature="18 degC"
    ),
    "flue_analysis, pint": lambda: fw.flue_analysis(fuel="G20", **quantities),
    "fluids.friction_factor": lambda: fluids.friction_factor(Re=1e5, eD=1e-4),
    "fluids.units.friction_factor": lambda: fluids.units.friction_factor(Re=reynolds, eD=roughness),
}


def main() -> None:
    ours = friction(reynolds_number=1e5, relative_roughness=1e-4).friction_factor
    theirs = fluids.friction_factor(Re=1e5, eD=1e-4, Method="Colebrook")
    assert abs(ours / theirs - 1.0) < 1e-9, (ours, theirs)
    text, pint = CONTENDERS["flue_analysis, text"](), CONTENDERS["flue_analysis, pint"]()
    assert np.isclose(text.si["efficiency_net"], pint.si["efficiency_net"], rtol=1e-14)

    times: dict[str, list[float]] = {name: [] for name in CONTENDERS}
    counts = {}
    for name, call in CONTENDERS.items():
        started = time.process_time()
        for _ in range(20):
            call()
        counts[name] = max(20, int(0.03 * 20 / (time.process_time() - started)))
    for _ in range(ROUNDS):
        for name in random.sample(sorted(CONTENDERS), len(CONTENDERS)):
            call, count = CONTENDERS[name], counts[name]
            started = time.process_time()
            for _ in range(count):
                call()
            times[name].append((time.process_time() - started) / count)
    median = {name: statistics.median(measured) for name, measured in times.items()}
    print(f"{'':32} {'us':>8} {'x nothing':>10} {'x fluids':>9} {'x fluids.units':>15}")
    floor, peer, peer_units = (median[n] for n in ("nothing, named tuple of 20", "fluids.friction_factor", "fluids.units.friction_factor"))
    for name, took in median.items():
        print(f"{name:32} {1e6 * took:8.3f} {took / floor:10.2f} {took / peer:9.2f} {took / peer_units:15.3f}")
    met = median["flue_analysis, fast path"] < GOAL * peer
    print(f"goal: flue_analysis within {GOAL:g} x fluids.friction_factor: {'met' if met else 'NOT MET'}")


if __name__ == "__main__":
    main()
