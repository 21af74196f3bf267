"""A plan told to a learner: sizes, steps, stop and checks, each as lines to read."""

from dataclasses import dataclass

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.plan import Plan, make_plan
from seatwork.rows import Blocks, Row, Rows, Shown
from seatwork.show.plainly import plainly, step_plainly


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class PlanSaid(Shown):
    """A plan, and what a lesson looks at in it.

    Parameters
    ----------
    plan : Plan
        The plan itself.
    long_way : str
        Lines of Python that make it.

    Examples
    --------
    >>> from seatwork import show
    >>> hub = show.plan("⌀7/8 THRU", "1018 steel", "knee mill")
    >>> hub.steps
    1: lead drill
    2: drill
    3: deburr the far side
    """

    plan: Plan
    long_way: str

    def code(self) -> str:
        """Return the long way: lines to run in a cell of their own."""
        return self.long_way

    def card(self, name: str) -> object:
        """Return the job card, the same as `Plan.card` makes.

        Parameters
        ----------
        name : str
            What stands at its top.
        """
        return self.plan.card(name=name)

    @property
    def sizes(self) -> Rows:
        """The sizes of every seat, with limits."""
        return Rows(row for seat in self.plan.seats for row in seat.size_rows(self._system))

    @property
    def steps(self) -> Rows:
        """The steps by name, in their order."""
        names = [step.name for seat in self.plan.seats for step in seat.operations]
        return Rows(Row(label=str(at), text=name) for at, name in enumerate(names, 1))

    def step(self, number: int) -> Rows:
        """Return everything said of one step.

        Parameters
        ----------
        number : int
            The step, 1 for the first [-].

        Raises
        ------
        SeatworkError
            If there is no such step.
        """
        told = [
            step_plainly(step, rows, self._system)
            for seat in self.plan.seats
            for step, rows in zip(seat.operations, seat.operation_rows(self._system), strict=True)
        ]
        if not isinstance(number, int) or not 1 <= number <= len(told):
            raise SeatworkError(
                number, "the plan has no such step", f"give a number from 1 to {len(told)}"
            )
        return told[number - 1]

    @property
    def stop(self) -> Rows:
        """Where to touch, and how far to travel."""
        return plainly(row for seat in self.plan.seats for row in seat.stop_rows(self._system))

    @property
    def checks(self) -> Rows:
        """What was looked at, each with its verdict in words."""
        return plainly(row for seat in self.plan.seats for row in seat.check_rows())

    @property
    def questions(self) -> Rows:
        """What to ask before the first cut."""
        return plainly(Row(label="ask", text=one) for one in self.plan.questions)

    def size(self, about: str) -> Rows:
        """Return the size that is about something.

        Parameters
        ----------
        about : str
            Such as ``straight land`` or ``diameter at the face``.

        Raises
        ------
        SeatworkError
            If the plan has no size of that name.
        """
        found = Rows(row for row in self.sizes if row.label == about)
        if not found:
            known = tuple(dict.fromkeys(row.label for row in self.sizes))
            raise SeatworkError(
                str(about)[:60], "the plan has no such size", f"write {' or '.join(known)}"
            )
        return found

    @property
    def _system(self) -> str:
        return self.plan.callout.system

    def _line(self) -> str:
        return self.plan._line()

    def _blocks(self) -> Blocks:
        yield "Sizes", self.sizes
        yield "Steps", self.steps
        yield "Ask first", self.questions


def plan(
    note: str,
    material: str,
    machine: str,
    *,
    screw: str = "",
    plate: str = "",
    edge: str = "",
    slope: float | None = None,
) -> PlanSaid:
    """Plan a print note, with the sizes of the part typed as the shop writes them.

    Parameters
    ----------
    note : str
        The note as it stands on the print.
    material, machine : str
        Names in the shop's lists.
    screw : str
        The screw, where the note does not name it.
    plate : str
        Thickness of the part at the hole.
    edge : str
        Distance from the hole's center to the nearest edge.
    slope : float, optional
        Slope of a raw pad, from square to the hole [deg].

    Returns
    -------
    PlanSaid
        The plan, to ask for ``sizes``, ``steps``, ``step(2)``, ``stop``, ``checks``.

    Raises
    ------
    SeatworkError
        As `seatwork.plan.make_plan` does.

    Examples
    --------
    >>> thick = plan("2X ⌀.266 THRU ⌵ ⌀.507 X 82° NS & FS", "1018 steel", "knee mill",
    ...              plate="3/8 in")
    >>> thick.size("straight land")
    straight land: 0.098 in (2.48 mm)
    """
    given = {"thickness": plate, "edge": edge}
    made = make_plan(
        note,
        screw=screw or None,
        material=material,
        machine=machine,
        thickness=units.length(plate) if plate else None,
        edge=units.length(edge) if edge else None,
        slope=slope,
    )
    named = [f"screw={screw!r}"] if screw else []
    named += [f"material={material!r}", f"machine={machine!r}"]
    named += [f"{name}=sw.units.length({text!r})" for name, text in given.items() if text]
    named += [f"slope={slope:g}"] if slope is not None else []
    lines = "".join(f"    {one},\n" for one in (repr(note), *named))
    return PlanSaid(plan=made, long_way=f"import seatwork as sw\n\nsw.make_plan(\n{lines})")
