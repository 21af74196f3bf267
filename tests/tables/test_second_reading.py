"""Second reading: our tables against the data files of a general parts library.

The library is `bd-warehouse`, read as a zip file; nothing of it is installed or run. Where
its files are known to differ from the standard, ``data/known_errors.csv`` says how, and the
test holds that they still do. The comparison shares sources with some tables, so agreement
finds slips of typing, not errors of both.
"""

import csv
import io
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from seatwork import hardware, tables

pytestmark = pytest.mark.long

WHEEL = "bd-warehouse==0.4.0"
KNOWN = Path(__file__).with_name("data") / "known_errors.csv"
INCH_CLEARANCE = "clearance_hole_asme_b18_2_8_inch"

# wheel file, wheel column, our table, our column, least number of rows that must be compared
COMPARED = [
    ("drill_sizes.csv", "Diameter", "drill_sizes_inch", "diameter_in", 106),
    ("clearance_hole_sizes.csv", "Close", "clearance_hole_iso_273", "fine_H12_mm", 28),
    ("clearance_hole_sizes.csv", "Normal", "clearance_hole_iso_273", "medium_H13_mm", 28),
    ("clearance_hole_sizes.csv", "Loose", "clearance_hole_iso_273", "coarse_H14_mm", 28),
    ("clearance_hole_sizes.csv", "Close", INCH_CLEARANCE, "close_drill", 22),
    ("clearance_hole_sizes.csv", "Normal", INCH_CLEARANCE, "normal_drill", 22),
    ("clearance_hole_sizes.csv", "Loose", INCH_CLEARANCE, "loose_drill", 22),
    ("tap_hole_sizes.csv", "Soft", "tap_drills_inch", "tap_drill", 36),
    ("tap_hole_sizes.csv", "Soft", "tap_drills_metric", "tap_drill_mm", 25),
    (
        "socket_head_cap_parameters.csv",
        "iso4762:dk",
        "shcs_metric_iso_4762",
        "head_dia_dk_max_knurled_mm",
        20,
    ),
    (
        "socket_head_cap_parameters.csv",
        "iso4762:k",
        "shcs_metric_iso_4762",
        "head_height_k_max_mm",
        20,
    ),
    (
        "socket_head_cap_parameters.csv",
        "iso4762:s",
        "shcs_metric_iso_4762",
        "hex_socket_s_nominal_mm",
        20,
    ),
    (
        "socket_head_cap_parameters.csv",
        "asme_b18.3:dk",
        "shcs_inch_asme_b18_3",
        "head_dia_A_max_in",
        17,
    ),
    (
        "socket_head_cap_parameters.csv",
        "asme_b18.3:k",
        "shcs_inch_asme_b18_3",
        "head_height_H_max_in",
        17,
    ),
    ("plain_washer_parameters.csv", "iso7089:d1", "washer_iso_7089", "hole_d1_min_mm", 14),
    ("plain_washer_parameters.csv", "iso7089:d2", "washer_iso_7089", "outside_dia_d2_max_mm", 14),
    ("plain_washer_parameters.csv", "iso7089:h", "washer_iso_7089", "thickness_h_max_mm", 14),
    (
        "hex_head_parameters.csv",
        "iso4014:s",
        "hex_head_iso_4014_4017",
        "across_flats_s_nominal_max_mm",
        18,
    ),
    (
        "hex_head_parameters.csv",
        "din931:s",
        "hex_head_iso_4014_4017",
        "across_flats_old_din931_mm",
        16,
    ),
    (
        "hex_head_parameters.csv",
        "din931:k",
        "hex_head_iso_4014_4017",
        "head_height_k_nominal_mm",
        16,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso10642:dk",
        "metric_csk_din_7991",
        "head_dia_dk_edge_max_mm",
        13,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso10642:k",
        "metric_csk_din_7991",
        "head_height_k_max_mm",
        13,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso10642:dk",
        "metric_csk_iso_10642",
        "head_dia_dk_theoretical_max_mm",
        10,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso10642:k",
        "metric_csk_iso_10642",
        "head_height_k_max_mm",
        10,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso2009:dk",
        "metric_csk_din_963_965",
        "head_dia_dk_edge_max_mm",
        8,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso2009:dk",
        "metric_csk_iso_7721_heads",
        "head_dia_dk_actual_max_mm",
        8,
    ),
    (
        "countersunk_head_parameters.csv",
        "iso2009:k",
        "metric_csk_iso_7721_heads",
        "head_height_k_max_mm",
        8,
    ),
]
TRUE_HERE = {"metric_csk_din_7991", "metric_csk_din_963_965"}
"""Tables of the withdrawn standards: what the wheel files under a newer name is right there."""


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> zipfile.ZipFile:
    """Return the wheel, fetched without its dependencies; skip where it cannot be had."""
    folder = tmp_path_factory.mktemp("wheel")
    asked = [sys.executable, "-m", "pip", "download", "--quiet", "--no-deps", WHEEL]
    done = subprocess.run([*asked, "--dest", folder], check=False, capture_output=True, timeout=120)
    found = list(folder.glob("*.whl"))
    if done.returncode or not found:
        pytest.skip(f"the wheel of {WHEEL} cannot be had here: no second reading")
    return zipfile.ZipFile(found[0])


def read(wheel: zipfile.ZipFile, name: str, column: str) -> dict[str, str]:
    """Return one column of a data file by the size in its first column."""
    text = wheel.read(f"bd_warehouse/data/{name}").decode("utf-8-sig")
    lines = [
        {key.strip(): (value or "").strip() for key, value in row.items()}
        for row in csv.DictReader(io.StringIO(text))
    ]
    return {row["Size"]: row[column] for row in lines if row[column]}


def size_here(size: str, table: str) -> str:
    """Write a size of the wheel as the table's key is written."""
    plain = re.sub(r"(?<=\d) (?=\d+/)", "-", size)
    if table.startswith("tap_drills"):
        metric = re.fullmatch(r"(M[\d.]+)-([\d.]+)", plain)
        return f"{metric[1]}x{float(metric[2]):g}" if metric else plain
    if table == "clearance_hole_iso_273":
        return f"{float(plain[1:]):g}" if plain.startswith("M") else "inch"
    return (
        re.sub(r"(?<=.)-\d+(\.\d+)?$(?<!/\d)(?<!/\d\d)", "", plain) if ":" not in plain else plain
    )


def same(theirs: str, ours: object, column: str) -> bool:
    """Tell whether both name one size; inch cells are drills or fractions."""
    if isinstance(ours, str):
        return hardware.drill(theirs).diameter == pytest.approx(
            hardware.drill(ours).diameter, abs=1e-9
        )
    is_inch = column.endswith("_in")
    value = tables.numbers.number(theirs.replace(" ", "-"))
    # the wheel rounds inch decimals to the third or fourth place
    return value == pytest.approx(ours, abs=0.00051 if is_inch and "/" in theirs else 1e-9)


def known(name: str, column: str) -> set[str]:
    """Sizes where the wheel is known to differ from the standard."""
    with KNOWN.open(encoding="utf-8", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["file"] == name]
    return {size for row in rows if row["column"] == column for size in row["rows"].split()}


@pytest.mark.parametrize(
    ("name", "theirs", "table", "ours", "least"),
    COMPARED,
    ids=[f"{row[2]}-{row[3]}" for row in COMPARED],
)
def test_second_reading_agrees(wheel, name, theirs, table, ours, least) -> None:
    """Every size held by both is the same, but for the known errors, which still are."""
    key = tables.about(table).key
    held = {
        f"{row[key]:g}" if isinstance(row[key], float) else row[key]: row[ours]
        for row in tables.rows(table)
        if row[ours] is not None
    }
    read_there = {
        size_here(size, table): value for size, value in read(wheel, name, theirs).items()
    }
    both = held.keys() & read_there.keys()
    assert len(both) >= least, sorted(both)
    differ = {size for size in both if not same(read_there[size], held[size], ours)}
    names = {f"M{size}" if table == "clearance_hole_iso_273" else size for size in differ}
    expected = set() if table in TRUE_HERE else known(name, theirs)
    shared = {f"M{size}" if table == "clearance_hole_iso_273" else size for size in both}
    assert names == expected & shared
