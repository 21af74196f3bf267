"""The glossary holds the words of the lessons, in both languages, and an instructor's changes."""

import re
from pathlib import Path

import nbformat
import pytest
from seatwork import opening
from seatwork.errors import SeatworkError
from seatwork.shop.house.glossary import glossary

LESSONS = sorted((opening.source() / "notebooks").glob("[01]*.ipynb"))
BOLD = re.compile(r"\*\*([a-z][a-z -]*)\*\*")
PLAIN = {
    "ask", "bench", "cone", "crank bearing cap", "cutter angle", "diameter", "down", "edge",
    "flatter",
    "four places", "from where", "half", "into", "largest diameter that cuts", "least",
    "lips touch the edge of the hole", "over all", "run",
    "steeper", "tallest", "under", "under the head",
}  # fmt: skip
"""Words set bold for weight or as the name of a control, which need no entry."""

HEAD = '[[plate]]\nname = "cone"\nenglish = "A"\nspanish = "A"\n'
WORD = '[[term]]\nenglish = "hole"\nspanish = "hoyo"\nsays = "a"\ndice = "a"\nplate = "cone"\n'


def bold(path: Path) -> set[str]:
    """Find what a lesson sets bold in lower case, without buttons and headings."""
    cells = nbformat.read(path, as_version=4).cells
    prose = "\n".join(cell.source for cell in cells if cell.cell_type == "markdown")
    return set(BOLD.findall(prose))


def written(folder: Path, text: str) -> Path:
    """Make a workbook folder with a glossary of its own."""
    (folder / "shop").mkdir()
    (folder / "shop" / "glossary.toml").write_text(text, encoding="utf-8")
    return folder


@pytest.mark.parametrize("path", LESSONS, ids=[path.stem for path in LESSONS])
def test_a_word_set_bold_in_a_lesson_is_in_the_glossary(path: Path) -> None:
    """A new term is bold once in a lesson and explained here; singular or plural."""
    known = {term.english for term in glossary().terms}
    missing = {word for word in bold(path) - PLAIN if not {word, word.removesuffix("s")} & known}
    assert missing == set()


def test_the_words_of_flushness_are_those_of_the_marking() -> None:
    """A Spanish verdict and the glossary use one word for proud, flush and below flush."""
    from seatwork.marking.languages import words_in

    said = words_in("es")
    here = {term.english: term.spanish for term in glossary().terms}
    for english, name in (("proud", "proud"), ("flush", "flush"), ("below flush", "below")):
        assert here[english] == said[f"words.{name}"]


def test_there_are_some_sixty_words_and_every_sentence_is_short() -> None:
    """At least 45 words; a sentence ends with a stop and has at most 20 words."""
    terms = glossary().terms
    assert len(terms) >= 45
    for term in terms:
        for sentence in (term.says, term.dice):
            assert sentence.endswith(".")
            assert len(sentence.split()) <= 20, sentence


def test_the_note_says_that_the_spanish_is_from_memory() -> None:
    """No document stands behind the Spanish words, and the reader is told."""
    assert "from memory" in glossary().note


def test_an_instructor_s_words_stand_in_for_the_package_s(tmp_path: Path) -> None:
    """The workbook's own file is read instead; a file with a byte-order mark too."""
    own = glossary(written(tmp_path, "\ufeff" + HEAD + WORD))
    assert [term.spanish for term in own.terms] == ["hoyo"]
    assert own.on("cone")[0].in_spanish == "hoyo"


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        (WORD, "names the drawing 'cone'"),
        (HEAD + WORD + WORD, "hole is there twice"),
        (HEAD + WORD.replace('dice = "a"\n', ""), "hole has no dice"),
        (HEAD + WORD + 'color = "red"\n', "unknown key color"),
        (HEAD + "[[term]", "line 5"),
        ("term = [3]", "no table"),
    ],
)
def test_a_spoiled_glossary_is_named_with_its_fault(tmp_path: Path, text: str, fault: str) -> None:
    """The file, the word and what is wrong with it are said."""
    with pytest.raises(SeatworkError, match=r"glossary\.toml") as told:
        glossary(written(tmp_path, text))
    assert fault in str(told.value)


def test_an_unknown_drawing_gets_the_list_of_those_there_are() -> None:
    """A misspelt name is answered with the names."""
    with pytest.raises(SeatworkError, match="cone, head, flush"):
        glossary().on("kone")
