"""Each bench with the learner's own part: typed, switched, reloaded, and made again by code().

Two benches run by default, the others are long.
"""

from dataclasses import dataclass

import pytest

PICTURE = ".seatwork-picture svg"
READOUT = ".seatwork-readout"
LAST = ".jp-Notebook .jp-Cell:last-child .jp-OutputArea-output"
SHOW = "print(bench.code())\nprint(bench.text)"


@dataclass(frozen=True, kw_only=True)
class Own:
    """What is one's own on a bench.

    Parameters
    ----------
    press : tuple of str
        Buttons pressed first.
    pick, screw : str
        Last entry of the menu, and the name typed for it; blank where none is picked.
    plate, thick : str
        Label of the plate's row, and what is typed there; blank where there is no plate.
    box, text : str
        Label of a box for words and what is typed there, where there is one.
    """

    press: tuple[str, ...] = ()
    pick: str = "another screw ..."
    screw: str = "M6 csk socket"
    plate: str = "Plate thickness"
    thick: str = "8 mm"
    box: str = ""
    text: str = ""


FLAT = "another flat head screw ..."
NONE = {"pick": "", "plate": ""}
BENCHES = {
    "angles": Own(press=("Cut it open",), screw="M8 csk socket", thick="3 mm"),
    "chatter": Own(press=("Show which one sings",), pick=FLAT, thick="3 mm"),
    "counterbore": Own(screw="M8 hex", thick="30 mm"),
    "cutters": Own(press=("Show the answer",), pick="a screw ...", thick="3 mm"),
    "depth": Own(press=("Cut number 2",)),
    "edges": Own(screw="M8 SHCS"),
    "flush": Own(screw="M8 csk socket", thick="3 mm"),
    "gaging": Own(press=("Ask a second gage",), pick=FLAT),
    "note": Own(**NONE, box="Or type one", text="⌀6.6 THRU ⌵ FOR M6 CSK SOCKET"),
    "on_the_hole": Own(press=("Put the screw in",), screw="M8 csk socket"),
    "slips": Own(**NONE, box="The learner wrote", text="12.5 mm"),
    "speeds": Own(pick="a screw ...", plate="Hole", thick="5 mm"),
    "spotface": Own(press=("Tighten it",), screw="M10 hex", plate="Flange at the low side"),
    "triangle": Own(screw="M8 csk socket", plate=""),
    "which_seat": Own(press=("Show the answer",), screw="M8 SHCS", plate=""),
}
LONG = [
    pytest.param(one, marks=pytest.mark.long) for one in BENCHES if one not in ("depth", "edges")
]


def label(page) -> str:
    """Read what the picture tells a screen reader."""
    return page.locator(PICTURE).get_attribute("aria-label")


def changed(page, before: str) -> str:
    """Wait until the picture tells something else; give it."""
    page.wait_for_function(
        "([p, b]) => document.querySelector(p).getAttribute('aria-label') !== b",
        arg=[PICTURE, before],
    )
    return label(page)


def press(page, name: str) -> None:
    """Press a button and wait for another picture."""
    before = label(page)
    page.get_by_role("button", name=name, exact=True).click()
    changed(page, before)


def open_up(page, own: Own) -> None:
    """Press the buttons that open the bench, as far as they are to be seen."""
    for button in own.press:
        if page.get_by_role("button", name=button, exact=True).count():
            press(page, button)


def unfold(page) -> None:
    """Show the settings that are folded away, where there are any."""
    more = page.get_by_role("button", name="More settings")
    if more.count():
        more.click()
        page.get_by_role("button", name="Fewer settings").wait_for()


def type_screw(page, own: Own) -> None:
    """Open the line below a menu, type a screw and press Enter."""
    before = label(page)
    menu = page.locator(f".widget-dropdown select:visible:has(option:text-is('{own.pick}'))").first
    menu.select_option(label=own.pick)
    line = page.locator(".seatwork-pick .seatwork-text input:visible").first
    line.fill(own.screw)
    line.press("Enter")
    changed(page, before)


def type_plate(page, own: Own) -> None:
    """Type a thickness in millimeters on a page in inches, and leave the box by Tab."""
    box = page.get_by_label(f"{own.plate}: type a value")
    box.fill(own.thick)
    box.press("Tab")
    page.wait_for_function("b => b.value.endsWith(' in')", arg=box.element_handle())
    assert box.evaluate("b => b.scrollWidth <= b.clientWidth")


def type_text(page, own: Own) -> None:
    """Type words and leave the box by Tab."""
    before = label(page)
    box = page.get_by_label(own.box)
    box.fill(own.text)
    box.press("Tab")
    changed(page, before)


def run(lab, page, place: str, cells: list[str]) -> None:
    """Run a notebook with one bench; wait until its picture stands."""
    lab.open(page, lab.write(place, cells))
    lab.run_all(page)
    page.locator(PICTURE).wait_for()


def told_after_reload(lab, page, place: str) -> list[str]:
    """Load the page anew, run its last cell and read what the kernel still holds."""
    lab.save(page)
    page.goto(lab.address(place))
    lab.wait_for(page, place)
    lab.wait_idle(page)
    page.locator(".jp-Notebook .jp-CodeCell").last.locator(".jp-InputArea-editor").click()
    page.keyboard.press("Shift+Enter")
    output = page.locator(".jp-Notebook .jp-CodeCell", has_text="bench.code()").last
    text = output.locator(".jp-OutputArea-output pre").first
    text.filter(has_text="benches.").wait_for()
    lab.wait_idle(page)
    return text.inner_text().strip().split("\n", 1)


@pytest.mark.parametrize("name", ["depth", "edges", *LONG])
def test_ones_own_part_is_made_again(name, lab, page):
    """A screw typed, a plate changed, the system switched, the page reloaded: the same numbers."""
    own, place = BENCHES[name], f"own_{name}.ipynb"
    run(lab, page, place, [f"from seatwork import benches\nbench = benches.{name}()", "bench", "1"])
    open_up(page, own)
    unfold(page)
    if own.pick:
        type_screw(page, own)
    if own.box:
        type_text(page, own)
    if own.plate:
        type_plate(page, own)
    open_up(page, own)  # another question has closed the answer again
    press(page, "Metric first")
    page.wait_for_timeout(700)
    seen, read = label(page), page.locator(READOUT).inner_text()

    page.locator(".jp-Notebook .jp-CodeCell").last.locator(".cm-content").fill(SHOW)
    code, text = told_after_reload(lab, page, place)
    assert " ".join(text.split()) == " ".join(seen.split())
    if own.pick:
        assert own.screw in code
    run(lab, page, f"again_{name}.ipynb", ["from seatwork import benches", code])
    assert label(page) == seen
    assert page.locator(READOUT).inner_text() == read
