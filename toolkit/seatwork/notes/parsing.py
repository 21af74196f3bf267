"""The grammar at work: a note's text turned into a row of phrases with their places."""

import re
from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import lru_cache
from importlib import resources
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from lark import Lark

IN_BRACKETS = re.compile(r"(?:\d+[- ])?\d+/[1-9]\d*(?![\d.,])|\d*[.,]?\d+")


@dataclass(frozen=True, slots=True)
class Number:
    """A number as typed, with the unit typed behind it."""

    text: str
    unit: str
    start: int
    end: int
    sign: str = ""


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number with what a note hangs on it: tolerance, the other unit, MAX, REF."""

    number: Number
    tolerance: str = ""
    others: tuple[Number, ...] = ()
    fit: str = ""
    dual: str = ""
    bounds: tuple[str, ...] = ()

    @property
    def is_angle(self) -> bool:
        """Whether any of its numbers is in degrees."""
        return any(n.unit.startswith(("°", "DEG")) for n in (self.number, *self.others))

    @property
    def again(self) -> tuple[float, ...]:
        """The numbers of ``[12.57-12.83]`` or ``[1/2]``, the size said in the other unit."""
        return tuple(float(sum(map(Fraction, re.split(r"[- ]", one.replace(",", ".")))))
                     for one in IN_BRACKETS.findall(self.dual))  # fmt: skip

    def without_bounds(self) -> "Quantity":
        """Return the same without MAX and MIN."""
        return replace(self, bounds=())


@dataclass(slots=True)
class Phrase:
    """One phrase: what kind, the text it stands in, and its quantity where it has one."""

    kind: str
    start: int
    end: int
    text: str = ""
    quantity: Quantity | None = None
    marks: set[str] = field(default_factory=set)
    bound: str = ""
    also: "Phrase | None" = None  # the same drill said again, in brackets

    @property
    def is_angle(self) -> bool:
        """Whether it is a size in degrees."""
        return self.quantity is not None and self.quantity.is_angle


READY = "note.ready"
"""Name under which a page taken home holds the parser ready-made: building it takes a second."""


@lru_cache(maxsize=1)
def parser() -> "Lark":
    """Return the note parser; built, or unpacked, at the first note that is read."""
    from lark import Lark

    here = resources.files("seatwork.notes")
    if (here / READY).is_file():
        with (here / READY).open("rb") as ready:
            return Lark.load(ready)
    grammar = (here / "note.lark").read_text(encoding="utf-8")
    return Lark(grammar, parser="lalr", lexer="contextual", maybe_placeholders=False)


def phrases(text: str) -> list[Phrase]:
    """Return the phrases of a note in the grammar's characters.

    Raises
    ------
    lark.exceptions.UnexpectedInput
        Where a character, word or order is none of a note.
    """
    return [_phrase(tree) for tree in parser().parse(text).children]


def _tokens(tree: Any) -> list[Any]:
    """Return all tokens below a tree in order."""
    if not hasattr(tree, "children"):
        return [tree]
    return [token for child in tree.children for token in _tokens(child)]


def _phrase(tree: Any) -> Phrase:
    tokens = _tokens(tree)
    start, end = tokens[0].start_pos, tokens[-1].end_pos
    if tree.data == "sign":
        return Phrase(tokens[0].type, start, end, str(tokens[0]))
    if tree.data == "phrase":
        tree = tree.children[0]
    kind = "plain" if tree.data == "size" else str(tree.data)
    found = next((c for c in tree.children if getattr(c, "data", "") == "quantity"), None)
    marks = {"reference"} if any(token.type == "LEFT" for token in tokens) else set()
    quantity = _quantity(found) if found is not None else None
    if kind == "flush_within":
        within = tree.children[-1]
        others = tuple(_others(within))
        quantity = Quantity(Number("0", others[0].unit, start, start), str(within.data), others)
    return Phrase(kind, start, end, " ".join(tokens), quantity, marks)


def _quantity(tree: Any) -> Quantity:
    parts: dict[str, Any] = {"bounds": ()}
    for child in tree.children:
        name = child.type if hasattr(child, "type") else str(child.data)
        if name == "number":
            parts["number"] = _number(child)
        elif name == "DUAL":
            parts["dual"] = str(child)
        elif name == "BOUND":
            parts["bounds"] = (*parts["bounds"], str(child)[:3].lower())
        elif name == "fit":
            parts["fit"] = str(child.children[0])
        else:
            parts["tolerance"] = name
            parts["others"] = tuple(_others(child))
    return Quantity(**parts)


def _others(tree: Any) -> list[Number]:
    found = []
    for child in tree.children:
        name = str(getattr(child, "data", ""))
        if name == "signed":
            found.append(_number(child.children[1], str(child.children[0])))
        elif name == "number":
            found.append(_number(child))
        elif getattr(child, "type", "") in ("NO_MORE", "NO_LESS"):
            found.append(Number("0", "", child.start_pos, child.end_pos, "+"))
    return found


def _number(tree: Any, sign: str = "") -> Number:
    digits, *unit = tree.children
    end = unit[0].end_pos if unit else digits.end_pos
    return Number(str(digits), str(unit[0]) if unit else "", digits.start_pos, end, sign)
