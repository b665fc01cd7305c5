"""Every calculation gives the same bits from Python and from C, for one reading and for columns.

The C library is the one that `cargo build -p flamewright-c` puts into the target folder, built
without optimisation; the Python wheel is built with it. Same inputs, same bits.
"""

import ctypes
import json
import math
import os
import random
from pathlib import Path

import flamewright as fw
import numpy as np
import pytest

TARGET = Path(os.environ.get("CARGO_TARGET_DIR", Path(__file__).resolve().parents[3] / "target"))
SETTINGS = {
    "fuel": "G20",
    "tube": "copper 22x0.9",
    "constants": "de-natural-gas",
    "policy": "a house rule, invented",
    "pump_flows": ["0 m3/h", "1 m3/h", "2 m3/h", "3 m3/h"],
    "pump_pressures": ["60 kPa", "55 kPa", "40 kPa", "15 kPa"],
    "sections": [{"name": "flow", "tube": "copper 22x0.9", "length": "12 m", "volume_flow": "0.6 m3/h"}],
    "pipes": [{"length": "6 m", "tube": "copper 22x0.9"}, {"length": "3 m", "bore": "13 mm"}],
    "beta": "3950 K",
    "reference_resistance": "10 kOhm",
    "cut_outs": ["81.8 degC", "82.1 degC", "81.6 degC"],
    "cut_ins": ["74.1 degC", "74.4 degC", "74.0 degC"],
}
# Slow sums (minutes of a plant's life a reading): fewer readings each.
SLOW = {"cool_down", "pump_overrun", "overshoot", "warm_up", "circuit_cycling", "cool_down_fit"}


@pytest.fixture(scope="module")
def library():
    path = TARGET / "debug" / "libflamewright.so"
    if not path.exists():
        pytest.fail(f"{path} is not there: build it with cargo build -p flamewright-c")
    loaded = ctypes.CDLL(str(path))
    loaded.fw_error_message.restype = ctypes.c_char_p
    return loaded


def prepared(entry):
    """The calculation with plausible settings, or None where they cannot be made up."""
    settings = {s["name"]: SETTINGS[s["name"]] for s in entry["settings"] if s["default"] is None and s["name"] in SETTINGS}
    try:
        return settings, fw._flamewright.prepare(entry["name"], settings)
    except fw.Error:
        return settings, None


def reading(entry, draw):
    values = []
    for field in entry["inputs"]:
        low = field["usual_minimum"] if field["usual_minimum"] is not None else field["minimum"]
        high = field["usual_maximum"] if field["usual_maximum"] is not None else field["maximum"]
        si = draw.uniform(low, high) * field["unit_factor"] + field["unit_offset"]
        if field["absent"] and draw.random() < 0.4:
            si = math.nan
        if field["default"] is not None and draw.random() < 0.5:
            si = field["default"] * field["unit_factor"] + field["unit_offset"]
        if draw.random() < 0.03:
            si = draw.choice([math.inf, -math.inf, math.nan, -1e300, 1e300])
        values.append(si)
    return values


def test_python_and_c_give_the_same_bits(library):
    draw = random.Random(7)
    walked, with_result = 0, 0
    for entry in fw.catalogue():
        settings, calculation = prepared(entry)
        if calculation is None:
            continue
        context = ctypes.c_void_p()
        made = library.fw_context_new(entry["name"].encode(), json.dumps(settings).encode(), ctypes.byref(context))
        assert made == 0, (entry["name"], library.fw_error_message())
        rows = [reading(entry, draw) for _ in range(4 if entry["name"] in SLOW else 40)]
        n, m = len(entry["inputs"]), len(entry["outputs"])
        columns = [np.array([row[i] for row in rows]) for i in range(n)]
        outputs, status = calculation.evaluate_columns(columns, len(rows))
        for k, row in enumerate(rows):
            given, got = (ctypes.c_double * n)(*row), (ctypes.c_double * m)()
            code = library.fw_evaluate(context, given, ctypes.c_size_t(n), got, ctypes.c_size_t(m), None)
            try:
                values, _ = calculation.evaluate(row)
            except fw.Error as refusal:
                assert code != 0, (entry["name"], row, str(refusal))
                assert library.fw_error_message().decode() == str(refusal)
                assert status[k] >= 0x100
                assert all(np.isnan(out[k]) for out in outputs)
                continue
            assert code == 0, (entry["name"], row, library.fw_error_message())
            with_result += 1
            assert status[k] < 0x100
            expected = np.array(values)
            for other in (np.array(list(got)), np.array([out[k] for out in outputs])):
                both_absent = np.isnan(expected) & np.isnan(other)
                assert ((expected.view(np.uint64) == other.view(np.uint64)) | both_absent).all(), (entry["name"], row)
        library.fw_context_free(context)
        walked += 1
    assert walked >= 0.9 * len(fw.catalogue()), walked
    assert with_result > 1000, with_result
