"""The depth bench: one stop setting, a resharpened cutter, another seat."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Any, ClassVar

from matplotlib.artist import Artist

from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import fact_line, rule_line
from seatwork.drawings.depth_view import DepthView, Plunge, SameStop
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import Length, SeatworkError
from seatwork.hardware import clearance_hole, drill, screw
from seatwork.hardware.clearance import ClearanceHole
from seatwork.hardware.drills import Drill
from seatwork.hardware.screws import Screw
from seatwork.seats import Countersink, fit
from seatwork.seats.touching_off import diameter_error, resharpened_nose
from seatwork.shop.house_rules import rules
from seatwork.units import show_both

QUARTER, TEN, SHEET, M6 = (
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "#10 flat head 100° (guard)",
    "M6 socket flat 90° (hopper plate)",
)
FACE, HOLE_EDGE = "nose on the face", "lips on the hole edge"
DEEP, SHALLOW = "too deep", "too shallow"
TOUCHED = {FACE: "face", HOLE_EDGE: "hole edge"}
BELOW, PROUD = "flush.greatest_below", "flush.greatest_proud"


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """A screw of the cider mill and its hole.

    Parameters
    ----------
    screw : Screw
        From the lists.
    hole_diameter : float
        Clearance hole [mm].
    hole_source, hole_confirmed : str
        Where the hole comes from.
    """

    screw: Screw
    hole_diameter: float
    hole_source: str
    hole_confirmed: str


@cache
def jobs() -> dict[str, Job]:
    """Give the screws that can be chosen, sizes from the lists."""
    chosen: dict[str, tuple[str, Drill | ClearanceHole]] = {
        QUARTER: ("1/4 flat head machine screw", drill("H")),
        TEN: ("#10 flat head machine screw", drill("#7")),
        SHEET: ("#10 100° flat head", drill("#7")),
        M6: ("M6 socket flat head", clearance_hole("M6")),
    }
    return {
        name: Job(
            screw=screw(text),
            hole_diameter=hole.diameter,
            hole_source=hole.source,
            hole_confirmed=hole.confirmed,
        )
        for name, (text, hole) in chosen.items()
    }


@dataclass(frozen=True, slots=True, kw_only=True)
class Stopped:
    """What the bench shows.

    Parameters
    ----------
    pair : SameStop
        Both plunges.
    job : Job
        The screw that is to lie in them.
    amount : float
        Where its head lies in number 2 [mm], plus above the face.
    state : {"proud", "flush", "below"}
        The same in a word.
    """

    pair: SameStop
    job: Job
    amount: float
    state: str

    @property
    def within_rule(self) -> bool:
        """Whether the shop's rule for flush heads is kept."""
        held = rules()
        least, most = -held.number(BELOW), held.number(PROUD)
        return self.state == "flush" or least <= self.amount <= most


class Depth(Bench[Stopped]):
    """The bench itself; begin with ``depth``."""

    name = "depth"
    title = "Depth: does the stop set the seat?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="cut", label="Cut number 2", back="Lift the cutter"),
        Choice(
            name="touch",
            label="Touch off",
            options=(FACE, HOLE_EDGE),
            start=FACE,
            needs="cut",
        ),
        Number(
            name="new_nose",
            label="Nose after resharpening",
            low=0.0,
            high=5.0,
            start=0.090 * 25.4,
            why="a wider nose is ground back to a point first",
            needs="cut",
        ),
        Number(
            name="stop_error",
            label="Stop off by",
            low=0.0,
            high=0.5,
            start=0.0,
            why="a stop that is worse is mended, not reckoned with",
            needs="cut",
        ),
        Choice(
            name="stop_way",
            label="Stop lets number 2 go",
            options=(DEEP, SHALLOW),
            start=DEEP,
            folded=True,
            needs="cut",
        ),
        Choice(
            name="screw",
            label="Screw",
            options=(QUARTER, TEN, SHEET, M6),
            start=QUARTER,
            folded=True,
        ),
        Number(
            name="diameter",
            label="Diameter at the face, as set",
            low=4.0,
            high=26.0,
            start=0.507 * 25.4,
            why="that takes in every seat for these screws",
            folded=True,
        ),
        Number(
            name="angle",
            label="Cutter angle",
            kind="angle",
            low=60.0,
            high=120.0,
            start=82.0,
            why="countersinks are ground from 60° to 120°",
            folded=True,
        ),
        Number(
            name="hole",
            label="Hole",
            low=2.0,
            high=13.0,
            start=0.266 * 25.4,
            why="that takes in every hole for these screws",
            folded=True,
        ),
        Number(
            name="nose",
            label="Nose when the stop was set",
            low=0.0,
            high=5.0,
            start=0.060 * 25.4,
            why="a wider nose is ground back to a point first",
            folded=True,
        ),
    )

    def work_out(self, values: Values) -> Stopped:
        """Cut both seats at one stop setting and lay the screw into the second.

        Raises
        ------
        SeatworkError
            If the sizes make no cone, or the stop error leaves none.
        """
        touched = TOUCHED[values["touch"]]
        error = values["stop_error"] if values["stop_way"] == DEEP else -values["stop_error"]
        set_for = Countersink(
            diameter=values["diameter"],
            hole_diameter=values["hole"],
            included_angle=values["angle"],
        )
        if touched == "hole edge":
            _refuse_blunt(values["nose"], set_for)
        ground = resharpened_nose(
            set_for,
            nose_diameter=values["nose"],
            new_nose_diameter=values["new_nose"],
            touched=touched,  # type: ignore[arg-type]
        )
        second = _missed(ground, error)
        noses = values["nose"], values["new_nose"]
        travel = set_for.depth if touched == "hole edge" else set_for.travel_from_face(noses[0])
        pair = SameStop(
            first=Plunge(seat=set_for, nose_diameter=noses[0], travel=travel),
            second=Plunge(seat=second, nose_diameter=noses[1], travel=travel + error),
            touched=touched,
            wider=second.diameter - set_for.diameter,
            stop_error=error,
            cut=values["cut"],
        )
        job = jobs()[values["screw"]]
        lies = fit(job.screw.head, second)
        return Stopped(pair=pair, job=job, amount=lies.amount, state=lies.state)

    def scene(self, result: Stopped, look: Look) -> Scene[Stopped]:
        """Show both plates in section, the cutter in each."""
        return _Shown(DepthView(result.pair, look))

    def measures(self, result: Stopped) -> tuple[Measure, ...]:
        """Give the travel that was set; once cut, number 2 and how the screw lies in it."""
        pair = result.pair
        if not pair.cut:
            return (Measure("Travel set", pair.first.travel),)
        return (
            Measure("Number 2", pair.second.seat.diameter),
            _standing(result),
        )

    def sources(self, result: Stopped) -> tuple[str, ...]:
        """Tell where each number comes from."""
        job, part = result.job, result.job.screw
        sharp = show_both(part.head.sharp_diameter, self.system)
        hole = show_both(job.hole_diameter, self.system)
        return (
            "Travel and diameter: nose + 2 x travel x tan(half the included angle) is the "
            "diameter at the face; plane geometry, exact. Touched on the hole edge, the hole "
            "stands in place of the nose.",
            fact_line(f"{part.title}, theoretical sharp {sharp}", part.source, part.confirmed),
            fact_line(f"Its hole {hole}", job.hole_source, job.hole_confirmed),
            rule_line(BELOW),
            rule_line(PROUD),
            "Noses of 0.060 and 0.090 in are examples: measure your own cutter.",
        )

    def _read(self, given: Values) -> dict[str, Any]:
        """Read values; a screw brings its own hole, seat and cutter angle."""
        read = super()._read(given)
        if "screw" in read:
            job = jobs()[read["screw"]]
            brought = {
                "diameter": job.screw.head.sharp_diameter,
                "hole": job.hole_diameter,
                "angle": job.screw.seat_angle,
            }
            read = brought | read
        return read


def depth(
    *,
    cut: bool = False,
    touch: str = FACE,
    new_nose: float | str = 2.286,
    stop_error: float | str = 0.0,
    stop_way: str = DEEP,
    screw: str = QUARTER,
    diameter: float | str | None = None,
    angle: float | str | None = None,
    hole: float | str | None = None,
    nose: float | str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Depth:
    """Show what one depth-stop setting comes to, touched off in two ways.

    Opens on a seat that was set right and a cutter that was resharpened since; the stop has not
    moved, and one button cuts the second seat.

    Parameters
    ----------
    cut : bool
        Begin with number 2 cut.
    touch : str
        ``"nose on the face"`` or ``"lips on the hole edge"``.
    new_nose : float or str
        Flat at the nose after resharpening [mm], or shop text.
    stop_error : float or str
        How far off the stop lets number 2 go [mm], or shop text.
    stop_way : {"too deep", "too shallow"}
        Which way the stop is off.
    screw : str
        One of the cider mill's screws; it brings its own hole, seat and cutter angle.
    diameter, hole : float or str, optional
        Diameter at the face that the stop was set for, and the hole [mm], or shop text.
    angle : float or str, optional
        Included angle of the cutter [deg], 60 to 120.
    nose : float or str, optional
        Flat at the nose when the stop was set [mm], or shop text.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Depth
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or the sizes make no seat.

    Examples
    --------
    >>> bench = depth(cut=True)
    >>> bench.readouts()[0]
    ['Number 2', '0.537 in (13.64 mm)']
    """
    chosen = {"diameter": diameter, "angle": angle, "hole": hole, "nose": nose}
    return Depth(
        system=system,
        palette=palette,
        projector=projector,
        cut=cut,
        touch=touch,
        new_nose=new_nose,
        stop_error=stop_error,
        stop_way=stop_way,
        screw=screw,
        **{name: value for name, value in chosen.items() if value is not None},
    )


class _Shown:
    """The scene of the drawings room, told by the bench's result."""

    def __init__(self, scene: DepthView) -> None:
        self._scene, self.draw = scene, scene.draw

    def move(self, result: Stopped) -> str:
        """Show another result; return the text."""
        return self._scene.move(result.pair)

    @property
    def ghosts(self) -> Sequence[Artist]:
        """Outlines that may stay for comparison."""
        return self._scene.ghosts


def _missed(seat: Countersink, error: float) -> Countersink:
    """Give the seat that comes out where the stop is off by `error` [mm]."""
    shift = diameter_error(depth_error=error, included_angle=seat.included_angle)
    return replace(seat, diameter=seat.diameter + shift)


def _refuse_blunt(nose: float, seat: Countersink) -> None:
    """Refuse a nose that would stand on the hole edge instead of the lips."""
    if not nose < seat.hole_diameter:
        raise SeatworkError(
            Length(nose),
            "so wide a nose does not enter a hole of {hole}: the lips cannot touch its edge",
            "take a narrower nose, or touch off on the face",
            hole=Length(seat.hole_diameter),
        )


def _standing(result: Stopped) -> Measure:
    """Tell how the screw lies in number 2, and whether the shop's rule is kept."""
    rule = "within the rule" if result.within_rule else "outside the rule"
    if result.state == "flush":
        return Measure("Screw in it", f"flush, {rule}", kind="word")
    return Measure("Screw in it", abs(result.amount), note=f"{result.state}, {rule}")
