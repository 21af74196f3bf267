"""Learners' sentences in other languages: a template each, their numbers as they stand.

Question types write English sentences round their numbers. A sentence is looked up with its
numbers, units and names of drills taken out, ``A plate is {0} thick.``, so that one template says
it whatever was drawn, and each value is copied as it stands. A print note, which two spaces set
apart, is never touched. A sentence without a template stays English.
"""

import gettext
import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking.languages import CATALOGS, languages, translator, words_in
from seatwork.shop.folder import find, language_named

SENTENCES = "learners"
"""Domain of the catalogs of sentences."""

UNIT = (
    "mm/rev|mm/min|mm²|mm|µm|in/rev|in/min|in²|in|ipr|ipm|rev/min|rpm|sfm|ft/min|m/min|kHz|Hz|"
    "N·m|lbf·in|lbf·ft|lbf|MPa|kW|hp|deg|N|W|s|%"
)
NUMBER = (
    r"[(√]*[⌀⌵⌴↧⌲□#±−-]*[A-Z]{0,2}\.?\d(?:[\w.,/°×–²-]*[\w°²])?" + rf"(?:\s(?:{UNIT})(?!\w))?[²)]*"
)
SUM = rf"{NUMBER}(?:(?:\s[÷×−+=–]\s|\s?[÷×]\s?){NUMBER})*"
STEPS = r"\d+(?:, \d+){2,}"
CHART = rf"[A-Z]: {NUMBER}(?:; [A-Z]: {NUMBER})*"
LETTER = r"(?<=The )[A-Z](?= drill\b)|[A-Z](?= is the )"
VALUE = re.compile(rf"(?<![\w.])(?:{CHART}|{STEPS}|{SUM}|{LETTER})")
"""What is copied: a number with its sign and unit, a sum of such, steps of a machine, rows of a
drill chart, the letter of a drill or of a size on a drawing."""

ENDS = re.compile(r"(?<=[.?!])(\s+)(?=[^a-z\s]|[a-j]\) )")
OPTION = re.compile(r"\(?[a-j]\) ")
JOINTS = (re.compile(r"(; )(?=[a-j]\) )"), re.compile(r"(; )"), re.compile(r"(: )"))
"""Where a sentence without a template is parted: between options, at semicolons, at colons."""

PLACE = re.compile(r"\{(\d+)\}")
STOPS = ".?!"

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


def template(sentence: str) -> tuple[str, tuple[str, ...]]:
    """Return a sentence with its values taken out, and the values.

    Examples
    --------
    >>> template("A plate is 0.750 in thick.")
    ('A plate is {0} thick.', ('0.750 in',))
    >>> template("Depth: 0.1190 in ÷ 0.8693 = 0.137 in.")
    ('Depth: {0}.', ('0.1190 in ÷ 0.8693 = 0.137 in',))
    """
    values: list[str] = []

    def taken(found: re.Match[str]) -> str:
        values.append(found[0])
        return f"{{{len(values) - 1}}}"

    return VALUE.sub(taken, sentence), tuple(values)


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
        return said if said != text else "".join(_pieces(text, catalog, []))

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
        list(_pieces(text, _catalog(language), missing))
    return tuple(missing)


class _Unsaid(gettext.NullTranslations):
    """Says nothing of what a catalog has not."""

    def gettext(self, message: str) -> str:
        """Return no text at all."""
        del message
        return ""


@cache
def _catalog(language: str) -> gettext.NullTranslations:
    catalog = gettext.translation(SENTENCES, CATALOGS, [language])
    catalog.add_fallback(_Unsaid())
    return catalog


def _pieces(text: str, catalog: gettext.NullTranslations, missing: list[str]) -> Iterator[str]:
    """Yield a text sentence by sentence in the catalog's language, with what stands between."""
    for number, line in enumerate(text.split("\n")):
        told, gap, note = line.partition("  ")
        yield "\n" if number else ""
        whole = _template(told, catalog)
        for piece in ENDS.split(told) if whole is None else ():
            said = _sentence(piece, catalog)
            if said is None:
                missing.append(piece)
            yield piece if said is None else said
        yield (whole or "") + gap + note


def _sentence(sentence: str, catalog: gettext.NullTranslations) -> str | None:
    """Say one sentence: whole, else by its parts; None if a part of it has no template."""
    if (whole := _template(sentence, catalog)) is not None:
        return whole
    body = sentence.rstrip(STOPS)
    stop = sentence[len(body) :]
    if stop == "." and (whole := _template(body, catalog)) is not None:
        return whole + stop
    for joint in JOINTS:
        parts = joint.split(body)
        if len(parts) > 1:
            said = [part if n % 2 else _sentence(part, catalog) for n, part in enumerate(parts)]
            if None not in said:
                return "".join(map(str, said)) + stop
    if letter := OPTION.match(sentence):
        option = _sentence(sentence[letter.end() :], catalog)
        return None if option is None else letter[0] + option
    return None


def _template(sentence: str, catalog: gettext.NullTranslations) -> str | None:
    """Say a sentence by its template; None if there is none."""
    asked, values = template(sentence)
    if asked.upper() == asked:
        return sentence  # values, signs and words of a print
    said = catalog.gettext(asked)
    return PLACE.sub(lambda place: values[int(place[1])], said) if said else None
