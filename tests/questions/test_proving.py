"""What the check of a type of the package sees: its proof, and the draws pinned before."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.questions import Question, lacks
from seatwork.questions.checking import pinning, proving
from seatwork.questions.checking.template import PROOF, own_type
from seatwork.questions.registry import load

VALUE = "q.hole_diameter + 2 * q.leg"
RIGHT = "self.hole_diameter + 2 * self.leg"


@pytest.fixture
def tests(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give an empty folder in the place of the project's tests of questions."""
    for module in (pinning, proving):
        monkeypatch.setattr(module, "project_tests", lambda: tmp_path)
    (tmp_path / "proofs").mkdir()
    return tmp_path


def kind_of(folder: Path, old: str = "", new: str = "") -> type[Question]:
    """Give the template as a type of the package, one thing in it changed."""
    text = own_type("some-chamfer", "E1")
    assert old in text
    path = folder / "some_chamfer.py"
    path.write_text(text.replace(old, new) if old else text, encoding="utf-8")
    kind = load(path)
    kind.folder = None
    proving.proof.cache_clear()
    return kind


def prove(folder: Path, old: str = "", new: str = "") -> None:
    """Write the proof, one thing in it changed."""
    text = PROOF.format(name="some-chamfer")
    assert old in text
    path = folder / "proofs" / "some_chamfer.py"
    path.write_text(text.replace(old, new) if old else text, encoding="utf-8")


def test_a_type_without_a_proof_is_found(tests: Path) -> None:
    """The file that is missing is named."""
    assert lacks(kind_of(tests), 20) == (
        "some-chamfer: it has no proof; write tests/questions/proofs/some_chamfer.py.",
    )


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        (VALUE, "q.hole_diameter + 2.001 * q.leg", "where the type gives"),
        ('"M41"', '"M42"', "the proof has no number for slip M41"),
        ("+ q.leg}", "+ 3 * q.leg}", "slips are told wrongly or not at all"),
        ("})]", "}), (1.0, {})]", "the proof has 2 parts, the type 1"),
        ("from typing", "import seatwork\nfrom typing", "takes nothing of the package"),
        ("return [", "return [1 / 0,", "it fails: ZeroDivisionError"),
    ],
)
def test_a_proof_that_does_not_agree_is_found(tests: Path, old: str, new: str, said: str) -> None:
    """A right answer, a slip, a part or an import that differs is told; the same agrees."""
    prove(tests)
    assert lacks(kind_of(tests), 20) == ()
    prove(tests, old, new)
    assert said in lacks(kind_of(tests), 20)[0]


def test_a_slip_without_a_name_is_found(tests: Path) -> None:
    """A code that no list of slips knows would stand without a word in a class's picture."""
    old = 'slip("M41", self.hole_diameter + self.leg'
    kind = kind_of(tests, old, f'{old.replace("M41", "M941")}, "You added one leg."')
    assert lacks(kind, 20) == (
        "the slip M941 is not in slip_sentences.py; give it two sentences there",
    )


def test_a_changed_answer_wants_a_new_version(tests: Path) -> None:
    """Draws are pinned once; a changed text is pinned again, a changed answer only anew."""
    kind = kind_of(tests)
    assert not pinning.is_pinned(kind)
    pinning.pin(kind)
    assert pinning.is_pinned(kind)
    assert list(pinning.faults(kind)) == []
    worded = kind_of(tests, "How wide is its mouth?", "How wide is the mouth?")
    assert "(asked)" in next(iter(pinning.faults(worded)))
    pinning.pin(worded)
    wider = kind_of(tests, RIGHT, "self.hole_diameter + 3 * self.leg")
    assert "answers" in next(iter(pinning.faults(wider)))
    with pytest.raises(SeatworkError, match="version = 2"):
        pinning.pin(wider)
    wider.version = 2
    pinning.pin(wider)
    assert list(pinning.faults(wider)) == []


def test_a_spoiled_file_of_draws_is_one_sentence(tests: Path) -> None:
    """What cannot be read is named, and is not taken for agreement."""
    pinning.pin(kind_of(tests)).write_text("[", encoding="utf-8")
    prove(tests)
    assert "some_chamfer.json: it is spoiled" in lacks(kind_of(tests), 20)[0]
