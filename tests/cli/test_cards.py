"""``seatwork card`` and ``seatwork print``: what is written, and what is never written over."""

import errno
from pathlib import Path

import pytest
import typer
from seatwork.cards import Pages
from seatwork.cli.cards import card, keep
from seatwork.cli.sheets import print_sheet
from seatwork.errors import SeatworkError

pytestmark = pytest.mark.slow

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
SHOP = {"material": "6061 aluminum", "machine": "bench drill press"}


def test_a_card_is_written_once(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The same call gives a PDF the first time and a refusal the second; the file stays."""
    out = tmp_path / "hopper.pdf"
    card(NOTE, out, **SHOP, day="2026-03-05")
    first = out.read_bytes()
    assert first.startswith(b"%PDF")
    assert f"Written: {out}" in capsys.readouterr().out
    with pytest.raises(SeatworkError, match="that file is there already"):
        card(NOTE, out, **SHOP, day="2026-03-06")
    assert out.read_bytes() == first


def test_writing_over_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """With --replace the file is written over, and that is told."""
    out = tmp_path / "hopper.pdf"
    out.write_text("mine")
    card(NOTE, out, **SHOP, replace=True)
    assert f"Written over: {out}" in capsys.readouterr().out
    assert out.read_bytes().startswith(b"%PDF")


def test_svg_gives_a_file_for_each_page(tmp_path: Path) -> None:
    """An .svg name makes one file a page, and one of them there already stops all."""
    card(NOTE, tmp_path / "a.svg", **SHOP)
    assert len(list(tmp_path.glob("a-*.svg"))) >= 2
    (tmp_path / "b-2.svg").write_text("mine")
    with pytest.raises(SeatworkError, match="b-2"):
        card(NOTE, tmp_path / "b.svg", **SHOP)
    assert [path.name for path in tmp_path.glob("b*")] == ["b-2.svg"]


def test_a_card_knows_of_the_slope_of_a_raw_pad(tmp_path: Path) -> None:
    """On 3° a 1-1/4 spotface meets the high side 1.25 tan 3° = .0655 in early, plus the skin."""
    card(
        "⌀.531 THRU, SPOTFACE ⌀1.25 TO CLEAN UP",
        tmp_path / "pad.svg",
        material="gray iron",
        machine="knee mill",
        thickness="1 in",
        slope=3.0,
    )
    words = "".join(path.read_text(encoding="utf-8") for path in tmp_path.glob("pad*.svg"))
    assert "high side" in words


def test_a_disk_that_refuses_leaves_what_stood_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """An SVG written over is the old one or the new, never a part of it."""
    (tmp_path / "a-1.svg").write_text("mine")

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "full")

    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(SeatworkError, match="the disk is full"):
        card(NOTE, tmp_path / "a.svg", **SHOP, replace=True)
    assert (tmp_path / "a-1.svg").read_text() == "mine"
    assert [path.name for path in tmp_path.iterdir()] == ["a-1.svg"]


def test_another_ending_is_refused(tmp_path: Path) -> None:
    """A card is PDF or SVG; another ending gets one sentence and no file."""
    with pytest.raises(SeatworkError, match=r"end the name with \.pdf or \.svg"):
        keep(Pages(), tmp_path / "card.docx")
    assert not list(tmp_path.iterdir())


def test_a_part_keeps_its_good_rows(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A file with one bad row still gives the card of the others, and tells the bad one."""
    notes = tmp_path / "frame.csv"
    notes.write_text(f'feature,note\nrim,"{NOTE}"\nbad,"2X hello"\n', encoding="utf-8")
    out = tmp_path / "frame.pdf"
    with pytest.raises(typer.Exit):
        card(str(notes), out, **SHOP)
    assert out.read_bytes().startswith(b"%PDF")
    assert "row 3" in capsys.readouterr().err


def test_a_file_that_names_metal_and_machine_needs_no_options(tmp_path: Path) -> None:
    """The columns say both; a lone note is asked for what it lacks."""
    notes = tmp_path / "lid.csv"
    row = f'lid,"{NOTE}",6061 aluminum,bench drill press'
    notes.write_text(f"feature,note,material,machine\n{row}\n", encoding="utf-8")
    card(str(notes), tmp_path / "lid.pdf")
    assert (tmp_path / "lid.pdf").read_bytes().startswith(b"%PDF")
    with pytest.raises(SeatworkError, match="needs --material"):
        card(NOTE, tmp_path / "note.pdf")


def test_sheets_are_printed_by_name(tmp_path: Path) -> None:
    """A wall chart comes as a PDF, an unknown name as a sentence with the names there are."""
    print_sheet("counterbores", tmp_path / "wall.pdf", paper="a4")
    assert (tmp_path / "wall.pdf").read_bytes().startswith(b"%PDF")
    with pytest.raises(SeatworkError, match="say one of drills"):
        print_sheet("poster", tmp_path / "poster.pdf")
