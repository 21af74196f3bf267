"""Wording that an instructor may change: texts by name, with their placeholders kept."""

from collections.abc import Iterator, Mapping
from functools import lru_cache
from pathlib import Path
from string import Formatter
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.shop import folder as workbook

FILE = "wording.toml"
LONGEST = 1000  # characters in one text


class Wording(Mapping[str, str]):
    """Texts by name, such as ``words.proud``.

    Parameters
    ----------
    texts : dict of str to str
        All texts.

    Examples
    --------
    >>> defaults()["words.below"]
    'below flush'
    """

    def __init__(self, texts: dict[str, str]) -> None:
        self._texts = texts

    def __repr__(self) -> str:
        return f"<Wording {len(self)} texts>"

    def __getitem__(self, name: str) -> str:
        return self._texts[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._texts)

    def __len__(self) -> int:
        return len(self._texts)


def wording(folder: str | Path | None = None) -> Wording:
    """Return the texts in force.

    Parameters
    ----------
    folder : str or Path, optional
        A workbook folder; looked for from the working folder upward if not given.

    Raises
    ------
    SeatworkError
        For an unknown text, or one whose placeholders differ: file, line, what would do.
    """
    place = workbook.at(folder)
    path = place / "shop" / FILE if place else None
    if path is None or not path.is_file():
        return defaults()
    stamp = path.stat()
    return _changed(path, stamp.st_mtime_ns, stamp.st_size)


@lru_cache(maxsize=1)
def defaults() -> Wording:
    """Return the package's own texts."""
    read = workbook.parse_toml(workbook.package_text(FILE), FILE)
    return Wording(dict(_texts(read)))


@lru_cache(maxsize=8)
def _changed(path: Path, _modified: int, _length: int) -> Wording:
    return Wording(apply(workbook.read_text(path), str(path)))


def apply(text: str, name: str) -> dict[str, str]:
    """Return all texts after the changes of a wording file.

    Raises
    ------
    SeatworkError
        With file and line, at the first text that cannot stand.
    """
    found = dict(defaults())
    for key, value in _texts(workbook.parse_toml(text, name)):
        place = f"{name}, line {workbook.line_of(text, *key.split('.', 1))}"
        _check(key, value, found, place)
        found[key] = value
    return found


def _texts(read: dict[str, Any]) -> Iterator[tuple[str, Any]]:
    for section, keys in read.items():
        if isinstance(keys, dict):
            yield from ((f"{section}.{key}", value) for key, value in keys.items())
        elif section != "format":
            yield section, keys


def _check(key: str, value: object, known: dict[str, str], place: str) -> None:
    if key not in known:
        raise SeatworkError(
            place, f"there is no text {key!r}", f"known are {', '.join(sorted(known))}"
        )
    if not isinstance(value, str) or not 0 < len(value) <= LONGEST:
        raise SeatworkError(place, f"{key} is no short text", 'write it between "quotes"')
    wanted = _placeholders(known[key])
    if _placeholders(value, place) != wanted:
        names = ", ".join("{" + name + "}" for name in sorted(wanted)) or "none"
        raise SeatworkError(place, f"the braces in {key} differ", f"keep these braces: {names}")


def _placeholders(text: str, place: str = "") -> set[str]:
    try:
        parts = list(Formatter().parse(text))
    except ValueError as error:
        raise SeatworkError(
            place, "a brace is not closed", "close it, or write it twice"
        ) from error
    return {f"{name}{spec or ''}{kind or ''}" for _, name, spec, kind in parts if name is not None}
