"""A pick in an instructor's own words: what may be said otherwise, and what is refused."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.picks.wording import every, words

NAME = "angle-eight"


@pytest.fixture
def own(tmp_path: Path, monkeypatch):
    """Write the workbook's own picks, and work in it."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    monkeypatch.chdir(tmp_path)

    def write(text: str) -> None:
        (tmp_path / "shop" / "picks.toml").write_text(text, encoding="utf-8")

    return write


def test_own_words_stand_in_and_the_rest_stays(own) -> None:
    """Question and one choice are the instructor's; letters, right bet and bench are as ever."""
    own(f'[pick.{NAME}]\nquestion = "How will it lie?"\nchoice.a = "level"\n')
    found, before = words(NAME), every()[NAME]
    assert (found.question, found.choice["a"]) == ("How will it lie?", "level")
    assert found.choice["b"] == before.choice["b"]
    assert (found.right, found.opens, found.after) == (before.right, before.opens, before.after)
    assert words("angle-contact" if "angle-contact" in every() else "angle-line") != found


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (f'[pick.{NAME}]\nright = "a"\n', "only the words"),
        (f'[pick.{NAME}]\nchoice.h = "x"\n', "another letter"),
        (f"[pick.{NAME}]\nafter = 3\n", "no text"),
        (f'[pick.{NAME}]\nafter = "{{The moon}}"\n', "another readout"),
        ('[pick.angle-eigth]\nafter = "x"\n', "perhaps angle-eight"),
        (f"[pick]\n{NAME} = 3\n", "only the words"),
    ],
)
def test_what_is_no_wording_is_refused(own, text: str, said: str) -> None:
    """One sentence, with the name; which bet is right cannot be changed in a workbook."""
    own(text)
    with pytest.raises(SeatworkError, match=said):
        words(NAME)


def test_a_question_that_answers_its_bet_is_refused(own) -> None:
    """The words that would give the answer away stay out of an own question, too."""
    own(f'[pick.{NAME}]\nquestion = "Is it {every()[NAME].giveaway[0]}?"\n')
    with pytest.raises(SeatworkError, match="answers the bet"):
        words(NAME)
