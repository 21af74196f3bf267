"""The button Hand in in a real JupyterLab: pressed by keyboard, told, and stale when it is."""

import os
from pathlib import Path

import pytest
from playwright.sync_api import expect
from seatwork.marking import answers, sheets
from seatwork.record import hand_out
from seatwork.shop.marker import name_in_marker

LOOSE = 30_000
GIVEN = "cones.given.json"


@pytest.fixture
def box(lab, tmp_path: Path):
    """Give L07 a graded sheet in the workbook, and name the folder it is handed in to."""
    cones, given = sheets.load("cones"), tmp_path / "given"
    hand_out(tmp_path / "course", cones, ("L07",), mode="graded", target=given)
    (lab.folder / GIVEN).write_bytes((given / "L07" / GIVEN).read_bytes())
    marker = lab.folder / "workbook.toml"
    before, folder = marker.read_bytes(), tmp_path / "box"
    folder.mkdir()
    name_in_marker(lab.folder, "hand_in", str(folder))
    yield folder
    marker.write_bytes(before)
    (lab.folder / GIVEN).unlink()


def test_a_sheet_is_handed_in_by_its_button(lab, page, box: Path) -> None:
    """Answered, handed in, changed, handed in again: each is told beside the button."""
    cells = ["import seatwork as sw", 'sheet = sw.sheet("cones")', 'sheet.ask("c1")']
    lab.open(page, lab.write("exercises/hand_in.ipynb", [*cells, "sheet.finish()"]))
    lab.run_all(page)
    press = page.get_by_role("button", name="Hand in", exact=True)
    expect(press).to_be_visible(timeout=LOOSE)
    expect(page.get_by_text("Not handed in yet.")).to_be_visible()
    field = page.locator(".seatwork-field").get_by_role("textbox").first
    field.fill(".2")
    expect(page.get_by_text("1 of 3 answered")).to_be_visible(timeout=LOOSE)
    press.focus()
    page.keyboard.press("Enter")
    expect(page.get_by_text("Handed in: L07-cones-1.json.")).to_be_visible(timeout=LOOSE)
    assert answers.read(box / "L07-cones-1.json").of("c1").parts == (".2",)
    folder = os.environ.get("SEATWORK_PICTURES")
    if folder:
        press.scroll_into_view_if_needed()
        page.screenshot(path=str(Path(folder) / "hand_in.png"))
    field.fill(".3")
    expect(page.get_by_text("changed since you handed in")).to_be_visible(timeout=LOOSE)
    press.click()
    expect(page.get_by_text("Handed in: L07-cones-1.json.")).to_be_visible(timeout=LOOSE)
    assert answers.read(box / "L07-cones-1.json").of("c1").parts == (".3",)
