"""Verdicts and terms in other languages: gettext catalogs, English where a text is missing."""

import gettext
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

from seatwork.errors import SeatworkError
from seatwork.shop import wording
from seatwork.shop.house.wording import defaults

CATALOGS = Path(__file__).with_name("catalogs")
DOMAIN = "marking"
NAMES = {"en": "English", "es": "Español"}
"""What a language calls itself, on the buttons that choose it."""


@cache
def languages() -> tuple[str, ...]:
    """Return the codes of the languages there are, English first."""
    found = sorted(path.parents[1].name for path in CATALOGS.glob(f"*/LC_MESSAGES/{DOMAIN}.mo"))
    return ("en", *found)


def words_in(language: str) -> Mapping[str, str]:
    """Return the wording in a language.

    Parameters
    ----------
    language : str
        A code such as en or es.

    Returns
    -------
    mapping
        In English the wording in force, with the instructor's changes; in another
        language its catalog, and English where the catalog has no text.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.

    Examples
    --------
    >>> words_in("es")["words.flush"]
    'al ras'
    """
    return wording() if language == "en" else _words_of(language)


@cache
def _words_of(language: str) -> Mapping[str, str]:
    translate = translator(language)
    return MappingProxyType({name: translate(text) for name, text in defaults().items()})


def translator(language: str) -> Callable[[str], str]:
    """Return what says a text of this room, such as a slip's sentence, in a language.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.

    Examples
    --------
    >>> translator("es")("You used the whole angle. The triangle has half of it.")
    'Usó el ángulo entero. El triángulo lleva la mitad.'
    """
    if language not in languages():
        known = ", ".join(languages())
        raise SeatworkError(language, "there is no catalog of that language", f"known are {known}")
    if language == "en":
        return str
    return gettext.translation(DOMAIN, CATALOGS, [language]).gettext
