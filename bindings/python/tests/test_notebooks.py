"""The lessons run, and the stored notebooks are made from them."""

import sys
from pathlib import Path

import nbformat
import pytest

pytest.importorskip("matplotlib")
NOTEBOOKS = Path(__file__).parents[3] / "examples" / "notebooks"
sys.path.insert(0, str(NOTEBOOKS))

import build  # noqa: E402
from checking import check  # noqa: E402

LESSONS = build.lessons([])


def test_there_are_ten_lessons():
    assert [p.stem[:2] for p in LESSONS] == [f"{n:02}" for n in range(1, 11)]


@pytest.mark.parametrize("lesson", LESSONS, ids=lambda p: p.stem)
def test_a_lesson_runs(lesson):
    build.check(lesson)


@pytest.mark.parametrize("lesson", LESSONS, ids=lambda p: p.stem)
def test_a_lesson_has_its_parts(lesson):
    stored = nbformat.read(NOTEBOOKS / f"{lesson.stem}.ipynb", as_version=4)
    words = "\n".join(c.source for c in stored.cells)
    for part in ("**You learn**", "**The question", "by hand", ".steps(", "Your turn", "answer = None", "check(answer", "## Cautions", "nvented"):
        assert part in words, part
    outputs = [o for c in stored.cells for o in c.get("outputs", [])]
    assert any("image/png" in o.get("data", {}) for o in outputs), "no picture"
    assert any("text/latex" in o.get("data", {}) for o in outputs), "no working"
    assert not any(o.output_type == "error" for o in outputs)


def test_an_error_in_a_cell_is_an_error():
    broken = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell("1 / 0")])
    with pytest.raises(Exception, match="ZeroDivisionError"):
        build.execute(broken)


def test_a_notebook_that_is_not_its_lesson_is_seen():
    fresh = build.notebook(LESSONS[0])
    other = build.notebook(LESSONS[0])
    assert not build.stale(other, fresh)
    other.cells[-1].source += "\n1"
    assert build.stale(other, fresh)


def test_answers_are_checked(capsys):
    assert check(10.0, 10.05) and not check(11.0, 10.0) and not check(None, 10.0) and not check(-10.0, 10.0)
    assert "1.1 times" in capsys.readouterr().out
