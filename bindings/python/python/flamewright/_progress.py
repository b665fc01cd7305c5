"""A line that says that a long sum is still going on."""

from __future__ import annotations

import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager

#: Seconds before anything is said, and between two sayings.
PATIENCE = 2.0
PACE = 0.5
#: Rows or draws below which no sum of the catalogue takes that long.
MANY = 5000


@contextmanager
def said(what: str, count: int) -> Iterator[None]:
    """Says on the terminal or in the notebook what has been going on for longer than ``PATIENCE``."""
    # A notebook shows what its kernel writes, though it is no terminal; a process that only talks to kernels has none.
    watched = sys.stderr is not None and (sys.stderr.isatty() or type(sys.stderr).__module__.startswith("ipykernel."))
    if count < MANY or not watched:
        yield
        return
    done = threading.Event()

    def say() -> None:
        started = time.monotonic()
        wait, last = PATIENCE, ""
        while not done.wait(wait):
            last = f"{what}, {count:,} times: {time.monotonic() - started:.0f} s so far"
            sys.stderr.write(f"\r{last}")
            sys.stderr.flush()
            wait = PACE
        if last:
            sys.stderr.write("\r" + " " * len(last) + "\r")
            sys.stderr.flush()

    speaker = threading.Thread(target=say, daemon=True)
    speaker.start()
    try:
        yield
    finally:
        done.set()
        speaker.join()
