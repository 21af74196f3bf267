"""The angles bench: two heads that look alike from above, cut open, then measured."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, ClassVar

from matplotlib.artist import Artist

from seatwork import units
from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.measures import Measure
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.drawings.seat_view import SeatedHead
from seatwork.drawings.section import Section
from seatwork.drawings.two_heads import CutOpen, FromAbove, Pair
from seatwork.drawings.words import CONTACT_LABEL
from seatwork.hardware import clearance_hole, drill, screw
from seatwork.seats import Countersink, Fit, Head, fit
from seatwork.shop.house.house_rules import rules

M6, QUARTER, TEN, SHEET = (
    "M6 socket flat 90° (hopper plate)",
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "#10 flat head 100° (guard)",
)
"""The cider mill's own screws, by the part they hold."""

PAPER = "display.paper_thickness"
"""House rule with the thickness of a sheet of paper."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """A screw of the cider mill with its hole and the seat its print calls for.

    Parameters
    ----------
    head : Head
        The screw's head.
    hole_diameter : float
        Clearance hole [mm].
    """

    head: Head
    hole_diameter: float


@cache
def jobs() -> dict[str, Job]:
    """Give the screws that can be chosen, sizes from the lists.

    The M6 head is one of least edge, as many are in the box; the others are the greatest.
    """
    return {
        M6: Job(
            head=screw("M6 socket flat head").least_head,
            hole_diameter=clearance_hole("M6").diameter,
        ),
        QUARTER: Job(
            head=screw("1/4 flat head machine screw").head, hole_diameter=drill("H").diameter
        ),
        TEN: Job(
            head=screw("#10 flat head machine screw").head, hole_diameter=drill("#7").diameter
        ),
        SHEET: Job(head=screw("#10 100° flat head").head, hole_diameter=drill("#7").diameter),
    }


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """What the bench shows.

    Parameters
    ----------
    matched : SeatedHead
        Number 1: the screw in a seat of its own angle.
    part : SeatedHead
        Number 2: the same screw in a seat cut with the cutter chosen.
    found : Fit
        How number 2 lies.
    cut_open, measure : bool
        Whether the plates are cut open, and whether number 2 is measured.
    """

    matched: SeatedHead
    part: SeatedHead
    found: Fit
    cut_open: bool
    measure: bool

    @property
    def pair(self) -> Pair:
        """Both, with the line to stand above them."""
        heading = "The same two, cut open" if self.cut_open else _question(self)
        return Pair(first=self.matched, second=self.part, heading=heading)


class Angles(Bench[Opened]):
    """The bench itself; begin with ``angles``."""

    name = "angles"
    title = "Angles: which seat carries its screw?"
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="cut_open", label="Cut it open", back="Show it from above", redraws=True),
        Switch(
            name="measure",
            label="Measure number 2",
            back="Show both",
            needs="cut_open",
            redraws=True,
        ),
        Number(
            name="cutter_angle",
            label="Cutter angle",
            kind="angle",
            low=60.0,
            high=120.0,
            start=82.0,
            why="countersinks are ground from 60° to 120°",
            needs="cut_open",
        ),
        Choice(
            name="screw",
            label="Screw",
            options=(M6, QUARTER, TEN, SHEET),
            start=M6,
            folded=True,
            needs="cut_open",
        ),
        Number(
            name="diameter",
            label="Diameter at the face",
            low=5.0,
            high=26.0,
            start=13.44,
            why="that takes in every seat for these screws",
            folded=True,
            needs="cut_open",
        ),
        Number(
            name="hole",
            label="Hole",
            low=3.0,
            high=13.0,
            start=6.6,
            why="that takes in every hole for these screws",
            folded=True,
            needs="cut_open",
        ),
    )

    def work_out(self, **values: Any) -> Opened:
        """Seat the screw chosen with the cutter chosen.

        Raises
        ------
        SeatworkError
            If the hole is as wide as the seat, or the head cannot lie in it.
        """
        head = jobs()[values["screw"]].head
        sizes = {"diameter": values["diameter"], "hole_diameter": values["hole"]}
        own = Countersink(included_angle=head.included_angle, **sizes)
        seat = Countersink(included_angle=values["cutter_angle"], **sizes)
        return Opened(
            matched=SeatedHead(head=head, seat=own),
            part=SeatedHead(head=head, seat=seat),
            found=fit(head, seat),
            cut_open=values["cut_open"],
            measure=values["measure"],
        )

    def scene(self, result: Opened, look: Look) -> Scene[Opened]:
        """Show two heads from above, two sections, or one section with its numbers."""
        if not result.cut_open:
            return _Shown(FromAbove(result.pair, look), _pair)
        if not result.measure:
            return _Shown(CutOpen(result.pair, look), _pair)
        return _Measured(Section(result.part, look), _part)

    def measures(self, result: Opened) -> tuple[Measure, ...]:
        """Give three numbers about number 2, and none before it is cut open."""
        if not result.cut_open:
            return ()
        found = result.found
        contact = f"across, {' '.join(CONTACT_LABEL[found.contact])}"
        return (
            _standing(found),
            Measure("Contact", found.contact_diameter, note=contact),
            Measure("Diameter at the face", result.part.seat.diameter),
        )

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; a screw brings its own hole and seat, measuring cuts open first."""
        read = super()._read(given, now)
        if "screw" in read:
            job = jobs()[read["screw"]]
            brought = {"diameter": job.head.sharp_diameter, "hole": job.hole_diameter}
            read = brought | read
        if read.get("measure"):
            read = read | {"cut_open": True}
        return read


def angles(
    *,
    cut_open: bool = False,
    measure: bool = False,
    cutter_angle: float | str = 82.0,
    screw: str = M6,
    diameter: float | str | None = None,
    hole: float | str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Angles:
    """Show what a countersink of the wrong angle does to a flat head.

    Opens on two heads seen from above, both flush by the shop's rule, and one button.

    Parameters
    ----------
    cut_open : bool
        Begin with both plates cut open.
    measure : bool
        Begin with number 2 alone, dimensioned; cuts it open too.
    cutter_angle : float or str
        Included angle of the cutter that cut number 2 [deg], 60 to 120.
    screw : str
        One of the cider mill's screws; it brings its own hole and seat diameter.
    diameter, hole : float or str, optional
        Diameter of both seats at the face, and of their holes [mm], or shop text.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Angles
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or the head cannot lie in the seat.

    Examples
    --------
    >>> bench = angles(screw="1/4 flat head 82° (frame)", cutter_angle=90, measure=True)
    >>> bench.readouts()[0]
    ['Head proud', '0.018 in (0.46 mm) or about 4 sheets of paper']
    """
    chosen = {"diameter": diameter, "hole": hole}
    return Angles(
        system=system,
        palette=palette,
        projector=projector,
        cut_open=cut_open,
        measure=measure,
        cutter_angle=cutter_angle,
        screw=screw,
        **{name: value for name, value in chosen.items() if value is not None},
    )


class _Shown:
    """A scene of the drawings room, told by the bench's result."""

    def __init__(self, scene: Any, pick: Callable[[Opened], Any]) -> None:
        self._scene, self._pick = scene, pick

    def draw(self) -> Drawing:
        """Make the figure once."""
        drawing: Drawing = self._scene.draw()
        return drawing

    def move(self, result: Opened) -> str:
        """Show another result; return the text."""
        return str(self._scene.move(self._pick(result)))


class _Measured(_Shown):
    """The dimensioned section; head and seat may stay behind as a ghost."""

    @property
    def ghosts(self) -> Sequence[Artist]:
        """Outlines that may stay for comparison."""
        kept: Sequence[Artist] = self._scene.ghosts
        return kept


def _pair(result: Opened) -> Pair:
    return result.pair


def _part(result: Opened) -> SeatedHead:
    return result.part


def _question(result: Opened) -> str:
    """Ask which one to sign for, if both keep the shop's rule for flush heads."""
    found = fit(result.matched.head, result.matched.seat), result.found
    least, most = -rules().number("flush.greatest_below"), rules().number("flush.greatest_proud")
    if all(one.state == "flush" or least <= one.amount <= most for one in found):
        return "Both flush by the shop's rule. Which would you sign for?"
    return "Two screws, seen from above"


def _standing(found: Fit) -> Measure:
    if found.state == "flush":
        return Measure("Head", "flush with the face", kind="word")
    return Measure(f"Head {found.state}", abs(found.amount), note=_paper(abs(found.amount)))


def _paper(amount: float) -> str:
    """Compare an amount with sheets of paper by the house rule; no word if less than half one."""
    sheets = int(units.rounded(amount / rules().number(PAPER), 0))
    if not 1 <= sheets <= 20:
        return ""
    return f"or about {sheets} {'sheet' if sheets == 1 else 'sheets'} of paper"
