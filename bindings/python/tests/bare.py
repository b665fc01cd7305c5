"""The installed package with NumPy alone: run with a Python that has nothing else.

What needs pint, pandas or matplotlib must say so by name; everything else must work, every example of
the documentation included.
"""

import doctest
import functools
import importlib
import importlib.util
import pickle
import sys

for absent in ("pint", "pandas", "matplotlib"):
    assert importlib.util.find_spec(absent) is None, f"{absent} is here: this is no bare environment"

import flamewright as fw  # noqa: E402
from flamewright import _calculation, _record  # noqa: E402

assert "site-packages" in fw.__file__, f"not the installed package: {fw.__file__}"


def says(word, call, *arguments):
    try:
        call(*arguments)
    except ImportError as refusal:
        assert word in str(refusal), refusal
    else:
        raise AssertionError(f"{word} is not here, and nobody minded")


water = fw.liquid_water(temperature=([20.0, 60.0], "degC"))
assert pickle.loads(pickle.dumps(water)) == water and water.to_dict()["density"].shape == (2,)
assert "<table>" in water._repr_html_() and "kg/m³" in repr(water)
says("pandas", water.to_frame)
says("pint", water.density.to_pint)
says("matplotlib", functools.partial(importlib.import_module("flamewright.plot").combustion, fuel="G20"))

tried = 0
runner = doctest.DocTestRunner(optionflags=doctest.NORMALIZE_WHITESPACE)
for entry in fw.catalogue():
    runner.run(doctest.DocTestParser().get_doctest(fw.calculation(entry["name"]).__doc__, {}, entry["name"], None, 0))
for module in (fw, _calculation, _record):
    result = doctest.testmod(module, optionflags=doctest.NORMALIZE_WHITESPACE)
    assert result.attempted and not result.failed
assert runner.tries > 300 and not runner.failures, (runner.tries, runner.failures)
print(f"{sys.version.split()[0]}: NumPy alone, {runner.tries} statements of the examples run")
