"""Handing out: every learner's own form of a sheet, re-tests never the same."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import seatwork
from seatwork.errors import SeatworkError
from seatwork.marking.given import Given
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.names import MOST_FORMS, learner_code
from seatwork.marking.sealing import form_id, form_secret
from seatwork.marking.seeds import sheet_seed
from seatwork.marking.sheets import MODES, Sheet, load
from seatwork.questions import Question


@dataclass(frozen=True, slots=True, kw_only=True)
class Handout:
    """One learner's form, ready to be given or printed.

    Parameters
    ----------
    given : Given
        What the learner gets.
    questions : dict of str to Question
        The questions with the learner's numbers.
    """

    given: Given
    questions: dict[str, Question]

    def __repr__(self) -> str:
        who = f"{self.given.learner}, {self.given.sheet}, form {self.given.form}"
        return f"<Handout {who}: {len(self.questions)} questions>"


def hand_out(
    key: bytes,
    handed_out: Forms,
    sheet: Sheet | str,
    learners: Sequence[str],
    *,
    sitting: int = 1,
    mode: str | None = None,
    drawn: Mapping[str, HandedOut] | None = None,
) -> tuple[Handout, ...]:
    """Draw a sheet for every learner; nothing is kept, `seatwork.record.hand_out` does that.

    Drawing it again gives the same forms.

    Parameters
    ----------
    key : bytes
        The course key, which the numbers come from.
    handed_out : Forms
        What was handed out before; what is drawn is added to it.
    sheet : Sheet or str
        The worksheet, or its name.
    learners : sequence of str
        Learner codes.
    sitting : int
        1 for the first test, 2 for the first re-test; no question of a re-test has the
        numbers it had in an earlier form of the same learner.
    mode : {"practice", "graded"}, optional
        As the sheet says if not given.
    drawn : mapping of str to HandedOut, optional
        Forms that another process drew for this sitting, by learner; one that this course key
        and this sheet do not give is drawn anew.

    Raises
    ------
    SeatworkError
        If a code is wrong, or an earlier sitting is missing.
    """
    sheet = load(sheet) if isinstance(sheet, str) else sheet
    how = sheet.mode if mode is None else mode
    if how not in MODES:
        raise SeatworkError(str(mode), "that is no mode", f"write {' or '.join(MODES)}")
    codes = [learner_code(code) for code in learners]
    ready = drawn or {}
    return tuple(
        _for_learner(key, handed_out, sheet, code, sitting, how, ready.get(code)) for code in codes
    )


def _for_learner(
    key: bytes, handed_out: Forms, sheet: Sheet, learner: str, sitting: int, mode: str,
    drawn: HandedOut | None,
) -> Handout:  # fmt: skip
    forms = handed_out.forms(sheet.name, learner)
    for form in forms:
        if form.sitting == sitting:
            _refuse_other_key(key, sheet, learner, form)
            return _handout(key, sheet, learner, form)
    if sitting != len(forms) + 1:
        fault = f"{learner} has had {len(forms)} sittings of {sheet.name}"
        raise SeatworkError(f"sitting {sitting}", fault, f"hand out sitting {len(forms) + 1}")
    fits = drawn is not None and (drawn.sitting, drawn.mode) == (sitting, mode)
    if drawn is None or not fits or not _is_of(key, sheet, learner, forms, drawn):
        drawn = _unlike(key, sheet, learner, forms, mode)
    forms.append(drawn)
    return _handout(key, sheet, learner, drawn)


def _is_of(
    key: bytes, sheet: Sheet, learner: str, earlier: list[HandedOut], drawn: HandedOut
) -> bool:
    """Whether a form was drawn with this key, for this sheet, after these forms."""
    own = form_id(key, learner, sheet.name, drawn.form, drawn.sizes)
    after = drawn.form > max((one.form for one in earlier), default=0)
    return after and drawn.form_id == own and drawn.versions == _versions(sheet)


def _versions(sheet: Sheet) -> dict[str, int]:
    return {item.id: item.kind.version for item in sheet.items}


def _refuse_other_key(key: bytes, sheet: Sheet, learner: str, form: HandedOut) -> None:
    """Refuse to give a practice form again whose numbers another course key drew."""
    made = form_id(key, learner, sheet.name, form.form, form.sizes)
    if form.mode == "practice" and form.form_id and form.form_id != made:
        fault = f"form {form.form} of {sheet.name} was drawn with another course key"
        raise SeatworkError(learner, fault, f"give new numbers: --sitting {form.sitting + 1}")


def _unlike(
    key: bytes, sheet: Sheet, learner: str, earlier: list[HandedOut], mode: str
) -> HandedOut:
    """Return the first form that shares no question's numbers with an earlier one."""
    first = earlier[-1].form + 1 if earlier else 1
    best: tuple[int, HandedOut] | None = None
    for form in range(first, MOST_FORMS + 1):
        drawn = sheet.draw(sheet_seed(key, learner, sheet.name, form))
        sizes = {name: question.drawn() for name, question in drawn.items()}
        new = HandedOut(
            sitting=len(earlier) + 1,
            form=form,
            mode=mode,
            sizes=sizes,
            versions=_versions(sheet),
            types={item.id: item.kind.id for item in sheet.items},
            form_id=form_id(key, learner, sheet.name, form, sizes),
            sealed=True,
        )
        shared = sum(
            new.sizes[name] == old.sizes.get(name) for old in earlier for name in new.sizes
        )
        if not shared:
            return new
        if best is None or shared < best[0]:
            best = shared, new
    if best is None or best[0] >= len(sheet.items):
        raise SeatworkError(sheet.name, f"no new form is left for {learner}", "write new questions")
    return best[1]


def _handout(key: bytes, sheet: Sheet, learner: str, form: HandedOut) -> Handout:
    is_graded, is_kept = form.mode == "graded", bool(form.form_id)
    given = Given(
        learner=learner,
        sheet=sheet.name,
        form=form.form,
        mode=form.mode,
        seed=b"" if is_graded and is_kept else sheet_seed(key, learner, sheet.name, form.form),
        version=seatwork.__version__,
        form_id=form.form_id,
        secret=form_secret(key, form.form_id) if form.form_id else b"",
        sizes=form.sizes if is_kept else {},
        versions=form.versions if is_kept else {},
        types=form.types if is_kept else {},
    )
    return Handout(given=given, questions=form.questions(sheet))
