"""The glossary as it is read: on screen a leaf for each drawing, on paper all of them."""

from typing import Any

from seatwork.cards.blocks import caption, heading
from seatwork.cards.pages import Pages
from seatwork.drawings.parts.word_plates import plate
from seatwork.drawings.scene import Drawing, Look
from seatwork.rows import plain
from seatwork.shop.house import glossary as words
from seatwork.shop.house.glossary import Glossary, Term

SCALE = 0.66
"""Size of a drawing on screen, as a share of its own: several stand on one page [-]."""

COLORS = 16
"""Colors that flat line work needs."""

PRINTED = 2.45
"""Height of a drawing on paper [in]."""

PLAIN = str.maketrans("áéíóúüñ", "aeiouun")
"""The plain letter of each that Spanish writes with an accent."""

HEADS = ("English", "Español", "What it is", "Qué es")


class Leaf:
    """One drawing with its words in both languages.

    Parameters
    ----------
    plate : str
        Which drawing, such as cone.
    look : Look, optional
        Palette and size.

    Raises
    ------
    SeatworkError
        If no drawing has that name.
    """

    def __init__(self, plate: str, look: Look | None = None) -> None:
        self.terms = words.glossary().on(plate)
        self.drawing = _drawn(plate, self.terms, look)

    def __repr__(self) -> str:
        lines = [f"{term.english} | {term.in_spanish} | {term.says}" for term in self.terms]
        return "\n".join([self.drawing.text, *lines])

    def markdown(self) -> str:
        """Return the picture, then a table of the words."""
        rows = [HEADS, ("---",) * len(HEADS)]
        rows += [
            (f"**{plain(t.english)}**", plain(t.in_spanish), plain(t.says), plain(t.dice))
            for t in self.terms
        ]
        table = "\n".join(f"| {' | '.join(row)} |" for row in rows)
        picture = self.drawing.markdown(SCALE, COLORS).partition("\n")[0]
        return f"{picture}\n\n{table}"

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        return {"text/plain": repr(self), "text/markdown": self.markdown()}


class Index:
    """Every word, in the order of one language, with the other and the drawing it is on.

    Parameters
    ----------
    spanish : bool
        Whether Spanish comes first.
    """

    def __init__(self, *, spanish: bool = False) -> None:
        known = words.glossary()
        self.heads = (
            ("Español", "English", "dibujo") if spanish else ("English", "Español", "drawing")
        )
        self.rows = sorted(
            (_row(known, term, spanish) for term in known.terms), key=lambda row: _plain_key(row[0])
        )

    def __repr__(self) -> str:
        return "\n".join(" | ".join(row) for row in self.rows)

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        rows = [self.heads, ("---",) * 3, *(tuple(plain(cell) for cell in r) for r in self.rows)]
        table = "\n".join(f"| {' | '.join(row)} |" for row in rows)
        return {"text/plain": repr(self), "text/markdown": table}


def leaf(plate: str) -> Leaf:
    """Show one drawing of the glossary with its words.

    Parameters
    ----------
    plate : str
        Which drawing: cone, head, flush, bores, edges, shapes, cutter, kinds, pilot, press, speed,
        marks, gaging, centers or note.
    """
    return Leaf(plate)


def index(*, spanish: bool = False) -> Index:
    """List every word by the alphabet.

    Parameters
    ----------
    spanish : bool
        Whether Spanish comes first.
    """
    return Index(spanish=spanish)


def note() -> str:
    """Say where the words come from."""
    return words.glossary().note


def glossary_page(*, paper: str = "") -> Pages:
    """Set every drawing with its words in both languages.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    known = words.glossary()
    pages = Pages(paper, foot="Glossary / Glosario")
    heading(pages, "Glossary / Glosario", known.note)
    columns = [share * pages.room for share in (0.3, 0.35, 0.35)]
    for one in known.plates:
        terms = known.on(one.name)
        caption(pages, f"{one.english} / {one.spanish}", needs=PRINTED + 1.2)
        drawing = _drawn(one.name, terms, Look(palette="print"))
        pages.picture(drawing.png(1.5), height=PRINTED)
        pages.words[-1].append(drawing.text)
        rows = [(f"{term.english}: {term.in_spanish}", term.says, term.dice) for term in terms]
        pages.table([("word / palabra", "what it is", "qué es"), *rows], columns)
        pages.space(0.2)
    return pages


def _drawn(name: str, terms: tuple[Term, ...], look: Look | None) -> Drawing:
    return plate(name, {term.english: (term.english, term.spanish) for term in terms}, look)


def _row(known: Glossary, term: Term, spanish: bool) -> tuple[str, str, str]:
    drawing = known.plate(term.plate)
    if spanish:
        return term.in_spanish, term.english, drawing.spanish
    return term.english, term.in_spanish, drawing.english


def _plain_key(text: str) -> str:
    """Sort accented letters beside their plain ones."""
    return text.casefold().translate(PLAIN)
