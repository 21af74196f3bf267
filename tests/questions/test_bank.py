"""Every type of the bank keeps what ``seatwork question check`` looks at; none is named here."""

import re
from pathlib import Path

import pytest
from seatwork import drawings
from seatwork.marking.outline import asked_on
from seatwork.questions import all_types, lacks
from seatwork.questions.checking.pinning import is_pinned
from seatwork.questions.checking.places import stem
from seatwork.questions.registry import retired_types
from seatwork.questions.type.clearness import is_told_apart, too_close
from seatwork.questions.type.draws import generator
from seatwork.questions.type.parts import NumberPart

NAMES = re.compile(r"#\d+(?:-\d+)?|\b\d+(?:-\d+)?/\d+(?:-\d+)?|B18\.2\.8|M\d+")
NUMBER = re.compile(r"(?<![\w.])\d*\.?\d+(?!\w)")
LIST = re.compile(r"[\d., ]+|.*⌀.*")
HERE = Path(__file__).parent
ASKED = Path(drawings.__file__).with_name("asked")
SHEETS = asked_on()
EVERY = {**all_types(), **retired_types()}
"""What is asked today, and what papers handed out before are marked by."""


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(EVERY))
def test_a_type_lacks_nothing(name: str) -> None:
    """Contract, codes, drawing, proof and pinned draws hold over 300 draws; it is on a sheet.

    A type that retired is on none, and marks as ever.
    """
    kind = EVERY[name]
    assert lacks(kind) == ()
    assert is_pinned(kind)
    assert bool(SHEETS.get(name)) == (name in all_types())


@pytest.mark.parametrize(
    ("folder", "suffix"),
    [(ASKED, ".py"), (HERE / "proofs", ".py"), (HERE / "golden", ".json")],
    ids=["drawings", "proofs", "golden"],
)
def test_no_file_is_left_over(folder: Path, suffix: str) -> None:
    """Each drawing, proof and file of pinned draws belongs to a type of the bank."""
    files = {path.stem for path in folder.glob(f"*{suffix}")} - {"__init__"}
    drawn = {stem(name) for name, kind in EVERY.items() if not kind.undrawn}
    assert files == (drawn if folder == ASKED else {stem(name) for name in EVERY})


@pytest.mark.parametrize("name", sorted(all_types()))
def test_a_sentence_holds_at_most_three_numbers(name: str) -> None:
    """A list or a note stands on a line of its own; names of screws and standards do not count."""
    for state in range(10):
        text = NAMES.sub("", all_types()[name].draw(generator(f"{name} {state}".encode())).text())
        lines = [line for line in text.split("\n") if not LIST.fullmatch(line)]
        for sentence in re.split(r"(?<=[.?!])\s+", " ".join(lines)):
            assert len(NUMBER.findall(sentence)) <= 3, sentence


@pytest.mark.parametrize("name", sorted(all_types()))
def test_floats_decide_as_exact_numbers_do(name: str) -> None:
    """Sizes are rounded, and slips told apart, as in exact decimals, for what is kept and not."""
    kind, rng = all_types()[name], generator(name.encode())
    for number in range(20):
        question = kind.propose(rng).stated_in(("inch", "metric")[number % 2])
        for size, measure in question.sizes.items():
            value = getattr(question, size)
            for system in ("inch", "metric"):
                exact = measure.inside(measure.stated(value, system), system)
                assert measure.as_stated(value, system) == exact
        for part in question.parts:
            if isinstance(part, NumberPart):
                assert is_told_apart(part) == (not too_close(part))
