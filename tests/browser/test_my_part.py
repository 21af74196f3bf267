"""The page of one's own part in a real JupyterLab, as a self-learner and a machinist use it.

``SEATWORK_PICTURES=DIR`` keeps a picture of each page.
"""

import json
import os
import tomllib
from pathlib import Path

import pytest

WORKED = Path(__file__).parents[1] / "validation" / "data" / "worked_plans.toml"
PLANS = tomllib.loads(WORKED.read_text("utf-8"))["plan"][:10]
PICTURE = ".seatwork-picture svg"
TELLS = "([p, t]) => document.querySelector(p).getAttribute('aria-label').includes(t)"

TELLS_ONE = """([p, some]) => {
  const told = document.querySelector(p).getAttribute('aria-label');
  return some.some(t => told.includes(t));
}"""


def open_part(lab, page, place: str, call: str = "sw.benches.my_part()") -> None:
    """Run a notebook with the page of a part; wait until its picture stands."""
    lab.open(page, lab.write(place, ["import seatwork as sw", call]))
    lab.run_all(page)
    page.locator(PICTURE).wait_for()


def keep(page, name: str) -> None:
    """Keep a picture of the whole page of the part where one is asked for."""
    folder = os.environ.get("SEATWORK_PICTURES")
    if not folder:
        return
    Path(folder).mkdir(parents=True, exist_ok=True)
    before = page.viewport_size
    high = page.evaluate("() => document.querySelector('.seatwork-bench').offsetHeight")
    page.set_viewport_size({"width": before["width"], "height": high + 260})
    page.wait_for_timeout(700)
    page.evaluate("() => document.querySelector('.seatwork-bench').scrollIntoView()")
    page.screenshot(path=str(Path(folder) / f"{name}.png"))
    page.set_viewport_size(before)


def type_in(page, label: str, text: str) -> None:
    """Type a text into a box and leave it."""
    box = page.get_by_label(label, exact=True)
    box.fill(text)
    box.press("Tab")


def test_from_the_note_to_the_verdict_and_back_after_a_reload(lab, page) -> None:
    """A typed note, a changed rule, a card and readings; reloaded, all of it is there again."""
    open_part(lab, page, "my_part_walk.ipynb")
    type_in(page, "Print note", "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD BOTH SIDES")
    page.wait_for_function(TELLS, arg=[PICTURE, "far side"])
    type_in(page, "Thickness at the hole", ".500 in")
    page.wait_for_function(TELLS, arg=[PICTURE, "straight land"])
    type_in(page, "flush.greatest_below", "0.010 in")
    page.get_by_text("flush.greatest_below (changed here)").wait_for()
    page.get_by_role("button", name="See the card").click()
    page.locator(".seatwork-below img").wait_for()
    type_in(page, "diameter [in]", ".370")
    page.get_by_role("heading", name="reject").wait_for()
    keep(page, "my_part-walk")
    kept = json.loads((lab.folder / "my_part" / "my_part.json").read_text("utf-8"))
    assert kept["rules"] == {"flush.greatest_below": "0.010 in"}

    lab.save(page)
    open_part(lab, page, "my_part_again.ipynb")
    page.wait_for_function(TELLS, arg=[PICTURE, "far side"])
    page.get_by_role("heading", name="reject").wait_for()
    assert page.get_by_label("diameter [in]", exact=True).input_value() == ".370"


def test_a_note_that_cannot_be_read_leaves_nothing_to_cut(lab, page) -> None:
    """The fault is told where the note is read, and no table of what to set stays below it."""
    open_part(lab, page, "my_part_fault.ipynb", "sw.benches.my_part('⌀.201 THRU ⌵ FOR #10 FLAT')")
    type_in(page, "Print note", "4X ⌀.201 THRU ⌵ ⌀.385 X")
    page.get_by_role("heading", name="No plan yet").wait_for()
    assert page.get_by_role("heading", name="What to set").count() == 0
    keep(page, "my_part-fault")


@pytest.mark.long
def test_ten_notes_carried_through_have_the_hand_worked_numbers(lab, page) -> None:
    """Each of ten worked prints is typed; the page shows the sizes worked by hand."""
    open_part(lab, page, "my_part_ten.ipynb", "sw.benches.my_part('⌀.201 THRU')")
    for case in PLANS:
        page.get_by_label("Material", exact=True).select_option(case["material"])
        page.get_by_label("Machine", exact=True).select_option(case["machine"])
        type_in(page, "Thickness at the hole", case.get("thickness", ""))
        type_in(page, "Print note", case["note"])
        shown = " / ".join(case["note"].split("\n"))
        page.wait_for_function(TELLS, arg=[PICTURE, shown])
        for _, what, value, unit, _, _ in case.get("figures", ()):
            kind, _, name = what.partition(" ")
            if kind == "size" and unit == "in" and name.split()[-1] not in ("least", "greatest"):
                near = [f"{value + step:.3f} in" for step in (-5e-4, 0.0, 5e-4)]
                near.append(f"{value:.4f} in")
                page.wait_for_function(TELLS_ONE, arg=[PICTURE, near], timeout=20_000)
        keep(page, f"my_part-{case['name'].split()[0]}")


@pytest.mark.long
@pytest.mark.parametrize("width", [1280, 640])
def test_nothing_is_wider_than_the_page(width: int, lab, page) -> None:
    """At a projector's width and at half of it nothing runs past the page sideways."""
    page.set_viewport_size({"width": width, "height": 720})
    open_part(lab, page, f"my_part_{width}.ipynb", "sw.benches.my_part('M12 SHCS C\\'BORE')")
    type_in(page, "Print note", "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD BOTH SIDES")
    page.wait_for_function(TELLS, arg=[PICTURE, "far side"])
    past = page.evaluate(
        """() => [...document.querySelectorAll('.seatwork-bench *')].filter(e => {
          const box = e.getBoundingClientRect();
          const home = document.querySelector('.seatwork-bench').getBoundingClientRect();
          return box.width && box.right > home.right + 2 && !e.closest('.seatwork-wide, svg');
        }).map(e => e.className)"""
    )
    assert past == []
    keep(page, f"my_part-{width}")
