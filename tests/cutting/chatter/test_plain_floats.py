"""The search in plain floats finds what the search with arrays finds."""

from math import sqrt
from random import Random

import pytest
from seatwork import cutting
from seatwork.cutting.chatter.plain_floats import axial_limit
from seatwork.errors import SeatworkError

AGREES = 1e-12
"""Largest relative difference [-]: two orders of additions, nothing else."""


def spacing(rng: Random, flutes: int) -> tuple[float, ...] | None:
    """Draw an unequal spacing of the lips in one of three cutters."""
    if flutes == 1 or rng.random() < 0.7:
        return None
    turns = [360 / flutes + rng.uniform(-12, 12) for _ in range(flutes - 1)]
    return (*turns, 360 - sum(turns))


def case(rng: Random) -> dict[str, object]:
    """Draw a machine, a cutter, a cut and a speed, well beyond what a shop has."""
    flutes = rng.choice([1, 2, 3, 3, 4, 6, 6, 7])
    return {
        "machine": cutting.Machine(
            stiffness=10 ** rng.uniform(6, 8),
            natural_frequency=rng.uniform(80, 900),
            damping_ratio=rng.uniform(0.01, 0.1),
        ),
        "cutter": cutting.Cutter(
            flutes=flutes,
            included_angle=rng.choice([60, 82, 90, 100, 120, 180]),
            spacing=spacing(rng, flutes),
        ),
        "cut": cutting.Cut(
            normal_coefficient=10 ** rng.uniform(8.5, 9.7),
            tangential_coefficient=2e9,
            mean_diameter=rng.uniform(3, 30),
            process_damping=rng.choice([0, 10 ** rng.uniform(3, 6)]),
        ),
        "spindle_speed": 10 ** rng.uniform(1.7, 3.6),
    }


@pytest.mark.parametrize(
    "cases", [pytest.param(40, marks=pytest.mark.slow), pytest.param(1500, marks=pytest.mark.long)]
)
def test_it_finds_the_limit_that_arrays_find(cases: int) -> None:
    """In 1,500 random cases both find a limit, or neither; width and frequency are equal."""
    rng, found = Random(7), 0
    for _ in range(cases):
        given = case(rng)
        arrays = cutting.width_limit(**given)  # type: ignore[arg-type]
        plain = axial_limit(**given)  # type: ignore[arg-type]
        assert (plain is None) == (arrays.width is None), given
        if plain is not None:
            assert plain == pytest.approx((arrays.width, arrays.frequency), rel=AGREES), given
            found += 1
    assert cases > found > cases / 2


@pytest.mark.slow
def test_one_speed_whose_limit_is_known_by_hand() -> None:
    """Without rubbing no width below 2 k zeta (1 + zeta) / K sings: the bottom of every lobe."""
    machine = cutting.Machine(stiffness=2e7, natural_frequency=400, damping_ratio=0.03)
    one = cutting.Cutter(flutes=1, included_angle=180)
    cut = cutting.Cut(normal_coefficient=1.5e9, tangential_coefficient=1.5e9, mean_diameter=10)
    bottom = 1000 * 2 * 2e7 * 0.03 * 1.03 / 1.5e9
    widths = []
    for speed in range(1000, 3000, 50):
        limit = axial_limit(machine=machine, cutter=one, cut=cut, spindle_speed=speed)
        assert limit is not None
        widths.append(limit)
    least, frequency = min(widths)
    assert least == pytest.approx(bottom, rel=2e-2)
    assert min(width for width, _ in widths) >= bottom * (1 - 1e-9)
    assert frequency == pytest.approx(400 * sqrt(1 + 2 * 0.03), rel=1e-2)


def test_it_refuses_what_it_is_not_for() -> None:
    """Sideways chatter, and a speed of zero."""
    given = case(Random(1))
    with pytest.raises(SeatworkError, match="spindle speed"):
        axial_limit(**{**given, "spindle_speed": 0.0})  # type: ignore[arg-type]
    lateral = cutting.Machine(
        stiffness=1e7, natural_frequency=200, damping_ratio=0.03, direction="lateral"
    )
    with pytest.raises(SeatworkError, match="along the spindle only"):
        axial_limit(**{**given, "machine": lateral})  # type: ignore[arg-type]
