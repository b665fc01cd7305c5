"""What a flue analysis is worth: first order and 100 000 draws, beside the Python way.

flamewright against the package uncertainties at first order, and against NumPy's draws, on the same
sums written out here: the element balance and the NASA enthalpies of methane in air, four uncertain
readings. All in one process on one core, in shuffled rounds; medians of processor time, which other
work on the machine disturbs little. The contenders must agree before times are printed. The readings
are INVENTED. Needs the built wheel, uncertainties and numpy.
"""

from __future__ import annotations

import random
import statistics
import time
from collections.abc import Callable
from typing import Any

import flamewright as fw
import numpy as np
from uncertainties import ufloat

TRIALS = 100_000
ROUNDS = 15
#: How many times faster than uncertainties a first-order flue analysis has to be.
GOAL = 100.0
#: Milliseconds that the draws may take, on one core.
MOST = 15.0

#: a1 to a5 up to 1000 K, NASA TM-4513 (1993).
NASA = {
    "CO2": (2.35677352, 0.00898459677, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13),
    "H2O": (4.19864056, -0.0020364341, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12),
    "O2": (3.78245636, -0.00299673415, 9.847302e-06, -9.68129508e-09, 3.24372836e-12),
    "N2": (3.53100528, -0.000123660987, -5.02999437e-07, 2.43530612e-09, -1.40881235e-12),
    "Ar": (2.5, 0.0, 0.0, 0.0, 0.0),
    "CO": (3.57953347, -0.00061035368, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13),
}
AIR = {"O2": 0.2095, "N2": 0.7808, "Ar": 0.0093, "CO2": 0.0004}
GAS_CONSTANT = 8.31446261815324
#: Methane: gross at 25 °C less two latent heats, J/mol (ISO 6976:2016, Tables 3 and A.5).
NET = 890_580.0 - 2.0 * 44_013.0


def enthalpy_rise(species: str, hot: Any, cold: Any) -> Any:
    a1, a2, a3, a4, a5 = NASA[species]

    def at(t: Any) -> Any:
        return t * (a1 + t * (a2 / 2 + t * (a3 / 3 + t * (a4 / 4 + t * a5 / 5))))

    return GAS_CONSTANT * (at(hot) - at(cold))


def flue(oxygen: Any, monoxide: Any, hot: Any, cold: Any) -> tuple[Any, ...]:
    """Air ratio, carbon dioxide, ratio, air-free carbon monoxide, net loss, net efficiency; dry mole fractions and kelvins."""
    least_air = 2.0 / AIR["O2"]
    stoichiometric = 1.0 + least_air * (1.0 - AIR["O2"])
    surplus = oxygen - 0.5 * monoxide
    dry = stoichiometric / (1.0 - 0.5 * monoxide - surplus / AIR["O2"])
    ratio = 1.0 + dry * surplus / 2.0
    amounts = {
        "CO": monoxide * dry,
        "O2": oxygen * dry,
        "N2": ratio * least_air * AIR["N2"],
        "Ar": ratio * least_air * AIR["Ar"],
        "CO2": 1.0 + ratio * least_air * AIR["CO2"] - monoxide * dry,
        "H2O": 2.0,
    }
    loss = sum(amount * enthalpy_rise(species, hot, cold) for species, amount in amounts.items()) / NET
    dioxide = amounts["CO2"] / dry
    return ratio, dioxide, monoxide / dioxide, amounts["CO"] / stoichiometric, loss, 1.0 - loss


RESULTS = ("excess_air_ratio", "carbon_dioxide_dry_derived", "carbon_monoxide_ratio", "carbon_monoxide_air_free", "flue_loss_net")
READINGS = {
    "oxygen_dry": ("5.2 %", "0.2 %", 0.052, 0.002),
    "carbon_monoxide_dry": ("42 ppm", "5 ppm", 42e-6, 5e-6),
    "flue_temperature": ("148 degC", "1 K", 421.15, 1.0),
    "air_temperature": ("19 degC", "0.5 K", 292.15, 0.5),
}


def main() -> None:
    given = {name: fw.uncertain(text, standard=spread) for name, (text, spread, _, _) in READINGS.items()}
    plain = {name: value for name, (_, _, value, _) in READINGS.items()}
    solve = fw.flue_analysis.fixed(fuel="G20")

    def by_uncertainties() -> list[tuple[float, float]]:
        return [(r.n, r.s) for r in flue(*(ufloat(value, u) for _, _, value, u in READINGS.values()))]

    def by_numpy() -> list[float]:
        draw = np.random.default_rng(1)
        return [float(np.std(r, ddof=1)) for r in flue(*(draw.normal(value, u, TRIALS) for _, _, value, u in READINGS.values()))]

    def first_order() -> Any:
        return fw.flue_analysis.uncertainty(fuel="G20", **given)

    propagate = fw.flue_analysis.fixed_uncertainty(fuel="G20")

    def first_order_of_numbers() -> Any:
        return propagate(**{name: (value, u) for name, (_, _, value, u) in READINGS.items()}).standard

    def draws() -> Any:
        return fw.flue_analysis.monte_carlo(fuel="G20", trials=TRIALS, seed=1, **given)

    ours, theirs, drawn, mine = first_order(), by_uncertainties(), by_numpy(), draws()
    for k, name in enumerate(RESULTS):
        value, standard = ours.values[name], ours.standard[name]
        assert abs(value / theirs[k][0] - 1.0) < 1e-6, (name, value, theirs[k][0])
        assert abs(standard / theirs[k][1] - 1.0) < 1e-4, (name, standard, theirs[k][1])
        for spread in (drawn[k], float(np.std(mine[name], ddof=1))):
            assert abs(spread / standard - 1.0) < 0.02, (name, spread, standard)

    contenders: dict[str, tuple[Callable[[], object], int]] = {
        "plain sums in Python": (lambda: flue(*plain.values()), 50),
        "flamewright, plain, fast path": (lambda: solve(**plain), 500),
        "uncertainties, 6 results": (by_uncertainties, 3),
        "flamewright, first order, 20 results": (first_order, 50),
        "flamewright, first order, SI numbers": (first_order_of_numbers, 50),
        "NumPy, 100 000 draws, 6 results": (by_numpy, 1),
        "flamewright, 100 000 draws, 20 results": (draws, 1),
    }
    times: dict[str, list[float]] = {name: [] for name in contenders}
    order = list(contenders)
    shuffle = random.Random(1)
    for _ in range(ROUNDS):
        shuffle.shuffle(order)
        for name in order:
            body, count = contenders[name]
            start = time.process_time()
            for _ in range(count):
                body()
            times[name].append((time.process_time() - start) / count)
    median = {name: statistics.median(seconds) for name, seconds in times.items()}
    for name, seconds in median.items():
        print(f"{name:40} {seconds * 1e6:11.2f} us")
    faster = median["uncertainties, 6 results"] / median["flamewright, first order, SI numbers"]
    from_text = median["uncertainties, 6 results"] / median["flamewright, first order, 20 results"]
    milliseconds = median["flamewright, 100 000 draws, 20 results"] * 1e3
    against = median["NumPy, 100 000 draws, 6 results"] / median["flamewright, 100 000 draws, 20 results"]
    print(f"first order, readings as text: 1/{from_text:.0f} of uncertainties")
    print(f"first order, SI numbers: 1/{faster:.0f} of uncertainties; goal 1/{GOAL:.0f}: {'met' if faster >= GOAL else 'MISSED'}")
    print(f"draws: {milliseconds:.1f} ms, 1/{against:.2f} of NumPy; goal {MOST:.0f} ms: {'met' if milliseconds < MOST else 'MISSED'}")
    raise SystemExit(faster < GOAL or milliseconds >= MOST)


if __name__ == "__main__":
    main()
