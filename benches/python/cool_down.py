"""One cool-down with event location, beside scipy's solve_ivp on the same equations.

Run in a Python with numpy and scipy:  python benches/python/cool_down.py
The Rust side is built and run by cargo; both are timed in the same minute. The plant is INVENTED.
Reference times come from DOP853 at rtol 1e-13.
"""
import subprocess
import time
from pathlib import Path

import numpy as np
from scipy.integrate import solve_ivp

BENCHES = Path(__file__).resolve().parent.parent
CASES = {  # name: (metres of flow and return, emitter W, start of circuit, target), degC
    "warm": (8.0, 8.0, 1500.0, 80.0, 72.5),
    "cold": (8.0, 8.0, 1500.0, 20.0, 72.5),
    "long": (8.0, 8.0, 1500.0, 80.0, 30.0),
    "bypass": (1.9, 1.6, 0.0, 80.0, 50.0),
}
METHODS = ("RK45", "DOP853", "LSODA", "BDF", "Radau")
N_FLOW, N_RETURN, ROOM, MC = 12, 11, 20.0, 0.15 * 4180.0


def equations(flow, back, emitter):
    block = 72 * 500 + 0.015 * 980 * 4180
    cells = [(1500 * flow / N_FLOW, 0.75 * flow / N_FLOW)] * N_FLOW
    cells += [(45000.0, 0.0)] if emitter else []
    cells += [(1500 * back / N_RETURN, 0.75 * back / N_RETURN)] * N_RETURN
    capacity = np.array([block] + [c for c, _ in cells])
    loss = np.array([6.0] + [u for _, u in cells])
    place = 1 + N_FLOW

    def rates(_, t):
        heat = MC * (np.roll(t, 1) - t) - loss * (t - ROOM)
        if emitter:
            over = t[place] - ROOM
            heat[place] -= emitter * np.sign(over) * (abs(over) / 50) ** 1.3
        return heat / capacity

    return rates, len(capacity)


def solve(case, method, rtol):
    flow, back, emitter, start, target = CASES[case]
    rates, n = equations(flow, back, emitter)
    y0 = np.full(n, start)
    y0[0] = 80.0

    def event(_, t):
        return t[0] - target

    event.terminal, event.direction = True, -1
    clock = time.perf_counter()
    out = solve_ivp(rates, (0, 1e6), y0, method=method, rtol=rtol, atol=rtol, events=event)
    return out.t_events[0][0], time.perf_counter() - clock


def best_of_as_right(case, truth, error):
    """The quickest of scipy's methods that comes as near the truth, at the widest tolerance that does; of half decades."""
    found = []
    for method in METHODS:
        for half_decades in range(6, 27):
            rtol = 10 ** (-half_decades / 2)
            if abs(solve(case, method, rtol)[0] - truth) <= error:
                found.append((min(solve(case, method, rtol)[1] for _ in range(5)), method, rtol))
                break
    return min(found)


def main():
    command = ["cargo", "run", "--quiet", "--release", "--bin", "cool_down"]
    subprocess.run(command, cwd=BENCHES, check=True, stdout=subprocess.DEVNULL)  # builds, and warms up
    text = subprocess.run(command, cwd=BENCHES, check=True, capture_output=True, text=True).stdout
    print(f"{'case':8}{'method':18}{'ms':>10}{'event error, s':>16}{'x flamewright':>15}")
    for line in text.splitlines():
        case, _, found, microseconds = line.split()
        truth, _ = solve(case, "DOP853", 1e-13)
        ours, error = float(microseconds) / 1000, abs(float(found) - truth)
        print(f"{case:8}{'flamewright':18}{ours:10.4f}{error:16.1e}{1.0:15.1f}")
        for method in METHODS:
            for rtol in (1e-6, 1e-8, 1e-10):
                runs = [solve(case, method, rtol) for _ in range(3)]
                best = min(seconds for _, seconds in runs) * 1000
                print(f"{case:8}{method + f' {rtol:.0e}':18}{best:10.3f}{abs(runs[0][0] - truth):16.1e}{best / ours:15.0f}")
        seconds, method, rtol = best_of_as_right(case, truth, error)
        print(f"{case:8}{'as right, the best':18}{seconds * 1000:10.3f}{'':16}{seconds * 1000 / ours:15.0f}  {method} at {rtol:.0e}")


if __name__ == "__main__":
    main()
