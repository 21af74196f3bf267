"""A trial of the installation: a plan, a drawing, a question and more, made for real.

``doctor`` runs this file in the kernel's Python, since that is where lessons run, and in a
process of its own, so that a library that brings Python down brings down no more than that.
"""

import json
import sys
from collections.abc import Callable

from seatwork.quantities import INCH

NOTE = "⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
SEAT = {"diameter": 10.0, "hole_diameter": 5.0, "included_angle": 90.0}
"""A seat [mm, mm, deg]; half of 10 - 5 mm deep, since the tangent of 45° is 1."""


def plan() -> str:
    """Plan a seat for an inch flat head, which is 82° (common practice, no source)."""
    from seatwork import notes
    from seatwork.plan import make

    made = make(notes.read(NOTE), material="6061 aluminum", machine="bench drill press")
    (seat,) = made.seats
    angle = getattr(seat.shape, "included_angle", None)
    return "" if angle == 82 else f"it planned {angle}° for an 82° head"


def drawing() -> str:
    """Draw a countersink and ask for the picture."""
    from seatwork.drawings.parts import holes
    from seatwork.seats import Countersink

    drawn = holes.countersink(Countersink(**SEAT))
    picture = drawn.png(0.5)
    return "" if picture.startswith(b"\x89PNG") and drawn.text else "it gave no picture"


def question() -> str:
    """Ask for the depth of a seat: 2.5 mm is right, both sides of the cone are not."""
    from seatwork.questions import judge
    from seatwork.questions.bank.seat_depth import SeatDepth

    asked = SeatDepth(system="metric", **SEAT).main
    if not judge(asked, "2.5 mm").is_right:
        return "it refused a right answer"
    return "it took a wrong answer" if judge(asked, "5 mm").is_right else ""


def bench() -> str:
    """Make a bench, with its controls and its live picture."""
    from seatwork import benches

    return "" if benches.angles().drawing.text else "it shows nothing"


def quantity() -> str:
    """Read an inch that pint made: 25.4 mm."""
    import pint

    from seatwork import units

    read = units.length(pint.Quantity(1, "inch"))
    return "" if abs(read - INCH) < 1e-9 else f"it read {read} mm for an inch"


def table() -> str:
    """Load the inch tap drills as a data frame."""
    from seatwork import tables

    return "" if len(tables.load("tap_drills_inch")) else "it is empty"


TRIALS: dict[str, Callable[[], str]] = {
    "a plan": plan,
    "a drawing": drawing,
    "a question": question,
    "a bench": bench,
    "a length from pint": quantity,
    "a table": table,
}


def outcome(trial: Callable[[], str]) -> str:
    """Run one trial and tell its fault in one line; empty when it did well."""
    try:
        return trial()
    except Exception as error:  # whatever is broken is what is looked for
        return text_of(error)


def text_of(error: Exception) -> str:
    """Tell an error of any library in one short line."""
    first = next(iter(str(error).strip().splitlines()), "")
    return f"{type(error).__name__}: {first[:200]}".rstrip(": ")


def main() -> None:
    """Run every trial; each writes, as it ends, a line of JSON with its name and its fault."""
    for name, trial in TRIALS.items():
        sys.stdout.write(json.dumps([name, outcome(trial)]) + "\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
