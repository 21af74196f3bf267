"""The buttons that ask which way it was speak as the learner does."""

import pytest
from seatwork.shop import wording
from seatwork.worksheet.helping import _first


@pytest.mark.parametrize(
    ("told", "on_the_button"),
    [
        ("You used 90°. The question says 82°.", "I used 90°"),
        ("Good so far: you have the tangent. Now divide.", "I have the tangent"),
        ("Your calculator is in radians. Switch it.", "My calculator is in radians"),
        ("You are one step short.", "I am one step short"),
    ],
)
def test_what_was_done_is_said_in_the_first_person(told: str, on_the_button: str) -> None:
    """As the last button says it: "I did something else"."""
    assert _first(told) == on_the_button
    assert wording()["form.other"].startswith("I ")
