"""The speeds bench: from a rule to the step to set, each number with where it comes from."""

from fractions import Fraction
from typing import Any, ClassVar

from seatwork import cutting
from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import fact_line, rule_line
from seatwork.benches.speed_sums import Turning
from seatwork.benches.speed_words import ladder, speed_sum
from seatwork.cutting import SHORTCUTS, SPREAD
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.drawings.speeds_view import SpeedsView
from seatwork.shop.choosing.spindles import RATIO_RULES, spindle_for
from seatwork.shop.shop import Shop
from seatwork.units import show_number

EXACT = "exact"
CAP = "speeds.countersink_cap"
FREE = "my own choice"
JOBS: dict[str, dict[str, Any]] = {
    "counterbore 7/8 in 1018 (crank hub)": {
        "operation": "counterbore",
        "diameter": 22.225,
        "machine": "knee mill",
        "material": "1018 steel",
    },
    "spotface 1-1/4 on gray iron (frame pad)": {
        "operation": "spotface",
        "diameter": 31.75,
        "machine": "bench drill press",
        "material": "gray iron",
    },
    "countersink .507 in 1018 (frame)": {
        "operation": "countersink",
        "diameter": 0.507 * 25.4,
        "machine": "bench drill press",
        "material": "1018 steel",
    },
    "countersink .385 in 6061 (hopper plate)": {
        "operation": "countersink",
        "diameter": 0.385 * 25.4,
        "machine": "bench drill press",
        "material": "6061 aluminum",
    },
}
"""The cider mill's own cuts."""

FIRST = next(iter(JOBS))


class Speeds(Bench[Turning]):
    """Show how a spindle speed is come by, and which step of the machine it gives.

    Opens on a counterbore that is to turn one third slower than a drill, which is not a third
    of its speed.

    Examples
    --------
    >>> Speeds(job="spotface 1-1/4 on gray iron (frame pad)").readouts()
    [['Set', 'none: machine too fast']]
    """

    title = "Speeds: which step of the machine?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "belt")
    controls: ClassVar[tuple[Control, ...]] = ()

    def __init__(self, **given: Any) -> None:
        self._shop = Shop.at()
        self.controls = _controls(self._shop)  # type: ignore[misc]
        super().__init__(**given)

    def work_out(self, **values: Any) -> Turning:
        """Work out the speed by the house rules and pick the machine's step.

        Raises
        ------
        SeatworkError
            If the material's list has no speed.
        """
        operation, machine = values["operation"], self._shop.machine(values["machine"])
        spindle = spindle_for(
            operation,
            diameter=values["diameter"],
            hole_diameter=min(values["hole"], values["diameter"]),
            material=self._shop.material(values["material"]),
            machine=machine,
            rules=self._shop.rules,
            tool_material=values["tool"],
        )
        capped = operation in ("countersink", "chamfer")
        slower = operation in ("counterbore", "spotface")
        drill = spindle.raw / spindle.ratio
        return Turning(
            operation=operation,
            material=values["material"],
            machine=machine,
            spindle=spindle,
            cap=self._shop.rules.number(CAP) if capped else None,
            misread=cutting.operation_speed(drill_speed=drill, ratio=1 / 3) if slower else None,
            shortcut=SHORTCUTS.get(values["constant"]),
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
        told = [" ".join(rung) + "." for rung in ladder(result, self.system)]
        if spindle.rule:
            told.append(rule_line(spindle.rule))
        if result.cap is not None:
            told += [rule_line(CAP), rule_line("speeds.countersink_diameter")]
        told += [rule_line("speeds.range_end"), rule_line("speeds.step")]
        told.append(fact_line(f"Speeds for {result.material}", spindle.source, spindle.confirmed))
        for one in SPREAD:
            speed = show_number(result.drill * one.ratio, 0)
            what = f"Others: {one.operation} at {Fraction(one.ratio).limit_denominator(100)}"
            told.append(fact_line(f"{what}, here {speed} rev/min", one.source, one.confirmed))
        told += [
            f"Shortcut {one.name}: {show_number(100 * one.error, 2)} % off. Source: {one.source}."
            for one in SHORTCUTS.values()
        ]
        return tuple(told)

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; a job brings its own, any of them changed makes the job one's own."""
        read = super()._read(given, now)
        if read.get("job", FREE) != FREE:
            return JOBS[read["job"]] | read
        if read.keys() & JOBS[FIRST].keys():
            return {"job": FREE} | read
        return read


def _controls(shop: Shop) -> tuple[Control, ...]:
    """Give the controls, machines and materials being those of the shop's own lists."""
    machines = tuple(machine.name for machine in shop.machines)
    materials = tuple(material.name for material in shop.materials)
    first = JOBS[FIRST]
    known = first["machine"] in machines and first["material"] in materials
    return (
        _choice("operation", "Operation", tuple(RATIO_RULES), "counterbore"),
        Number(
            name="diameter",
            label="Diameter",
            low=3.0,
            high=60.0,
            start=first["diameter"],
            why="that is what the shop's cutters span",
        ),
        _choice("machine", "Machine", machines, first["machine"]),
        _choice("job", "Job", (*JOBS, FREE), FIRST if known else FREE, folded=True),
        _choice("material", "Material", materials, first["material"], folded=True),
        _choice("tool", "Cutter", ("hss", "carbide", "carbon steel"), "hss", folded=True),
        Number(
            name="hole",
            label="Hole",
            low=0.0,
            high=60.0,
            start=0.0,
            why="it is smaller than the seat",
            folded=True,
        ),
        _choice("constant", "Shortcut", (EXACT, *SHORTCUTS), EXACT, folded=True),
    )


def _choice(
    name: str, label: str, options: tuple[str, ...], wish: str, *, folded: bool = False
) -> Choice:
    """Give a choice that begins with `wish` where the list has it."""
    start = wish if wish in options else options[0]
    return Choice(name=name, label=label, options=options, start=start, folded=folded)


speeds = Speeds
