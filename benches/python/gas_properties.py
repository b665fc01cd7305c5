"""ISO 6976 properties of 200,000 INVENTED compositions of nine gases, beside NumPy's matrix product and Cantera.

NumPy gets the four sums of the standard as one product and the values that follow from them; its constants are read from
flamewright's pure gases. Cantera burns each composition at 25 degC, as one does there for a calorific value: ideal
gases, its own enthalpies. All must agree before times are printed. Needs the built wheel, numpy and cantera.
"""

from __future__ import annotations

import os

os.environ["RAYON_NUM_THREADS"] = os.environ["OPENBLAS_NUM_THREADS"] = "1"  # one core for all

import cantera as ct
import flamewright as fw
import numpy as np
from timing import Comparison, batches, finish, race

ROWS, SOME = 200_000, 500
SPECIES = {"methane": "CH4", "ethane": "C2H6", "propane": "C3H8", "hydrogen": "H2", "carbon_monoxide": "CO", "nitrogen": "N2"}
SPECIES |= {"carbon_dioxide": "CO2", "oxygen": "O2", "argon": "AR"}
GASES = list(SPECIES)
REFERENCE = "25/0"

draw = np.random.default_rng(1)
parts = draw.uniform(0.0, 1.0, (ROWS, len(GASES))) * [0.0, 0.08, 0.03, 0.1, 0.01, 0.05, 0.02, 0.005, 0.001]
parts[:, 0] = 1.0 - parts[:, 1:].sum(axis=1)



def of(shares: np.ndarray) -> dict[str, np.ndarray]:
    return fw.gas_properties.evaluate(reference=REFERENCE, **{gas: shares[i] for i, gas in enumerate(GASES)}).si


pure, half = of(np.eye(len(GASES))), of(0.5 * (np.eye(len(GASES)) + np.eye(len(GASES))[:, :1]))
# From mixtures with methane, for hydrogen's summation factor is negative.
SUMMATION = 2.0 * np.sqrt(1.0 - half["compression_factor"]) - np.sqrt(1.0 - pure["compression_factor"][0])
SUMS = np.stack([pure["molar_mass"], SUMMATION, pure["gross_molar_calorific_value"], pure["net_molar_calorific_value"]], axis=1)
AIR_MASS, AIR_FACTOR = 0.02896546, 0.999419  # ISO 6976:2016, dry air at 0 degC
VOLUME = 8.3144621 * 273.15 / 101325.0  # ISO 6976:2016


def by_numpy(x: np.ndarray) -> list[np.ndarray]:
    mass, summation, gross, net = (x @ SUMS).T
    factor = 1.0 - summation * summation
    volume = factor * VOLUME
    density, relative = mass / volume, mass / AIR_MASS * AIR_FACTOR / factor
    per_volume, net_per_volume, root = gross / volume, net / volume, np.sqrt(relative)
    ideal = [mass / VOLUME, mass / AIR_MASS]
    return [mass, factor, density, *ideal, relative, per_volume, net_per_volume, per_volume / root, net_per_volume / root, gross, net, gross / mass, net / mass, gross / net]


gas = ct.Solution("gri30.yaml")
STEAM, LIQUID = 44.013e3, [gas.element_index(e) for e in ("C", "H", "O")]  # J/mol, ISO 6976:2016


def by_cantera(x: np.ndarray) -> tuple[float, float]:
    """Gross and net molar calorific value, J/mol."""
    gas.TPX = 298.15, 101325.0, dict(zip(SPECIES.values(), x))
    before, total = gas.enthalpy_mole / 1e3, x.sum()
    c, h, o = (gas.elemental_mole_fraction(e) for e in ("C", "H", "O"))
    atoms = float(np.dot(x, ATOMS)) / total
    carbon, hydrogen, oxygen = c * atoms, h * atoms, o * atoms
    rest = x[GASES.index("nitrogen")] + x[GASES.index("argon")]
    need = carbon + hydrogen / 4 - oxygen / 2
    gas.TPX = 298.15, 101325.0, {"CO2": carbon, "H2O": hydrogen / 2, "N2": max(rest, 1e-30)}
    after = gas.enthalpy_mole / 1e3 * (carbon + hydrogen / 2 + rest)
    assert need > 0
    net = before - after
    return net + STEAM * hydrogen / 2, net


ATOMS = np.array([sum(gas.species(s).composition.values()) for s in SPECIES.values()])
columns = {gas_: np.ascontiguousarray(parts[:, i]) for i, gas_ in enumerate(GASES)}


def ours() -> None:
    for part in batches(columns):
        fw.gas_properties.evaluate(reference=REFERENCE, **part)


def theirs() -> None:
    for part in batches({"x": parts}):
        by_numpy(part["x"])


def main() -> None:
    mine = fw.gas_properties.evaluate(reference=REFERENCE, **columns)
    other = by_numpy(parts)
    for k, name in enumerate(("molar_mass", "compression_factor", "density")):
        assert np.allclose(mine.si[name], other[k], rtol=1e-9), name
    assert np.allclose(mine.si["gross_wobbe_index"], other[8], rtol=1e-5)
    assert abs(by_cantera(parts[3])[0] / mine.si["gross_molar_calorific_value"][3] - 1) < 2e-3
    times = race(
        {
            "flamewright": (ours, ROWS),
            "NumPy": (theirs, ROWS),
            "Cantera": (lambda: [by_cantera(x) for x in parts[:SOME]], SOME),
        }
    )
    work = "gas properties (ISO 6976), from Python, one core"
    note = "flamewright: 24 components, their sum checked, 15 results. NumPy: 9 components, the same 15 results, no checks."
    finish(
        [
            Comparison(work, "Cantera, a composition a call", times["flamewright"], times["Cantera"], "at_least", 300, note="Cantera: calorific values only."),
            Comparison(work, "NumPy, matrix product and what follows", times["flamewright"], times["NumPy"], "at_least", 1, note=note),
        ]
    )


if __name__ == "__main__":
    main()
