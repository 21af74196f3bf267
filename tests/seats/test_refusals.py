"""Bad sizes: every function and part of the room refuses them with one sentence, never NaN."""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from functools import partial
from math import inf, isfinite, nan
from typing import Any

import numpy as np
import pytest
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length
from seatwork.seats import (
    Chamfer,
    Counterbore,
    Countersink,
    Head,
    Spotface,
    angle_from_two_balls,
    ball_top,
    bearing_pressure,
    bending_stress,
    clean_up,
    diameter_from_ball,
    fit,
    protrusion,
)
from seatwork.seats.bearing import Bearing
from seatwork.seats.bolting import seat_tilt, slope_angle
from seatwork.seats.box_of_screws import diameter_for
from seatwork.seats.castings import rough_pad
from seatwork.seats.centers import CenterDrill, CenterSeat
from seatwork.seats.chamfers import thread_chamfer
from seatwork.seats.cones import half_tangent, included_angle
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.gaging import ball_contact
from seatwork.seats.head_gaging import dial_reading, plate_hole, sharp_from_protrusion
from seatwork.seats.heads import state_of
from seatwork.seats.measuring import decide
from seatwork.seats.off_center import off_center
from seatwork.seats.pilots import SolidTool, pilot_diameter, pilot_for, raised_boss
from seatwork.seats.sheet_metal import InSheetMetal
from seatwork.seats.stack import Term
from seatwork.seats.surfaces import Round, Tilted
from seatwork.seats.touching_off import (
    Limits,
    diameter_error,
    oversize_hole,
    resharpened_nose,
    stop_band,
)

SEAT = Countersink(diameter=12, hole_diameter=6, included_angle=90)
HEAD = Head(sharp_diameter=12.5, included_angle=82, edge_diameter=12, height=3.8)
BORE = Counterbore(diameter=11, depth=6.4, hole_diameter=6.6)
SPOT = Spotface(diameter=20, hole_diameter=7)
CENTER = CenterSeat(cone=SEAT, outside_diameter=20)
DRILL = CenterDrill(body_diameter=6, pilot_diameter=2, pilot_length=2)
CLEAN = clean_up(SPOT, Tilted(tilt=2))

CALLS: list[tuple[Callable[..., Any], dict[str, float]]] = [
    (Countersink, {"diameter": 12, "hole_diameter": 6, "included_angle": 90}),
    (Countersink.from_depth, {"depth": 3, "hole_diameter": 6, "included_angle": 90}),
    (SEAT.diameter_at, {"depth": 1}),
    (SEAT.travel_from_face, {"nose_diameter": 1}),
    (included_angle, {"diameter": 12, "hole_diameter": 6, "depth": 3}),
    (half_tangent, {"included_angle": 90}),
    (Head, {"sharp_diameter": 12, "included_angle": 82, "edge_diameter": 11, "height": 3}),
    (partial(diameter_for, HEAD), {"amount": -0.1, "hole_diameter": 6, "included_angle": 82}),
    (partial(off_center, HEAD, SEAT), {"offset": 0.2, "play": 0.1}),
    (Counterbore, {"diameter": 11, "depth": 6, "hole_diameter": 6.6}),
    (BORE.floor_left, {"thickness": 10}),
    (BORE.wall_to_edge, {"edge_distance": 10}),
    (sized_for, {"hole_diameter": 7, "head_diameter": 10, "head_height": 6, "clearance": 1,
                 "below": 0.3, "washer_diameter": 12, "washer_thickness": 2,
                 "wrench_socket_diameter": 15}),
    (Spotface, {"diameter": 20, "hole_diameter": 7}),
    (SPOT.clean_up_on_tilt, {"tilt": 3}),
    (SPOT.clean_up_on_round, {"face_diameter": 40}),
    (partial(CLEAN.flange_left, at="axis"), {"thickness": 12, "allowance": 0.5}),
    (partial(rough_pad, np.random.default_rng(1), points=8),
     {"size": 20, "roughness": 0.2, "correlation_length": 2}),
    (Chamfer, {"leg": 1, "included_angle": 90}),
    (Chamfer.from_depth, {"depth": 1, "included_angle": 90}),
    (Chamfer(leg=1).diameter_at, {"hole_diameter": 6}),
    (thread_chamfer, {"major_diameter": 8, "hole_diameter": 6.8, "over_major": 0.4}),
    (CenterSeat, {"outside_diameter": 20}),
    (CENTER.contact, {"center_angle": 60}),
    (CenterDrill, {"body_diameter": 6, "pilot_diameter": 2, "pilot_length": 2,
                   "included_angle": 60}),
    (DRILL.travel, {"mouth_diameter": 4}),
    (partial(InSheetMetal, seat=SEAT), {"thickness": 2}),
    (diameter_error, {"depth_error": 0.1, "included_angle": 90}),
    (stop_band, {"diameter_tolerance": 0.1, "included_angle": 90}),
    (Limits, {"least": 1, "greatest": 2}),
    (partial(oversize_hole, SEAT, touched="face"), {"hole_diameter": 6.2}),
    (partial(oversize_hole, SEAT, touched="hole edge"), {"hole_diameter": 6.2}),
    (partial(resharpened_nose, SEAT, touched="face"),
     {"nose_diameter": 1, "new_nose_diameter": 2}),
    (ball_contact, {"ball_diameter": 10, "included_angle": 60}),
    (partial(ball_top, seat=SEAT), {"ball_diameter": 12}),
    (diameter_from_ball, {"ball_diameter": 12, "ball_top": 6, "included_angle": 90}),
    (angle_from_two_balls, {"small_diameter": 8, "large_diameter": 12, "small_top": 0,
                            "large_top": 9}),
    (protrusion, {"sharp_diameter": 12, "gage_diameter": 10, "included_angle": 82}),
    (sharp_from_protrusion, {"protrusion": 1, "gage_diameter": 10, "included_angle": 82}),
    (plate_hole, {"sharp_diameter": 12, "protrusion": 1, "included_angle": 82}),
    (partial(dial_reading, SEAT), {"gage_angle": 82}),
    (decide, {"value": 1, "lower": 0.5, "upper": 2, "uncertainty": 0.1}),
    (Term, {"nominal": 1, "tolerance": 0.1, "direction": 1}),
    (SolidTool, {"diameter": 11, "pilot_diameter": 6}),
    (pilot_diameter, {"hole_diameter": 6, "clearance": 0.1}),
    (partial(pilot_for, BORE), {"clearance": 0.05, "greatest_clearance": 0.1}),
    (partial(raised_boss, instead_of=BORE),
     {"bearing_diameter": 12, "clean_up": 1, "stand": 2, "rim": 2}),
    (Tilted, {"tilt": 3, "direction": 10}),
    (Round, {"diameter": 40, "direction": 10}),
    (Round(diameter=40).drop, {"distance": 3}),
    (Bearing, {"outside_diameter": 12, "hole_diameter": 7}),
    (bearing_pressure, {"force": 1000, "outside_diameter": 12, "hole_diameter": 7}),
    (slope_angle, {"slope": 0.05}),
    (seat_tilt, {"gap": 0.1, "across": 19}),
    (bending_stress, {"tilt": 1, "diameter": 10, "grip": 40, "modulus": 2e5}),
]  # fmt: skip
NEVER_SIZES = (nan, inf, -inf, 1e30, -1e30, "12", "abc", b"1", [1.0], {}, 1j)


def name(call: object) -> str:
    """Name a call of the list above."""
    inner = call.func if isinstance(call, partial) else call
    return getattr(inner, "__qualname__", str(inner))


EVERY = [
    pytest.param(call, sizes, which, id=f"{name(call)}-{which}")
    for call, sizes in CALLS
    for which in sizes
]


def numbers(found: object) -> list[float]:
    """Collect the numbers of a result: itself, or the fields of a part, or an array's."""
    if isinstance(found, np.ndarray):
        return [float(number) for number in found.ravel()]
    if is_dataclass(found):
        return [n for field in fields(found) for n in numbers(getattr(found, field.name))]
    return [float(found)] if isinstance(found, int | float) else []


def with_given(call: Callable[..., Any], sizes: dict[str, Any]) -> object:
    """Call with the sizes by name, a cone for the center seat among them."""
    return call(**sizes, cone=SEAT) if call is CenterSeat else call(**sizes)


@pytest.mark.parametrize(("call", "sizes"), CALLS, ids=lambda part: name(part))
def test_the_sizes_given_here_are_good(call: Callable[..., Any], sizes: dict[str, float]) -> None:
    """Each call of the list works and gives finite numbers, so its refusals mean something."""
    found = numbers(with_given(call, sizes))
    assert all(isfinite(number) for number in found)


@pytest.mark.parametrize(("call", "sizes", "which"), EVERY)
def test_what_is_no_size_is_refused(
    call: Callable[..., Any], sizes: dict[str, float], which: str
) -> None:
    """NaN, infinity, absurd sizes, text and the like give one sentence that ends in a stop."""
    for bad in NEVER_SIZES:
        with pytest.raises(SeatworkError) as refused:
            with_given(call, {**sizes, which: bad})
        said = str(refused.value)
        assert said.endswith(".")
        assert "\n" not in said
        assert "{" not in said.replace(str(bad), "")


@pytest.mark.parametrize(("call", "sizes", "which"), EVERY)
def test_zero_and_minus_are_refused_or_mean_something(
    call: Callable[..., Any], sizes: dict[str, float], which: str
) -> None:
    """Zero, a minus size and a tiny one are refused, or give finite numbers."""
    for odd in (0, -1, -1e-9, 1e-300):
        try:
            found = numbers(with_given(call, {**sizes, which: odd}))
        except SeatworkError:
            continue
        assert all(isfinite(number) for number in found)


def test_a_refusal_can_be_told_in_the_readers_units() -> None:
    """Lengths and angles of a refusal are kept as such, so that they can be shown in inches."""
    with pytest.raises(SeatworkError) as refused:
        Countersink(diameter=6, hole_diameter=6.6, included_angle=90)
    assert isinstance(refused.value.value, Length)
    assert isinstance(refused.value.sizes["large"], Length)
    with pytest.raises(SeatworkError) as refused:
        Countersink(diameter=12, hole_diameter=6.6, included_angle=200)
    assert isinstance(refused.value.value, Angle)


def test_parts_cannot_be_changed_or_mixed_up() -> None:
    """Parts are frozen and take their sizes by name only."""
    with pytest.raises(AttributeError):
        SEAT.diameter = 13  # type: ignore[misc]
    with pytest.raises(TypeError):
        Countersink(12, 6, 90)  # type: ignore[misc]


def test_words_and_fits_of_whole_numbers() -> None:
    """Whole numbers and numpy numbers are numbers like any other."""
    seat = Countersink(diameter=np.float32(12), hole_diameter=6, included_angle=np.int64(90))
    assert fit(Head(sharp_diameter=12, included_angle=90), seat).state == "flush"
    assert state_of(0) == "flush"
