"""First order and draws beside independent libraries, on a formula written out here."""

import flamewright as fw
import numpy as np
import pytest


def conversion(gauge, barometer, kelvin):
    return (gauge + barometer) / 101325.0 * 288.15 / kelvin


def test_uncertainty_beside_uncertainties():
    ufloat = pytest.importorskip("uncertainties").ufloat
    values = [("0.1 m3", 0.1, 0.0004, "m3"), ("120 s", 120.0, 0.3, "s"), ("20 mbar", 2000.0, 50.0, "Pa"),
              ("1005 mbar", 100500.0, 500.0, "Pa"), ("12 degC", 285.15, 3.0, "K"), ("39.5 MJ/m3", 39.5e6, 0.2e6, "J/m3")]
    names = ["volume", "time", "gas_pressure", "barometric_pressure", "gas_temperature", "gross_calorific_value"]
    given = {n: fw.uncertain(text, standard=f"{u} {unit}") for n, (text, _, u, unit) in zip(names, values, strict=True)}
    ours = fw.gas_rate.uncertainty(**given)
    volume, time, gauge, barometer, kelvin, heat = (ufloat(v, u) for _, v, u, _ in values)
    theirs = volume / time * conversion(gauge, barometer, kelvin) * heat
    assert ours.values["heat_input_gross"] == pytest.approx(theirs.n, rel=1e-9)
    assert ours.standard["heat_input_gross"] == pytest.approx(theirs.s, rel=1e-6)
    draws = np.random.default_rng(1)
    v, t, g, b, k, h = (draws.normal(x, u, 200_000) for _, x, u, _ in values)
    numpy_spread = np.std(v / t * conversion(g, b, k) * h, ddof=1)
    mine = fw.gas_rate.monte_carlo(trials=200_000, seed=2, **given)["heat_input_gross"]
    # Five standard errors of the difference of two drawn spreads.
    assert np.std(mine, ddof=1) == pytest.approx(numpy_spread, rel=5 / 200_000**0.5)


def test_first_order_beside_gtc():
    """GTC differentiates by itself and carries correlations of its own; nothing is shared with us but the sum."""
    gtc = pytest.importorskip("GTC")
    readings = {"volume": ("0.1 m3", 0.1, 0.0004, "m3"), "time": ("120 s", 120.0, 0.3, "s"),
                "gas_pressure": ("20 mbar", 2000.0, 50.0, "Pa"), "barometric_pressure": ("1005 mbar", 100500.0, 500.0, "Pa"),
                "gas_temperature": ("12 degC", 285.15, 3.0, "K")}
    given = {name: fw.uncertain(text, standard=f"{u} {unit}") for name, (text, _, u, unit) in readings.items()}
    for r in (0.0, 0.7, -0.4):
        pairs = {("gas_pressure", "barometric_pressure"): r}
        ours = fw.gas_rate.uncertainty(pairs, gross_calorific_value="39.5 MJ/m3", **given)
        volume, time, gauge, barometer, kelvin = (gtc.ureal(value, u, independent=False) for _, value, u, _ in readings.values())
        gtc.set_correlation(r, gauge, barometer)
        rate = volume / time * conversion(gauge, barometer, kelvin)
        heat = rate * 39.5e6
        assert ours.values["heat_input_gross"] == pytest.approx(gtc.value(heat), rel=1e-9)
        assert ours.standard["heat_input_gross"] == pytest.approx(gtc.uncertainty(heat), rel=1e-6)
        # Two results of the same readings move together.
        metered = volume / time
        between = ours.correlation("gas_rate", "heat_input_gross")
        assert between == pytest.approx(gtc.get_correlation(metered, heat), abs=1e-6)
