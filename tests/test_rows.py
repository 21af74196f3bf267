"""Rows of label and text, as a prompt, a print and a notebook show them."""

import pytest
from seatwork import cards
from seatwork.rows import Row, Rows, table

ROWS = (Row(label="hole", text="#7 drill"), Row(label="tool", text="A|B, <b> *sharp*"))


def test_rows_become_a_table_with_the_rows_as_text() -> None:
    """The text is a line a row; signs that Markdown would take for its own are kept as they are."""
    shown = Rows(ROWS)
    assert repr(shown) == "hole: #7 drill\ntool: A|B, <b> *sharp*"
    assert shown._repr_markdown_().splitlines() == [
        "| | |",
        "|:--|:--|",
        r"| **hole** | \#7 drill |",
        r"| **tool** | A\|B, \<b\> \*sharp\* |",
    ]


def test_a_table_has_a_column_of_sources_where_a_row_has_one() -> None:
    """A row without a source leaves its cell blank."""
    sourced = (*ROWS, Row(label="angle", text="82°", source="a standard"))
    lines = table(sourced, title="Sizes").splitlines()
    assert lines[:4] == ["**Sizes**", "", "| | | |", "|:--|:--|:--|"]
    assert lines[-1] == "| **angle** | 82° | a standard |"


def test_the_former_name_answers_and_says_the_new_one() -> None:
    """``cards.told`` gives the rows for one version more."""
    with pytest.warns(DeprecationWarning, match="plan.Rows"):
        assert cards.told(*ROWS) == ROWS
