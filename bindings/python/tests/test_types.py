"""The stubs: strict for the package, right calls pass, wrong calls are refused, and they are the package."""

import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("mypy")
TYPED = Path(__file__).parent / "typed"


def mypy(*arguments, folder=TYPED):
    # From a folder without the package's source, so that the installed package is what is checked.
    return subprocess.run([sys.executable, "-m", *arguments], cwd=folder, capture_output=True, text=True, timeout=300, check=False)


def test_the_package_and_right_calls_are_strict():
    for what in (["right.py"], ["-p", "flamewright"]):
        result = mypy("mypy", "--strict", *what)
        assert result.returncode == 0, result.stdout + result.stderr


def test_wrong_calls_are_refused_where_they_stand():
    lines = (TYPED / "wrong.py").read_text(encoding="utf-8").splitlines()
    expected = {n for n, line in enumerate(lines, 1) if line.endswith("# refused")}
    result = mypy("mypy", "--strict", "wrong.py")
    found = {int(line.split(":")[1]) for line in result.stdout.splitlines() if ": error:" in line}
    assert found == expected, result.stdout + result.stderr


def test_the_stubs_are_the_package():
    result = mypy("mypy.stubtest", "flamewright", "--ignore-missing-stub", "--concise")
    # The module of compiled code gives no signatures to compare; the package itself must agree.
    wrong = [line for line in result.stdout.splitlines() if line and not line.startswith(("flamewright._flamewright", "flamewright.plot"))]
    assert not wrong, "\n".join(wrong) + result.stderr
