"""The glossary on screen and on paper holds the same words, and nothing on paper is clipped."""

from collections.abc import Callable

import pytest
from seatwork.cards import Pages, glossary
from seatwork.shop.house.glossary import glossary as words


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_nothing_on_paper_is_small_clipped_or_overlapping(
    paper: str, faults: Callable[[Pages], list[str]]
) -> None:
    """Every letter of the tables is 12 pt or more, on the page and clear of the others."""
    assert faults(glossary.glossary_page(paper=paper)) == []


@pytest.mark.slow
def test_the_paper_has_every_word_in_both_languages() -> None:
    """Word, Spanish word with its regions, and both sentences are printed."""
    said = " ".join(line for page in glossary.glossary_page().words for line in page)
    for term in words().terms:
        for text in (f"{term.english}: {term.in_spanish}", term.says, term.dice):
            assert text in said


def test_a_leaf_is_a_picture_with_words_and_a_table() -> None:
    """Markdown: an image with alt text first, then a row for each word; as text, the same words."""
    shown = glossary.leaf("flush")._repr_mimebundle_()
    picture, _, table = shown["text/markdown"].partition("\n\n")
    assert picture.startswith("![Three flat heads in section")
    assert table.count("\n") == 4
    for word in ("proud", "sobresale", "al ras", "bajo el ras"):
        assert word in table
        assert word in shown["text/plain"]


def test_the_index_is_sorted_in_its_own_language() -> None:
    """English starts with below flush; in Spanish an accent does not send a word to the end."""
    english = [row[0] for row in glossary.index().rows]
    assert english[0] == "below flush"
    spanish = [row[0] for row in glossary.index(spanish=True).rows]
    letters = [row[0].lower() for row in spanish]
    assert letters.index("á") < letters.index("b")
    assert len(english) == len(spanish) == len(words().terms)
