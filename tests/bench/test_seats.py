"""Speed of the array work in the seats, as ratios to the plain loop in the same run.

Run by hand: ``python -m pytest tests/bench/test_seats.py -m bench -s``.
"""

import sys
from collections.abc import Callable
from math import cos, radians, sin, sqrt
from random import Random
from time import perf_counter

import numpy as np
import pytest
from seatwork.seats import Countersink, Head, Spotface, clean_up, fit, rim
from seatwork.seats.castings import Casting, rough_pad
from seatwork.seats.flushness import Box, simulate_heads
from seatwork.seats.surfaces import Round, Tilted
from seatwork.seats.touching_off import Limits

pytestmark = pytest.mark.bench

PAD = rough_pad(
    np.random.default_rng(1), size=40, roughness=0.2, correlation_length=2,
    shapes=(Tilted(tilt=3), Round(diameter=200)), points=400,
)  # fmt: skip
SPOT = Spotface(diameter=38, hole_diameter=8)
BOX = Box(
    sharp_diameter=Limits(least=12.05, greatest=12.9), head_angle=(80, 82),
    seat_diameter=Limits(least=12.85, greatest=13.0),
    hole_diameter=Limits(least=6.75, greatest=6.85), seat_angle=(81.5, 82.5),
)  # fmt: skip
SEAT = Countersink(diameter=8, hole_diameter=5, included_angle=90)


def best(work: Callable[[], object], tries: int) -> float:
    """Time the quickest of some tries [ms]."""
    times = []
    for _ in range(tries):
        start = perf_counter()
        work()
        times.append(perf_counter() - start)
    return 1000 * min(times)


def plain_curve(pad: Casting, spot: Spotface) -> list[tuple[float, float]]:
    """Find the clean-up curve point by point: the plain loop."""
    count, heights = len(pad.scale), []
    rows = pad.scale.tolist()
    slope, face = pad.shapes[0].slope, pad.shapes[1].radius  # type: ignore[attr-defined]
    for row in range(count):
        y = (row - (count - 1) / 2) * pad.spacing
        for column in range(count):
            x = (column - (count - 1) / 2) * pad.spacing
            away = x * x + y * y
            if spot.hole_diameter**2 / 4 <= away <= spot.diameter**2 / 4:
                drop = sqrt(face * face - x * x) - face
                heights.append(rows[row][column] + slope * x + drop)
    heights.sort(reverse=True)
    return [(heights[0] - height, n / len(heights)) for n, height in enumerate(heights, 1)]


def plain_heads(box: Box, rng: Random, count: int) -> list[float]:
    """Draw heads and seats and fit them one by one: the plain loop."""
    return [
        fit(
            Head(
                sharp_diameter=rng.uniform(box.sharp_diameter.least, box.sharp_diameter.greatest),
                included_angle=rng.uniform(*box.head_angle),
            ),
            Countersink(
                diameter=rng.uniform(box.seat_diameter.least, box.seat_diameter.greatest),
                hole_diameter=rng.uniform(box.hole_diameter.least, box.hole_diameter.greatest),
                included_angle=rng.uniform(*box.seat_angle),
            ),
        ).amount
        for _ in range(count)
    ]


def plain_rim(seat: Countersink, face: float) -> list[tuple[float, float, float]]:
    """Find 720 points of a rim on a shaft by halving, one by one: the plain loop."""
    slope, half = seat.tangent, seat.diameter / 2
    start = half + slope * (face - sqrt(face * face - half * half))
    points = []
    for turn in range(720):
        across, low, high = cos(radians(turn / 2)), 0.0, face
        for _ in range(50):
            middle = (low + high) / 2
            height = sqrt(face * face - (middle * across) ** 2) - face
            low, high = (middle, high) if middle < start + slope * height else (low, middle)
        points.append((low, sqrt(face * face - (low * across) ** 2) - face,
                       (low - seat.hole_diameter / 2) / sin(radians(45))))  # fmt: skip
    return points


def told(what: str, ours: float, loop: float, target: float) -> str:
    """Say a measurement."""
    return f"\n{what}: {ours:.2f} ms (target {target:g} ms), {loop / ours:.0f} times the plain loop"


def curve() -> np.ndarray:
    """Find the whole clean-up curve of the pad at 200 depths."""
    found = clean_up(SPOT, PAD)
    return found.share(np.linspace(0, found.full_depth, 200))


def test_the_whole_clean_up_curve_of_a_casting(capsys: pytest.CaptureFixture[str]) -> None:
    """A 400 x 400 casting's clean-up curve runs at least five times the plain loop."""
    ours, loop = best(curve, 15), best(lambda: plain_curve(PAD, SPOT), 2)
    with capsys.disabled():
        sys.stdout.write(told("casting 400 x 400, whole curve", ours, loop, 20))
    assert loop / ours > 5


def test_a_million_heads(capsys: pytest.CaptureFixture[str]) -> None:
    """A million drawn heads run at least fifty times the plain loop."""
    ours = best(lambda: simulate_heads(BOX, np.random.default_rng(1), count=1_000_000), 7)
    loop = 100 * best(lambda: plain_heads(BOX, Random(1), 10_000), 2)
    with capsys.disabled():
        sys.stdout.write(told("1,000,000 heads", ours, loop, 150))
    assert loop / ours > 50


def test_the_rim_on_a_round_face(capsys: pytest.CaptureFixture[str]) -> None:
    """720 points of a rim on a shaft run at least twenty times the plain loop."""
    face = Round(diameter=20)
    ours, loop = best(lambda: rim(SEAT, face), 50), best(lambda: plain_rim(SEAT, 10.0), 3)
    with capsys.disabled():
        sys.stdout.write(told("rim on a round face, 720 points", ours, loop, 1))
    assert np.allclose(rim(SEAT, face).radius, [point[0] for point in plain_rim(SEAT, 10.0)])
    assert loop / ours > 20
