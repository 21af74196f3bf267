"""The class as it stands on a day: worked out from the facts, never stored."""

from collections import defaultdict

from sqlalchemy import Connection

from seatwork.marking.marker import NO_SEAL
from seatwork.marking.names import LEARNER
from seatwork.record.cells import Cell, Counting, in_force
from seatwork.record.reading import Contents, Kept, read
from seatwork.record.standing import Head
from seatwork.record.which_paper import DECIDED, candidates, others

EVEN = 1e-9
"""Points that the last digit of a sum may lack."""
MISFIT = "another paper came without a seal that fits: look"


class Class:
    """The class as it stands on a day.

    Parameters
    ----------
    connection : Connection
        To the record.
    day : str
        The day: what was due before it and has no paper is not here.
    only : str, optional
        Name of a sheet, to read no more than its papers.
    counting : Counting, optional
        The house rules; those in force if not given.
    contents : bool
        Whether to read what the papers say, too.
    """

    def __init__(
        self,
        connection: Connection,
        day: str,
        only: str | None = None,
        *,
        counting: Counting | None = None,
        contents: bool = False,
    ) -> None:
        self.day, self.counting = day, counting or in_force()
        self.rows: Contents = read(connection, only, contents=contents)
        self.heads = self.rows.standing
        self._due: dict[str, str | None] = {}
        self._marks: dict[str, tuple[Kept | None, str]] = {}
        self._forms: list[Head] = []

    def __repr__(self) -> str:
        return f"<Class of {len(self.learners())} on {self.day}>"

    def learners(self) -> list[str]:
        """Return the codes of everyone who joined or was given a form."""
        said = (row.subject.removeprefix("course/") for row in self.heads.of("state"))
        joined = {code for code in said if LEARNER.fullmatch(code)}
        given = {row.learner for row in self.heads.of("form") if row.learner}
        return sorted(joined | given)

    def state(self, subject: str) -> Kept | None:
        """Return what a person said of a subject last; None if nothing, or two different things."""
        found = self.heads.head("state", subject)
        said = self.rows.states[found] if found else None
        return None if said is None or said.word == "clear" else said

    def is_withdrawn(self, learner: str) -> bool:
        """Whether a learner left the course."""
        said = self.state(f"course/{learner}")
        return said is not None and said.word == "withdrawn"

    def due(self, learner: str, name: str, sitting: int) -> str | None:
        """Return the day a sitting is due for a learner; None if none was said."""
        for subject in (f"{learner}/{name}/{sitting}/due", f"{name}/{sitting}/due"):
            if subject not in self._due:
                said = self.state(subject)
                self._due[subject] = said.value if said is not None else None
            if self._due[subject]:
                return self._due[subject]
        return None

    def paper(self, form: str, due: str | None) -> tuple[Head | None, str]:
        """Return the paper of a form that counts, or why a person must choose one.

        Parameters
        ----------
        form : str
            Id of the form.
        due : str or None
            The day it is due.
        """
        papers = self.rows.papers_of.get(form, [])
        if not papers:
            return None, ""
        chosen = self._chosen(form, papers)
        if chosen is not None:
            return chosen
        fitting = self._fitting(papers)
        may_count, note = candidates(self.rows, fitting, due, self.counting.paper)
        note = note or (MISFIT if len(fitting) < len(papers) else "")
        by_answers = {self.rows.papers[row.id].digest: row for row in may_count}
        if len(by_answers) > 1:
            return None, f"{len(by_answers)} papers with other answers came at once: look"
        return next(iter(by_answers.values())), note

    def counting_papers(self, learner: str) -> set[str]:
        """Return the papers of a learner that count, one of each form at most."""
        found = set()
        for row in self.heads.of("form"):
            form = self.rows.forms.get(row.id)
            if row.learner == learner and form is not None:
                name = self.rows.sheets[form.sheet].name
                paper, _ = self.paper(row.id, self.due(learner, name, form.sitting))
                found |= {paper.id} if paper is not None else set()
        return found

    def _fitting(self, papers: list[Head]) -> list[Head]:
        """Leave out papers whose form id or seal does not fit, if there are others."""
        fits = [row for row in papers if not self._misfits(row)]
        return fits or papers

    def _misfits(self, paper: Head) -> bool:
        """Whether a paper has no seal, or was marked and waits as a whole: its seal is wrong."""
        mark, _ = self.mark(paper)
        if mark is None:
            return False
        is_wrong = bool(mark.doubt) and bool(self.rows.answers[mark.fact])
        return is_wrong or mark.ask.startswith(NO_SEAL)

    def is_chosen(self, form: str, paper: str) -> bool:
        """Whether a person said that a paper counts."""
        choice = self.heads.head("choice", form)
        return choice is not None and self.rows.choices[choice].paper == paper

    def _chosen(self, form: str, papers: list[Head]) -> tuple[Head, str] | None:
        """Return the paper that a person said counts, while it stands; a later one is told."""
        choice = self.heads.head("choice", form)
        if choice is None:
            return None
        counts = self.rows.choices[choice].paper
        found = [row for row in papers if row.id == counts]
        if not found:
            return None
        after = [row for row in papers if row.day > self.heads.all[choice].day]
        return found[0], DECIDED if others(self.rows, after, found) else ""

    def given(self, form: str) -> dict[str, float | None]:
        """Return points a person gave, by question; None where two gave other points."""
        found: dict[str, set[float]] = defaultdict(set)
        for row in self.rows.overrides_of.get(form, ()):
            if row.id in self.heads.heads("override", row.subject):
                one = self.rows.overrides[row.id]
                found[one.question].add(one.points)
        return {name: min(all_) if len(all_) == 1 else None for name, all_ in found.items()}

    def mark(self, paper: Head) -> tuple[Kept | None, str]:
        """Return the mark of a paper, or why there is none."""
        if paper.id not in self._marks:
            self._marks[paper.id] = self._mark(paper)
        return self._marks[paper.id]

    def _mark(self, paper: Head) -> tuple[Kept | None, str]:
        heads = sorted(self.heads.heads("mark", paper.id))
        if not heads:
            return None, "not marked yet"
        if len(heads) == 1:
            return self.rows.marks[heads[0]], ""
        said = [self._said(one) for one in heads]
        if said.count(said[0]) < len(said):
            return None, "marked twice, differently"
        return self.rows.marks[heads[0]], ""

    def _said(self, mark: str) -> object:
        """Return what a mark says of the answers, whoever made it with which version."""
        rows = self.rows.answers[mark].items()
        return {name: (row.points, row.verdicts, row.doubt) for name, row in rows}

    def cell(self, head: Head) -> Cell:
        """Return how one form stands."""
        form = self.rows.forms[head.id]
        name = self.rows.sheets[form.sheet].name
        learner = str(head.learner)
        due = self.due(learner, name, form.sitting)
        paper, why = self.paper(head.id, due)
        at = {"sitting": form.sitting, "form": form.number}
        said = self.state(f"{learner}/{name}/{form.sitting}")
        if said is not None and said.word in ("excused", "void"):
            return Cell(said.word, why=said.reason, **at)
        if paper is None and why:
            return Cell("needs a person", why=why, **at)
        if paper is None:
            if said is not None and said.word == "lost":
                return Cell("paper lost", why=said.reason, **at)
            if self.is_withdrawn(learner):
                return Cell("withdrawn", **at)
            return Cell("not here" if due and self.day > due else "handed out", **at)
        scored = self._scored(head.id, paper, why)
        return scored._replace(late=due is not None and paper.day > due, **at)

    def _scored(self, form: str, paper: Head, note: str) -> Cell:
        mark, why = self.mark(paper)
        if mark is None:
            return Cell("needs a person", why=why)
        given, rows = self.given(form), self.rows.answers[mark.fact]
        points = {name: given.get(name, row.points) for name, row in rows.items()}
        clash = [name for name, value in given.items() if value is None]
        waits_whole = bool(mark.doubt) and not (rows and self.is_chosen(form, paper.id))
        if waits_whole or None in points.values() or not rows:
            waits = " ".join(name for name, value in points.items() if value is None)
            open_ = f"{waits} wait for a person" if waits else "it is not marked"
            said = f"two instructors gave other points for {' '.join(clash)}" if clash else open_
            return Cell("needs a person", of=mark.of, why=mark.doubt or said)
        earned = sum(value for value in points.values() if value is not None)
        sheet = self.rows.sheets[self.rows.forms[form].sheet]
        passed = earned >= sheet.pass_mark * mark.of - EVEN
        why = "; ".join(filter(None, [note, self._by_hand_before(form, paper)]))
        return Cell("passed" if passed else "not yet", earned, mark.of, why=why)

    def _by_hand_before(self, form: str, paper: Head) -> str:
        """Say where points by hand were given when another paper of the form was looked at."""
        papers = [self.rows.papers[row.id] for row in self.rows.papers_of.get(form, [])]
        if len({one.digest for one in papers if one.came != "results"}) < 2:  # kept files aside
            return ""
        before = sorted(
            self.rows.overrides[row.id].question
            for row in self.rows.overrides_of.get(form, ())
            if row.day <= paper.day and row.id in self.heads.heads("override", row.subject)
        )
        if not before:
            return ""
        return f"points by hand on {' '.join(before)} may be for another paper: look"

    def forms(self) -> list[Head]:
        """Return one form for each learner, sheet and sitting; worked out once."""
        if not self._forms:
            self._forms = self._one_each()
        return self._forms

    def _one_each(self) -> list[Head]:
        found: dict[tuple[str | None, str, int], list[Head]] = defaultdict(list)
        for row in self.heads.of("form"):
            form = self.rows.forms.get(row.id)
            if form is not None:
                name = self.rows.sheets[form.sheet].name
                found[row.learner, name, form.sitting].append(row)
        fullest = (
            min(rows, key=lambda row: (-len(self.rows.papers_of.get(row.id, ())), row.id))
            for rows in found.values()
        )
        return list(fullest)

    def grid(self) -> dict[tuple[str, str], list[Cell]]:
        """Return, by learner and sheet, a cell for each sitting in order."""
        found: defaultdict[tuple[str, str], list[Cell]] = defaultdict(list)
        for row in self.forms():
            name = self.rows.sheets[self.rows.forms[row.id].sheet].name
            found[str(row.learner), name].append(self.cell(row))
        return {key: sorted(cells, key=lambda one: one.sitting) for key, cells in found.items()}

    def counted(self, cells: list[Cell]) -> Cell:
        """Return the sitting that counts, best or last as the house rule says."""
        scored = [cell for cell in cells if cell.percent is not None]
        if not scored:
            return cells[-1]
        if self.counting.sitting == "last":
            return scored[-1]
        return max(scored, key=lambda cell: cell.percent or 0.0)
