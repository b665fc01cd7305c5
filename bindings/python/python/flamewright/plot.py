"""Pictures of the sums: drawn on matplotlib axes, which are returned so that you can change them.

Every picture takes the words of the calculation it draws, computes, and draws. Units stand on the
axes. Lines differ by dash and by a label at the line, never by colour alone, so that a black and
white print and a colour-blind reader lose nothing; the colours are those of Okabe and Ito (2008).

matplotlib is needed (``pip install "flamewright[plot]"``) and imported when a picture is drawn.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ._calculation import Calculation, Sweep, Uncertainty
from ._errors import Error
from ._record import Value

if TYPE_CHECKING:
    from matplotlib.axes import Axes

BLACK, BLUE, ORANGE, GREEN, PURPLE, GREY = "#000000", "#0072B2", "#D55E00", "#007D5A", "#A0508A", "#707070"
_BOX = {"boxstyle": "square,pad=0.15", "facecolor": "white", "edgecolor": "none", "alpha": 0.85}


def _axes(ax: Axes | None, title: str, across: str, up: str) -> Axes:
    if ax is None:
        try:
            from matplotlib import pyplot
        except ModuleNotFoundError as missing:
            raise ModuleNotFoundError('pictures need matplotlib: pip install "flamewright[plot]"') from missing
        _, ax = pyplot.subplots(figsize=(7.2, 4.5), layout="constrained")
    ax.set_title(title, loc="left", fontsize=11)
    ax.set_xlabel(across)
    ax.set_ylabel(up)
    ax.spines[["top", "right"]].set_visible(False)
    ax.grid(True, color="#dddddd", linewidth=0.6)
    ax.set_axisbelow(True)
    return ax


def _label(ax: Axes, x: float, y: float, text: str, colour: str = BLACK, *, dx: float = 0, dy: float = 0, **more: Any) -> None:
    ax.annotate(text, (x, y), xytext=(dx, dy), textcoords="offset points", color=colour, fontsize=9, bbox=_BOX, zorder=6, **more)


def _number(value: Any) -> float:
    return float(value.magnitude)


def _words(name: str) -> str:
    return name.replace("_", " ")


def _titled(name: str, field: Mapping[str, Any]) -> str:
    unit = f" / {field['unit']}" if field["unit"] else ""
    basis = f" ({field['basis']})" if field["basis"] and field["basis"] not in name else ""
    return f"{_words(name)}{basis}{unit}"


def _per_field(call: Calculation[Any], name: str, given: Any) -> float:
    """A value given for an input, in that input's own unit."""
    values = call._read_input(name, given)
    field = call.input_fields[name]
    return float((values - field["unit_offset"]) / field["unit_factor"])


def combustion(
    *,
    fuel: Any,
    oxygen_dry: Any = None,
    carbon_dioxide_dry: Any = None,
    carbon_monoxide_dry: Any = "0 ppm",
    most_excess_air: float = 150.0,
    ax: Axes | None = None,
) -> Axes:
    """Carbon dioxide and oxygen of the dry flue gas against excess air, with the reading on the curves.

    ``most_excess_air`` (per cent) is the right-hand end of the picture.
    """
    from . import calculation

    products = calculation("combustion_products")
    excess = np.linspace(0.0, most_excess_air, 301)
    curve = products(fuel=fuel, excess_air_ratio=(1.0 + excess / 100.0, ""))
    oxygen, dioxide = curve["oxygen_dry"].magnitude, curve["carbon_dioxide_dry"].magnitude
    name = fuel if isinstance(fuel, str) else "the fuel"
    ax = _axes(ax, f"Flue gas of {name}, dry", "excess air / %", "volume fraction, dry / %")
    ax.plot(excess, dioxide, color=BLACK, linewidth=1.8)
    ax.plot(excess, oxygen, color=BLUE, linewidth=1.8, linestyle="--")
    end = 0.86 * most_excess_air
    _label(ax, end, float(np.interp(end, excess, dioxide)), "CO$_2$", dy=6, ha="center")
    _label(ax, end, float(np.interp(end, excess, oxygen)), "O$_2$", BLUE, dy=-16, ha="center")
    _label(ax, 0, dioxide[0], f"most CO$_2$ of this fuel: {dioxide[0]:.1f} %", dx=12, dy=4)
    if oxygen_dry is not None or carbon_dioxide_dry is not None:
        reading = {k: v for k, v in (("oxygen_dry", oxygen_dry), ("carbon_dioxide_dry", carbon_dioxide_dry)) if v is not None}
        # The temperatures have no part in the excess air.
        analysis = calculation("flue_analysis")
        found = analysis(fuel=fuel, carbon_monoxide_dry=carbon_monoxide_dry, flue_temperature="100 degC", air_temperature="20 degC", **reading)
        at = _number(found["excess_air"])
        for field, derived, marker, colour, curve_of in (
            ("oxygen_dry", "oxygen_dry_derived", "o", BLUE, oxygen),
            ("carbon_dioxide_dry", "carbon_dioxide_dry_derived", "s", BLACK, dioxide),
        ):
            measured = field in reading
            height = _per_field(analysis, field, reading[field]) if measured else _number(found[derived])
            ax.plot([at], [height], marker, color=colour, markersize=8, markerfacecolor=colour if measured else "white", zorder=5)
            above = float(np.interp(0.6 * at, excess, curve_of)) < height
            gas = "O$_2$" if field == "oxygen_dry" else "CO$_2$"
            word = "measured" if measured else "derived"
            _label(ax, at, height, f"{gas} {word}: {height:.1f} %", colour, dx=10, dy=-16 if above else 8)
        ax.axvline(at, color=GREY, linewidth=0.9, linestyle=":")
        _label(ax, at, 0, f"{at:.0f} % excess air", GREY, dx=5, dy=8)
    ax.set_xlim(0, most_excess_air)
    ax.set_ylim(0, None)
    return ax


def flue_losses(*, lowest: str = "30 degC", highest: str = "250 degC", ax: Axes | None = None, **given: Any) -> Axes:
    """Efficiency, gross and net, and flue loss against flue temperature, with the knee where water condenses.

    ``given`` are the inputs of ``flue_analysis``; a ``flue_temperature`` among them is marked.
    """
    from . import calculation

    analysis = calculation("flue_analysis")
    reading = given.pop("flue_temperature", None)
    ends = [_per_field(analysis, "flue_temperature", end) for end in (lowest, highest)]
    temperature = np.linspace(ends[0], ends[1], 441)
    result = analysis(flue_temperature=(temperature, "degC"), **given)
    curves = (
        ("efficiency_net", "efficiency, net", BLACK, "-"),
        ("efficiency_gross", "efficiency, gross", BLUE, "--"),
        ("flue_loss_net", "flue loss, net, without condensing", ORANGE, "-."),
    )
    ax = _axes(ax, "Flue loss and efficiency against flue temperature", "flue temperature / °C", "share of the heat input / %")
    at = None if reading is None else _per_field(analysis, "flue_temperature", reading)
    marked = 0.0 if at is None else (at - ends[0]) / (ends[1] - ends[0])
    for name, label, colour, style in curves:
        values = result[name].magnitude
        ax.plot(temperature, values, color=colour, linestyle=style, linewidth=1.8)
        place = ends[0] + (0.3 if marked > 0.6 else 0.8) * (ends[1] - ends[0])
        _label(ax, place, float(np.interp(place, temperature, values)), label, colour, dy=12 if name == "flue_loss_net" else 8, ha="center")
    dew = float(np.nanmedian(result["water_dew_point"].magnitude))
    if ends[0] < dew < ends[1]:
        ax.axvline(dew, color=GREY, linestyle=":", linewidth=1.2)
        middle = float(np.nanmean([np.nanmin(result["efficiency_gross"].magnitude), np.nanmax(result["flue_loss_net"].magnitude)]))
        _label(ax, dew, middle, f"water dew point {dew:.0f} °C:\nleft of it water condenses", GREY, dx=6, va="center")
    if at is not None:
        found = analysis(flue_temperature=reading, **given)
        for (name, _, colour, _), marker in zip(curves, "os^", strict=True):
            height = _number(found[name])
            ax.plot([at], [height], marker, color=colour, markersize=7, zorder=5)
            _label(ax, at, height, f"{height:.1f} %", colour, dx=7, dy=6 if name == "flue_loss_net" else -13)
    ax.axhline(100, color=GREY, linewidth=0.7)
    ax.set_xlim(*ends)
    return ax


def cool_down(*, ax: Axes | None = None, first: str = "before", second: str = "after", **given: Any) -> Axes:
    """Temperatures of a cooling block and its pipes against time, with thresholds and when they are met.

    ``given`` are the settings and inputs of ``cool_down``. Where a circuit opens or closes between
    two states, both are drawn: ``first`` with full lines, ``second`` with dashed ones.
    """
    from . import calculation

    tables = calculation("cool_down").tables(**given)
    ax = _axes(ax, "Cool-down of the hot block", "time / min", "temperature / °C")
    watched = given.get("watched", "block")
    states = [(s, words, style) for s, words, style in (("", first, "-"), (" after", second, "--")) if f"temperatures{s}" in tables]
    target = _per_field(calculation("cool_down"), "target_temperature", given["target_temperature"])
    levels = {"target": target}
    if "thresholds" in tables:
        named = tables["thresholds"]
        levels |= dict(zip(named["rows"], named["columns"]["threshold"]["values"], strict=True))
    traces = [{n: np.asarray(c["values"]) for n, c in tables[f"temperatures{s}"]["columns"].items()} for s, _, _ in states]
    longest = max(trace["time"][-1] for trace in traces)
    unlike = [name for name in ("return_end",) if name in traces[0] and name != watched]
    for (_, words, style), trace, marker in zip(states, traces, "os", strict=False):
        two = f", {words}" if len(states) > 1 else ""
        for name, colour, width in ((watched, BLACK, 2.0), *((n, BLUE, 1.3) for n in unlike)):
            ax.plot(trace["time"], trace[name], color=colour, linestyle=style, linewidth=width, label=f"{_words(name)}{two}")
        for level in sorted(set(levels.values())):
            under = np.flatnonzero(trace[watched] <= level + 1e-9)
            if not len(under):
                continue
            i = under[0]
            # The traces are dense enough that a chord serves the picture; the numbers come with it.
            times, falling = trace["time"][max(i - 1, 0) : i + 1][::-1], trace[watched][max(i - 1, 0) : i + 1][::-1]
            moment = float(np.interp(level, falling, times))
            ax.plot([moment], [level], marker, color=BLACK, markersize=7, markerfacecolor="white", zorder=5)
            late: dict[str, Any] = {"dx": -6, "ha": "right"} if moment > 0.9 * longest else {"dx": 6}
            _label(ax, moment, level, f"{moment:.1f} min" if moment < 10 else f"{moment:.0f} min", dy=8, **late)
    for name, level in levels.items():
        ax.axhline(level, color=GREY, linewidth=0.9, linestyle=":")
        if name != "target" or list(levels.values()).count(level) == 1:
            _label(ax, longest * 1.1, level, f"{name}, {level:.0f} °C", GREY, dx=2, va="center", annotation_clip=False)
    ax.set_xlim(0, longest * 1.1)
    ax.legend(frameon=False, fontsize=9, loc="upper right", handlelength=3)
    return ax


def pipe_loss(*, thickest: str = "50 mm", ax: Axes | None = None, **given: Any) -> Axes:
    """Heat loss per length of a pipe against the thickness of its insulation.

    ``given`` are the settings and inputs of ``pipe_heat_loss``; an ``insulation_thickness`` among
    them is marked.
    """
    from . import calculation

    call = calculation("pipe_heat_loss")
    reading = given.pop("insulation_thickness", None)
    swept = call.sweep({"insulation_thickness": ("0 mm", thickest)}, points=201, **given)
    thickness, loss = swept.axes["insulation_thickness"].magnitude, swept.result["heat_loss_per_length"].magnitude
    ax = _axes(ax, "Heat loss of the pipe against its insulation", "insulation thickness / mm", "heat loss / (W/m)")
    ax.plot(thickness, loss, color=BLACK, linewidth=1.8)
    bare = loss[np.isfinite(loss)][0]
    ax.plot([thickness[0]], [bare], "s", color=BLACK, markersize=7, clip_on=False)
    _label(ax, thickness[0], bare, f"bare: {bare:.0f} W/m", dx=10, dy=-4)
    if reading is not None:
        at = _per_field(call, "insulation_thickness", reading)
        height = _number(call(insulation_thickness=reading, **given)["heat_loss_per_length"])
        ax.plot([at], [height], "o", color=ORANGE, markersize=8, zorder=5)
        _label(ax, at, height, f"{at:g} mm: {height:.1f} W/m,\n{100 * height / bare:.0f} % of the bare pipe", ORANGE, dx=10, dy=10)
    ax.set_xlim(0, thickness[-1])
    ax.set_ylim(0, None)
    return ax


def budget(uncertainty: Uncertainty, results: str | Sequence[str], *, ax: Axes | None = None) -> Axes:
    """Which input makes how much of the uncertainty: a bar an input, of one or more results."""
    names = [results] if isinstance(results, str) else list(results)
    inputs = [n for n in uncertainty.budget[names[0]] if any(uncertainty.budget[r][n] > 0.0005 for r in names)]
    ax = _axes(ax, "Uncertainty budget", "share of the variance / %", "")
    thick = 0.8 / len(names)
    looks = [(BLACK, ""), ("white", "///"), (GREY, ""), ("white", "..."), (BLUE, "")]
    if len(names) > len(looks):
        raise Error(f"a budget of {len(looks)} results at most can be read; {len(names)} were asked for", "bad_setting", field="results")
    for k, (name, (fill, hatch)) in enumerate(zip(names, looks, strict=False)):
        value = uncertainty[name]
        share = [100 * uncertainty.budget[name][n] for n in inputs]
        places = np.arange(len(inputs)) + (k - (len(names) - 1) / 2) * thick
        ax.barh(places, share, thick * 0.9, color=fill, edgecolor=BLACK, hatch=hatch, label=f"{_words(name)}: {value}")
        for place, s in zip(places, share, strict=True):
            ax.annotate(f"{s:.0f} %", (s, place), xytext=(3, 0), textcoords="offset points", va="center", fontsize=9)
    ax.set_yticks(np.arange(len(inputs)), [_words(n) for n in inputs])
    ax.set_xlim(0, 112)
    ax.set_xticks(range(0, 101, 20))
    ax.invert_yaxis()
    ax.grid(False, axis="y")
    ax.legend(frameon=False, fontsize=9, loc="upper center", bbox_to_anchor=(0.5, -0.16))
    return ax


def joint(
    call: Calculation[Any],
    draws: Mapping[str, Any],
    across: str,
    up: str,
    *,
    at_most: Mapping[str, Any] | None = None,
    at_least: Mapping[str, Any] | None = None,
    shown: int = 3000,
    ax: Axes | None = None,
) -> Axes:
    """Two results of one Monte Carlo run against each other, with limits that you state.

    ``call`` and ``draws`` are a calculation and what its ``monte_carlo`` gave. ``at_most`` and
    ``at_least`` hold limits by result, such as ``{"carbon_monoxide_ratio": "0.004"}``: yours or
    your policy's, the library has none. The share of draws within them all stands in the picture.
    """
    fields = call.output_fields
    columns = {n: (np.asarray(draws[n]) - fields[n]["unit_offset"]) / fields[n]["unit_factor"] for n in (across, up)}
    ax = _axes(ax, "Draws of one Monte Carlo run", _titled(across, fields[across]), _titled(up, fields[up]))
    look: dict[str, Any] = {"color": ORANGE, "fontsize": 9, "bbox": _BOX, "zorder": 6}
    within = np.ones(len(columns[up]), dtype=bool)
    limits = [(n, t, "at most") for n, t in (at_most or {}).items()] + [(n, t, "at least") for n, t in (at_least or {}).items()]
    for name, text, side in limits:
        if name not in columns:
            raise Error(f"a limit on {name} cannot be drawn here: the axes are {across} and {up}", "bad_setting", field=name)
        level = (call._read_output(name, text) - fields[name]["unit_offset"]) / fields[name]["unit_factor"]
        within &= columns[name] <= level if side == "at most" else columns[name] >= level
        line = ax.axvline if name == across else ax.axhline
        line(level, color=ORANGE, linewidth=1.6, linestyle="--", zorder=4)
        words = f"limit: {side} {level:.4g} {fields[name]['unit']}".rstrip()
        if name == across:
            ax.annotate(words, (level, 0.98), xycoords=ax.get_xaxis_transform(), rotation=90, va="top", ha="right", **look)
        else:
            ax.annotate(words, (0.02, level), xycoords=ax.get_yaxis_transform(), va="bottom", **look)
    some = slice(0, shown)
    for mask, marker, colour, words in ((within, "o", BLUE, "within"), (~within, "x", ORANGE, "outside")):
        share = mask.mean()
        if share and limits:
            label = f"{words}: {100 * share:.1f} % of {len(mask)} draws"
        else:
            label = "" if not share else f"{len(mask)} draws"
        ax.plot(columns[across][some][mask[some]], columns[up][some][mask[some]], marker, color=colour, markersize=3, alpha=0.5, linestyle="", label=label or None)
    r = np.corrcoef(columns[across], columns[up])[0, 1]
    ax.plot([], [], " ", label=f"correlation {r:+.2f}")
    ax.legend(frameon=True, framealpha=0.9, edgecolor="none", fontsize=9, markerscale=2.5, loc="best")
    return ax


def gauge_drift(*, temperature_change: str = "0.5 K", minutes: float = 5.0, ax: Axes | None = None, **given: Any) -> Axes:
    """What a gauge shows in a tightness test: a leak, and gas that warms or cools at the same time.

    ``given`` are inputs of ``tightness_test``, whose drop and duration give the leak drawn.
    ``temperature_change`` is how far the gas warms or cools, evenly, over the picture's ``minutes``.
    """
    from . import calculation

    call = calculation("tightness_test")
    result = call(**given)
    start = _per_field(call, "test_pressure", given["test_pressure"])
    change = _per_field(call, "temperature_rise", temperature_change)
    sensitivity = _number(result["temperature_sensitivity"])
    drop = _per_field(call, "pressure_drop", given["pressure_drop"]) / (_per_field(call, "test_duration", given["test_duration"]) / 60)
    time = np.linspace(0, minutes, 101)
    ax = _axes(ax, "The gauge during a tightness test", "time / min", "gauge pressure / mbar")
    lines = (
        ("tight, gas steady", 0.0, 0.0, GREY, ":"),
        (f"tight, gas warms {change:g} K", 0.0, 1.0, ORANGE, "-."),
        (f"tight, gas cools {change:g} K", 0.0, -1.0, BLUE, "--"),
        (f"leak of {result['leak_rate_uncorrected'].show(3)}, gas steady", 1.0, 0.0, BLACK, "-"),
        (f"the same leak, gas warms {change:g} K", 1.0, 1.0, PURPLE, (0, (1, 1, 5, 1))),
    )
    ends = []
    for label, leaking, warming, colour, style in lines:
        pressure = start - leaking * drop * time + warming * sensitivity * change * time / minutes
        ax.plot(time, pressure, color=colour, linestyle=style, linewidth=1.8)
        ends.append((pressure[-1], label, colour))
    # Labels at the ends, pushed apart where lines end close together.
    ends.sort()
    least = 0.055 * (ends[-1][0] - ends[0][0])
    heights: list[float] = []
    for height, _, _ in ends:
        heights.append(max(height, heights[-1] + least) if heights else height)
    for (_, label, colour), height in zip(ends, heights, strict=True):
        _label(ax, minutes, height, label, colour, dx=5, va="center", annotation_clip=False)
    ax.set_xlim(0, minutes)
    return ax


def surface(sweep: Sweep[Any], result: str, *, levels: int = 10, ax: Axes | None = None) -> Axes:
    """A result over the one or two inputs of a sweep: a line, or lines of equal value with their numbers."""
    fields = sweep.result._call.output_fields
    if result not in fields:
        raise Error(f"the sweep has no result {result}", "unknown_name", field=result)
    values = Value(sweep.result.si[result], fields[result]).magnitude
    names = list(sweep.axes)
    labels = [_titled(n, sweep.axes[n]._field) for n in names]
    if len(names) == 1:
        ax = _axes(ax, sweep.result._call.info["title"], labels[0], _titled(result, fields[result]))
        ax.plot(sweep.axes[names[0]].magnitude, values, color=BLACK, linewidth=1.8)
        return ax
    ax = _axes(ax, f"{sweep.result._call.info['title']}: {_titled(result, fields[result])}", labels[0], labels[1])
    across, up = (sweep.axes[n].magnitude for n in names)
    masked = np.ma.masked_invalid(values.T)
    filled = ax.contourf(across, up, masked, levels, cmap="Greys", alpha=0.35)
    lines = ax.contour(across, up, masked, filled.levels, colors=BLACK, linewidths=1.0)
    ax.clabel(lines, fontsize=9)
    if masked.mask.any():
        ax.contourf(across, up, masked.mask.astype(float), [0.5, 1.5], colors="none", hatches=["xx"])
        ax.plot([], [], "s", markerfacecolor="white", markeredgecolor=BLACK, label="hatched: refused")
        ax.legend(fontsize=9)
    return ax


__all__ = ["budget", "combustion", "cool_down", "flue_losses", "gauge_drift", "joint", "pipe_loss", "surface"]
