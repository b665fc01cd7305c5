"""Density, heat capacity, viscosity and conductivity of water in INVENTED states, beside CoolProp's high-level call.

The crate seuif97 is raced in Rust, in ``benches/src/bin/water.rs``. Needs the built wheel, numpy and CoolProp.
"""

from __future__ import annotations

import os

os.environ["RAYON_NUM_THREADS"] = "1"  # one core for all

import flamewright as fw
import numpy as np
from CoolProp.CoolProp import PropsSI
from timing import Comparison, batches, finish, race

ROWS, SOME = 200_000, 20
NAMES = {"density": "D", "specific_heat_capacity": "C", "dynamic_viscosity": "V", "thermal_conductivity": "L"}
draw = np.random.default_rng(1)
columns = {"temperature": draw.uniform(283.15, 363.15, ROWS), "pressure": draw.uniform(1e5, 3e5, ROWS)}


def by_coolprop(i: int, fluid: str = "Water") -> list[float]:
    return [PropsSI(letter, "T", columns["temperature"][i], "P", columns["pressure"][i], fluid) for letter in NAMES.values()]


def ours() -> None:
    for part in batches(columns):
        fw.liquid_water.evaluate(**part)


def main() -> None:
    mine = fw.liquid_water.evaluate(**columns)
    for i in range(SOME):
        assert np.allclose([mine.si[name][i] for name in NAMES], by_coolprop(i), rtol=1e-3), "the contenders must compute the same"
    times = race(
        {
            "flamewright": (ours, ROWS),
            "CoolProp": (lambda: [by_coolprop(i) for i in range(SOME)], SOME),
            "CoolProp, IF97": (lambda: [by_coolprop(i, "IF97::Water") for i in range(SOME)], SOME),
        }
    )
    work, note = "water state, columns from Python, one core", "flamewright: eight properties, ranges, status. The peer: four."
    finish(
        [
            Comparison(work, "CoolProp, four PropsSI calls a state", times["flamewright"], times["CoolProp"], "at_least", 1500, note=note),
            Comparison(work, "the same by its IF97 backend", times["flamewright"], times["CoolProp, IF97"], note=note),
        ]
    )


if __name__ == "__main__":
    main()
