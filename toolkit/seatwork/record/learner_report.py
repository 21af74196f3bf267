"""One learner's report: theory, practical and safety as three facts, and no sum of them."""

import json
from collections.abc import Sequence
from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code
from seatwork.marking.speaking import Speaker
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.record.cells import Cell, Counting
from seatwork.record.class_now import Class
from seatwork.record.class_picture import OWN_SLIP
from seatwork.record.keeping import Record
from seatwork.shop.lists.outline import read_outline

ASK = ": ask the learner"
MOST_TOLD = 2
"""Slips that a report says in words, for each sitting."""

NOBODY = "This page clears nobody to run a machine; the instructor does."


@dataclass(frozen=True, slots=True, kw_only=True)
class Theory:
    """How one sitting of a sheet stands.

    Parameters
    ----------
    title : str
        Of the sheet.
    sitting : int
        Which.
    points, of : float or None
        Points [-]; None while a person must look, or without a paper.
    outcome : str
        How it stands, in words.
    counts : bool
        Whether this sitting counts.
    """

    title: str
    sitting: int
    points: float | None
    of: float | None
    outcome: str
    counts: bool

    def __repr__(self) -> str:
        return f"<Theory {self.title}, sitting {self.sitting}: {self.outcome}>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Earned:
    """What was earned and asked of one code of the outline.

    Parameters
    ----------
    code : str
        Of the outline.
    points, of : float
        Points earned and asked, on the sittings that count [-].
    accepted, cut : int
        Parts accepted and parts inspected.
    """

    code: str
    points: float = 0.0
    of: float = 0.0
    accepted: int = 0
    cut: int = 0

    def __repr__(self) -> str:
        return f"<Earned {self.code}: {self}>"

    def __str__(self) -> str:
        theory = f" {self.points:g}/{self.of:g}" if self.of else ""
        part = f" part {self.accepted} of {self.cut}" if self.cut else ""
        return f"{self.code}{theory}{part}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """What the record says of one learner on a day.

    Parameters
    ----------
    learner, day, counts : str
        Whom, when, and which sitting counts by house rule.
    theory : tuple of Theory
        Sheet by sheet, sitting by sitting.
    practical, safety : tuple of str
        A line for each part, and for each signature on paper.
    outline : tuple of Earned
        Codes that were asked or cut.
    not_asked : tuple of str
        Codes of the outline that no sheet and no part of this learner asked yet.
    left : str
        Why the learner left the course; empty if they did not.
    """

    learner: str
    day: str
    counts: str
    theory: tuple[Theory, ...]
    practical: tuple[str, ...]
    safety: tuple[str, ...]
    outline: tuple[Earned, ...]
    not_asked: tuple[str, ...]
    left: str = ""

    def __repr__(self) -> str:
        return f"<Report of {self.learner} on {self.day}: {len(self.theory)} sittings>"

    def __str__(self) -> str:
        return "\n".join(self.lines())

    def lines(self, name: str = "") -> list[str]:
        """Return the report as lines of text.

        Parameters
        ----------
        name : str
            To stand beside the code.
        """
        head = f"Report of {self.learner}{f', {name}' if name else ''}, as of {self.day}"
        theory = [
            f"  {one.title}, sitting {one.sitting}: {one.outcome}"
            + ("" if one.counts else " (does not count)")
            for one in self.theory
        ]
        earned = " · ".join(map(str, self.outline)) or "nothing asked yet"
        return [
            head,
            *([f"Left the course: {self.left}"] if self.left else []),
            f"THEORY (the {self.counts} sitting counts)",
            *(theory or ["  nothing handed out"]),
            "PRACTICAL",
            *([f"  {line}" for line in self.practical] or ["  no part inspected"]),
            "SAFETY",
            *([f"  {line}" for line in self.safety] or ["  nothing signed"]),
            "OUTLINE (points earned/asked; parts accepted of cut)",
            f"  {earned}",
            f"  not asked yet: {' '.join(self.not_asked) or 'nothing'}",
            NOBODY,
        ]


def report(record: Record, learner: str, day: str, *, counting: Counting | None = None) -> Report:
    """Return the report of one learner.

    Parameters
    ----------
    record : Record
        The term record.
    learner, day : str
        The code; year-month-day.
    counting : Counting, optional
        The house rules; those in force if not given.

    Raises
    ------
    SeatworkError
        If nobody of that code is in the record.
    """
    learner_code(learner)
    with record.reading() as connection:
        now = Class(connection, day, counting=counting)
    return report_in(now, learner)


def report_in(now: Class, learner: str, say: Speaker = str) -> Report:
    """Return the report of one learner of a class that was read.

    Parameters
    ----------
    now : Class
        The class as it stands.
    learner : str
        The code.
    say : callable
        Says how sheets stand in the learner's language; what an instructor wrote stays.
    """
    if learner not in now.learners():
        raise SeatworkError(learner, "nobody of that code is in the record", "check the code")
    cells = {name: own for (who, name), own in now.grid().items() if who == learner}
    outline = _outline(now, learner, cells)
    asked = {one.code for one in outline}
    said = now.state(f"course/{learner}")
    return Report(
        learner=learner,
        day=now.day,
        counts=now.counting.sitting,
        theory=tuple(_theory(now, cells, _slips(now, learner, say), say)),
        practical=tuple(_practical(now, learner, say)),
        safety=tuple(_safety(now, learner, say)),
        outline=tuple(outline),
        not_asked=tuple(code for code in read_outline() if code not in asked),
        left=said.reason if said is not None and said.word == "withdrawn" else "",
    )


def _slips(now: Class, learner: str, say: Speaker) -> dict[tuple[str, int], str]:
    """Return the slips of each sitting, in sentences as they are told beside it."""
    found = {}
    for row in now.forms():
        form = now.rows.forms[row.id]
        name = now.rows.sheets[form.sheet].name
        paper, _ = now.paper(row.id, now.due(learner, name, form.sitting))
        if row.learner != learner or paper is None:
            continue
        mark = now.mark(paper)[0]
        rows = now.rows.answers[mark.fact].values() if mark is not None else ()
        codes = sorted({code for one in rows for code in one.slips.split()})
        found[name, form.sitting] = _slips_told(codes, say)
    return found


def _slips_told(codes: Sequence[str], say: Speaker) -> str:
    """Say the first slips of a sitting to the learner, and how many more there are."""
    said = list(dict.fromkeys(SLIPS.get(code, OWN_SLIP) for code in codes))
    more = len(said) - MOST_TOLD
    rest = [f"{more} more in the feedback."] if more > 0 else []
    return " ".join(["." if said else "", *map(say, [*said[:MOST_TOLD], *rest])])


def _theory(
    now: Class, cells: dict[str, list[Cell]], slips: dict[tuple[str, int], str], say: Speaker
) -> list[Theory]:
    titles = {row.name: row.title for row in now.rows.sheets.values()}
    return [
        Theory(
            title=say(titles[name]),
            sitting=cell.sitting,
            points=cell.points,
            of=cell.of,
            outcome=_outcome(now, name, cell, say) + slips.get((name, cell.sitting), ""),
            counts=cell is now.counted(own),
        )
        for name, own in sorted(cells.items())
        for cell in own
    ]


def _told(why: str) -> str:
    """Say to the learner what the instructor is told to look at or to ask."""
    if why.endswith(ASK):
        return why.removesuffix(ASK)
    if not why.endswith(": look"):
        return why
    return f"{why.replace(': look', '')}; your instructor knows of it"


def _outcome(now: Class, name: str, cell: Cell, say: Speaker) -> str:
    why = say(_told(cell.why))
    if cell.percent is None:
        word = "your instructor looks at it" if cell.word == "needs a person" else cell.word
        return say(word) + (f": {why}" if cell.why else "")
    need = next(row.pass_mark for row in now.rows.sheets.values() if row.name == name)
    points = say(f"{cell.points:g} of {cell.of:g}, {cell.percent:.0f}%")
    passed = say("passed" if cell.word == "passed" else f"not yet (pass mark {need:.0%})")
    late = f", {say('after the day')}" if cell.late else ""
    return f"{points}: {passed}{late}" + (f"; {why}" if cell.why else "")


def _practical(now: Class, learner: str, say: Speaker) -> list[str]:
    found = []
    for row in sorted(now.heads.of("part"), key=lambda one: (one.day, one.subject)):
        if row.learner == learner and row.id in now.heads.heads("part", row.subject):
            one = now.rows.parts[row.id]
            looked = json.loads(one.looked_at)
            seen = "".join(f", {name} {said}" for name, said in sorted(looked.items()))
            part = one.feature or say("part")
            found.append(f"{part}, {one.part}: {say(one.verdict)}{seen} ({row.day})")
    return found


def _safety(now: Class, learner: str, say: Speaker) -> list[str]:
    found = []
    for row in sorted(now.heads.of("sign_off"), key=lambda one: (one.day, one.subject)):
        if row.learner == learner and row.id in now.heads.heads("sign_off", row.subject):
            one = now.rows.sign_offs[row.id]
            word = say("signed on paper" if one.word == "signed" else "signature withdrawn")
            found.append(f"{say(one.machine)}: {word}, {row.author}, {row.day}; {one.paper_at}")
    return found


def _outline(now: Class, learner: str, cells: dict[str, list[Cell]]) -> list[Earned]:
    """Return points by code from the sittings that count, and parts by code beside them."""
    found: dict[str, list[float]] = {}
    counted = {name: now.counted(own) for name, own in cells.items()}
    for row in now.forms():
        form = now.rows.forms[row.id]
        cell = counted.get(now.rows.sheets[form.sheet].name)
        if row.learner == learner and cell is not None and cell.sitting == form.sitting:
            for code, points, of in _points(now, row.id, cell):
                line = found.setdefault(code, [0.0, 0.0, 0, 0])
                line[0] += points
                line[1] += of
    for row in now.heads.of("part"):
        if row.learner == learner and row.id in now.heads.heads("part", row.subject):
            for code in now.rows.parts[row.id].codes.split():
                line = found.setdefault(code, [0.0, 0.0, 0, 0])
                line[2] += now.rows.parts[row.id].verdict == "accept"
                line[3] += 1
    order = list(read_outline())
    listed = sorted(found, key=lambda code: (order.index(code) if code in order else 99, code))
    return [
        Earned(code=code, points=found[code][0], of=found[code][1],
               accepted=int(found[code][2]), cut=int(found[code][3]))
        for code in listed
    ]  # fmt: skip


def _points(now: Class, form: str, cell: Cell) -> Sequence[tuple[str, float, float]]:
    """Return code, points and points asked, question by question, of a form that has its points."""
    if cell.percent is None:
        return []
    row = now.rows.forms[form]
    head = now.heads.all[form]
    name = now.rows.sheets[row.sheet].name
    paper, _ = now.paper(form, now.due(str(head.learner), name, row.sitting))
    mark = now.mark(paper)[0] if paper is not None else None
    given = now.given(form)
    return [
        (code, given.get(question, one.points) or 0.0, one.of)
        for question, one in (now.rows.answers[mark.fact] if mark is not None else {}).items()
        for code in now.rows.codes[row.sheet, question]
    ]
