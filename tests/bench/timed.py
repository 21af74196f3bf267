"""Times of some work, and how the table of benchmarks writes them."""

import importlib.util
import os
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from statistics import median
from types import ModuleType

HERE = Path(__file__).resolve().parent
TICKS = 0.2  # seconds of work at least, since that of other processes is counted in hundredths
FEW = 3  # runs of long work, which is timed as it is


@dataclass(frozen=True, slots=True)
class Timed:
    """What some work took.

    Parameters
    ----------
    what : str
        The work.
    taken : tuple of float
        What each run took [s].
    beside : str
        The yardstick, with the ratio to it; or how it grew.
    """

    what: str
    taken: tuple[float, ...]
    beside: str = ""

    @property
    def middle(self) -> float:
        """The median [s]."""
        return median(self.taken)

    def row(self) -> str:
        """Write the row of the table."""
        ends = (min(self.taken), self.middle, max(self.taken))
        return f"| {self.what} | {' | '.join(map(shown, ends))} | {self.beside} |"


def shown(seconds: float) -> str:
    """Write a time in three digits."""
    for unit, size in (("s", 1.0), ("ms", 1e-3)):
        if seconds >= size:
            return f"{seconds / size:.3g} {unit}"
    return f"{seconds / 1e-6:.3g} µs"


def spent() -> float:
    """Tell the processor time of this process and of those it has waited for [s]."""
    return time.process_time() + sum(os.times()[2:4])


def runs(work: Callable[[], object], times: int = 9) -> tuple[float, ...]:
    """Time some runs, the first not counted; short work many times over [s]."""
    work()
    began = time.perf_counter()
    if times > FEW:
        work()
    again = max(1, min(200, round(TICKS / (time.perf_counter() - began)))) if times > FEW else 1
    taken = []
    for _ in range(times):
        began = spent()
        for _ in range(again):
            work()
        taken.append((spent() - began) / again)
    return tuple(taken)


def beside(ours: Timed, other: Timed) -> str:
    """Write the ratio of two medians."""
    return f"{ours.middle / other.middle:.3g} of {other.what}"


def grown(few: Timed, many: Timed, times: float) -> str:
    """Write how the work grew, beside how much more of it there was."""
    return f"{many.middle / few.middle:.3g} times for {times:g} times as many"


def part(name: str) -> ModuleType:
    """Load a file of this folder."""
    spec = importlib.util.spec_from_file_location(f"bench_{name}", HERE / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module
