"""Tables read from CSV and sidecar."""

import shutil

import pytest
from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.tables import reading

WASHERS = "washer_iso_7089"


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """Return a data folder of its own, with one whole table in it."""
    for suffix in ("csv", "toml"):
        shutil.copy(reading.DATA / f"{WASHERS}.{suffix}", tmp_path)
    monkeypatch.setattr(reading, "DATA", tmp_path)
    return tmp_path


def change(folder, suffix, old, new) -> None:
    """Replace the first `old` in the CSV or the sidecar."""
    path = folder / f"{WASHERS}.{suffix}"
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


@pytest.mark.parametrize("name", tables.names())
def test_every_table_is_whole(name) -> None:
    """Each has a title, a document, rows with keys, and says of every row where it is from."""
    told = tables.about(name)
    assert told.title
    assert told.standard
    assert told.edition
    rows = tables.rows(name)
    assert rows
    for row in rows:
        assert row["source"]
        assert row["confirmed"] in reading.CONFIRMED


@pytest.mark.parametrize("name", tables.names())
def test_units_and_names_of_columns_agree(name) -> None:
    """A column named for a unit has that unit, and holds numbers or blanks only."""
    endings = {"_in": "in", "_mm": "mm", "_deg": "deg", "_um": "um", "_ratio": "ratio"}
    for column, held in tables.about(name).columns.items():
        assert held.meaning
        for ending, unit in endings.items():
            if column.endswith(ending):
                assert held.unit == unit, column
        if held.unit:
            assert all(isinstance(row[column], float | None) for row in tables.rows(name))


def test_source_never_points_to_another_row() -> None:
    """No source reads "same": a row stands alone."""
    for name in tables.names():
        assert all(
            str(row["source"]).lower() not in ("same", "memory") for row in tables.rows(name)
        )


def test_rows_are_the_readers_own() -> None:
    """Changing a row that was returned does not change the table."""
    tables.rows(WASHERS)[0]["hole_d1_min_mm"] = 99.0
    assert tables.rows(WASHERS)[0]["hole_d1_min_mm"] == 1.7


def test_a_blank_is_none() -> None:
    """The thickness that the source leaves out for 3/4 wide is None."""
    row = tables.row("washer_type_A_asme_b18_21_1", "3/4W")
    assert row["thickness_basic_in"] is None


def test_unknown_table_names_its_neighbors() -> None:
    """A misspelt name is answered with the nearest ones."""
    with pytest.raises(SeatworkError, match="did you mean washer_iso_7089"):
        tables.rows("washer_iso_7098")


def test_unknown_size_names_the_sizes_there_are() -> None:
    """A size that is not in the table is answered with those that are."""
    with pytest.raises(SeatworkError, match="it has M3, M4, M5"):
        tables.row("metric_csk_iso_10642", "M7")


def test_a_whole_table_in_another_folder_is_read(folder) -> None:
    """The fixture's table is whole before a test spoils it."""
    assert tables.names() == [WASHERS]
    lines = (folder / f"{WASHERS}.csv").read_text("utf-8").splitlines()
    assert len(tables.rows(WASHERS)) == len(lines) - 1 >= 19


@pytest.mark.parametrize(
    ("suffix", "old", "new", "fault"),
    [
        ("csv", "hole_d1_min_mm", "bore_mm", "bore_mm: the heading is not known"),
        ("toml", "[columns.hole_d1_min_mm]", "[columns.bore_mm]", "hole_d1_min_mm: the heading"),
        ("csv", '"ISO 7089:2000 Table 1, as two published tables give it"', " ",
         "column source: the cell is blank"),
        ("csv", "ISO 7089:2000 Table 1; a public CAD data file; bd-warehouse iso7089 columns"
         " (h there = h max)", " ", "column read_in: the cell is blank"),
        ("csv", ",two-source,", ",sure,", "column confirmed: sure is not a known word"),
        ("csv", ",two-source,", ",,", "column confirmed: a blank is not a known word"),
        ("csv", "M1.6,1.7,", "M1.6,about 1.7,", "no number"),
        ("csv", "M1.6,1.7,", "M1.6,1.7,9,", "row 2: the row has more cells"),
        ("toml", 'key = "size"', 'key = "thread"', "key thread is no column"),
    ],
)  # fmt: skip
def test_what_is_not_whole_is_refused(folder, suffix, old, new, fault) -> None:
    """A column without entry, a row without source or confirmation, a cell that is no number."""
    change(folder, suffix, old, new)
    with pytest.raises(SeatworkError, match=fault):
        tables.rows(WASHERS)


def test_confirmation_is_the_weakest_of_row_and_column() -> None:
    """M6 head: theoretical diameter two-source, real edge from memory, both together memory."""
    name = "metric_csk_iso_10642"
    row = tables.row(name, "M6")
    sharp, edge = "head_dia_dk_theoretical_max_mm", "head_dia_dk_actual_min_mm"
    assert tables.confirmed(name, row) == "two-source"
    assert tables.confirmed(name, row, sharp) == "two-source"
    assert tables.confirmed(name, row, edge) == "memory"
    assert tables.confirmed(name, row, sharp, edge) == "memory"
    with pytest.raises(SeatworkError, match=f"has no such column; it has .*{sharp}"):
        tables.confirmed(name, row, "head_height")


def test_columns_from_memory_say_so() -> None:
    """Wherever a row's detail names memory for some columns, the sidecar caps those columns."""
    capped = {
        name: {column for column, held in tables.about(name).columns.items() if held.confirmed}
        for name in tables.names()
    }
    assert capped["countersink_iso_15065"] == {"countersink_dia_dc_max_mm", "depth_t1_approx_mm"}
    assert capped["shcs_inch_asme_b18_3"] == {"head_height_H_min_in"}
    assert "head_dia_dk_min_plain_mm" in capped["shcs_metric_iso_4762"]
