"""Taking in what was handed in: marked, and added to the record with what was known before."""

import hashlib
from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from sqlalchemy import Connection, select

import seatwork
from seatwork.marking.answers import AnswerFile, parse
from seatwork.marking.marker import Marked, without_doubles
from seatwork.marking.scoring import Scored
from seatwork.marking.sheets import Sheet
from seatwork.marking.submissions import Submission
from seatwork.record.facts import Fact, in_pieces
from seatwork.record.keeping import Batch, Record
from seatwork.record.piling import put_on_pile
from seatwork.record.standing import Standing
from seatwork.record.tables import answer, mark, paper
from seatwork.record.takers import Takers

A_BATCH = 200
"""Hand-ins in a transaction; each is there with its mark, or not at all."""
NEW, KNOWN, AGAIN, ANOTHER, PILE = "new", "known", "marked anew", "another", "pile"
Progress = Callable[[int], None]
Typed = dict[str, tuple[str, ...]]


@dataclass(slots=True)
class Taken:
    """What taking in came to.

    Parameters
    ----------
    marked : list of Marked
        Each hand-in, in the order it came.
    count : Counter
        How many were new, known, marked anew, another paper of a form, or put on the pile.
    another : list of Came
        Papers with other answers than one that was there.
    taken_back : list of Came
        Papers that are known, and were taken back by a person.
    before : dict of str to str
        By form, the paper that stood last when this began: each new one follows it.
    """

    marked: list[Marked] = field(default_factory=list)
    count: Counter[str] = field(default_factory=Counter)
    another: list["Came"] = field(default_factory=list)
    taken_back: list["Came"] = field(default_factory=list)
    before: dict[str, str | None] = field(default_factory=dict)

    def __repr__(self) -> str:
        return f"<Taken: {len(self.marked)} hand-ins, {dict(self.count)}>"


class Came(NamedTuple):
    """A paper that came in, and needs a word.

    Parameters
    ----------
    learner : str
        Whose.
    form : int
        Number of the form.
    paper : str
        Id of the paper.
    how : {"screen", "paper"}
        As an answer file, or typed back from paper.
    """

    learner: str
    form: int
    paper: str
    how: str


def take_in(
    record: Record,
    plan: Sheet,
    submissions: Iterable[Submission],
    *,
    day: str,
    progress: Progress | None = None,
    takers: Takers | None = None,
    a_batch: int = A_BATCH,
) -> Taken:
    """Mark what was handed in and add it; what is in the record stays as it is.

    Parameters
    ----------
    record : Record
        The term record.
    plan : Sheet
        The worksheet as it is now.
    submissions : iterable of Submission
        What was handed in.
    day : str
        The day it came, year-month-day; a paper is late by this day.
    progress : callable, optional
        Called with the number of hand-ins done.
    takers : Takers, optional
        The markers, if they are made already.
    a_batch : int
        How many hand-ins share a transaction.
    """
    if takers is None:
        with record.reading() as connection:
            takers = Takers(connection, plan, record.key)
    done, pile = Taken(), list[Submission]()
    for one in submissions:
        pile.append(one)
        if len(pile) == a_batch:
            _take(record, takers, pile, day, done)
            pile = []
            if progress:
                progress(len(done.marked))
    _take(record, takers, pile, day, done)
    if progress:
        progress(len(done.marked))
    done.marked = without_doubles(done.marked)
    return done


def _take(
    record: Record, takers: Takers, pile: Sequence[Submission], day: str, done: Taken
) -> None:
    """Mark some hand-ins and keep them in one transaction."""
    marked = [takers.mark(one) for one in pile]
    with record.writing() as batch:
        forms = [form for one in marked if (form := takers.form(one))]
        there = _There(batch.connection, forms, done.before)
        owners = takers.given.forms.sheets.get(takers.plan.name, {})
        for one, came in zip(marked, pile, strict=True):
            form = takers.form(one)
            if form is None or one.file is None or one.file.sheet != takers.plan.name:
                put_on_pile(batch, takers.plan.name, one, day, owners)
                done.count[PILE] += 1
                continue
            word, paper_id = _add_paper(batch, one, form, day, came.came, there)
            done.count[word] += 1
            said = Came(one.file.learner, one.file.form, paper_id, came.came)
            if word == ANOTHER:
                done.another.append(said)
            elif not there.stands(paper_id):
                done.taken_back.append(said)
    done.marked += marked


class _There:
    """What the record holds already of some forms, read in a few questions."""

    def __init__(
        self, connection: Connection, forms: Sequence[str], before: dict[str, str | None]
    ) -> None:
        self.papers: dict[str, dict[str, str]] = {}  # form: digest: paper
        self.old: dict[str, Typed] = {}  # form: what an old file says was typed
        self.before = before
        self.marks: dict[str, list[str]] = {}
        self.said: dict[str, dict[str, tuple[Any, ...]]] = {}
        self._standing = Standing(connection, ())
        for some in in_pieces(dict.fromkeys(forms)):
            rows = connection.execute(select(paper).where(paper.c.form.in_(some))).all()
            for row in rows:
                self.papers.setdefault(row.form, {})[row.digest] = row.fact
                if row.came == "results":
                    self.old[row.form] = _typed(parse(row.content, "a paper in the record"))
            self._read_marks(connection, [row.fact for row in rows])
        self._connection = connection

    def _read_marks(self, connection: Connection, papers: Sequence[str]) -> None:
        rows = connection.execute(select(mark.c.fact, mark.c.paper).where(mark.c.paper.in_(papers)))
        found = rows.all()
        for row in found:
            self.marks.setdefault(row.paper, []).append(row.fact)
        ids = [row.fact for row in found]
        for row in connection.execute(select(answer).where(answer.c.mark.in_(ids))):
            said = row.points, row.verdicts, row.slips, row.doubt
            self.said.setdefault(row.mark, {})[row.question] = said

    def stands(self, paper_id: str) -> bool:
        """Whether a paper was not taken back."""
        return self._standing.stands(paper_id)

    def paper_before(self, form: str, place: str) -> str | None:
        """Return the paper that a new one of a form follows: the last that was there before."""
        if form not in self.before:
            known = bool(self.papers.get(form))
            standing = Standing(self._connection, [place]) if known else None
            self.before[form] = standing.last("paper", place) if standing else None
        return self.before[form]

    def mark_head(self, paper_id: str) -> str | None:
        """Return the mark of a paper that stands."""
        found = self.marks.get(paper_id, [])
        if len(found) < 2:
            return found[0] if found else None
        return Standing(self._connection, [paper_id]).last("mark", paper_id)


def _typed(file: AnswerFile) -> Typed:
    """Return what a paper says, however often it was checked; blanks left out."""
    return {name: one.parts for name, one in file.answers.items() if any(one.parts)}


def _add_paper(
    batch: Batch, one: Marked, form: str, day: str, came: str, there: _There
) -> tuple[str, str]:
    """Add a paper with its mark; return what became of it, and its id."""
    file = one.file
    assert file is not None, "a hand-in without answers has no form"
    content = file.content()
    digest = hashlib.sha256(content).hexdigest()
    place = f"{file.learner}/{file.sheet}/{file.form}"
    papers = there.papers.setdefault(form, {})
    if digest in papers:
        return _add_mark(batch, one, papers[digest], day, KNOWN, there), papers[digest]
    before = there.paper_before(form, place)
    word = ANOTHER if papers else NEW
    if there.old.get(form) == _typed(file):  # the paper itself, known from an old file so far
        word = KNOWN
    body = {"form": form, "content": content, "digest": digest, "came": came}
    papers[digest] = batch.add(Fact("paper", place, body, day, file.learner, before))
    return _add_mark(batch, one, papers[digest], day, word, there), papers[digest]


def _add_mark(batch: Batch, one: Marked, paper_id: str, day: str, word: str, there: _There) -> str:
    """Add the mark of a paper; nothing if it was marked so before."""
    rows = tuple(_answer(item) for item in one.scored)
    said = {r["question"]: (r["points"], r["verdicts"], r["slips"], r["doubt"]) for r in rows}
    head = there.mark_head(paper_id)
    if head is not None and there.said.get(head, {}) == said:
        return word
    points = [item.points for item in one.scored]
    waits = None in points or bool(one.doubt) or not points
    of = sum(item.of for item in one.scored)
    total = min(sum(value for value in points if value is not None), of)
    body = {
        "paper": paper_id,
        "points": None if waits else total,
        "of": of,
        "doubt": one.doubt,
        "ask": one.question,
        "program": seatwork.__version__,
    }
    learner = one.file.learner if one.file else None
    found = batch.add(Fact("mark", paper_id, body, day, learner, head, rows))
    there.marks.setdefault(paper_id, []).append(found)
    there.said[found] = said
    return AGAIN if head is not None and word == KNOWN else word


def _answer(item: Scored) -> dict[str, Any]:
    return {
        "question": item.id,
        "points": None if item.points is None else min(item.points, item.of),
        "of": item.of,
        "verdicts": "; ".join(verdict.kind for verdict in item.verdicts),
        "slips": " ".join(slip.code for verdict in item.verdicts for slip in verdict.slips),
        "doubt": item.doubt,
    }
