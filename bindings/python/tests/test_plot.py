"""Pictures show the numbers that the calculations give."""

import flamewright as fw
import numpy as np
import pytest

matplotlib = pytest.importorskip("matplotlib")
matplotlib.use("Agg")

from flamewright import plot  # noqa: E402
from matplotlib import pyplot  # noqa: E402

FLUE = {"fuel": "G20", "carbon_monoxide_dry": "30 ppm", "air_temperature": "18 degC"}
PIPE = {
    "water_temperature": "65 degC",
    "air_temperature": "18 degC",
    "outside_diameter": "22 mm",
    "wall_thickness": "0.9 mm",
    "wall_conductivity": "390 W/(m K)",
    "insulation_conductivity": "0.04 W/(m K)",
    "emissivity": "0.9",
}
BLOCK = {
    "metal_mass": "105 kg",
    "water_content": "11 L",
    "casing_loss": "12 W/K",
    "pump_flow": "0.25 kg/s",
    "flow_length": "9 m",
    "return_length": "9 m",
    "pipe_heat_capacity": "1900 J/(m K)",
    "pipe_loss": "0.9 W/(m K)",
    "room_temperature": "18 degC",
    "block_temperature": "82 degC",
    "target_temperature": "60 degC",
}


@pytest.fixture(autouse=True)
def closed():
    yield
    pyplot.close("all")


def drawn(axes):
    """The axes is rendered, its units stand on both axes, and all its words are returned."""
    axes.figure.canvas.draw()
    legend = axes.get_legend()
    words = [t.get_text() for t in axes.texts] + ([t.get_text() for t in legend.get_texts()] if legend else [])
    return "\n".join([axes.get_title(loc="left"), axes.get_xlabel(), axes.get_ylabel(), *words])


def point(axes, marker):
    """The one point drawn with a marker."""
    (line,) = [line for line in axes.lines if line.get_marker() == marker]
    return line.get_xdata()[0], line.get_ydata()[0]


def test_the_reading_lies_on_the_curves():
    axes = plot.combustion(fuel="G20", oxygen_dry="8.9 %", carbon_monoxide_dry="30 ppm")
    words = drawn(axes)
    found = fw.flue_analysis(oxygen_dry="8.9 %", flue_temperature="212 degC", **FLUE)
    assert point(axes, "o") == pytest.approx((found.excess_air.magnitude, 8.9), abs=1e-9)
    assert point(axes, "s")[1] == pytest.approx(found.carbon_dioxide_dry_derived.magnitude, abs=1e-9)
    oxygen = axes.lines[1]
    assert np.interp(found.excess_air.magnitude, oxygen.get_xdata(), oxygen.get_ydata()) == pytest.approx(8.9, abs=0.01)
    assert "excess air / %" in words and "O$_2$ measured: 8.9 %" in words and "CO$_2$ derived: 6.8 %" in words


def test_the_knee_stands_at_the_dew_point():
    axes = plot.flue_losses(flue_temperature="55 degC", oxygen_dry="5 %", **FLUE)
    words = drawn(axes)
    found = fw.flue_analysis(flue_temperature="55 degC", oxygen_dry="5 %", **FLUE)
    assert point(axes, "o") == pytest.approx((55.0, found.efficiency_net.magnitude))
    assert f"water dew point {found.water_dew_point.magnitude:.0f} °C" in words
    assert "flue temperature / °C" in words
    net = axes.lines[0]
    slopes = np.diff(net.get_ydata()) / np.diff(net.get_xdata())
    knee = net.get_xdata()[1:-1][np.argmax(np.diff(slopes))]
    assert knee == pytest.approx(found.water_dew_point.magnitude, abs=1.0)


def test_cool_down_marks_the_times_of_both_states():
    radiators = {
        "name": "radiators",
        "opening": "opened_after",
        "flow_length": "20 m",
        "return_length": "20 m",
        "pipe_heat_capacity": "800 J/(m K)",
        "pipe_loss": "0.8 W/(m K)",
        "emitter_output": "6000 W",
        "emitter_heat_capacity": "90 kJ/K",
        "circuit_temperature": "18 degC",
    }
    found = fw.cool_down(circuits=[radiators], **BLOCK)
    axes = plot.cool_down(circuits=[radiators], first="closed", second="opened", **BLOCK)
    words = drawn(axes)
    assert "block, closed" in words and "block, opened" in words and "target, 60 °C" in words
    assert point(axes, "o") == pytest.approx((found.time.magnitude, 60.0), rel=0.01)
    assert point(axes, "s") == pytest.approx((found.time_after.magnitude, 60.0), rel=0.01)
    styles = {line.get_linestyle() for line in axes.lines}
    assert {"-", "--"} <= styles


def test_pipe_loss_falls_with_insulation():
    axes = plot.pipe_loss(insulation_thickness="13 mm", **PIPE)
    words = drawn(axes)
    found = fw.pipe_heat_loss(insulation_thickness="13 mm", **PIPE)
    assert point(axes, "o") == pytest.approx((13.0, found.heat_loss_per_length.magnitude))
    assert "heat loss / (W/m)" in words and "bare" in words
    assert (np.diff(axes.lines[0].get_ydata()) < 0).all()


def measured():
    return {
        "fuel": "G20",
        "oxygen_dry": fw.uncertain("8.9 %", accuracy="0.3 %"),
        "carbon_monoxide_dry": fw.uncertain("310 ppm", accuracy="20 ppm"),
        "flue_temperature": fw.uncertain("212 degC", accuracy="2 K"),
        "air_temperature": fw.uncertain("18 degC", accuracy="1 K"),
    }


def test_budget_bars_are_the_shares():
    uncertainty = fw.flue_analysis.uncertainty(**measured())
    axes = plot.budget(uncertainty, ["carbon_monoxide_ratio", "efficiency_net"])
    assert "share of the variance / %" in drawn(axes)
    widths = [bar.get_width() for bar in axes.patches]
    inputs = ["oxygen_dry", "carbon_monoxide_dry", "flue_temperature", "air_temperature"]
    shares = [100 * uncertainty.budget[r][n] for r in ("carbon_monoxide_ratio", "efficiency_net") for n in inputs]
    assert widths == pytest.approx(shares)
    assert len({bar.get_hatch() for bar in axes.patches}) == 2


def test_joint_counts_the_draws_within_the_limit():
    draws = fw.flue_analysis.monte_carlo(trials=4000, seed=5, **measured())
    axes = plot.joint(fw.flue_analysis, draws, "carbon_monoxide_ratio", "efficiency_net", at_most={"carbon_monoxide_ratio": "0.0047"})
    within = 100 * (draws["carbon_monoxide_ratio"] <= 0.0047).mean()
    words = drawn(axes)
    assert 0 < within < 100 and f"within: {within:.1f} % of 4000 draws" in words
    assert "limit: at most 0.0047" in words
    with pytest.raises(fw.Error, match="oxygen_dry_derived"):
        plot.joint(fw.flue_analysis, draws, "carbon_monoxide_ratio", "efficiency_net", at_most={"oxygen_dry_derived": "3 %"})


def test_the_gauge_drifts_with_the_gas():
    given = {"installation_volume": "16.3 L", "test_pressure": "20 mbar", "pressure_drop": "0.5 mbar", "test_duration": "2 min"}
    axes = plot.gauge_drift(temperature_change="0.5 K", minutes=5, **given)
    words = drawn(axes)
    found = fw.tightness_test(**given)
    ends = sorted(line.get_ydata()[-1] for line in axes.lines)
    drift = 0.5 * found.temperature_sensitivity.magnitude
    assert ends == pytest.approx(sorted([20, 20 + drift, 20 - drift, 20 - 1.25, 20 - 1.25 + drift]))
    assert "gauge pressure / mbar" in words and found.leak_rate_uncorrected.show(3) in words


def test_a_surface_has_its_numbers_and_shows_refusals():
    swept = fw.flue_analysis.sweep({"oxygen_dry": ("2 %", "12 %"), "flue_temperature": ("40 degC", "240 degC")}, points=9, **FLUE)
    words = drawn(plot.surface(swept, "efficiency_net"))
    assert "efficiency net / %" in words and "90" in words
    refused = fw.liquid_water.sweep({"temperature": ("60 degC", "140 degC"), "pressure": ("1 bar", "5 bar")}, points=9)
    assert "hatched: refused" in drawn(plot.surface(refused, "density"))
    line = plot.surface(fw.liquid_water.sweep({"temperature": ("10 degC", "90 degC")}, points=5), "density")
    assert line.lines[0].get_ydata()[0] == pytest.approx(999.7, abs=0.1)


def test_pictures_are_drawn_on_given_axes_and_returned():
    _, given = pyplot.subplots()
    assert plot.combustion(fuel="G31", ax=given) is given
