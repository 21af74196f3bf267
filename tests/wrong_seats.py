"""Pictures of seats cut wrong, each beside the right one with its screw, to be looked at.

    python tests/wrong_seats.py OUTDIR [NAME...]

The parts are those of the cider mill; the tests of the drawing use the same seats.
"""

import sys
from pathlib import Path

from seatwork.drawings import CutSeat, Drawing, Look, seat_with_screw
from seatwork.seats import (
    CapScrew,
    Chamfer,
    Counterbore,
    Countersink,
    Head,
    Spotface,
)

TEN = Head(sharp_diameter=9.779, included_angle=82, edge_diameter=9.2, height=2.85)
QUARTER = Head(sharp_diameter=12.878, included_angle=82, edge_diameter=12.1)
M6_FLAT = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=12.0, height=3.72)
M6 = CapScrew(head_diameter=10.0, head_height=6.0, diameter=6.0)
HALF_INCH = CapScrew(head_diameter=22.0, head_height=8.2, diameter=12.7)


def sunk(head: Head, diameter: float, hole: float, thickness: float, angle: float) -> CutSeat:
    """Give a countersink with its flat head."""
    seat = Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle)
    return CutSeat(screw=head, seat=seat, thickness=thickness)


def bored(diameter: float, depth: float, hole: float, thickness: float) -> CutSeat:
    """Give a counterbore with an M6 socket head cap screw."""
    seat = Counterbore(diameter=diameter, depth=depth, hole_diameter=hole)
    return CutSeat(screw=M6, seat=seat, thickness=thickness)


def faced(diameter: float, depth: float, *, hole: float = 13.5, thickness: float = 12.7) -> CutSeat:
    """Give a spotface on a pad that cleans up at 1.66 mm, with a 1/2 in hex cap screw."""
    return CutSeat(
        screw=HALF_INCH,
        seat=Spotface(diameter=diameter, hole_diameter=hole),
        thickness=thickness,
        depth=depth,
        clean=1.66,
    )


def beveled(leg: float, *, thickness: float = 12.0, angle: float = 90.0) -> CutSeat:
    """Give a chamfer on a 6.6 mm hole with an M6 socket head cap screw on it."""
    seat = Chamfer(leg=leg, included_angle=angle)
    return CutSeat(screw=M6, seat=seat, thickness=thickness, hole_diameter=6.6)


RIGHT = {
    "ten": sunk(TEN, 9.779, 5.1, 9.5, 82),
    "quarter": sunk(QUARTER, 12.878, 6.76, 12.7, 82),
    "m6 flat": sunk(M6_FLAT, 13.44, 6.6, 10.0, 90),
    "bore": bored(11.0, 6.4, 6.6, 16.0),
    "face": faced(31.75, 1.9),
    "bevel": beveled(0.5),
}
WRONG: dict[str, tuple[str, CutSeat, set[str]]] = {
    "proud": ("ten", sunk(TEN, 9.1, 5.1, 9.5, 82), {"proud"}),
    "very proud": ("quarter", sunk(QUARTER, 8.0, 6.76, 12.7, 82), {"proud"}),
    "below": ("quarter", sunk(QUARTER, 15.0, 6.76, 12.7, 82), {"below"}),
    "wrong angle 90": ("quarter", sunk(QUARTER, 12.878, 6.76, 12.7, 90), {"on a line", "proud"}),
    "wrong angle 82": ("m6 flat", sunk(M6_FLAT, 13.44, 6.6, 10.0, 82), {"on a line"}),
    "wrong angle 60": ("quarter", sunk(QUARTER, 12.878, 6.76, 12.7, 60), {"on a line"}),
    "wrong angle 120": ("quarter", sunk(QUARTER, 12.878, 6.76, 12.7, 120), {"proud", "on a line"}),
    "knife edge": ("ten", sunk(TEN, 9.779, 5.1, 2.0, 82), {"knife edge"}),
    "knife edge, drops": ("ten", sunk(TEN, 12.0, 5.1, 1.2, 82), {"drops through", "knife edge"}),
    "thin": ("ten", sunk(TEN, 9.779, 5.1, 3.2, 82), {"thin"}),
    "drops through": ("ten", sunk(TEN, 12.0, 9.6, 9.5, 82), {"drops through"}),
    "does not enter": ("ten", sunk(TEN, 9.779, 4.0, 9.5, 82), {"does not enter"}),
    "bore proud": ("bore", bored(11.0, 3.0, 6.6, 16.0), {"proud"}),
    "bore below": ("bore", bored(11.0, 9.0, 6.6, 16.0), {"below"}),
    "bore rattles": ("bore", bored(16.0, 6.4, 6.6, 16.0), {"rattling"}),
    "bore too narrow": ("bore", bored(9.0, 6.4, 6.6, 16.0), {"head too wide", "proud"}),
    "bore broken through": (
        "bore", bored(11.0, 16.0, 6.6, 12.0), {"drops through", "broken through"},
    ),
    "bore broken, narrow": (
        "bore", bored(9.0, 14.0, 6.6, 12.0), {"head too wide", "proud", "broken through"},
    ),
    "bore hole too wide": ("bore", bored(12.0, 6.4, 10.5, 16.0), {"drops through"}),
    "bore hole too narrow": ("bore", bored(11.0, 6.4, 5.5, 16.0), {"does not enter"}),
    "face not clean": ("face", faced(31.75, 0.7), {"not clean"}),
    "face too narrow": ("face", faced(19.0, 1.9), {"overhangs"}),
    "face broken through": ("face", faced(31.75, 15.0), {"broken through"}),
    "face deep": ("face", faced(31.75, 9.0), {"too deep"}),
    "bevel too wide": ("bevel", beveled(2.2), {"no bearing"}),
    "bevel through": ("bevel", beveled(1.5, thickness=1.0), {"knife edge"}),
}  # fmt: skip
"""By name the right seat beside it, the wrong one, and what is wrong with it."""


def drawn(name: str, look: Look | None = None) -> Drawing:
    """Draw a wrong seat beside the right one."""
    right, wrong, _ = WRONG[name]
    return seat_with_screw(RIGHT[right], wrong, look=look, title=f"Right, and {name}")


def main(arguments: list[str]) -> None:
    """Write the pictures of all seats, or of those named."""
    place = Path(arguments[0])
    place.mkdir(parents=True, exist_ok=True)
    looks = {
        "light": Look(),
        "dark": Look(palette="dark", system="metric"),
        "projector": Look(projector=True),
    }
    for number, name in enumerate(arguments[1:] or WRONG):
        for kind, look in looks.items():
            if kind == "light" or number % 5 == 0:
                file = place / f"{name.replace(' ', '_').replace(',', '')}-{kind}.png"
                file.write_bytes(drawn(name, look).png())


if __name__ == "__main__":
    main(sys.argv[1:])
