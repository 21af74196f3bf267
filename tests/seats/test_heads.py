"""How heads sit in countersinks, against an optimizer that only knows metal cannot overlap."""

from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Fit, Head, fit
from seatwork.seats.heads import FLUSH, state_of

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)


def quarter_inch(angle: float) -> Countersink:
    """Make a seat of .507 on .266, the sharp diameter of a 1/4 head."""
    return Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=angle)


def random_pair(rng: Random) -> tuple[Head, Countersink]:
    """Draw a head and a seat it can sit in: any angles, rounded or sharp edge, wide or narrow."""
    hole = rng.uniform(2, 20)
    sharp = hole * rng.uniform(1.1, 3)
    edge = rng.uniform(hole * 1.02, sharp) if rng.random() < 0.7 else None
    seat = Countersink(
        diameter=hole * rng.uniform(1.05, 3),
        hole_diameter=hole,
        included_angle=rng.choice([82.0, 90.0, rng.uniform(50, 130)]),
    )
    angle = seat.included_angle if rng.random() < 0.2 else rng.uniform(50, 130)
    return Head(sharp_diameter=sharp, included_angle=angle, edge_diameter=edge), seat


def lowest_position(head: Head, seat: Countersink) -> float:
    """Search the lowest top of the head: greatest at which its metal still meets the part's.

    In the half section both bodies are cut out by straight lines, so "some point (r, z) is in
    both, with the head's top at S" is a set of linear conditions; the highest S for which
    there is such a point is where the head comes to rest. No formula of the package is used.
    """
    slope_head = 1 / np.tan(np.radians(head.included_angle / 2))
    slope_seat = 1 / np.tan(np.radians(seat.included_angle / 2))
    edge = head.sharp_diameter if head.edge_diameter is None else head.edge_diameter
    # unknowns r, z, S; rows say: row . (r, z, S) <= bound
    rows = [
        [0, 1, 0],  # the part lies below the face
        [-slope_seat, 1, 0],  # and below the cone of the seat
        [slope_head, -1, 1],  # the head lies above its own cone
    ]
    bounds = [0, -slope_seat * seat.diameter / 2, slope_head * head.sharp_diameter / 2]
    found = linprog(
        [0, 0, -1],
        A_ub=rows,
        b_ub=bounds,
        bounds=[(seat.hole_diameter / 2, edge / 2), (None, None), (None, None)],
        method="highs",
    )
    assert found.success
    return float(found.x[2])


@pytest.mark.outside("search that shares no formula", "seats.fit")
@pytest.mark.slow
@pytest.mark.parametrize(
    ("count", "seed"), [(1000, 20), pytest.param(5_000, 23, marks=pytest.mark.long)]
)
def test_random_heads_rest_where_the_search_finds_them(count: int, seed: int) -> None:
    """1,000 random pairs agree with the search for the lowest position to 1e-9 mm."""
    rng = Random(seed)
    worst = 0.0
    contacts = set()
    for _ in range(count):
        head, seat = random_pair(rng)
        found = fit(head, seat)
        contacts.add(found.contact)
        worst = max(worst, abs(found.amount - lowest_position(head, seat)))
    assert contacts == {"cone", "rim", "hole edge"}
    assert worst < 1e-9


def gap(head: Head, seat: Countersink, found: Fit, diameter: float) -> float:
    """Measure the gap between head and seat, along the axis, on the circle of `diameter`."""
    head_z = found.amount - (head.sharp_diameter - diameter) / 2 / np.tan(
        np.radians(head.included_angle / 2)
    )
    below = (seat.diameter - diameter) / 2 / np.tan(np.radians(seat.included_angle / 2))
    return float(head_z + max(below, 0.0))


def test_the_contact_circle_touches_and_no_other_overlaps() -> None:
    """On the contact circle the gap is nothing; nowhere on the head is it below nothing."""
    rng = Random(21)
    for _ in range(300):
        head, seat = random_pair(rng)
        found = fit(head, seat)
        touching = [found.contact_diameter, found.inner_diameter]
        assert all(gap(head, seat, found, ring) < 1.001e-3 for ring in touching)
        assert min(gap(head, seat, found, ring) for ring in touching) == pytest.approx(0, abs=1e-9)
        for ring in np.linspace(seat.hole_diameter, head.edge, 40):
            assert gap(head, seat, found, float(ring)) > -1e-9


def test_contact_lies_between_hole_and_seat() -> None:
    """The contact circle is never outside the seat nor inside the hole, its depth never off it."""
    rng = Random(22)
    for _ in range(300):
        head, seat = random_pair(rng)
        found = fit(head, seat)
        assert seat.hole_diameter <= found.inner_diameter <= found.contact_diameter
        assert found.contact_diameter <= min(seat.diameter, head.edge)
        assert 0 <= found.contact_depth <= seat.depth * (1 + 1e-12)
        assert (found.contact_width > 0) == (found.contact == "cone")


def test_the_m6_least_head_in_an_82_degree_seat_lies_below_on_its_rim() -> None:
    """An M6 socket head of edge 11.34 in an 82° seat cut to 13.44 lies .158 mm below (worked)."""
    head = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34)
    found = fit(head, Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82))
    assert found.amount == pytest.approx(-0.158, abs=5e-4)
    assert (found.state, found.contact) == ("below", "rim")
    assert found.contact_diameter == 11.34
    assert found.contact_depth == pytest.approx(1.05 + 0.158, abs=5e-4)


@pytest.mark.parametrize(
    ("head_angle", "seat_angle", "proud"), [(82, 90, 0.018), (82, 100, 0.038), (90, 100, 0.019)]
)
def test_a_steeper_head_rides_proud_on_the_hole_edge(
    head_angle: float, seat_angle: float, proud: float
) -> None:
    """82 in 90, 82 in 100, 90 in 100 stand .018, .038, .019 in proud at .507 on .266 (worked)."""
    head = Head(sharp_diameter=0.507 * INCH, included_angle=head_angle)
    found = fit(head, quarter_inch(seat_angle))
    assert found.amount / INCH == pytest.approx(proud, abs=5.1e-4)
    assert (found.state, found.contact) == ("proud", "hole edge")
    assert found.contact_diameter == pytest.approx(0.266 * INCH, rel=1e-15)


def test_flush_and_wrong() -> None:
    """A sharp 90° head in an 82° seat of its own diameter is dead flush, on a line at the rim."""
    found = fit(Head(sharp_diameter=13.44, included_angle=90),
                Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82))  # fmt: skip
    assert (found.amount, found.state, found.contact) == (0.0, "flush", "rim")
    assert (found.contact_depth, found.contact_width) == (0.0, 0.0)


@pytest.mark.parametrize(
    ("sharp", "hole", "proud"), [(0.507, 0.266, 0.0050), (0.385, 0.201, 0.0038)]
)
def test_the_least_angle_of_the_heads_stands_proud(sharp: float, hole: float, proud: float) -> None:
    """An 80° head in an 82° seat of its sharp diameter is .0050 proud at 1/4, .0038 at #10."""
    head = Head(sharp_diameter=sharp * INCH, included_angle=80)
    seat = Countersink(diameter=sharp * INCH, hole_diameter=hole * INCH, included_angle=82)
    assert fit(head, seat).amount / INCH == pytest.approx(proud, abs=5e-5)


def test_a_quarter_inch_head_in_an_m6_seat() -> None:
    """A 1/4 head in a seat .529 X 90° on .260 is .0076 in proud, on the hole edge (worked)."""
    head = Head(sharp_diameter=0.507 * INCH, included_angle=82)
    seat = Countersink(diameter=0.529 * INCH, hole_diameter=0.260 * INCH, included_angle=90)
    found = fit(head, seat)
    assert found.amount / INCH == pytest.approx(0.0076, abs=6e-5)
    assert found.contact == "hole edge"


def test_a_118_degree_drill_point_for_a_seat() -> None:
    """A 1/4 head in a 118° cone to .507 stands .066 in proud (worked)."""
    found = fit(Head(sharp_diameter=0.507 * INCH, included_angle=82), quarter_inch(118))
    assert found.amount / INCH == pytest.approx(0.066, abs=5e-4)


@pytest.mark.parametrize(("sharp", "seat", "proud"), [(13.44, 12.6, 0.42), (22.4, 20.0, 1.2)])
def test_socket_heads_in_seats_for_cross_recess_heads(
    sharp: float, seat: float, proud: float
) -> None:
    """An M6 socket head in a 12.6 seat is .42 mm proud, an M10 one in 20.0 is 1.2 (worked)."""
    found = fit(
        Head(sharp_diameter=sharp, included_angle=90),
        Countersink(diameter=seat, hole_diameter=seat / 2, included_angle=90),
    )
    assert found.amount == pytest.approx(proud, abs=5e-4)
    assert found.contact == "cone"


def test_the_edge_diameter_is_no_seat_diameter() -> None:
    """A seat cut to the edge of a 1/4 head, .477, leaves it .017 proud (worked)."""
    head = Head(sharp_diameter=0.507 * INCH, included_angle=82, edge_diameter=0.477 * INCH)
    seat = Countersink(diameter=0.477 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
    assert fit(head, seat).amount / INCH == pytest.approx(0.017, abs=5e-4)


@QUICK
@given(seed=st.integers(0, 10**6), wider=st.floats(1e-3, 0.5))
def test_a_wider_seat_always_lets_the_head_down(seed: int, wider: float) -> None:
    """Height falls steadily as the seat is opened out."""
    head, seat = random_pair(Random(seed))
    larger = Countersink(
        diameter=seat.diameter + wider,
        hole_diameter=seat.hole_diameter,
        included_angle=seat.included_angle,
    )
    assert fit(head, larger).amount < fit(head, seat).amount


@QUICK
@given(seed=st.integers(0, 10**6), scale=st.floats(0.1, 10))
def test_amounts_scale_with_the_parts(seed: int, scale: float) -> None:
    """Everything twice as large stands twice as proud."""
    head, seat = random_pair(Random(seed))
    large = fit(
        Head(
            sharp_diameter=head.sharp_diameter * scale,
            included_angle=head.included_angle,
            edge_diameter=head.edge * scale,
        ),
        Countersink(
            diameter=seat.diameter * scale,
            hole_diameter=seat.hole_diameter * scale,
            included_angle=seat.included_angle,
        ),
    )
    assert large.amount == pytest.approx(fit(head, seat).amount * scale, rel=1e-9, abs=1e-9)


def test_nearly_matched_angles_tend_to_the_matched_amount() -> None:
    """As the head's angle nears the seat's, the amount tends to (Dh - D)/(2 T)."""
    seat = quarter_inch(82)
    matched = fit(Head(sharp_diameter=13.0, included_angle=82), seat)
    for off in (1e-2, 1e-4, 1e-6):
        for angle in (82 - off, 82 + off):
            near = fit(Head(sharp_diameter=13.0, included_angle=angle), seat)
            assert near.amount == pytest.approx(matched.amount, abs=0.2 * off)
            assert near.contact == "cone"


def test_the_words_for_an_amount() -> None:
    """Half of the last place shown is flush; beyond it a head is proud or below."""
    assert [state_of(amount) for amount in (FLUSH, -FLUSH, 0.0)] == ["flush"] * 3
    assert [state_of(amount) for amount in (0.0051, -0.0051)] == ["proud", "below"]


def test_sizes_of_a_head() -> None:
    """An M6 socket head, 13.44 sharp, 11.34 edge, 3.72 high: edge 1.05 down, neck 6 across."""
    head = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34, height=3.72)
    assert head.rim_depth == pytest.approx(1.05, abs=1e-9)
    assert head.neck_diameter == pytest.approx(6.0, abs=1e-9)
    assert Head(sharp_diameter=13.44, included_angle=90).neck_diameter is None


@pytest.mark.parametrize(
    ("head", "says"),
    [
        (Head(sharp_diameter=6, included_angle=90), "drops through"),
        (Head(sharp_diameter=6.6, included_angle=90), "drops through"),
        (Head(sharp_diameter=14, included_angle=90, edge_diameter=6.5), "drops through"),
        (Head(sharp_diameter=14, included_angle=90, height=3), "neck does not enter"),
    ],
)
def test_a_head_that_cannot_sit_is_refused(head: Head, says: str) -> None:
    """A head smaller than the hole, or with a neck larger than it, gets a sentence, not a fit."""
    with pytest.raises(SeatworkError, match=says):
        fit(head, Countersink(diameter=12, hole_diameter=6.6, included_angle=90))


def test_a_height_that_no_such_head_has_is_refused() -> None:
    """A height below the edge or beyond the point belongs to another head."""
    for height in (1.0, 6.8):
        with pytest.raises(SeatworkError, match="has a height between"):
            Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34, height=height)
