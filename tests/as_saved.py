"""Papers as the pages of their forms save them: with the form's id and a seal."""

from dataclasses import replace
from pathlib import Path

from seatwork.marking import AnswerFile, course, examples, form_secret
from seatwork.marking.handed import HandedOut
from seatwork.record import forms


def sealed(file: AnswerFile, form: HandedOut, key: bytes = examples.KEY) -> AnswerFile:
    """Return a paper with the id and the seal that the page of its form gives it.

    Parameters
    ----------
    file : AnswerFile
        The paper.
    form : HandedOut
        Its form.
    key : bytes
        The course key.
    """
    return replace(file, form_id=form.form_id).sealed(form_secret(key, form.form_id))


def as_saved(folder: Path, file: AnswerFile) -> AnswerFile:
    """Return the same, of a sheet that was handed out in an instructor's folder."""
    form = forms(folder).form(file.sheet, file.learner, file.form)
    assert form is not None, "the form was not handed out"
    return sealed(file, form, bytes.fromhex((folder / course.KEY_FILE).read_text("ascii")))
