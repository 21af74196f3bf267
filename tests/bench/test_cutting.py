"""Speed of the chatter model; run by hand: ``pytest tests/bench/test_cutting.py -m bench -s``."""

import sys
import time
from collections.abc import Callable
from statistics import median

import numpy as np
import pytest
from seatwork import cutting

pytestmark = pytest.mark.bench
SPEEDS = np.linspace(60, 3000, 120)
WIDTHS = np.linspace(0.05, 12, 80)
MACHINE = cutting.Machine(stiffness=8e6, natural_frequency=250, damping_ratio=0.04)
SIX = cutting.Cutter(flutes=6, included_angle=82)
CUT = cutting.Cut(
    normal_coefficient=1345.09e6,
    tangential_coefficient=1920.98e6,
    mean_diameter=9,
    process_damping=1e5,
)
PLACE = {"machine": MACHINE, "cutter": SIX, "cut": CUT}


def seconds(work: Callable[[], object], times: int = 15) -> float:
    """Median time of some runs [s]."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        work()
        taken.append(time.perf_counter() - start)
    return median(taken)


def one_map() -> cutting.Map:
    """Work out the map of set Ax with six lips, 120 x 80."""
    return cutting.stability(**PLACE, spindle_speeds=SPEEDS, widths=WIDTHS)


def semi_discretized(speed: float, width: float, per_wave: int = 40) -> bool:
    """Tell whether a point chatters, by zeroth-order semi-discretization of one step."""
    m = MACHINE.mass
    delay, pull = 60 / speed / 6, 6 * np.sin(np.radians(41)) ** 2 * width / 1000
    steps = int(np.ceil(delay * MACHINE.natural_frequency * per_wave))
    gain = pull * CUT.normal_coefficient
    rub = pull * CUT.process_damping / (np.pi * 9e-3 * speed / 60)
    now = np.array([[0, 1], [-(MACHINE.stiffness + gain) / m, -(MACHINE.damping + rub) / m]])
    values, vectors = np.linalg.eig(now * delay / steps)
    carried = (vectors * np.exp(values)) @ np.linalg.inv(vectors)
    pushed = (carried - np.eye(2)) @ np.linalg.inv(now) @ np.array([0, gain / m])
    one_step = np.zeros((steps + 2, steps + 2))
    one_step[:2, :2], one_step[:2, -1] = carried.real, pushed.real
    one_step[2, 0] = 1
    one_step[3:, 2:-1] = np.eye(steps - 1)
    return np.abs(np.linalg.eigvals(one_step)).max() > 1


def test_a_map_takes_at_most_40_ms() -> None:
    """A 120 x 80 axial map has a median of at most 40 ms."""
    taken = seconds(one_map)
    sys.stdout.write(f"\nmap 120 x 80: {1000 * taken:.1f} ms\n")
    assert taken <= 0.040


def test_a_trace_takes_at_most_100_ms() -> None:
    """Half a second of axial cut, six lips, has a median of at most 100 ms."""
    work = {**PLACE, "spindle_speed": 1000, "width": 0.5, "feed": 0.1}
    taken = seconds(lambda: cutting.trace(**work))
    sys.stdout.write(f"\ntrace of 0.5 s: {1000 * taken:.1f} ms\n")
    assert taken <= 0.100


def test_a_point_is_a_thousand_times_quicker_than_semi_discretization() -> None:
    """A point of the map takes under a thousandth of a semi-discretized one, in one run."""
    rng = np.random.default_rng(5)
    points = [(rng.choice(SPEEDS), rng.choice(WIDTHS)) for _ in range(20)]
    start = time.perf_counter()
    for point in points:
        semi_discretized(*point)
    other = (time.perf_counter() - start) / len(points)
    ours = seconds(one_map) / (len(SPEEDS) * len(WIDTHS))
    sys.stdout.write(f"\nper point: {other / ours:.0f} times quicker\n")
    assert other / ours >= 1000


def test_the_other_method_calls_the_same_cells() -> None:
    """Semi-discretization agrees on points away from the limit, so the race is fair."""
    found = one_map()
    for column in range(20, 120, 12):
        for row in (4, 8, 16, 40):
            near = found.chatters[max(row - 3, 0) : row + 4, max(column - 2, 0) : column + 3]
            if near.all() or not near.any():
                assert semi_discretized(SPEEDS[column], WIDTHS[row]) == near.any()
