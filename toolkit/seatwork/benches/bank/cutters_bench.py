"""The cutters bench: a seat to cut and some of the shop's cutters; which one, and why."""

from typing import Any, ClassVar

from seatwork.benches.bank.cutters_sums import (
    LETTERS,
    THICKEST_SHEET,
    lined_up,
    seated_jobs,
    wanted,
)
from seatwork.benches.bank.cutters_words import Line, cutters_page
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Pick, Switch
from seatwork.benches.build.listed import kept, machine, machines, material, materials, shop
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import plate_of, plate_size
from seatwork.benches.build.sourced import rule_line
from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.views.cutters_view import CutterChoice, CuttersView
from seatwork.errors import SeatworkError
from seatwork.hardware import job_list
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Where, choose

FIRST = "edges of the holes (guard)"
NONE = "none yet"
CONE_RULES = ("speeds.countersink_ratio", "speeds.countersink_cap")
RULES = {
    Chamfer: CONE_RULES,
    Countersink: CONE_RULES,
    Counterbore: ("speeds.counterbore_ratio", "pilot.clearance"),
    Spotface: ("speeds.spotface_ratio", "pilot.clearance"),
}


class Cutters(Bench[Line]):
    """Ask which of the shop's cutters to take for a seat.

    Examples
    --------
    >>> bench = Cutters(pick="A")
    >>> bench.result.choices.best.tool.name
    'XH90'
    """

    title = "Cutters: which one would you take?"
    view = CuttersView
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "hand_drill")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="opened", label="Show the answer", back="Hide the answer", redraws=True),
        Choice(name="pick", label="Your pick", options=(NONE, *LETTERS), start=NONE, redraws=True),
        Pick(name="job", label="Job", listed=seated_jobs, known=wanted, start=FIRST,
             others="a screw", redraws=True),
        Pick(name="machine", label="Machine", listed=machines, known=machine, folded=True,
             redraws=True),
        Pick(name="material", label="Material", listed=materials, known=material, folded=True,
             redraws=True),
        plate_size(redraws=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a job bring metal and machine; a pick opens, another question closes the answer."""
        brought: dict[str, Any] = {}
        if "job" in given:
            one = job_list.job(given["job"])
            brought = {
                "material": kept(one.material, materials()),
                "machine": kept(one.machine, machines()),
                "thickness": plate_of(one),
            }
        if given.keys() & {"job", "machine", "material", "thickness"}:
            brought |= {"pick": NONE, "opened": False}
        if given.get("pick", NONE) != NONE:
            brought["opened"] = True
        return brought

    def part(self, result: Line, system: str) -> CutterChoice:
        """Draw the cutters in a row; then the one to take, the one picked, and why."""
        return cutters_page(result, system)

    def work_out(
        self, *, opened: bool, pick: str, job: str, machine: str, material: str,
        thickness: float,
    ) -> Line:  # fmt: skip
        """Let the shop's lists say what fits, and line some of it up.

        Raises
        ------
        SeatworkError
            If the lists hold no such material or machine, or no cutter has that letter.
        """
        place, stock = wanted(job), shop()
        where = Where(
            material=material,
            machine=machine,
            thickness=thickness if thickness <= THICKEST_SHEET else None,
            hole_diameter=place.hole_diameter,
        )
        choices = choose(seat=place.seat, where=where, shop=stock)
        shown = lined_up(choices, place.seat, stock)
        if not shown:
            raise SeatworkError(
                job, "the shop's list has no such cutter at all", "take another job"
            )
        picked = "" if pick == NONE else pick
        if picked and LETTERS.index(picked) >= len(shown):
            raise SeatworkError(
                pick,
                f"only {len(shown)} cutters stand here",
                f"pick A to {LETTERS[len(shown) - 1]}",
            )
        return Line(
            wanted=place,
            material=material,
            machine=machine,
            thickness=thickness,
            choices=choices,
            shown=shown,
            pick=picked,
            opened=opened,
        )

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
        lines = (
            "What fits: angle, body over the seat, nose or pilot in the hole, shank in the "
            "machine; sizes by the shop's list of cutters, which your shop can change.",
            "The order: a judgement of the trade by chatter, chip room, rake, burrs, pilot and "
            "state; common practice, no source.",
            f"Likely quiet, may sing: {NOTE}.",
            *(rule_line(name) for name in RULES[type(result.wanted.seat)]),
            "Sheet thickness and seats: examples from the cider mill.",
            *([f"Counterbore: {result.wanted.bore}."] if result.wanted.bore else []),
        )
        if not result.opened:
            return lines
        fits = tuple(f"{one.tool.name}: does it." for one in result.choices.ranked)
        others = tuple(f"{one.tool.name}: {one.sentence}." for one in result.choices.refused)
        return (*lines, *fits, *others, result.choices.would_do)


cutters = Cutters
