"""Gage readings to expect from a good part."""

from fractions import Fraction

from seatwork.hardware import Screw
from seatwork.plan.bounds import bounds_of
from seatwork.plan.counterbores import DEPTH, DIAMETER, SizedBore
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Given, Reading
from seatwork.quantities import INCH
from seatwork.seats import Countersink, ball_top, fit
from seatwork.seats.gaging import ball_range
from seatwork.shop import HouseRules
from seatwork.units import show_both

SIZED_BY = ("diameter at the face", "depth from the face")
BALL_STEP = {"inch": INCH / 32, "metric": 1.0}  # mm; balls as a gage drawer holds them


def cone_readings(
    sized: SizedCountersink, screw: Screw | None, *, system: str, rules: HouseRules
) -> tuple[Reading, ...]:
    """Return what caliper, ball, indicator and head gage should say of a countersink.

    Parameters
    ----------
    sized : SizedCountersink
        The seat.
    screw : Screw or None
        The screw tried in it.
    system : {"inch", "metric"}
        System of the print.
    rules : HouseRules
        The rules in force.
    """
    across = _about(sized.sizes, "diameter at the face")
    face = _plain("caliper", "diameter at the face, burr off", across, system, rules)
    heads = (_head(sized, screw, across), *_gage(screw, system)) if screw else ()
    return (*heads[:1], face, *_ball(sized.seat, face, system), *heads[1:])


def bore_readings(sized: SizedBore, *, system: str, rules: HouseRules) -> tuple[Reading, ...]:
    """Return what a caliper and a depth micrometer should say of a counterbore."""
    return (
        _plain("caliper", DIAMETER, _about(sized.sizes, DIAMETER), system, rules),
        _plain("depth micrometer", DEPTH, _about(sized.sizes, DEPTH), system, rules),
    )


def face_readings(across: Given, *, system: str, rules: HouseRules) -> tuple[Reading, ...]:
    """Return what a caliper should say of a spotface; whether it is whole, the eye says."""
    return (_plain("caliper", across.about, across, system, rules),)


def _head(sized: SizedCountersink, screw: Screw, across: Given) -> Reading:
    stands = [fit(screw.head, _at(sized.seat, size)).amount for size in _ends(across)]
    return Reading(
        instrument="depth indicator over the head",
        about="greatest head above the face (minus is below)",
        value=stands[1],
        least=stands[2],
        greatest=stands[0],
        quantity="stand",
        noted=_window_said(sized),
        capped=sized.stand is not None and sized.stand.never_proud,
        short="head",
    )


def _window_said(sized: SizedCountersink) -> bool:
    """Tell whether the note says where the head may stand, and so sizes the seat."""
    own = any(size.noted for size in sized.sizes if size.about in SIZED_BY)
    return sized.stand is not None and sized.stand.stated and not own


def _ball(seat: Countersink, face: Reading, system: str) -> tuple[Reading, ...]:
    """Return the reading over a ball that touches mid-cone at both limits, where one does."""
    widest, narrowest = _at(seat, face.greatest), max(face.least, seat.hole_diameter)
    step = BALL_STEP[system]
    low, high = ball_range(seat)
    ball = round((low + high) / 2 / step) * step
    if not narrowest > seat.hole_diameter or not ball_range(widest)[0] < ball:
        return ()
    if not ball <= ball_range(_at(seat, narrowest))[1]:
        return ()
    return (
        Reading(
            instrument=f"{_ball_name(ball, system)} ball",
            about="top of the ball above the face (minus is below)",
            value=ball_top(ball, seat),
            least=ball_top(ball, widest),
            greatest=ball_top(ball, _at(seat, narrowest)),
            source=face.source,
        ),
    )


def _ball_name(ball: float, system: str) -> str:
    """Name a ball as the drawer does: 9/32 in, 1-1/2 in, 7 mm."""
    if system == "metric":
        return f"{ball:g} mm"
    whole, part = divmod(Fraction(round(ball / BALL_STEP["inch"]), 32), 1)
    return f"{'-'.join(str(one) for one in (whole, part) if one) or 0} in"


def _gage(screw: Screw, system: str) -> tuple[Reading, ...]:
    gage = screw.gage
    if gage is None:
        return ()
    return (
        Reading(
            instrument=f"head gage, hole {show_both(gage.diameter, system)}",
            about="the screw itself: height of its head above the gage",
            value=gage.greatest,
            least=gage.least,
            greatest=gage.greatest,
        ),
    )


def _plain(instrument: str, about: str, size: Given, system: str, rules: HouseRules) -> Reading:
    bounds = bounds_of(size, system=system, rules=rules)
    return Reading(
        instrument=instrument,
        about=about,
        value=size.value,
        least=bounds.least,
        greatest=bounds.greatest,
        source=bounds.source if bounds.source != size.source else "",
    )


def _ends(size: Given) -> tuple[float, float, float]:
    return size.smallest, size.value, size.largest


def _at(seat: Countersink, diameter: float) -> Countersink:
    return Countersink(
        diameter=diameter, hole_diameter=seat.hole_diameter, included_angle=seat.included_angle
    )


def _about(sizes: tuple[Given, ...], about: str) -> Given:
    return next(size for size in sizes if size.about == about)
