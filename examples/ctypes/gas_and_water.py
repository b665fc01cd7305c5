"""The C library from plain Python, with nothing but ctypes: the water of a heating circuit.

Usage: python3 gas_and_water.py [path to libflamewright.so]
The readings are invented.
"""

import ctypes
import json
import sys

library = ctypes.CDLL(sys.argv[1] if len(sys.argv) > 1 else "libflamewright.so.1")
library.fw_error_message.restype = ctypes.c_char_p
library.fw_version.restype = ctypes.c_char_p
library.fw_context_new.argtypes = [ctypes.c_char_p, ctypes.c_char_p, ctypes.POINTER(ctypes.c_void_p)]
library.fw_context_free.argtypes = [ctypes.c_void_p]
library.fw_context_free.restype = None
library.fw_string_free.argtypes = [ctypes.c_void_p]
library.fw_string_free.restype = None
doubles = ctypes.POINTER(ctypes.c_double)
library.fw_evaluate.argtypes = [ctypes.c_void_p, doubles, ctypes.c_size_t, doubles, ctypes.c_size_t, ctypes.c_void_p]

assert library.fw_abi_version() == 1, "header and library do not belong together"
print("flamewright", library.fw_version().decode())


def text(function, *arguments):
    """What a function hands out as text; a refusal is raised."""
    made = ctypes.c_void_p()
    status = function(*arguments, ctypes.byref(made))
    words = ctypes.string_at(made.value).decode() if made.value else ""
    library.fw_string_free(made)
    if status != 0:
        raise ValueError(library.fw_error_message().decode())
    return words


# The catalogue says what goes in and what comes out, in which order and unit.
catalogue = {c["name"]: c for c in json.loads(text(library.fw_catalogue_json))}
water = catalogue["liquid_water"]
print(len(catalogue), "calculations;", water["title"], "from", ", ".join(f["name"] for f in water["inputs"]))

# By text, with units.
call = {"calculation": "liquid_water", "temperature": "62 degC", "pressure": "1.5 bar"}
answer = json.loads(text(library.fw_evaluate_json, json.dumps(call).encode()))
density = answer["results"]["density"]
print("density", round(density["value"], 2), density["unit"])

# By numbers, SI.
context = ctypes.c_void_p()
assert library.fw_context_new(b"liquid_water", None, ctypes.byref(context)) == 0
given = (ctypes.c_double * len(water["inputs"]))(62 + 273.15, 1.5e5)
made = (ctypes.c_double * len(water["outputs"]))()
assert library.fw_evaluate(context, given, len(given), made, len(made), None) == 0
assert made[0] == density["si"], "the same bits either way"
library.fw_context_free(context)

# A slip is refused in words.
try:
    text(library.fw_evaluate_json, json.dumps(call | {"temperature": "62 K"}).encode())
except ValueError as refusal:
    print("refused:", refusal)
else:
    sys.exit("water at 62 K was taken for true")
