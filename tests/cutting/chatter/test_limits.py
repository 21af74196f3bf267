"""Limits of width: laws that need no numbers of anyone."""

from math import sin

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.cutting.chatter.crossings import find_crossings
from seatwork.cutting.chatter.whirl import whirl
from seatwork.errors import SeatworkError

SPEED = st.floats(200, 6000)


def machine(scale: float = 1.0, direction: str = "axial") -> cutting.Machine:
    """Build a stand of 20 N/um at 400 Hz, 3 %."""
    return cutting.Machine(
        stiffness=2e7 * scale, natural_frequency=400, damping_ratio=0.03, direction=direction
    )


def cut(process_damping: float = 0.0) -> cutting.Cut:
    """Build a metal of 1500 MPa both ways."""
    return cutting.Cut(
        normal_coefficient=1.5e9,
        tangential_coefficient=1.5e9,
        mean_diameter=10,
        process_damping=process_damping,
    )


def width(flutes: int, speed: float, scale: float = 1.0) -> float | None:
    """Limit width of that many lips at 82°, without process damping."""
    return cutting.width_limit(
        machine=machine(scale),
        cutter=cutting.Cutter(flutes=flutes, included_angle=82),
        cut=cut(),
        spindle_speed=speed,
        widest=500,
    ).width


@pytest.mark.slow
@given(speed=SPEED)
def test_twice_as_stiff_is_twice_as_wide(speed: float) -> None:
    """At fixed frequency and damping the limit width grows with stiffness, to 1e-9."""
    assert width(3, speed, 2.0) == pytest.approx(2 * width(3, speed), rel=1e-9)


@pytest.mark.slow
@given(speed=SPEED, flutes=st.integers(2, 8))
def test_lips_scale_width_and_speed(speed: float, flutes: int) -> None:
    """Without process damping z lips at n cut 1/z as wide as one lip at z n."""
    one = width(1, flutes * speed)
    assert width(flutes, speed) == pytest.approx(one / flutes, rel=1e-7)


@pytest.mark.slow
@given(speed=SPEED, flutes=st.integers(1, 8))
def test_no_limit_lies_under_the_absolute_one(speed: float, flutes: int) -> None:
    """No speed makes fewer quiet than 2 k zeta (1 + zeta)/K: Tlusty; Stepan 1989."""
    cutter = cutting.Cutter(flutes=flutes, included_angle=82)
    stand = machine()
    force = cutter.flutes * sin(cutter.half_angle) ** 2 * cut().normal_coefficient
    least = 2 * stand.stiffness * stand.damping_ratio * (1 + stand.damping_ratio) / force
    assert width(flutes, speed) >= 1000 * least * (1 - 1e-9)


@given(flutes=st.integers(1, 8), angle=st.floats(40, 180))
def test_the_critical_speed_is_of_no_flute_count(flutes: int, angle: float) -> None:
    """The speed under which all is quiet depends on neither lips nor angle, to 1e-9."""
    cutter = cutting.Cutter(flutes=flutes, included_angle=angle)
    one = cutting.Cutter(flutes=1, included_angle=180)
    place = {"machine": machine(), "cut": cut(2e5)}
    found = cutting.critical_speed(cutter=cutter, **place).surface_speed
    expected = cutting.critical_speed(cutter=one, **place).surface_speed
    assert found == pytest.approx(expected, rel=1e-9)


@pytest.mark.slow
@given(share=st.floats(0.2, 0.999), flutes=st.integers(1, 8))
def test_under_the_critical_speed_nothing_chatters(share: float, flutes: int) -> None:
    """Below it no limit is found at any width; the band of widths is empty."""
    place = {
        "machine": machine(),
        "cutter": cutting.Cutter(flutes=flutes, included_angle=82),
        "cut": cut(2e5),
    }
    speed = share * cutting.critical_speed(**place).spindle_speed
    assert cutting.width_limit(**place, spindle_speed=speed).width is None
    surface = cutting.cutting_speed(spindle_speed=speed, diameter=10)
    assert cutting.chatter_band(**place, surface_speed=surface) is None


@pytest.mark.slow
@given(times=st.floats(1.05, 20), flutes=st.integers(1, 8))
def test_the_band_bounds_the_limits(times: float, flutes: int) -> None:
    """Above the critical speed no limit lies under the lower end of the band."""
    place = {
        "machine": machine(),
        "cutter": cutting.Cutter(flutes=flutes, included_angle=82),
        "cut": cut(2e5),
    }
    speed = times * cutting.critical_speed(**place).spindle_speed
    surface = cutting.cutting_speed(spindle_speed=speed, diameter=10)
    band = cutting.chatter_band(**place, surface_speed=surface)
    limit = cutting.width_limit(**place, spindle_speed=speed).width
    assert band.lower < band.upper
    assert limit is None or limit >= band.lower * (1 - 1e-9)


def test_without_rubbing_no_speed_is_safe() -> None:
    """With an ideally sharp lip the critical speed is zero and the band has no upper end."""
    place = {"machine": machine(), "cutter": cutting.Cutter(flutes=3, included_angle=82)}
    assert cutting.critical_speed(**place, cut=cut()).spindle_speed == 0
    assert cutting.chatter_band(**place, cut=cut(), surface_speed=30).upper == float("inf")


def test_a_counterbore_does_not_whirl() -> None:
    """With lips on the face only, 180°, the sideways loop is gone."""
    flat = cutting.Cutter(flutes=4, included_angle=180)
    limit = cutting.width_limit(
        machine=machine(direction="lateral"), cutter=flat, cut=cut(), spindle_speed=1500
    )
    assert limit.width is None


@pytest.mark.parametrize("flutes", [3, 4, 6])
@pytest.mark.parametrize("speed", [300.0, 1000.0, 2500.0])
def test_the_turning_frame_agrees_with_the_complex_equation(
    flutes, speed, lateral_set, steel, lips
) -> None:
    """For equal lips two models of whirl have the same limit and the same frequency."""
    place = {"machine": lateral_set, "cutter": lips(flutes), "cut": steel(0, 6e5)}
    expected = cutting.width_limit(**place, spindle_speed=speed)
    model = whirl(*place.values(), np.array([speed]))
    found = find_crossings(model, 0.05)
    first = int(found.width.argmin())
    turned = model.stationary(float(found.frequency[first]), 0, float(found.width[first]))
    assert 1000 * found.width[first] == pytest.approx(expected.width, rel=1e-6)
    assert turned / (2 * np.pi) == pytest.approx(expected.frequency, rel=1e-6)


@pytest.mark.parametrize("direction", ["axial", "lateral"])
def test_three_equal_lips_written_out_are_three_equal_lips(direction: str) -> None:
    """Spacing 120/120/120 gives the limit of equal spacing."""
    place = {"machine": machine(direction=direction), "cut": cut(1e5), "spindle_speed": 1234.0}
    equal = cutting.Cutter(flutes=3, included_angle=82)
    written = cutting.Cutter(flutes=3, included_angle=82, spacing=(120, 120, 120))
    expected = cutting.width_limit(cutter=equal, **place)
    assert cutting.width_limit(cutter=written, **place) == expected


def test_sideways_there_is_no_closed_form() -> None:
    """The closed form refuses a lateral machine and says what to use."""
    place = {
        "machine": machine(direction="lateral"),
        "cutter": cutting.Cutter(flutes=3, included_angle=82),
        "cut": cut(1e5),
    }
    with pytest.raises(SeatworkError, match="use width_limit"):
        cutting.critical_speed(**place)


def test_at_the_missing_frequency_unequal_lips_cannot_cross(lips, steel) -> None:
    """Where the delayed waves of unequal lips cancel, chatter of that frequency has no limit.

    Two lips at 180° cancel at every odd multiple of the turning frequency: there the
    cut only stiffens, so the limit frequency is never one of them.
    """
    for speed in np.linspace(800, 3000, 23):
        limit = cutting.width_limit(
            machine=machine(), cutter=lips(2), cut=steel(), spindle_speed=float(speed)
        )
        turns = limit.frequency / (speed / 60)
        nearest_odd = 2 * np.floor(turns / 2) + 1
        assert abs(turns - nearest_odd) > 1e-3
