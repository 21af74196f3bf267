"""Tables as people save them: every way of saving reads the same, every fault has its place."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.files import Row, build_each, read_table, write_table

COLUMNS = ("learner", "group", "extra_tries")
PLAIN = "learner,group,extra_tries\nL01,café 82°,0\nL02,,1\n"
MARK = b"\xef\xbb\xbf"


def saved(text: str = PLAIN, apart: str = ",", ends: str = "\n", encoding: str = "utf-8") -> bytes:
    """Save a table as some spreadsheet or editor would."""
    return text.replace(",", apart).replace("\n", ends).encode(encoding)


SAVED = {
    "plain": saved(),
    "byte-order mark": MARK + saved(),
    "semicolons": saved(apart=";"),
    "semicolons, mark, Windows ends": MARK + saved(apart=";", ends="\r\n"),
    "tabs": saved(apart="\t"),
    "Windows ends": saved(ends="\r\n"),
    "old Mac ends": saved(ends="\r"),
    "Windows code page": saved(encoding="cp1252", apart=";", ends="\r\n"),
    "Unicode text": b"\xff\xfe" + saved(encoding="utf-16-le", apart="\t", ends="\r\n"),
    "empty last rows": saved(PLAIN + ",,\n,,\n\n"),
    "no last line end": saved(PLAIN.rstrip()),
    "blank column at the end": saved(PLAIN.replace("\n", ",\n")),
    "headings in capitals": saved(PLAIN.replace("learner,group", "LEARNER,Group")),
    "headings with spaces": saved(
        PLAIN.replace("learner,group,extra_tries", " Learner , group,Extra tries ")
    ),
    "quotes round everything": saved(
        '"learner","group","extra_tries"\n"L01","café 82°","0"\nL02,,1\n'
    ),
    "a separator line": saved("sep=,\n" + PLAIN),
    "a remark": saved("# the evening class\n" + PLAIN),
    "columns in another order": saved("extra_tries,learner,group\n0,L01,café 82°\n1,L02,\n"),
}


@pytest.mark.parametrize("raw", SAVED.values(), ids=SAVED.keys())
def test_every_way_of_saving_reads_the_same(tmp_path: Path, raw: bytes) -> None:
    """Encoding, separator, line ends, blank rows and the look of the headings do not matter."""
    path = tmp_path / "roster.csv"
    path.write_bytes(raw)
    rows = read_table(path, columns=COLUMNS, needed=("learner",))
    assert [tuple(row.text(column) for column in COLUMNS) for row in rows] == [
        ("L01", "café 82°", "0"),
        ("L02", "", "1"),
    ]


def test_rows_are_counted_as_a_spreadsheet_does() -> None:
    """Headings are row 1, and a blank row counts."""
    rows = read_table("learner\nL01\n\nL02\n", columns=COLUMNS)
    assert [row.number for row in rows] == [2, 4]


@pytest.mark.parametrize(
    ("raw", "told"),
    [
        (b"PK\x03\x04 and more", "save it as CSV UTF-8"),
        (saved("learner,group\nL01,café\n", encoding="cp437"), "save it as CSV UTF-8"),
        ("learner,group\nL01,é".encode() + b" and \xe9\n", "line 2: that is not UTF-8 text"),
        (b"learner\nL01\x07\n", "row 2, column learner: it holds a control character"),
        (b'learner,group\nL01,"left open\n', "row 2: the row cannot be read as CSV"),
        (b"learner,group\nL01,a,b\n", "row 2: the row has more cells than there are headings"),
    ],
)
def test_what_cannot_be_told_safely_is_refused(tmp_path: Path, raw: bytes, told: str) -> None:
    """A spreadsheet's own file, a DOS code page, a mix of two, torn rows: one sentence each."""
    path = tmp_path / "roster.csv"
    path.write_bytes(raw)
    with pytest.raises(SeatworkError, match=told):
        read_table(path, columns=COLUMNS)


def test_all_faults_of_the_headings_are_told_at_once() -> None:
    """Unknown, doubled and missing headings stand in one message, each with its column."""
    with pytest.raises(SeatworkError) as caught:
        read_table("lerner,group,Group\n", columns=COLUMNS, needed=("learner",), name="roster.csv")
    told = str(caught.value)
    assert "roster.csv, row 1, column lerner: the heading is not known" in told
    assert "roster.csv, row 1, column group: the heading stands there twice" in told
    assert "roster.csv, row 1, column learner: the heading is missing" in told


def test_other_columns_are_passed_over_where_that_is_wanted() -> None:
    """A table with columns of one's own is taken; a known heading twice is a fault still."""
    text = "Hours;code;;Hours\n2;A1;x;3\n"
    (row,) = read_table(text, columns=("code",), needed=("code",), others=True)
    assert row.text("code") == "A1"
    with pytest.raises(SeatworkError, match="stands there twice"):
        read_table("code,code\nA1,A2\n", columns=("code",), others=True)
    with pytest.raises(SeatworkError, match="is missing"):
        read_table("Hours\n2\n", columns=("code",), needed=("code",), others=True)


def test_all_bad_rows_are_told_at_once() -> None:
    """A torn row and two rows that cannot be built are told together, in their places."""
    text = 'learner,group\nL01,"open\n,b\nL03,c\n,d\n'
    faults: list[SeatworkError] = []
    rows = read_table(text, columns=COLUMNS, name="roster.csv", faults=faults)
    with pytest.raises(SeatworkError) as caught:
        build_each(rows, lambda row: row.needed("learner"), faults)
    told = str(caught.value)
    for place in ("row 2", "row 3, column learner", "row 5, column learner"):
        assert f"roster.csv, {place}: " in told
    assert "row 4" not in told


def test_a_long_list_of_faults_is_cut_short() -> None:
    """A hundred faults are not a hundred lines; how many more there are is said."""
    text = "learner,group\n" + ",a\n" * 100
    with pytest.raises(SeatworkError, match="80 more like these"):
        build_each(read_table(text, columns=COLUMNS), lambda row: row.needed("learner"))


def test_a_reader_of_cells_is_told_with_its_place() -> None:
    """What a reader refuses is told with file, row and column."""
    row = Row(file="jobs.csv", number=7, cells={"screw": "M99"})

    def no_screw(text: str) -> str:
        raise SeatworkError(text, "no list has it", "write another")

    with pytest.raises(SeatworkError, match=r"jobs.csv, row 7, column screw: M99 cannot be read"):
        row.read("screw", no_screw)
    assert row.read("hole", no_screw) is None


def test_a_table_of_far_too_many_rows_is_one_sentence() -> None:
    """A hundred thousand rows are refused at once."""
    with pytest.raises(SeatworkError, match="more than 2000 rows"):
        read_table("learner\n" + "L01\n" * 100_000, columns=COLUMNS, most=2000)


@pytest.mark.parametrize("text", ["=1+1", "+1", "-0.004", "@x", "plain", "'quoted", "two\nlines"])
def test_a_written_table_is_no_formula_and_reads_back(tmp_path: Path, text: str) -> None:
    """No cell of text begins a formula in a spreadsheet, and reading gives the text again."""
    path = tmp_path / "marks.csv"
    write_table(path, ("learner", "group"), [("L01", text), ("L02", -0.5), ("L03", None)])
    raw = path.read_bytes()
    assert raw.startswith(MARK)
    assert not any(cell[:1] in "=+@" for cell in raw.decode("utf-8-sig").split(",") if cell)
    rows = read_table(path, columns=COLUMNS)
    assert rows[0].text("group") == text.replace("\n", " ")
    assert b"L02,-0.5\n" in raw
    assert rows[2].text("group") == ""


def test_a_lone_surrogate_stops_no_table(tmp_path: Path) -> None:
    """What cannot be written as UTF-8 is shown as a replacement sign."""
    write_table(tmp_path / "marks.csv", ("learner",), [("a\ud800b",)])
    (row,) = read_table(tmp_path / "marks.csv", columns=("learner",))
    assert row.text("learner") == "a\ufffdb"
