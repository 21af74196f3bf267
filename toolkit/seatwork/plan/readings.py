"""Gage readings to expect from a good part."""

from seatwork.hardware import Screw
from seatwork.plan.counterbores import DEPTH, DIAMETER, SizedBore
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Given, Reading
from seatwork.seats import Countersink, fit


def cone_readings(sized: SizedCountersink, screw: Screw) -> tuple[Reading, ...]:
    """Return what an indicator over the greatest head and a caliper over the seat should say."""
    across = _about(sized.sizes, "diameter at the face")
    stands = [fit(screw.head, _at(sized.seat, size)).amount for size in _ends(across)]
    head = Reading(
        instrument="depth indicator over the head",
        about="greatest head above the face (minus is below)",
        value=stands[1],
        least=stands[2],
        greatest=stands[0],
    )
    return (head, _plain("caliper", "diameter at the face, burr off", across), *_gage(screw))


def bore_readings(sized: SizedBore) -> tuple[Reading, ...]:
    """Return what a caliper and a depth micrometer should say of a counterbore."""
    return (
        _plain("caliper", DIAMETER, _about(sized.sizes, DIAMETER)),
        _plain("depth micrometer", DEPTH, _about(sized.sizes, DEPTH)),
    )


def _gage(screw: Screw) -> tuple[Reading, ...]:
    gage = screw.gage
    if gage is None:
        return ()
    return (
        Reading(
            instrument="head gage",
            about="the screw itself: height of its head above the gage",
            value=gage.greatest,
            least=gage.least,
            greatest=gage.greatest,
        ),
    )


def _plain(instrument: str, about: str, size: Given) -> Reading:
    return Reading(
        instrument=instrument,
        about=about,
        value=size.value,
        least=size.smallest,
        greatest=size.largest,
    )


def _ends(size: Given) -> tuple[float, float, float]:
    return size.smallest, size.value, size.largest


def _at(seat: Countersink, diameter: float) -> Countersink:
    return Countersink(
        diameter=diameter, hole_diameter=seat.hole_diameter, included_angle=seat.included_angle
    )


def _about(sizes: tuple[Given, ...], about: str) -> Given:
    return next(size for size in sizes if size.about == about)
