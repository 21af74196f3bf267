"""Writes the page of accessibility from what the walks found, and from the palettes."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from typing import Any

from tests.access.colors import Pair, pairs
from tests.access.walking import LOOKS

TITLE = """# Accessibility

Written by `python tests/accessibility.py`, which walks every page again in Chromium; change the
pages. What is looked at is what is ours: in JupyterLab the text and the outputs of a page that was
run from top to end, and the whole of a page taken home. The yardstick is WCAG 2.2, A and AA.

| look | what it is |
|---|---|
{looks}

`tests/browser/test_accessibility.py` shows every look but the dark one a page made wrong on
purpose, and holds that it says so. `tests/access/test_colors.py` is quick and runs with every
change.
"""

WHAT = {
    "axe, light and dark": "every rule of axe-core for WCAG 2.2 A and AA, targets of 24 px among "
    "them, and for good practice, in both themes",
    "keyboard": "Tab through each part: every stop reached once, in the order of the page, never "
    "back up in a column, a ring of 2 px and 3:1 to be seen, nothing over it, and out again "
    "(2.1.1, 2.1.2, 2.4.3, 2.4.7, 2.4.11)",
    "200 %": "a window of 640 by 360: nothing cut off, nothing under anything, and the keyboard "
    "once more (1.4.4)",
    "320 px": "nothing cut off, and nothing wider than the page but tables, drawings and code "
    "(1.4.10)",
    "text spacing": "lines, letters and words set apart: nothing cut off (1.4.12)",
    "forced colors": "letters are read, what can be pressed has an edge, the ring of the focus "
    "stays (1.4.1, 1.4.11)",
    "reduced motion": "sliders are moved by keys: nothing slides or fades (2.3.3)",
    "names and values": "each control and each picture has its name in the browser's "
    "accessibility tree, and its value where it has one (1.1.1, 4.1.2)",
}
"""Each look of the walk, and what it is."""

LEFT = """## What is left

- No person who uses a screen reader, a magnifier, a switch or speech has tried this; a walk finds
  what is missing, not what is tiresome. One browser was walked, on a desktop.
- Forced colors are Chromium's own; a Windows contrast theme was not at hand. Drawings keep their
  colors there, on their own ground.
- The PDFs that are printed have words that can be searched and copied, and no tags. In a notebook
  the same page is a picture with its words, and `print(card)` says all of it, which a screen
  reader reads in order.
- Tables of two columns in notebooks have no words over their columns, since every row names itself
  (axe's `empty-table-header`, good practice and not WCAG, is left out of the walk).
- Tables, drawings and code scroll sideways in themselves in a narrow window, as 1.4.10 allows.
- The Spanish words of the glossary are not marked as Spanish among the English ones, so 3.1.2 (AA)
  is not met there.
"""

NEEDS = {4.5: "letters, 4.5", 3.0: "lines, 3", 0.0: "do not meet"}


def table(head: str, rows: Iterable[Iterable[object]]) -> Iterator[str]:
    """Write a table of Markdown."""
    yield head
    yield "|" + "---|" * (head.count("|") - 1)
    for row in rows:
        yield "| " + " | ".join(str(cell) for cell in row) + " |"
    yield ""


def walks(found: list[dict[str, Any]]) -> Iterator[str]:
    """Write how many pages of each kind were walked, and in how many each look found a fault."""
    kinds: dict[str, list[dict[str, Any]]] = defaultdict(list)
    for one in found:
        kinds[one["kind"]].append(one)
    rows = []
    for kind, pages in sorted(kinds.items()):
        bad = [sum(bool(page["faults"][look]) for page in pages) for look in LOOKS]
        sums = [sum(page[what] for page in pages) for what in ("controls", "stops")]
        rows.append((kind, len(pages), *sums, *(count or "-" for count in bad)))
    yield "## The walks\n"
    yield (
        "Controls are what has a name to be asked for, pictures among them; stops are where Tab "
        "rests. Under each look stands on how many pages it found something.\n"
    )
    yield from table(f"| kind | pages | controls | stops | {' | '.join(LOOKS)} |", rows)
    yield "### What they found\n"
    told = [
        f"- {one['page']}, {look}: `{fault.replace('`', chr(39))}`"
        for one in sorted(found, key=lambda one: (one["kind"], one["page"]))
        for look in LOOKS
        for fault in one["faults"][look]
    ]
    yield from told or ["Nothing that is left."]
    yield ""


def colors() -> Iterator[str]:
    """Write the contrast of every pair of colors of every palette."""
    yield "## Colors\n"
    yield (
        "Every pair of each palette, from the code. A pair that does not meet needs no contrast: "
        "two grounds, which hatching and an outline part, or two lines, which differ in form and "
        "weight. Picks and the term's tables take JupyterLab's own colors, which axe looks at.\n"
    )
    places: dict[str, dict[tuple[str, str], list[Pair]]] = defaultdict(lambda: defaultdict(list))
    for pair in pairs():
        places[pair.where][pair.one, pair.other].append(pair)
    for where, met in places.items():
        names = [pair.palette for pair in next(iter(met.values()))]
        yield f"### {where[0].upper()}{where[1:]}\n"
        ordered = sorted(met.items(), key=lambda item: -item[1][0].need)
        rows = [
            (f"{one}, {other}", NEEDS[each[0].need], *(f"{pair.ratio:.1f}" for pair in each))
            for (one, other), each in ordered
        ]
        yield from table(f"| pair | needs | {' | '.join(names)} |", rows)


def jupyterlab(found: dict[str, Any]) -> Iterator[str]:
    """Write what JupyterLab itself does not do."""
    yield "## JupyterLab itself\n"
    yield (
        "JupyterLab's own frame is not ours to mend, and it does not meet WCAG 2.2 AA: Tab typed "
        "in a code cell writes a tab instead of going on (Esc leads out), its bars do not fold "
        f"for a narrow window, and axe finds round our parts, in version {found['version']}:\n"
    )
    rows = [(f"`{rule}`", *told) for rule, told in sorted(found["rules"].items())]
    yield from table("| rule | what it asks | places |", rows)
    yield (
        "Who is stopped by that has the same lessons and sheets as [pages taken home]"
        "(../../README.md#on-a-phone-or-where-nothing-can-be-installed), which hold none of it.\n"
    )


def report(pages: dict[str, dict[str, Any]]) -> str:
    """Write the page from what each walk found."""
    found = [one["accessibility"] for one in pages.values() if "accessibility" in one]
    itself = [one["jupyterlab"] for one in pages.values() if "jupyterlab" in one]
    looks = "\n".join(f"| {look} | {what} |" for look, what in WHAT.items())
    lines = [TITLE.format(looks=looks), *walks(found)]
    for one in itself:
        lines += jupyterlab(one)
    return "\n".join([*lines, LEFT, *colors()])
