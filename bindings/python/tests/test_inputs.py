"""What may be given: text, quantities of any pint registry, arrays with a unit; and what may not."""

from decimal import Decimal
from fractions import Fraction

import flamewright as fw
import numpy as np
import pytest

SI = fw.evaluate("liquid_water", temperature=333.15, pressure=2e5).si["density"]


class Quantity:
    """A quantity of no library in particular."""

    def __init__(self, magnitude, units):
        self.magnitude, self.units = magnitude, units


def registries():
    pint = pytest.importorskip("pint")
    own = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
    own.define("eggcup = 0.05 liter")
    return {"fresh": pint.UnitRegistry(), "application": pint.get_application_registry(), "own": own, "cached": pint.UnitRegistry(cache_folder=None)}


@pytest.mark.parametrize("which", ["fresh", "application", "own", "cached"])
def test_quantities_of_every_registry_and_back_into_it(which):
    q = registries()[which].Quantity
    water = fw.liquid_water(temperature=q(60.0, "degC"), pressure=q(2.0, "bar"))
    assert water.si["density"] == SI
    assert isinstance(water.density, q)
    assert water.density.to("g/cm**3").magnitude == pytest.approx(SI / 1000)
    many = fw.liquid_water(temperature=q(np.array([60.0, 333.15 - 273.15]), "degC"), pressure=q(2.0, "bar"))
    assert (many.si["density"] == SI).all() and many.density.magnitude.shape == (2,)


@pytest.mark.parametrize(
    ("unit", "number"),
    [("degC", 60.0), ("kelvin", 333.15), ("degF", 140.0), ("degree_Celsius", 60.0), ("degree_Fahrenheit", 140.0), ("degree_Rankine", 599.67)],
)
def test_units_of_temperature_as_pint_writes_them(unit, number):
    pint = pytest.importorskip("pint")
    water = fw.liquid_water(temperature=pint.UnitRegistry().Quantity(number, unit), pressure="2 bar")
    assert water.si["density"] == pytest.approx(SI, rel=1e-12)


@pytest.mark.parametrize(
    ("name", "text", "number", "unit"),
    [
        ("pressure", "2 bar", 2.0, "bar"),
        ("pressure", "2 bar", 2000.0, "millibar"),
        ("pressure", "2 bar", 200.0, "kilopascal"),
        ("pressure", "2 bar", 2e5, "newton / meter ** 2"),
        ("pressure", "29.0075475 psi", 29.0075475, "psi"),
    ],
)
def test_units_of_pressure_as_pint_writes_them(name, text, number, unit):
    pint = pytest.importorskip("pint")
    got = fw.liquid_water(temperature="60 degC", **{name: pint.UnitRegistry().Quantity(number, unit)})
    assert got.si["density"] == pytest.approx(fw.liquid_water(temperature="60 degC", **{name: text}).si["density"], rel=1e-12)


@pytest.mark.parametrize("kind", ["a difference", "a length", "no unit"])
def test_quantities_of_the_wrong_kind(kind):
    pint = pytest.importorskip("pint")
    q = pint.UnitRegistry().Quantity
    wrong = {"a difference": q(60.0, "delta_degC"), "a length": q(60.0, "m"), "no unit": q(60.0)}[kind]
    with pytest.raises(fw.Error, match="temperature"):
        fw.liquid_water(temperature=wrong)


def test_two_registries_do_not_mix_up_their_units():
    pint = pytest.importorskip("pint")
    first, second = pint.UnitRegistry(), pint.UnitRegistry()
    assert fw.liquid_water(temperature=first.Quantity(60.0, "degC"), pressure=second.Quantity(2.0, "bar")).si["density"] == SI
    for q in (first.Quantity, second.Quantity, first.Quantity):
        assert fw.liquid_water(temperature=q(140.0, "degF"), pressure="2 bar").si["density"] == pytest.approx(SI, rel=1e-12)


@pytest.mark.parametrize("number", [60, 60.0, np.float64(60), np.float32(60), np.int16(60), Decimal(60), Fraction(60), np.array(60.0)], ids=lambda n: type(n).__name__)
def test_every_kind_of_number_with_its_unit(number):
    for given in ((number, "degC"), Quantity(number, "degC")):
        water = fw.liquid_water(temperature=given, pressure="2 bar")
        assert water.si["density"] == SI and water.status is None


@pytest.mark.parametrize("make", [list, tuple, np.asarray, lambda v: np.asarray(v, dtype="f4"), lambda v: np.asarray(v, dtype="i8"), lambda v: np.asarray([v, v]).T[:, 0]], ids=["list", "tuple", "array", "single", "whole", "strided"])
def test_every_kind_of_column_with_its_unit(make):
    column = make([60, 20, 99])
    for given in ((column, "degC"), Quantity(column, "degC")):
        water = fw.liquid_water(temperature=given, pressure="2 bar")
        assert water.si["density"].shape == (3,) and water.si["density"][0] == SI


def test_columns_of_pandas():
    pandas = pytest.importorskip("pandas")
    water = fw.liquid_water(temperature=(pandas.Series([60.0, None]), "degC"), pressure="2 bar")
    assert water.si["density"][0] == SI and set(water.refused()) == {1}


@pytest.mark.parametrize(
    ("temperature", "pressure", "shape"),
    [
        (np.full(3, 60.0), np.full(3, 2.0), (3,)),
        (np.full((2, 1), 60.0), np.full(3, 2.0), (2, 3)),
        (np.full((2, 1, 1), 60.0), np.full((4, 1), 2.0), (2, 4, 1)),
        (np.full((1,), 60.0), 2.0, (1,)),
        (60.0, np.full((2, 2), 2.0), (2, 2)),
        (np.full((0,), 60.0), 2.0, (0,)),
        (np.full((5, 0), 60.0), np.full((1, 1), 2.0), (5, 0)),
    ],
)
def test_shapes_broadcast(temperature, pressure, shape):
    water = fw.liquid_water(temperature=(temperature, "degC"), pressure=(pressure, "bar"))
    assert water.si["density"].shape == shape == water.status.shape
    assert (water.si["density"] == SI).all()
    assert len(water.to_dict()["density"]) == shape[0]


def test_shapes_that_do_not_fit():
    with pytest.raises(ValueError, match="broadcast|shape"):
        fw.liquid_water(temperature=([1.0, 2.0, 3.0], "degC"), pressure=([1.0, 2.0], "bar"))


def test_what_is_masked_is_missing():
    masked = np.ma.array([60.0, 70.0, 80.0], mask=[False, True, False])
    water = fw.liquid_water(temperature=(masked, "degC"), pressure="2 bar")
    assert set(water.refused()) == {1} and water.si["density"][0] == SI


@pytest.mark.parametrize(
    "given",
    [60, 60.0, np.float64(60), [60.0], np.array([60.0]), (60.0, 70.0), True, np.True_],
    ids=lambda v: f"{type(v).__name__}",
)
def test_bare_numbers_are_refused(given):
    with pytest.raises(fw.Error) as caught:
        fw.liquid_water(temperature=given)
    assert caught.value.kind == "unit_missing" and caught.value.field == "temperature"
    assert "°C" in str(caught.value)


@pytest.mark.parametrize("given", [(["warm"], "degC"), ([None], "degC"), ([1 + 2j], "degC"), (1j, "degC"), ({}, "degC"), ([[1.0], [1.0, 2.0]], "degC"), Quantity(object(), "degC")])
def test_what_is_no_number_is_refused(given):
    if given == ([None], "degC"):  # nothing, in a column, is a missing value
        assert set(fw.liquid_water(temperature=given).refused()) == {0}
        return
    with pytest.raises(fw.Error, match="temperature") as caught:
        fw.liquid_water(temperature=given)
    assert caught.value.field == "temperature"


def test_numbers_without_unit_may_be_bare():
    bare = fw.friction_factor(reynolds_number=40000, relative_roughness=0.0005)
    assert bare == fw.friction_factor(reynolds_number="40000", relative_roughness=(0.0005, ""))
    assert fw.friction_factor(reynolds_number=[4e4, 5e4], relative_roughness="0.05 %").si["friction_factor"][0] == bare.si["friction_factor"]
    with pytest.raises(fw.Error, match="reynolds_number"):
        fw.friction_factor(reynolds_number=True)


def test_results_go_in_again():
    water = fw.saturated_water(temperature="60 degC")
    assert fw.liquid_water(temperature=fw.boiling_point(water_pressure="0 bar").boiling_point, pressure="2 bar").density.magnitude == pytest.approx(958, abs=1)
    with pytest.raises(fw.Error, match="temperature"):
        fw.liquid_water(temperature=water.saturation_pressure)


def test_only_the_results_wanted():
    given = {"temperature": ([20.0, -40.0, 60.0], "degC"), "pressure": "2 bar"}
    every, some = fw.liquid_water(**given), fw.liquid_water(**given, outputs=["dynamic_viscosity", "density"])
    # In the order of the fields, with the same bits and the same status.
    assert list(some) == ["density", "dynamic_viscosity"]
    assert all(np.array_equal(some.si[name], every.si[name], equal_nan=True) for name in some)
    assert some.status.tolist() == every.status.tolist() and some.refused() == every.refused()
    assert list(fw.liquid_water(temperature="20 degC", outputs=["density"])) == ["density"]
    with pytest.raises(AttributeError, match="density"):
        _ = some.thermal_conductivity
    for wanted in (["densty"], "density"):
        with pytest.raises(fw.Error, match="density"):
            fw.liquid_water(**given, outputs=wanted)
    # None at all still says what became of each row; no rows give none.
    assert list(fw.liquid_water(**given, outputs=[])) == [] and len(fw.liquid_water(**given, outputs=[]).status) == 3
    assert fw.liquid_water(temperature=(np.empty(0), "degC"), outputs=["density"]).density.si.shape == (0,)


@pytest.mark.parametrize("rows", [1, 7, 511, 512, 4096, 523_776, 524_288])
def test_results_of_any_length_are_apart(rows):
    """Results that share memory are neighbours, not each other."""
    temperatures = np.linspace(280.0, 370.0, rows)
    water = fw.liquid_water.evaluate(temperature=temperatures, pressure=2e5)
    ends = [fw.liquid_water.evaluate(temperature=float(temperatures[k]), pressure=2e5) for k in (0, -1)]
    for name in water:
        column = water.si[name]
        assert column.shape == (rows,) and [column[0], column[-1]] == [end.si[name] for end in ends], name
    for name in water:
        water.si[name][:] = -1.0
        assert all((water.si[other] != -1.0).any() for other in list(water)[list(water).index(name) + 1 :])
