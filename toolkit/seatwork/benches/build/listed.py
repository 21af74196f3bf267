"""The shop as its files stood when a bench was made; names that a control offers."""

from functools import lru_cache
from pathlib import Path

from seatwork.shop.folder import find, once, saved
from seatwork.shop.shop import Shop


@once
def shop() -> Shop:
    """Return the shop of the workbook folder; a bench reads it once, anyone else as it is now.

    Raises
    ------
    SeatworkError
        If a list or a rule cannot be read; with file, row and column.
    """
    folder = find()
    return _shop(folder, saved(folder))


@lru_cache(maxsize=2)
def _shop(folder: Path | None, files: tuple[tuple[Path, int], ...]) -> Shop:
    del files  # only tells one state of the files from another
    return Shop.at(folder)


def machines() -> tuple[str, ...]:
    """Name the shop's machines."""
    return tuple(machine.name for machine in shop().machines)


def materials() -> tuple[str, ...]:
    """Name the shop's materials."""
    return tuple(material.name for material in shop().materials)


def machine(name: str) -> object:
    """Find a machine by its name; refuse one that the list does not have."""
    return shop().machine(name)


def material(name: str) -> object:
    """Find a material by its name; refuse one that the list does not have."""
    return shop().material(name)


def kept(name: str, names: tuple[str, ...]) -> str:
    """Return a name that a job brings; the shop's first one where its list has it not."""
    return name if name in names else next(iter(names), name)
