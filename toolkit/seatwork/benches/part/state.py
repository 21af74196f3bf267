"""What a person has said of their part: notes, changed rules, readings; as typed, nothing more."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, fields, replace
from typing import Any, Self

from seatwork.errors import SeatworkError

FORMAT = 1
MOST_SEATS, MOST_READINGS = 30, 500
LONGEST, LONGEST_NAME = 2_000, 60
"""Most characters of a note, and of anything else that is typed."""

SPACES = re.compile(r"[\t\u00a0\u2000-\u200a\u202f\u205f\u3000]")
"""Spaces as a print's file holds them, which come along when a note is copied from it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Seat:
    """One print note of the part, and what the print says elsewhere; everything as typed.

    Parameters
    ----------
    name : str
        What the place is called, such as ``"hopper plate"``.
    note : str
        The print note.
    material, machine : str
        Names in the shop's lists.
    screw : str
        The screw, where the note does not name it.
    thickness, edge, engagement : str
        Lengths: of the part at the hole, from the hole to the nearest edge, of thread.
    slope : str
        Slope of a raw pad, an angle.
    """

    name: str
    note: str
    material: str
    machine: str
    screw: str = ""
    thickness: str = ""
    edge: str = ""
    engagement: str = ""
    slope: str = ""


FIELDS = tuple(field.name for field in fields(Seat))
GIVEN = FIELDS[1:]
"""What a person types of a seat beside its name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Typed:
    """The readings of one part at one seat, as typed.

    Parameters
    ----------
    feature : str
        The seat, by the name the blank sheet gives it.
    part : str
        The part's mark, such as L07-1.
    cells : dict of str to str
        Text by the columns of the blank sheet.
    """

    feature: str
    part: str
    cells: Mapping[str, str]


@dataclass(frozen=True, slots=True, kw_only=True)
class PartState:
    """All that was said of a part.

    Parameters
    ----------
    name : str
        Name of the part.
    seats : tuple of Seat
        Its notes; one at least.
    at : int
        Which of them is being looked at, from 0 [-].
    rules : dict of str to str
        House rules that hold otherwise for this part, by name.
    readings : tuple of Typed
        What was measured.
    """

    name: str
    seats: tuple[Seat, ...]
    at: int = 0
    rules: Mapping[str, str]
    readings: tuple[Typed, ...] = ()

    @property
    def seat(self) -> Seat:
        """The seat being looked at."""
        return self.seats[self.at]

    def with_seat(self, **given: str) -> Self:
        """Return the state with other words at the seat being looked at.

        Raises
        ------
        SeatworkError
            If a text is too long or holds signs that cannot be seen.
        """
        before, names = self.seat.name, [one.name for one in self.seats]
        seat = replace(self.seat, **{name: _text(name, text) for name, text in given.items()})
        readings = tuple(
            _renamed(one, before, seat.name) if owner_of(one.feature, names) == before else one
            for one in self.readings
        )
        return replace(
            self,
            readings=readings,
            seats=(*self.seats[: self.at], seat, *self.seats[self.at + 1 :]),
        )

    def with_another(self, name: str) -> Self:
        """Return the state with one seat more, like the present one but without a note.

        Raises
        ------
        SeatworkError
            If there are too many, or one is called so.
        """
        if len(self.seats) >= MOST_SEATS:
            raise SeatworkError(name, f"a part holds {MOST_SEATS} notes", "begin another part")
        text = _text("name", name)
        if not text or text in {seat.name for seat in self.seats}:
            raise SeatworkError(text or "nothing", "each note wants a name of its own", "name it")
        seat = replace(self.seat, name=text, note="", screw="")
        return replace(self, seats=(*self.seats, seat), at=len(self.seats))

    def without(self) -> Self:
        """Return the state without the present seat and its readings; the last one stays."""
        if len(self.seats) == 1:
            raise SeatworkError(self.seat.name, "it is the only note", "change it instead")
        left = (*self.seats[: self.at], *self.seats[self.at + 1 :])
        names = [seat.name for seat in self.seats]
        kept = (one for one in self.readings if owner_of(one.feature, names) != self.seat.name)
        return replace(self, seats=left, at=min(self.at, len(left) - 1), readings=tuple(kept))

    def with_reading(self, feature: str, part: str, cells: Mapping[str, str]) -> Self:
        """Return the state with the readings of one part at one seat; none takes them out."""
        mark = mark_of(part)
        clean = {name: _text(name, text) for name, text in cells.items()}
        typed = Typed(feature=feature, part=mark, cells={n: t for n, t in clean.items() if t})
        others = [one for one in self.readings if (one.feature, one.part) != (feature, mark)]
        place = next(
            (
                n
                for n, one in enumerate(self.readings)
                if (one.feature, one.part) == (feature, mark)
            ),
            len(others),
        )
        if typed.cells:
            others.insert(place, typed)
        if len(others) > MOST_READINGS:
            fault = f"a page holds the readings of {MOST_READINGS} parts"
            raise SeatworkError(mark, fault, "use the blank sheet and seatwork inspect")
        return replace(self, readings=tuple(others))

    def as_data(self) -> dict[str, Any]:
        """Return the state as plain data, for a file."""
        return {
            "format": FORMAT,
            "part": self.name,
            "at": self.at,
            "rules": dict(self.rules),
            "seats": [asdict(seat) for seat in self.seats],
            "readings": [
                {"feature": one.feature, "part": one.part, "cells": dict(one.cells)}
                for one in self.readings
            ],
        }


def from_data(data: object) -> PartState:
    """Return the state that plain data holds.

    Parameters
    ----------
    data : object
        As `PartState.as_data` gives it; nothing in it is taken on trust.

    Raises
    ------
    SeatworkError
        If it is anything else.
    """
    held = _mapping(data, "a part")
    if held.get("format") != FORMAT:
        raise _wrong(f"format {held.get('format')!r}", f"format {FORMAT} is known here")
    found = _list(held.get("seats"), "seats", MOST_SEATS)
    at = held.get("at", 0)
    if not found or not isinstance(at, int) or not 0 <= at < len(found):
        raise _wrong("its seats", "there is none, or none of that number")
    readings = _list(held.get("readings", []), "readings", MOST_READINGS)
    return PartState(
        name=_text("part", held.get("part")),
        at=at,
        rules=texts(held.get("rules", {}), "rules"),
        seats=tuple(seat_of(one) for one in found),
        readings=tuple(typed_of(one) for one in readings),
    )


def seat_of(data: object) -> Seat:
    """Return the seat that a mapping of texts holds."""
    held = _mapping(data, "a seat")
    unknown = [name for name in held if name not in FIELDS]
    if unknown:
        raise _wrong(str(unknown[0])[:40], f"a seat holds {', '.join(FIELDS)}")
    missing = dict.fromkeys(FIELDS[:4], "")
    return Seat(**{name: _text(name, text) for name, text in {**missing, **held}.items()})


def typed_of(data: object) -> Typed:
    """Return the readings of one part that a mapping holds."""
    held = _mapping(data, "a reading")
    cells = texts(held.get("cells", {}), "cells")
    part, feature = (_text(name, held.get(name, "")) for name in ("part", "feature"))
    return Typed(feature=feature, part=part, cells=cells)


def mark_of(text: object) -> str:
    """Return a part's mark, its ends trimmed; refuse none."""
    mark = _text("part", text)
    if not mark:
        raise SeatworkError("nothing", "each part wants a mark of its own", "write one, as L07-1")
    return mark


def texts(data: object, what: str) -> dict[str, str]:
    """Return a mapping of texts, each checked."""
    held = _mapping(data, what)
    return {_text(what, name): _text(what, text) for name, text in held.items()}


def owner_of(feature: str, names: Sequence[str]) -> str:
    """Return the note whose seat is called so: its name alone, or with the kind of the seat."""
    owners = (name for name in names if feature == name or feature.startswith(f"{name}, "))
    return max(owners, key=len, default="")


def _renamed(typed: Typed, before: str, after: str) -> Typed:
    """Return readings under the name their note has now; a note may have several seats."""
    return replace(typed, feature=after + typed.feature.removeprefix(before))


def _mapping(data: object, what: str) -> Mapping[str, Any]:
    if not isinstance(data, Mapping):
        raise _wrong(what, "names with their texts are wanted")
    return data


def _list(data: object, what: str, most: int) -> Sequence[Any]:
    if not isinstance(data, list | tuple) or len(data) > most:
        raise _wrong(what, f"a list of {most} at most is wanted")
    return data


def _text(name: str, given: object) -> str:
    """Return a text, its ends trimmed; refuse one that is none, too long, or cannot be seen."""
    longest, breaks = (LONGEST, "\n") if name == "note" else (LONGEST_NAME, "")
    if not isinstance(given, str):
        raise _wrong(name, "a text is wanted")
    text = SPACES.sub(" ", given.replace("\r\n", "\n")).strip()
    if len(text) > longest:
        fault = f"{name} takes {longest} characters at most, and here are {len(text)}"
        raise SeatworkError(f"{text[:20]}...", fault, "leave some out")
    hidden = next((sign for sign in text if not sign.isprintable() and sign not in breaks), None)
    if hidden is not None:
        fault = f"{name} has a sign that cannot be seen"
        raise SeatworkError(f"U+{ord(hidden):04X}", fault, "type it anew")
    return text


def _wrong(what: str, why: str) -> SeatworkError:
    return SeatworkError(what, f"that is not what a part holds: {why}", "give it anew")
