"""A part at work: what was said of it, what comes of that, where it is kept; no page."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from seatwork.benches.build.listed import kept as listed_or_first
from seatwork.benches.build.listed import machines, materials, shop
from seatwork.benches.part.found import Finder, SeatFound
from seatwork.benches.part.kept import KeptPart
from seatwork.benches.part.picture import text_of
from seatwork.benches.part.state import GIVEN, PartState, Seat, seat_of, texts, typed_of
from seatwork.drawings.scene import Look
from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection
from seatwork.plan import Plan
from seatwork.shop.folder import find
from seatwork.shop.house.house_rules import HouseRules
from seatwork.shop.house.house_rules import rules as rules_in_force

if TYPE_CHECKING:
    from seatwork.cards import Pages

DEMONSTRATION = {
    "name": "hopper plate",
    "note": "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    "material": "6061 aluminum",
    "machine": "bench drill press",
    "thickness": ".250 in",
}
"""What the page opens on, and what its stored picture shows."""

OPENED = "my_part"
"""What the part is kept under, where nothing else is said."""


class PartDesk:
    """Everything of the page of a part but the page: see `seatwork.benches.my_part`.

    Parameters
    ----------
    note, material, machine, screw, thickness, edge, engagement, slope, seats, rules, readings
        As `my_part` takes them.
    name, keep, system, palette, projector
        As `my_part` takes them.

    Raises
    ------
    SeatworkError
        If something given is not what it should be.
    """

    def __init__(
        self,
        note: str | None = None,
        *,
        material: str | None = None,
        machine: str | None = None,
        screw: str = "",
        thickness: str = "",
        edge: str = "",
        engagement: str = "",
        slope: str = "",
        seats: Sequence[Mapping[str, str]] | None = None,
        rules: Mapping[str, str] | None = None,
        readings: Sequence[Mapping[str, Any]] = (),
        name: str = "my part",
        keep: str | None = None,
        system: str | None = None,
        palette: str | None = None,
        projector: bool = False,
    ) -> None:
        elsewhere = (screw, thickness, edge, engagement, slope)
        given = zip(GIVEN, (note, material, machine, *elsewhere), strict=True)
        said = {word: text for word, text in given if text is not None and str(text)}
        if said and seats:
            raise SeatworkError(", ".join(said), "notes are given in two ways", "put it into seats")
        bare = not (said or seats or readings or rules)
        system = system or rules_in_force().word("display.system")
        self._look = Look(system=system, palette=palette or "light", projector=projector)
        self.palette = palette
        self._finder = Finder(shop())
        self._followers: list[Callable[[], None]] = []
        begin = PartState(
            name=name,
            seats=_seats(said, seats),
            rules=texts(rules or {}, "rules"),
            readings=tuple(typed_of(one) for one in readings),
        )
        self.trouble = ""
        self._kept = KeptPart(find() if bare or keep else None, keep or OPENED)
        self._take(self._opened(begin), begin)

    def _opened(self, begin: PartState) -> PartState:
        """Return what was kept, or what it begins with; a spoiled file is left as it is."""
        try:
            return self._kept.read() or begin
        except SeatworkError as error:
            self.trouble = str(error)
            self._kept = KeptPart(None, OPENED)
            return begin

    def _take(self, state: PartState, begin: PartState) -> None:
        """Take on a state; one that can no longer be worked out gives way to the first."""
        try:
            self.state, self.found = state, self._finder.find(state)
        except SeatworkError as error:
            if state is begin:
                raise
            self.trouble = str(error)
            self._kept = KeptPart(None, OPENED)
            self.state, self.found = begin, self._finder.find(begin)

    @property
    def system(self) -> str:
        """Unit system named first."""
        return self._look.system

    @property
    def seat(self) -> SeatFound:
        """The note being looked at, and what came of it."""
        return self.found.seats[self.state.at]

    @property
    def plan(self) -> Plan:
        """The plan of the note being looked at.

        Raises
        ------
        SeatworkError
            If it cannot be read or planned, with the reason.
        """
        if self.seat.plan is None:
            raise self.seat.trouble or SeatworkError(self.state.seat.note, "no plan", "change it")
        return self.seat.plan

    @property
    def plans(self) -> dict[str, Plan]:
        """The plans there are, by the name of their note."""
        return self.found.plans

    @property
    def inspection(self) -> Inspection:
        """What the readings say."""
        return self.found.inspection

    @property
    def rules(self) -> HouseRules:
        """The house rules that hold for this part."""
        return self._finder.shop_of(self.state).rules

    def house_rule(self, name: str) -> str:
        """Return a rule as the house has it, whatever this part changes."""
        return self._finder.shop.rules[name].text

    @property
    def text(self) -> str:
        """What came of every note, with all its numbers, and the verdicts."""
        told = [text_of(one, self.system) for one in self.found.seats]
        told += [self.inspection.summary] if self.state.readings else []
        return "\n".join(told)

    def __repr__(self) -> str:
        return self.text

    def look(self, *, dark: bool = False) -> Look:
        """Return how its picture looks, on a dark page or a light one."""
        palette = self.palette or ("dark" if dark else "light")
        return replace(self._look, palette=palette)

    def use(self, system: str) -> "PartDesk":
        """Name another unit system first; the part stays what it is."""
        self._look = replace(self._look, system=system)
        self._tell()
        return self

    def set(self, **given: str) -> "PartDesk":
        """Change what is said of the seat being looked at.

        Parameters
        ----------
        **given : str
            Any of ``name``, ``note``, ``material``, ``machine``, ``screw``, ``thickness``,
            ``edge``, ``engagement`` and ``slope``, as typed.

        Returns
        -------
        PartDesk
            Itself.

        Raises
        ------
        SeatworkError
            If there is no such word, or its text cannot be one; nothing is changed then.
        """
        unknown = [word for word in given if word not in ("name", *GIVEN)]
        if unknown:
            raise SeatworkError(unknown[0], "a seat has no such word", f"set {', '.join(GIVEN)}")
        if "name" in given and given["name"] != self.state.seat.name:
            self._refuse_name(given["name"])
        return self._go(self.state.with_seat(**given))

    def change_rule(self, name: str, text: str) -> "PartDesk":
        """Let a house rule hold otherwise for this part; an empty text gives it back.

        Raises
        ------
        SeatworkError
            If there is no such rule, or it cannot have that value; nothing is changed then.
        """
        left = {rule: value for rule, value in self.state.rules.items() if rule != name}
        return self._go(replace(self.state, rules=left | ({name: text} if text else {})))

    def measure(self, part: str, feature: str = "", **cells: str) -> "PartDesk":
        """Write down the readings of one part; those of before at the same seat go.

        Parameters
        ----------
        part : str
            The part's mark, such as L07-1.
        feature : str
            The seat, by the name the blank sheet gives it; may be left out where there is one.
        **cells : str
            Readings by the blank sheet's columns, ``_`` for a space: ``diameter=".392 in"``.
        """
        named = {word.replace("_", " "): text for word, text in cells.items()}
        return self.write_down(part, feature or next(iter(self.found.cuts), ""), named)

    def write_down(self, part: str, feature: str, cells: Mapping[str, str]) -> "PartDesk":
        """Write down the readings of one part by the headings of the blank sheet."""
        return self._go(self.state.with_reading(feature, part, cells))

    def add(self, name: str) -> "PartDesk":
        """Add another note of the same part and look at it."""
        return self._go(self.state.with_another(name))

    def take_out(self) -> "PartDesk":
        """Take the note being looked at out of the part."""
        return self._go(self.state.without())

    def go_to(self, name: str) -> "PartDesk":
        """Look at another note, by its name."""
        names = [seat.name for seat in self.state.seats]
        if name not in names:
            raise SeatworkError(name, "no note is called so", f"there are {', '.join(names)}")
        return self._go(replace(self.state, at=names.index(name)))

    def card(self) -> "Pages":
        """Set the part as cards: one for each seat, with a summary where there are several notes.

        Raises
        ------
        SeatworkError
            If no note could be planned.
        """
        from seatwork.cards import job_card, part_card

        if len(self.state.seats) == 1:
            return job_card(self.plan, name=self.state.seat.name)
        left_out = [
            f"{one.seat.name}: {one.trouble}" for one in self.found.seats if one.plan is None
        ]
        return part_card(self.state.name, self.plans, left_out=left_out)

    def save_card(self) -> Path:
        """Write the card as a PDF into the workbook's ``my_part`` folder, or the working one.

        Returns
        -------
        Path
            Where it was written.
        """
        folder = find()
        name = self._kept.path.stem if self._kept.path else OPENED
        path = (folder / "my_part" if folder else Path.cwd()) / f"{name}_card.pdf"
        self.card().save(path)
        return path

    def code(self) -> str:
        """Return one line that makes the same page again."""
        data = self.state.as_data()
        said = [f"name={self.state.name!r}"] if self.state.name != "my part" else []
        seats = [{word: text for word, text in seat.items() if text} for seat in data["seats"]]
        said += [f"seats={seats!r}"] if self.state.seats != (demonstration(),) else []
        said += [f"{word}={data[word]!r}" for word in ("rules", "readings") if data[word]]
        if self.system != rules_in_force().word("display.system"):
            said.append(f"system={self.system!r}")
        at = f".go_to({self.state.seat.name!r})" if self.state.at else ""
        return f"benches.my_part({', '.join(said)}){at}"

    def attach(self, follower: Callable[[], None]) -> None:
        """Let someone hear of every new state."""
        self._followers.append(follower)

    def detach(self, follower: Callable[[], None]) -> None:
        """Let someone hear no longer."""
        if follower in self._followers:
            self._followers.remove(follower)

    def _refuse_name(self, name: str) -> None:
        taken = {seat.name for seat in self.state.seats}
        if not name.strip() or name.strip() in taken:
            raise SeatworkError(name or "nothing", "each note wants a name of its own", "name it")

    def _go(self, state: PartState) -> "PartDesk":
        """Work a state out, take it on, keep it; what cannot be kept is told and still holds."""
        found = self._finder.find(state)
        self.state, self.found = state, found
        self.trouble = self._unkept(state)
        self._tell()
        return self

    def _unkept(self, state: PartState) -> str:
        try:
            self._kept.write(state)
        except SeatworkError as error:
            return str(error)
        return ""

    def _tell(self) -> None:
        for follower in tuple(self._followers):
            follower()


def demonstration() -> Seat:
    """Return the seat the page opens on, with the shop's own first names where it lacks those."""
    lists = {"material": materials, "machine": machines}
    held = {word: listed_or_first(DEMONSTRATION[word], names()) for word, names in lists.items()}
    return seat_of(DEMONSTRATION | held)


def _seats(said: Mapping[str, str], seats: Sequence[Mapping[str, str]] | None) -> tuple[Seat, ...]:
    """Return the seats given, with material and machine of the demonstration where none is."""
    usual_seat = demonstration()
    if seats is None:
        if not said:
            return (usual_seat,)
        seats = [{"name": "my part" if "note" in said else usual_seat.name, **said}]
        if "note" not in said:
            seats = [{"note": usual_seat.note, "thickness": usual_seat.thickness, **seats[0]}]
    usual = {"material": usual_seat.material, "machine": usual_seat.machine}
    found = tuple(seat_of({**usual, "name": f"note {n}", **one}) for n, one in enumerate(seats, 1))
    if not found or len({seat.name for seat in found}) < len(found):
        raise SeatworkError("seats", "each note wants a name of its own", "name them apart")
    return found
