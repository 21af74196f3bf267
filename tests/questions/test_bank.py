"""Every type of the bank keeps what ``seatwork question check`` looks at; none is named here."""

from pathlib import Path

import pytest
from seatwork import drawings
from seatwork.marking.outline import asked_on
from seatwork.questions import all_types, lacks
from seatwork.questions.checking.pinning import is_pinned
from seatwork.questions.checking.places import stem

HERE = Path(__file__).parent
ASKED = Path(drawings.__file__).with_name("asked")
SHEETS = asked_on()


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(all_types()))
def test_a_type_lacks_nothing(name: str) -> None:
    """Contract, codes, drawing, proof and pinned draws hold over 300 draws; it is on a sheet."""
    kind = all_types()[name]
    assert lacks(kind) == ()
    assert is_pinned(kind)
    assert SHEETS.get(name)


@pytest.mark.parametrize(
    ("folder", "suffix"),
    [(ASKED, ".py"), (HERE / "proofs", ".py"), (HERE / "golden", ".json")],
    ids=["drawings", "proofs", "golden"],
)
def test_no_file_is_left_over(folder: Path, suffix: str) -> None:
    """Each drawing, proof and file of pinned draws belongs to a type of the bank."""
    files = {path.stem for path in folder.glob(f"*{suffix}")} - {"__init__"}
    drawn = {stem(name) for name, kind in all_types().items() if not kind.undrawn}
    assert files == (drawn if folder == ASKED else {stem(name) for name in all_types()})
