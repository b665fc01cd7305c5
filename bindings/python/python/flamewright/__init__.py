"""The sums of a gas heating engineer's visit: unit-safe, sourced, with uncertainty.

Every calculation is a function of this module, called with keywords; values are text with their
unit, pint quantities, or arrays with a stated unit:

>>> import flamewright as fw
>>> water = fw.liquid_water(temperature="60 degC")
>>> water.density
<983.2536 kg/m³>

``catalogue()`` lists them all; ``help(fw.liquid_water)`` tells inputs, ranges, results and sources.
"""

from __future__ import annotations

from typing import Any

from . import _flamewright
from ._calculation import Calculation, Goal, Steps, Sweep, Uncertain, Uncertainty, uncertain, unknown
from ._errors import Error
from ._flamewright import LaidOver, __version__
from ._record import Record, Value

_names = frozenset(_flamewright.names())


def catalogue() -> list[dict[str, Any]]:
    """Every calculation with its settings, inputs, outputs, rules, sources, accuracy and cautions."""
    entries: list[dict[str, Any]] = _flamewright.catalogue()
    return entries


def calculation(name: str) -> Calculation[Any]:
    """The calculation called ``name``."""
    if name not in _names:
        raise unknown("calculation", name, sorted(_names))
    found = globals().get(name)
    if found is None:
        found = globals()[name] = Calculation(name)
    return found


def evaluate(name: str, /, **given: Any) -> Record:
    """Evaluates a calculation by name; bare numbers are taken as SI, text and quantities as they say.

    >>> import flamewright as fw
    >>> fw.evaluate("liquid_water", temperature=333.15).density
    <983.2536 kg/m³>
    """
    return calculation(name).evaluate(**given)


class Assessment:
    """The assessment of a visit: ``print`` it, read ``data``, or keep the page that ``to_html`` gives."""

    def __init__(self, data: dict[str, Any], text: str, page: str) -> None:
        self.data = data
        self.text = text
        self._page = page

    def to_html(self) -> str:
        """The assessment as one self-contained page, ready to print."""
        return self._page

    def _repr_html_(self) -> str:
        from html import escape

        # In a frame of its own, so that the page's style stays off the notebook.
        return f'<iframe srcdoc="{escape(self._page)}" style="width:100%;height:40em;border:1px solid #999"></iframe>'

    def __str__(self) -> str:
        return self.text

    def __repr__(self) -> str:
        return self.text


def assess(visit: Any, policy: Any = None) -> Assessment:
    """Assesses a visit record (a dict, or TOML or JSON text), judged by ``policy`` where one is given."""
    return Assessment(*_flamewright.assess(visit, policy))


def __getattr__(name: str) -> Calculation[Any]:
    if name in _names:
        return calculation(name)
    raise AttributeError(f"module 'flamewright' has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted({*__all__, *_names})


__all__ = [
    "Assessment",
    "Calculation",
    "Error",
    "Goal",
    "LaidOver",
    "Record",
    "Steps",
    "Sweep",
    "Uncertain",
    "Uncertainty",
    "Value",
    "__version__",
    "assess",
    "calculation",
    "catalogue",
    "evaluate",
    "uncertain",
]
