"""Sheets of measured values: every way a CSV goes wrong, with no good row lost."""

import csv
import io
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.inspection import read_readings

HEADING = "part,feature,diameter,depth,stand,angle,angle with,tried\n"
GOOD = "L07-{n},plate,.397 in,.113 in,.007 in below,82,optical,yes\n"


def read(tmp_path, raw, **known):
    """Read a sheet from text or bytes."""
    path = tmp_path / "measured.csv"
    path.write_bytes(raw.encode("utf-8") if isinstance(raw, str) else raw)
    return read_readings(path, **known)


def marks(sheet):
    """Name the parts of a sheet."""
    return [one.part for one in sheet.measured]


def test_a_good_row_is_read_in_its_units(tmp_path) -> None:
    """Inches, words for the stand, an instrument and an answer."""
    (one,) = read(tmp_path, HEADING + GOOD.format(n=1)).measured
    assert one.diameter == pytest.approx(10.0838)
    assert one.stand == pytest.approx(-0.1778)
    assert (one.angle, one.tried, one.instruments) == (82.0, True, {"angle": "optical"})


@pytest.mark.parametrize(
    ("written", "stand"),
    [
        ("flush", 0.0),
        ("0", 0.0),
        (".000 in", 0.0),
        (".004 in proud", 0.1016),
        (".004 in below", -0.1016),
        ("-.004 in", -0.1016),
        ("\N{MINUS SIGN}.004 in", -0.1016),
        ("+.004 in", 0.1016),
        ("0.1 mm high", 0.1),
    ],
)
def test_the_stand_is_read_in_word_and_sign(tmp_path, written, stand) -> None:
    """Proud is plus, below is minus, flush is nothing."""
    (one,) = read(tmp_path, f"part,stand\nL01-1,{written}\n").measured
    assert one.stand == pytest.approx(stand)


@pytest.mark.parametrize(
    ("row", "words"),
    [
        ("L01-1,plate,=2*3,,,,,", "formula"),
        ("L01-1,plate,@SUM(A1),,,,,", "formula"),
        ("L01-1,plate,nan,,,,,", "column diameter"),
        ("L01-1,plate,-.3 in,,,,,", "column diameter"),
        ("L01-1,plate,1e400 mm,,,,,", "column diameter"),
        ("L01-1,plate,#10,,,,,", "column diameter"),
        ("L01-1,plate,https://example.com,,,,,", "column diameter"),
        ("L01-1,plate,,,sideways,,,", "column stand"),
        ("L01-1,plate,,,-.004 in below,,,", "sign and a word"),
        ("L01-1,plate,,,,200,optical,", "angle"),
        ("L01-1,plate,,,,82,ruler,", "column angle with"),
        ("L01-1,plate,,,,,,perhaps", "yes or no"),
        ('L01-1,"plate,.3 in', "cannot be read as CSV"),
        ("L01-1,plate,.3 in,.1 in,flush,82,optical,yes,stray", "more cells"),
        ("L01-1,plate,,,.004 in,,,", "proud or below"),
        ("L01-1,plate,,,,82,,", "two balls, optical, protractor"),
        ("L01-1,plate," + "9" * 20_000, "too long"),
        ("L01-1,plate,.397,,,,,", "in or mm"),
    ],
)
def test_a_bad_row_is_told_with_file_row_and_column_and_loses_no_other(
    tmp_path, row, words
) -> None:
    """The rows round a bad one are read, and the bad one is named by its line."""
    sheet = read(tmp_path, HEADING + GOOD.format(n=1) + row + "\n" + GOOD.format(n=2))
    assert marks(sheet) == ["L07-1", "L07-2"]
    (fault,) = sheet.faults
    assert fault.startswith("measured.csv, row 3")
    assert words in fault


@pytest.mark.parametrize(
    ("heading", "cell", "size"),
    [
        ("diameter [mm]", "8.6", 8.6),
        ("Diameter (MM)", "8,6", 8.6),
        ("diameter [in]", ".397", 10.0838),
        ("diameter [in]", "25/64", 9.921875),
        ("diameter [mm]", ".397 in", 10.0838),
    ],
)
def test_a_heading_carries_the_unit_of_its_column(tmp_path, heading, cell, size) -> None:
    """A bare number takes the heading's unit (1 in is 25.4 mm); a cell's own unit is its own."""
    (one,) = read(tmp_path, f'part,{heading}\na,"{cell}"\n').measured
    assert one.diameter == pytest.approx(size)


def test_the_unit_of_a_row_holds_for_its_bare_numbers(tmp_path) -> None:
    """.397 in a row of inches is inches, 13.6 in one of millimeters is not."""
    text = "part,unit,diameter\na,in,.397\nb,mm,13.6\n"
    first, second = read(tmp_path, text).measured
    assert (first.diameter, second.diameter) == pytest.approx((10.0838, 13.6))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("part,diameter\na,8.6\n", "in or mm?"),
        ("part,diameter [mm]\na,17/64\n", "a fraction is in inches"),
        ("part,unit,diameter [mm]\na,in,8.6\n", "the row says in"),
        ("part,unit,diameter\na,cm,8.6 mm\n", "cm is no unit of a sheet"),
        ("part,ball top [mm]\na,6.4\n", "column ball: "),
    ],
)
def test_no_unit_is_guessed(tmp_path, text, words) -> None:
    """What a number is in, and which ball was used, is asked where nobody wrote it."""
    sheet = read(tmp_path, text)
    assert sheet.measured == ()
    assert words in sheet.faults[0]


def test_every_bad_cell_of_a_row_is_told(tmp_path) -> None:
    """Three faults of one row are three sentences, each with its column."""
    sheet = read(tmp_path, HEADING + "L01-1,plate,.397,=1,sideways,82,optical,yes\n")
    assert [fault.split(":")[0].rpartition(" ")[2] for fault in sheet.faults] == [
        "diameter",
        "depth",
        "stand",
    ]


def test_a_part_that_stands_twice_is_told_and_not_read(tmp_path) -> None:
    """Of two rows for one part neither is taken; the second names the first."""
    rows = [GOOD.format(n=1), GOOD.format(n=2), GOOD.format(n=1).replace("L07", "l07")]
    sheet = read(tmp_path, HEADING + "".join(rows))
    assert marks(sheet) == ["L07-2"]
    assert sheet.faults == (
        "measured.csv, row 4, column part: l07-1 stands in row 2 too; neither is judged; keep one "
        "of them, or mark the holes, such as l07-1 hole 2.",
    )


def test_a_misspelt_feature_is_told_with_the_names_there_are(tmp_path) -> None:
    """The nearest name is offered; case and spaces do not matter."""
    text = "part,feature,diameter\na,Lid  Screws,.397 in\nb,lid screw,.397 in\nc,,.397 in\n"
    sheet = read(tmp_path, text, features=("lid screws", "chute screws"))
    assert [one.feature for one in sheet.measured] == ["lid screws"]
    misspelt, empty = sheet.faults
    assert "row 3, column feature: lid screw" in misspelt
    assert "lid screws, chute screws" in misspelt
    assert "row 4, column feature" in empty


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_usual_encodings_and_separators_are_read(tmp_path, encoding, separator) -> None:
    """A spreadsheet's own way of saving loses nothing."""
    text = (HEADING + GOOD.format(n=1)).replace(",", separator).replace("plate", "Köder")
    sheet = read(tmp_path, text.encode(encoding))
    assert marks(sheet) == ["L07-1"]
    assert sheet.measured[0].feature == "Köder"
    assert sheet.faults == ()


@pytest.mark.parametrize("ending", ["\n", "\r\n", "\r"])
def test_line_endings_do_not_matter(tmp_path, ending) -> None:
    """Old and new line endings give the same rows."""
    text = (HEADING + GOOD.format(n=1) + GOOD.format(n=2)).replace("\n", ending)
    assert marks(read(tmp_path, text)) == ["L07-1", "L07-2"]


@pytest.mark.parametrize(
    ("heading", "words"),
    [
        ("part,color,diameter", "color: the heading is not known"),
        ("part,diamter", "if diameter is meant"),
        ("part,diameter,Diameter", "diameter: the heading stands there twice"),
        ("part,diameter [in],diameter [mm]", "diameter: the heading stands there twice"),
        ("part,feature", "no heading names anything that is measured"),
    ],
)
def test_headings_that_are_not_known_or_stand_twice_are_refused(tmp_path, heading, words) -> None:
    """Nothing is judged where it cannot be told which column is which."""
    with pytest.raises(SeatworkError, match=re.escape(words)):
        read(tmp_path, f"{heading}\nL01-1,\n")


@pytest.mark.parametrize(
    "raw", [b"", b"\n\n", b"nothing,of,use\n1,2,3\n", b"\x00\x01\x02", b"\xff"]
)
def test_a_file_without_a_heading_is_refused(tmp_path, raw) -> None:
    """What is no sheet of measured values is refused in one sentence."""
    with pytest.raises(SeatworkError):
        read(tmp_path, raw)


def test_what_is_no_file_is_refused(tmp_path) -> None:
    """A folder, a missing file and a dangling link are told, not opened."""
    link = tmp_path / "link.csv"
    link.symlink_to(tmp_path / "gone.csv")
    for path in (tmp_path, tmp_path / "gone.csv", link):
        with pytest.raises(SeatworkError, match=r"folder|no such file"):
            read_readings(path)


def test_a_file_far_too_large_is_refused(tmp_path) -> None:
    """Over 16 MB nothing is read."""
    path = tmp_path / "huge.csv"
    with path.open("wb") as file:
        file.truncate(17 * 1024 * 1024)
    with pytest.raises(SeatworkError, match="16 MB"):
        read_readings(path)


BAD_LINE = st.one_of(
    st.text(max_size=60).map(lambda text: text.replace("\n", " ").replace("\r", " ")),
    st.sampled_from(
        ['"', '""","', "=cmd|' /C calc'!A0", ",,,,,,,,,,,,,", "\x00", "L1,plate,\u202e"]
    ),
)


@pytest.mark.slow
@settings(max_examples=200, deadline=None)
@given(before=st.lists(BAD_LINE, max_size=4), after=st.lists(BAD_LINE, max_size=4))
def test_no_line_spoils_another(tmp_path_factory, before, after) -> None:
    """Whatever stands in other lines, the good rows come out, in order."""
    path = tmp_path_factory.mktemp("fuzz") / "measured.csv"
    lines = [HEADING.strip(), *before, GOOD.format(n=1).strip(), *after, GOOD.format(n=2).strip()]
    path.write_bytes("\n".join(lines).encode("utf-8", "replace"))
    found = [part for part in marks(read_readings(path)) if part.startswith("L07-")]
    assert found == ["L07-1", "L07-2"]


@pytest.mark.slow
@settings(max_examples=200, deadline=None)
@given(raw=st.binary(max_size=400))
def test_no_bytes_bring_a_foreign_error(tmp_path_factory, raw) -> None:
    """Any bytes are read or refused; nothing else happens."""
    path = tmp_path_factory.mktemp("fuzz") / "measured.csv"
    path.write_bytes(HEADING.encode() + raw)
    try:
        told = read_readings(path).faults
    except SeatworkError as error:
        told = (str(error),)
    assert all(fault.startswith("measured.csv") for fault in told)


@pytest.mark.slow
@settings(max_examples=100, deadline=None)
@given(cells=st.lists(st.text(max_size=20), min_size=8, max_size=8))
def test_any_cells_are_read_or_told(tmp_path_factory, cells) -> None:
    """A row of any text is a part or a fault, never neither."""
    out = io.StringIO(newline="")
    csv.writer(out).writerow([" ".join(cell.split()) for cell in cells])
    path = tmp_path_factory.mktemp("fuzz") / "measured.csv"
    text = HEADING + out.getvalue() + GOOD.format(n=1)
    path.write_bytes(text.encode("utf-8", "replace"))
    sheet = read_readings(path)
    comment = out.getvalue().lstrip().startswith(("#", "sep="))
    empty = not out.getvalue().strip(' \t,;"\r\n\xa0')
    told = len(sheet.measured) + len(sheet.faults) + sheet.blank
    assert told >= (1 if empty or comment else 2)
