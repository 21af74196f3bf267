"""Fixtures of the cards' tests: plans of the cider mill, random notes, a look at every letter."""

import random
from collections.abc import Callable, Iterator

import pytest
from matplotlib.text import Text
from seatwork import notes
from seatwork.cards.lettering import as_on_paper
from seatwork.cards.pages import MARGIN, Pages
from seatwork.errors import SeatworkError
from seatwork.plan import Plan, make

FLAT = ("#8-32", "#10-32", "1/4-20", "5/16-18", "3/8-16")
METRIC = ("M5", "M6", "M8", "M10")
MATERIALS = ("6061 aluminum", "1018 steel", "gray iron")
MACHINES = ("bench drill press", "knee mill")
LEAST_TYPE = 10  # pt
BESIDE = 0.02  # in; what a letter may stand out of its margin
FOOT_RIM = 0.25  # in; the line at the foot stands below the margin


@pytest.fixture(scope="session")
def plan_of() -> Callable[..., Plan]:
    """Return a function that plans a note."""

    def made(note: str, **more: object) -> Plan:
        usual = {"material": "6061 aluminum", "machine": "knee mill", **more}
        return make(notes.read(note), **usual)

    return made


def _note(rng: random.Random) -> str:
    count, across = rng.randint(1, 12), rng.uniform(0.15, 0.5)
    match rng.randrange(8):
        case 0:
            return f"{count}X FOR {rng.choice(FLAT)} FLAT HEAD ⌵"
        case 1:
            return f"{count}X ⌴ FOR {rng.choice(('1/4', '5/16', '3/8', '1/2'))} SHCS"
        case 2:
            return f"{count}X ⌀{across:.3f} THRU ⌵ ⌀{across * rng.uniform(1.3, 2):.3f} X 82°"
        case 3:
            wide, high = across * rng.uniform(1.4, 2.2), rng.uniform(0.1, 0.4)
            return f"{count}X ⌀{across:.3f} THRU ⌴ ⌀{wide:.3f} ↧{high:.3f}"
        case 4:
            return f"{count}X FOR {rng.choice(METRIC)} COUNTERSUNK SOCKET HEAD ⌵"
        case 5:
            hole = rng.uniform(4, 14)
            return f"{count}X ⌀{hole:.1f} THRU ⌵ ⌀{hole * rng.uniform(1.3, 2.1):.1f} X 90°"
        case 6:
            return f"{count}X ⌀{across:.3f} THRU, S.F. {across * rng.uniform(1.6, 2.4):.3f}"
    return f"{count}X {rng.choice(('1/4-20', '5/16-18', '3/8-16'))} UNC-2B"


@pytest.fixture(scope="session")
def random_plans() -> Callable[[int, int], Iterator[Plan]]:
    """Return a function that gives so many random plans, always the same for a seed."""

    def plans(count: int, seed: int) -> Iterator[Plan]:
        rng, found = random.Random(seed), 0
        while found < count:
            thickness = rng.choice((None, rng.uniform(4.0, 30.0)))
            kind = {"material": rng.choice(MATERIALS), "machine": rng.choice(MACHINES)}
            try:
                plan = make(notes.read(_note(rng)), thickness=thickness, **kind)
            except SeatworkError:
                continue
            found += 1
            yield plan

    return plans


@pytest.fixture(scope="session")
def faults() -> Callable[[Pages], list[str]]:
    """Return a function that names every text that is small, clipped or on another one."""

    def look(pages: Pages) -> list[str]:
        with as_on_paper():
            return [fault for figure in pages.figures for fault in _faults(figure)]

    return look


def _faults(figure: object) -> list[str]:
    renderer = figure.canvas.get_renderer()
    texts = [one for one in figure.artists if isinstance(one, Text) and one.get_text().strip()]
    boxes = [(text.get_text(), text.get_window_extent(renderer)) for text in texts]
    wide, high = figure.bbox.width, figure.bbox.height
    found = [f"small: {text.get_text()}" for text in texts if text.get_fontsize() < LEAST_TYPE]
    rim = (MARGIN - BESIDE) * figure.dpi
    found += [
        f"clipped: {said}"
        for said, box in boxes
        if box.x0 < rim
        or box.y0 < FOOT_RIM * figure.dpi
        or box.x1 > wide - rim
        or box.y1 > high - rim
    ]
    rows = sorted(boxes, key=lambda one: one[1].y0)
    for number, (said, box) in enumerate(rows):
        for other, beside in rows[number + 1 :]:
            if beside.y0 > box.y1:
                break
            deep = min(box.y1, beside.y1) - max(box.y0, beside.y0)
            across = min(box.x1, beside.x1) - max(box.x0, beside.x0)
            if deep > 2.5 and across > 1.5:
                found.append(f"overlap: {said} / {other}")
    return found
