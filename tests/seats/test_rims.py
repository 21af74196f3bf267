"""Rims on flat, tilted and round faces against root finding and the limits they tend to."""

from math import isfinite, radians, sqrt, tan

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Countersink, Spotface, rim
from seatwork.seats.surfaces import Flat, Round, Surface, Tilted

QUICK = settings(max_examples=60, deadline=None)
SEAT = Countersink(diameter=8, hole_diameter=5, included_angle=90)
DIRECTIONS = st.floats(-180, 180)


@st.composite
def seats(draw: st.DrawFn) -> Countersink:
    """Draw a seat, at most 12 mm wide."""
    hole = draw(st.floats(2, 6))
    return Countersink(
        diameter=hole * draw(st.floats(1.1, 2)),
        hole_diameter=hole,
        included_angle=draw(st.floats(50, 120)),
    )


@st.composite
def surfaces(draw: st.DrawFn) -> Surface:
    """Draw a face on which such a seat closes."""
    kind = draw(st.sampled_from(["flat", "tilted", "outside", "inside"]))
    if kind == "flat":
        return Flat()
    if kind == "tilted":
        return Tilted(tilt=draw(st.floats(0, 25)), direction=draw(DIRECTIONS))
    inside = kind == "inside"
    least = 60 if inside else 16
    return Round(diameter=draw(st.floats(least, 500)), inside=inside, direction=draw(DIRECTIONS))


@pytest.mark.slow
@QUICK
@given(seat=seats(), surface=surfaces())
def test_every_point_of_the_rim_lies_on_cone_and_face(seat: Countersink, surface: Surface) -> None:
    """Each rim point satisfies both the cone's and the surface's equation."""
    found = rim(seat, surface)
    cut = found.width > 0
    angle = np.radians(found.directions)
    on_face = surface.height(found.radius * np.cos(angle), found.radius * np.sin(angle))
    assert np.allclose(found.height, on_face, atol=1e-12)
    cone = seat.hole_diameter / 2 + seat.tangent * (found.depth + found.height)
    assert np.allclose(found.radius[cut], cone[cut], atol=1e-10)
    assert found.least_diameter == pytest.approx(seat.diameter, rel=1e-12)


@pytest.mark.outside("search that shares no formula", "seats.rim")
@pytest.mark.slow
@QUICK
@given(seat=seats(), surface=surfaces(), turn=st.integers(0, 71))
def test_the_rim_is_the_first_meeting_of_cone_and_face(
    seat: Countersink, surface: Surface, turn: int
) -> None:
    """A root finder going out from the axis meets the face where the closed form says."""
    found = rim(seat, surface, points=72)
    assume(bool(found.width[turn] > 0))
    angle = radians(found.directions[turn])

    def apart(radius: float) -> float:
        at = np.array([radius])
        height = float(surface.height(at * np.cos(angle), at * np.sin(angle))[0])
        return radius - seat.hole_diameter / 2 - seat.tangent * (found.depth + height)

    top = float(found.radius[turn])
    steps = np.linspace(0, 1.05 * top, 400)
    values = [apart(float(step)) for step in steps]
    first = next(n for n in range(1, 400) if isfinite(values[n]) and values[n] >= 0)
    root = brentq(apart, steps[first - 1], steps[first], xtol=1e-13)
    assert top == pytest.approx(root, abs=1e-9)


@pytest.mark.outside("closed form", "seats.rim")
def test_on_a_tilted_face_the_rim_is_an_ellipse_with_its_focus_on_the_axis() -> None:
    """Longest R/(1-k) + R/(1+k), across it 2R at the axis; 2R/sqrt(1-k²) at its own middle."""
    k = tan(radians(10))
    found = rim(SEAT, Tilted(tilt=10))
    assert found.greatest_diameter == pytest.approx(4 / (1 - k) + 4 / (1 + k), rel=1e-12)
    assert found.least_diameter == pytest.approx(8, rel=1e-15)
    across = found.radius * np.sin(np.radians(found.directions))
    fine = rim(SEAT, Tilted(tilt=10), points=7200)
    widest = (fine.radius * np.sin(np.radians(fine.directions))).max()
    assert 2 * across.max() == pytest.approx(8 / sqrt(1 - k * k), rel=1e-5)
    assert 2 * widest == pytest.approx(8 / sqrt(1 - k * k), rel=1e-7)


def test_the_note_holds_across_a_shaft_and_along_a_bore() -> None:
    """On a shaft the least is across it; inside a bore, along it; the depth differs by that."""
    shaft, bore = rim(SEAT, Round(diameter=20)), rim(SEAT, Round(diameter=20, inside=True))
    assert float(shaft.diameter[0]) == pytest.approx(8)
    assert shaft.greatest_diameter == pytest.approx(float(shaft.diameter[180]))
    assert float(bore.diameter[180]) == pytest.approx(8)
    assert bore.greatest_diameter == pytest.approx(float(bore.diameter[0]))
    # sagitta of 4 on 10 is 10 - sqrt(84): the shaft's seat goes that much deeper at its axis
    assert shaft.depth == pytest.approx(1.5 + 10 - sqrt(84), rel=1e-12)
    assert bore.depth == pytest.approx(1.5, rel=1e-12)


@pytest.mark.slow
@QUICK
@given(seat=seats(), inside=st.booleans())
def test_a_large_round_face_tends_to_a_flat_one(seat: Countersink, inside: bool) -> None:
    """As the face grows, the rim tends to a circle as the square of the size over the face."""
    flat = rim(seat, Flat())
    for face in (1e3, 1e4):
        found = rim(seat, Round(diameter=face, inside=inside))
        slack = 3 * seat.tangent * seat.diameter**2 / face
        assert found.greatest_diameter - flat.greatest_diameter < slack
        assert found.depth == pytest.approx(flat.depth, abs=slack)
        assert found.least_diameter == pytest.approx(flat.least_diameter, rel=1e-13)


@pytest.mark.slow
@QUICK
@given(seat=seats(), tilt=st.floats(0, 1e-3))
def test_a_small_tilt_tends_to_a_flat_face(seat: Countersink, tilt: float) -> None:
    """As the tilt goes to nothing, the rim tends to a circle, widths to the slant width."""
    found = rim(seat, Tilted(tilt=tilt))
    slack = 2 * seat.tangent * tan(radians(tilt)) * seat.diameter + 1e-12
    assert found.greatest_width == pytest.approx(seat.slant_width, abs=2 * slack)
    assert found.least_width == pytest.approx(seat.slant_width, abs=2 * slack)


@pytest.mark.slow
@QUICK
@given(seat=seats(), surface=surfaces())
def test_travel_starts_at_the_high_point_of_the_hole_edge(
    seat: Countersink, surface: Surface
) -> None:
    """Travel is depth plus the height at which the lips first meet the edge of the hole."""
    found = rim(seat, surface)
    angle = np.radians(np.linspace(0, 360, 3600))
    edge = surface.height(
        seat.hole_diameter / 2 * np.cos(angle), seat.hole_diameter / 2 * np.sin(angle)
    )
    # looked at every tenth of a degree: the true top is at most that cosine higher
    high = found.travel_from_hole_edge - found.depth
    assert high == pytest.approx(float(edge.max()), abs=1e-5 * seat.hole_diameter)


def test_a_chamfer_that_misses_the_low_side_says_so() -> None:
    """A small chamfer on a steep face cuts only the high side."""
    small = Chamfer(leg=0.1).at_hole(6)
    found = rim(small, Tilted(tilt=10))
    assert not found.complete
    assert found.least_width == 0
    assert found.greatest_width > 0.1
    assert rim(Chamfer(leg=1).at_hole(6), Tilted(tilt=10)).complete


def test_turning_the_face_turns_the_rim() -> None:
    """A face turned by 30° gives the same rim, turned."""
    for still, turned in (
        (Tilted(tilt=8), Tilted(tilt=8, direction=30)),
        (Round(diameter=20), Round(diameter=20, direction=30)),
    ):
        first, second = rim(SEAT, still), rim(SEAT, turned)
        assert np.allclose(first.radius, second.radius)
        assert np.allclose(first.directions + 30, second.directions)
        assert np.allclose(first.height, second.height)


@pytest.mark.parametrize(
    ("surface", "says"),
    [
        (Tilted(tilt=45), "never closes"),
        (Tilted(tilt=60), "never closes"),
        (Round(diameter=7), "reach of the cut"),
        (Round(diameter=7, inside=True), "runs out at the sides"),
    ],
)
def test_a_cone_that_does_not_close_is_refused(surface: Surface, says: str) -> None:
    """A face steeper than the cone, or narrower than the seat, has no rim."""
    with pytest.raises(SeatworkError, match=says):
        rim(SEAT, surface)


def test_a_rim_has_its_points_in_fours() -> None:
    """The four main directions are among the points whatever number is asked for."""
    for asked, made in ((720, 720), (7, 8), (1, 4), (90, 88)):
        assert len(rim(SEAT, Flat(), points=asked).radius) == made
    with pytest.raises(SeatworkError, match="number of points"):
        rim(SEAT, Flat(), points=0)


def test_closed_forms_of_the_spotface_agree_with_the_surfaces() -> None:
    """Depth to clean up is the saddle that the surface shows on the cutter's circle."""
    spot = Spotface(diameter=12, hole_diameter=6)
    turn = np.linspace(0, 2 * np.pi, 720, endpoint=False)
    for found, surface in (
        (spot.clean_up_on_round(20), Round(diameter=20)),
        (spot.clean_up_on_tilt(5), Tilted(tilt=5)),
    ):
        height = surface.height(6 * np.cos(turn), 6 * np.sin(turn))
        assert found == pytest.approx(height.max() - height.min())
