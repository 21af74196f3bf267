"""Where a fastener's name ends in the running text of a note."""

import pytest
from seatwork import hardware
from seatwork.hardware.rivets import is_rivet
from seatwork.hardware.spans import name_end


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("1/4 f.h.m.s., head flush, 4 pl", "1/4 f.h.m.s."),
        ("#10 f.h. mach. scr., 6 holes", "#10 f.h. mach. scr."),
        ("5/16-18 f.h. soc. cap scr.", "5/16-18 f.h. soc. cap scr."),
        ("1/4 hex hd cap scr w/ socket clr", "1/4 hex hd cap scr"),
        ("#10-32 flat head .385 to .390 dia", "#10-32 flat head"),
        ("1/4 shcs csk .385 x 82°", "1/4 shcs"),
        ("m6 socket csk", "m6 socket csk"),
        ("m6 csk 90°", "m6"),
        ("m6x20 shcs thru", "m6x20 shcs"),
        ("3/8 shcs x .38 dp", "3/8 shcs"),
        ("#8 flat head 100° far side", "#8 flat head"),
        ("#10 100° f.h. screw", "#10 100° f.h. screw"),
        ("ms20426ad4 rivet, 24 pl", "ms20426ad4 rivet"),
        ("3/8-16 s.h.c.s. w/ socket clr", "3/8-16 s.h.c.s."),
        ("3/8-16 s.h.c.s. n.s.", "3/8-16 s.h.c.s."),
        ("1/4 f. h. m. s. thru", "1/4 f. h. m. s."),
        ("1/8 flush rivet, flush +.002", "1/8 flush rivet"),
        ("dowel", ""),
        ("4 holes", ""),
    ],
)
def test_a_name_ends_where_its_last_word_ends(text: str, name: str) -> None:
    """No word behind a name is swallowed, and none of its own is left behind."""
    assert text[: name_end(text, 0)] == name


@pytest.mark.parametrize(
    ("text", "shank"),
    [("MS20426AD4 rivet", "1/8"), ("1/8 flush rivet", "1/8"), ("MS20426AD5-6", "5/32")],
)
def test_a_rivet_is_found_by_its_part_number(text: str, shank: str) -> None:
    """The figure behind AD counts thirty-seconds of an inch (MS20426, from memory)."""
    assert is_rivet(text)
    assert hardware.rivet(text).name == shank
