"""Forty wrong calls, each a mistake made on site or at a desk, each with the refusal it must get."""

import flamewright as fw
import numpy as np
import pint
import pytest

METER = {"volume": "0.1 m3", "time": "2 min", "gas_pressure": "20 mbar", "gas_temperature": "9 degC", "barometric_pressure": "1004 mbar", "fuel": "G20"}
FLUE = {"fuel": "G20", "oxygen_dry": "5 %", "carbon_monoxide_dry": "30 ppm", "flue_temperature": "180 degC", "air_temperature": "18 degC"}
TIGHT = {"installation_volume": "16 L", "test_pressure": "20 mbar", "pressure_drop": "0.5 mbar", "test_duration": "2 min"}
ABSOLUTE = {"gauge_pressure": "20 mbar", "barometric_pressure": "1013 mbar"}
NTC = {"curve": "beta", "reference_resistance": "10 kohm", "beta": "3977 K", "resistance": "2500 ohm"}
CYCLE = {"heat_capacity": "98 kJ/K", "burner_output": "24 kW", "load": "8 kW", "cut_out_temperature": "82 degC", "cut_in_temperature": "74 degC"}
pint_quantity = pint.UnitRegistry().Quantity
rate = fw.gas_rate(**METER)
flue = fw.flue_analysis(**FLUE)

# What is called, what is given wrongly (in place of the right value), the kind of refusal, a word of its text.
WRONG = [
    ("a bare temperature", fw.liquid_water, {}, {"temperature": 60}, "unit_missing", "degC|°C"),
    ("a bare column", fw.liquid_water, {}, {"temperature": np.array([60.0, 70.0])}, "unit_missing", "temperature"),
    ("a bare time in a text", fw.gas_rate, METER, {"time": "120"}, "unit_missing", "time"),
    ("minutes and seconds as a decimal", fw.gas_rate, METER, {"time": 1.30}, "unit_missing", "time"),
    ("a bare volume", fw.gas_rate, METER, {"volume": 0.1}, "unit_missing", "volume"),
    ("yes for a quantity", fw.liquid_water, {}, {"temperature": True}, "unit_missing", "temperature"),
    ("kilowatts for kilowatt-hours", fw.flue_gas_flow, {"fuel": "G20", "excess_air_ratio": "1.3"}, {"heat_input_net": "28 kWh"}, "wrong_dimension", "heat_input_net"),
    ("a mass for a volume", fw.gas_rate, METER, {"volume": "0.1 kg"}, "wrong_dimension", "volume"),
    ("a length for a pressure", fw.gas_rate, METER, {"gas_pressure": "20 mm"}, "wrong_dimension", "gas_pressure"),
    ("a temperature for a time", fw.gas_rate, METER, {"time": "9 degC"}, "wrong_dimension", "time"),
    ("a pint quantity of another kind", fw.liquid_water, {}, {"temperature": pint_quantity(2.0, "bar")}, "wrong_dimension", "temperature"),
    ("a column in a unit of another kind", fw.liquid_water, {}, {"temperature": ([1.0], "bar")}, "wrong_dimension", "temperature"),
    ("a result of another kind", fw.liquid_water, {}, {"temperature": rate.gas_rate}, "wrong_dimension", "temperature"),
    ("gauge for absolute", fw.liquid_water, {"temperature": "60 degC"}, {"pressure": "2 bar(g)"}, "wrong_basis", "gauge"),
    ("absolute for gauge", fw.absolute_pressure, ABSOLUTE, {"gauge_pressure": "1033 mbar(a)"}, "wrong_basis", "gauge_pressure"),
    ("an absolute result for gauge", fw.absolute_pressure, ABSOLUTE, {"gauge_pressure": fw.absolute_pressure(**ABSOLUTE).absolute_pressure}, "wrong_basis", "absolute"),
    ("gross input against a net plate", fw.gas_rate, METER, {"plate_heat_input_net": rate.heat_input_gross}, "wrong_basis", "gross"),
    ("net input against a gross plate", fw.gas_rate, METER, {"plate_heat_input_gross": rate.heat_input_net}, "wrong_basis", "net"),
    ("gross calorific value for net", fw.gas_rate, METER, {"net_calorific_value": fw.fuel_properties(fuel="G20").gross_calorific_value}, "wrong_basis", "gross"),
    ("a unit nobody knows", fw.liquid_water, {}, {"temperature": "60 degX"}, "unknown_unit", "temperature"),
    ("no number at all", fw.liquid_water, {}, {"temperature": "warm"}, "unreadable", "temperature"),
    ("an empty text", fw.liquid_water, {}, {"temperature": ""}, "missing", "temperature"),
    ("a needed value left out", fw.liquid_water, {}, {}, "missing", "temperature"),
    ("infinite", fw.liquid_water, {}, {"temperature": "inf degC"}, None, "temperature"),
    ("a misspelt input", fw.liquid_water, {}, {"temprature": "60 degC"}, "unknown_name", 'did you mean "temperature"'),
    ("a misspelt fuel", fw.flue_analysis, FLUE, {"fuel": "G2O"}, None, "G2"),
    ("a setting that is not offered", fw.flue_analysis, FLUE, {"air": "mountain"}, "unknown_name", "standard"),
    ("an unknown index unit", fw.gas_rate, METER, {"index_unit": "gallon"}, "unknown_name", "index_unit"),
    ("more oxygen than air has", fw.flue_analysis, FLUE, {"oxygen_dry": "22 %"}, "out_of_range", "oxygen_dry"),
    ("per cent read as a share", fw.flue_analysis, FLUE, {"oxygen_dry": "500 %"}, "out_of_range", "oxygen_dry"),
    ("ppm and per cent mixed", fw.flue_analysis, FLUE, {"carbon_monoxide_dry": "30 %"}, "out_of_range", "carbon_monoxide_dry"),
    ("fahrenheit typed as celsius", fw.flue_analysis, FLUE, {"flue_temperature": "1600 degC"}, "out_of_range", "flue_temperature"),
    ("time below nought", fw.gas_rate, METER, {"time": "-5 s"}, "out_of_range", "time"),
    ("a barometer in millimetres of mercury", fw.gas_rate, METER, {"barometric_pressure": "760 mbar(g)"}, "wrong_basis", "barometric_pressure"),
    ("a volume below nought", fw.gas_rate, METER, {"volume": "-0.1 m3"}, "out_of_range", "volume"),
    ("a gauge reading above any test", fw.tightness_test, TIGHT, {"test_pressure": "20 bar"}, "out_of_range", "test_pressure"),
    ("a temperature for a rise in temperature", fw.tightness_test, TIGHT, {"temperature_rise": "281 degF"}, None, "temperature_rise"),
    ("a thermistor of no resistance", fw.thermistor_temperature, NTC, {"resistance": "0 ohm"}, "out_of_range", "resistance"),
    ("switching on above switching off", fw.burner_cycling, CYCLE, {"cut_in_temperature": "84 degC"}, None, "cut"),
    ("water that would boil", fw.liquid_water, {"temperature": "140 degC"}, {"pressure": "1 bar"}, "refused", "boil"),
    ("a misspelt result of a goal seek", fw.liquid_water.goal_seek, {"wanted": "983 kg/m3", "vary": "temperature", "low": "1 degC", "high": "90 degC"}, {"of": "densty"}, "unknown_name", "density"),
    ("an uncertain reading beside a column", fw.flue_analysis, FLUE, {"oxygen_dry": fw.uncertain("5 %", accuracy="0.3 %"), "flue_temperature": ([180.0, 190.0], "degC")}, "bad_setting", "oxygen_dry.*single readings"),
    ("words in a column", fw.liquid_water, {}, {"temperature": (["warm"], "degC")}, "unreadable", "temperature"),
    ("a difference in temperature for a temperature", fw.liquid_water, {}, {"temperature": pint_quantity(60.0, "delta_degC")}, None, "temperature"),
    ("a distribution nobody knows", fw.static_head, {}, {"height": fw.uncertain("5 m", accuracy="0.3 m", distribution="flat")}, "unknown_name", "distribution.*rectangular"),
    ("a spread of another kind", fw.static_head, {}, {"height": fw.uncertain("5 m", accuracy="0.3 bar")}, "wrong_dimension", "height.*length"),
    ("a spread without its unit", fw.static_head, {}, {"height": fw.uncertain("5 m", accuracy=0.3)}, "bad_setting", "height.*unit"),
    ("a spread below zero", fw.static_head, {}, {"height": fw.uncertain("5 m", accuracy="-0.3 m")}, "bad_setting", "height.*not negative"),
    ("a share of a range that is not stated", fw.static_head, {}, {"height": fw.uncertain("5 m", of_range="1 %")}, "bad_setting", "range"),
    ("one reading as repeated ones", fw.static_head, {}, {"height": fw.uncertain(readings=["5 m"])}, "bad_setting", "at least two"),
    ("neither value nor readings", fw.uncertain, {}, {"accuracy": "1 K"}, "bad_setting", "either a value or readings"),
]  # fmt: skip


def test_cubic_feet_typed_as_cubic_metres_are_noticed():
    assert any("unusual" in notice and "volume" in notice for notice in fw.gas_rate(**{**METER, "volume": "35.3 m3"}).notices)


def test_there_are_forty():
    assert len(WRONG) >= 40
    assert len({name for name, *_ in WRONG}) == len(WRONG)


@pytest.mark.parametrize(("call", "right", "wrong", "kind", "words"), [w[1:] for w in WRONG], ids=[w[0] for w in WRONG])
def test_a_wrong_call_is_refused(call, right, wrong, kind, words):
    with pytest.raises(fw.Error, match=words) as caught:
        call(**{**right, **wrong})
    assert kind is None or caught.value.kind == kind, (caught.value.kind, str(caught.value))


@pytest.mark.parametrize("call", [fw.gas_rate, fw.flue_analysis, fw.tightness_test, fw.absolute_pressure, fw.thermistor_temperature, fw.burner_cycling], ids=lambda c: c.name)
def test_the_right_calls_pass(call):
    right = {"gas_rate": METER, "flue_analysis": FLUE, "tightness_test": TIGHT, "absolute_pressure": ABSOLUTE, "thermistor_temperature": NTC, "burner_cycling": CYCLE}
    assert len(call(**right[call.name])) > 0
