"""The page of outside checks says what the rows and the package say; the run itself is longer."""

import csv
import re
import subprocess
import sys
from collections import Counter
from pathlib import Path

import pytest
from proof.holding import BY_HAND, LISTS, Held
from proof.page import digits, document, farthest, page
from proof.watching import formulas

PROJECT = Path(__file__).parents[2]
WRITTEN = (PROJECT / "toolkit" / "proof" / "outside_checks.md").read_text("utf-8")
COUNTS = re.compile(r"^\| (?P<name>[^|`]+?) \| (?P<count>\d+) \|", re.MULTILINE)


def counted() -> dict[str, int]:
    """Read how many values the page counts for each kind and document."""
    return {found["name"]: int(found["count"]) for found in COUNTS.finditer(WRITTEN)}


def rows() -> dict[str, dict[str, str]]:
    """Read every published row, each value once."""
    held = {}
    for folder in ("data", "rows"):
        for path in sorted((PROJECT / "tests" / "validation" / folder).glob("*.csv")):
            with path.open(encoding="utf-8", newline="") as file:
                held |= {row["id"]: row for row in csv.DictReader(file)}
    return held


def test_every_row_stands_on_the_page() -> None:
    """Each document has at least as many values on the page as it has rows in the files."""
    wanted = Counter(document(row["source"])[0] for row in rows().values())
    found = counted()
    assert {name: count for name, count in wanted.items() if found.get(name, 0) < count} == {}


def test_every_formula_stands_on_the_page_once() -> None:
    """A formula is checked from outside, or it is in the list of those that are not."""
    listed = re.findall(r"^(?:\| |- )`([\w.]+)`", WRITTEN, re.MULTILINE)
    assert sorted(listed) == sorted(formulas())


def test_what_others_print_is_600_values_and_more() -> None:
    """The goal of the page: 600 values that others print, without sums by hand."""
    found = counted()
    assert found["**printed by others**"] >= 600
    assert found["**printed by others**"] == found["published value"] + sum(
        count for name, count in found.items() if " against " in name and name != LISTS
    )


def test_a_value_counts_once_and_its_larger_difference_stands() -> None:
    """By hand: .0005 off of .001 allowed is said so; a bit of the last place is none."""
    near, far = (
        Held(name=name, found=found, expected=1.0, within=0.001, unit="in", source="ISO 273:1979")
        for name, found in (("a", 1.0 + 1e-13), ("b", 1.0005))
    )
    assert farthest([near, far]) == "0.0005 in of 0.001 allowed"
    assert farthest([near]) == "none"
    assert not Held(
        name="c", found=1.002, expected=1.0, within=0.001, unit="in", source="ISO 273"
    ).agrees
    assert [digits(one) for one in (0.00125, 0.0499999999999, 12.0)] == ["0.0013", "0.05", "12"]


def test_a_source_without_a_document_is_no_page() -> None:
    """A row whose source nobody named stops the command instead of standing nowhere."""
    stranger = Held(name="d", found=1.0, expected=1.0, within=0, unit="in", source="heard it")
    with pytest.raises(LookupError, match="heard it"):
        page([stranger], {}, [], (1, 1))
    assert document("sheet", BY_HAND) == ("sheet", BY_HAND)


@pytest.mark.long
def test_the_page_is_as_a_run_has_it() -> None:
    """Running every check again gives the page, word for word."""
    asked = [sys.executable, "tests/outside_checks.py", "--check"]
    done = subprocess.run(asked, cwd=PROJECT, check=False, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout[-2000:]
