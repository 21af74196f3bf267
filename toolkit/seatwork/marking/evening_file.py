"""The list of evenings: which page on which evening, and what the pages cannot say."""

from collections.abc import Iterable
from dataclasses import dataclass, fields
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.lesson_pages import PARTS, LessonPage
from seatwork.shop.folder import package_text, parse_toml, read_toml

FILE, FORMAT = "evenings.toml", 1
FORMS = ("eight", "four")
LONGEST, MOST = 600, 40
WORDS = {"all": "", "first": ", to its place to stop", "rest": ", from its place to stop"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """Minutes that every evening has [min].

    Parameters
    ----------
    evening : int
        The whole of it.
    again, aloud, ticket : int
        Three from before, cautions read aloud, exit ticket.
    """

    evening: int
    again: int
    aloud: int
    ticket: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """What is taken of a page.

    Parameters
    ----------
    page : str
        Its file name without its number.
    here : int
        Minutes of it in the room [min].
    part : {"all", "first", "rest"}
        All of it, or what stands before or behind its place to stop.
    """

    page: str
    here: int
    part: str = "all"

    @property
    def words(self) -> str:
        """What follows the title: nothing for a whole page."""
        return WORDS[self.part]

    def minutes(self, page: LessonPage) -> int:
        """Give its minutes in the room, never more than the part of the page takes [min]."""
        return min(self.here, page.long(self.part))


@dataclass(frozen=True, slots=True, kw_only=True)
class BenchJob:
    """A cut of an evening.

    Parameters
    ----------
    name, note, material, machine : str
        What it is called, its print note, and what it is cut from and on.
    screw, thickness : str
        The screw, where the note names none, and the part's thickness; empty for none.
    """

    name: str
    note: str
    material: str
    machine: str
    screw: str = ""
    thickness: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """An evening as the list gives it.

    Parameters
    ----------
    form, title : str
        Which course it belongs to, and its title.
    pages : tuple of Taught
        Its pages.
    shown, cut, gaged, prepare : tuple of str
        What is shown, cut and gaged, and what is laid out the day before.
    cautions : tuple of str
        Names of the cautions read aloud, as in ``cautions.toml``.
    shown_minutes, cut_minutes, test_minutes : int
        What these take [min].
    test : str
        What the test is; empty for none.
    bench : tuple of BenchJob
        Its cuts.
    """

    form: str
    title: str
    pages: tuple[Taught, ...]
    shown: tuple[str, ...]
    cut: tuple[str, ...]
    gaged: tuple[str, ...]
    prepare: tuple[str, ...]
    cautions: tuple[str, ...]
    shown_minutes: int = 0
    cut_minutes: int = 0
    test_minutes: int = 0
    test: str = ""
    bench: tuple[BenchJob, ...] = ()


def read_evenings(folder: Path | None) -> tuple[tuple[Given, ...], Frame]:
    """Read the list of evenings, a workbook's own where it has one.

    Raises
    ------
    SeatworkError
        With what cannot be read, and in which evening.
    """
    own = folder / "shop" / FILE if folder else None
    if own is not None and own.is_file():
        found, name = read_toml(own), str(own)
    else:
        found, name = parse_toml(package_text(FILE), FILE), FILE
    if found.get("format") != FORMAT:
        raise SeatworkError(name, "its format is not known", f"write format = {FORMAT}")
    listed = found.get("evening")
    if not isinstance(listed, list) or not 0 < len(listed) <= MOST:
        raise SeatworkError(name, "it has no list of evenings", "write [[evening]]")
    given = tuple(_given(one, f"{name}, evening {n}") for n, one in enumerate(listed, 1))
    return given, _made(Frame, found.get("minutes"), f"{name}, minutes")


def _given(found: Any, name: str) -> Given:
    """Build an evening; its lists of tables first."""
    if not isinstance(found, dict):
        raise SeatworkError(name, "an evening is no table", "write [[evening]]")
    tables = {"pages": Taught, "bench": BenchJob}
    made = dict(found)
    for key, kind in tables.items():
        listed = found.get(key, [])
        if not isinstance(listed, list) or len(listed) > MOST:
            raise SeatworkError(f"{name}, {key}", "that is no list", f"write {key} = [...]")
        made[key] = tuple(_made(kind, one, f"{name}, {key}") for one in listed)
    built: Given = _made(Given, made, name)
    if built.form not in FORMS:
        raise SeatworkError(name, "its form is not known", f"write {' or '.join(FORMS)}")
    return built


def _made(kind: Any, found: Any, name: str) -> Any:
    """Build one of the records above from a table, each value of its kind."""
    if not isinstance(found, dict):
        raise SeatworkError(name, "that is no table", "write its names and values")
    known = {field.name: field.type for field in fields(kind)}
    for key in found:
        if key not in known:
            raise SeatworkError(f"{name}, {key}", "no such name is known here", _among(known))
    values = {key: _value(found[key], known[key], f"{name}, {key}") for key in found}
    try:
        built = kind(**values)
    except TypeError as error:
        raise SeatworkError(name, "something is not said", _among(known)) from error
    if isinstance(built, Taught) and built.part not in PARTS:
        raise SeatworkError(name, "that is no part of a page", f"write {', '.join(PARTS)}")
    return built


def _among(known: Iterable[str]) -> str:
    return f"say {', '.join(known)}"


def _value(found: Any, kind: Any, name: str) -> Any:
    """Return a value if it is of its kind: minutes, words, or lines of words."""
    if kind is int:
        if isinstance(found, bool) or not isinstance(found, int) or not 0 <= found <= 600:
            raise SeatworkError(name, "those are no minutes", "write a whole number, 0 to 600")
        return found
    if kind is str:
        return _line(found, name)
    if kind == tuple[str, ...]:
        if not isinstance(found, list) or len(found) > MOST:
            raise SeatworkError(name, "that is no list of lines", 'write ["...", "..."]')
        return tuple(_line(one, name) for one in found)
    return found


def _line(found: Any, name: str) -> str:
    if not isinstance(found, str) or len(found) > LONGEST:
        raise SeatworkError(name, f"that is no text of {LONGEST} letters at most", "shorten it")
    return found
