"""Stacks, boxes of screws drawn by chance, and capability."""

from math import sqrt
from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import chi2
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, fit, rss, simulate, worst_case
from seatwork.seats.capability import capability
from seatwork.seats.flushness import (
    BLOCK,
    Box,
    amounts,
    simulate_heads,
)
from seatwork.seats.stack import Term
from seatwork.seats.touching_off import Limits

QUICK = settings(max_examples=60, deadline=None)
TERMS = st.lists(
    st.builds(
        Term,
        nominal=st.floats(-50, 50),
        tolerance=st.floats(0, 2),
        direction=st.sampled_from([1.0, -1.0, 0.575]),
        spread=st.sampled_from(["normal", "uniform"]),
    ),
    min_size=1,
    max_size=6,
)
BOX = Box(
    sharp_diameter=Limits(least=12.05, greatest=12.9),
    head_angle=(80, 82),
    seat_diameter=Limits(least=12.85, greatest=13.0),
    hole_diameter=Limits(least=6.75, greatest=6.85),
    seat_angle=(81.5, 82.5),
)


@QUICK
@given(terms=TERMS)
def test_root_sum_square_lies_within_the_worst_case(terms: list[Term]) -> None:
    """The root of squares is never above the sum, nor below the sum over the root of n."""
    worst, likely = worst_case(terms), rss(terms)
    assert likely.nominal == worst.nominal
    assert likely.plus_minus <= worst.plus_minus * (1 + 1e-12)
    assert likely.plus_minus >= worst.plus_minus / sqrt(len(terms)) * (1 - 1e-12)
    assert worst.least <= likely.least <= likely.greatest <= worst.greatest


@pytest.mark.outside("closed form", "seats.simulate")
def test_simulation_agrees_with_the_sums() -> None:
    """Drawn normal sizes spread by the root of squares over three; uniform ones stay inside."""
    normal = [
        Term(nominal=40, tolerance=0.1), Term(nominal=25, tolerance=0.05, direction=-1),
        Term(nominal=2, tolerance=0.03, direction=-1),
    ]  # fmt: skip
    drawn = simulate(normal, np.random.default_rng(1), count=200_000)
    # standard error of the mean 9e-5, of the spread 0.16 percent: four of each
    assert drawn.mean() == pytest.approx(13, abs=4e-4)
    assert 3 * drawn.std() == pytest.approx(rss(normal).plus_minus, rel=7e-3)
    uniform = [
        Term(nominal=term.nominal, tolerance=term.tolerance, direction=term.direction,
             spread="uniform")
        for term in normal
    ]  # fmt: skip
    drawn = simulate(uniform, np.random.default_rng(1), count=50_000)
    worst = worst_case(uniform)
    assert worst.least <= drawn.min()
    assert drawn.max() <= worst.greatest
    assert drawn.std() == pytest.approx(rss(uniform).plus_minus / sqrt(3), rel=0.02)


def test_the_same_generator_draws_the_same() -> None:
    """Chance comes from the passed generator alone."""
    terms = [Term(nominal=1, tolerance=0.1)]
    first, second = (simulate(terms, np.random.default_rng(5), count=10) for _ in range(2))
    assert np.array_equal(first, second)
    boxes = [simulate_heads(BOX, np.random.default_rng(5), count=10) for _ in range(2)]
    assert np.array_equal(*boxes)


def test_many_heads_at_once_stand_as_each_alone() -> None:
    """The array of amounts equals `fit` for each of 2,000 heads to 1e-12 mm."""
    rng = Random(6)
    sizes = []
    for _ in range(2000):
        hole = rng.uniform(2, 10)
        sharp = hole * rng.uniform(1.3, 3)
        sizes.append(
            (sharp, rng.uniform(60, 120), hole * rng.uniform(1.1, 3), hole,
             rng.choice([82.0, rng.uniform(60, 120)]), rng.uniform(hole * 1.01, sharp))
        )  # fmt: skip
    sharp, head_angle, seat, hole, seat_angle, edge = np.array(sizes).T
    many = amounts(
        sharp_diameter=sharp, head_angle=head_angle, seat_diameter=seat, hole_diameter=hole,
        seat_angle=seat_angle, edge_diameter=edge,
    )  # fmt: skip
    alone = [
        fit(
            Head(sharp_diameter=row[0], included_angle=row[1], edge_diameter=row[5]),
            Countersink(diameter=row[2], hole_diameter=row[3], included_angle=row[4]),
        ).amount
        for row in sizes
    ]
    assert np.abs(many - alone).max() < 1e-12


def test_a_drawn_box_stays_within_its_corners() -> None:
    """No drawn head stands outside the corner fits, and a large box comes near both."""
    drawn = simulate_heads(BOX, np.random.default_rng(2), count=3 * BLOCK + 7)
    corners = [
        fit(
            Head(sharp_diameter=sharp, included_angle=head),
            Countersink(diameter=seat, hole_diameter=hole, included_angle=angle),
        ).amount
        for sharp in (12.05, 12.9)
        for head in (80, 82)
        for seat in (12.85, 13.0)
        for hole in (6.75, 6.85)
        for angle in (81.5, 82.5)
    ]
    assert drawn.shape == (3 * BLOCK + 7,)
    assert min(corners) - 1e-12 <= drawn.min() < min(corners) + 0.1
    assert max(corners) - 0.1 < drawn.max() <= max(corners) + 1e-12


@pytest.mark.parametrize(
    "change",
    [
        {"hole_diameter": 14},
        {"edge_diameter": 13},
        {"head_angle": 0},
        {"seat_diameter": float("nan")},
        {"sharp_diameter": []},
    ],
)
def test_an_array_with_one_impossible_head_is_refused(change: dict[str, object]) -> None:
    """One head that cannot sit, or no head at all, is refused, not turned into NaN."""
    sizes = {"sharp_diameter": [12.0, 12.5], "head_angle": 82, "seat_diameter": 12.5,
             "hole_diameter": 6.6, "seat_angle": 82, "edge_diameter": None}  # fmt: skip
    with pytest.raises(SeatworkError):
        amounts(**{**sizes, **change})  # type: ignore[arg-type]


@pytest.mark.slow
@QUICK
@given(seed=st.integers(0, 1000), count=st.integers(2, 60))
def test_the_range_of_cp_is_that_of_chi_squared(seed: int, count: int) -> None:
    """The 95 % range of Cp follows the percentage points of chi-squared in a statistics library."""
    rng = Random(seed)
    found = capability([rng.gauss(10, 0.1) for _ in range(count)], lower=9.7, upper=10.3)
    low, high = (
        found.cp * sqrt(chi2.ppf(part, count - 1) / (count - 1)) for part in (0.025, 0.975)
    )
    assert found.cp_low == pytest.approx(low, rel=1e-9)
    assert found.cp_high == pytest.approx(high, rel=1e-9)
    assert found.cpk <= found.cp
    assert found.too_few == (count < 25)


def test_five_parts_are_too_few() -> None:
    """Five parts of 10 ± .3 with s = .0791: Cp 1.26, and it is said that five are too few."""
    said = capability([10.0, 10.1, 9.9, 10.05, 9.95], lower=9.7, upper=10.3).explain()
    assert said.startswith("5 parts: Cp 1.26, Cpk 1.26")
    assert said.endswith("5 parts are too few to speak of the process.")


def test_a_process_off_center_shows_in_cpk_alone() -> None:
    """Moving the mean leaves Cp and lowers Cpk; outside the limits Cpk is below zero."""
    sizes = [0.0, 0.1, -0.1, 0.05, -0.05]
    middle = capability(sizes, lower=-0.3, upper=0.3)
    moved = capability([size + 0.2 for size in sizes], lower=-0.3, upper=0.3)
    outside = capability([size + 0.5 for size in sizes], lower=-0.3, upper=0.3)
    assert moved.cp == pytest.approx(middle.cp)
    assert outside.cpk < 0 < moved.cpk < middle.cpk


@pytest.mark.parametrize(
    ("sizes", "says"), [([1.0], "no spread"), ([], "no spread"), ([1.0, 1.0], "all parts")]
)
def test_parts_without_spread_have_no_capability(sizes: list[float], says: str) -> None:
    """One part, none, or parts all alike give a sentence instead of a figure."""
    with pytest.raises(SeatworkError, match=says):
        capability(sizes, lower=0, upper=2)


def test_an_empty_stack_is_refused() -> None:
    """No sizes make no stack, in any of the three ways."""
    for add in (worst_case, rss, lambda terms: simulate(terms, np.random.default_rng(1))):
        with pytest.raises(SeatworkError, match="no sizes"):
            add([])
    for count in (0, -5, 10**8, 1.5, None):
        with pytest.raises(SeatworkError, match="number of assemblies"):
            simulate([Term(nominal=1, tolerance=1)], np.random.default_rng(1), count=count)  # type: ignore[arg-type]
