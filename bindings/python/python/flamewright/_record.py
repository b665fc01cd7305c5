"""Results: values with their unit, and records of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any

import numpy as np

from . import _flamewright
from ._errors import Error

if TYPE_CHECKING:
    from typing_extensions import Self

Field = Mapping[str, Any]


class Value:
    """One value, or an array of them, with its unit.

    ``magnitude`` is in ``units`` (the unit commonly used in the field), ``si`` in SI units. A value
    can be handed to any calculation as it is. ``to_pint`` gives a pint quantity.
    ``standard_uncertainty`` is in SI units; times ``coverage_factor`` it covers about 95 %.
    """

    __slots__ = ("_field", "coverage_factor", "si", "standard_uncertainty")
    si: Any
    standard_uncertainty: Any
    coverage_factor: float
    _field: Field

    def __init__(self, si: Any, field: Field, standard_uncertainty: Any = None, coverage_factor: float = 2.0) -> None:
        object.__setattr__(self, "si", si)
        object.__setattr__(self, "_field", field)
        object.__setattr__(self, "standard_uncertainty", standard_uncertainty)
        object.__setattr__(self, "coverage_factor", coverage_factor)

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError("values are frozen")

    def __reduce__(self) -> Any:
        return (Value, (self.si, dict(self._field), self.standard_uncertainty, self.coverage_factor))

    @property
    def magnitude(self) -> Any:
        """The number in ``units``."""
        return (self.si - self._field["unit_offset"]) / self._field["unit_factor"]

    @property
    def units(self) -> str:
        """The unit of ``magnitude``."""
        unit: str = self._field["unit"]
        return unit

    @property
    def basis(self) -> str:
        """The basis the value stands on: gross, net, gauge, dry …; empty where there is only one."""
        basis: str = self._field["basis"]
        return basis

    @property
    def meaning(self) -> str:
        """What the value is."""
        meaning: str = self._field["doc"]
        return meaning

    def to(self, unit: str) -> Any:
        """The number in another unit, such as ``"kW"`` or ``"degF"``."""
        factor, offset = _flamewright.scale_of(self._field["quantity"], self._field["basis"], unit)
        return (self.si - offset) / factor

    def in_units(self, unit: str) -> Value:
        """The same value, shown in another unit; ``"SI"`` stands for its SI unit.

        >>> import flamewright as fw
        >>> rate = fw.gas_rate(fuel="G20", volume="0.1 m3", time="2 min", gas_pressure="20 mbar",
        ...                    gas_temperature="9 degC", barometric_pressure="1004 mbar")
        >>> print(rate.heat_input_net.in_units("Btu/h"))
        99838 Btu/h
        """
        return Value(self.si, field_in(self._field, unit), self.standard_uncertainty, self.coverage_factor)

    def to_pint(self, registry: Any = None) -> Any:
        """The value as a quantity of ``registry``, or of pint's application registry."""
        if registry is None:
            import pint

            registry = pint.get_application_registry()  # type: ignore[no-untyped-call, unused-ignore]
        return registry.Quantity(self.magnitude, pint_unit(self._field))

    def __str__(self) -> str:
        return self.show()

    def show(self, digits: int = 4) -> str:
        """The value as text."""
        if isinstance(self.si, np.ndarray):
            numbers = np.array2string(np.asarray(self.magnitude), formatter={"float_kind": lambda x: f"{x:.{digits}g}"})  # type: ignore[dict-item, unused-ignore]
            return f"{numbers} {self.units}".rstrip()
        if np.isnan(self.si) and self._field["absent"]:
            absent: str = self._field["absent"]
            return absent
        text = _flamewright.show(self.si, self.units, self._field["unit_factor"], self._field["unit_offset"], digits)
        if self.standard_uncertainty:
            expanded = self.coverage_factor * self.standard_uncertainty / self._field["unit_factor"]
            text += f" (± {expanded:.2g} {self.units}".rstrip() + f", k = {self.coverage_factor:.2g})"
        return text

    def __format__(self, spec: str) -> str:
        """``f"{value:.1f}"``: the magnitude so written, with its unit."""
        return f"{format(self.magnitude, spec)} {self.units}".rstrip() if spec else str(self)

    def __repr__(self) -> str:
        basis = f" {self.basis}" if self.basis else ""
        return f"<{self.show(7)}{basis}>"

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Value):
            return NotImplemented
        same = self._field["quantity"] == other._field["quantity"] and self.basis == other.basis
        return bool(same and np.array_equal(self.si, other.si, equal_nan=True))

    def __hash__(self) -> int:
        return hash((self._field["quantity"], self.basis, float(self.si)))

    def __float__(self) -> float:
        if self.units:
            raise TypeError(f"a number without its unit loses its meaning: take .magnitude ({self.units}), .si, or .to('…')")
        return float(self.si)


def field_in(field: Field, unit: str) -> Field:
    """A field with another unit to show its values in."""
    if unit == "SI":
        return {**field, "unit": si_symbol(field["si_unit"]), "unit_factor": 1.0, "unit_offset": 0.0}
    factor, offset = _flamewright.scale_of(field["quantity"], field["basis"], unit)
    return {**field, "unit": unit, "unit_factor": factor, "unit_offset": offset}


#: Symbols of the units that the catalogue spells out.
_SYMBOLS = {
    "joule": "J", "kelvin": "K", "kilogram": "kg", "metre": "m", "mole": "mol", "ohm": "Ω",
    "pascal": "Pa", "second": "s", "volt": "V", "watt": "W",
}  # fmt: skip


def si_symbol(words: str) -> str:
    """``"watt_per_square_metre_kelvin"`` as ``"W/(m²·K)"``.

    >>> si_symbol("metre_per_second_squared"), si_symbol("kelvin_difference"), si_symbol("ratio")
    ('m/s²', 'K', '')
    """
    above: list[str] = []
    below: list[str] = []
    side, power = above, ""
    for word in words.split("_"):
        if word == "per":
            side = below
        elif word in ("square", "cubic"):
            power = "²" if word == "square" else "³"
        elif word == "squared":
            side[-1] += "²"
        elif word not in ("difference", "ratio"):
            side.append(_SYMBOLS[word] + power)
            power = ""
    denominator = "·".join(below) if len(below) < 2 else f"({'·'.join(below)})"
    return "·".join(above or ["1"] * bool(below)) + (f"/{denominator}" if below else "")


def pint_unit(field: Field) -> str:
    """The unit of a field as pint writes it."""
    if field["quantity"] == "temperature difference":
        return "delta_degC" if field["unit"] == "°C" else "kelvin"
    unit: str = field["unit"]
    superscripts = str.maketrans({"²": "**2", "³": "**3", "·": "*", "Ω": "ohm", "µ": "u"})
    return {"": "dimensionless", "%": "percent", "°C": "degC", "°": "degree"}.get(unit, unit.translate(superscripts))


class Record:
    """A result: its fields are attributes, each a :class:`Value`.

    Iterating gives the names. Values are shown in the unit commonly used in the field, or in those
    that ``in_units`` chooses. Where pint quantities went in, attributes are quantities of their
    registry. ``notices`` says what is to be known about the result, ``cautions``
    what goes with it always. Where arrays went in, ``status`` has a number a row: 0 fine, 1 a
    notice, more where the row was refused (its values are not-a-number).
    """

    __slots__ = ("_call", "_registry", "_uncertainty", "_units", "_values", "notices", "status")
    _call: Any
    _registry: Any
    _uncertainty: Mapping[str, tuple[float, float]]
    _units: Mapping[str, Field]
    _values: dict[str, Any]
    notices: tuple[str, ...]
    status: Any

    def __init__(
        self,
        call: Any,
        values: dict[str, Any],
        notices: tuple[str, ...] = (),
        status: Any = None,
        registry: Any = None,
        uncertainty: Mapping[str, tuple[float, float]] | None = None,
        units: Mapping[str, Field] | None = None,
    ) -> None:
        put = object.__setattr__
        put(self, "_call", call)
        put(self, "_values", values)
        put(self, "notices", notices)
        put(self, "status", status)
        put(self, "_registry", registry)
        put(self, "_uncertainty", uncertainty or {})
        put(self, "_units", units or {})

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError("records are frozen")

    def __reduce__(self) -> Any:
        return (Record, (self._call, self._values, self.notices, self.status, None, self._uncertainty, self._units))

    if not TYPE_CHECKING:  # type checkers know the names from the stubs, and refuse others

        def __getattr__(self, name: str) -> Any:
            if name.startswith("_") or name not in self._values:
                raise AttributeError(f"{self._call.name} has no result {name!r}; {_hint(name, self._values)}")
            return self[name]

    def __getitem__(self, name: str) -> Any:
        if name not in self._values:
            raise KeyError(f"{self._call.name} has no result {name!r}; {_hint(name, self._values)}")
        value = self._value(name)
        return value if self._registry is None else value.to_pint(self._registry)

    def __iter__(self) -> Iterator[str]:
        return iter(self._values)

    def __len__(self) -> int:
        return len(self._values)

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *self._values]

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Record):
            return NotImplemented
        if self._call.name != other._call.name or list(self) != list(other):
            return False
        return all(np.array_equal(self._values[n], other._values[n], equal_nan=True) for n in self)

    @property
    def cautions(self) -> list[str]:
        """Cautions that go with the result."""
        cautions: list[str] = self._call.info["cautions"]
        return cautions

    @property
    def si(self) -> dict[str, Any]:
        """The results as plain SI numbers."""
        return dict(self._values)

    def in_units(self, system: str | None = None, /, **units: str) -> Self:
        """The same record with its values shown in other units.

        ``in_units("SI")`` chooses SI units for all of them, keywords choose units by name. What
        ``repr``, ``to_dict`` and ``to_frame`` give follows; what the values are does not change.

        >>> import flamewright as fw
        >>> water = fw.liquid_water(temperature="60 degC")
        >>> water.in_units(density="g/cm3").density
        <0.9832536 g/cm3>
        >>> water.in_units("SI").to_dict() == water.si
        True
        """
        if system not in (None, "SI"):
            raise Error(f'in_units: "SI" is offered, not "{system}"; or a unit by name, such as density="g/cm3"', "bad_setting", field="units")
        fields: Mapping[str, Field] = self._call.output_fields
        for name in units:
            if name not in fields:
                raise Error(f"{self._call.name} has no result {name!r}; {_hint(name, fields)}", "unknown_name", "unknown_name", name, name)
        chosen = {name: field_in(fields[name], "SI") for name in fields} if system else dict(self._units)
        chosen |= {name: field_in(fields[name], unit) for name, unit in units.items()}
        return type(self)(self._call, self._values, self.notices, self.status, self._registry, self._uncertainty, chosen)

    def to_dict(self) -> dict[str, Any]:
        """Names and numbers in the units shown, for JSON and tables."""
        return {name: self._value(name).magnitude for name in self}

    def to_frame(self) -> Any:
        """A pandas frame: a row a field, or a row a reading where arrays went in."""
        import pandas as pd  # type: ignore[import-untyped, unused-ignore]

        if self.status is not None:
            units = {name: f"{name} [{self._value(name).units}]".replace(" []", "") for name in self}
            return pd.DataFrame({units[n]: np.ravel(self._value(n).magnitude) for n in self} | {"status": np.ravel(self.status)})
        rows = [(n, v.magnitude, v.units, v.basis, v.meaning) for n in self for v in [self._value(n)]]
        return pd.DataFrame(rows, columns=["result", "value", "unit", "basis", "meaning"]).set_index("result")

    def _value(self, name: str) -> Value:
        field = self._units.get(name) or self._call.output_fields[name]
        return Value(self._values[name], field, *self._uncertainty.get(name, ()))

    def __repr__(self) -> str:
        shown = [(name, self._value(name)) for name in self]
        wide = max(len(name) for name, _ in shown)
        lines = [f"{name:<{wide}}  {value}" for name, value in shown]
        lines += [f"note: {note}" for note in self._notes()]
        return f"{self._call.info['title']}\n" + "\n".join(lines)

    def _repr_html_(self) -> str:
        import html

        cells = "".join(
            f"<tr><td>{html.escape(n)}</td><td style='text-align:right'>{html.escape(str(v))}</td>"
            f"<td>{html.escape(v.basis)}</td><td style='text-align:left'>{html.escape(v.meaning)}</td></tr>"
            for n in self
            for v in [self._value(n)]
        )
        notes = "".join(f"<p>Note: {html.escape(n)}</p>" for n in self._notes())
        title = html.escape(self._call.info["title"])
        head = "<tr><th>result</th><th>value</th><th>basis</th><th>meaning</th></tr>"
        return f"<table><caption>{title}</caption><thead>{head}</thead><tbody>{cells}</tbody></table>{notes}"

    def _notes(self) -> list[str]:
        if self.status is None or not (np.asarray(self.status) >= _FIELD).any():
            return list(self.notices)
        refused = int((np.asarray(self.status) >= _FIELD).sum())
        return [*self.notices, f"{refused} of {np.size(self.status)} rows refused; .refused() says why"]

    def refused(self) -> dict[int, str]:
        """Why rows were refused: row to reason (where arrays went in)."""
        if self.status is None:
            return {}
        status = np.ravel(self.status)
        return {int(row): self._reason(int(status[row])) for row in np.flatnonzero(status >= _FIELD)}

    def _reason(self, status: int) -> str:
        if status < _RULE:
            field = list(self._call.input_fields.values())[status - _FIELD]
            unit = f" {field['unit']}" if field["unit"] else ""
            return f"{field['name']}: missing, or outside {field['minimum']:.7g} to {field['maximum']:.7g}{unit}"
        if status < _UNDEFINED:
            rule = self._call.info["rules"][status - _RULE]
            return f"{rule['field']}: {rule['text']}" if rule["field"] else str(rule["text"])
        return "the calculation has no solution there"


def _hint(name: str, offered: Mapping[str, Any]) -> str:
    """What was meant, where it is near; otherwise what there is."""
    import difflib

    near = difflib.get_close_matches(name, offered, 1, 0.5)
    return f"did you mean {near[0]!r}?" if near else f"it has {', '.join(offered)}"


# What the numbers in a status begin at: a field refused, a rule that refused, no finite result.
_FIELD, _RULE, _UNDEFINED = 0x100, 0x200, 0x300

__all__ = ["Error", "Record", "Value"]
