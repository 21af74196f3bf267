"""The cider mill: parts and measured values that come with the package."""

from importlib.resources import files
from pathlib import Path

PARTS = ("frame_pad", "hopper_plate", "crank_shaft", "guard")


def example_parts() -> tuple[Path, ...]:
    """Return the files of notes of the cider mill, one a part, as `parts` reads them."""
    return tuple(_file(f"{name}.csv") for name in PARTS)


def example_readings() -> Path:
    """Return the measured values of its parts, a CSV as `inspection.inspect_file` reads it."""
    return _file("measured.csv")


def _file(name: str) -> Path:
    return Path(str(files("seatwork.plan"))) / "demo" / name
