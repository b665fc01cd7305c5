"""Every comparison with another library, as one table: ``python3 benches/run.py [--write]``.

Makes a virtual environment below ``benches/target``, installs the peers there, builds wheel and Rust programs in release,
runs them one after the other and prints the table; ``--write`` also puts it into ``benches/RESULTS.md`` and, shortened,
into the README and the handbook. ``--wheel FILE`` takes a wheel that is built already. Needs Rust and Python 3.10 or later; takes some minutes.
A single comparison: ``cargo run --release --bin NAME`` in ``benches``, or ``benches/target/venv/bin/python benches/python/NAME.py``.
"""

from __future__ import annotations

import argparse
import datetime
import json
import os
import platform
import re
import subprocess
import sys
import tempfile
from pathlib import Path

BENCHES = Path(__file__).resolve().parent
ROOT = BENCHES.parent
sys.path.insert(0, str(BENCHES / "python"))

from timing import Comparison, amount

VENV = BENCHES / "target" / "venv"
PYTHON = VENV / "bin" / "python"
#: Python programs that write comparisons themselves.
WRITERS = ["flue_analysis", "gas_properties", "water", "pipe_heat_loss", "stream"]
#: Programs that print a line a contender.
PRINTERS = ["cool_down", "scalar_call", "import_time", "uncertainty"]
RUST = ["readings", "water"]
PEERS = ["numpy", "scipy", "polars", "pyarrow", "cantera", "CoolProp", "ht", "fluids", "pint", "uncertainties"]
PLAIN = "plain evaluation (erased)"


def run(command: list[object], folder: Path = ROOT, check: bool = True) -> str:
    print("==>", " ".join(map(str, command)), flush=True)
    return subprocess.run([str(c) for c in command], cwd=folder, check=check, stdout=subprocess.PIPE, text=True).stdout


def prepare(wheel: Path | None) -> Path:
    if not PYTHON.exists():
        run([sys.executable, "-m", "venv", VENV])
    pip = [PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    run([*pip, "--requirement", BENCHES / "python" / "requirements.txt"])
    if wheel is None:
        folder = BENCHES / "target" / "wheels"
        for old in folder.glob("*.whl"):
            old.unlink()
        run([VENV / "bin" / "maturin", "build", "--release", "--locked", "--out", folder], ROOT / "bindings" / "python")
        (wheel,) = folder.glob("*.whl")
    run([*pip, "--force-reinstall", "--no-deps", wheel])
    run(["cargo", "build", "--quiet", "--release", "--locked", "--bins"], BENCHES)
    return wheel


def number(text: str, name: str) -> float:
    """The first number behind ``name`` on the line that begins with it."""
    for line in text.splitlines():
        if line.startswith(name) and (found := re.match(r"\s+([\d.]+)", line[len(name) :])):
            return float(found[1])
    raise SystemExit(f"no line begins with {name!r} in:\n{text}")


def comparisons(wheel: Path) -> list[Comparison]:
    """All rows, in the order of the table."""
    texts = {name: run([BENCHES / "target" / "release" / name], BENCHES, check=False) for name in RUST}
    written: dict[str, list[Comparison]] = {}
    for name in WRITERS:
        with tempfile.NamedTemporaryFile(suffix=".json") as file:
            print(run([PYTHON, BENCHES / "python" / f"{name}.py", "--json", file.name]))
            written[name] = [Comparison(**row) for row in json.loads(Path(file.name).read_text(encoding="utf-8"))]
    for name in PRINTERS:
        # Some say by their exit that a goal of theirs was missed; what is missing altogether is found when read.
        texts[f"{name}.py"] = run([PYTHON, BENCHES / "python" / f"{name}.py"], check=False)
    for text in texts.values():
        print(text)

    def of(program: str, ours: str, theirs: str, work: str, peer: str, sense: str, goal: float | None, scale: float = 1e-9, note: str = "") -> Comparison:
        return Comparison(work, peer, number(texts[program], ours) * scale, number(texts[program], theirs) * scale, sense, goal, note=note)

    mine, columns = "flamewright columns, results given", "flue analysis, a million rows in Rust, one core"
    wide = "flamewright: four columns in, 20 results and a status out, ranges and rules checked."
    call, micro = "flue_analysis, ", 1e-6
    cool = "one cool-down, 25 temperatures, event, from Rust"
    cooled = texts["cool_down.py"]
    alone, methods = number(cooled, "warm    flamewright"), ["RK45", "DOP853", "LSODA", "BDF", "Radau"]
    at_1e8 = {m: number(cooled, f"warm    {m} 1e-08") for m in methods}
    best = min(at_1e8, key=lambda m: at_1e8[m])
    scalar = texts["scalar_call.py"]
    return [
        of("readings", mine, "memory floor: 4 columns read, 20 written", columns, "bare copy of 4 columns into 20", "at_most", 2, note=wide),
        of("readings", mine, "hand-written loop on raw f64, unchecked, 20 results", columns, "the same on raw f64 by hand, unchecked", "at_most", 1, note=wide),
        *written["flue_analysis"],
        *written["gas_properties"],
        of("water", "flamewright liquid, the same four, one call a state", "seuif97, four pt calls", "water state, a call each in Rust", "crate seuif97, four pt calls", "at_least", 1.25),
        *written["water"],
        *written["pipe_heat_loss"],
        Comparison(cool, f"scipy solve_ivp, {best} (the best of {len(methods)}) at 1e-8", alone * 1e-3, at_1e8[best] * 1e-3, "at_least", 50, note="Two processes."),
        of("readings", "a record of uom quantities, unchecked", "the kernel on raw f64", "one flue analysis in Rust", "the same kernel on raw f64, without uom", "at_most", 1.02),
        of("readings", "first order, full covariance", PLAIN, "uncertainty of a flue analysis, first order", "one plain evaluation", "at_most", 12),
        of("uncertainty.py", "flamewright, first order, SI numbers", "uncertainties, 6 results", "uncertainty, first order, from Python", "package uncertainties, 6 results", "at_least", 100, micro),
        of("uncertainty.py", "flamewright, 100 000 draws, 20 results", "NumPy, 100 000 draws, 6 results", "uncertainty, 100 000 draws, from Python", "NumPy, 6 results", "shown", None, micro),
        Comparison(
            "uncertainty, Monte Carlo of 100 000 draws", "the goal itself", number(texts["readings"], "Monte Carlo, 100 000 draws (time of the whole)") * 1e-9, None, "below", 15e-3,
            note="20 results a draw, all draws kept.",
        ),
        of("scalar_call.py", f"{call}fast path", "fluids.friction_factor", "scalar call from Python, fast path", "fluids.friction_factor (another formula)", "at_least", 1, micro),
        of("scalar_call.py", f"{call}text", "fluids.units.friction_factor", "scalar call from Python, text", "fluids.units.friction_factor (another formula)", "at_least", 67 / 15, micro),
        Comparison("scalar call from Python, fast path", "the goal itself", number(scalar, f"{call}fast path") * micro, None, "below", 0.7e-6),
        Comparison("scalar call from Python, text", "the goal itself", number(scalar, f"{call}text") * micro, None, "below", 15e-6),
        Comparison("scalar call from Python, pint quantities", "the goal itself", number(scalar, f"{call}pint") * micro, None, "below", 15e-6),
        Comparison("import flamewright, NumPy already there", "the goal itself", number(texts["import_time.py"], "flamewright") * 1e-3, None, "below", 30e-3),
        Comparison("size of the wheel", "the goal itself", float(wheel.stat().st_size), None, "below", 5e6, "B"),
        *written["stream"],
    ]


def facts() -> list[str]:
    """Where and with what it was measured."""

    def first(path: str, key: str) -> str:
        try:
            lines = Path(path).read_text(encoding="utf-8").splitlines()
        except OSError:
            return "unknown"
        return next((line.split(":", 1)[1].strip() for line in lines if line.startswith(key)), "unknown")

    memory = first("/proc/meminfo", "MemTotal")
    cache = subprocess.run(["getconf", "LEVEL2_CACHE_SIZE"], capture_output=True, text=True, check=False).stdout.strip()
    vectors = [w for w in ("avx2", "avx512f") if w in first("/proc/cpuinfo", "flags").split()]
    versions = run([PYTHON, "-c", "import sys, importlib.metadata as m; print(', '.join(f'{p} {m.version(p)}' for p in sys.argv[1:]))", *PEERS]).strip()
    lock = (BENCHES / "Cargo.lock").read_text(encoding="utf-8")
    crate = re.search(r'name = "seuif97"\nversion = "(.*)"', lock)
    return [
        f"{datetime.datetime.now(datetime.timezone.utc):%Y-%m-%d %H:%M} UTC",
        f"{first('/proc/cpuinfo', 'model name')} (family {first('/proc/cpuinfo', 'cpu family')}, model {first('/proc/cpuinfo', 'model')}), "
        f"{os.cpu_count()} cores, {', '.join(vectors) or 'no AVX2'}, level 2 cache {int(cache or 0) // 1024} KiB, memory {int(memory.split()[0]) / 2**20:.0f} GiB",
        f"{platform.system()} {platform.release().split('-')[0]}, {run(['rustc', '--version']).strip()}, Python {platform.python_version()}",
        versions + (f", crate seuif97 {crate[1]}" if crate else ""),
    ]


def line(row: Comparison) -> list[str]:
    ratio = "" if row.ratio is None else f"{row.ratio:.3g}"
    signs = {"at_least": "≥", "at_most": "≤"}
    goal = "" if row.goal is None else f"< {amount(row.goal, row.unit)}" if row.sense == "below" else f"{signs[row.sense]} {row.goal:.3g}"
    met = {None: "", True: "met", False: "**not met**"}[row.met]
    return [row.work, amount(row.ours, row.unit), row.peer if row.theirs is not None else "", amount(row.theirs, row.unit), ratio, goal, met]


def table(rows: list[list[str]], head: list[str]) -> str:
    return "\n".join("| " + " | ".join(cells) + " |" for cells in [head, ["---"] * len(head), *rows]) + "\n"


def document(rows: list[Comparison], where: list[str], load: tuple[float, float]) -> str:
    numbers: list[str] = []
    lines = []
    for row in rows:
        cells = line(row)
        if row.note:
            if row.note not in numbers:
                numbers.append(row.note)
            cells[0] += f" [{numbers.index(row.note) + 1}]"
        lines.append(cells)
    reasons = (BENCHES / "REASONS.md").read_text(encoding="utf-8")
    busy = f"Load average {load[0]:.1f} at the start, {load[1]:.1f} at the end, on {os.cpu_count()} cores."
    if max(load) > (os.cpu_count() or 1):
        busy += " **Other work shared the machine: take the ratios, not the times, and those of memory-bound rows as rough.**"
    parts = [
        "# Comparisons with other libraries\n",
        "Written by `python3 benches/run.py --write`. Every contender in every round, in shuffled order, in one process, "
        "medians of processor time; where two processes are compared, a note says so. "
        "Ratio ≥: the peer's cost over flamewright's. Ratio ≤: flamewright's over the peer's. All inputs are invented.\n",
        "\n".join(f"* {fact}" for fact in where) + f"\n* {busy}\n",
        table(lines, ["work", "flamewright", "against", "takes", "ratio", "goal", ""]),
        "\n".join(f"[{i}] {note}\n" for i, note in enumerate(numbers, 1)),
        reasons,
    ]
    return "\n".join(parts)


#: Pages that show the rows with a goal, between marks.
SHOWN_IN = (ROOT / "README.md", ROOT / "docs" / "handbook" / "comparison.md")


def into_pages(rows: list[Comparison], where: list[str]) -> None:
    """The rows with a goal, between the marks of each page."""
    chosen = [[c[0], c[1], c[2], c[3], c[4], f"{c[5]} {c[6]}".strip()] for c in map(line, rows) if c[5]]
    short = table(chosen, ["work", "flamewright", "against", "takes", "ratio", "goal"])
    for page in SHOWN_IN:
        text = page.read_text(encoding="utf-8")
        before, rest = text.split("<!-- comparisons -->\n", 1)
        _, after = rest.split("<!-- end of comparisons -->", 1)
        page.write_text(f"{before}<!-- comparisons -->\n{where[0]}, {where[1]}:\n\n{short}<!-- end of comparisons -->{after}", encoding="utf-8")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--write", action="store_true", help="write benches/RESULTS.md and the tables of the README and the handbook")
    parser.add_argument("--wheel", type=Path, help="a wheel that is built already")
    given = parser.parse_args()
    wheel = prepare(given.wheel.resolve() if given.wheel else None)
    before = os.getloadavg()[0]
    rows = comparisons(wheel)
    where = facts()
    text = document(rows, where, (before, os.getloadavg()[0]))
    print(text)
    if given.write:
        (BENCHES / "RESULTS.md").write_text(text, encoding="utf-8")
        into_pages(rows, where)


if __name__ == "__main__":
    main()
