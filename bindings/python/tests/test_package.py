"""The package as a user meets it. Runs on the installed wheel."""

import copy
import io
import pickle
import subprocess
import sys
import threading

import flamewright as fw
import numpy as np
import pint
import pytest


def test_text_quantities_and_si_agree_to_the_bit():
    registry = pint.UnitRegistry()
    text = fw.liquid_water(temperature="60 degC", pressure="2 bar")
    quantity = fw.liquid_water(temperature=registry.Quantity(60.0, "degC"), pressure=registry.Quantity(2.0, "bar"))
    si = fw.evaluate("liquid_water", temperature=333.15, pressure=2e5)
    fast = fw.liquid_water.fixed()(temperature=333.15, pressure=2e5)
    columns = fw.liquid_water(temperature=(np.array([60.0, 60.0]), "degC"), pressure="2 bar")
    for name in text:
        assert text.si[name] == quantity.si[name] == si.si[name] == getattr(fast, name) == columns.si[name][1]
    assert quantity.density.check("[mass]/[length]**3")


def test_the_fast_path_gives_numbers_by_name_and_in_order():
    fast = fw.thermostat_differential.fixed()
    found = fast(cut_out_temperature=355.0, cut_in_temperature=347.0)
    assert found._fields == ("differential", "mid_point") and len(found) == 2
    assert found._asdict() == {"differential": 8.0, "mid_point": 351.0}
    differential, mid_point = found
    assert (differential, mid_point) == (found.differential, found.mid_point) == (found[0], found[-1]) == (8.0, 351.0)
    assert found[:1] == (8.0,) and getattr(found, "mid" + "_point") == 351.0
    assert found == (8.0, 351.0) and found == fast(cut_out_temperature=355.0, cut_in_temperature=347.0) and hash(found) == hash((8.0, 351.0))
    assert found != fast(cut_out_temperature=356.0, cut_in_temperature=347.0)
    assert repr(found) == "thermostat_differential(differential=8.0, mid_point=351.0)"
    assert "mid_point" in dir(found)
    with pytest.raises(AttributeError, match="range"):
        found.range
    with pytest.raises(IndexError):
        found[2]


def test_a_bare_number_is_refused_and_shown_how_to_write_it():
    with pytest.raises(fw.Error, match="has no unit") as caught:
        fw.liquid_water(temperature=60)
    assert caught.value.kind == "unit_missing"
    assert isinstance(caught.value, ValueError)


def test_a_refusal_has_its_parts():
    with pytest.raises(fw.Error) as caught:
        fw.liquid_water(temperature="-3 degC")
    error = caught.value
    assert (error.kind, error.field, error.unit) == ("out_of_range", "temperature", "°C")
    assert (error.value, error.minimum, error.maximum) == pytest.approx((-3.0, 0.0, 350.0))
    assert pickle.loads(pickle.dumps(error)).field == "temperature"


def test_records_are_frozen_and_can_be_kept():
    water = fw.liquid_water(temperature="60 degC")
    with pytest.raises(AttributeError):
        water.density = 1
    assert pickle.loads(pickle.dumps(water)) == water == copy.deepcopy(water)
    assert water.density.to("g/cm3") == pytest.approx(0.98325, abs=1e-4)
    assert water.density.to_pint().magnitude == water.density.magnitude
    assert "kg/m³" in repr(water)
    assert "<table>" in water._repr_html_()
    with pytest.raises(TypeError):
        float(water.density)


def test_arrays_broadcast_and_no_row_is_lost():
    result = fw.liquid_water(temperature=(np.array([[20.0], [-5.0]]), "degC"), pressure=([2.0, 3.0, 4.0], "bar"))
    assert result.si["density"].shape == (2, 3)
    assert (result.status[0] == 0).all()
    assert (result.status[1] >= 0x100).all()
    assert np.isnan(result.si["density"][1]).all()
    assert set(result.refused()) == {3, 4, 5}
    assert "temperature" in result.refused()[3] and "0 to 350 °C" in result.refused()[3]
    boiling = fw.liquid_water(temperature=([60.0, 140.0], "degC"), pressure="1 bar")
    assert set(boiling.refused()) == {1} and "boil" in boiling.refused()[1]


def test_values_of_another_basis_are_refused():
    rate = fw.absolute_pressure(gauge_pressure="20 mbar", barometric_pressure="1013 mbar")
    with pytest.raises(fw.Error, match="basis"):
        fw.absolute_pressure(gauge_pressure=rate.absolute_pressure, barometric_pressure="1013 mbar")
    with pytest.raises(fw.Error, match="gauge"):
        fw.liquid_water(temperature="60 degC", pressure="2 bar(g)")


def test_the_catalogue_describes_everything():
    for entry in fw.catalogue():
        assert entry["name"] and entry["title"] and entry["summary"] and entry["sources"] and entry["accuracy"] and entry["checked_against"]
        assert entry["outputs"]
        call = fw.calculation(entry["name"])
        assert entry["inputs"] == [] or all(f["doc"] and f["minimum"] is not None for f in entry["inputs"])
        assert call.__doc__.startswith(entry["title"])
        named = {f["name"] for f in entry["inputs"]} | {s["name"] for s in entry["settings"]}
        assert {p.removesuffix("_") for p in call.__signature__.parameters} == named


def test_unknown_names_get_the_nearest():
    with pytest.raises(fw.Error, match="temperature"):
        fw.liquid_water(temprature="60 degC")
    with pytest.raises(fw.Error, match="liquid_water"):
        fw.evaluate("liquid_watr")


def test_a_setting_named_by_a_word_of_python():
    resistance = {"temperature": "50 degC", "resistance_at_zero": "100 ohm"}
    assert fw.platinum_resistance(class_="A", **resistance).tolerance.magnitude == pytest.approx(0.25)
    assert fw.platinum_resistance(class_="A", **resistance) == fw.platinum_resistance(**{"class": "A"}, **resistance)


def test_uncertainty_working_and_draws():
    temperature = fw.uncertain("60 degC", accuracy="2 K", distribution="rectangular")
    first = fw.liquid_water.uncertainty(temperature=temperature)
    assert sum(first.budget["density"].values()) == pytest.approx(1.0)
    draws = fw.liquid_water.monte_carlo(temperature=temperature, trials=20_000, seed=3)
    assert draws["density"].std() == pytest.approx(first.standard["density"], rel=0.02)
    again = fw.liquid_water.monte_carlo(temperature=temperature, trials=20_000, seed=3)
    assert (draws["density"] == again["density"]).all()
    steps = fw.liquid_water.steps(temperature="60 degC")
    assert any("c_p × μ / λ" in step["plain"] for step in steps)


def test_the_fast_path_of_uncertainty():
    by_text = fw.flue_analysis.uncertainty(
        fuel="G20", oxygen_dry=fw.uncertain("5.2 %", standard="0.2 %"), carbon_monoxide_dry="42 ppm",
        flue_temperature=fw.uncertain("148 degC", standard="1 K"), air_temperature="19 degC",
    )  # fmt: skip
    propagate = fw.flue_analysis.fixed_uncertainty(fuel="G20")
    readings = {"oxygen_dry": (0.052, 0.002), "carbon_monoxide_dry": 42e-6, "flue_temperature": (421.15, 1.0), "air_temperature": 292.15}
    by_number = propagate(**readings)
    assert by_number.values == pytest.approx(by_text.values, rel=1e-12, nan_ok=True)
    assert by_number.standard == pytest.approx(by_text.standard, rel=1e-9, nan_ok=True)
    assert by_number.budget["efficiency_net"] == pytest.approx(by_text.budget["efficiency_net"], rel=1e-9)
    assert list(by_number.budget["efficiency_net"]) == ["oxygen_dry", "flue_temperature"]
    # More oxygen is more air and less dioxide; both come from the one reading of oxygen.
    assert by_number.correlation("excess_air", "carbon_dioxide_dry_derived") == pytest.approx(-1.0, abs=1e-4)
    for wrong, words in (
        ({"oxygen_dry": (0.052, -0.002)}, "oxygen_dry.*not negative"),
        ({"oxygen_dry": (0.052, float("nan"))}, "oxygen_dry.*finite"),
        ({"oxygen_dry": (0.25, 0.002)}, "oxygen_dry.*out of range"),
        ({"oxigen_dry": 0.052}, 'did you mean "oxygen_dry"'),
    ):
        with pytest.raises(fw.Error, match=words):
            propagate(**{**readings, **wrong})
    with pytest.raises(fw.Error, match='did you mean "efficiency_net"'):
        by_number["eficiency_net"]


@pytest.mark.parametrize(
    ("word", "divisor", "excess"),
    # Standard deviation of a half-width of one, and kurtosis less three: properties of the shapes.
    [("rectangular", 3**0.5, -1.2), ("triangular", 6**0.5, -0.6), ("arcsine", 2**0.5, -1.5), ("normal", 1.0, 0.0)],
)
def test_the_words_for_shapes(word, divisor, excess):
    given = fw.uncertain("80 degC", accuracy="2 K", distribution=word)
    difference = {"cut_out_temperature": given, "cut_in_temperature": "72 degC"}
    first = fw.thermostat_differential.uncertainty(**difference)
    assert first.standard["differential"] == pytest.approx(2 / divisor, rel=1e-6)
    draws = fw.thermostat_differential.monte_carlo(trials=200_000, seed=5, **difference)["differential"]
    off = draws - 8.0
    assert off.std() == pytest.approx(2 / divisor, rel=0.01)
    assert (off**4).mean() / (off**2).mean() ** 2 - 3 == pytest.approx(excess, abs=0.05)
    assert word == "normal" or (1.95 < abs(off).max() <= 2.0 + 1e-9)


def test_statements_of_uncertainty_combine():
    given = fw.uncertain("80 degC", standard="0.4 K", accuracy="1 K", resolution="0.5 K", distribution="triangular")
    u = fw.thermostat_differential.uncertainty(cut_out_temperature=given, cut_in_temperature="72 degC").standard["differential"]
    assert u == pytest.approx((0.4**2 + 1 / 6 + 0.25**2 / 3) ** 0.5, rel=1e-6)
    # Shares of the reading and of the range, the larger of them, a certificate, readings: of a product, relative.
    share = {"of_reading": "2 %", "of_range": "0.5 %", "range": "10 m"}
    for height, expected, factor in (
        (fw.uncertain("5 m", **share), 0.15 / 3**0.5, 2.0),
        (fw.uncertain("5 m", **share, larger_of=True), 0.10 / 3**0.5, 2.0),
        (fw.uncertain("5 m", certificate="0.3 m", coverage_factor="3"), 0.1, 2.0),
        # Student's factor for 95.45 % and two degrees of freedom is 4.53 (JCGM 100:2008 table G.2).
        (fw.uncertain(readings=["4.9 m", "5 m", "5.1 m"]), 0.1 / 3**0.5, 4.53),
    ):
        pressure = fw.static_head(height=height).static_pressure
        assert pressure.si == pytest.approx(fw.static_head(height="5 m").static_pressure.si, rel=1e-12)
        assert pressure.standard_uncertainty / pressure.si == pytest.approx(expected / 5, rel=1e-6)
        assert pressure.coverage_factor == pytest.approx(factor, abs=0.005)
    fahrenheit = fw.uncertain("80 degC", standard="0.9 degF")
    assert fw.thermostat_differential.uncertainty(cut_out_temperature=fahrenheit, cut_in_temperature="72 degC").standard["differential"] == pytest.approx(0.5, rel=1e-6)


def test_units_of_results_are_the_callers():
    flue = fw.flue_analysis(fuel="G20", oxygen_dry=fw.uncertain("5 %", accuracy="0.3 %"), carbon_monoxide_dry="30 ppm", flue_temperature="180 degC", air_temperature="18 degC")
    si = flue.in_units("SI")
    assert si.to_dict() == pytest.approx(flue.si, nan_ok=True) and si == flue
    assert flue.efficiency_net.units == "%" and si.efficiency_net.units == "" and si.water_dew_point.units == "K"
    assert flue.in_units(water_dew_point="degF").water_dew_point.magnitude == pytest.approx(flue.water_dew_point.magnitude * 1.8 + 32)
    assert flue.in_units(water_dew_point="degF").in_units(efficiency_net="ppm").water_dew_point.units == "degF"
    assert pickle.loads(pickle.dumps(si)).water_dew_point.units == "K" and "K" in repr(si)
    assert si.efficiency_net.standard_uncertainty == flue.efficiency_net.standard_uncertainty > 0
    assert f"{flue.efficiency_net:.1f}" == "91.8 %" and f"{si.efficiency_net:.3f}" == "0.918"
    for wrong in ({"water_dew_point": "mbar"}, {"efficiency": "%"}):
        with pytest.raises(fw.Error):
            flue.in_units(**wrong)
    with pytest.raises(fw.Error, match="SI"):
        flue.in_units("imperial")
    symbols = {fw._record.si_symbol(f["si_unit"]) for entry in fw.catalogue() for f in entry["outputs"]}
    assert {"W/(m²·K)", "m/s²", "1/K", "K", ""} <= symbols and not any("_" in s for s in symbols)


def test_a_long_sum_says_so(monkeypatch):
    class Terminal(io.StringIO):
        def isatty(self):
            return True

    class Kernel(io.StringIO):
        __module__ = "ipykernel.iostream"

    plant = {"metal_mass": "105 kg", "water_content": "11 L", "casing_loss": "12 W/K", "pump_flow": "0.25 kg/s", "flow_length": "9 m", "return_length": "9 m", "pipe_heat_capacity": "1900 J/(m K)", "pipe_loss": "0.9 W/(m K)", "room_temperature": "18 degC", "circuit_temperature": "70 degC", "target_temperature": "60 degC"}
    block = fw.uncertain("82 degC", accuracy="1 K")
    monkeypatch.setattr("flamewright._progress.PATIENCE", 0.01)
    monkeypatch.setattr("flamewright._progress.PACE", 0.01)
    said = {}
    for terminal in (Terminal(), Kernel(), io.StringIO()):
        monkeypatch.setattr(sys, "stderr", terminal)
        fw.cool_down.monte_carlo(trials=6000, block_temperature=block, **plant)
        said[type(terminal)] = terminal.getvalue()
    for watched in (Terminal, Kernel):
        assert "cool_down, 6,000 times: 0 s so far" in said[watched] and said[watched].endswith("\r")
    assert said[io.StringIO] == ""


def test_misspelt_results_get_the_nearest():
    water = fw.liquid_water(temperature="60 degC")
    with pytest.raises(AttributeError, match="density"):
        water.denisty  # noqa: B018
    with pytest.raises(KeyError, match="density"):
        water["denisty"]


def test_a_visit_is_assessed():
    visit = 'title = "invented"\ndate = "2026-01-01"\ninvented = true\n[as_found.liquid_water]\ntemperature = "60 degC"\n'
    assessment = fw.assess(visit)
    assert "983" in str(assessment)
    assert assessment.data["parts"][0]["results"]["density"]["unit"] == "kg/m³"
    with pytest.raises(fw.Error, match="as_found"):
        fw.assess(visit.replace("as_found", "as_fond"))


def test_threads_get_the_same_numbers():
    temperatures = np.linspace(1.0, 99.0, 50_000)
    reference = fw.liquid_water(temperature=(temperatures, "degC"))
    results: list = []
    threads = [threading.Thread(target=lambda: results.append(fw.liquid_water(temperature=(temperatures, "degC")))) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(results) == 8
    assert all(r == reference for r in results)


def test_import_warns_of_nothing_and_needs_no_pint():
    code = "import sys, flamewright; assert 'pint' not in sys.modules and 'matplotlib' not in sys.modules"
    subprocess.run([sys.executable, "-W", "error", "-c", code], check=True)


def test_the_demo_and_its_assessment_keep_to_their_schemas():
    import json
    from pathlib import Path

    import jsonschema

    tomllib = pytest.importorskip("tomllib")  # Python 3.11
    root = Path(__file__).resolve().parents[3]
    schemas = {name: json.loads((root / f"crates/flamewright/schema/{name}.schema.json").read_text()) for name in ("visit", "assessment")}
    record = tomllib.loads((root / "examples/visits/village_hall.toml").read_text())
    jsonschema.validate(record, schemas["visit"])
    assessment = fw.assess(record, (root / "examples/visits/example_policy.toml").read_text())
    jsonschema.validate(assessment.data, schemas["assessment"])
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(record | {"as_fond": {}}, schemas["visit"])
