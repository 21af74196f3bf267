"""The prose of the lessons, measured: short sentences, for readers who may be new to English."""

from collections.abc import Iterator
from pathlib import Path
from statistics import median
from typing import Any

import mistune
import nbformat
import pytest
from nltk.tokenize import PunktSentenceTokenizer
from seatwork import opening

LESSONS = sorted((opening.source() / "notebooks").glob("*.ipynb"))
MEDIAN_WORDS = 16
MOST_WORDS = 40
PASSED_OVER = {"table", "block_code", "heading"}

parse = mistune.create_markdown(renderer=None, plugins=["table"])


def paragraphs(tokens: list[dict[str, Any]]) -> Iterator[str]:
    """Yield the text of each paragraph and list item; tables, code and headings are no prose."""
    for token in tokens:
        if token["type"] in ("paragraph", "block_text"):
            yield "".join(words(token["children"]))
        elif token["type"] not in PASSED_OVER:
            yield from paragraphs(token.get("children", []))


def words(tokens: list[dict[str, Any]]) -> Iterator[str]:
    """Yield the words of a paragraph without its marks, and without pictures."""
    for token in tokens:
        if token["type"] in ("softbreak", "linebreak"):
            yield " "
        elif token["type"] != "image":
            yield token.get("raw", "") or "".join(words(token.get("children", [])))


def sentences(path: Path) -> list[str]:
    """List the sentences of a notebook; a row of links is none."""
    cells = [cell for cell in nbformat.read(path, as_version=4).cells if cell.source]
    told = [p for cell in cells if cell.cell_type == "markdown" for p in paragraphs(read(cell))]
    split = PunktSentenceTokenizer().tokenize
    return [one for text in told if "·" not in text for one in split(text)]


def read(cell: nbformat.NotebookNode) -> list[dict[str, Any]]:
    """Parse a Markdown cell."""
    tokens = parse(cell.source)
    assert isinstance(tokens, list)
    return tokens


def test_decimals_and_units_end_no_sentence() -> None:
    """The measure splits at sentence ends, not at a decimal point or at "in" within one."""
    cell = nbformat.from_dict({"source": "Cut it .507 in wide. Then **stop**.\n\n| a |\n|---|\n"})
    split = PunktSentenceTokenizer().tokenize
    assert [split(text) for text in paragraphs(read(cell))] == [
        ["Cut it .507 in wide.", "Then stop."]
    ]


@pytest.mark.parametrize("path", LESSONS, ids=[path.stem for path in LESSONS])
def test_sentences_are_short(path: Path) -> None:
    """Half of the sentences have 16 words or fewer, and none has more than 40."""
    lengths = {one: len(one.split()) for one in sentences(path)}
    assert median(lengths.values()) <= MEDIAN_WORDS
    assert [one for one, length in lengths.items() if length > MOST_WORDS] == []
