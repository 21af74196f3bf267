"""The corpus of notes, and the plain text in which it writes a reading down."""

import re
import tomllib
from collections.abc import Callable
from dataclasses import fields
from pathlib import Path
from typing import Any

import pytest
from seatwork.notes import Feature, Head, Size

CORPUS = Path(__file__).parent / "corpus"
PER_UNIT = {"in": 25.4, "mm": 1.0, "deg": 1.0}


def corpus(folder: Path) -> list[dict[str, Any]]:
    """Return all notes of a folder's files."""
    found = []
    for path in sorted(folder.glob("*.toml")):
        found += tomllib.loads(path.read_text(encoding="utf-8"))["note"]
    return found


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """Give each note of the corpus to the tests that ask for one."""
    good, bad = corpus(CORPUS), corpus(CORPUS / "malformed")
    sorts = {
        "entry": good,
        "assuming_entry": [note for note in good if "assumes" in note],
        "bad_entry": bad,
        "asked_entry": corpus(CORPUS / "asked"),
        "understood_entry": [note for note in bad if "understood" in note],
    }
    for name, notes in sorts.items():
        if name in metafunc.fixturenames:
            labels = [f"{at}-{note['note'][:30]!r}" for at, note in enumerate(notes)]
            metafunc.parametrize(name, notes, ids=labels)


def _number(value: float | None, unit: str) -> str:
    return f"{round((value or 0.0) / PER_UNIT[unit], 6):g}"


def _size(size: Size) -> str:
    if size.name:
        return size.name
    text = _number(size.value, size.unit)
    if size.least is not None:
        text = f"{_number(size.least, size.unit)}~{_number(size.greatest, size.unit)}"
    text += size.unit
    if size.upper is not None:
        lower = _number(-(size.lower or 0.0), size.unit)
        text += f"(+{_number(size.upper, size.unit)}/-{lower})"
    return text + "".join(f"({mark})" for mark in (size.fit, size.bound) if mark)


def _field(name: str, value: object) -> str:
    if value is True:
        return name
    if isinstance(value, Size):
        return f"{name}={_size(value)}"
    if isinstance(value, Head):
        amount = f" {_size(value.amount)}" if value.amount else ""
        value = f"{value.state}{amount}"
    if isinstance(value, float):
        value = f"{value:g}"
    return f"{name}={str(value).replace(' ', '_')}"


def told(feature: Feature) -> set[str]:
    """Return the words of a reading for a feature: its kind and each field that was said."""
    said = {
        _field(field.name, getattr(feature, field.name))
        for field in fields(feature)
        if getattr(feature, field.name) != field.default
    }
    return {type(feature).__name__.lower(), *said}


def expected(reading: str) -> set[str]:
    """Return the words of a reading in the corpus, its numbers written one way."""
    return {
        word if word.startswith("screw=") else re.sub(r"(?<![\d/#])\d*\.\d+", _one_way, word)
        for word in reading.split()
    }


def _one_way(found: re.Match[str]) -> str:
    return f"{float(found[0]):g}"


@pytest.fixture
def tell() -> Callable[[Feature], set[str]]:
    """Return the function that writes a feature down as the corpus does."""
    return told


@pytest.fixture
def expect() -> Callable[[str], set[str]]:
    """Return the function that reads the corpus' own writing."""
    return expected


@pytest.fixture
def good_notes() -> list[str]:
    """Return the notes of the corpus that can be read."""
    return [note["note"] for note in corpus(CORPUS)]


@pytest.fixture
def bad_notes() -> list[str]:
    """Return the notes of the corpus that cannot be read."""
    return [note["note"] for note in corpus(CORPUS / "malformed")]
