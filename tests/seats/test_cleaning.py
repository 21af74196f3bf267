"""Spotfaces on castings: exact closed forms, growing shares, flange left, and the scale."""

from math import pi, radians, sqrt, tan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Spotface, clean_up
from seatwork.seats.castings import Casting, rough_pad
from seatwork.seats.surfaces import Flat, Round, Tilted

INCH = 25.4
QUICK = settings(max_examples=25, deadline=None)
SPOT = Spotface(diameter=30, hole_diameter=10)


@pytest.mark.outside("closed form", "seats.clean_up", "seats.Spotface.clean_up_on_tilt")
@QUICK
@given(diameter=st.floats(5, 100), tilt=st.floats(0.01, 30), direction=st.floats(-180, 180))
def test_a_tilted_plane_needs_exactly_d_tan_phi(
    diameter: float, tilt: float, direction: float
) -> None:
    """A plane tilted by phi cleans up exactly D tan(phi) below first touch, any direction."""
    spot = Spotface(diameter=diameter, hole_diameter=diameter / 3)
    found = clean_up(spot, Tilted(tilt=tilt, direction=direction))
    assert found.full_depth == pytest.approx(diameter * tan(radians(tilt)), rel=1e-13)
    assert -found.lowest == pytest.approx(diameter * tan(radians(tilt)) / 2, rel=1e-13)
    assert spot.clean_up_on_tilt(tilt) == pytest.approx(found.full_depth, rel=1e-13)


@pytest.mark.outside("closed form", "seats.clean_up", "seats.Spotface.clean_up_on_round")
@pytest.mark.slow
@QUICK
@given(ratio=st.floats(1, 50), direction=st.floats(-180, 180), inside=st.booleans())
def test_a_round_face_needs_exactly_the_sagitta(
    ratio: float, direction: float, inside: bool
) -> None:
    """A shaft or bore cleans up exactly one sagitta below first touch."""
    face = 30 * ratio
    found = clean_up(SPOT, Round(diameter=face, direction=direction, inside=inside))
    # near the full width the sagitta is as steep as the face's side: half the digits are lost
    close = 1e-12 if ratio > 1.01 else 1e-5
    assert found.full_depth == pytest.approx(face / 2 - sqrt(face**2 / 4 - 225), rel=close * 1e3)
    assert found.full_depth == pytest.approx(SPOT.clean_up_on_round(face), rel=close)


@QUICK
@given(
    first=st.floats(0, 15), second=st.floats(0, 15), one=st.floats(0, 360), other=st.floats(0, 360)
)
def test_draft_and_tilt_add_as_slopes(
    first: float, second: float, one: float, other: float
) -> None:
    """Two planes are one plane whose slope is the sum of both as arrows."""
    pad = Casting(
        scale=np.zeros((41, 41)),
        spacing=1.0,
        shapes=(Tilted(tilt=first, direction=one), Tilted(tilt=second, direction=other)),
    )
    arrows = [
        tan(radians(tilt)) * np.exp(1j * radians(turn))
        for tilt, turn in ((first, one), (second, other))
    ]
    steepest = abs(sum(arrows))
    assert clean_up(SPOT, pad).full_depth == pytest.approx(30 * steepest, rel=1e-12, abs=1e-12)


def test_a_flat_face_is_clean_at_the_first_touch() -> None:
    """A flat, square face needs no depth at all."""
    found = clean_up(SPOT, Flat())
    assert found.full_depth == 0
    assert float(found.share(0.0)) == 1


def test_a_pad_with_draft_and_scale() -> None:
    """Pad 1-1/4, draft 3°, scale 1/32: .0655 + .031 = .097; .500 at the low side leaves .469."""
    spot = Spotface(diameter=1.25 * INCH, hole_diameter=0.53125 * INCH)
    found = clean_up(spot, Tilted(tilt=3))
    assert found.full_depth / INCH == pytest.approx(0.0655, abs=5e-5)
    assert (found.full_depth + INCH / 32) / INCH == pytest.approx(0.097, abs=5e-4)
    left = found.flange_left(0.5 * INCH, at="low side", allowance=INCH / 32)
    assert left / INCH == pytest.approx(0.469, abs=5e-4)


@pytest.mark.parametrize(("tilt", "high", "axis"), [(5, 0.109, 0.055)])
def test_high_side_and_axis_are_told_apart(tilt: float, high: float, axis: float) -> None:
    """1.25 dia at 5°: .109 from the high side, .055 at the axis (worked)."""
    found = clean_up(Spotface(diameter=1.25, hole_diameter=0.5), Tilted(tilt=tilt))
    assert found.full_depth == pytest.approx(high, abs=5e-4)
    assert -found.lowest == pytest.approx(axis, abs=5e-4)


def test_flange_left_is_the_same_from_every_place_it_is_measured() -> None:
    """The same flange, measured at low side, axis or high side, has the same metal left."""
    found = clean_up(SPOT, Tilted(tilt=4))
    thickness = {
        "low side": 12 + found.lowest, "axis": 12.0, "high side": 12 + found.highest
    }  # fmt: skip
    left = [found.flange_left(size, at=place) for place, size in thickness.items()]  # type: ignore[arg-type]
    assert left == pytest.approx([12 - 15 * tan(radians(4))] * 3, rel=1e-12)


def test_a_cut_through_the_flange_is_refused() -> None:
    """A flange thinner than the cut gets a sentence with what would do."""
    found = clean_up(SPOT, Tilted(tilt=4))
    with pytest.raises(SeatworkError, match="cuts through a flange"):
        found.flange_left(2.0, at="high side")
    with pytest.raises(SeatworkError, match="one of three places"):
        found.flange_left(2.0, at="middle")  # type: ignore[arg-type]


def test_the_cleaned_share_of_a_plane_is_a_slice_of_the_ring() -> None:
    """At a depth the cleaned part of a tilted ring is the ring beyond a straight line."""
    found = clean_up(SPOT, Tilted(tilt=3, direction=20))

    def beyond(radius: float, chord: float) -> float:
        x = min(max(chord, -radius), radius)
        return radius**2 * np.arccos(x / radius) - x * sqrt(radius**2 - x * x)

    for part in (0.1, 0.3, 0.5, 0.8):
        chord = 15 - part * 30
        true = (beyond(15, chord) - beyond(5, chord)) / (pi * (225 - 25))
        # counted on 400 x 400 points: the border line is uncertain by about a cell's width
        assert float(found.share(part * found.full_depth)) == pytest.approx(true, abs=4e-3)


@QUICK
@given(seed=st.integers(0, 1000), roughness=st.floats(0, 1))
def test_the_cleaned_share_grows_from_nothing_to_all(seed: int, roughness: float) -> None:
    """The share never falls with depth and is whole exactly at the full depth."""
    pad = rough_pad(
        np.random.default_rng(seed),
        size=31,
        roughness=roughness,
        correlation_length=3,
        shapes=(Tilted(tilt=2), Round(diameter=200, direction=90)),
        points=60,
    )
    found = clean_up(SPOT, pad)
    depths = np.linspace(0, found.full_depth, 50)
    shares = found.share(depths)
    assert np.all(np.diff(shares) >= 0)
    assert 0 <= shares[0] < 1
    assert shares[-1] == 1
    assert found.full_depth >= found.heights.max() - found.heights.min()


@pytest.mark.slow
def test_scale_has_the_height_and_the_grain_it_was_asked_for() -> None:
    """Standard deviation is the roughness; correlation falls to 1/e at the given length."""
    pads = [
        rough_pad(
            np.random.default_rng(seed), size=60, roughness=0.3, correlation_length=2.0, points=301
        ).scale
        for seed in range(12)
    ]
    deviation = np.sqrt(np.mean([np.mean(pad**2) for pad in pads]))
    # 12 pads of about 900 independent patches each: 3 standard errors are about 3 percent
    assert deviation == pytest.approx(0.3, rel=0.03)
    for steps, expected in ((10, np.exp(-1)), (5, np.exp(-0.25))):
        for pair in ((slice(steps, None), slice(None)), (slice(None), slice(steps, None))):
            back = tuple(slice(None, -steps) if part.start else slice(None) for part in pair)
            alike = np.mean([np.mean(pad[pair] * pad[back]) for pad in pads]) / 0.3**2
            assert alike == pytest.approx(expected, abs=0.04)


def test_the_same_generator_makes_the_same_pad() -> None:
    """Randomness comes from the passed generator alone."""
    sizes = {"size": 20.0, "roughness": 0.2, "correlation_length": 2.0, "points": 50}
    first, second = (rough_pad(np.random.default_rng(7), **sizes).scale for _ in range(2))
    third = rough_pad(np.random.default_rng(8), **sizes).scale
    assert np.array_equal(first, second)
    assert not np.array_equal(first, third)


def test_a_measured_field_is_taken_as_it_is() -> None:
    """A plane given as measured points cleans up as the plane: the grid is taken straight."""
    axis = np.linspace(-20, 20, 81)
    pad = Casting(scale=0.02 * axis[None, :] + 0.0 * axis[:, None], spacing=0.5)
    assert clean_up(SPOT, pad).full_depth == pytest.approx(30 * 0.02, rel=1e-4)


@pytest.mark.parametrize(
    ("scale", "says"),
    [
        (np.zeros((3, 4)), "square grid"),
        (np.zeros((1, 1)), "square grid"),
        (np.full((4, 4), np.nan), "no number"),
    ],
)
def test_a_field_that_is_no_pad_is_refused(scale: np.ndarray, says: str) -> None:
    """A field must be square and hold numbers only."""
    with pytest.raises(SeatworkError, match=says):
        Casting(scale=scale, spacing=1.0)


def test_a_depth_that_is_no_number_has_no_share() -> None:
    """NaN among the depths is refused, not read as a whole ring."""
    with pytest.raises(SeatworkError, match="no number"):
        clean_up(SPOT, Flat()).share(np.array([0.0, np.nan]))


def test_a_cutter_over_the_edge_is_refused() -> None:
    """A spotface wider than the pad, or than a round face, gets a sentence."""
    with pytest.raises(SeatworkError, match="over the edge of the pad"):
        clean_up(SPOT, Casting(scale=np.zeros((20, 20)), spacing=1.0))
    with pytest.raises(SeatworkError, match="beyond a round face"):
        clean_up(SPOT, Round(diameter=29))
