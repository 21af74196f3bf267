"""Rows of a label and what is said of it: one list for the screen, the card and the notebook."""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Self

MOST = 118
"""Characters of the one line that stands for an object."""

WORDS = {"stop": "STOP AND ASK", "look": "LOOK", "holds": "holds"}
"""The word that leads a line of these kinds."""

MARKUP = re.compile(r"([\\`*_\[\]<>#|~$&!])")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line of what is told.

    Parameters
    ----------
    label : str
        What it is.
    text : str
        What it says, sizes in both unit systems.
    source : str
        Where it comes from; empty where it is plain reckoning.
    kind : str
        What kind of line it is: ``stop``, ``look``, ``set``, ``assumed`` ...; empty for a plain
        one. Whoever must know asks the kind, never the words.
    place : str
        Which part of the whole it belongs to, such as a seat; empty where it belongs to all.
    cells : tuple of (str, str)
        Heading and words of each column, for a line of a table with its own columns; `text`
        says the same in one line.

    Examples
    --------
    >>> print(Row(label="hole", text="#7 drill, 0.201 in (5.11 mm)"))
    hole: #7 drill, 0.201 in (5.11 mm)
    >>> print(Row(label="floor", text="The seat goes through the part.", kind="stop"))
    floor: STOP AND ASK. The seat goes through the part.
    """

    label: str
    text: str
    source: str = ""
    kind: str = ""
    place: str = ""
    cells: tuple[tuple[str, str], ...] = ()

    @property
    def words(self) -> str:
        """The text, led by the word of its kind where it has one."""
        word = WORDS.get(self.kind, "")
        return f"{word}. {self.text}" if word else self.text

    def __str__(self) -> str:
        return f"{self.label}: {self.words}"


def plain(text: str) -> str:
    r"""Return `text` on one line, safe inside Markdown.

    Examples
    --------
    >>> plain("a*b]\n<c>")
    'a\\*b\\] \\<c\\>'
    """
    return MARKUP.sub(r"\\\1", " ".join(text.split()))


def table(rows: Iterable[Row], *, title: str = "", sources: bool = True) -> str:
    r"""Return rows as a Markdown table, with a column of sources where any row has one.

    Parameters
    ----------
    rows : iterable of Row
        What is told; no text of it is taken for markup.
    title : str
        A line above the table; none if empty.
    sources : bool
        Whether sources are told.

    Examples
    --------
    >>> print(table([Row(label="hole", text="#7 drill")], title="Sizes"))
    **Sizes**
    <BLANKLINE>
    | | |
    |:--|:--|
    | **hole** | \#7 drill |
    """
    listed = tuple(rows)
    if listed and all(row.cells for row in listed):
        return _grid(listed, title)
    sourced = sources and any(row.source for row in listed)
    wide = 3 if sourced else 2
    body = [
        f"| **{plain(row.label)}** | {plain(row.words)} |"
        + (f" {plain(row.source)} |" if sourced else "")
        for row in listed
    ]
    return "\n".join([*_titled(title), "| " * wide + "|", "|" + ":--|" * wide, *body])


def _titled(title: str) -> list[str]:
    return [f"**{plain(title)}**", ""] if title else []


def _grid(rows: Sequence[Row], title: str) -> str:
    """Return rows of cells as a Markdown table with their own headings."""
    heads = [head for head, _ in rows[0].cells]
    body = [
        f"| **{plain(row.label)}** | " + " | ".join(plain(text) for _, text in row.cells) + " |"
        for row in rows
    ]
    head = "| | " + " | ".join(plain(one) for one in heads) + " |"
    return "\n".join([*_titled(title), head, "|" + ":--|" * (len(heads) + 1), *body])


def short(text: str, most: int) -> str:
    """Return `text` on one line, cut with an ellipsis after `most` characters.

    Examples
    --------
    >>> short("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD", 16)
    '4X ⌀.201 THRU ⌵…'
    """
    sentence = " ".join(text.split())
    return sentence if len(sentence) <= most else sentence[: most - 1].rstrip() + "…"


class Rows(tuple[Row, ...]):
    """Rows to look at: the last line of a cell shows a table, a prompt the lines.

    Examples
    --------
    >>> Rows([Row(label="hole", text="#7 drill"), Row(label="included angle", text="82°")])
    hole: #7 drill
    included angle: 82°
    """

    __slots__ = ()

    def of(self, *kinds: str) -> Self:
        """Return the rows of some kinds, in their order here."""
        return type(self)(row for row in self if row.kind in kinds)

    def at(self, *places: str) -> Self:
        """Return the rows that belong to some places, in their order here."""
        return type(self)(row for row in self if row.place in places)

    def __repr__(self) -> str:
        return "\n".join(str(row) for row in self)

    def _repr_markdown_(self) -> str:
        return table(self, sources=False)


Blocks = Iterator[tuple[str, Sequence[Row]]]
"""Rows under headings; a heading may be empty."""


class Shown:
    """What seatwork finds: one line in a prompt, a text in print, tables in a notebook.

    A subclass says its ``line`` and its ``blocks``; a dataclass is made with ``repr=False``.
    """

    __slots__ = ()

    def _line(self) -> str:
        """Return the one line that tells what this is."""
        raise NotImplementedError

    def _blocks(self) -> Blocks:
        """Yield everything there is to tell, each block with its heading; it may be empty."""
        raise NotImplementedError

    def __repr__(self) -> str:
        name = type(self).__name__
        return f"<{name} {short(self._line(), MOST - len(name) - 3)}>"

    def __str__(self) -> str:
        lines = [self._line()]
        for heading, rows in self._blocks():
            lines += [heading] if heading and rows else []
            lines += [str(row) for row in rows]
        return "\n".join(lines)

    def _repr_markdown_(self) -> str:
        lines = [table(rows, title=heading) for heading, rows in self._blocks() if rows]
        return "\n\n".join([f"### {plain(self._line())}", *lines])
