"""Heat loss of an insulated horizontal pipe, its surface temperature solved.

flamewright against ht's Churchill-Chu correlation under scipy's brentq, interleaved in one process.
ht is given air by quintic polynomials, so that the solve is raced and not the air. Both must agree
before times are printed. The pipes and rooms are INVENTED. Needs the built wheel, ht and scipy.
"""

from __future__ import annotations

import math
import random
import time
from collections.abc import Callable

import flamewright as fw
import numpy as np
from ht import Nu_horizontal_cylinder_Churchill_Chu
from scipy.optimize import brentq

PIPES = 500
ROUNDS = 15
#: How many times faster than ht under brentq a single solve has to be.
GOAL = 40.0
STEFAN_BOLTZMANN = 5.670374419e-8
FREE_FALL = 9.80665
EMISSIVITY = 0.9

_kelvin = np.linspace(260.0, 380.0, 61)
_air = fw.dry_air(temperature=(_kelvin, "K")).si


def _fitted(name: str) -> list[float]:
    return list(np.polynomial.Polynomial.fit(_kelvin, _air[name], 5).convert().coef[::-1])


CONDUCTIVITY, VISCOSITY, PRANDTL = map(_fitted, ("thermal_conductivity", "kinematic_viscosity", "prandtl_number"))


def quintic(coefficients: list[float], x: float) -> float:
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

    contenders: dict[str, tuple[Callable[[], object], int]] = {
        "ht under scipy's brentq": (lambda: [by_ht(*pipe) for pipe in pipes], PIPES),
        "flamewright, one call a pipe": (lambda: [solve(**record) for record in records], PIPES),
        "flamewright, columns": (
            lambda: fw.pipe_heat_loss(**columns, wall_thickness="0 mm", wall_conductivity="385 W/(m K)", emissivity=EMISSIVITY),
            PIPES * many,
        ),
    }
    least = dict.fromkeys(contenders, math.inf)
    for _ in range(ROUNDS):
        for name, (body, count) in contenders.items():
            start = time.perf_counter()
            body()
            least[name] = min(least[name], (time.perf_counter() - start) / count)
    slowest = least["ht under scipy's brentq"]
    for name, seconds in least.items():
        print(f"{name:32} {seconds * 1e6:9.3f} us   1/{slowest / seconds:.0f}")
    best = slowest / least["flamewright, columns"]
    print(f"goal 1/{GOAL:.0f}: {'met' if best >= GOAL else 'MISSED'}")
    raise SystemExit(best < GOAL)


if __name__ == "__main__":
    main()
