"""The speeds bench: from a rule to the step to set, each number with where it comes from."""

from fractions import Fraction
from typing import ClassVar

from seatwork import cutting
from seatwork.benches.bank.speeds_sums import FREE, Turning, turned_job, turned_jobs
from seatwork.benches.bank.speeds_words import ladder, speed_sum
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick
from seatwork.benches.build.listed import kept, machine, machines, material, materials, shop
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import MOST, seat_size
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.cutting import SHORTCUTS
from seatwork.cutting.shortcuts import SPREAD
from seatwork.drawings.views.speeds_view import SpeedSum, SpeedsView
from seatwork.shop.choosing.spindles import RATIO_RULES, spindle_for
from seatwork.units import show_number

EXACT = "exact"
CAP = "speeds.countersink_cap"
FIRST = "counterbore 7/8 in 1018 (crank hub)"
CUT = ("operation", "diameter", "machine", "material")
"""What a job brings, and what makes a job one's own once it is changed."""


class Speeds(Bench[Turning]):
    """Show how a spindle speed is come by, and which step of the machine it gives.

    Opens on a counterbore that is to turn one third slower than a drill, which is not a third
    of its speed.

    Examples
    --------
    >>> Speeds(job="spotface 1-1/4 (frame pad, drill press)").readouts()
    [['Set', 'none: machine too fast']]
    """

    title = "Speeds: which step of the machine?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "belt")
    view = SpeedsView
    controls: ClassVar[tuple[Control, ...]] = (
        Choice(name="operation", label="Operation", options=tuple(RATIO_RULES)),
        seat_size("diameter", "Diameter", 3.0, 60.0),
        Pick(name="machine", label="Machine", listed=machines, known=machine),
        Pick(name="job", label="Job", listed=turned_jobs, known=turned_job, start=FIRST,
             others="a screw", folded=True),
        Pick(name="material", label="Material", listed=materials, known=material, folded=True),
        Choice(name="tool", label="Cutter", options=("hss", "carbide", "carbon steel"),
               start="hss", folded=True),
        Number(name="hole", label="Hole", low=0.0, high=60.0, most=MOST, start=0.0,
               why="it is smaller than the seat", folded=True),
        Choice(name="constant", label="Shortcut", options=(EXACT, *SHORTCUTS), start=EXACT,
               folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a job bring its own cut; any of it changed makes the job one's own."""
        if (one := turned_job(given.get("job", FREE))) is not None:
            sizes = (one.seat, one.across, kept(one.machine, machines()))
            return dict(zip(CUT, (*sizes, kept(one.material, materials())), strict=True))
        return {"job": FREE} if given.keys() & set(CUT) else {}

    def part(self, result: Turning, system: str) -> SpeedSum:
        """Draw the sum step by step beside the chart."""
        return speed_sum(result, system)

    def work_out(
        self, *, operation: str, diameter: float, machine: str, job: str, material: str,
        tool: str, hole: float, constant: str,
    ) -> Turning:  # fmt: skip
        """Work out the speed by the house rules and pick the machine's step.

        Raises
        ------
        SeatworkError
            If the material's list has no speed.
        """
        stock = shop()
        turned_on = stock.machine(machine)
        spindle = spindle_for(
            operation,
            diameter=diameter,
            hole_diameter=min(hole, diameter),
            material=stock.material(material),
            machine=turned_on,
            rules=stock.rules,
            tool_material=tool,
        )
        capped = operation in ("countersink", "chamfer")
        slower = operation in ("counterbore", "spotface")
        drill = spindle.raw / spindle.ratio
        return Turning(
            operation=operation,
            material=material,
            machine=turned_on,
            spindle=spindle,
            cap=stock.rules.number(CAP) if capped else None,
            misread=cutting.operation_speed(drill_speed=drill, ratio=1 / 3) if slower else None,
            shortcut=SHORTCUTS.get(constant),
        )

    def measures(self, result: Turning) -> tuple[Measure, ...]:
        """Give the step to set, the edge's speed at it, and a shortcut's result."""
        step = result.spindle.step
        if step.spindle_speed is None:
            found: tuple[Measure, ...] = (Measure("Set", "none: machine too fast", kind="word"),)
        else:
            edge = cutting.cutting_speed(
                spindle_speed=step.spindle_speed, diameter=result.spindle.diameter
            )
            found = (
                Measure("Set", step.spindle_speed, kind="spindle"),
                Measure("Speed at the rim", edge, kind="speed"),
            )
        if result.shortcut is None or result.short is None:
            return found
        error = f"{show_number(abs(100 * result.shortcut.error), 1)} %"
        way = "fast" if result.shortcut.error > 0 else "slow"
        short = Measure(f"By {result.shortcut.name}", result.short, kind="spindle")
        return (*found, short, Measure("Shortcut is", f"{error} {way}", kind="word"))

    def sources(self, result: Turning) -> tuple[str, ...]:
        """Tell where each number comes from, and what others publish."""
        spindle = result.spindle
        lines = [" ".join(rung) + "." for rung in ladder(result, self.system)]
        if spindle.rule:
            lines.append(rule_line(spindle.rule))
        if result.cap is not None:
            lines += [rule_line(CAP), rule_line("speeds.countersink_diameter")]
        lines += [rule_line("speeds.range_end"), rule_line("speeds.step")]
        lines.append(fact_line(f"Speeds for {result.material}", spindle.source, spindle.confirmed))
        for one in SPREAD:
            speed = show_number(result.drill * one.ratio, 0)
            what = f"Others: {one.operation} at {Fraction(one.ratio).limit_denominator(100)}"
            lines.append(fact_line(f"{what}, here {speed} rev/min", one.source, one.confirmed))
        lines += [
            f"Shortcut {one.name}: {show_number(100 * one.error, 2)} % off. Source: {one.source}."
            for one in SHORTCUTS.values()
        ]
        return tuple(lines)


speeds = Speeds
