"""Goal seek, sweep and the page of an assessment."""

import flamewright as fw
import numpy as np
import pytest

FLUE = {"fuel": "G20", "carbon_monoxide_dry": "0 ppm", "air_temperature": "18 degC", "flue_temperature": "180 degC"}


def test_what_is_sought_is_what_comes_out():
    goal = fw.flue_analysis.goal_seek(of="efficiency_net", wanted="90 %", vary="oxygen_dry", low="1 %", high="15 %", **FLUE)
    assert goal.result.efficiency_net.magnitude == pytest.approx(90.0, abs=1e-9)
    assert not goal.several
    assert fw.flue_analysis(oxygen_dry=goal.value, **FLUE) == goal.result
    assert "oxygen_dry = " in repr(goal)


def test_two_answers_and_none_are_said():
    cold = {"of": "density", "vary": "temperature", "low": "0.1 degC", "high": "20 degC"}
    assert fw.liquid_water.goal_seek(wanted="999.95 kg/m3", **cold).several
    with pytest.raises(fw.Error, match=r"runs from .* is wanted") as caught:
        fw.liquid_water.goal_seek(wanted="1100 kg/m3", **cold)
    assert caught.value.kind == "no_solution"
    for wrong in ({"wanted": 983}, {"wanted": "983 K"}, {"wanted": "983 kg/m3", "of": "densty"}, {"wanted": "983 kg/m3", "vary": "tempo"}):
        with pytest.raises(fw.Error):
            fw.liquid_water.goal_seek(**{**cold, **wrong})
    with pytest.raises(fw.Error, match="sought"):
        fw.liquid_water.goal_seek(wanted="983 kg/m3", temperature="60 degC", **cold)


def test_a_sweep_is_the_single_calls():
    swept = fw.liquid_water.sweep({"temperature": ("20 degC", "140 degC"), "pressure": ([1.0, 5.0], "bar")}, points=3)
    assert swept.result.si["density"].shape == (3, 2)
    assert list(swept.axes["temperature"].magnitude) == pytest.approx([20.0, 80.0, 140.0])
    assert np.isnan(swept.result.si["density"][2, 0]) and swept.result.status[2, 0] > 1
    single = fw.evaluate("liquid_water", temperature=swept.axes["temperature"].si[2], pressure=5e5)
    assert swept.result.si["density"][2, 1] == single.si["density"]
    for wrong in ({}, {"temprature": ("1 degC", "2 degC")}, {"temperature": (1, 2)}):
        with pytest.raises(fw.Error):
            fw.liquid_water.sweep(wrong)
    with pytest.raises(fw.Error, match="varied"):
        fw.liquid_water.sweep({"temperature": ("1 degC", "2 degC")}, temperature="3 degC")


def test_a_sweep_as_a_frame():
    pytest.importorskip("pandas")
    frame = fw.liquid_water.sweep({"temperature": ("20 degC", "80 degC"), "pressure": ("1 bar", "2 bar")}, points=3).to_frame()
    assert len(frame) == 9 and list(frame["pressure [bar]"][:3]) == pytest.approx([1.0, 1.5, 2.0])


def test_an_assessment_is_a_page():
    visit = 'title = "<invented>"\ndate = "2026-01-01"\ninvented = true\n[as_found.liquid_water]\ntemperature = "60 degC"\n'
    assessment = fw.assess(visit)
    page = assessment.to_html()
    assert page.startswith("<!DOCTYPE html>") and "983" in page and "&lt;invented&gt;" in page
    assert "<script" not in page
    assert "<!DOCTYPE" not in assessment._repr_html_() and "srcdoc" in assessment._repr_html_()
