"""Calculations: callable by keyword, with text, quantities, arrays."""

from __future__ import annotations

import inspect
import keyword
from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from functools import cached_property
from typing import Any, Generic, Literal, TypeVar, cast

import numpy as np

from . import _flamewright
from ._errors import Error
from ._flamewright import FirstOrder, LaidOver
from ._progress import said
from ._record import Record, Value

Uncertainties = dict[int, tuple[float, float, str]]
CERTAIN = (0.0, float("inf"), "normal")
R = TypeVar("R", bound=Record)


class Uncertain:
    """A value with what is known of its uncertainty; made by :func:`uncertain`."""

    def __init__(self, readings: list[Any], repeated: bool, statements: dict[str, Any]) -> None:
        self.readings = readings
        self.repeated = repeated
        self.statements = statements


def uncertain(
    value: Any = None,
    *,
    readings: Sequence[Any] | None = None,
    standard: str | None = None,
    accuracy: str | None = None,
    of_reading: str | None = None,
    of_range: str | None = None,
    range: str | None = None,
    larger_of: bool = False,
    resolution: str | None = None,
    certificate: str | None = None,
    coverage_factor: str | None = None,
    distribution: str = "rectangular",
) -> Uncertain:
    """A value, or the mean of repeated ``readings``, with what is known of its uncertainty.

    Every amount is text with its unit, in the unit of the value or another of the same kind.

    ``accuracy``, and ``of_reading`` and ``of_range`` as shares (``"5 %"``, with the ``range`` of the
    instrument), are added to one half-width of the given ``distribution`` (rectangular, triangular,
    arcsine, normal); with ``larger_of`` the larger of the share of the reading and the rest counts.
    ``resolution`` is the last digit of the instrument, ``certificate`` the expanded uncertainty of a
    calibration with its ``coverage_factor`` (2 if not given), ``standard`` a standard uncertainty. They
    combine. Of the word ``normal`` the accuracy is one standard uncertainty.

    >>> import flamewright as fw
    >>> print(fw.static_head(height=fw.uncertain("6.5 m", accuracy="0.1 m")).static_pressure)
    0.6373 bar (± 0.011 bar, k = 2)
    >>> print(fw.static_head(height=fw.uncertain(readings=["6.4 m", "6.5 m", "6.6 m"])).static_pressure)
    0.6373 bar (± 0.026 bar, k = 4.5)
    """
    if (value is None) == (readings is None):
        raise Error("uncertain: give either a value or readings", "bad_setting", field="value")
    statements = {
        "accuracy": accuracy, "of_reading": of_reading, "of_range": of_range, "range": range, "larger_of": larger_of or None,
        "resolution": resolution, "certificate": certificate, "coverage_factor": coverage_factor,
        "standard_uncertainty": standard, "distribution": distribution,
    }  # fmt: skip
    given = {name: amount for name, amount in statements.items() if amount is not None}
    return Uncertain([value] if readings is None else list(readings), readings is not None, given)


class Calculation(Generic[R]):
    """A calculation of the catalogue; call it with keywords.

    Every value is text with its unit (``"62 degC"``), a quantity of any pint registry, a
    :class:`Value` of an earlier result, an array as ``(array, "degC")`` or a pint array. Where
    arrays are given the result has arrays, and ``status`` says what became of each row.
    """

    def __init__(self, name: str) -> None:
        self.name = name
        self.__name__ = name
        self.__qualname__ = name
        self.__module__ = "flamewright"

    def __reduce__(self) -> Any:
        return (Calculation, (self.name,))

    @cached_property
    def info(self) -> dict[str, Any]:
        """Name, meaning, fields, settings, sources, accuracy, cautions."""
        info: dict[str, Any] = _flamewright.describe(self.name)
        return info

    @cached_property
    def input_fields(self) -> dict[str, dict[str, Any]]:
        """Input fields by name."""
        return {f["name"]: f for f in self.info["inputs"]}

    @cached_property
    def output_fields(self) -> dict[str, dict[str, Any]]:
        """Result fields by name."""
        return {f["name"]: f for f in self.info["outputs"]}

    @cached_property
    def _places(self) -> dict[str, int]:
        """Places of the results by name."""
        return {name: place for place, name in enumerate(self.output_fields)}

    @cached_property
    def _settings(self) -> frozenset[str]:
        return frozenset(s["name"] for s in self.info["settings"])

    @cached_property
    def _default(self) -> Any:
        return _flamewright.prepare(self.name, {})

    def _prepare(self, settings: dict[str, Any]) -> Any:
        if not settings:
            return self._default
        try:
            key: Any = tuple(settings.items())
            cache = self.__dict__.setdefault("_cache", {})
            if key not in cache:
                if len(cache) > 64:
                    cache.clear()
                cache[key] = _flamewright.prepare(self.name, settings)
            return cache[key]
        except TypeError:  # a setting that cannot be a key, such as a composition
            return _flamewright.prepare(self.name, settings)

    @cached_property
    def _keywords(self) -> dict[str, tuple[str, bool, int | None]]:
        """By keyword: the name, whether it is a setting, the place among the inputs if it is one."""
        places = {name: place for place, name in enumerate(self.input_fields)}
        names = [*places, *(s for s in self._settings if s not in places)]
        # A name may be that of a setting and of a field: one thing, which both need.
        keywords = {name: (name, name in self._settings, places.get(name)) for name in names}
        return keywords | {argument(name): keywords[name] for name in names}

    @cached_property
    def _defaults(self) -> list[float]:
        """SI values of the inputs that have a default, not-a-number for the others."""
        fields = self.input_fields.values()
        return [float("nan") if f["default"] is None else f["default"] * f["unit_factor"] + f["unit_offset"] for f in fields]

    def _split(self, given: Mapping[str, Any]) -> tuple[dict[str, Any], dict[str, Any]]:
        settings, fields = {}, {}
        keywords = self._keywords
        for word, value in given.items():
            known = keywords.get(word)
            if known is None:
                raise unknown(self.name, word, [*self.input_fields, *self._settings])
            name, setting, place = known
            if setting and value is not None:
                settings[name] = value
            if place is not None:
                fields[name] = value
        return settings, fields

    def _read(self, fields: Mapping[str, Any], bare_si: bool) -> tuple[list[Any], Any, Uncertainties]:
        """SI values in field order, the pint registry of a quantity, standard uncertainties."""
        values: list[Any] = self._defaults.copy()
        registry = None
        uncertainties: Uncertainties = {}
        for name, value in fields.items():
            i: int = self._keywords[name][2]  # type: ignore[assignment]
            if isinstance(value, str):
                values[i] = _flamewright.read(self.name, False, i, value)
            elif value is None:
                continue
            elif isinstance(value, Uncertain):
                values[i], uncertainties[i] = self._stated(name, i, value, bare_si)
            elif isinstance(value, Value):
                self._same_kind(self.input_fields[name], value)
                values[i] = value.si
            elif isinstance(value, tuple) and len(value) == 2 and isinstance(value[1], str):
                values[i] = self._numbers(name, i, value[0], value[1])
            elif (units := getattr(value, "units", None)) is not None and hasattr(value, "magnitude"):
                registry = getattr(value, "_REGISTRY", registry)
                values[i] = self._numbers(name, i, value.magnitude, units)
            elif isinstance(value, (bool, np.bool_)):
                example = self.input_fields[name]["example"]
                raise Error(f"{name} = {value}: a value with its unit is needed, for instance \"{example}\"", "unit_missing", field=name)
            elif bare_si or not self.input_fields[name]["unit"]:
                values[i] = floats(name, value)
            else:
                if np.ndim(value) == 0:
                    _flamewright.read(self.name, False, i, f"{value}")  # refuses, saying how to write it
                raise Error(f"{name}: give the unit, for instance (array, \"{self.input_fields[name]['unit']}\")", "unit_missing", field=name)
        return values, registry, uncertainties

    def _numbers(self, name: str, i: int, numbers: Any, unit: Any) -> Any:
        """SI of numbers in a unit: text, or the unit of a quantity, whose spelling out is slow and kept."""
        # pint's units compare within one registry only; what they are made of compares everywhere.
        key = unit if isinstance(unit, str) else getattr(unit, "_units", None)
        known: dict[Any, tuple[float, float]] = self.__dict__.setdefault("_scales", {})
        try:
            factor, offset = known[i, key]
        except (KeyError, TypeError):
            factor, offset = _flamewright.scale(self.name, False, i, str(unit))
            if isinstance(key, Hashable) and key is not None and len(known) < 256:
                known[i, key] = factor, offset
        given = floats(name, numbers)
        if (factor, offset) == (1.0, 0.0):
            return given
        si = given * factor
        si += offset
        return si

    def _same_kind(self, field: Mapping[str, Any], value: Value) -> None:
        given = value._field
        if given["dimension"] != field["dimension"] or given["quantity"] != field["quantity"]:
            raise Error(f"{field['name']}: a {field['quantity']} is needed, not a {given['quantity']}", "wrong_dimension", field=field["name"])
        if given["basis"] != field["basis"]:
            needed, has = field["basis"] or "no", given["basis"] or "no"
            raise Error(f"{field['name']}: a value on {needed} basis is needed, this one is on {has} basis", "wrong_basis", field=field["name"])

    def _stated(self, name: str, i: int, given: Uncertain, bare_si: bool) -> tuple[Any, tuple[float, float, str]]:
        """SI value, and standard uncertainty, degrees of freedom and shape, of what is stated."""
        readings = [self._read({name: reading}, bare_si)[0][i] for reading in given.readings]
        if any(isinstance(reading, np.ndarray) for reading in readings):
            return readings[0], CERTAIN  # refused where columns are met
        value, standard, freedom, shape = _flamewright.stated(self.name, i, readings, given.repeated, given.statements)
        return value, (standard, freedom, shape)

    def _wanted(self, outputs: Sequence[str] | None) -> dict[str, int]:
        """The results wanted, in field order, with their places."""
        places = self._places
        if outputs is None:
            return places
        if isinstance(outputs, str):
            raise Error(f'outputs = "{outputs}": a list of names is needed, such as ["{outputs}"]', "bad_setting", field="outputs")
        for name in outputs:
            if name not in places:
                raise unknown(f"{self.name} results", name, list(places))
        return {name: place for name, place in places.items() if name in outputs}

    def _evaluate(self, given: Mapping[str, Any], bare_si: bool, outputs: Sequence[str] | None) -> R:
        settings, fields = self._split(given)
        wanted = self._wanted(outputs)
        prepared = self._prepare(settings)
        values, registry, uncertainties = self._read(fields, bare_si)
        if np.ndarray in map(type, values):
            if uncertainties:
                name = list(self.input_fields)[min(uncertainties)]
                why = "uncertainty is computed for single readings, not beside columns: leave it out, or go row by row"
                raise Error(f"{name}: {why}", "bad_setting", field=name)
            return cast("R", self._columns(prepared, values, registry, wanted))
        output, notices = prepared.evaluate(values)
        worth = {}
        if uncertainties:
            standard, freedom, _ = zip(*(uncertainties.get(i, CERTAIN) for i in range(len(values))), strict=True)
            result = prepared.first_order(values, standard, [], freedom)
            worth = dict(zip(self.output_fields, zip(result.standard, result.coverage_factor, strict=True), strict=True))
        values_by_name = dict(zip(wanted, output, strict=True)) if outputs is None else {name: output[place] for name, place in wanted.items()}
        texts = tuple([text for _, _, text in notices]) if notices else ()
        return cast("R", Record(self, values_by_name, texts, None, registry, worth))

    def _columns(self, prepared: Any, values: list[Any], registry: Any, wanted: Mapping[str, int]) -> Record:
        shape = np.broadcast_shapes(*(np.shape(v) for v in values if isinstance(v, np.ndarray)))
        flat = [_spread(v, shape) if isinstance(v, np.ndarray) else v for v in values]
        rows = int(np.prod(shape))
        with said(self.name, rows):
            outputs, status = prepared.evaluate_columns(flat, rows, list(wanted.values()))
        if len(shape) != 1:
            outputs = [out.reshape(shape) for out in outputs]
        columns = dict(zip(wanted, outputs, strict=True))
        return Record(self, columns, (), status.reshape(shape), registry)

    def __call__(self, *, outputs: Sequence[str] | None = None, **given: Any) -> R:
        return self._evaluate(given, bare_si=False, outputs=outputs)

    def evaluate(self, *, outputs: Sequence[str] | None = None, **given: Any) -> R:
        """As a call, but bare numbers and arrays are taken as SI.

        ``outputs``, here as in a call, names the results wanted: over arrays only these take memory and
        the time to write it. Status and values are the same, whichever are wanted. Arrays of one short call
        may lie in one block of memory, which lasts as long as any of them: copy one that is kept for long.

        >>> import flamewright as fw
        >>> print(fw.liquid_water(temperature=([20.0, 60.0], "degC"), outputs=["density"]))
        Properties of liquid water
        density  [998.3 983.3] kg/m³
        """
        return self._evaluate(given, bare_si=True, outputs=outputs)

    def over(
        self,
        table: Any,
        /,
        *,
        columns: Mapping[str, str] | None = None,
        units: Mapping[str, str] | Literal["si"] | None = None,
        outputs: Sequence[str] | None = None,
        output_units: Mapping[str, str] | Literal["si"] | None = None,
        keep: bool | Sequence[str] = True,
        prefix: str = "",
        reasons: bool = True,
        **given: Any,
    ) -> LaidOver:
        """Lays the calculation over an Arrow table; the result is read once, by anything that reads Arrow.

        ``table`` is whatever hands over Arrow data: a pyarrow table, batch or reader, a Polars or
        pandas frame, a DuckDB relation, or an iterable of such batches (a Polars lazy frame gives
        its own). A reader is worked through batch by batch, in constant memory.

        Columns fill the input fields of their name; ``columns`` names the column of a field that is
        called otherwise, and ``given`` holds settings and the fields that are the same in every row.
        The unit of a column is what its field metadata says under ``unit``, or what ``units`` says for
        the field; ``units="si"`` takes columns without one as SI.

        All columns are kept (``keep`` names some, or ``False`` none); the results, or those that
        ``outputs`` names, come behind them in the units they are shown in, or in ``output_units`` (``"si"``
        for SI), after ``prefix``. ``status`` has a number a row: 0 fine, 1 a notice, 256 and more where
        the row was refused; its results are then null and ``reason`` says why. A null in the table is
        a value not given: refused, unless the field may be left out.
        """
        settings, fields = self._split(given)
        fields = {name: value for name, value in fields.items() if value is not None}
        for name, value in fields.items():
            number: Any = value[0] if isinstance(value, tuple) else getattr(value, "magnitude", value)
            if isinstance(value, Uncertain) or np.ndim(number):
                raise Error(f"{name}: one value for every row is needed; values that differ are a column of the table", "bad_setting", field=name)
        values, _, _ = self._read(fields, bare_si=False)
        constants = [(name, float(si)) for name, si in zip(self.input_fields, values, strict=True) if name in fields]
        options = {
            "columns": dict(columns or {}),
            "units": units if isinstance(units, str) else dict(units or {}),
            "outputs": outputs,
            "output_units": output_units if isinstance(output_units, str) else dict(output_units or {}),
            "keep": keep,
            "prefix": prefix,
            "reasons": reasons,
        }
        laid: LaidOver = self._prepare(settings).over(table, options, constants)
        return laid

    def fixed(self, **settings: Any) -> Callable[..., Any]:
        """The fast path: settings fixed; SI floats by keyword in, SI floats out, by name or in order as of a named tuple.

        >>> import flamewright as fw
        >>> water = fw.liquid_water.fixed()
        >>> round(water(temperature=333.15).density, 1)
        983.3
        """
        # No function of Python in between: it would cost as much as the sum.
        fast: Callable[..., Any] = self._prepare(settings).si
        return fast

    def steps(self, **given: Any) -> Steps:
        """The working: every line of the sum with the numbers put in. A notebook shows it as LaTeX.

        >>> import flamewright as fw
        >>> print(fw.thermostat_differential.steps(cut_out_temperature="81.8 degC", cut_in_temperature="74.2 degC"))
        Differential of a thermostat
        Δt = fall = 7.6 K  [IEC 60730-1, from memory: difference of the operating values]
        t_m = t_on + Δt / 2 = 347.35 K + 7.6 K / 2 = 351.15 K (78 °C)  [middle of the operating values]
        """
        settings, fields = self._split(given)
        prepared = self._prepare(settings)
        values, _, _ = self._read(fields, bare_si=False)
        return Steps(self.info["title"], prepared.steps(values))

    def tables(self, **given: Any) -> dict[str, Any]:
        """Traces and lists that go with the result, each column with its unit.

        >>> import flamewright as fw
        >>> pipes = [{"tube": "copper 22x0.9", "length": "12 m"}]
        >>> fw.system_content.tables(pipes=pipes)["pipes"]["columns"]["length"]
        {'unit': 'm', 'values': [12.0]}
        """
        settings, fields = self._split(given)
        prepared = self._prepare(settings)
        values, _, _ = self._read(fields, bare_si=False)
        tables: dict[str, Any] = prepared.tables(values)
        return tables

    def uncertainty(self, correlations: Mapping[tuple[str, str], float] | None = None, **given: Any) -> Uncertainty:
        """First-order propagation: standard uncertainties, correlations and the budget of each result.

        >>> import flamewright as fw
        >>> print(fw.thermostat_differential.uncertainty(
        ...     cut_out_temperature=fw.uncertain("81.8 degC", accuracy="0.5 K"),
        ...     cut_in_temperature=fw.uncertain("74.2 degC", accuracy="0.5 K", distribution="triangular")))
        Differential of a thermostat
        differential  7.6 K (± 0.71 K, k = 2)  [cut_out_temperature 67 %, cut_in_temperature 33 %]
        mid_point     78 °C (± 0.35 °C, k = 2)  [cut_out_temperature 67 %, cut_in_temperature 33 %]
        """
        prepared, values, standard, freedom, _, pairs = self._propagation(correlations, given)
        return Uncertainty(self, prepared.first_order(values, standard, pairs, freedom))

    def fixed_uncertainty(self, **settings: Any) -> Callable[..., Uncertainty]:
        """The fast path of :meth:`uncertainty`: settings fixed; SI floats, or pairs of one and its standard
        uncertainty, by keyword in.

        >>> import flamewright as fw
        >>> water = fw.liquid_water.fixed_uncertainty()
        >>> print(water(temperature=(333.15, 0.5))["density"])
        983.3 kg/m³ (± 0.51 kg/m³, k = 2)
        """
        propagate = self._prepare(settings).si_first_order
        return lambda **fields: Uncertainty(self, propagate(**fields))

    def monte_carlo(
        self, *, trials: int = 100_000, seed: int = 1, correlations: Mapping[tuple[str, str], float] | None = None, **given: Any
    ) -> dict[str, Any]:
        """Draws of each result (SI arrays), reproducible from ``seed``.

        >>> import flamewright as fw
        >>> draws = fw.liquid_water.monte_carlo(temperature=fw.uncertain("60 degC", standard="0.5 K"), trials=10_000)
        >>> round(float(draws["density"].mean()), 1)
        983.3
        """
        prepared, values, standard, _, shapes, pairs = self._propagation(correlations, given)
        with said(self.name, trials):
            draws = prepared.monte_carlo(values, standard, pairs, shapes, trials, seed)
        return dict(zip(self.output_fields, draws, strict=True))

    def goal_seek(self, *, of: str, wanted: Any, vary: str, low: Any, high: Any, **given: Any) -> Goal[R]:
        """The input ``vary``, between ``low`` and ``high``, for which the result ``of`` is ``wanted``.

        An answer found is an answer: the range is bracketed, and where there is none that is said,
        with the values between which the result runs.

        >>> import flamewright as fw
        >>> fw.liquid_water.goal_seek(of="density", wanted="983 kg/m3", vary="temperature", low="10 degC", high="90 degC").value
        <60.49173 °C>
        """
        if of not in self.output_fields:
            raise unknown(f"{self.name} results", of, list(self.output_fields))
        if vary in given:
            raise Error(f"{vary}: it is sought, so it is not to be given", "bad_setting", field=vary)
        settings, fields = self._split({**given, vary: None})
        prepared = self._prepare(settings)
        values, registry, _ = self._read(fields, bare_si=False)
        ends = [self._read_input(vary, end) for end in (low, high)]
        value, several, _ = prepared.goal_seek(values, vary, *ends, of, self._read_output(of, wanted))
        values[list(self.input_fields).index(vary)] = value
        output, notices = prepared.evaluate(values)
        result: Any = Record(self, dict(zip(self.output_fields, output, strict=True)), tuple(text for _, _, text in notices), None, registry)
        return Goal(Value(value, self.input_fields[vary]), several, result)

    def sweep(self, axes: Mapping[str, Any], /, *, points: int = 41, **given: Any) -> Sweep[R]:
        """Results with one or two inputs varied, the table behind a plot.

        ``axes`` holds by input either its ends, as ``("0 mm", "50 mm")`` in ``points`` equal steps,
        or its values, as ``(array, "mm")``. Refused places are not-a-number.

        >>> import flamewright as fw
        >>> swept = fw.liquid_water.sweep({"temperature": ("20 degC", "80 degC")}, points=3)
        >>> print(swept.result.density)
        [998.3 988.1 971.8] kg/m³
        """
        if not 1 <= len(axes) <= 2:
            raise Error("one or two inputs are varied", "bad_setting", field="axes")
        columns: dict[str, Value] = {}
        for name, wanted in axes.items():
            if name in given:
                raise Error(f"{name}: it is varied, so it is not to be given", "bad_setting", field=name)
            if name not in self.input_fields:
                raise unknown(f"{self.name} inputs", name, list(self.input_fields))
            if isinstance(wanted, (tuple, list)) and len(wanted) == 2 and not np.ndim(wanted[0]):
                ends = [self._read_input(name, end) for end in wanted]
                values = np.linspace(ends[0], ends[1], points)
            else:
                values = np.atleast_1d(self._read_input(name, wanted))
            columns[name] = Value(values, self.input_fields[name])
        grid = np.meshgrid(*(c.si for c in columns.values()), indexing="ij")
        spread = {name: Value(values, self.input_fields[name]) for name, values in zip(columns, grid, strict=True)}
        everything: dict[str, Any] = {**given, **spread}
        return Sweep(columns, self(**everything))

    def _read_input(self, name: str, given: Any) -> Any:
        """The SI value of something given for one input."""
        if name not in self.input_fields:
            raise unknown(self.name, name, list(self.input_fields))
        values, _, _ = self._read({name: given}, bare_si=False)
        return values[list(self.input_fields).index(name)]

    def _read_output(self, name: str, given: Any) -> float:
        """The SI value of something given for one result."""
        field = self.output_fields[name]
        if isinstance(given, Value):
            self._same_kind(field, given)
            return float(given.si)
        place = list(self.output_fields).index(name)
        if hasattr(given, "magnitude") and hasattr(given, "units"):
            factor, offset = _flamewright.scale(self.name, True, place, str(given.units))
            return float(given.magnitude) * factor + offset
        si: float = _flamewright.read(self.name, True, place, f"{given}")
        return si

    def _propagation(self, correlations: Mapping[tuple[str, str], float] | None, given: Mapping[str, Any]) -> Any:
        settings, fields = self._split(given)
        prepared = self._prepare(settings)
        values, _, uncertainties = self._read(fields, bare_si=False)
        names = list(self.input_fields)
        standard, freedom, shapes = zip(*(uncertainties.get(i, CERTAIN) for i in range(len(values))), strict=True)
        for pair in correlations or {}:
            for name in pair:
                if name not in names:
                    raise unknown(self.name, name, names)
        pairs = [(names.index(a), names.index(b), r) for (a, b), r in (correlations or {}).items()]
        return prepared, values, standard, freedom, shapes, pairs

    @cached_property
    def __signature__(self) -> inspect.Signature:
        only = inspect.Parameter.KEYWORD_ONLY
        needed = [inspect.Parameter(argument(s["name"]), only) for s in self.info["settings"] if s["default"] is None]
        needed += [inspect.Parameter(argument(n), only) for n, f in self.input_fields.items() if f["default"] is None and not f["absent"]]
        optional = [inspect.Parameter(argument(s["name"]), only, default=s["default"]) for s in self.info["settings"] if s["default"] is not None]
        optional += [
            inspect.Parameter(argument(n), only, default=f["example"] if f["default"] is not None else None)
            for n, f in self.input_fields.items()
            if f["default"] is not None or f["absent"]
        ]
        parameters = {p.name: p for p in [*optional, *needed]}
        ordered = sorted(parameters.values(), key=lambda p: p.default is not inspect.Parameter.empty)
        return inspect.Signature(ordered, return_annotation="Record")

    @property
    def __doc__(self) -> str:  # type: ignore[override]
        return documentation(self.info)

    def __repr__(self) -> str:
        return f"<calculation {self.name}: {self.info['title']}>"


def argument(name: str) -> str:
    """The keyword for a setting or field: words that Python keeps for itself get an underscore behind."""
    return f"{name}_" if keyword.iskeyword(name) else name


def _spread(values: Any, shape: tuple[int, ...]) -> Any:
    """``values`` over ``shape``, one behind the other."""
    # Most arrays are so already, and broadcasting takes longer than a short batch.
    spread = values if values.shape == shape else np.broadcast_to(values, shape)
    return np.ascontiguousarray(spread).reshape(-1)


def floats(name: str, given: Any) -> Any:
    """One number as a float, many as an array of them; what is masked is not-a-number."""
    if type(given) is float:
        return given
    try:
        if np.iscomplexobj(given):
            raise TypeError("complex numbers")
        if hasattr(given, "mask") and hasattr(given, "filled"):
            return given.astype(float).filled(np.nan)
        return np.asarray(given, dtype=float) if np.ndim(given) else float(given)
    except (TypeError, ValueError) as why:
        raise Error(f"{name}: numbers are needed: {why}", "unreadable", field=name) from why


class Goal(Generic[R]):
    """What a goal seek found: the ``value`` of the input, and the ``result`` with it in place.

    ``several`` says that other values in the range would do as well; this is the lowest.
    """

    def __init__(self, value: Value, several: bool, result: R) -> None:
        self.value = value
        self.several = several
        self.result = result

    def __repr__(self) -> str:
        more = "; other values in the range give it too, this is the lowest" if self.several else ""
        return f"{self.value._field['name']} = {self.value}{more}"


class Sweep(Generic[R]):
    """Results over one or two varied inputs: ``axes`` by name, ``result`` with an array a field."""

    def __init__(self, axes: Mapping[str, Value], result: R) -> None:
        self.axes = dict(axes)
        self.result = result

    def to_frame(self) -> Any:
        """A pandas frame, a row a combination of the varied inputs."""
        frame = self.result.to_frame()
        grid = np.meshgrid(*(v.magnitude for v in self.axes.values()), indexing="ij")
        for place, (name, values) in enumerate(zip(self.axes, grid, strict=True)):
            unit = self.axes[name].units
            frame.insert(place, f"{name} [{unit}]" if unit else name, values.ravel())
        return frame

    def __repr__(self) -> str:
        spans = ", ".join(f"{n} {np.size(v.si)} values" for n, v in self.axes.items())
        return f"<sweep of {self.result._call.name} over {spans}>"


class Steps:
    """The working of a sum: plain text, or LaTeX in a notebook."""

    def __init__(self, title: str, steps: list[dict[str, str]]) -> None:
        self.title = title
        self.steps = steps

    def __iter__(self) -> Iterator[dict[str, str]]:
        return iter(self.steps)

    def __len__(self) -> int:
        return len(self.steps)

    def __repr__(self) -> str:
        return "\n".join([self.title, *(step["plain"] for step in self.steps)])

    def _repr_latex_(self) -> str:
        lines = " \\\\\n".join(step["latex"] for step in self.steps)
        return f"$$\\begin{{align*}}\n{lines}\n\\end{{align*}}$$"


class Uncertainty:
    """What the results are worth, to first order."""

    def __init__(self, call: Calculation[Any], result: FirstOrder) -> None:
        self._call = call
        self._result = result

    def _by_name(self, numbers: Sequence[float]) -> dict[str, float]:
        return dict(zip(self._call.output_fields, numbers, strict=True))

    @property
    def values(self) -> dict[str, float]:
        """The results, SI."""
        return self._by_name(self._result.outputs)

    @property
    def standard(self) -> dict[str, float]:
        """Standard uncertainty of each result, SI."""
        return self._by_name(self._result.standard)

    @property
    def coverage_factor(self) -> dict[str, float]:
        """By result, the factor that times its standard uncertainty covers about 95 % of its values."""
        return self._by_name(self._result.coverage_factor)

    @property
    def budget(self) -> dict[str, dict[str, float]]:
        """By result, the share of each uncertain input in its variance."""
        inputs = list(self._call.input_fields)
        varied = self._result.varied
        shares = map(self._result.budget, range(len(self._call.output_fields)))
        return {name: {inputs[i]: share[i] for i in varied} for name, share in zip(self._call.output_fields, shares, strict=True)}

    def __getitem__(self, name: str) -> Value:
        value, standard, factor = self._result.of(self._place(name))
        return Value(value, self._call.output_fields[name], standard, factor)

    def correlation(self, first: str, second: str) -> float:
        """Correlation coefficient of two results."""
        return self._result.correlation(self._place(first), self._place(second))

    def _place(self, name: str) -> int:
        names = list(self._call.output_fields)
        if name not in names:
            raise unknown(f"{self._call.name} results", name, names)
        return names.index(name)

    def __repr__(self) -> str:
        budget = self.budget
        wide = max(map(len, budget))
        lines = []
        for name in budget:
            shares = ", ".join(f"{n} {100 * s:.0f} %" for n, s in sorted(budget[name].items(), key=lambda p: -p[1]) if s > 0.005)
            lines.append(f"{name:<{wide}}  {self[name]}  [{shares}]")
        return f"{self._call.info['title']}\n" + "\n".join(lines)


def unknown(where: str, name: str, offered: list[str]) -> Error:
    """An unknown name, with the nearest that is known."""
    import difflib

    near = difflib.get_close_matches(name, offered, 1, 0.5)
    hint = f'did you mean "{near[0]}"?' if near else "offered: " + ", ".join(offered)
    return Error(f'{where}: "{name}" is not known; {hint}', "unknown_name", "unknown_name", name, name)


def documentation(info: Mapping[str, Any]) -> str:
    """The docstring of a calculation, from the catalogue and the examples."""
    from ._examples import EXAMPLES  # late: only who reads help needs them

    lines = [info["title"] + ".", "", info["summary"], ""]

    def fields(title: str, items: list[dict[str, Any]]) -> None:
        lines.extend([title, "-" * len(title)])
        for item in items:
            unit = item["unit"] or "number"
            basis = f", {item['basis']}" if item["basis"] else ""
            lines.append(f"{item['name']} : {item['quantity']} [{unit}]{basis}")
            limits = ""
            if item["minimum"] is not None and item["maximum"] is not None:
                limits = f" From {item['minimum']:.7g} to {item['maximum']:.7g} {unit}."
            default = "" if item["default"] is None else f" Default {item['default']:.7g}."
            absent = f" May be left out: {item['absent']}." if item["absent"] and item["minimum"] is not None else ""
            lines.append(f"    {item['doc']}{limits}{default}{absent}")
        lines.append("")

    if info["settings"]:
        lines.extend(["Settings", "--------"])
        for setting in info["settings"]:
            choices = f" One of: {', '.join(setting['choices'])}." if "choices" in setting else ""
            default = "" if setting["default"] is None else f" Default {setting['default']}."
            lines.extend([f"{argument(setting['name'])} : {setting['form']}", f"    {setting['doc']}{choices}{default}"])
        lines.append("")
    fields("Parameters", info["inputs"])
    fields("Returns", info["outputs"])
    if info["name"] in EXAMPLES:
        lines.extend(["Examples", "--------", EXAMPLES[info["name"]]])
    lines.extend(["Sources", "-------", *(f"{s['citation']}: {s['covers']}" for s in info["sources"]), ""])
    lines.extend(["Accuracy", "--------", info["accuracy"], ""])
    if info["cautions"]:
        lines.extend(["Cautions", "--------", *info["cautions"], ""])
    return "\n".join(lines)
