"""Tables as data frames, and the list of sources."""

import subprocess
import sys

import pytest
from seatwork import tables


def test_a_frame_holds_floats_where_the_column_has_a_unit() -> None:
    """Numbers are float64 even where a cell is blank; a blank is NaN."""
    frame = tables.load("washer_type_A_asme_b18_21_1")
    assert frame["thickness_basic_in"].dtype == float
    assert frame["thickness_basic_in"].isna().sum() == 1
    assert len(frame) == len(tables.rows("washer_type_A_asme_b18_21_1"))


def test_a_frame_has_the_rows_of_the_table() -> None:
    """Frame and rows hold the same values in the same order."""
    name = "clearance_hole_iso_273"
    assert tables.load(name).to_dict("records") == tables.rows(name)


def test_every_source_of_every_table_is_listed() -> None:
    """Each distinct pair of source and confirmation stands in the list, with its rows counted."""
    listed = tables.sources()
    for name in tables.names():
        lines = listed[listed["table"] == name]
        rows = tables.rows(name)
        assert lines["rows"].sum() == len(rows)
        assert set(lines["source"]) == {row["source"] for row in rows}


def test_columns_from_memory_have_a_line_of_their_own() -> None:
    """A column known less well than its rows is listed under table and column."""
    listed = tables.sources()
    line = listed[listed["table"] == "metric_csk_iso_10642: head_dia_dk_actual_min_mm"]
    assert line["confirmed"].tolist() == ["memory"]


@pytest.mark.slow
@pytest.mark.parametrize("module", ["seatwork.tables", "seatwork.hardware"])
def test_reading_rows_loads_no_data_frames(module) -> None:
    """Rows and names come without pandas, matplotlib or pint."""
    code = (
        f"import sys, {module}; from seatwork import tables; tables.rows('washer_iso_7089');"
        "print([m for m in ('pandas', 'matplotlib', 'pint', 'scipy', 'numpy') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True)
    assert done.stdout.strip() == "[]"
