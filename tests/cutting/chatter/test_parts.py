"""Machine, cutter and cut of the chatter model."""

from math import nan

import pytest
from seatwork import cutting
from seatwork.errors import SeatworkError

MACHINE = {"stiffness": 8e6, "natural_frequency": 250.0, "damping_ratio": 0.04}
CUT = {"normal_coefficient": 1e9, "tangential_coefficient": 1e9, "mean_diameter": 9.0}


@pytest.mark.parametrize(
    ("build", "good", "change"),
    [
        (cutting.Machine, MACHINE, {"stiffness": 0.0}),
        (cutting.Machine, MACHINE, {"natural_frequency": nan}),
        (cutting.Machine, MACHINE, {"damping_ratio": 1.0}),
        (cutting.Machine, MACHINE, {"direction": "sideways"}),
        (cutting.Cut, CUT, {"mean_diameter": -9.0}),
        (cutting.Cut, CUT, {"process_damping": -1.0}),
        (cutting.Cut, CUT, {"friction": nan}),
        (cutting.Cutter, {"flutes": 3, "included_angle": 82.0}, {"flutes": 0}),
        (cutting.Cutter, {"flutes": 3, "included_angle": 82.0}, {"included_angle": 200.0}),
        (cutting.Cutter, {"flutes": 3, "included_angle": 82.0}, {"runout": -0.1}),
        (cutting.Cutter, {"flutes": 3, "included_angle": 82.0}, {"spacing": (180.0, 180.0)}),
        (cutting.Cutter, {"flutes": 3, "included_angle": 82.0}, {"spacing": (110.0, 120.0, 120.0)}),
    ],
)
def test_what_cannot_be_is_not_built(build, good, change) -> None:
    """A part out of its range is refused in one sentence that says what would do."""
    with pytest.raises(SeatworkError, match=r".+: .+; .+\."):
        build(**{**good, **change})


@pytest.mark.outside("sum worked by hand", "cutting.Cutter.in_cut")
def test_a_proud_lip_throws_others_out_of_cut() -> None:
    """A lip proud by a third of a turn's feed takes the next two of six lips out of cut.

    Along the normal a turn feeds 0.06 sin 41°; the lip k places behind the proud one
    cuts k/6 of that less the runout.
    """
    turn = 0.06 * 0.656059029
    cutter = cutting.Cutter(flutes=6, included_angle=82, runout=turn * 0.34)
    left = cutter.in_cut(0.06)
    assert left.flutes == 4
    assert left.spacing == pytest.approx((60, 60, 60, 180))
    assert cutter.in_cut(1.0).flutes == 6


def test_equal_spacing_written_out_is_equal() -> None:
    """Three lips at 120° are as equal as three without a spacing."""
    assert cutting.Cutter(flutes=3, included_angle=82, spacing=(120, 120, 120)).equally_spaced


@pytest.mark.outside("sum worked by hand", "cutting.land_over_wave")
def test_the_land_outgrows_the_wave_when_slow() -> None:
    """A 0.17 mm land at 350 Hz passes a quarter of the wave under about 505 rev/min."""
    cut = {"wear_land": 0.17, "frequency": -350.0, "mean_diameter": 9.0}
    assert cutting.land_over_wave(spindle_speed=506, **cut) < 0.25
    assert cutting.land_over_wave(spindle_speed=504, **cut) > 0.25
