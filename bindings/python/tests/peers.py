"""Keeps the worst deviation of each comparison with an independent library.

With ``FLAMEWRIGHT_WRITE_PEERS=1`` in the environment the findings are written to ``tests/peers.json``,
from where ``cargo xtask generate`` takes them into the validation report.
"""

import json
import os
from pathlib import Path

import numpy as np

PLACE = Path(__file__).resolve().parents[3] / "tests" / "peers.json"
FOUND: dict[tuple[str, str, str], dict] = {}


def compare(calculation, quantity, library, ours, theirs, *, relative=0.0, absolute=0.0, unit="", at=None):
    """Asserts that `ours` lies within a tolerance of `theirs`, and keeps the worst deviation."""
    ours, theirs = np.atleast_1d(ours).astype(float), np.atleast_1d(theirs).astype(float)
    assert ours.shape == theirs.shape and ours.size > 0
    assert np.isfinite(theirs).all(), f"{library} gives no number for {quantity}"
    assert np.isfinite(ours).all(), f"{calculation} gives no {quantity} at {np.flatnonzero(~np.isfinite(ours))[:5]}"
    deviation = np.abs(ours - theirs)
    if relative:
        deviation = deviation / np.abs(theirs)
    worst = int(np.argmax(deviation))
    allowed = relative or absolute
    place = ", ".join(f"{name} {np.atleast_1d(value)[worst]:.4g}" for name, value in (at or {}).items())
    FOUND[calculation, quantity, library] = {
        "calculation": calculation,
        "quantity": quantity + (f" ({unit})" if absolute and unit else ""),
        "library": library,
        "trials": int(ours.size),
        "deviation": float(f"{deviation[worst]:.2g}"),
        "allowed": allowed,
        "at": place,
    }
    assert deviation[worst] <= allowed, f"{calculation}.{quantity} beside {library}: {ours[worst]!r} for {theirs[worst]!r} at {place}"


def write():
    if os.environ.get("FLAMEWRIGHT_WRITE_PEERS") == "1":
        PLACE.write_text(json.dumps([FOUND[key] for key in sorted(FOUND)], indent=1) + "\n")
