"""Keeping inspected parts: the practical work of a learner, as it was judged."""

import json
from collections.abc import Sequence

from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection
from seatwork.inspection.rows import value_row
from seatwork.marking.names import LEARNER
from seatwork.record.deciding import stated
from seatwork.record.keeping import Record

LOOKED_AT = ("tried", "cleaned", "burr")
"""Readings that are looked at, not measured."""


def keep_parts(
    record: Record, found: Inspection, day: str, codes: Sequence[str] = ()
) -> tuple[str, ...]:
    """Keep the parts of an inspection, each with the learner whom its mark names.

    The same part judged the same again adds nothing; judged otherwise, the later one stands.

    Parameters
    ----------
    record : Record
        The term record.
    found : Inspection
        The parts, whose marks begin with a learner's code, such as L07-2.
    day : str
        Year-month-day.
    codes : sequence of str
        Codes of the outline that these parts show.

    Returns
    -------
    tuple of str
        Marks of the parts that were kept.

    Raises
    ------
    SeatworkError
        If a mark names no learner; then nothing is kept.
    """
    marks = [one.measured.part for one in found.parts]
    strange = [mark for mark in marks if not LEARNER.fullmatch(_learner(mark))]
    if strange:
        remedy = "mark parts by the learner's code, such as L07-2, then give the command again"
        raise SeatworkError(", ".join(strange)[:80], "that names no learner", remedy)
    with record.writing() as batch:
        for one in found.parts:
            said = one.measured
            looked = {name: _word(getattr(said, name)) for name in LOOKED_AT
                      if getattr(said, name) not in (None, "")}  # fmt: skip
            values = [str(value_row(each, one.system)) for each in one.judged]
            body = {
                "part": said.part,
                "feature": said.feature,
                "codes": " ".join(codes),
                "verdict": one.verdict,
                "values": json.dumps(values, ensure_ascii=False),
                "looked_at": json.dumps(looked, ensure_ascii=False, sort_keys=True),
            }
            learner = _learner(said.part)
            stated(batch, "part", f"{learner}/{said.part}/{said.feature}"[:120], body, day, learner)
    return tuple(marks)


def _word(value: object) -> str:
    """Return what was looked at in a word."""
    return {"True": "yes", "False": "no"}.get(str(value), str(value))


def _learner(mark: str) -> str:
    return mark.partition("-")[0].strip().upper()
