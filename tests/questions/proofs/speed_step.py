"""Proof of speed-step: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Take the next step down from the lower of two speeds, or none where all are faster."""
    steps = [int(step) for step in q.steps.split(",")]
    low = [step for step in steps if step <= min(q.wanted, q.limit)]
    none = "none of them"
    if not low:
        return [(none, {f"M35{'abc'[n]}": f"{step} rev" for n, step in enumerate(steps[:3])})]
    right, over = low[-1], [step for step in steps if step > low[-1]]
    ignored = [step for step in steps if step <= q.wanted][-1:]
    faster = sorted({*over[:2], *(step for step in ignored if step > right)})
    slips = {"M34": none, **{f"M35{'abc'[n]}": f"{step} rev" for n, step in enumerate(faster)}}
    if len(low) > 1:
        slips["M34b"] = f"{low[-2]} rev"
    return [(f"{right} rev", slips)]
