"""The map against a denser search, and against a second method."""

import numpy as np
import pytest
from seatwork import cutting
from seatwork.cutting.chatter.crossings import find_crossings
from seatwork.cutting.chatter.limits import loop_of
from seatwork.cutting.chatter.mapping import _count
from seatwork.errors import SeatworkError

SPEEDS = np.linspace(60, 3000, 120)
WIDTHS = np.linspace(0.05, 12, 80)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("direction", "rub", "flutes"),
    [
        ("axial", 1e5, 1),
        ("axial", 1e5, 6),
        ("axial", 0.0, 1),
        ("axial", 0.0, 3),
        ("lateral", 6e5, 3),
        ("lateral", 6e5, 6),
        ("lateral", 0.0, 6),
    ],
)
def test_no_cell_changes_on_a_denser_grid(
    direction, rub, flutes, axial_set, lateral_set, steel, lips
) -> None:
    """All 9600 cells count the same roots on a frequency grid ten times as dense."""
    machine = axial_set if direction == "axial" else lateral_set
    place = {"machine": machine, "cutter": lips(flutes), "cut": steel(0, rub)}
    found = cutting.stability(**place, spindle_speeds=SPEEDS, widths=WIDTHS)
    model = loop_of(*place.values(), SPEEDS)
    dense = find_crossings(model, WIDTHS[-1] / 1000, per_turn=240, per_resonance=2400)
    assert np.array_equal(found.unstable_roots, _count(dense, WIDTHS / 1000, len(SPEEDS)))


def drawn(count: int, seed: int) -> list[dict]:
    """Random points of the map: spindle speed, width, lips, rubbing, spacing."""
    rng = np.random.default_rng(seed)
    points = []
    for _ in range(count):
        flutes = int(rng.integers(1, 7))
        gaps = rng.uniform(0.7, 1.3, flutes)
        points.append(
            {
                "speed": float(rng.uniform(300, 3000)),
                "width": float(np.exp(rng.uniform(np.log(0.05), np.log(6)))),
                "flutes": flutes,
                "rub": float(rng.choice([0.0, 5e4, 2e5])),
                "spacing": tuple(360 * gaps / gaps.sum()) if rng.random() < 0.5 else None,
            }
        )
    return points


def agrees_axially(point: dict, machine, cut, collocation) -> bool:
    """Whether map and collocation call a point of the axial map the same."""
    cutter = cutting.Cutter(flutes=point["flutes"], included_angle=82, spacing=point["spacing"])
    found = cutting.stability(
        machine=machine,
        cutter=cutter,
        cut=cut,
        spindle_speeds=[point["speed"]],
        widths=[point["width"]],
    )
    pull = point["flutes"] * np.sin(np.radians(41)) ** 2 * point["width"] / 1000
    turn = 60 / point["speed"]
    longest = max(cutter.shares) * turn
    (rightmost, *_) = collocation.axial(
        stiffness=machine.stiffness,
        frequency=machine.natural_frequency,
        damping=machine.damping_ratio,
        gain=pull * cut.normal_coefficient,
        rub=pull * cut.process_damping / (np.pi * cut.mean_diameter / 1000 / turn),
        shares=list(cutter.shares),
        turn=turn,
        count=int(30 + 5.5 * longest * machine.natural_frequency),
    )
    return bool(found.chatters[0, 0]) == (rightmost.real > 0)


@pytest.mark.outside("second method", "cutting.stability", "cutting.Map.chatters")
@pytest.mark.slow
@pytest.mark.parametrize(
    "count", [16, pytest.param(400, marks=pytest.mark.long)], ids=lambda count: f"{count} points"
)
def test_a_second_method_agrees_in_sign(count, axial_set, steel, collocation) -> None:
    """Chebyshev collocation calls every random point quiet or chattering as the map does."""
    points = drawn(count, seed=9)
    wrong = [
        point
        for point in points
        if not agrees_axially(point, axial_set, steel(0, point["rub"]), collocation)
    ]
    assert wrong == []


def agrees_sideways(point: dict, machine, cut, collocation) -> bool:
    """Whether map and collocation on the turning tool call a sideways point the same."""
    cutter = cutting.Cutter(flutes=point["flutes"], included_angle=82, spacing=point["spacing"])
    found = cutting.stability(
        machine=machine,
        cutter=cutter,
        cut=cut,
        spindle_speeds=[point["speed"]],
        widths=[point["width"]],
    )
    turn, width = 60 / point["speed"], point["width"] / 1000
    (rightmost, *_) = collocation.turning(
        stiffness=machine.stiffness,
        frequency=machine.natural_frequency,
        damping=machine.damping_ratio,
        normal=cut.normal_coefficient * width,
        tangential=cut.tangential_coefficient * width,
        rub=cut.process_damping * width / (np.pi * cut.mean_diameter / 1000 / turn),
        friction=cut.friction,
        lean=np.cos(np.radians(41)),
        shares=list(cutter.shares),
        turn=turn,
        count=int(30 + 5.5 * max(cutter.shares) * turn * machine.natural_frequency),
    )
    return bool(found.chatters[0, 0]) == (rightmost.real > 0)


@pytest.mark.slow
@pytest.mark.parametrize(
    "count", [6, pytest.param(200, marks=pytest.mark.long)], ids=lambda count: f"{count} points"
)
def test_a_second_method_agrees_in_sign_sideways(count, lateral_set, steel, collocation) -> None:
    """Collocation in real coordinates on the tool agrees for any lips and spacing."""
    points = [{**point, "speed": max(point["speed"], 1500)} for point in drawn(count, seed=10)]
    wrong = [
        point
        for point in points
        if not agrees_sideways(point, lateral_set, steel(0, 3 * point["rub"]), collocation)
    ]
    assert wrong == []


@pytest.mark.slow
def test_the_map_and_the_limit_agree(axial_set, steel, lips) -> None:
    """The lowest chattering cell of each column lies just over the limit of that speed."""
    place = {"machine": axial_set, "cutter": lips(3), "cut": steel(0, 1e5)}
    found = cutting.stability(**place, spindle_speeds=SPEEDS, widths=WIDTHS)
    for column, speed in enumerate(SPEEDS):
        limit = cutting.width_limit(**place, spindle_speed=float(speed), widest=12).width
        if limit is None:
            assert not found.chatters[:, column].any()
        else:
            assert found.limit[column] == pytest.approx(limit, rel=1e-9)
            assert not found.chatters[limit >= WIDTHS, column].any()


def test_a_map_says_what_it_is_not(axial_set, steel, lips) -> None:
    """Every result of the model carries the same warning."""
    place = {"machine": axial_set, "cutter": lips(3), "cut": steel(0, 1e5)}
    trace = cutting.trace(**place, spindle_speed=1000, width=0.5, feed=0.1, duration=0.1)
    results = [
        cutting.stability(**place, spindle_speeds=[500, 1000], widths=[1, 2]),
        cutting.width_limit(**place, spindle_speed=1000),
        cutting.critical_speed(**place),
        cutting.chatter_band(**place, surface_speed=60),
        trace,
        cutting.surface_left(trace),
        cutting.ring(frequency=-57, spindle_speed=300, height=0.01),
        cutting.sound(trace=trace),
    ]
    for result in results:
        assert result.note == "illustration, not a prediction for your machine"


@pytest.mark.parametrize(
    ("speeds", "widths"),
    [([], [1.0]), ([0.0], [1.0]), ([100.0], [2.0, 1.0]), ([100.0], [1.0, 1.0]), ([[1.0]], [1.0])],
)
def test_a_bad_axis_is_refused(speeds, widths, axial_set, steel, lips) -> None:
    """Empty, unsorted, doubled or zero axes are refused."""
    with pytest.raises(SeatworkError):
        cutting.stability(
            machine=axial_set, cutter=lips(3), cut=steel(), spindle_speeds=speeds, widths=widths
        )
