"""Heat loss of an insulated horizontal pipe, its surface temperature solved.

flamewright against ht's Churchill-Chu correlation under scipy's brentq, and against secants of NumPy on
chunks of pipes. The peers are given air by quintic polynomials, so that the solve is raced and not the
air. All must agree before times are printed. The pipes and rooms are INVENTED. Needs the built wheel, ht
and scipy.
"""

from __future__ import annotations

import os

os.environ["RAYON_NUM_THREADS"] = "1"  # one core for all

import math
import random
from typing import Any

import flamewright as fw
import numpy as np
from ht import Nu_horizontal_cylinder_Churchill_Chu
from scipy.optimize import brentq
from timing import Comparison, finish, race

PIPES = 500
CHUNK = 4096
STEFAN_BOLTZMANN = 5.670374419e-8
FREE_FALL = 9.80665
EMISSIVITY = 0.9

_kelvin = np.linspace(260.0, 380.0, 61)
_air = fw.dry_air(temperature=(_kelvin, "K")).si


def _fitted(name: str) -> list[float]:
    return list(np.polynomial.Polynomial.fit(_kelvin, _air[name], 5).convert().coef[::-1])


CONDUCTIVITY, VISCOSITY, PRANDTL = map(_fitted, ("thermal_conductivity", "kinematic_viscosity", "prandtl_number"))


def quintic(coefficients: list[float], x: Any) -> Any:
    a, b, c, d, e, f = coefficients
    return ((((a * x + b) * x + c) * x + d) * x + e) * x + f


def by_ht(diameter: float, thickness: float, conductivity: float, pipe: float, air: float) -> float:
    """Heat loss in W/m."""
    outer = diameter + 2.0 * thickness
    resistance = math.log(outer / diameter) / (2.0 * math.pi * conductivity)

    def given_off(surface: float) -> float:
        film = 0.5 * (surface + air)
        viscosity = quintic(VISCOSITY, film)
        grashof = FREE_FALL / film * abs(surface - air) * outer**3 / viscosity**2
        nusselt = Nu_horizontal_cylinder_Churchill_Chu(quintic(PRANDTL, film), grashof)
        convection = nusselt * quintic(CONDUCTIVITY, film) / outer * (surface - air)
        return math.pi * outer * (convection + EMISSIVITY * STEFAN_BOLTZMANN * (surface**4 - air**4))

    surface = brentq(lambda t: (pipe - t) / resistance - given_off(t), air, pipe, xtol=1e-9)
    return (pipe - surface) / resistance


def by_numpy(diameter: np.ndarray, thickness: np.ndarray, conductivity: np.ndarray, pipe: np.ndarray, air: np.ndarray) -> np.ndarray:
    """Heat loss in W/m of many pipes: secants on all at once until the last has settled."""
    outer = diameter + 2.0 * thickness
    resistance = np.log(outer / diameter) / (2.0 * np.pi * conductivity)
    air4 = air**4

    def excess(surface: np.ndarray) -> np.ndarray:
        film = 0.5 * (surface + air)
        viscosity, prandtl = quintic(VISCOSITY, film), quintic(PRANDTL, film)
        rayleigh = FREE_FALL / film * np.abs(surface - air) * outer**3 / viscosity**2 * prandtl
        # Churchill and Chu 1975, horizontal cylinder.
        nusselt = (0.6 + 0.387 * rayleigh ** (1 / 6) / (1.0 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
        convection = nusselt * quintic(CONDUCTIVITY, film) / outer * (surface - air)
        return (pipe - surface) / resistance - np.pi * outer * (convection + EMISSIVITY * STEFAN_BOLTZMANN * (surface**4 - air4))

    old, new = air + 0.1 * (pipe - air), air + 0.3 * (pipe - air)
    old_excess, new_excess = excess(old), excess(new)
    for _ in range(30):
        with np.errstate(divide="ignore", invalid="ignore"):
            step = new_excess * (new - old) / (new_excess - old_excess)
        step = np.where(np.isfinite(step), step, 0.0)
        old, old_excess = new, new_excess
        new = new - step
        if np.max(np.abs(step)) < 1e-9:
            break
        new_excess = excess(new)
    return (pipe - new) / resistance


def main() -> None:
    draw = random.Random(1)
    pipes = [
        (draw.uniform(0.01, 0.06), draw.uniform(0.005, 0.05), draw.uniform(0.03, 0.05), draw.uniform(313.15, 363.15), draw.uniform(278.15, 298.15))
        for _ in range(PIPES)
    ]
    names = ("outside_diameter", "insulation_thickness", "insulation_conductivity", "water_temperature", "air_temperature")
    fixed = {"wall_thickness": 0.0, "wall_conductivity": 385.0, "emissivity": EMISSIVITY}
    records = [dict(zip(names, pipe), **fixed) for pipe in pipes]
    solve = fw.pipe_heat_loss.fixed()
    many = 200
    units = ("m", "m", "W/(m K)", "K", "K")
    columns = {name: (np.tile(column, many), unit) for name, column, unit in zip(names, np.array(pipes).T, units)}

    worst = max(abs(by_ht(*pipe) / solve(**record).heat_loss_per_length - 1.0) for pipe, record in zip(pipes, records))
    print(f"largest relative difference of the loss: {worst:.1e}")
    assert worst < 1e-6, "the contenders must compute the same"

    chunked = np.array(pipes).repeat(many, 0).T
    assert np.allclose(by_numpy(*np.array(pipes).T), [by_ht(*pipe) for pipe in pipes], rtol=1e-9), "the contenders must compute the same"
    rows = PIPES * many
    parts = [chunked[:, start : start + CHUNK] for start in range(0, rows, CHUNK)]
    times = race(
        {
            "ht": (lambda: [by_ht(*pipe) for pipe in pipes], PIPES),
            "one call": (lambda: [solve(**record) for record in records], PIPES),
            "NumPy": (lambda: [by_numpy(*part) for part in parts], rows),
            "columns": (
                lambda: fw.pipe_heat_loss(**columns, wall_thickness="0 mm", wall_conductivity="385 W/(m K)", emissivity=EMISSIVITY, outputs=["heat_loss_per_length"]),
                rows,
            ),
        }
    )
    note = "flamewright: surface temperature, shares, inside film and all other results, ranges, status. The peer: the loss alone."
    finish(
        [
            Comparison("pipe heat loss, one call from Python", "ht under scipy's brentq", times["one call"], times["ht"], "at_least", 40, note=note),
            Comparison("pipe heat loss, columns from Python, one core", "NumPy secants in chunks", times["columns"], times["NumPy"], "at_least", 4, note=note),
        ]
    )


if __name__ == "__main__":
    main()
