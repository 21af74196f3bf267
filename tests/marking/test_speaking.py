"""Learners' sentences in Spanish: none lacks its text, and every number stands as it stood."""

import io
import re
import tomllib
import unicodedata
from pathlib import Path
from random import Random
from string import Formatter

import pytest
from babel.messages.mofile import read_mo
from babel.messages.pofile import read_po
from hypothesis import given
from hypothesis import strategies as st
from matplotlib.text import Text
from seatwork.drawings.scene import Look
from seatwork.entries.sentences import JOINTS, PLACE, template
from seatwork.marking import sheets
from seatwork.marking.languages import CATALOGS, languages
from seatwork.marking.speaking import SENTENCES, speaker, unsaid
from seatwork.questions import all_types
from seatwork.questions.cuts.cone_triangle import LAST, triangle_at
from seatwork.questions.type.pictures import spoken
from seatwork.shop.folder import package_text

from tests.catalogs import (
    SYSTEMS,
    compiled,
    drawn_texts,
    paper_texts,
    picture_texts,
    question_texts,
    refusal_texts,
    without_text,
)

SHEETS = Path(__file__).resolve().parents[2] / "exercises" / "sheets"
NUMBERS = re.compile(r"\d+(?:[.,/]\d+)*")
SPANISH = CATALOGS / "es" / "LC_MESSAGES" / f"{SENTENCES}.po"
QUICK, LONG = range(2), range(300)


def flat(text: str) -> str:
    """Return letters without accents, small."""
    plain = unicodedata.normalize("NFD", text.lower())
    return "".join(sign for sign in plain if not unicodedata.combining(sign))


@pytest.fixture(scope="module")
def said() -> dict[str, str]:
    """Every template of the Spanish catalog with its text."""
    catalog = read_po(SPANISH.open("rb"), locale="es")
    return {str(one.id): str(one.string) for one in catalog if one.id}


@pytest.mark.slow
def test_every_sentence_of_every_type_has_its_spanish() -> None:
    """A few draws of each type, in both systems: text, parts, options, hints, worked answer."""
    assert without_text(drawn_texts(QUICK), "es") == set()


@pytest.mark.slow
def test_every_picture_has_its_spanish_words() -> None:
    """What stands on the picture of a question, on its triangle, and what each shows in words."""
    assert without_text(picture_texts(range(1)), "es") == set()


def test_every_refusal_that_a_learner_reads_has_its_spanish() -> None:
    """Why an entry cannot be read, an answer not be kept, a sheet not be handed in."""
    texts = set(refusal_texts())
    assert len(texts) > 100
    assert without_text(texts, "es") == set()


def test_what_stands_on_paper_for_learners_has_its_spanish() -> None:
    """Cautions, the frame of a job card, of a worksheet and of a report."""
    assert without_text(paper_texts(), "es") == set()


@pytest.mark.slow
def test_no_spanish_word_leaves_its_picture() -> None:
    """Spanish words are longer than English ones: each still lies on the page it is drawn on."""
    questions = [kind.draw(Random(1)) for kind in all_types().values()]
    drawn = [one.drawing() for one in questions]
    drawn += [triangle_at(one, LAST, Look()) for one in questions]
    for drawing in (spoken(one, speaker("es")) for one in drawn if one):
        drawing.figure.draw_without_rendering()
        page = drawing.figure.bbox
        for text in drawing.figure.findobj(Text):
            box = text.get_window_extent()
            inside = page.x0 <= box.x0 and box.x1 <= page.x1 and page.y0 <= box.y0
            assert not text.get_text() or (inside and box.y1 <= page.y1), text


@pytest.mark.long
def test_every_sentence_of_many_draws_has_its_spanish_and_its_numbers() -> None:
    """What the quick test holds, over many draws."""
    texts = set(drawn_texts(LONG))
    assert without_text(texts, "es") == set()
    assert [text for text in texts if not _same_numbers(text)] == []


@pytest.mark.long
def test_every_picture_of_many_draws_has_its_spanish_words() -> None:
    """What the quick test holds, over more draws."""
    texts = set(picture_texts(range(15)))
    assert without_text(texts, "es") == set()
    assert [text for text in texts if not _same_numbers(text)] == []


@pytest.mark.slow
def test_every_number_stands_in_the_spanish_as_it_stood() -> None:
    """No number is lost, written otherwise or added; no print note is touched."""
    say = speaker("es")
    for kind in all_types().values():
        question = kind.draw(Random(1))
        for system in SYSTEMS:
            for text in question_texts(question.stated_in(system)):
                assert _same_numbers(text), text
                for note in re.findall(r"  (.+)", text):
                    assert f"  {note}" in say(text)


def _same_numbers(text: str) -> bool:
    return set(NUMBERS.findall(text)) == set(NUMBERS.findall(speaker("es")(text)))


def test_every_template_keeps_its_values_and_has_no_number_of_its_own(said: dict[str, str]) -> None:
    """A Spanish text has the places of the English one, and no digit but theirs."""
    for english, spanish in said.items():
        assert _places(spanish) == _places(english), english
        for text in (english, spanish):
            assert not re.search(r"\d", PLACE.sub("", text)), text
        assert not template(PLACE.sub("", english))[1], "it would never be found"


def _places(text: str) -> set[str | None]:
    return {name for _, name, _, _ in Formatter().parse(text)} - {None}


def test_a_sentence_has_one_spanish_whole_or_by_its_parts(said: dict[str, str]) -> None:
    """Where a sentence has a template and its parts have theirs, both ways say the same."""
    for english, spanish in said.items():
        body = english.rstrip(".?")
        for joint in JOINTS:
            parts = joint.split(body)
            if len(parts) > 1 and all(part in said for part in parts[::2]):
                joined = "".join(said.get(part, part) for part in parts)
                assert joined == spanish.rstrip(".?"), english


def test_a_word_of_the_trade_is_that_of_the_glossary(said: dict[str, str]) -> None:
    """One Spanish word a term: that of the shop's glossary, by its first letters."""
    terms = {
        one["english"]: one["spanish"]
        for one in tomllib.loads(package_text("glossary.toml"))["term"]
    }
    held = (
        *("countersink", "counterbore", "spotface", "included angle", "diameter at the face"),
        *("depth", "seat", "proud", "below flush", "washer", "wrench socket", "chamfer", "burr"),
        *("draft", "pitch", "nose", "pilot", "lip", "quill", "center drill", "lathe center"),
        *("gage ball", "straightedge", "major diameter", "pad"),
    )
    for term in held:
        stem = flat(terms[term]).split()[0][:5]
        for english, spanish in said.items():
            prose = re.sub(r"parts washer|\b[A-Z]{2,}\b", "", english)  # and no word of a print
            if re.search(rf"\b{term}s?\b", prose, re.IGNORECASE):
                assert stem in flat(spanish), (term, english)


def test_the_title_of_every_sheet_has_its_spanish() -> None:
    """The sheets that come with the package are named in Spanish."""
    titles = [sheets.load(path.stem).title for path in sorted(SHEETS.glob("*.toml"))]
    assert len(titles) > 10
    assert without_text(titles, "es") == set()


@pytest.mark.slow
@pytest.mark.parametrize("language", languages()[1:])
def test_each_compiled_catalog_is_that_of_its_source(language: str) -> None:
    """The .mo files that are shipped are compiled from the .po files beside them."""
    found = sorted((CATALOGS / language).rglob("*.po"))
    assert {path.stem for path in found} == {"marking", SENTENCES}
    for path in found:
        assert len(messages(compiled(path))) > 100
        assert messages(path.with_suffix(".mo").read_bytes()) == messages(compiled(path)), path.name


def messages(catalog: bytes) -> dict[str, str]:
    """Return every message of a compiled catalog with its translation.

    The header names the compiler, whose versions order messages differently: neither counts.
    """
    read = read_mo(io.BytesIO(catalog))
    return {str(one.id): str(one.string) for one in read if one.id}


@pytest.mark.slow
@given(st.text(max_size=80))
def test_what_has_no_template_comes_back_as_it_was(text: str) -> None:
    """Whatever is said, it never fails, and what is unsaid stays letter for letter."""
    if unsaid(text, "es"):
        kept = [one for one in unsaid(text, "es") if one not in speaker("es")(text)]
        assert kept == []
    assert speaker("en")(text) == text
