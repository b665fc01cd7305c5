"""Makes the notebooks from `lessons/*.py`, executed: `python build.py`, or `python build.py 03` for one.

A lesson is a plain Python file whose cells begin with `# %%` (code) or `# %% [markdown]`.
`python build.py --check` executes the stored notebooks again in a scratch place and fails where a
cell fails, or where a notebook was not made from its lesson.
"""

from __future__ import annotations

import sys
from pathlib import Path

import nbformat
from nbclient import NotebookClient

HERE = Path(__file__).parent


def cells(lesson: str) -> list[nbformat.NotebookNode]:
    """The cells of a lesson; a code cell or the text of a markdown one."""
    made = []
    for number, part in enumerate(lesson.split("# %%")[1:]):
        head, _, body = part.partition("\n")
        if "[markdown]" in head:
            lines = [line[2:] for line in body.strip().splitlines()]
            cell = nbformat.v4.new_markdown_cell("\n".join(lines))
        else:
            cell = nbformat.v4.new_code_cell(body.strip())
        cell["id"] = f"cell-{number}"
        made.append(cell)
    return made


def notebook(lesson: Path) -> nbformat.NotebookNode:
    """The notebook of a lesson, not executed."""
    made = nbformat.v4.new_notebook(cells=cells(lesson.read_text(encoding="utf-8")))
    made.metadata["kernelspec"] = {"name": "python3", "display_name": "Python 3", "language": "python"}
    return made


def execute(made: nbformat.NotebookNode) -> nbformat.NotebookNode:
    """Executes a notebook; an error in a cell is an error here."""
    NotebookClient(made, timeout=300, kernel_name="python3", resources={"metadata": {"path": str(HERE)}}, record_timing=False).execute()
    made.metadata.pop("language_info", None)
    return made


def lessons(chosen: list[str]) -> list[Path]:
    """The lessons whose names begin with one of the words given; all of them if none is."""
    found = sorted((HERE / "lessons").glob("[0-9]*.py"))
    return [p for p in found if not chosen or any(p.name.startswith(word) for word in chosen)]


def stale(stored: nbformat.NotebookNode, fresh: nbformat.NotebookNode) -> bool:
    """Whether a stored notebook is not the one its lesson makes."""
    return [(c.cell_type, c.source) for c in stored.cells] != [(c.cell_type, c.source) for c in fresh.cells]


def check(lesson: Path) -> None:
    """Fails unless the stored notebook is that of its lesson, holds outputs, and runs."""
    stored = nbformat.read(HERE / f"{lesson.stem}.ipynb", as_version=4)
    fresh = notebook(lesson)
    if stale(stored, fresh):
        raise SystemExit(f"{lesson.stem}.ipynb was not made from its lesson: run `python build.py {lesson.stem[:2]}`")
    if not any(c.get("outputs") for c in stored.cells):
        raise SystemExit(f"{lesson.stem}.ipynb holds no outputs: run `python build.py {lesson.stem[:2]}`")
    execute(fresh)


def main(words: list[str]) -> None:
    checking = "--check" in words
    for lesson in lessons([w for w in words if not w.startswith("-")]):
        print(lesson.stem, flush=True)
        if checking:
            check(lesson)
        else:
            nbformat.write(execute(notebook(lesson)), HERE / f"{lesson.stem}.ipynb")


if __name__ == "__main__":
    main(sys.argv[1:])
