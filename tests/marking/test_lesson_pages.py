"""What a page of the course holds, read from its cells."""

import json

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking.lesson_pages import key_of, lesson_pages, page_of

ENTRY = {"file": "03_depth", "title": "Depth", "codes": ["S4"]}
FIRST = (
    "# Depth\n\n**You need:** [Which angle?](02_angle_standards.ipynb). Paper. "
    "**Time:** 90 minutes; there is a place to stop at 40."
)
CELLS = (
    ("markdown", FIRST),
    ("code", 'sw.pick("depth-halves")'),
    ("code", 'worksheet.sheet("cones").ask("c1")'),
    ("markdown", "*A good place to stop after 40 minutes.*"),
    ("code", "sw.pick('depth-edge')"),
    ("code", 'sw.sheet("cones", page="03").ask("c2")'),
)


def test_a_page_is_read_in_two_parts():
    """Time, place to stop, needs, bets and questions, each in the half it stands in."""
    page = page_of(ENTRY, CELLS, "03_depth.ipynb")
    assert (page.minutes, page.stop) == (90, 40)
    assert [page.long(part) for part in ("all", "first", "rest")] == [90, 40, 50]
    assert page.needs == ("angle_standards",)
    assert page.bets_of("first") == ("depth-halves",)
    assert page.bets_of("rest") == ("depth-edge",)
    assert page.asked_of("first") == (("cones", "c1"),)
    assert page.asked_of("rest") == (("cones", "c2"),)
    assert page.asked_of("all") == (("cones", "c1"), ("cones", "c2"))


def test_a_page_without_a_place_to_stop_is_halved():
    """45 minutes and four cells are 23 and 22 minutes, and two cells each."""
    cells = (("markdown", "# A\n\n**Time:** 45 minutes."), *CELLS[1:3], *CELLS[4:])
    page = page_of(ENTRY, cells, "03_depth.ipynb")
    assert (page.stop, page.long("rest")) == (23, 22)
    assert page.asked_of("first") == (("cones", "c1"),)


def test_a_page_that_says_no_time_is_refused():
    """The sentence names the file and what would do."""
    with pytest.raises(SeatworkError, match=r"03_depth\.ipynb.*no \*\*Time"):
        page_of(ENTRY, (("markdown", "# Depth"),), "03_depth.ipynb")


def test_a_key_outlives_a_new_number():
    """A page is known by its name without the number in front."""
    assert key_of("11_depth_diameter_travel") == key_of("03_depth_diameter_travel")


def test_every_lesson_is_read():
    """All lessons of the course are there, each with a time, a bet or a question."""
    pages = lesson_pages()
    assert {"start_here", "angle_standards", "the_whole_part"} <= pages.keys()
    for page in pages.values():
        assert 5 <= page.minutes <= 120
        assert 0 < page.stop < page.minutes
        assert page.bets or page.asked, page.file


@pytest.mark.parametrize("text", ["no JSON", "{}", '{"cells": 1}', "[" * 100_000])
def test_what_is_no_notebook_is_refused_in_a_sentence(tmp_path, text):
    """A damaged page is named, and what would do; nothing of it is run."""
    (tmp_path / "notebooks").mkdir()
    (tmp_path / "notebooks" / "00_start_here.ipynb").write_text(text, encoding="utf-8")
    with pytest.raises(SeatworkError, match="that is no notebook"):
        lesson_pages(tmp_path)


def test_a_workbook_without_a_page_lacks_it(tmp_path):
    """Only the pages that are there are read."""
    (tmp_path / "notebooks").mkdir()
    cells = [{"cell_type": kind, "source": source} for kind, source in CELLS]
    path = tmp_path / "notebooks" / "02_angle_standards.ipynb"
    path.write_text(json.dumps({"cells": cells}), encoding="utf-8")
    assert list(lesson_pages(tmp_path)) == ["angle_standards"]
