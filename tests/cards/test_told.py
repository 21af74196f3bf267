"""Rows of a plan on the screen of a notebook."""

from seatwork.cards import told
from seatwork.plan.rows import Row

ROWS = (Row(label="hole", text="#7 drill"), Row(label="tool", text="A|B, <b> *sharp*"))


def test_rows_become_a_table_with_the_rows_as_text() -> None:
    """The text is a line a row; signs that Markdown would take for its own are kept as they are."""
    shown = told(*ROWS)._repr_mimebundle_()
    assert shown["text/plain"] == "hole: #7 drill\ntool: A|B, <b> *sharp*"
    assert shown["text/markdown"].splitlines() == [
        "| | |",
        "|:--|:--|",
        r"| **hole** | \#7 drill |",
        r"| **tool** | A\|B, \<b\> \*sharp\* |",
    ]
