"""The package's one exception."""

from __future__ import annotations


class Error(ValueError):
    """A refusal: says the field, the value with its unit, and what is allowed.

    Attributes
    ----------
    kind, code:
        Stable words: the family of the refusal, and the rule that refused where there is one.
    field, given:
        The field concerned and the value as given.
    value, minimum, maximum, unit:
        The value and the allowed range in ``unit``, where they are known.
    """

    def __init__(
        self,
        message: str,
        kind: str = "",
        code: str = "",
        field: str = "",
        given: str = "",
        value: float | None = None,
        minimum: float | None = None,
        maximum: float | None = None,
        unit: str = "",
    ) -> None:
        super().__init__(message, kind, code, field, given, value, minimum, maximum, unit)
        self.message = message
        self.kind = kind
        self.code = code
        self.field = field
        self.given = given
        self.value = value
        self.minimum = minimum
        self.maximum = maximum
        self.unit = unit

    def __str__(self) -> str:
        return self.message
