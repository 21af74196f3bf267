"""Sheets of the evenings and of their cuts: two sides each, and readings that are read back."""

import csv
import io
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from matplotlib.image import imread
from seatwork.cards import Pages, bench_sheets, evening_pages
from seatwork.cards.blocks import VERIFY
from seatwork.cards.evening_cuts import cuts
from seatwork.cards.front import to_settle
from seatwork.cli.inspect import inspect_parts
from seatwork.cli.sheets import print_sheet
from seatwork.errors import SeatworkError
from seatwork.inspection import inspect_file
from seatwork.inspection.columns import COLUMNS
from seatwork.inspection.cuts import cuts_of
from seatwork.marking import evening_course
from seatwork.shop.house.cautions import closing

pytestmark = pytest.mark.slow

FORMS = {"eight": (4, 5, 6, 7, 8), "four": (2, 3, 4)}
"""By form the evenings at the machines."""

CUTS = [(form, number) for form, numbers in FORMS.items() for number in numbers]


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("form", FORMS)
def test_each_evening_is_the_two_sides_of_one_paper(
    form: str, paper: str, faults: Callable[[Pages], list[str]]
) -> None:
    """No text is small, clipped or on another one; front and back, no more."""
    pages = evening_pages(form=form, paper=paper)
    assert faults(pages) == []
    assert len(pages.figures) == 2 * len(evening_course(form).evenings)


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(("form", "number"), CUTS)
def test_each_cut_is_the_two_sides_of_one_paper(
    form: str, number: int, paper: str, faults: Callable[[Pages], list[str]]
) -> None:
    """Nothing is small, clipped or on another; each side keeps its line for a signature."""
    pages = bench_sheets(number, form=form, paper=paper)
    assert faults(pages) == []
    assert len(pages.figures) == 2 * len(cuts(number, form=form))
    for words in pages.words:
        assert "instructor [blank]  date [blank]" in words
        assert any(VERIFY in line and closing() in line for line in words)


def test_no_page_has_a_color() -> None:
    """No pixel of any sheet differs in red, green and blue."""
    for pages in (evening_pages(4), bench_sheets(4)):
        for number in range(len(pages.figures)):
            pixels = imread(io.BytesIO(pages.png(number, dpi=60)), format="png")[..., :3]
            assert np.ptp(pixels, axis=2).max() == 0


@pytest.mark.parametrize("form", FORMS)
def test_an_evening_prints_what_the_plan_says(form: str) -> None:
    """Every line of the plan stands on paper: clock, things to lay out, questions, costs."""
    for one in evening_course(form).evenings:
        words = str(evening_pages(one.number, form=form))
        lines = [*(row.text for row in one.clock), *one.given.prepare, *one.given.shown]
        lines += [*one.given.cut, *one.given.gaged, *(row.text for row in one.missed)]
        lines += [goal for _, _, goal in (*one.asked, *one.again)]
        assert [line for line in lines if line not in words] == []
        assert closing() in words


@pytest.mark.parametrize(("form", "number"), CUTS)
def test_no_cut_of_the_course_is_one_to_ask_about(form: str, number: int) -> None:
    """No learner gets a bench sheet whose plan has something to settle first."""
    for plan in cuts(number, form=form).values():
        assert to_settle(plan, plan.rows()) == []


def test_a_cut_with_something_to_settle_says_so_first(monkeypatch: pytest.MonkeyPatch) -> None:
    """A plate that the cone goes through has its STOP in a frame on the bench sheet."""
    from dataclasses import replace

    from seatwork.cards import evening_cuts

    (job,) = evening_cuts.jobs_of(4, "eight")
    thin = (replace(job, thickness="1/8 in"),)
    monkeypatch.setattr(evening_cuts, "jobs_of", lambda *_: thin)
    words = bench_sheets(4).words[0]
    assert any(line.startswith("STOP") for line in words)


def test_the_far_side_is_held_anew_before_it_is_cut() -> None:
    """On the far-side sheet the second set-up stands behind the drill and before its own cut."""
    words = bench_sheets(6).words[2]
    order = ("Setup 1: near face up", "1 drill", "Setup 2: far face up", "3 turn the part over")
    places = [next(n for n, line in enumerate(words) if line.startswith(one)) for one in order]
    cut = next(n for n, line in enumerate(words) if "countersink: tool" in line)
    assert places == sorted(places)
    assert places[-1] < cut


def heads(pages: Pages, page: int) -> list[str]:
    """Read the headings of the readings off a printed page, as a person types them."""
    names = [line.split(": ")[0] for line in pages.words[page]]
    return [name for name in names if name.split(" [")[0] in COLUMNS]


GOOD = {
    "part": "L07-1", "diameter": "0.510", "diameter with": "optical", "depth": "0.1405",
    "depth with": "depth micrometer", "tried": "yes", "touch": "hole edge", "burr": "no",
    "angle": "82", "angle with": "optical", "stand": "0.006 below", "stand with": "depth indicator",
}  # fmt: skip
"""Readings of a good seat, .510 x 82° on .266: .244 / 2 / tan 41° = .1403 deep, worked by hand."""


def filled(path: Path, names: list[str], feature: str, values: dict[str, str]) -> None:
    """Type a filled sheet into a file, its headings as printed."""
    with path.open("w", newline="", encoding="utf-8") as out:
        table = csv.writer(out)
        table.writerow(["feature", *names])
        table.writerow([feature, *(values.get(name.split(" [")[0], "") for name in names)])


def test_a_filled_sheet_is_read_by_inspect(tmp_path: Path) -> None:
    """Its readings, typed under the headings it prints, are judged; a proud head is rejected."""
    names = heads(bench_sheets(4), 1)
    assert {"part", "diameter [in]", "stand [in]", "remark"} <= set(names)
    good, bad = tmp_path / "good.csv", tmp_path / "bad.csv"
    filled(good, names, "first seat in scrap", GOOD)
    filled(bad, names, "first seat in scrap", GOOD | {"stand": "0.012 proud"})
    assert [one.verdict for one in inspect_file(good, cuts(4)).parts] == ["accept"]
    assert [one.verdict for one in inspect_file(bad, cuts(4)).parts] == ["reject"]


@pytest.mark.parametrize(("form", "number"), CUTS)
def test_every_reading_of_every_sheet_is_a_column(form: str, number: int) -> None:
    """The lines of a sheet are the columns that the blank of the same cuts has."""
    from seatwork.inspection.blank import columns_of

    pages = bench_sheets(number, form=form)
    for place, cut in enumerate(cuts_of(cuts(number, form=form)).values()):
        wanted = [one.heading(cut.system) for one in columns_of(cut.seat)]
        assert heads(pages, 2 * place + 1) == ["part", *wanted, "remark"]


def test_the_command_writes_sheet_and_list_of_cuts(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """What it writes with --list is what ``seatwork inspect --part`` takes."""
    out, jobs, good = tmp_path / "b.pdf", tmp_path / "jobs.csv", tmp_path / "good.csv"
    print_sheet("bench-sheet", out, evening=4, listed=jobs)
    assert out.read_bytes().startswith(b"%PDF")
    filled(good, heads(bench_sheets(4), 1), "first seat in scrap", GOOD)
    inspect_parts(good, part=[jobs])
    assert "accept" in capsys.readouterr().out


def test_what_is_there_is_not_written_over(tmp_path: Path) -> None:
    """A list of cuts that is there stays."""
    jobs = tmp_path / "jobs.csv"
    jobs.write_text("mine", encoding="utf-8")
    with pytest.raises(SeatworkError, match="there already"):
        print_sheet("bench-sheet", tmp_path / "b.pdf", evening=4, listed=jobs)
    assert jobs.read_text(encoding="utf-8") == "mine"


def test_the_list_of_evenings_can_be_taken_and_changed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Written with --list into a workbook's shop it stands in; a title changed there is printed."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    listed = tmp_path / "shop" / "evenings.toml"
    listed.parent.mkdir()
    print_sheet("evening", tmp_path / "e.pdf", evening=1, listed=listed)
    text = listed.read_text(encoding="utf-8")
    listed.write_text(text.replace("Four seats, and the angle", "Our first night"), "utf-8")
    monkeypatch.chdir(tmp_path)
    assert evening_course(folder=tmp_path).evening(1).given.title == "Our first night"


@pytest.mark.parametrize("number", [0, 9, 1])
def test_an_evening_without_a_cut_has_no_bench_sheet(number: int) -> None:
    """No evening of that number, or nothing cut on it: one sentence."""
    with pytest.raises(SeatworkError):
        bench_sheets(number)


def test_a_stop_and_a_depth_with_other_limits_say_why() -> None:
    """⌀.507 to .512 on a .266 hole at 82° is .139 to .141 of travel; worked by hand from tan 41°.

    Under .507 the .507 head is proud. A depth that the print does not give is read to the title
    block's .005 over .139.
    """
    first = next(iter(bench_sheets(4).words))
    told = next(line for line in first if "Two limits" in line)
    assert "0.139 in to 0.141 in" in told
    assert "0.139 in to 0.144 in" in told
    assert "In doubt the diameter decides" in told


def test_where_the_limits_agree_nothing_is_said_of_them() -> None:
    """The hopper plate's depth is worked from the same screw as its stop."""
    assert not any("Two limits" in line for words in bench_sheets(6).words for line in words)
