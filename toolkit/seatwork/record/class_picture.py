"""The class in one picture, and the two lists that decide next week: slips, and who needs what."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.record.cells import Cell, Counting
from seatwork.record.class_now import Class
from seatwork.record.keeping import Record
from seatwork.record.piling import waiting

FEW = 5
"""Learners under whom a slip is not counted on a projector: a small number points at somebody."""
SIGNS = {
    "handed out": "handed out",
    "not here": "not here",
    "excused": "excused",
    "paper lost": "paper lost",
    "void": "void",
    "withdrawn": "left",
    "needs a person": "?",
}
"""How a cell without points shows."""
LEGEND = (
    "The number is percent of the points; + passed; - not yet; r2 from the re-test;"
    " * after the day; ? a person must look; ... re-test handed out"
)
TITLE, CODE = 12, 8
"""Letters of a column and of a code at least."""
OWN_SLIP = "a slip of a question type of your own"


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One learner in the picture.

    Parameters
    ----------
    learner : str
        The code.
    cells : dict of str to str
        By sheet, how it stands.
    parts : str
        Parts accepted of parts inspected; empty if there are none.
    signed : tuple of str
        Machines that somebody signed for on paper.
    left : bool
        Whether the learner left the course.
    """

    learner: str
    cells: Mapping[str, str]
    parts: str = ""
    signed: tuple[str, ...] = ()
    left: bool = False

    def __repr__(self) -> str:
        return f"<Line of {self.learner}: {len(self.cells)} sheets>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Slip:
    """A slip that several learners of a class made on a sheet.

    Parameters
    ----------
    sheet, code, sentence : str
        Where, and which.
    learners : tuple of str
        Who made it.
    """

    sheet: str
    code: str
    sentence: str
    learners: tuple[str, ...]

    def __repr__(self) -> str:
        return f"<Slip {self.code} on {self.sheet}: {len(self.learners)} learners>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """The class as it stands on a day.

    Parameters
    ----------
    day, counts : str
        The day, and which sitting of a sheet counts by house rule: best or last.
    sheets : tuple of str
        Names of the sheets, in the order in which they were handed out.
    lines : tuple of Line
        The learners.
    slips : tuple of Slip
        Slips of two learners and more, the most frequent first.
    needs : dict of str to tuple of str
        What is to be done, each with whom for.
    """

    day: str
    counts: str
    sheets: tuple[str, ...]
    lines: tuple[Line, ...]
    slips: tuple[Slip, ...]
    needs: Mapping[str, tuple[str, ...]]

    def __repr__(self) -> str:
        return f"<Picture of {len(self.lines)} learners and {len(self.sheets)} sheets, {self.day}>"

    def __str__(self) -> str:
        return "\n".join([*self.grid(), "", *self.slip_lines(), "", *self.need_lines()])

    def table(self, names: Mapping[str, str] | None = None) -> list[tuple[str, ...]]:
        """Return the picture as rows of a table, its heads first.

        Parameters
        ----------
        names : mapping of str to str, optional
            Names by code, to stand in place of codes.
        """
        known = names or {}
        heads = ("learner", *self.sheets, "parts", "signed on paper")
        rows = [
            (
                known.get(one.learner, one.learner),
                *(one.cells.get(name, "") for name in self.sheets),
                one.parts,
                "; ".join([*one.signed, *(["left the course"] if one.left else [])]),
            )
            for one in self.lines
        ]
        return [heads, *rows]

    def grid(self, names: Mapping[str, str] | None = None) -> list[str]:
        """Return the picture as lines of text, with what its signs mean below."""
        rows = self.table(names)
        wide = [max(len(row[n]) for row in rows) for n in range(len(rows[0]))]
        wide[0] = max(wide[0], CODE)
        text = ["  ".join(cell.ljust(to) for cell, to in zip(row, wide, strict=True)).rstrip()
                for row in rows]  # fmt: skip
        counts = f"as of {self.day}; the {self.counts} sitting counts (house rule record.counts)"
        return [*text, LEGEND, counts]

    def slip_lines(self, *, codes: bool = True) -> list[str]:
        """Return the slips as lines; without codes, as for a projector, only from five learners."""
        shown = [one for one in self.slips if codes or len(one.learners) >= FEW]
        least = "two" if codes else "five"
        lines = [
            f"{one.sheet} {one.code}, {len(one.learners)} learners"
            + (f" ({', '.join(one.learners)})" if codes else "")
            + f": {one.sentence}"
            for one in shown
        ]
        return [f"Slips of {least} learners and more", *(lines or ["none"])]

    def need_lines(self) -> list[str]:
        """Return who needs what next, a line for each need."""
        lines = [f"{what}: {'; '.join(who)}" for what, who in self.needs.items()]
        return ["Who needs what next", *(lines or ["nobody needs anything"])]

    def projected(self) -> list[str]:
        """Return what may be shown to the class: counts by sheet, and frequent slips; no codes."""
        lines = []
        for name in self.sheets:
            cells = [one.cells[name] for one in self.lines if name in one.cells]
            done = sum("+" in cell for cell in cells)
            lines.append(f"{name}: passed by {done} of {len(cells)}")
        return [*lines, "", *self.slip_lines(codes=False)]


def picture(record: Record, day: str, *, counting: Counting | None = None) -> Picture:
    """Return the class as it stands on a day.

    Parameters
    ----------
    record : Record
        The term record.
    day : str
        Year-month-day.
    counting : Counting, optional
        The house rules; those in force if not given.
    """
    with record.reading() as connection:
        now = Class(connection, day, counting=counting)
    grid = now.grid()
    return Picture(
        day=day,
        counts=now.counting.sitting,
        sheets=_sheets(now),
        lines=tuple(_lines(now, grid)),
        slips=tuple(_slips(now)),
        needs=_needs(now, grid),
    )


def _sheets(now: Class) -> tuple[str, ...]:
    """Name the sheets by the first day on which a form of each was handed out."""
    first: dict[str, str] = {}
    for row in now.forms():
        name = now.rows.sheets[now.rows.forms[row.id].sheet].name
        first[name] = min(first.get(name, row.day), row.day)
    return tuple(sorted(first, key=lambda name: (first[name], name)))


def _lines(now: Class, grid: dict[tuple[str, str], list[Cell]]) -> list[Line]:
    """Return a line for each learner; each table is gone through once."""
    cells: defaultdict[str, dict[str, str]] = defaultdict(dict)
    for (learner, name), own in grid.items():
        cells[learner][name] = shown(now, own)
    parts: defaultdict[str | None, list[bool]] = defaultdict(list)
    for row in now.heads.of("part"):
        if row.id in now.heads.heads("part", row.subject):
            parts[row.learner].append(now.rows.parts[row.id].verdict == "accept")
    machines = signed(now)
    return [
        Line(
            learner=learner,
            cells=cells[learner],
            parts=f"{sum(parts[learner])}/{len(parts[learner])}" if parts[learner] else "",
            signed=tuple(sorted(machines.get(learner, ()))),
            left=now.is_withdrawn(learner),
        )
        for learner in now.learners()
    ]


def signed(now: Class) -> dict[str, set[str]]:
    """Return the machines that somebody signed for on paper, by learner, as it stands."""
    found: defaultdict[str, set[str]] = defaultdict(set)
    for row in now.heads.of("sign_off"):
        one = now.rows.sign_offs[row.id]
        if row.id in now.heads.heads("sign_off", row.subject) and one.word == "signed":
            found[str(row.learner)].add(one.machine)
    return dict(found)


def shown(now: Class, cells: Sequence[Cell]) -> str:
    """Return how the sittings of a sheet show in one cell."""
    best = now.counted(list(cells))
    if best.percent is None:
        return SIGNS[best.word]
    text = f"{best.percent:.0f}" + ("+" if best.word == "passed" else "-")
    text += "*" if best.late else ""
    text += f" r{best.sitting}" if best.sitting > 1 else ""
    waits = best.why or any(cell.word == "needs a person" for cell in cells)
    text += " ?" if waits else ""
    return text + (" ..." if cells[-1].word == "handed out" else "")


def _slips(now: Class) -> list[Slip]:
    """Return the slips of two learners and more, from the papers that count."""
    found: defaultdict[tuple[str, str], set[str]] = defaultdict(set)
    for row in now.forms():
        form = now.rows.forms[row.id]
        name = now.rows.sheets[form.sheet].name
        paper, _ = now.paper(row.id, now.due(str(row.learner), name, form.sitting))
        mark = now.mark(paper)[0] if paper is not None else None
        for said in now.rows.answers[mark.fact].values() if mark is not None else ():
            for code in said.slips.split():
                found[name, code].add(str(row.learner))
    slips = [
        Slip(sheet=name, code=code, sentence=SLIPS.get(code, OWN_SLIP), learners=tuple(sorted(who)))
        for (name, code), who in found.items()
        if len(who) > 1
    ]
    return sorted(slips, key=lambda one: (-len(one.learners), one.sheet, one.code))


def _needs(now: Class, grid: dict[tuple[str, str], list[Cell]]) -> dict[str, tuple[str, ...]]:
    """Return what is to be done next, each with whom for; nothing for who left."""
    needs: defaultdict[str, list[str]] = defaultdict(list)
    for head, one in waiting(now.rows):
        needs["look at"].append(f"{one.name}, {one.sheet} ({head.id[:6]}): {one.doubt}")
    for (learner, name), cells in sorted(grid.items(), key=lambda both: both[0][::-1]):
        if now.is_withdrawn(learner):
            continue
        best, last = now.counted(cells), cells[-1]
        looks = [cell for cell in cells if cell.word == "needs a person" or (
            cell.why and cell.percent is not None)]  # fmt: skip
        for cell in looks:
            again = f" r{cell.sitting}" if cell.sitting > 1 else ""
            needs["look at"].append(f"{learner} {name}{again}: {cell.why}")
        if last.word == "not here":
            needs["ask for the paper"].append(f"{learner} {name}")
        elif last.word == "void":
            needs[f"re-test {name}"].append(learner)
        elif last.word == "paper lost":
            needs["print again, or give a re-test"].append(f"{learner} {name}")
        elif best.word == "not yet" and last.word != "handed out":
            needs[f"re-test {name}"].append(learner)
    return {what: tuple(who) for what, who in sorted(needs.items())}
