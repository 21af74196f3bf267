"""Doors under their samples, their corpus and mutations; `tests/fuzz.py` goes on for long."""

import importlib.util
import sys
from pathlib import Path
from random import Random
from types import ModuleType

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

sys.path.insert(0, str(Path(__file__).parent))

from fuzz_doors import DOORS, Door, FoundError, sample
from seatwork.errors import SeatworkError

NOT_READ = {"wording", "evenings"}
"""Doors whose sample is refused: what is right there is the package's own long file."""


def command() -> ModuleType:
    """Load the command beside this folder."""
    place = Path(__file__).parents[1] / "fuzz.py"
    spec = importlib.util.spec_from_file_location("fuzz_command", place)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


FUZZ = command()


@pytest.mark.slow
@pytest.mark.parametrize("name", DOORS)
def test_every_input_of_the_corpus_is_read_or_refused(name: str) -> None:
    """What was found before, and what reaches most code, does no more than be read or refused."""
    for raw in FUZZ.beginnings(name):
        DOORS[name].try_(raw)


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(DOORS.keys() - NOT_READ))
def test_a_fuzzer_begins_with_something_right(name: str) -> None:
    """One sample of each door at least is read, so that its mutations come far."""
    assert any(DOORS[name].try_(raw) for raw in DOORS[name].samples)


@pytest.mark.slow
@pytest.mark.parametrize("name", DOORS)
@settings(max_examples=20)
@given(seed=st.integers(0, 2**32), junk=st.binary(max_size=40))
def test_mutations_are_read_or_refused(name: str, seed: int, junk: bytes) -> None:
    """Samples changed in a few places, and bytes of no sense at all."""
    words = [word.encode() for word in FUZZ.WORDS]
    DOORS[name].try_(FUZZ.mutation(Random(seed), FUZZ.beginnings(name), words))
    DOORS[name].try_(junk)


class RawError(SeatworkError):
    """An error that hands on what came as it came, which the real one never does."""

    def __str__(self) -> str:
        return self.fault


def refusing(text: str) -> Door:
    """Make a door that refuses everything with some text."""

    def enter(raw: bytes) -> None:
        raise RawError("x", text, "mend it")

    return Door("note", enter, ())


@pytest.mark.parametrize("text", ["a\x1bb", "a\nb", "\ud800", "x" * 3000])
def test_an_error_that_nobody_can_read_is_a_find(text: str) -> None:
    """Control characters, two lines where one came in, half a letter, pages of text."""
    with pytest.raises(FoundError):
        refusing(text).try_(b"")
    assert refusing("x").try_(b"") is False


def test_any_other_error_and_a_number_that_is_none_are_finds() -> None:
    """A door that fails otherwise, or reads what no sum can go on with."""

    def fails(raw: bytes) -> None:
        raise KeyError(raw)

    with pytest.raises(KeyError):
        Door("toml", fails, ()).try_(b"x")


def test_samples_are_bytes_as_files_hold_them() -> None:
    """Letters beyond ASCII are UTF-8, which is what readers are given."""
    assert sample("⌀", "a") == (b"\xe2\x8c\x80", b"a")
    assert FUZZ.hexed("\\u2028") == "\\xe2\\x80\\xa8"
