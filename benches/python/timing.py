"""Side-by-side timing: every contender in every round, in shuffled order, in one process; medians.

Time is the processor time of the process: on a quiet machine that of the clock, where each contender keeps to one core;
on a busy one it leaves out the waiting for a core (the memory and its caches stay shared).

A module of comparisons makes :class:`Comparison` rows and hands them to :func:`finish`, which prints them and, run as
``python … --json FILE``, also writes them for ``benches/run.py``.
"""

from __future__ import annotations

import argparse
import json
import random
import statistics
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

#: Rows of a batch where a stream would be cut: results stay in the cache and no page is touched for the first time.
BATCH = 1 << 16
#: A round repeats a short body for at least this long, so that the clock and the loop do not count.
LEAST_SECONDS = 0.03


@dataclass
class Comparison:
    """A row of the table: what the same work costs here and there, and what was aimed at."""

    work: str
    peer: str
    #: Seconds (or bytes) of flamewright and of the peer, an evaluation each; None where there is no peer.
    ours: float
    theirs: float | None
    #: "at_least": the peer costs at least ``goal`` times as much. "at_most": flamewright costs at most ``goal`` times
    #: as much as the peer. "below": flamewright stays below ``goal`` itself. "shown": no goal.
    sense: str = "shown"
    goal: float | None = None
    unit: str = "s"
    note: str = ""

    @property
    def ratio(self) -> float | None:
        """The peer's cost over ours, or ours over the peer's where little is to be added."""
        if self.theirs is None:
            return None
        return self.ours / self.theirs if self.sense == "at_most" else self.theirs / self.ours

    @property
    def met(self) -> bool | None:
        if self.sense == "shown" or self.goal is None:
            return None
        if self.sense == "below":
            return self.ours < self.goal
        assert self.ratio is not None
        return self.ratio <= self.goal if self.sense == "at_most" else self.ratio >= self.goal


def race(contenders: Mapping[str, tuple[Callable[[], object], int]], rounds: int = 9, seed: int = 1) -> dict[str, float]:
    """Median seconds per evaluation; each contender is a body and how many evaluations one call of it does."""
    repeats = {}
    for name, (body, _) in contenders.items():
        body()  # warms up
        start = time.process_time()
        body()
        repeats[name] = max(1, int(LEAST_SECONDS / max(time.process_time() - start, 1e-9)))
    times: dict[str, list[float]] = {name: [] for name in contenders}
    order = list(contenders)
    shuffle = random.Random(seed)
    for _ in range(rounds):
        shuffle.shuffle(order)
        for name in order:
            body, count = contenders[name]
            start = time.process_time()
            for _ in range(repeats[name]):
                body()
            times[name].append((time.process_time() - start) / (repeats[name] * count))
    return {name: statistics.median(values) for name, values in times.items()}


def batches(columns: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    """Equally long arrays cut into batches of :data:`BATCH` rows, as views."""
    rows = len(next(iter(columns.values())))
    for start in range(0, rows, BATCH):
        yield {name: column[start : start + BATCH] for name, column in columns.items()}


def amount(value: float | None, unit: str) -> str:
    """A duration or a size as one reads it."""
    if value is None:
        return ""
    scales = [("MB", 1e6)] if unit == "B" else [("s", 1.0), ("ms", 1e-3), ("µs", 1e-6), ("ns", 1e-9)] if unit == "s" else [(unit, 1.0)]
    name, scale = next((s for s in scales if abs(value) >= s[1]), scales[-1])
    return f"{value / scale:.3g} {name}" if value / scale < 1000 else f"{value / scale:.0f} {name}"


def finish(rows: Sequence[Comparison]) -> None:
    """Prints the rows; writes them where ``--json`` says."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--json", type=Path)
    wanted = parser.parse_args().json
    for row in rows:
        ratio = "" if row.ratio is None else f"{row.ratio:9.3g} x"
        met = {None: "", True: "met", False: "MISSED"}[row.met]
        print(f"{row.work:44} {amount(row.ours, row.unit):>9}   {row.peer:44} {amount(row.theirs, row.unit):>9} {ratio:>11} {met}")
    if wanted:
        wanted.write_text(json.dumps([asdict(row) for row in rows]), encoding="utf-8")
