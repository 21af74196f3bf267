"""Marking a folder of answer files: data only; whatever is doubtful goes to a person."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from seatwork.marking.answers import AnswerFile
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.likeness import LEAST, Likeness, Place, rounded_text
from seatwork.marking.scoring import Scored, score
from seatwork.marking.sealing import form_id, form_secret
from seatwork.marking.sheets import Sheet, load
from seatwork.marking.submissions import Submission, collect
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.rows import short

Progress = Callable[[int], None]
NOT_GIVEN = (
    "this form was not handed out to this learner"
    " (if the record was lost, bring it back, or hand the sheet out again: the forms come out"
    " the same)"
)
NO_SEAL = "it has no seal, though its form was handed out with one: ask how it was saved"
CHANGED = (
    "its seal does not fit: it was changed after saving, or saved by another page than the one"
    " that its form came with: ask the learner"
)
UNKNOWN_ID = "it says an id of a form that was not handed out in this course"
OTHER_KEY = "its seal cannot be looked at: its form was handed out with another course key"
SUSPECT = ("wrong", "slip", "several slips", "asks back")


@dataclass(frozen=True, slots=True, kw_only=True)
class Marked:
    """One file handed in, as marked.

    Parameters
    ----------
    name : str
        The file.
    file : AnswerFile or None
        Its answers; None if it could not be read.
    scored : tuple of Scored
        Its questions; empty if a person must look at the file.
    doubt : str
        Why a person must look at it; empty if it is marked.
    question : str
        Something to ask the learner; never a finding.
    same_as : str
        The file that holds the same paper and counts for it; empty if there is none.
    """

    name: str
    file: AnswerFile | None = None
    scored: tuple[Scored, ...] = ()
    doubt: str = ""
    question: str = ""
    same_as: str = ""

    def __repr__(self) -> str:
        outcome = self.doubt or (
            f"{self.points:g} points" if self.points is not None else "no points"
        )
        return f"<Marked {short(self.name, 40)}: {short(outcome, 60)}>"

    @property
    def needs_a_person(self) -> bool:
        """Whether the score stays blank until a person has looked."""
        return bool(self.doubt) or any(item.points is None for item in self.scored)

    @property
    def points(self) -> float | None:
        """Points earned [-]; None while a person must look, or where another file counts."""
        if self.needs_a_person or self.same_as:
            return None
        return sum(item.points or 0.0 for item in self.scored)


class Marker:
    """Marks answer files to one sheet of one course.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    handed_out : Forms
        What was handed out.
    extra : mapping of str to int, optional
        Tries that learners have beyond those of the sheet, by code.
    key : bytes, optional
        The course key; without it no seal can be looked at.
    """

    def __init__(
        self,
        sheet: Sheet,
        handed_out: Forms,
        extra: Mapping[str, int] | None = None,
        key: bytes | None = None,
    ) -> None:
        self.sheet, self.handed_out, self.extra = sheet, handed_out, extra or {}
        self._key = key
        self.names = {item.id for item in sheet.items}
        self._likeness: Likeness | None = None

    def __repr__(self) -> str:
        return f"<Marker of {self.sheet.name}>"

    def mark(
        self, submissions: Iterable[Submission], progress: Progress | None = None
    ) -> list[Marked]:
        """Mark submissions, each for itself; each comes back once, in the order handed in."""
        marked = []
        for number, submission in enumerate(submissions, 1):
            marked.append(self._mark_safely(submission))
            if progress:
                progress(number)
        return self._with_questions(marked)

    def _mark_safely(self, submission: Submission) -> Marked:
        if submission.file is None:
            return Marked(name=submission.name, doubt=submission.doubt)
        try:
            marked = self._mark(submission.name, submission.file)
            return _doubted(self._looked_at(marked, submission.came), submission.doubts or {})
        except Exception as error:  # a fault of ours must not cost anyone's marks
            doubt = f"marking it failed ({type(error).__name__})"
            return Marked(name=submission.name, file=submission.file, doubt=doubt)

    def _mark(self, name: str, file: AnswerFile) -> Marked:
        if file.sheet != self.sheet.name:
            return Marked(name=name, file=file, doubt=f"it answers the sheet {file.sheet}")
        form = self.handed_out.form(file.sheet, file.learner, file.form)
        if form is None:
            return Marked(name=name, file=file, doubt=self._belongs(file) or NOT_GIVEN)
        if not file.answers.keys() <= form.sizes.keys() or form.sizes.keys() != self.names:
            doubt = "its questions are not those of the sheet"
            return Marked(name=name, file=file, doubt=doubt)
        tries = self.sheet.tries and self.sheet.tries + self.extra.get(file.learner, 0)
        scored = score(self.sheet, form, file, tries)
        return Marked(name=name, file=file, scored=scored)

    def _looked_at(self, marked: Marked, came: str) -> Marked:
        """Leave a paper to a person whose form id or seal is wrong or missing; it is marked anyway.

        Where a page of its form may have saved it without a seal, it counts and is asked about.
        """
        file = marked.file
        form = self.handed_out.form(file.sheet, file.learner, file.form) if file else None
        if file is None or form is None or marked.doubt or came != "screen" or self._key is None:
            return marked
        if not file.form_id and not file.seal:
            missed = NO_SEAL if form.form_id else ""
            if form.sealed:
                return replace(marked, doubt=missed)
            return replace(marked, question=missed)
        if file.form_id == form.form_id and not self._is_of_key(file, form, self._key):
            return replace(marked, question=OTHER_KEY)
        return replace(marked, doubt=self._misfit(file, form, self._key))

    def _is_of_key(self, file: AnswerFile, form: HandedOut, key: bytes) -> bool:
        """Tell whether a form was handed out with this course key, which its id follows from."""
        made = form_id(key, file.learner, file.sheet, form.form, form.sizes)
        return made == form.form_id

    def _misfit(self, file: AnswerFile, form: HandedOut, key: bytes) -> str:
        """Say in what a file is not as its form's page saves it; empty if in nothing."""
        if file.form_id != form.form_id:
            return self._belongs(file) or UNKNOWN_ID
        return "" if file.has_seal(form_secret(key, form.form_id)) else CHANGED

    def _belongs(self, file: AnswerFile) -> str:
        """Say whose form has the id that a file gives; empty if nobody's."""
        whose = self.handed_out.whose(file.form_id) if file.form_id else None
        return f"its form belongs to {whose[0]}, form {whose[2]} of {whose[1]}" if whose else ""

    def _with_questions(self, marked: list[Marked]) -> list[Marked]:
        """Add what is to be asked of learners whose wrong answers fit another's numbers."""
        suspect = [_wrong_numbers(one) >= LEAST for one in marked]
        if not any(suspect):
            return marked
        return [self._asked(one) if suspect[n] else one for n, one in enumerate(marked)]

    @property
    def likeness(self) -> Likeness:
        """The right answers of everyone who was given the sheet; worked out once."""
        if self._likeness is None:
            self._likeness = Likeness()
            for learner, forms in self.handed_out.sheets.get(self.sheet.name, {}).items():
                for form in forms:
                    self._likeness.add(learner, self._answers(form))
        return self._likeness

    def _answers(self, form: HandedOut) -> Iterator[tuple[str, tuple[Part, ...]]]:
        """Yield what each question of a form asks for; sizes that are asked no more are passed."""
        for item in self.sheet.items:
            try:
                yield item.id, form.question(item).parts
            except Exception:  # a form of another version must not cost anyone's marks
                continue

    def _asked(self, marked: Marked) -> Marked:
        file = marked.file
        form = self.handed_out.form(file.sheet, file.learner, file.form) if file else None
        if file is None or form is None:
            return marked
        found = self.likeness.fitting(file.learner, self._wrong(marked.scored, form))
        if found is None:
            return marked
        text = f"{found[1]} of its wrong answers fit the numbers of {found[0]}: ask both"
        asks = "; ".join(filter(None, (marked.question, text)))
        return replace(marked, question=asks)

    def _wrong(self, scored: tuple[Scored, ...], form: HandedOut) -> Iterator[Place]:
        """Yield each wrong number with its place, rounded as answers are."""
        for item, plan in zip(scored, self.sheet.items, strict=True):
            if not any(verdict.kind in SUSPECT for verdict in item.verdicts):
                continue
            for number, part in enumerate(form.question(plan).parts):
                if isinstance(part, NumberPart) and item.verdicts[number].kind in SUSPECT:
                    yield item.id, number, rounded_text(item.typed[number], part)


def _doubted(marked: Marked, doubts: dict[str, str]) -> Marked:
    """Leave to a person the questions that are in doubt as they were handed in."""
    scored = tuple(
        item._replace(points=None, computed=None, doubt=doubts[item.id])
        if item.id in doubts
        else item
        for item in marked.scored
    )
    return replace(marked, scored=scored) if doubts else marked


def _wrong_numbers(marked: Marked) -> int:
    """Count the wrong answers that may be another's."""
    return sum(verdict.kind in SUSPECT for item in marked.scored for verdict in item.verdicts)


def without_doubles(marked: list[Marked]) -> list[Marked]:
    """Count a paper once; send to a person what was handed in twice with different answers."""
    first: dict[tuple[str, int], int] = {}
    found = list(marked)
    for number, one in enumerate(marked):
        if one.file is None or one.doubt:
            continue
        key = (one.file.learner, one.file.form)
        earlier = first.setdefault(key, number)
        if earlier == number:
            continue
        if one.file == marked[earlier].file:
            found[number] = replace(one, scored=(), same_as=marked[earlier].name)
        else:
            for place, other in ((number, earlier), (earlier, number)):
                doubt = f"other answers of the same form are in {marked[other].name}"
                found[place] = replace(found[place], scored=(), doubt=doubt)
    return found


def mark(
    handed_out: Forms,
    sheet: Sheet | str,
    answers: str | Path,
    progress: Progress | None = None,
    key: bytes | None = None,
) -> list[Marked]:
    """Mark a folder of answer files; nothing is kept, `seatwork.record.mark` does that.

    Parameters
    ----------
    handed_out : Forms
        What was handed out, as ``seatwork.record.forms`` reads it.
    sheet : Sheet or str
        The worksheet, or its name.
    answers : str or Path
        Folder of what was handed in; opened as data, nothing in it is run.
    progress : callable, optional
        Called with the number of files done.
    key : bytes, optional
        The course key; without it no seal can be looked at.

    Returns
    -------
    list of Marked
        Every file exactly once, in the order of their names.
    """
    asked = load(sheet) if isinstance(sheet, str) else sheet
    marker = Marker(asked, handed_out, key=key)
    return without_doubles(marker.mark(collect(Path(answers)), progress))
