"""The words of every pick: whole, short, and true to the bench they open."""

import re

import pytest
from seatwork import rows
from seatwork.errors import SeatworkError
from seatwork.picks import pick
from seatwork.picks.bench_of import before, filled, opened
from seatwork.picks.still import right_one
from seatwork.picks.wording import LETTERS, Words, every, place_of, words

ALL = list(every().values())
LONGEST = 30
"""Words in a sentence that a learner reads."""

each = pytest.mark.parametrize("pick_words", ALL, ids=[one.name for one in ALL])


def test_every_kind_of_pick_is_there() -> None:
    """One of several, several, a number, and the letter of a picture."""
    assert {one.kind for one in ALL} == {"one", "several", "number", "letter"}


@each
def test_a_pick_can_be_answered_and_says_why(pick_words: Words) -> None:
    """At least two choices, and a reason for each that is not right; numbers have a band."""
    if pick_words.kind == "number":
        assert all(ask.least <= ask.right[0] <= ask.right[1] <= ask.most for ask in pick_words.ask)
        return
    letters = set(pick_words.choice)
    assert len(letters) >= 2
    wanted = letters if pick_words.kind == "several" else letters - set(pick_words.right)
    assert wanted == set(pick_words.tempt)
    assert "".join(pick_words.choice) == LETTERS[: len(letters)]


@each
def test_its_sentences_are_short(pick_words: Words) -> None:
    """No sentence of a question, an answer or a reason has more than thirty words."""
    texts = [pick_words.question, pick_words.after, *pick_words.tempt.values()]
    texts += [tempt.says for ask in pick_words.ask for tempt in ask.tempt]
    for text in texts:
        sentences = re.split(r"(?<=[.?!:;])\s", text)
        assert max(len(sentence.split()) for sentence in sentences) <= LONGEST, text


@each
def test_nobody_is_called_wrong(pick_words: Words) -> None:
    """No reason says "wrong", "stupid" or a code of a slip."""
    told = " ".join([*pick_words.tempt.values(), pick_words.after])
    assert not re.search(r"\byou are wrong\b|\bmistaken\b|\bM\d\d\b", told, re.IGNORECASE)


@each
@pytest.mark.slow
def test_every_number_in_braces_is_filled(pick_words: Words) -> None:
    """The bench that opens has each readout that the answer names; every bet can be drawn."""
    told = filled(pick_words, opened(pick_words))
    assert "{" not in told
    assert before(pick_words) is None or pick_words.shows
    for letter in pick_words.drawn:
        bench = opened(pick_words, letter)
        assert bench is not None
        drawn = bench.values["pick"] if pick_words.kind == "letter" else bench.comparing
        assert drawn == (letter.upper() if pick_words.kind == "letter" else True)


@each
def test_the_question_does_not_answer_itself(pick_words: Words) -> None:
    """None of the giveaway words stands in the question."""
    assert [one for one in pick_words.giveaway if one in pick_words.question] == []


@each
@pytest.mark.slow
def test_the_picture_before_does_not_answer(pick_words: Words) -> None:
    """The bench that is seen before the bet says none of the giveaway words."""
    bench = before(pick_words)
    seen = f"{bench.text} {bench.readouts()}" if bench else ""
    assert [one for one in pick_words.giveaway if one in seen] == []


@pytest.mark.slow
@pytest.mark.parametrize("name", ["cutter-guard", "cutter-cap"])
def test_the_right_letter_is_the_benchs_own(name: str) -> None:
    """The letter that counts as right is that of the cutter which the bench takes."""
    bench = opened(words(name))
    assert bench is not None
    assert bench.text.startswith(f"Take {words(name).choice[words(name).right]}, ")


def test_a_place_on_the_page() -> None:
    """Picks of a page are counted in the order in which the page asks them."""
    assert place_of("angle-sign")[0] == 1
    assert place_of("angle-sign")[1] == sum(one.page == "angle_standards" for one in ALL)


def test_a_name_that_is_not_there_is_said_plainly() -> None:
    """A misspelt name is answered with the nearest one."""
    with pytest.raises(SeatworkError, match="no pick has that name") as found:
        pick("angel-eight")
    assert "angle-eight" in found.value.remedy


def test_the_still_folds_its_answer_away() -> None:
    """Question and boxes stand open; the answer stands in a fold that is closed."""
    shown = pick("depth-halves").still()["text/markdown"]
    open_part, fold = shown.split("<details>")
    assert open_part.count("☐") == 4
    assert "I bet ___" in open_part
    assert fold.startswith("<summary>")
    assert rows.plain(right_one(words("depth-halves"))) in fold
