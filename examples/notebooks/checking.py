"""The check cell of a lesson: compares an answer with what the library computes."""

from __future__ import annotations


def check(answer: float | None, right: float, within: float = 0.01) -> bool:
    """Says whether ``answer`` is ``right`` to a relative tolerance; ``None`` is no answer yet."""
    if answer is None:
        print("No answer yet: put a number in place of None, and run both cells again.")
        return False
    if abs(answer - right) <= within * abs(right):
        print(f"Right: {right:.4g}.")
        return True
    ratio = answer / right if right else float("inf")
    hint = f"it is {ratio:.3g} times the right value" if ratio > 0 else "its sign is wrong"
    print(f"Not yet: {hint}. Look again at the units and at the step where they change.")
    return False
