"""Pages that get another number: an untouched copy goes over, a changed one stays beside."""

import errno
import json
import tomllib
from pathlib import Path

import pytest
from seatwork.cli import opening
from seatwork.errors import SeatworkError
from seatwork.marking import outline, sheets
from seatwork.opening import Delivery, deliver, workbook
from seatwork.opening.delivered import RECORD
from seatwork.shop.folder import package_text
from seatwork.shop.lists import pages

OLD, NEW = "notebooks/05_some_page.ipynb", "notebooks/06_some_page.ipynb"
OTHER = "notebooks/02_angle_standards.ipynb"


def page(source: str, output: str = "2") -> bytes:
    """Write a notebook of one code cell with an output."""
    result = {"output_type": "execute_result", "data": {"text/plain": [output]}, "metadata": {},
              "execution_count": 1}  # fmt: skip
    cell = {"cell_type": "code", "id": "a", "source": [source], "execution_count": 1,
            "metadata": {}, "outputs": [result]}  # fmt: skip
    document = {"cells": [cell], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
    return json.dumps(document).encode()


@pytest.fixture
def given(monkeypatch: pytest.MonkeyPatch) -> dict[str, bytes]:
    """Deliver two pages, of which one gets another number when a test calls `renumber`."""
    files = {OLD: page("1 + 1"), OTHER: page("3")}
    monkeypatch.setattr(workbook, "originals", files.items)
    monkeypatch.setattr(workbook, "renamed", lambda: {"05_some_page": "06_some_page"})
    return files


def renumber(given: dict[str, bytes], source: str = "1 + 2") -> None:
    """Give the page its new name and a new text, as a new version of seatwork would."""
    del given[OLD]
    given[NEW] = page(source)


def test_an_untouched_page_goes_over_to_its_new_name(given, tmp_path: Path) -> None:
    """The former file goes, the new one stands, and the move is named once."""
    folder = deliver(tmp_path / "w").folder
    renumber(given)
    done = deliver(folder)
    assert (done.moved, done.kept_beside, done.left_alone) == (((OLD, NEW),), (), ())
    assert not (folder / OLD).exists()
    assert (folder / NEW).read_bytes() == given[NEW]
    assert OLD not in json.loads((folder / RECORD).read_text())
    again = deliver(folder)
    assert (again.moved, again.added, again.updated) == ((), (), ())


def test_a_page_that_was_only_run_counts_as_untouched(given, tmp_path: Path) -> None:
    """Outputs are no change of the page; answers lie elsewhere."""
    folder = deliver(tmp_path / "w").folder
    (folder / OLD).write_bytes(page("1 + 1", "two"))
    renumber(given)
    assert deliver(folder).moved == ((OLD, NEW),)


def test_a_changed_page_stays_beside_the_new_one(given, tmp_path: Path) -> None:
    """What a learner wrote is not touched, and is named as long as it lies there."""
    folder, own = deliver(tmp_path / "w").folder, page("my own note")
    (folder / OLD).write_bytes(own)
    renumber(given)
    for _ in range(3):
        done = deliver(folder)
        assert (done.moved, done.kept_beside) == ((), ((OLD, NEW),))
        assert (folder / OLD).read_bytes() == own
        assert (folder / NEW).read_bytes() == given[NEW]


def test_a_changed_page_taken_away_is_no_more_news(given, tmp_path: Path) -> None:
    """A learner who is done with the former file removes it, and nothing brings it back."""
    folder = deliver(tmp_path / "w").folder
    (folder / OLD).write_bytes(page("my own note"))
    renumber(given)
    deliver(folder)
    (folder / OLD).unlink()
    done = deliver(folder)
    assert (done.moved, done.kept_beside, done.added) == ((), (), ())


@pytest.mark.parametrize("spoiled", [b"", b"[]"])
def test_without_a_record_nothing_is_taken_for_untouched(given, tmp_path: Path, spoiled) -> None:
    """A former page that nobody can vouch for stays."""
    folder = deliver(tmp_path / "w").folder
    (folder / RECORD).write_bytes(spoiled)
    renumber(given)
    assert deliver(folder).kept_beside == ((OLD, NEW),)
    assert (folder / OLD).is_file()


def test_the_former_page_goes_only_when_the_new_one_stands(
    given, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A disk that fills up while the new page is written takes nothing away."""
    folder = deliver(tmp_path / "w").folder
    renumber(given)

    def full(path: Path, content: bytes) -> None:
        raise OSError(errno.ENOSPC, "full")

    with monkeypatch.context() as patched:
        patched.setattr(workbook, "write", full)
        with pytest.raises((SeatworkError, OSError)):
            deliver(folder)
    assert (folder / OLD).is_file()


def test_a_reader_s_own_file_under_the_new_name_keeps_the_former_page(given, tmp_path) -> None:
    """Where the new page cannot be put, the former one stays."""
    folder = deliver(tmp_path / "w").folder
    renumber(given)
    (folder / NEW).write_bytes(page("mine"))
    done = deliver(folder)
    assert (done.moved, done.left_alone) == ((), (NEW,))
    assert (folder / OLD).is_file()


def test_the_command_names_both(capsys: pytest.CaptureFixture[str]) -> None:
    """What went over and what stays beside are told in a sentence each."""
    moves = ((OLD, NEW),)
    folder = Path("w")
    opening.report(Delivery(folder=folder, added=(), updated=(), left_alone=(), moved=moves))
    opening.report(Delivery(folder=folder, added=(), updated=(), left_alone=(), kept_beside=moves))
    told = capsys.readouterr().out
    assert "These pages have a new number: 05_some_page, now 06_some_page." in told
    assert "so it stays beside the new one: 05_some_page, now 06_some_page." in told


def test_former_names_lead_to_pages_and_are_no_page_s_name() -> None:
    """Each former name is of no page of today, and stands for one page only."""
    listed = tomllib.loads(package_text("contents.toml"))["page"]
    files = {one["file"] for one in listed}
    formers = [former for one in listed for former in one.get("was", ())]
    assert len(formers) == len(set(formers))
    assert not files & set(formers)
    assert set(pages.renamed().values()) <= files


def test_an_instructor_s_lists_may_name_a_page_as_it_was(tmp_path, monkeypatch) -> None:
    """A coverage list and a placement sheet of one's own lead to the page of today."""
    monkeypatch.setattr(pages, "renamed", lambda: {"05_former": "02_angle_standards"})
    (tmp_path / "shop").mkdir()
    (tmp_path / "notebooks").mkdir()
    (tmp_path / OTHER).write_bytes(page("3"))
    own = "kind,name,codes\nlesson,05_former,G1\n"
    (tmp_path / "shop" / "coverage.csv").write_text(own, encoding="utf-8")
    found = {one.code: one.lessons for one in outline.coverage(tmp_path).codes}
    assert found["G1"] == ("02_angle_standards",)
    sheet = tmp_path / "own.toml"
    sheet.write_text(
        'format = 1\ntitle = "Own"\nmode = "practice"\n[[questions]]\nid = "q1"\n'
        'type = "seat-depth"\nlesson = "05_former"\nstart = "Which angle?"\n',
        encoding="utf-8",
    )
    assert sheets.read(sheet).items[0].lesson == "02_angle_standards"
