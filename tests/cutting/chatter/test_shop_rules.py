"""The shop's rules as outcomes of the model, each with its parameter set named.

Sets Ax and L are in conftest.py: stiffness, damping and metal are assumptions. So a
test here says that the rule follows from the model, not that it holds in your shop.
"""

import pytest
from seatwork import cutting

AVAILABLE = 4.57  # lip in cut of a 12 mm countersink on a 6 mm hole, mm
# widths at the limit in mm as the model notes give them, from a second program; None: none to 12
SET_L = {
    ("six", 300): 6.13,
    ("six", 600): 5.61,
    ("six", 800): 0.167,
    ("six", 1000): 0.114,
    ("six", 1500): 0.114,
    ("six", 2000): 0.105,
    ("three", 600): 11.0,
    ("three", 1000): 0.316,
    ("three", 2000): 0.143,
    ("one", 800): 6.95,
    ("one", 1000): 4.66,
    ("one", 1500): 0.748,
    ("uneven", 1500): 0.302,
    ("uneven", 2000): 0.196,
}
SET_AX = {
    ("six", 600): 0.448,
    ("six", 1000): 0.291,
    ("six", 2000): 0.730,
    ("three", 1000): 0.797,
    ("one", 600): 2.13,
    ("one", 1000): 1.58,
    ("one", 2000): 1.35,
}
CUTTERS = {
    "one": {"flutes": 1},
    "three": {"flutes": 3},
    "six": {"flutes": 6},
    "uneven": {"flutes": 6, "spacing": (50, 65, 55, 70, 60, 60)},
}


def limit(machine, cutter, cut, speed) -> float:
    """Limit width, or endless where there is none up to 12 mm."""
    found = cutting.width_limit(
        machine=machine, cutter=cutter, cut=cut, spindle_speed=speed, widest=12
    )
    return float("inf") if found.width is None else found.width


@pytest.mark.parametrize(("place", "expected"), SET_L.items())
def test_the_table_of_set_l(place, expected, lateral_set, steel, lips) -> None:
    """Sideways limits equal those of the notes' second program, to their printed places."""
    name, speed = place
    found = limit(lateral_set, lips(**CUTTERS[name]), steel(0, 6e5), speed)
    assert found == pytest.approx(expected, rel=5e-3)


@pytest.mark.parametrize(("place", "expected"), SET_AX.items())
def test_the_table_of_set_ax(place, expected, axial_set, steel, lips) -> None:
    """Axial limits equal those of the notes' second program, to their printed places."""
    name, speed = place
    found = limit(axial_set, lips(**CUTTERS[name]), steel(0, 1e5), speed)
    assert found == pytest.approx(expected, rel=5e-3)


def test_slow_is_quiet_for_six_lips(axial_set, lateral_set, steel, lips) -> None:
    """Sets Ax and L, six lips, zero rake: quiet over the whole seat at 300, not at 1000."""
    for machine, rub in ((axial_set, 1e5), (lateral_set, 6e5)):
        assert limit(machine, lips(6), steel(0, rub), 300) > AVAILABLE
        assert limit(machine, lips(6), steel(0, rub), 1000) < AVAILABLE


def test_slow_is_quiet_only_by_rubbing(axial_set, lateral_set, steel, lips) -> None:
    """Without process damping six lips chatter at 300 as well: it is the rubbing that helps."""
    for machine in (axial_set, lateral_set):
        assert limit(machine, lips(6), steel(0, 0.0), 300) < 0.5


@pytest.mark.parametrize("speed", [800, 1000, 1500])
def test_one_lip_cuts_wider_than_six(speed, axial_set, lateral_set, steel, lips) -> None:
    """Sets Ax and L: one lip carries more width than six at every speed that can chatter."""
    for machine, rub in ((axial_set, 1e5), (lateral_set, 6e5)):
        cut = steel(0, rub)
        assert limit(machine, lips(1), cut, speed) > limit(machine, lips(6), cut, speed)


@pytest.mark.parametrize("speed", [800, 1000, 1500, 2000])
def test_positive_rake_helps_ringing_chatter(speed, axial_set, lateral_set, steel, lips) -> None:
    """Sets Ax and L: 10° of rake widens the limit of the chatter that rings."""
    for machine, rub in ((axial_set, 1e5), (lateral_set, 6e5)):
        zero, ten = (limit(machine, lips(6), steel(rake, rub), speed) for rake in (0, 10))
        assert ten > zero


def test_positive_rake_does_not_help_slow_whirl(lateral_set, steel, lips) -> None:
    """Set L at 300 rev/min, slow backward whirl: 10° of rake narrows it (5.68 against 6.13)."""
    zero, ten = (limit(lateral_set, lips(6), steel(rake, 6e5), 300) for rake in (0, 10))
    assert ten == pytest.approx(5.68, abs=0.01)
    assert ten < zero


def stiffer(machine: cutting.Machine, frequency: float) -> cutting.Machine:
    """Twice the stiffness, at a multiple of the frequency."""
    return cutting.Machine(
        stiffness=2 * machine.stiffness,
        natural_frequency=frequency * machine.natural_frequency,
        damping_ratio=machine.damping_ratio,
        direction=machine.direction,
    )


@pytest.mark.parametrize("speed", [800, 1000, 1500, 2000])
def test_stiffer_is_better(speed, axial_set, lateral_set, steel, lips) -> None:
    """Sets Ax and L: twice the stiffness at the same frequency carries twice the width."""
    for machine, rub in ((axial_set, 1e5), (lateral_set, 6e5)):
        place = {"cutter": lips(6), "cut": steel(0, rub), "spindle_speed": speed}
        soft = cutting.width_limit(machine=machine, **place).width
        stiff = cutting.width_limit(machine=stiffer(machine, 1.0), **place).width
        assert stiff == pytest.approx(2 * soft, rel=1e-6)


@pytest.mark.parametrize(
    ("speed", "expected"), [(600, 11.9), (800, 11.4), (1000, 0.669), (1500, 0.272), (2000, 0.174)]
)
def test_stiffer_at_the_same_mass(speed, expected, lateral_set, steel, lips) -> None:
    """Set L with twice the stiffness and the same mass: wider, as the notes have it."""
    cut = steel(0, 6e5)
    found = limit(stiffer(lateral_set, 2**0.5), lips(6), cut, speed)
    assert found == pytest.approx(expected, rel=5e-3)
    assert found > limit(lateral_set, lips(6), cut, speed)


@pytest.mark.parametrize("speed", [1000, 1500, 2000])
def test_unequal_spacing_is_better(speed, lateral_set, steel, lips) -> None:
    """Set L: lips at 110, 120 and 130° carry more width than three equal ones."""
    unequal = lips(3, spacing=(110, 120, 130))
    cut = steel(0, 6e5)
    assert limit(lateral_set, unequal, cut, speed) > 1.5 * limit(lateral_set, lips(3), cut, speed)


def test_faster_is_not_always_worse(axial_set, steel, lips) -> None:
    """Set Ax, six lips: there is a quiet lobe at 2000, three times as wide as at 1500."""
    cut = steel(0, 1e5)
    lobe, before = (limit(axial_set, lips(6), cut, speed) for speed in (2000, 1500))
    assert lobe > 3 * before


def test_sharper_is_not_always_better(lateral_set, steel, lips) -> None:
    """Set L with a fresh land, a quarter of the damping, chatters at 300 (.126 mm in the notes)."""
    assert limit(lateral_set, lips(6), steel(0, 6e5 / 4), 300) == pytest.approx(0.126, abs=0.001)


def test_odd_is_no_better_than_even(lateral_set, steel, lips) -> None:
    """Not in this model: at five, six and seven lips the width only follows the number."""
    cut = steel(0, 6e5)
    five, six, seven = (limit(lateral_set, lips(z), cut, 2000 * 6 / z) for z in (5, 6, 7))
    assert five > six > seven


@pytest.mark.slow
def test_feed_does_not_move_the_limit(axial_set, steel, lips) -> None:
    """Not in this model: just under the limit, light and heavy feeds both die away."""
    cut = steel()
    place = {"machine": axial_set, "cutter": lips(3), "cut": cut, "spindle_speed": 1000.0}
    width = 0.95 * limit(axial_set, lips(3), cut, 1000)
    for feed in (0.02, 0.2):
        trace = cutting.trace(**place, width=width, feed=feed, duration=2.0)
        assert trace.swing() < 0.02 * feed


def test_a_polygon_stays_on_a_soft_quill(steel, lips) -> None:
    """3 N/um at 200 Hz, six lips at 300 rev/min: whirl of 6.3 marks begins at 2.2 to 2.3 mm."""
    quill = cutting.Machine(
        stiffness=3e6, natural_frequency=200, damping_ratio=0.03, direction="lateral"
    )
    found = cutting.width_limit(
        machine=quill, cutter=lips(6), cut=steel(0, 1.2e6), spindle_speed=300
    )
    marks = cutting.marks_per_turn(
        frequency=found.frequency, spindle_speed=300, direction="lateral"
    )
    assert 2.2 < found.width < 2.35
    assert marks == pytest.approx(6.3, abs=0.1)
