"""What a page says in two languages: both texts stand in it, its language shows one of them."""

from collections.abc import Iterable
from html import escape

from seatwork.marking.languages import NAMES, languages
from seatwork.marking.speaking import speaker

OTHER = "es"
"""The language that stands beside English on every page."""


def both(english: str, spanish: str) -> str:
    """Return a text of a page in both languages, as markup that is given as such."""
    return (
        f'<span class="say" lang="en">{english}</span><span class="say" lang="es">{spanish}</span>'
    )


def both_said(english: str) -> str:
    """Return a plain text in both languages, escaped."""
    return both(escape(english), escape(speaker(OTHER)(english)))


def other_texts(texts: Iterable[str]) -> dict[str, str]:
    """Return the Spanish of texts by their English, where it differs."""
    say = speaker(OTHER)
    return {text: say(text) for text in dict.fromkeys(texts) if say(text) != text}


def language_buttons(language: str) -> str:
    """Return the two buttons that choose the language of a page; `language` is seen first.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.
    """
    speaker(language)
    buttons = (
        f'<button type="button" lang="{code}" aria-pressed="{str(code == language).lower()}">'
        f"{NAMES[code]}</button>"
        for code in languages()
    )
    return f'<p class="languages">{"".join(buttons)}</p>'
