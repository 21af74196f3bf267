"""How long a plan takes: in milliseconds, and beside a plain sum on the same machine.

Run by hand: ``python -m pytest tests/bench/test_plan.py -m bench -s``.
"""

import sys
import time
from collections.abc import Callable

import pytest
from seatwork import notes, plan
from seatwork.inspection import Measured, inspect
from seatwork.shop.shop import Shop

pytestmark = pytest.mark.bench

NOTES = (
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW",
    "DRILL & C'BORE FOR 3/8 SHCS",
    "17/32 DR, 1-1/4 S.F., 3 HOLES",
    "#7 X .75 DP, 1/4-20 UNC-2B X .50 DP, CSK ⌀.28 X 90°",
    "2X CENTER DRILL #3, ⌀.200 X 60°",
)
RUNS = 30
MOST_MS = 25.0  # on a machine that does the plain sum in PLAIN_MS
PLAIN_MS = 45.0


def seconds(job: Callable[[], object]) -> float:
    """Return the middle of some runs [s], the first not counted."""
    job()
    times = []
    for _ in range(RUNS):
        began = time.perf_counter()
        job()
        times.append(time.perf_counter() - began)
    return sorted(times)[RUNS // 2]


def plain_sum() -> int:
    """Add a million squares: a measure of the machine itself."""
    return sum(n * n for n in range(1_000_000))


def test_a_plan_takes_under_25_ms(capsys: pytest.CaptureFixture[str]) -> None:
    """Each kind of plan takes under 25 ms, told as a part of a plain sum of a million squares."""
    shop = Shop.at()
    measure = seconds(plain_sum)
    for note in NOTES:
        callout = notes.read(note)
        taken = seconds(
            lambda one=callout: plan.make(
                one,
                material="1018 steel",
                machine="knee mill",
                shop=shop,
                thickness=19.0,
                edge=25.4,
            )
        )
        with capsys.disabled():
            sys.stdout.write(f"\n{1e3 * taken:6.2f} ms, x {taken / measure:.3f}  {note}")
        assert taken / measure < MOST_MS / PLAIN_MS


def test_a_hundred_parts_are_judged_in_the_time_of_some_plans(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Judging 100 parts takes less than 20 plans."""
    shop = Shop.at()
    callout = notes.read(NOTES[0])

    def make() -> plan.Plan:
        return plan.make(callout, material="6061 aluminum", machine="knee mill", shop=shop)

    made = make()
    parts = [
        Measured(part=f"L{n:02}-1", diameter=10.0, depth=2.8, stand=-0.1 - 0.002 * n, angle=82.0)
        for n in range(100)
    ]
    ratio = seconds(lambda: inspect(parts, {"lid": made}, shop=shop)) / seconds(make)
    with capsys.disabled():
        sys.stdout.write(f"\n100 parts: x {ratio:.1f} of a plan")
    assert ratio < 20


def test_a_list_of_a_hundred_notes_grows_about_linearly(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """A hundred notes are read and planned in about ten times the time of ten."""
    shop = Shop.at()

    def some(count: int) -> list[plan.Plan]:
        return [
            plan.make(NOTES[n % len(NOTES)], material="1018 steel", machine="knee mill", shop=shop)
            for n in range(count)
        ]

    ten, hundred = seconds(lambda: some(10)), min(seconds_of(lambda: some(100)) for _ in range(3))
    with capsys.disabled():
        sys.stdout.write(f"\n100 notes: x {hundred / ten:.1f} of ten")
    assert hundred < 14 * ten


def seconds_of(job: Callable[[], object]) -> float:
    """Time one run [s]."""
    began = time.perf_counter()
    job()
    return time.perf_counter() - began
