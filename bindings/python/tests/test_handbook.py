"""The Python examples of the handbook and the README run as they stand."""

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]
PAGES = [ROOT / "README.md", *sorted((ROOT / "docs").rglob("*.md"))]
EXAMPLES = [
    pytest.param(code, id=f"{page.stem}-{number}")
    for page in PAGES
    for number, code in enumerate(re.findall(r"^```python\n(.*?)^```", page.read_text(encoding="utf-8"), re.DOTALL | re.MULTILINE))
]


def test_there_are_examples():
    assert len(EXAMPLES) >= 3


@pytest.mark.parametrize("code", EXAMPLES)
def test_an_example_runs_and_shows_something(code, capsys):
    exec(compile(code, "example", "exec"), {})
    assert capsys.readouterr().out.strip()
