"""Every list the shop, the plan and the inspection read, saved in every way people save it."""

import csv
import io
from collections.abc import Callable
from contextlib import chdir
from pathlib import Path
from typing import Any

import pytest
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.inspection import read_readings
from seatwork.plan.examples import example_parts, example_readings
from seatwork.plan.part_files import plan_part
from seatwork.shop import Shop
from seatwork.shop.folder import package_text
from seatwork.shop.lists.cutters import cutters
from seatwork.shop.lists.machines import machines
from seatwork.shop.lists.materials import materials

SHOP = Shop.at()


def of_shop(read: Callable[[Path], Any]) -> Callable[[Path], tuple[Any, str]]:
    """Read a list of a workbook; its faults come as one error."""

    def found(path: Path) -> tuple[Any, str]:
        (path.parent.parent / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
        try:
            return read(path.parent.parent), ""
        except SeatworkError as error:
            return (), str(error)

    return found


def all_jobs(folder: Path) -> list[Job]:
    """Read the jobs of the workbook that is worked in."""
    with chdir(folder):
        return [job(name) for name in jobs()]


def of_part(path: Path) -> tuple[Any, str]:
    """Plan a file of notes."""
    part = plan_part(path, shop=SHOP)
    return {name: plan.seats for name, plan in part.plans.items()}, "\n".join(part.faults)


def of_sheet(path: Path) -> tuple[Any, str]:
    """Read a sheet of readings; one row of the demonstration is bad on purpose."""
    sheet = read_readings(path)
    return [one.part for one in sheet.measured], "\n".join(sheet.faults)


def text_of(path: Path) -> str:
    """Return a file without its first line, where that is a remark."""
    text = path.read_text(encoding="utf-8")
    return text.split("\n", 1)[1] if text.startswith("# ") else text


LISTS: dict[str, tuple[str, Callable[[Path], tuple[Any, str]]]] = {
    "cutters": (package_text("cutters.csv"), of_shop(cutters)),
    "machines": (package_text("machines.csv"), of_shop(machines)),
    "materials": (package_text("materials.csv"), of_shop(materials)),
    "jobs": (package_text("jobs.csv"), of_shop(all_jobs)),
    "notes": (text_of(example_parts()[1]), of_part),
    "readings": (text_of(example_readings()), of_sheet),
}


def saved(text: str, separator: str = ",", ends: str = "\n", extra: str = "") -> str:
    """Save a table anew with another separator and other line ends."""
    out = io.StringIO(newline="")
    rows = list(csv.reader(io.StringIO(text)))
    csv.writer(out, delimiter=separator, lineterminator=ends).writerows(rows)
    return out.getvalue() + extra


def headed(text: str, change: Callable[[str], str]) -> str:
    """Write the headings of a table in another way."""
    heads, rows = text.split("\n", 1)
    return ",".join(change(head) for head in heads.split(",")) + "\n" + rows


WAYS: dict[str, Callable[[str], bytes]] = {
    "byte-order mark": lambda text: text.encode("utf-8-sig"),
    "semicolons": lambda text: saved(text, ";").encode(),
    "semicolons, mark and Windows line ends": lambda text: saved(text, ";", "\r\n").encode(
        "utf-8-sig"
    ),
    "tabs": lambda text: saved(text, "\t").encode(),
    "Windows line ends": lambda text: saved(text, ends="\r\n").encode(),
    "old line ends": lambda text: saved(text, ends="\r").encode(),
    "an empty last row": lambda text: saved(text, extra="\n").encode(),
    "a last row of commas": lambda text: saved(text, extra=",,,,,\n").encode(),
    "an empty last column": lambda text: saved(
        "\n".join(f"{line}," for line in text.splitlines())
    ).encode(),
    "no last line end": lambda text: text.rstrip("\n").encode(),
    "headings in another case": lambda text: headed(text, str.upper).encode(),
    "headings with spaces": lambda text: headed(
        text, lambda head: f" {head.replace('_', ' ')} "
    ).encode(),
    "two bytes a letter": lambda text: text.encode("utf-16"),
}


def put(folder: Path, name: str, raw: bytes) -> Path:
    """Save a list where a workbook has it."""
    path = folder / "shop" / f"{name}.csv"
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(raw)
    return path


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("name", LISTS)
def test_a_list_reads_the_same_however_it_was_saved(tmp_path: Path, name: str, way: str) -> None:
    """Mark, separator, line ends, empty rows and the look of headings change nothing."""
    text, read = LISTS[name]
    wanted, faults = read(put(tmp_path, name, text.encode()))
    found, told = read(put(tmp_path, name, WAYS[way](text)))
    assert wanted
    assert found == wanted
    assert len(told.splitlines()) == len(faults.splitlines())


BAD = {
    "cutters": ("bad one,countersnik,82", "bad two,countersink,wide"),
    "machines": ("bad one,press,250", "bad two,mill,fast"),
    "materials": ("bad one", "6061 aluminum,dry"),
    "jobs": ("bad one,,cheese", "bad two,hole in a wall,M6 socket flat"),
    "notes": ("bad one,no note at all", "lid screws,⌀.201 THRU,6061 aluminum,knee mill"),
    "readings": ("bad one,lid screws,8.6", "bad two,lid screws,.397 in,ruler"),
}


@pytest.mark.parametrize("name", LISTS)
def test_the_bad_rows_of_a_list_are_told_together(tmp_path: Path, name: str) -> None:
    """Of two bad rows both are named by file and row in one go."""
    text, read = LISTS[name]
    last = len(text.rstrip("\n").split("\n"))
    raw = "\n".join((text.rstrip("\n"), *BAD[name], ""))
    _, told = read(put(tmp_path, name, raw.encode()))
    for number in (last + 1, last + 2):
        assert any(f"{name}.csv, row {number}" in line for line in told.splitlines()), number
