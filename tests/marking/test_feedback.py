"""Feedback in plain words: no script, everything escaped, Spanish where there is a catalog."""

import gettext
from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path
from random import Random
from string import Formatter

import pytest
from seatwork.cards import feedback_page
from seatwork.errors import SeatworkError
from seatwork.marking import AnswerFile, Sheet, languages, mark
from seatwork.marking.languages import CATALOGS, DOMAIN, words_in
from seatwork.marking.learner_words import feedback, page
from seatwork.questions import all_types
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.record import forms
from seatwork.shop.house.wording import defaults

EVIL = "<script>alert(1)</script>"


class Tags(HTMLParser):
    """Collects the tags and attributes of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.seen: list[tuple[str, str]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Keep a tag with each of its attributes."""
        self.seen.extend((tag, name) for name, _ in attrs or [("", "")])


@pytest.mark.slow
def test_feedback_holds_no_script_and_no_request(
    course_folder: Path,
    sheet: Sheet,
    handed_in: Path,
    right_file: Callable[[str], AnswerFile],
    tmp_path: Path,
) -> None:
    """A learner's text never becomes markup, in the page or in the PDF."""
    right_file("L01").changed("q1", parts=(EVIL,)).save(handed_in)
    one = mark(forms(course_folder), sheet, handed_in)[0]
    form = forms(course_folder).form("small", "L01", 1)
    assert form is not None
    said = feedback(sheet, form, one, words_in("es"), "es")
    tags = Tags()
    tags.feed(page(said))
    assert {tag for tag, _ in tags.seen} <= {
        *("html", "head", "meta", "title", "style", "body", "h1", "h2", "p")
    }
    assert {name for _, name in tags.seen} <= {"", "lang", "charset", "class"}
    assert EVIL not in page(said)
    feedback_page(tmp_path / "said.pdf", said)
    first = (tmp_path / "said.pdf").read_bytes()
    feedback_page(tmp_path / "said.pdf", said)
    assert (tmp_path / "said.pdf").read_bytes() == first
    assert b"CreationDate" not in first


def test_the_spanish_catalog_is_compiled_and_whole() -> None:
    """Every verdict line has a Spanish text with the same placeholders; none is out of date."""
    catalog = gettext.translation(DOMAIN, CATALOGS, ["es"])
    for name, text in defaults().items():
        spanish = catalog.gettext(text)
        assert spanish != text or text == "normal", f"{name} has no Spanish text"
        assert _names(spanish) == _names(text)


def _names(text: str) -> set[str | None]:
    return {name for _, name, _, _ in Formatter().parse(text)} - {None}


def test_every_slip_has_a_spanish_sentence() -> None:
    """Whatever slip a verdict names, in the catalogue or by a type alone, it is said in Spanish."""
    translate = languages.translator("es")
    kinds = all_types().values()
    drawn = {
        slip.sentence for kind in kinds for n in range(6) for slip in kind.draw(Random(n)).slips
    }
    assert len(drawn) > 100
    assert [one for one in {*SLIPS.values(), *drawn} if translate(one) == one] == []


def test_every_slip_of_the_engine_is_told_in_spanish() -> None:
    """A step, a size or an angle in a sentence has its Spanish words, and so has the sentence."""
    translate = languages.translator("es")
    english = set()
    for kind in all_types().values():
        for part in (part for n in range(4) for part in kind.draw(Random(n)).parts):
            for slip in part.more(part) if isinstance(part, NumberPart) else ():
                words = (word for _, word in slip.words if not any(map(str.isdigit, word)))
                english |= {text for text in (slip.frame, *words) if translate(text) == text}
                assert slip.told(translate) != slip.told()
    assert english == set()


def test_an_unknown_language_is_told() -> None:
    """English and Spanish are there; another gives a sentence."""
    assert languages.languages() == ("en", "es")
    with pytest.raises(SeatworkError, match="known are en, es"):
        words_in("tlh")
