"""The shop's words in English and Spanish, each with one plain sentence and its drawing."""

from dataclasses import dataclass, fields
from importlib.resources import files
from pathlib import Path
from typing import TypeVar

from seatwork.errors import SeatworkError
from seatwork.shop.folder import at, read_toml

FILE = "glossary.toml"


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """One word of the shop.

    Parameters
    ----------
    english, spanish : str
        The word in both languages.
    also : str
        What other regions say in Spanish; empty where there is nothing to add.
    says, dice : str
        One plain sentence in English, and the same in Spanish.
    plate : str
        The drawing that shows it.
    """

    english: str
    spanish: str
    also: str = ""
    says: str
    dice: str
    plate: str

    @property
    def in_spanish(self) -> str:
        """The Spanish word with what other regions say."""
        return f"{self.spanish} ({self.also})" if self.also else self.spanish


@dataclass(frozen=True, slots=True, kw_only=True)
class Plate:
    """One drawing with several words on it.

    Parameters
    ----------
    name : str
        Its short name, such as cone.
    english, spanish : str
        Its heading in both languages.
    """

    name: str
    english: str
    spanish: str


@dataclass(frozen=True, slots=True)
class Glossary:
    """All words, in the order of their drawings.

    Parameters
    ----------
    plates : tuple of Plate
        The drawings.
    terms : tuple of Term
        The words.
    note : str
        Where the words come from.
    """

    plates: tuple[Plate, ...]
    terms: tuple[Term, ...]
    note: str

    def on(self, plate: str) -> tuple[Term, ...]:
        """Return the words of one drawing.

        Raises
        ------
        SeatworkError
            If no drawing has that name.
        """
        self.plate(plate)
        return tuple(term for term in self.terms if term.plate == plate)

    def plate(self, name: str) -> Plate:
        """Return a drawing by its name.

        Raises
        ------
        SeatworkError
            If no drawing has that name.
        """
        for plate in self.plates:
            if plate.name == name:
                return plate
        known = ", ".join(plate.name for plate in self.plates)
        raise SeatworkError(str(name)[:40], "no drawing has that name", f"take one of {known}")


RowT = TypeVar("RowT", Plate, Term)


def glossary(folder: str | Path | None = None) -> Glossary:
    """Return the words in force.

    Parameters
    ----------
    folder : str or Path, optional
        A workbook folder; looked for if not given. Its ``shop/glossary.toml`` stands in for
        the package's own.

    Raises
    ------
    SeatworkError
        If the file cannot be read, a word lacks something, stands there twice, or names a
        drawing that the file does not list.

    Examples
    --------
    >>> [term.spanish for term in glossary().on("flush")]
    ['sobresale', 'al ras', 'bajo el ras']
    """
    place = at(folder)
    own = place / "shop" / FILE if place else None
    return _read(own if own and own.is_file() else _packed())


def _packed() -> Path:
    return Path(str(files("seatwork.shop"))) / "defaults" / FILE


def _read(path: Path) -> Glossary:
    found = read_toml(path)
    plates = tuple(_built(path, Plate, row) for row in found.get("plate", []))
    terms = tuple(_built(path, Term, row) for row in found.get("term", []))
    _check(path, plates, terms)
    order = [plate.name for plate in plates]
    terms = tuple(sorted(terms, key=lambda term: order.index(term.plate)))
    return Glossary(plates, terms, str(found.get("note", "")))


def _built(path: Path, kind: type[RowT], row: object) -> RowT:
    """Make one row, and say which word lacks what."""
    if not isinstance(row, dict):
        raise SeatworkError(path.name, "a word is no table", "write [[term]]")
    name = str(row.get("english", "a row without english"))[:40]
    known = [field.name for field in fields(kind)]
    lacks = [key for key in known if key != "also" and not row.get(key)]
    odd = sorted(row.keys() - set(known))
    if lacks or odd:
        fault = f"{name} has no {lacks[0]}" if lacks else f"{name} has an unknown key {odd[0]}"
        raise SeatworkError(path.name, fault, f"give each {', '.join(known)}")
    return kind(**{key: str(text) for key, text in row.items()})


def _check(path: Path, plates: tuple[Plate, ...], terms: tuple[Term, ...]) -> None:
    names = {plate.name for plate in plates}
    seen: set[str] = set()
    for term in terms:
        if term.english in seen:
            raise SeatworkError(path.name, f"{term.english} is there twice", "remove one")
        if term.plate not in names:
            known = ", ".join(sorted(names))
            raise SeatworkError(
                path.name, f"{term.english} names the drawing {term.plate!r}", f"known are {known}"
            )
        seen.add(term.english)
