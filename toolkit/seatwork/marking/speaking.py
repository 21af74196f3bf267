"""Learners' sentences in other languages: a template each, their numbers as they stand.

Question types write English sentences round their numbers; ``entries.sentences`` takes the numbers
out and looks the rest up in the catalog here. A sentence without a template stays English.
"""

import gettext
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path

from seatwork.entries.sentences import pieces
from seatwork.errors import SeatworkError
from seatwork.marking.languages import CATALOGS, languages, translator, words_in
from seatwork.shop.folder import find, language_named
from seatwork.units.showing import explain

SENTENCES = "learners"
"""Domain of the catalogs of sentences."""

Speaker = Callable[[str], str]


@dataclass(frozen=True, slots=True)
class Voice:
    """What a learner is told in one language.

    Parameters
    ----------
    language : str
        A code such as en or es.

    Examples
    --------
    >>> Voice("es").say("Answer with a whole number.")
    'Responda con un número entero.'
    """

    language: str = "en"

    @property
    def words(self) -> Mapping[str, str]:
        """The wording in that language, see ``words_in``."""
        return words_in(self.language)

    @property
    def say(self) -> Speaker:
        """Says a text of one or more sentences in that language."""
        return speaker(self.language)

    def explain(self, error: SeatworkError) -> str:
        """Tell a fault in that language; what was read stays as it was read."""
        return explain(error, say=self.say)


def voice_at(folder: Path | None = None) -> Voice:
    """Return the language of the workbook that a folder is in; English outside of one.

    Raises
    ------
    SeatworkError
        If the workbook names a language that has no texts.
    """
    workbook = find(folder)
    named = language_named(workbook) if workbook else "en"
    if named not in languages():
        known = " or ".join(f'"{code}"' for code in languages())
        raise SeatworkError(
            "workbook.toml", f'language is "{named}", which has no texts', f"write {known} there"
        )
    return Voice(named)


def speaker(language: str) -> Speaker:
    """Return what says a learner's text, of one or more sentences, in a language.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.

    Examples
    --------
    >>> print(speaker("es")("The plate is .75 thick. The print is in inches and says:  ⌀.201 THRU"))
    La placa tiene .75 de espesor. El plano está en pulgadas y dice:  ⌀.201 THRU
    """
    translator(language)  # refuses a language that is not there
    return str if language == "en" else _speaker(language)


@cache
def _speaker(language: str) -> Speaker:
    catalog = _catalog(language)
    exact = translator(language)

    @lru_cache(maxsize=4096)
    def say(text: str) -> str:
        said = exact(text) if text else ""
        return said if said != text else "".join(pieces(text, catalog.gettext, []))

    return say


def unsaid(text: str, language: str) -> tuple[str, ...]:
    """Return the sentences of a text that have no template in a language.

    Examples
    --------
    >>> unsaid("The plate is .75 thick. Ask the shop cat.", "es")
    ('Ask the shop cat.',)
    """
    missing: list[str] = []
    if text and translator(language)(text) == text:
        list(pieces(text, _catalog(language).gettext, missing))
    return tuple(missing)


class _Unsaid(gettext.NullTranslations):
    """Says nothing of what a catalog has not."""

    def gettext(self, message: str) -> str:
        """Return no text at all."""
        del message
        return ""


def templates(texts: Iterable[str], language: str) -> dict[str, str]:
    """Return the templates that say texts, each with what it is in a language.

    Examples
    --------
    >>> templates(["A plate is .750 in thick."], "es")
    {'A plate is {0} thick.': 'Una placa tiene {0} de espesor.'}
    """
    told, used = _catalog(language).gettext, {}

    def found(asked: str) -> str:
        if said := told(asked):
            used[asked] = said
        return said

    for text in texts:
        list(pieces(text, found, []))
    return used


@cache
def _catalog(language: str) -> gettext.NullTranslations:
    catalog = gettext.translation(SENTENCES, CATALOGS, [language])
    catalog.add_fallback(_Unsaid())
    return catalog
