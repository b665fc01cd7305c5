"""The examples that `help()` shows: every calculation has one, and each prints what it says."""

import doctest
import sys
from pathlib import Path

import flamewright as fw
import pytest
from flamewright import _calculation, _errors, _record
from flamewright._examples import EXAMPLES


def failures(text, name):
    said = []
    runner = doctest.DocTestRunner(verbose=False, optionflags=doctest.NORMALIZE_WHITESPACE)
    runner.run(doctest.DocTestParser().get_doctest(text, {}, name, None, 0), out=said.append)
    assert runner.tries >= 3, f"{name}: no example"
    return "".join(said)


@pytest.mark.parametrize("name", [entry["name"] for entry in fw.catalogue()])
def test_help_shows_an_example_that_runs(name):
    said = failures(fw.calculation(name).__doc__, name)
    assert not said, said + "\n(python write_examples.py writes the examples afresh)"


def test_there_are_examples_of_calculations_only():
    assert EXAMPLES.keys() == {entry["name"] for entry in fw.catalogue()}
    assert all("print(result." in text for text in EXAMPLES.values())


def test_the_examples_are_those_of_the_catalogue():
    pytest.importorskip("tomllib")  # Python 3.11
    sys.path.insert(0, str(Path(__file__).parents[1]))
    from write_examples import source

    for name, text in EXAMPLES.items():
        stored = [line[4:] for line in text.splitlines() if line.startswith((">>> ", "... "))]
        assert stored == "\n".join(source(name)).splitlines(), f"{name}: run python write_examples.py"


def test_an_example_that_is_wrong_is_seen():
    assert "Expected" in failures(fw.tube_run.__doc__.replace("20.2 mm", "20.3 mm"), "tube_run")


@pytest.mark.parametrize("module", [fw, _calculation, _errors, _record], ids=lambda m: m.__name__)
def test_docstrings_of_the_package(module):
    result = doctest.testmod(module, optionflags=doctest.NORMALIZE_WHITESPACE)
    assert result.failed == 0
    assert result.attempted > 0 or module is _errors


def test_the_readme_is_true():
    text = (Path(__file__).parents[1] / "README.md").read_text(encoding="utf-8")
    assert not failures(text.replace("```", ""), "README.md")
