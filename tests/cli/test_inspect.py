"""Plan, inspect and the demonstration from the command line."""

import subprocess
import sys
from pathlib import Path

import pandas as pd
import pytest
from seatwork.cards import gage_page
from seatwork.plan.examples import example_parts, example_readings
from seatwork.plan.part_files import parts

pytestmark = pytest.mark.slow

HOPPER = str(example_parts()[1])


def seatwork(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """Run a command in a folder."""
    return subprocess.run(
        [sys.executable, "-m", "seatwork.cli", *words],
        capture_output=True,
        text=True,
        encoding="utf-8",
        cwd=folder,
        timeout=120,
        check=False,
    )


def test_measured_parts_are_judged_and_bad_rows_told(tmp_path: Path) -> None:
    """Good rows are judged though one holds a formula; the exit says that something is left."""
    parts = [word for path in example_parts() for word in ("--part", str(path))]
    done = seatwork(tmp_path, "inspect", str(example_readings()), *parts, "--to", "found.csv")
    assert done.returncode == 1
    assert "11 parts: 5 accept, 4 reject, 2 cannot tell" in done.stdout
    assert "measured.csv, row 8, column diameter: =0.397" in done.stderr
    assert "Traceback" not in done.stderr
    first = (tmp_path / "found.csv").read_bytes()
    again = seatwork(tmp_path, "inspect", str(example_readings()), *parts, "--to", "found.csv")
    assert "already" in again.stderr
    assert (tmp_path / "found.csv").read_bytes() == first


def judged(folder: Path, text: str, *words: str) -> subprocess.CompletedProcess[str]:
    """Inspect a sheet of readings of the hopper plate."""
    (folder / "readings.csv").write_text(text, encoding="utf-8")
    return seatwork(folder, "inspect", "readings.csv", "--part", HOPPER, *words)


def test_nothing_is_judged_on_a_guess(tmp_path: Path) -> None:
    """No unit, no instrument, a misspelt feature, a part twice: each told with row and cell."""
    done = judged(
        tmp_path,
        "part,feature,diameter,angle,angle with,stand\n"
        "L01,lid screws,8.6,,,\n"
        "L02,lid screws,.397 in,82,,.007 in below\n"
        "L03,lid screw,.397 in,82,optical,.007 in below\n"
        "L04,lid screws,.397 in,82,optical,.007 in\n"
        "L05,lid screws,.397 in,82,optical,.007 in below\n"
        "L05,lid screws,.300 in,82,optical,.007 in below\n"
        "L06,lid screws,.397 in,82,optical,.007 in below\n",
    )
    assert done.returncode == 1
    assert "1 part: 1 accept, 0 reject, 0 cannot tell" in done.stdout
    told = done.stderr.splitlines()
    for place, remedy in (
        ("row 2, column diameter: 8.6 cannot be read: in or mm?", "write 8.6 in or 8.6 mm"),
        ("row 3, column angle with: ", "write one of two balls, optical, protractor"),
        ("row 4, column feature: lid screw: ", "lid screws, chute screws"),
        ("row 5, column stand: ", "write .007 in proud or .007 in below"),
        ("row 7, column part: L05 stands in row 6 too", "keep one of them"),
    ):
        assert any(place in line and remedy in line for line in told), place
    assert len(told) == 5


def test_a_heading_with_its_unit_needs_none_in_the_cells(tmp_path: Path) -> None:
    """Under ``diameter [in]`` .397 is judged; 10.08 under ``diameter [mm]`` comes to the same."""
    for unit, size, below in (("in", ".397", ".007"), ("mm", "10.08", "0.178")):
        text = (
            f"part,feature,diameter [{unit}],angle,angle with,stand ({unit})\n"
            f"L06,lid screws,{size},82,optical,{below} below\n"
        )
        done = judged(tmp_path, text)
        assert done.returncode == 0, done.stderr
        assert "1 part: 1 accept" in done.stdout


def test_help_tells_every_column(tmp_path: Path) -> None:
    """``seatwork inspect --help`` names what a sheet may hold."""
    told = " ".join(seatwork(tmp_path, "inspect", "--help").stdout.replace("│", " ").split())
    for name in ("angle with (two balls", "ball top (", "protrusion (", "unit (in or mm"):
        assert name in told


def test_a_blank_filled_in_by_a_spreadsheet_is_read_back(tmp_path: Path) -> None:
    """Filled in and saved with semicolons, decimal commas and Windows line ends, it is judged."""
    made = seatwork(tmp_path, "inspect", "--blank", "blank.csv", "--part", HOPPER)
    assert made.returncode == 0, made.stderr
    table = pd.read_csv(tmp_path / "blank.csv", encoding="utf-8-sig", dtype=str)
    assert list(table["feature"].value_counts()[["lid screws", "chute screws"]]) == [6, 4]
    filled = {
        "part": "L04-1",
        "diameter": "13.8",
        "diameter with": "Caliper",
        "angle": "90",
        "angle with": "optical",
        "ball": "14",
        "ball top": "9.95",
        "stand": "-0.2",
        "tried": "YES",
    }
    row = table.index[table["feature"] == "chute screws"][0]
    for column, cell in filled.items():
        table.loc[row, column] = cell.replace(".", ",")
    saved = table.to_csv(index=False, sep=";", lineterminator="\r\n")
    (tmp_path / "filled.csv").write_bytes(saved.encode("utf-8-sig"))
    done = seatwork(tmp_path, "inspect", "filled.csv", "--part", HOPPER)
    assert done.returncode == 0, done.stderr
    assert "1 part: 1 accept" in done.stdout
    assert "Rows not filled in: 9" in done.stdout


def test_a_blank_is_not_written_over(tmp_path: Path) -> None:
    """A sheet that may be filled in already stays, unless asked; a part without a seat has none."""
    words = ("inspect", "--blank", "blank.csv", "--part", HOPPER)
    assert seatwork(tmp_path, *words).returncode == 0
    (tmp_path / "blank.csv").write_text("filled in", encoding="utf-8")
    again = seatwork(tmp_path, *words)
    assert again.returncode == 1
    assert "already" in again.stderr
    assert (tmp_path / "blank.csv").read_text(encoding="utf-8") == "filled in"
    none = seatwork(tmp_path, "inspect", "--blank", "b.csv", "--part", str(example_parts()[3]))
    assert none.returncode == 1
    assert "no part given here has a seat to measure" in none.stderr


@pytest.mark.parametrize("number", range(3))
def test_paper_and_blank_ask_for_the_same_readings(tmp_path: Path, number: int) -> None:
    """Every line of the printed readings is a column of the blank, and the other way."""
    path = example_parts()[number]
    plans, _ = parts([path])
    printed = set()
    for page in gage_page(plans).words:
        if "good from, to" in page:
            printed |= {line.split(":")[0].split(" [")[0] for line in page if ": " in line}
    seatwork(tmp_path, "inspect", "--blank", "b.csv", "--part", str(path))
    columns = list(pd.read_csv(tmp_path / "b.csv", encoding="utf-8-sig").columns)
    asked = {column.split(" [")[0] for column in columns} - {"feature", "unit"}
    assert {line for line in printed if not line.startswith(("Readings", "VERIFY"))} == asked


def test_gage_sheets_of_a_part_are_printed_feature_by_feature(tmp_path: Path) -> None:
    """``--part`` prints a sheet for each seat; a sheet that knows no parts refuses it."""
    done = seatwork(tmp_path, "print", "gage-sheet", "gages.pdf", "--part", HOPPER)
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "gages.pdf").stat().st_size > 1000
    wrong = seatwork(tmp_path, "print", "drills", "drills.pdf", "--part", HOPPER)
    assert wrong.returncode == 1
    assert "no sheet of a whole part" in wrong.stderr


def test_a_part_file_brings_its_own_material_and_machine(tmp_path: Path) -> None:
    """``seatwork plan`` on a file needs no material where every row names one."""
    done = seatwork(tmp_path, "plan", HOPPER, "--why")
    assert done.returncode == 0, done.stderr
    assert "hopper_plate, lid screws" in done.stdout
    assert "speeds.countersink_cap = 300 rev/min" in done.stdout


def test_a_missing_material_is_one_sentence(tmp_path: Path) -> None:
    """A note without a material is refused without a traceback."""
    done = seatwork(tmp_path, "plan", "⌀.201 THRU", "--machine", "knee mill")
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert "1018 steel" in done.stderr


@pytest.mark.long
def test_the_demonstration_writes_what_it_names_and_nothing_over(tmp_path: Path) -> None:
    """Plans, cards and verdicts of the cider mill lie where the paths say; a second run refuses."""
    done = seatwork(tmp_path, "demo", "mill")
    assert done.returncode == 0, done.stderr
    named = [line.split(" ", 1)[1] for line in done.stdout.splitlines() if line.startswith("Wrote")]
    assert len(named) == 10
    assert all((tmp_path / name).stat().st_size > 100 for name in named)
    assert {path.name for path in (tmp_path / "mill").iterdir()} == {Path(n).name for n in named}
    again = seatwork(tmp_path, "demo", "mill")
    assert again.returncode == 1
    assert "already" in again.stderr


def test_a_slip_of_the_unit_is_no_verdict(tmp_path: Path) -> None:
    """A seat 25 times too wide or narrow is asked about, with row, cell and what would do."""
    done = judged(
        tmp_path,
        "part,feature,unit,diameter,depth\n"
        "L01,lid screws,in,10.1,\n"
        "L02,lid screws,mm,.397,\n"
        "L03,lid screws,in,.397,2.9\n"
        "L04,lid screws,in,.500,\n",
    )
    assert "row 2, column diameter: 10.100 in is far from any size of this seat" in done.stderr
    assert "such as 10.10 mm." in done.stderr
    assert "row 3, column diameter: 0.40 mm" in done.stderr
    assert "such as 0.397 in." in done.stderr
    assert "row 4, column depth: 2.900 in" in done.stderr
    assert "1 part: 0 accept, 1 reject" in done.stdout
