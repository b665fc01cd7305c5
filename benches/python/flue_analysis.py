"""The flue analysis of G20 over a million INVENTED readings, beside NumPy, Polars and Cantera.

The peers do less: four inputs, eight results, dry air, no ranges, no status. The enthalpies of all are NASA polynomials;
the peers' coefficients are read from Cantera, so that nobody's table is copied here. All must agree before times are
printed. Needs the built wheel, numpy, polars and cantera.
"""

from __future__ import annotations

import os

os.environ["RAYON_NUM_THREADS"] = "1"  # one core for all
os.environ["POLARS_MAX_THREADS"] = "1"

import cantera as ct
import flamewright as fw
import numpy as np
import polars as pl
from timing import BATCH, Comparison, batches, finish, race

ROWS = 1_000_000
SOME = 500
GASES = ("O2", "CO2", "CO", "N2", "AR", "H2O")
AIR = {"O2": 0.2095, "N2": 0.7808, "AR": 0.0093, "CO2": 0.0004}
#: Datum of heating engineering enthalpies, K.
DATUM = 298.15

gas = ct.Solution("gri30.yaml")
#: h/RT = sum of a_k T^k / (k + 1) + a_5 / T, below 1000 K: J/mol by powers of T.
POWERS = {}
for _name in GASES:
    _low = gas.species(_name).thermo.coeffs[8:14]
    POWERS[_name] = ct.gas_constant / 1000 * np.array([_low[5], *(_low[k] / (k + 1) for k in range(5))])


def enthalpy(name: str, t: object) -> object:
    """J/mol over the datum, by Horner's rule; ``t`` is a number, an array or an expression."""
    c = POWERS[name]
    at_datum = float(np.polyval(c[::-1], DATUM))
    return ((((c[5] * t + c[4]) * t + c[3]) * t + c[2]) * t + c[1]) * t + (c[0] - at_datum)


class Methane:
    """One mole of methane: what the readings do not change."""

    oxygen, carbon, water = 2.0, 1.0, 2.0
    dry_air = oxygen / AIR["O2"]
    flue = dry_air * (1 - AIR["O2"]) + carbon
    latent = 44013.0  # J/mol, water at 25 degC; ISO 6976:2016

    def __init__(self) -> None:
        fuel = fw.gas_properties(reference="25/0", methane="100 %")
        self.gross, self.net = fuel.gross_molar_calorific_value.si, fuel.net_molar_calorific_value.si
        self.unburnt = float(POWERS["CO"] @ DATUM ** np.arange(6) + 0.5 * POWERS["O2"] @ DATUM ** np.arange(6) - POWERS["CO2"] @ DATUM ** np.arange(6))


FUEL = Methane()


def balance(o2: object, co: object) -> tuple[object, object, object]:
    """Excess air ratio, dry flue gas (mol), carbon dioxide (mol/mol)."""
    surplus = o2 - 0.5 * co
    undiluted = 1.0 - 0.5 * co - surplus / AIR["O2"]
    flue = FUEL.flue / undiluted
    ratio = 1.0 + flue * surplus / FUEL.oxygen
    carbon_dioxide = (FUEL.carbon + ratio * FUEL.dry_air * AIR["CO2"]) / flue - co
    return ratio, flue, carbon_dioxide


def results(o2: object, co: object, flue_t: object, air_t: object, heat: object = enthalpy) -> list[object]:
    """Eight results: ratio, CO2, CO/CO2, air-free CO, dry, vapour and unburnt loss, flue loss net."""
    ratio, flue, co2 = balance(o2, co)
    dry = flue * (co2 * heat("CO2", flue_t) + co * heat("CO", flue_t) + o2 * heat("O2", flue_t))
    inert = ratio * FUEL.dry_air
    dry = dry + inert * (AIR["N2"] * heat("N2", flue_t) + AIR["AR"] * heat("AR", flue_t))
    dry_air = flue * (co2 * heat("CO2", air_t) + co * heat("CO", air_t) + o2 * heat("O2", air_t))
    dry_air = dry_air + inert * (AIR["N2"] * heat("N2", air_t) + AIR["AR"] * heat("AR", air_t))
    vapour = FUEL.water * heat("H2O", flue_t)
    sensible = dry - dry_air + vapour - FUEL.water * heat("H2O", air_t)
    return [ratio, co2, co / co2, co * flue / FUEL.flue, dry / FUEL.gross, vapour / FUEL.gross, co * flue * FUEL.unburnt / FUEL.gross, sensible / FUEL.net]


NAMES = (
    "excess_air_ratio",
    "carbon_dioxide_dry_derived",
    "carbon_monoxide_ratio",
    "carbon_monoxide_air_free",
    "dry_gas_loss",
    "moisture_loss",
    "unburnt_loss",
    "flue_loss_net",
)

draw = np.random.default_rng(1)
o2, co = draw.uniform(0.02, 0.11, ROWS), draw.uniform(0.0, 5e-4, ROWS)
flue_t, air_t = draw.uniform(335.0, 485.0, ROWS), draw.uniform(283.0, 303.0, ROWS)
frame = pl.DataFrame({"o2": o2, "co": co, "flue_t": flue_t, "air_t": air_t})
columns = [pl.col(name) for name in frame.columns]
expressions = [e.alias(n) for n, e in zip(NAMES, results(*columns))]


def staged(frame: pl.DataFrame) -> pl.DataFrame:
    """As a careful hand writes it: shared terms once, in ``with_columns`` stages, so that nothing is computed twice."""
    sums = frame.with_columns([part.alias(n) for n, part in zip(("ratio", "flue", "co2"), balance(pl.col("o2"), pl.col("co")))])
    heats = {(g, t): enthalpy(g, pl.col(t)).alias(f"{g}{t}") for g in GASES for t in ("flue_t", "air_t")}
    sums = sums.with_columns(list(heats.values()))

    def flow(t: str) -> pl.Expr:
        c = pl.col
        kept = c("co2") * c(f"CO2{t}") + c("co") * c(f"CO{t}") + c("o2") * c(f"O2{t}")
        return c("flue") * kept + c("ratio") * FUEL.dry_air * (AIR["N2"] * c(f"N2{t}") + AIR["AR"] * c(f"AR{t}"))

    sums = sums.with_columns(flow("flue_t").alias("dry"), flow("air_t").alias("dry_air"))
    c = pl.col
    return sums.select(
        c("ratio").alias(NAMES[0]),
        c("co2").alias(NAMES[1]),
        (c("co") / c("co2")).alias(NAMES[2]),
        (c("co") * c("flue") / FUEL.flue).alias(NAMES[3]),
        (c("dry") / FUEL.gross).alias(NAMES[4]),
        (FUEL.water * c("H2Oflue_t") / FUEL.gross).alias(NAMES[5]),
        (c("co") * c("flue") * FUEL.unburnt / FUEL.gross).alias(NAMES[6]),
        ((c("dry") - c("dry_air") + FUEL.water * (c("H2Oflue_t") - c("H2Oair_t"))) / FUEL.net).alias(NAMES[7]),
    )


phase = ct.Solution(thermo="ideal-gas", species=[gas.species(n) for n in GASES])
index = [phase.species_index(n) for n in GASES]


def by_cantera(i: int) -> list[float]:
    """The same eight results of row ``i``, the enthalpies from a phase at flue and at air temperature."""

    def heats(t: float) -> dict[str, float]:
        phase.TP = t, 101325.0
        h = phase.standard_enthalpies_RT * (ct.gas_constant / 1000 * t)
        return {n: float(h[k]) - AT_DATUM[n] for n, k in zip(GASES, index)}

    hot, cold = heats(flue_t[i]), heats(air_t[i])
    return results(float(o2[i]), float(co[i]), 1.0, 2.0, lambda name, t: hot[name] if t == 1.0 else cold[name])


phase.TP = DATUM, 101325.0
_h = phase.standard_enthalpies_RT * (ct.gas_constant / 1000 * DATUM)
AT_DATUM = {n: float(_h[k]) for n, k in zip(GASES, index)}

analysis = fw.flue_analysis
given = {"oxygen_dry": o2, "carbon_monoxide_dry": co, "flue_temperature": flue_t, "air_temperature": air_t}


def in_batches() -> None:
    for part in batches(given):
        analysis.evaluate(fuel="G20", outputs=NAMES, **part)


def all_in_batches() -> None:
    for part in batches(given):
        analysis.evaluate(fuel="G20", **part)


#: Where the floor writes; kept, as the memory of a batch is kept by the allocator.
PLACES = np.empty((len(NAMES), BATCH + 8))


def floor_in_batches() -> None:
    """Four columns read, eight written: what memory and NumPy's calls cost without a sum."""
    for part in batches(given):
        columns = list(part.values())
        for k, place in enumerate(PLACES):
            np.add(columns[k % len(columns)], 1.0, out=place[: len(columns[0])])


def numpy_in_batches() -> None:
    for part in batches(given):
        results(*part.values())


def polars_in_batches() -> None:
    for part in frame.iter_slices(BATCH):
        part.select(expressions)


def stages_in_batches() -> None:
    for part in frame.iter_slices(BATCH):
        staged(part)


def main() -> None:
    ours = analysis.evaluate(fuel="G20", **given)
    by_numpy = results(o2, co, flue_t, air_t)
    by_polars, by_stages = frame.select(expressions), staged(frame)
    for k, name in enumerate(NAMES):
        si = getattr(ours, name).si
        assert np.allclose(by_numpy[k], si, rtol=2e-3, atol=1e-9), f"{name}: the contenders must compute the same"
        for peer in (by_polars[name].to_numpy(), by_stages[name].to_numpy()):
            assert np.allclose(by_numpy[k], peer, rtol=1e-12)
        assert np.isclose(by_cantera(7)[k], by_numpy[k][7], rtol=1e-12)
    times = race(
        {
            "flamewright": (in_batches, ROWS),
            "flamewright, all 20": (all_in_batches, ROWS),
            "flamewright, whole": (lambda: analysis.evaluate(fuel="G20", outputs=NAMES, **given), ROWS),
            "floor": (floor_in_batches, ROWS),
            "NumPy": (numpy_in_batches, ROWS),
            "NumPy, whole": (lambda: results(o2, co, flue_t, air_t), ROWS),
            "Polars": (polars_in_batches, ROWS),
            "Polars, staged": (stages_in_batches, ROWS),
            "Cantera": (lambda: [by_cantera(i) for i in range(SOME)], SOME),
        },
        rounds=7,
    )
    work, mine = "flue analysis, batches from Python, one core", times["flamewright"]
    whole = "flue analysis, a million rows in one call"
    note = "flamewright: the same 8 of its 20 results asked for (all 20 are computed), ranges, rules, status. The peer: 8 results, no dew point, no checks."
    every = "flamewright: all 20 results, ranges, rules, status. The peer: 8 results, no dew point, no checks."
    finish(
        [
            Comparison(work, "NumPy, the same sums", mine, times["NumPy"], "at_least", 15, note=note),
            Comparison(whole, "NumPy, the same sums", times["flamewright, whole"], times["NumPy, whole"], note=note),
            Comparison("flue analysis with all 20 results, as before", "NumPy, the same sums, 8 results", times["flamewright, all 20"], times["NumPy"], note=every),
            Comparison(work, "NumPy adding 1: 4 columns read, 8 written", mine, times["floor"], "at_most", 2, note=note),
            Comparison(work, "Polars, one expression a result", mine, times["Polars"], "at_least", 40, note=note),
            Comparison(work, "Polars, staged by hand", mine, times["Polars, staged"], note=note),
            Comparison(work, "Cantera, a call a reading", mine, times["Cantera"], "at_least", 900, note=note),
        ]
    )


if __name__ == "__main__":
    main()
