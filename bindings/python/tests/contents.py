"""What a wheel or a source distribution holds: `python contents.py FILE...` fails on junk and on gaps."""

import re
import sys
import tarfile
import zipfile
from pathlib import Path

PACKAGE = ["__init__.py", "__init__.pyi", "_calculation.py", "_errors.py", "_examples.py", "_flamewright.pyi", "_progress.py", "_record.py", "plot.py", "py.typed"]
LICENCES = ["LICENSE-MIT", "LICENSE-APACHE"]
JUNK = re.compile(r"(^|/)(target|\.git|\.venv|__pycache__|tests?|benches|fuzz)(/|$)|\.(pyc|ipynb|png|log|orig|whl|csv)$")
MEGABYTE = 1_000_000


def wheel(path: Path) -> list[str]:
    with zipfile.ZipFile(path) as archive:
        names = archive.namelist()
        metadata = archive.read(next(n for n in names if n.endswith("dist-info/METADATA"))).decode()
    wrong = [f"missing: {n}" for n in PACKAGE if f"flamewright/{n}" not in names]
    wrong += [f"missing: {n}" for n in LICENCES if not any(n in name and "dist-info" in name for name in names)]
    libraries = [n for n in names if n.endswith((".so", ".pyd", ".dylib"))]
    if len(libraries) != 1 or "abi3" not in libraries[0]:
        wrong.append(f"one library of the stable interface is wanted: {libraries}")
    strange = [n for n in names if not n.startswith(("flamewright/", "flamewright-"))]
    wrong += [f"not of the package: {n}" for n in strange]
    wrong += [f"metadata lack {line}" for line in ("Requires-Python: >=3.10", "License-Expression: MIT OR Apache-2.0", "Requires-Dist: numpy") if line not in metadata]
    if path.stat().st_size > 5 * MEGABYTE:
        wrong.append(f"{path.stat().st_size / MEGABYTE:.1f} MB, more than 5")
    return wrong + junk(names)


def source(path: Path) -> list[str]:
    with tarfile.open(path) as archive:
        members = archive.getmembers()
        names = [m.name.split("/", 1)[-1] for m in members]
        empty = [m.name for m in members if not m.isfile() or (m.size == 0 and not m.name.endswith("py.typed"))]
    wanted = [*(f"python/flamewright/{n}" for n in PACKAGE), *LICENCES, "pyproject.toml", "Cargo.lock", "README.md", "PKG-INFO"]
    wrong = [f"missing: {n}" for n in wanted if not any(name == n or name.endswith(f"/{n}") for name in names)]
    wrong += [f"empty, or no file: {n}" for n in empty]
    if path.stat().st_size > 2 * MEGABYTE:
        wrong.append(f"{path.stat().st_size / MEGABYTE:.1f} MB, more than 2")
    return wrong + junk(names) + [f"compiled: {n}" for n in names if n.endswith((".so", ".pyd", ".dylib"))]


def junk(names: list[str]) -> list[str]:
    return [f"junk: {n}" for n in names if JUNK.search(n)]


def main() -> None:
    failed = False
    for path in map(Path, sys.argv[1:]):
        wrong = source(path) if path.name.endswith(".tar.gz") else wheel(path)
        failed |= bool(wrong)
        print(f"{path.name}: {path.stat().st_size / MEGABYTE:.2f} MB; {'; '.join(wrong) or 'as it should be'}")
    sys.exit(failed or len(sys.argv) < 2)


if __name__ == "__main__":
    main()
