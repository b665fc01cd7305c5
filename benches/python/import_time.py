"""What `import flamewright` costs beyond NumPy, in time and memory, beside other libraries.

Every import runs in a process of its own, in shuffled order, after NumPy has been imported there;
time is the processor's for the import alone, memory the growth of the resident set. Libraries that are not
installed are left out. Needs the built wheel.
"""

from __future__ import annotations

import json
import random
import statistics
import subprocess
import sys

ROUNDS = 11
#: Most milliseconds that the import may add to that of NumPy.
GOAL = 30.0
CONTENDERS = {
    "flamewright": "import flamewright",
    "flamewright, catalogue read": "import flamewright; flamewright.catalogue()",
    "flamewright, one result": "import flamewright; flamewright.liquid_water(temperature='60 degC')",
    "pint and its registry": "import pint; pint.UnitRegistry()",
    "fluids": "import fluids",
    "CoolProp": "import CoolProp.CoolProp",
    "pandas": "import pandas",
}
MEASURE = """
import json, sys, time
import numpy
def resident():
    with open("/proc/self/statm") as f:
        return int(f.read().split()[1]) * 4096
code = compile(sys.argv[1], "import", "exec")
before, started = resident(), time.process_time()
exec(code)
print(json.dumps([1000 * (time.process_time() - started), (resident() - before) / 2**20]))
"""


def once(code: str) -> list[float] | None:
    done = subprocess.run([sys.executable, "-c", MEASURE, code], capture_output=True, text=True, check=False)
    if done.returncode and "ModuleNotFoundError" in done.stderr:
        return None
    done.check_returncode()
    measured: list[float] = json.loads(done.stdout)
    return measured


def main() -> None:
    contenders = {name: code for name, code in CONTENDERS.items() if once(code)}  # also warms the files
    found: dict[str, list[list[float]]] = {name: [] for name in contenders}
    for _ in range(ROUNDS):
        for name in random.sample(sorted(contenders), len(contenders)):
            found[name].append(once(contenders[name]) or [])
    ours = statistics.median(m[0] for m in found["flamewright"])
    print(f"{'after NumPy':30} {'ms':>8} {'x ours':>8} {'MiB':>8}")
    for name, measured in found.items():
        time_, memory = (statistics.median(m[k] for m in measured) for k in (0, 1))
        print(f"{name:30} {time_:8.1f} {time_ / ours:8.1f} {memory:8.1f}")
    print(f"goal: less than {GOAL:.0f} ms more than NumPy: {'met' if ours < GOAL else 'NOT MET'}")


if __name__ == "__main__":
    main()
