"""A pick in Spanish: asked and told so at a press; the bet and what is right stay."""

import pytest
from seatwork.marking.speaking import unsaid
from seatwork.picks import bets, form, still, view
from seatwork.picks.view import PickView
from seatwork.picks.wording import words

from tests.catalogs import pick_texts, without_text


@pytest.mark.slow
def test_every_pick_has_its_spanish() -> None:
    """Questions, choices, what is said after the bet with its numbers, why other bets tempt."""
    assert without_text(pick_texts(), "es") == set()


def test_the_small_words_of_a_pick_have_their_spanish() -> None:
    """What stands on the form of every pick."""
    texts = [*form.WORDS.values(), form.COVER, form.PLACE, "Your pick", "{low} to {high}"]
    texts += [still.RIGHT, bets.NOW_LOOK, bets.YOU_BET, bets.YOU_BET_RIGHT, "{first} and {last}"]
    texts += [view.OPEN, view.DRAWN, view.WHY, view.WHY_OTHERS, view.NOT_KEPT, view.FIRST]
    assert [text for text in texts if unsaid(text, "es")] == []


@pytest.mark.slow
def test_a_press_says_a_pick_in_spanish_before_and_after_the_bet() -> None:
    """All picks on the page change together; the bet locked and its verdict stay."""
    shown = PickView(words("angle-eight"), room=False, is_open=False)
    other = PickView(words("depth-stop"), room=False, is_open=False)
    shown.heard({"speak": "es"})
    assert other.form.asked["language"] == "es"
    assert shown.form.asked["question"].startswith("Cabeza de 82°, asiento de 90°")
    assert [letter for letter, _ in shown.form.asked["choices"]] == ["a", "b", "c", "d"]
    shown.heard({"lock": ["c"], "sure": True})
    assert shown.form.answer["said"] == "Apostó c. Apuesta correcta."
    assert shown.form.answer["heading"] == "Por qué tientan otras apuestas"
    shown.heard({"speak": "tlh"})
    shown.heard({"speak": "en"})
    assert shown.form.answer["said"] == "You bet c. Right bet."
    assert shown.form.answer["bet"] == ["c"]
    for one in (shown, other):
        one.close()
