"""The cider mill: parts and measured values that come with the package."""

from importlib.resources import files
from pathlib import Path

PARTS = ("frame_pad", "hopper_plate", "crank_shaft", "guard")


def part_files() -> tuple[Path, ...]:
    """Return the files of notes of the cider mill, one a part."""
    return tuple(_file(f"{name}.csv") for name in PARTS)


def measured_file() -> Path:
    """Return the sheet of measured values of its parts."""
    return _file("measured.csv")


def _file(name: str) -> Path:
    return Path(str(files("seatwork.plan"))) / "demo" / name
