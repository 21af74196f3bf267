"""The edges bench: one chamfer, two readings of its width, and what becomes of it all round."""

from dataclasses import dataclass
from typing import Any, ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import rule_line
from seatwork.drawings.edges_view import EdgesView, TwoReadings
from seatwork.drawings.rim_view import AllRound, RimView
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.seats import Chamfer
from seatwork.seats.rims import Rim, rim
from seatwork.seats.surfaces import Flat, Round, Tilted
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_angle, show_both, show_length

SIZED, INCH_CHAMFER, METRIC_CHAMFER, INCH_BREAK, METRIC_BREAK = (
    "a size",
    "CHAMFER, inch print",
    "CHAMFER, metric print",
    "BREAK EDGES, inch print",
    "BREAK EDGES, metric print",
)
TAKEN = {
    INCH_CHAMFER: ("chamfer.inch_leg", "chamfer.inch_greatest"),
    METRIC_CHAMFER: ("chamfer.metric_leg", "chamfer.metric_greatest"),
    INCH_BREAK: ("edge.inch_break", "edge.inch_break"),
    METRIC_BREAK: ("edge.metric_break", "edge.metric_break"),
}
"""House rules for a note without size: the width taken, and the greatest that will pass."""

PAD, DRAFT, SHAFT, BORE = (
    "frame pad, milled flat",
    "frame pad, tilted by draft",
    "crank shaft, oil hole",
    "crank hub, from inside the bore",
)
CAPTIONS = {
    PAD: "seen along the hole",
    DRAFT: "the face rises to the right",
    SHAFT: "the shaft runs up and down",
    BORE: "the bore runs up and down",
}
POINTS = 72
"""Directions worked out round the hole: every five degrees."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Edge:
    """What the bench shows.

    Parameters
    ----------
    along_face, across_bevel : Chamfer
        The two readings of the width.
    width : float
        Width as noted, or as taken by the convention [mm].
    hole_diameter : float
        The hole [mm].
    note, place : str
        What the print says, and which face it is.
    tilt, round_diameter : float
        Tilt of the face [deg] and diameter of a round one [mm]; each counts on its own faces.
    rim : Rim
        The first reading, all round on that face.
    all_round : bool
        Whether it is shown all round.
    """

    along_face: Chamfer
    across_bevel: Chamfer
    width: float
    hole_diameter: float
    note: str
    place: str
    tilt: float
    round_diameter: float
    rim: Rim
    all_round: bool


class Edges(Bench[Edge]):
    """The bench itself; begin with ``edges``."""

    name = "edges"
    title = "Edges: how wide is a chamfer?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "sheet")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="all_round", label="Show it all round", back="Show it cut open", redraws=True),
        Choice(
            name="place",
            label="Face",
            options=(PAD, DRAFT, SHAFT, BORE),
            start=DRAFT,
            needs="all_round",
        ),
        Choice(
            name="note",
            label="Print says",
            options=(SIZED, *TAKEN),
            start=SIZED,
        ),
        Number(
            name="width",
            label="Width",
            low=0.1,
            high=3.2,
            start=0.762,
            why="a wider one is a seat, not a chamfer",
        ),
        Number(
            name="hole",
            label="Hole",
            low=1.0,
            high=20.0,
            start=0.266 * 25.4,
            why="that takes in the holes of the cider mill",
            folded=True,
        ),
        Number(
            name="angle",
            label="Tool angle",
            kind="angle",
            low=60.0,
            high=120.0,
            start=90.0,
            why="chamfering tools are ground from 60° to 120°",
            folded=True,
        ),
        Number(
            name="tilt",
            label="Tilt of the face",
            kind="fine angle",
            low=0.0,
            high=30.0,
            start=3.0,
            why="a steeper face is squared first",
            folded=True,
            needs="all_round",
        ),
        Number(
            name="round_diameter",
            label="Diameter of the round face",
            low=5.0,
            high=150.0,
            start=25.4,
            why="that takes in every shaft and bore of the cider mill",
            folded=True,
            needs="all_round",
        ),
    )

    def work_out(self, **values: Any) -> Edge:
        """Read the width both ways and cut the first reading all round.

        Raises
        ------
        SeatworkError
            If the chamfer does not close on the face, or the hole is wider than a round one.
        """
        angle, width, hole = values["angle"], values["width"], values["hole"]
        along_face = Chamfer(leg=width, included_angle=angle)
        share = width / along_face.slant_width
        return Edge(
            along_face=along_face,
            across_bevel=Chamfer(leg=width * share, included_angle=angle),
            width=width,
            hole_diameter=hole,
            note=values["note"],
            place=values["place"],
            tilt=values["tilt"],
            round_diameter=values["round_diameter"],
            rim=rim(along_face.at_hole(hole), _surface(values), points=POINTS),
            all_round=values["all_round"],
        )

    def scene(self, result: Edge, look: Look) -> Scene[Edge]:
        """Show the corner in section, or the rim all round."""
        return (_Round if result.all_round else _Corner)(result, look)

    def measures(self, result: Edge) -> tuple[Measure, ...]:
        """Give what the two readings differ by, or the extremes all round."""
        allowed = _allowed(result.note)
        first, second = (
            one.diameter_at(result.hole_diameter)
            for one in (result.along_face, result.across_bevel)
        )
        if not result.all_round:
            found: tuple[Measure, ...] = (
                Measure("Mouth by reading 1", first),
                Measure("Mouth by reading 2", second),
                Measure("Difference", first - second),
            )
        else:
            found = (
                Measure("Least across", result.rim.least_diameter),
                Measure("Greatest across", result.rim.greatest_diameter),
                Measure("Edge", _broken(result.rim), kind="word"),
            )
        return found if allowed is None else (*found, Measure("At most, by rule", allowed))

    def sources(self, result: Edge) -> tuple[str, ...]:
        """Tell where each number comes from."""
        told = [
            "Widths, depths and diameters: plane geometry on the cone, exact; the rim on tilted "
            "and round faces is where the cone meets the face.",
            "Reading 1, the leg along the face, is the one the plan uses; dimensioning "
            "standards want the leg or the angle stated (from memory: check your copy).",
        ]
        if result.note in TAKEN:
            told += [rule_line(name) for name in dict.fromkeys(TAKEN[result.note])]
            told.append(rule_line("chamfer.included_angle"))
        return (*told, "Tilt, shaft and bore are examples from the cider mill: measure your part.")

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; a note without size brings its width, a size of a face that face."""
        read = super()._read(given, now)
        if read.get("note") in TAKEN:
            width = rules().number(TAKEN[read["note"]][0])
            read = {"width": width, "angle": rules().number("chamfer.included_angle")} | read
        elif "width" in read:
            read = {"note": SIZED} | read
        if "tilt" in read:
            read = {"place": DRAFT} | read
        elif "round_diameter" in read:
            begun = hasattr(self, "_state") and self.values["place"] == BORE
            read = {"place": BORE if begun else SHAFT} | read
        return read


def edges(
    *,
    all_round: bool = False,
    place: str | None = None,
    note: str | None = None,
    width: float | str | None = None,
    hole: float | str | None = None,
    angle: float | str | None = None,
    tilt: float | str | None = None,
    round_diameter: float | str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Edges:
    """Show how wide a chamfer is, by two readings of its note and all the way round.

    Opens on one chamfer whose width is measured along the face, and across the bevel.

    Parameters
    ----------
    all_round : bool
        Begin with the chamfer seen along the hole, its width unrolled.
    place : str, optional
        One of the cider mill's faces: flat, tilted, round outside, round inside.
    note : str, optional
        What the print says; a note without size brings its width by house rule.
    width, hole : float or str, optional
        Width as noted, and the hole [mm], or shop text.
    angle : float or str, optional
        Included angle of the tool [deg], 60 to 120.
    tilt : float or str, optional
        Tilt of the face from square to the hole [deg], 0 to 30; brings the tilted face.
    round_diameter : float or str, optional
        Diameter of the shaft or bore [mm], or shop text; brings the shaft.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Edges
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or the chamfer does not close on the face.

    Examples
    --------
    >>> edges(width="0.030 in").readouts()[2]
    ['Difference', '0.018 in (0.45 mm)']
    """
    chosen = {
        "place": place,
        "note": note,
        "width": width,
        "hole": hole,
        "angle": angle,
        "tilt": tilt,
        "round_diameter": round_diameter,
    }
    return Edges(
        system=system,
        palette=palette,
        projector=projector,
        all_round=all_round,
        **{name: value for name, value in chosen.items() if value is not None},
    )


class _Corner:
    """The corner in section, told by the bench's result."""

    def __init__(self, result: Edge, look: Look) -> None:
        self._look = look
        self._scene = EdgesView(self._part(result), look)

    def draw(self) -> Drawing:
        """Make the figure once."""
        return self._scene.draw()

    def move(self, result: Edge) -> str:
        """Show another result; return the text."""
        return self._scene.move(self._part(result))

    def _part(self, result: Edge) -> TwoReadings:
        return TwoReadings(
            along_face=result.along_face,
            across_bevel=result.across_bevel,
            width=result.width,
            hole_diameter=result.hole_diameter,
            note=_said(result, self._look.system),
        )


class _Round:
    """The rim all round, told by the bench's result."""

    def __init__(self, result: Edge, look: Look) -> None:
        self._look = look
        self._scene = RimView(self._part(result), look)

    def draw(self) -> Drawing:
        """Make the figure once."""
        return self._scene.draw()

    def move(self, result: Edge) -> str:
        """Show another result; return the text."""
        return self._scene.move(self._part(result))

    def _part(self, result: Edge) -> AllRound:
        system = self._look.system
        return AllRound(
            rim=result.rim,
            hole_diameter=result.hole_diameter,
            leg=result.along_face.leg,
            included_angle=result.along_face.included_angle,
            noted_width=result.along_face.slant_width,
            face=_face(result, system),
            caption=CAPTIONS[result.place],
            note=_said(result, system),
        )


def _surface(values: Values) -> Flat | Tilted | Round:
    """Give the face that was chosen."""
    if values["place"] == DRAFT:
        return Tilted(tilt=values["tilt"])
    if values["place"] in (SHAFT, BORE):
        return Round(diameter=values["round_diameter"], inside=values["place"] == BORE)
    return Flat()


def _face(result: Edge, system: str) -> str:
    """Name the face, in words that follow "on"."""
    across = show_both(result.round_diameter, system)
    return {
        PAD: "a flat face",
        DRAFT: f"a face tilted {show_angle(result.tilt)}",
        SHAFT: f"a shaft of {across}",
        BORE: f"the inside of a bore of {across}",
    }[result.place]


def _said(result: Edge, system: str) -> str:
    """Tell what the print says, and what was taken where it gives no size."""
    width = show_length(result.width, system)
    if result.note not in TAKEN:
        return f"The print says {width} and no more"
    most = show_length(rules().number(TAKEN[result.note][1]), system)
    what = result.note.partition(",")[0]
    if most == width:
        return f"The print says {what}, no size: by house rule at most {most}"
    return f"The print says {what}, no size: by house rule {width}, at most {most}"


def _allowed(note: str) -> float | None:
    """Give the greatest width [mm] that passes a note without size; None for a size."""
    return rules().number(TAKEN[note][1]) if note in TAKEN else None


def _broken(found: Rim) -> str:
    return "broken all round" if found.complete else "not broken all round"
