"""Walks one page as its readers do: by Tab, zoomed, narrow, dark, without colors, by name."""

from collections.abc import Iterator
from contextlib import contextmanager
from itertools import pairwise
from pathlib import Path
from typing import Any

LOOK = (Path(__file__).parent / "look.js").read_text("utf-8")
TAGS = ("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice")
LEFT_OUT = "empty-table-header"
"""Good practice that we do not follow, as the report says: Markdown's tables of two columns."""

DESK, ZOOMED, NARROW = (1280, 720), (640, 360), (320, 640)
"""A school's screen, the same at 200 %, and the width of WCAG 2.2, 1.4.10 [px]."""

SETTLED = 700
"""What a page takes at most to lay itself out [ms]."""

MOST_STOPS = 600
SPACED = """* { line-height: 1.5 !important; letter-spacing: .12em !important;
  word-spacing: .16em !important; } p { margin-bottom: 2em !important; }"""
"""The spacing of WCAG 2.2, 1.4.12; a page must bear it."""

BACK = 4
"""By how much two stops may overlap and yet count as one above the other [px]."""

LOOKS = (
    "axe, light", "axe, dark", "keyboard", "200 %", "320 px", "text spacing", "forced colors",
    "reduced motion", "names and values",
)  # fmt: skip
VALUED = {"slider", "spinbutton", "combobox", "checkbox", "radio"}


class Walk:
    """One page in one window.

    Parameters
    ----------
    page : playwright page
        The page, run and at rest.
    parts : str
        What of it is ours, as a CSS selector.
    axe : Axe
        The library of checks.
    """

    def __init__(self, page: Any, parts: str, axe: Any) -> None:
        self.page, self.parts, self.axe = page, parts, axe
        self.controls = self.stops = 0
        self.faults: dict[str, list[str]] = {look: [] for look in LOOKS}
        page.evaluate(LOOK)

    def find(self) -> int:
        """Look for the parts anew; return how many there are."""
        return self.page.evaluate("parts => accessLook.find(parts)", self.parts)

    @contextmanager
    def window(self, size: tuple[int, int]) -> Iterator[None]:
        """Give the page another window, within a ``with`` block."""
        self.resize(size)
        yield
        self.resize(DESK)

    def resize(self, size: tuple[int, int]) -> None:
        """Give the page another window, and wait until it has settled."""
        self.page.set_viewport_size({"width": size[0], "height": size[1]})
        self.page.wait_for_timeout(SETTLED)
        self.find()

    # ------------------------------------------------------------ looks

    def audit(self, look: str, rules: tuple[str, ...] = ()) -> None:
        """Run axe on our parts: every rule of WCAG 2.2 A and AA and good practice, or some."""
        only = {"type": "rule", "values": list(rules)} if rules else {"type": "tag", "values": TAGS}
        turned = {"target-size": {"enabled": True}, LEFT_OUT: {"enabled": False}}
        more = {} if rules else {"rules": turned}
        options = {"resultTypes": ["violations"], "runOnly": only, **more}
        context = {"include": [[one.strip()] for one in self.parts.split(",")]}
        if not self.find():
            return
        context["include"] = [one for one in context["include"] if self.page.query_selector(one[0])]
        found = self.axe.run(self.page, context=context, options=options)
        for broken in found.response["violations"]:
            for node in broken["nodes"]:
                self.faults[look].append(f"{broken['id']}: {node['html'][:120]}")

    def keys(self, look: str = "keyboard") -> int:
        """Press Tab through every part: each stop once, in order, with a focus to be seen."""
        self.page.keyboard.press("Shift")
        stops = 0
        for number in range(self.find()):
            expected = self.page.evaluate("n => accessLook.begin(n)", number)
            if expected:
                stops += expected
                self._through(look)
        return stops

    def _through(self, look: str) -> None:
        """Press Tab from a part's first stop until the focus leaves it."""
        been: list[dict[str, Any]] = []
        while (here := self.page.evaluate("() => accessLook.here()")) and len(been) < MOST_STOPS:
            been.append(here)
            self.page.keyboard.press("Tab")
        faults = self.faults[look]
        if here:
            faults.append(f"no way out by Tab: {here['told']}")
        numbers = [one["number"] for one in been]
        faults += [f"not reached: {one}" for one in self._missed(numbers)]
        faults += [f"no focus to be seen: {one['told']}" for one in been if not one["seen"]]
        faults += [f"under something: {one['told']}" for one in been if not one["free"]]
        for before, after in pairwise(been):
            if goes_back(before, after):
                faults.append(f"goes back up, from {before['told']} to {after['told']}")
        known = [number for number in numbers if number >= 0]
        if known != sorted(set(known)):
            faults.append(f"out of order, or twice: {known}")

    def _missed(self, numbers: list[int]) -> list[str]:
        return self.page.evaluate("numbers => accessLook.missed(numbers)", numbers)

    def room(self, look: str) -> None:
        """Look for what is cut off, stands out, or lies under something."""
        self.faults[look] += self.page.evaluate("() => accessLook.cut()")
        hidden = self.page.evaluate("() => accessLook.covered()")
        self.faults[look] += [f"under something: {one}" for one in hidden]

    def spaced(self) -> None:
        """Set letters, words and lines apart as WCAG asks, and look for what is cut off."""
        tag = self.page.add_style_tag(content=SPACED)
        self.page.wait_for_timeout(SETTLED)
        self.faults["text spacing"] += self.page.evaluate("() => accessLook.cut()")
        tag.evaluate("tag => tag.remove()")

    def forced(self) -> None:
        """Take the colors away: text is read, edges are seen, the focus is seen."""
        look = "forced colors"
        self.page.emulate_media(forced_colors="active")
        self.page.wait_for_timeout(SETTLED)
        self.audit(look, ("color-contrast",))
        for script, said in (("bare", "no edge"), ("outlines", "no focus to be seen")):
            found = self.page.evaluate(f"() => accessLook.{script}()")
            self.faults[look] += [f"{said}: {one}" for one in found]
        self.page.emulate_media(forced_colors="none")

    def still(self) -> None:
        """Count what moves by itself while a hand presses keys and less motion is wanted."""
        self.page.emulate_media(reduced_motion="reduce")
        self.find()
        self.page.evaluate("() => accessLook.watchMotion()")
        for handle in self.page.locator("input[type=range]:visible").all():
            handle.press("PageUp")
            handle.press("ArrowLeft")
        self.page.wait_for_timeout(SETTLED)
        self.faults["reduced motion"] += self.page.evaluate("() => accessLook.motions()")
        self.page.emulate_media(reduced_motion="no-preference")

    def names(self) -> int:
        """Ask the browser's accessibility tree for the name and value of every control."""
        self.find()
        asked = self.page.context.new_cdp_session(self.page)
        count = self.page.evaluate("() => accessLook.list()")
        for number in range(count):
            one = asked.send("Runtime.evaluate", {"expression": f"accessControls[{number}]"})
            tree = {"objectId": one["result"]["objectId"], "fetchRelatives": False}
            node = asked.send("Accessibility.getPartialAXTree", tree)["nodes"][0]
            fault = nameless(node)
            blank = fault.startswith("no value") and self._is_blank(number)
            if fault and not blank:
                told = self.page.evaluate("n => accessLook.told(n)", number)
                self.faults["names and values"].append(f"{fault}: {told}")
        asked.detach()
        return count

    def _is_blank(self, number: int) -> bool:
        """Tell whether nothing is chosen in a menu: a blank has no words to tell."""
        return self.page.evaluate("n => accessControls[n].value === ''", number)

    # ------------------------------------------------------------ all of it

    def all(self, dark: Any) -> "Walk":
        """Take every look; `dark` is called with True and False to turn the page dark and back."""
        self.find()
        self.controls = self.names()
        self.audit("axe, light")
        self.stops = self.keys()
        self.spaced()
        with self.window(ZOOMED):
            self.room("200 %")
            self.keys("200 %")
        with self.window(NARROW):
            self.room("320 px")
        self.forced()
        self.still()
        dark(True)
        self.page.wait_for_timeout(SETTLED)
        self.audit("axe, dark")
        dark(False)
        return self

    def record(self) -> dict[str, Any]:
        """Return what was found as plain data."""
        faults = {look: sorted(set(found)) for look, found in self.faults.items()}
        return {"controls": self.controls, "stops": self.stops, "faults": faults}


def goes_back(before: dict[str, Any], after: dict[str, Any]) -> bool:
    """Tell whether the focus went up the page and did not begin another column."""
    moved = after["page"] - before["page"]
    above = after["bottom"] - moved <= before["top"] + BACK
    return above and after["left"] < before["right"] - BACK


def nameless(node: dict[str, Any]) -> str:
    """Tell what the accessibility tree lacks of a control; empty if it has a name and a value."""
    if node.get("ignored"):
        return "" if "alt" in str(node) or not node.get("role") else "not in the tree"
    role = node["role"]["value"]
    if not node.get("name", {}).get("value", "").strip():
        return f"no name ({role})"
    properties = {one["name"]: one["value"].get("value") for one in node.get("properties", ())}
    has = "value" in node or properties.keys() & {"valuetext", "checked", "valuemin"}
    return "" if role not in VALUED or has else f"no value ({role})"
