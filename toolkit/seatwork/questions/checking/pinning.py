"""Three draws of a type, kept in a file: what changes a question shows there.

The file was written by the program itself; it guards that nothing moves unseen, not that it is
right. Right is shown by the type's proof.
"""

import json
from collections.abc import Iterator
from pathlib import Path
from random import Random
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.files import write
from seatwork.questions.checking.places import project_tests, stem
from seatwork.questions.type.question import Question

STATES = (1, 2, 3)


def pinned_file(kind: type[Question]) -> Path | None:
    """Name the file of a type's pinned draws; None where the project's tests are not there."""
    tests = project_tests()
    return tests / "golden" / f"{stem(kind.id)}.json" if tests else None


def is_pinned(kind: type[Question]) -> bool:
    """Tell whether the draws of a type are pinned, as far as they are to be."""
    file = None if kind.folder else pinned_file(kind)
    return file is None or file.is_file()


def faults(kind: type[Question]) -> Iterator[str]:
    """Yield what differs from the pinned draws; nothing if none were pinned yet."""
    file = pinned_file(kind)
    if file is None or not file.is_file():
        return
    kept = _kept(file)
    different = sorted(
        {
            key
            for one, old in zip(_drawn(kind), kept, strict=True)
            for key in old
            if one[key] != old[key]
        }
    )
    if different:
        yield (
            f"its draws differ from those pinned ({', '.join(different)}); if that is meant, "
            "raise its version where an answer changed, and pin them again with --pin"
        )


def pin(kind: type[Question]) -> Path:
    """Write the pinned draws of a type of the package.

    Raises
    ------
    SeatworkError
        If an answer changed and the version did not: sheets handed out before would be marked
        by other numbers. Or if the type, or the project's tests, are not there.
    """
    file = pinned_file(kind)
    if file is None or kind.folder is not None:
        raise SeatworkError(kind.id, "only types of the package are pinned", "leave --pin out")
    drawn = _drawn(kind)
    for one, old in zip(drawn, _kept(file) if file.is_file() else [], strict=False):
        if one["answers"] != old["answers"] and one["version"] == old["version"]:
            fault = f"an answer changed ({old['answers']} to {one['answers']}), its version did not"
            raise SeatworkError(kind.id, fault, f"write version = {kind.version + 1} in its class")
    write(file, json.dumps(drawn, indent=1, ensure_ascii=False).encode() + b"\n")
    return file


def _drawn(kind: type[Question]) -> list[dict[str, Any]]:
    questions = [kind.draw(Random(state)) for state in STATES]
    return [
        {
            "version": kind.version,
            "asked": question.ask(),
            "answers": [str(getattr(part, "rounded", part.answer)) for part in question.parts],
            "slips": sorted({slip.code for slip in question.slips}),
        }
        for question in questions
    ]


def _kept(file: Path) -> list[dict[str, Any]]:
    try:
        kept = json.loads(file.read_text(encoding="utf-8"))
    except ValueError as error:
        raise SeatworkError(file.name, "it is spoiled", "remove it and pin again") from error
    assert isinstance(kept, list)
    return kept
