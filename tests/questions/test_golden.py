"""Three draws of each type, pinned: what changes a question shows here.

``golden.json`` was written by the program itself; it guards that nothing moves unseen, not
that it is right. Right is proven by the formulas written apart in ``tests/marking``. A change
here that is meant needs a higher ``version`` of the type once sheets have been handed out.
"""

import json
from pathlib import Path
from random import Random

from seatwork.questions import all_types

GOLDEN = Path(__file__).with_name("golden.json")
STATES = (1, 2, 3)


def drawn() -> dict[str, list[dict[str, object]]]:
    """Draw each type three times, with its answers and slips."""
    found: dict[str, list[dict[str, object]]] = {}
    for name, kind in sorted(all_types().items()):
        questions = [kind.draw(Random(state)) for state in STATES]
        found[name] = [
            {
                "version": kind.version,
                "asked": question.ask(),
                "answers": [str(getattr(part, "rounded", part.answer)) for part in question.parts],
                "slips": sorted({slip.code for slip in question.slips}),
            }
            for question in questions
        ]
    return found


def test_draws_are_those_pinned() -> None:
    """Every type asks what it asked before, for the same states of the generator."""
    assert drawn() == json.loads(GOLDEN.read_text(encoding="utf-8"))
