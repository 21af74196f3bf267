"""The cutters bench: a seat to cut and some of the shop's cutters; which one, and why."""

from typing import Any, ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Switch
from seatwork.benches.cutter_jobs import GUARD, LETTERS, PLACES, lined_up
from seatwork.benches.cutters_words import Line, cutters_page
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import rule_line
from seatwork.cutting import NOTE
from seatwork.drawings.cutters_view import CuttersView
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Job, choose
from seatwork.shop.shop import Shop

NONE = "none yet"
CONE_RULES = ("speeds.countersink_ratio", "speeds.countersink_cap")
RULES = {
    Chamfer: CONE_RULES,
    Countersink: CONE_RULES,
    Counterbore: ("speeds.counterbore_ratio", "pilot.clearance"),
    Spotface: ("speeds.spotface_ratio", "pilot.clearance"),
}


class Cutters(Bench[Line]):
    """The bench itself; begin with ``cutters``."""

    name = "cutters"
    title = "Cutters: which one would you take?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "hand_drill")
    controls: ClassVar[tuple[Control, ...]] = ()

    def __init__(self, **given: Any) -> None:
        self._shop = Shop.at()
        self.controls = _controls(self._shop)  # type: ignore[misc]
        super().__init__(**given)

    def work_out(self, **values: Any) -> Line:
        """Let the shop's lists say what fits, and line some of it up.

        Raises
        ------
        SeatworkError
            If the lists hold no such material or machine, or no cutter has that letter.
        """
        place = PLACES[values["job"]]
        job = Job(
            material=values["material"],
            machine=values["machine"],
            thickness=place.thickness,
            hole_diameter=place.hole_diameter,
        )
        choices = choose(seat=place.seat, job=job, shop=self._shop)
        shown = lined_up(choices, place.seat, self._shop)
        if not shown:
            raise SeatworkError(
                values["job"], "the shop's list has no such cutter at all", "take another job"
            )
        pick = "" if values["pick"] == NONE else values["pick"]
        if pick and LETTERS.index(pick) >= len(shown):
            raise SeatworkError(
                pick,
                f"only {len(shown)} cutters stand here",
                f"pick A to {LETTERS[len(shown) - 1]}",
            )
        return Line(
            place=place,
            material=values["material"],
            machine=values["machine"],
            choices=choices,
            shown=shown,
            pick=pick,
            opened=values["opened"],
        )

    def scene(self, result: Line, look: Look) -> Scene[Line]:
        """Show the cutters in a row; then the one to take, the one picked, and why."""
        return _Shown(result, look)

    def measures(self, result: Line) -> tuple[Measure, ...]:
        """Give the answer, once it is shown."""
        if not result.opened:
            return (Measure("Pick", f"A to {LETTERS[len(result.shown) - 1]}", kind="word"),)
        best = result.choices.best
        if best is None:
            return (Measure("Take", "none of these", kind="word"),)
        speed = best.step.spindle_speed if best.step else None
        return (
            Measure("Take", best.tool.cutter.name, kind="word"),
            Measure("Spindle", speed, kind="spindle")
            if speed
            else Measure("Spindle", "no step is slow enough", kind="word"),
        )

    def sources(self, result: Line) -> tuple[str, ...]:
        """Tell what the order rests on and, once it is shown, what all the others lack."""
        told = (
            "What fits: angle, body over the seat, nose or pilot in the hole, shank in the "
            "machine; sizes by the shop's list of cutters, which your shop can change.",
            "The order: a judgement of the trade by chatter, chip room, rake, burrs, pilot and "
            "state; common practice, no source.",
            f"Likely quiet, may sing: {NOTE}.",
            *(rule_line(name) for name in RULES[type(result.place.seat)]),
            "Sheet thickness and seats: examples from the cider mill.",
        )
        if not result.opened:
            return told
        fits = tuple(f"{one.tool.name}: does it." for one in result.choices.ranked)
        others = tuple(f"{one.tool.name}: {one.sentence}." for one in result.choices.refused)
        return (*told, *fits, *others, result.choices.would_do)

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; a pick opens the answer, another job is another question."""
        read = super()._read(given, now)
        brought: dict[str, Any] = {}
        if "job" in read:
            place = PLACES[read["job"]]
            brought = {"material": place.material, "machine": place.machine}
        if read.keys() & {"job", "machine", "material"}:
            brought |= {"pick": NONE, "opened": False}
        if read.get("pick", NONE) != NONE:
            brought["opened"] = True
        return brought | read


def cutters(
    *,
    job: str = GUARD,
    pick: str | None = None,
    opened: bool | None = None,
    material: str | None = None,
    machine: str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Cutters:
    """Ask which of the shop's cutters to take for a seat.

    Parameters
    ----------
    job : str
        A seat of the cider mill; it brings material and machine.
    pick : str, optional
        Begin with a cutter picked, ``"A"`` to ``"E"``, and the answer shown.
    opened : bool, optional
        Begin with the answer shown.
    material, machine : str, optional
        Names in the shop's lists.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Cutters
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value is none of its choices.

    Examples
    --------
    >>> bench = cutters(pick="A")
    >>> bench.result.choices.best.tool.name
    'XH90'
    """
    chosen = {"pick": pick, "opened": opened, "material": material, "machine": machine}
    return Cutters(
        system=system,
        palette=palette,
        projector=projector,
        job=job,
        **{name: value for name, value in chosen.items() if value is not None},
    )


def _controls(shop: Shop) -> tuple[Control, ...]:
    """Give the controls, machines and materials being those of the shop's own lists."""
    first = PLACES[GUARD]
    return (
        Switch(name="opened", label="Show the answer", back="Hide the answer", redraws=True),
        _choice("pick", "Your pick", (NONE, *LETTERS), NONE),
        _choice("job", "Job", tuple(PLACES), GUARD),
        _choice("machine", "Machine", tuple(m.name for m in shop.machines), first.machine, True),
        _choice(
            "material", "Material", tuple(m.name for m in shop.materials), first.material, True
        ),
    )


def _choice(
    name: str, label: str, options: tuple[str, ...], wish: str, folded: bool = False
) -> Choice:
    """Give a choice that begins with `wish` where the list has it."""
    start = wish if wish in options else options[0]
    return Choice(name=name, label=label, options=options, start=start, folded=folded, redraws=True)


class _Shown:
    """The scene of the drawings room, told by the bench's result."""

    def __init__(self, result: Line, look: Look) -> None:
        self._system = look.system
        self.draw = CuttersView(cutters_page(result, look.system), look).draw

    def move(self, result: Line) -> str:
        """Return the text; another state is another picture."""
        return cutters_page(result, self._system).text
