"""Reading notes: no foreign exception, no hang, nothing loaded before it is needed."""

import subprocess
import sys

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.notes import NoteError, Size, read
from seatwork.shop.house import house_rules

WORDS = """
4X 2X ⌀ .201 THRU ⌵ ⌴ ↧ X 82° .385 CSK C'BORE S.F. 17/32 1-1/4 3HOLES M8 1.25 -6H 1/4-20 UNC-2B
± + - / ( ) [7.1] , ; | DP DIA FOR #10 FHMS TYP MAX FLANGE FLUSH TO BELOW PROUD BC EQ SP BREAK
EDGES CHAM 45° H13 U 6.6 0,5 25/30 MM IN ° INCL TAP ½ DRILL HOLE CSNK
"""
PIECES = ("\n", " ", *WORDS.split())


def _reads_or_refuses(text: str, system: str | None = None) -> None:
    """Read a text; any error must be ours, and its place must lie in the text."""
    refused: SeatworkError | None = None
    try:
        read(text, system)
    except SeatworkError as error:
        refused = error
    if isinstance(refused, NoteError):
        assert 0 <= refused.start <= refused.end <= len(text)
        assert refused.line >= 1
    assert refused is None or str(refused).endswith(".")


@pytest.mark.slow
@given(st.text(max_size=300))
@settings(max_examples=150, deadline=None)
def test_any_text_is_read_or_refused(text: str) -> None:
    """Any text at all gives a reading or a SeatworkError with a place inside the text."""
    _reads_or_refuses(text)


@pytest.mark.slow
@given(
    st.lists(st.sampled_from(PIECES), max_size=25).map(" ".join),
    st.sampled_from((None, "inch", "metric")),
)
@settings(max_examples=200, deadline=None)
def test_any_pile_of_note_words_is_read_or_refused(text: str, system: str | None) -> None:
    """Words of notes in any order give a reading or a SeatworkError, nothing else."""
    _reads_or_refuses(text, system)


@pytest.mark.long
@given(
    st.lists(st.sampled_from(PIECES), max_size=60).map("".join)
    | st.lists(st.sampled_from(PIECES), max_size=60).map(" ".join),
    st.sampled_from((None, "inch", "metric")),
)
@settings(max_examples=20_000, deadline=None)
def test_many_piles_of_note_words_are_read_or_refused(text: str, system: str | None) -> None:
    """Tens of thousands of piles of note words bring out no foreign exception."""
    _reads_or_refuses(text, system)


@pytest.mark.parametrize(
    "piece", ["1", "1 ", ".1.", "(", "4X ", "FOR A ", "⌀", "+", "1-", "½", "C ", "[1", "\n", "X"]
)
def test_long_repetition_does_not_hang(piece: str) -> None:
    """Two thousand characters of one thing are read or refused like any other note."""
    _reads_or_refuses((piece * 2000)[:2000])


def test_grammar_is_not_loaded_by_import() -> None:
    """Importing the notes room loads neither the grammar library nor the table library."""
    heavy = "{'lark', 'pandas', 'numpy', 'pint'}"
    code = f"import sys, seatwork.notes; print({heavy} & set(sys.modules))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "set()"


@pytest.mark.parametrize("thing", [None, 4, b"CSK", ["CSK"]])
def test_no_text_is_refused(thing: object) -> None:
    """What is no text is refused in a sentence."""
    with pytest.raises(SeatworkError, match="that is not text"):
        read(thing)  # type: ignore[arg-type]


def test_unknown_system_is_refused() -> None:
    """A unit system that is none is refused with those there are."""
    with pytest.raises(SeatworkError, match='write "inch" or "metric"'):
        read("⌀.281 THRU", "imperial")


def test_house_rule_turns_by_size_off() -> None:
    """Where the house rule says ask, a note without units is asked about."""
    found = house_rules.apply('[note]\nbare_numbers = "ask"', "rules")
    rules = house_rules.HouseRules(found, "a test")
    with pytest.raises(NoteError, match="in or mm"):
        read("⌀6.6 THRU", rules=rules)


def test_house_rule_changes_the_assumed_angle() -> None:
    """The angle assumed is the one of the house rules in force."""
    found = house_rules.apply('[countersink]\ninch_angle = "100°"', "rules")
    callout = read("CSK .385 DIA", rules=house_rules.HouseRules(found, "a test"))
    assert callout.assumed(0, "angle") == 100.0


def test_tapped_hole_chamfer_is_assumed_over_the_major_diameter() -> None:
    """The chamfer of a 1/4-20 hole without a size is .250 and .020 in (common practice)."""
    callout = read("1/4-20 UNC X .50 DP, CSK")
    assert callout.assumed(1, "diameter") == pytest.approx(0.270 * 25.4)


def test_screws_are_kept_as_the_note_says_them() -> None:
    """The name of a screw stays text, in the writer's own spelling, each once."""
    callout = read("drill & c'bore for 3/8 shcs, csk 82° for #10 FHMS")
    assert callout.screws() == ("3/8 shcs", "#10 FHMS")


def test_a_sign_that_does_not_show_is_told_and_is_no_blank() -> None:
    """A control character inside a thread is refused by its place."""
    with pytest.raises(NoteError, match=r"^a sign that does not show \(character 4\)"):
        read("1/4\x1c-20 UNC")


def test_error_tells_line_and_character() -> None:
    """On a note of several lines the sentence names line and character."""
    with pytest.raises(NoteError, match=r"Y \(line 2, character 9\)"):
        read("⌀.281 THRU\n⌵ ⌀.531 Y 82°")


@pytest.mark.parametrize(
    "sizes",
    [
        {"value": float("nan")},
        {"value": -1.0},
        {"value": 1.0, "name": "#7"},
        {},
        {"value": 1.0, "upper": 1.0},
        {"value": 1.0, "upper": -1.0, "lower": 1.0},
        {"value": 1.0, "unit": "ft"},
    ],
)
def test_impossible_size_cannot_be_built(sizes: dict) -> None:
    """A size that contradicts itself is refused."""
    with pytest.raises(SeatworkError):
        Size(**sizes)


# Included angles of the trade: 60, 82, 90, 100, 120 (common practice, no source).
@pytest.mark.parametrize(
    ("text", "angle", "across"),
    [
        ("17/64 DRILL, 82 CSK 1/2 DIA", 82, 12.7),
        ("Ø6.6 THRU, CSK 90 TO Ø13", 90, 13),
        ("Ø20 THRU, CSK 60", 60, None),
        ("Ø30 THRU, CSK 60 X 90°", 90, 60),
        ("Ø30 THRU, CSK 60 DIA X 90°", 90, 60),
        ("Ø30 THRU, CSK 60 MM X 90°", 90, 60),
    ],
)
def test_a_bare_angle_beside_csk_is_the_angle(text, angle, across) -> None:
    """It is said among what was taken; where another angle stands there it is a diameter."""
    callout = read(text)
    seat = callout.features[1]
    assert seat.angle.value == angle
    assert seat.diameter is None if across is None else seat.diameter.value == pytest.approx(across)
    taken = [one for one in callout.assumptions if one.rule == "note.bare_angle"]
    assert [(one.feature, one.value) for one in taken] == ([(1, angle)] if across != 60 else [])


def test_a_bare_angle_may_be_asked_about() -> None:
    """By house rule it is asked whether 82 is degrees or a width."""
    found = house_rules.apply('[note]\nbare_angle = "ask"', "rules")
    with pytest.raises(NoteError, match="82° included, or 82 wide"):
        read("17/64 DRILL, 82 CSK 1/2 DIA", rules=house_rules.HouseRules(found, "rules"))


def test_ninety_degrees_at_a_wider_diameter_is_included() -> None:
    """No chamfer has a side of 90°: a #10 thread's mouth is .190 and over (ASME B1.1)."""
    chamfer = read("DRILL #21, TAP 10-32, CHAMFER 90° X .21").features[-1]
    assert chamfer.angle.value == 90
    assert chamfer.diameter.value == pytest.approx(0.21 * 25.4)
    with pytest.raises(NoteError, match="a side, or included"):
        read("Ø20 THRU, CHAM 90° X 1")


@pytest.mark.parametrize(
    "text", ["1/16 X 45° CHAMFER BOTH ENDS OF 1.500 BORE", "1/16 X 45° CHAM OF BORE 1.500"]
)
def test_a_chamfer_of_a_hole_lies_on_it(text) -> None:
    """The bore comes first, and its mouths are chamfered, not an edge beside it."""
    (group,) = read(text).groups()
    assert [type(one).__name__ for one in group] == ["Hole", "Chamfer"]
    assert group[0].diameter.value == pytest.approx(38.1)
