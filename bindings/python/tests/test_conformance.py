"""Every face gives what the Rust library gives, bit for bit, and refuses in the same words.

The cases are written by the Rust library (`cargo xtask cases FILE`; `cargo xtask test` does that):
every calculation in every setting, readings good and bad, with what came of them. The C library is
the one that `cargo build -p flamewright-c` puts into the target folder, built without optimisation;
the Python wheel is built with it.
"""

import ctypes
import json
import math
import os
import struct
from pathlib import Path

import flamewright as fw
import numpy as np
import pyarrow as pa
import pytest

TARGET = Path(os.environ.get("CARGO_TARGET_DIR", Path(__file__).resolve().parents[3] / "target"))
WORDS = ("code", "field", "given", "unit")
NUMBERS = ("value", "minimum", "maximum")


def doubles(words):
    return np.array([struct.unpack(">d", bytes.fromhex(word))[0] for word in words])


@pytest.fixture(scope="module")
def cases():
    path = TARGET / "cases.jsonl"
    if not path.exists():
        pytest.fail(f"{path} is not there: write it with cargo xtask cases {path}")
    return [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]


@pytest.fixture(scope="module")
def library():
    path = TARGET / "debug" / "libflamewright.so"
    if not path.exists():
        pytest.fail(f"{path} is not there: build it with cargo build -p flamewright-c")
    loaded = ctypes.CDLL(str(path))
    for name in (*WORDS, "message"):
        getattr(loaded, f"fw_error_{name}").restype = ctypes.c_char_p
    for name in NUMBERS:
        getattr(loaded, f"fw_error_{name}").restype = ctypes.c_double
    loaded.fw_string_free.argtypes = [ctypes.c_void_p]
    return loaded


def same(one, other):
    """Bit for bit; where both are not a number, the bits of that do not count."""
    one, other = np.asarray(one, dtype=float), np.asarray(other, dtype=float)
    return bool(((one.view(np.uint64) == other.view(np.uint64)) | (np.isnan(one) & np.isnan(other))).all())


def number(value):
    """JSON, in which the cases are written, has no infinity."""
    return math.nan if value is None or math.isinf(value) else value


def entries():
    return {entry["name"]: entry for entry in fw.catalogue()}


def test_every_calculation_is_among_the_cases(cases):
    assert {case["calculation"] for case in cases} == set(entries())
    readings = [reading for case in cases for reading in case["readings"]]
    refused = sum("error" in reading for reading in readings)
    print(f"{len(cases)} calculations with settings, {len(readings)} readings, {refused} of them refused")
    assert len(readings) > 2000 and 0.1 < refused / len(readings) < 0.8
    kinds = {reading["error"]["kind"] for reading in readings if "error" in reading}
    assert kinds >= {"missing", "not_finite", "out_of_range", "refused"}, kinds


def test_python(cases):
    for case in cases:
        name = case["calculation"]
        calculation = fw._flamewright.prepare(name, case["settings"])
        for reading in case["readings"]:
            given = doubles(reading["input"])
            try:
                values, notices = calculation.evaluate(list(given))
            except fw.Error as refusal:
                expected = reading["error"]
                for word in ("kind", *WORDS):
                    assert getattr(refusal, word) == expected[word], (name, word, given)
                for word in NUMBERS:
                    assert same([number(getattr(refusal, word))], [number(expected[word])]), (name, word, given)
                assert str(refusal) == expected["message"]
            else:
                assert same(values, doubles(reading["output"])), (name, given)
                assert [[code, field] for code, field, _ in notices] == reading["notices"], (name, given)


def test_columns(cases):
    for case in cases:
        name, readings = case["calculation"], case["readings"]
        calculation = fw._flamewright.prepare(name, case["settings"])
        rows = np.array([doubles(reading["input"]) for reading in readings])
        columns = [np.ascontiguousarray(rows[:, i]) for i in range(rows.shape[1])]
        outputs, status = calculation.evaluate_columns(columns, len(rows))
        for k, reading in enumerate(readings):
            got = [column[k] for column in outputs]
            if "error" in reading:
                assert status[k] >= 0x100 and np.isnan(got).all(), (name, rows[k])
            else:
                assert status[k] < 0x100 and same(got, doubles(reading["output"])), (name, rows[k])


def test_columns_of_the_results_wanted(cases):
    """Some of the results, in whatever order they are asked for, are those of all of them."""
    for case in cases:
        calculation = fw._flamewright.prepare(case["calculation"], case["settings"])
        rows = np.array([doubles(reading["input"]) for reading in case["readings"]])
        columns = [np.ascontiguousarray(rows[:, i]) for i in range(rows.shape[1])]
        every, status = calculation.evaluate_columns(columns, len(rows))
        wanted = list(range(len(every)))[::-2]
        some, again = calculation.evaluate_columns(columns, len(rows), wanted)
        assert (status == again).all() and len(some) == len(wanted)
        assert all(same(column, every[place]) for place, column in zip(wanted, some, strict=True)), case["calculation"]
        for wrong in ([0, 0], [len(every)]):
            with pytest.raises(TypeError):
                calculation.evaluate_columns(columns, len(rows), wrong)


def test_columns_with_every_choice_of_instructions(cases):
    """The wheel is optimised, which is what could tell vector instructions from plain ones; cut in other places too."""
    for case in cases:
        name = case["calculation"]
        rows = np.array([doubles(reading["input"]) for reading in case["readings"]])
        columns = [np.ascontiguousarray(rows[:, i]) for i in range(rows.shape[1])]
        chosen, plain = (fw._flamewright.prepare(name, case["settings"], plain) for plain in (False, True))
        every, status = chosen.evaluate_columns(columns, len(rows))
        again, status_again = plain.evaluate_columns(columns, len(rows))
        late, status_late = chosen.evaluate_columns([column[1:] for column in columns], len(rows) - 1)
        assert (status == status_again).all() and (status[1:] == status_late).all(), name
        for one, other, cut in zip(every, again, late, strict=True):
            assert same(one, other) and same(one[1:], cut), name


def kind_of(reason, rules):
    """The kind of refusal that the words of a row stand for."""
    if reason == "the calculation has no solution there":
        return "no_solution"
    why = reason.split(": ", 1)[1]
    kinds = {"missing or not a number": "missing", "not finite": "not_finite"}
    return kinds.get(why) or ("refused" if why in rules else "out_of_range")


@pytest.mark.parametrize("null", [False, True], ids=["nan", "null"])
def test_arrow(cases, null):
    """Values bit for bit; a row that a single call refuses is null and gives the same field and kind."""
    options = {"units": "si", "output_units": "si", "keep": False}
    for case in cases:
        name, readings = case["calculation"], case["readings"]
        entry = entries()[name]
        calculation = fw._flamewright.prepare(name, case["settings"])
        rows = np.array([doubles(reading["input"]) for reading in readings])
        fields = [field["name"] for field in entry["inputs"]]
        table = pa.table({field: pa.array(rows[:, i], from_pandas=null) for i, field in enumerate(fields)})
        laid = pa.table(calculation.over(table, options, []))
        assert laid.num_rows == len(readings), name
        columns = [laid.column(field["name"]).to_numpy() for field in entry["outputs"]]
        _, status = calculation.evaluate_columns([np.ascontiguousarray(rows[:, i]) for i in range(len(fields))], len(rows))
        assert laid.column("status").to_pylist() == status.tolist(), name
        rules = {rule["text"] for rule in entry["rules"]}
        for k, (reading, reason) in enumerate(zip(readings, laid.column("reason").to_pylist(), strict=True)):
            expected = reading.get("error")
            if expected is None:
                assert reason is None and status[k] < 0x100, (name, rows[k])
                assert same([column[k] for column in columns], doubles(reading["output"])), (name, rows[k])
                continue
            assert all(laid.column(field["name"])[k].as_py() is None for field in entry["outputs"]), (name, rows[k])
            assert kind_of(reason, rules) == expected["kind"], (name, reason, expected)
            if expected["kind"] != "no_solution":
                assert reason.split(":")[0] == expected["field"], (name, reason, expected)


def said_by_c(library):
    said = {word: getattr(library, f"fw_error_{word}")().decode() for word in (*WORDS, "message")}
    return said | {word: getattr(library, f"fw_error_{word}")() for word in NUMBERS}


def expect_refusal(said, expected, where):
    for word in (*WORDS, "message"):
        assert said[word] == expected[word], (*where, word)
    for word in NUMBERS:
        assert same([number(said[word])], [number(expected[word])]), (*where, word)


def test_c(cases, library):
    for case in cases:
        name = case["calculation"]
        context = ctypes.c_void_p()
        settings = json.dumps(case["settings"]).encode()
        made = library.fw_context_new(name.encode(), settings, ctypes.byref(context))
        assert made == 0, (name, library.fw_error_message())
        m = len(entries()[name]["outputs"])
        for reading in case["readings"]:
            given = doubles(reading["input"])
            n = len(given)
            arguments, got = (ctypes.c_double * n)(*given), (ctypes.c_double * m)()
            code = library.fw_evaluate(context, arguments, ctypes.c_size_t(n), got, ctypes.c_size_t(m), None)
            assert (code == 0) == ("error" not in reading), (name, given)
            if code:
                expect_refusal(said_by_c(library), reading["error"], (name, given))
            else:
                assert same(list(got), doubles(reading["output"])), (name, given)
        library.fw_context_free(context)


def test_json(cases, library):
    """Calls in text give the same bits; what is not finite cannot be written."""
    walked = 0
    for case in cases:
        name = case["calculation"]
        entry = entries()[name]
        settings = case["settings"]
        # In a call by name, what is both a setting and a field gets one value.
        named = {setting["name"] for setting in entry["settings"]}
        if any(field["name"] in named for field in entry["inputs"]):
            continue
        for reading in case["readings"]:
            given = doubles(reading["input"])
            # Nothing written means the default, so a default cannot be taken away in text.
            fields = list(zip(entry["inputs"], reading["text"], given, strict=True))
            if any(text is None and (field["default"] is not None or not math.isnan(value)) for field, text, value in fields):
                continue
            call = {"calculation": name, **settings} | {field["name"]: text for field, text, _ in fields if text is not None}
            answer = ctypes.c_void_p()
            code = library.fw_evaluate_json(json.dumps(call).encode(), ctypes.byref(answer))
            tree = json.loads(ctypes.string_at(answer))
            library.fw_string_free(answer)
            assert (code == 0) == ("error" not in reading), (name, call, tree)
            walked += 1
            if code:
                assert tree["error"] == reading["error"], (name, call)
            else:
                results = [number(tree["results"][field["name"]]["si"]) for field in entry["outputs"]]
                assert same(results, doubles(reading["output"])), (name, call)
    assert walked > 1000, walked
