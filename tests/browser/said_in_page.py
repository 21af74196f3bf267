"""What questions and plans say, as data: asked of the Python in a page and of the one here."""

import json
import random

from seatwork.errors import SeatworkError
from seatwork.marking.text import right_answer
from seatwork.plan import make_plan
from seatwork.questions import judge_all, named
from seatwork.questions.type.parts import NumberPart
from seatwork.shop.shop import Shop

TYPED = ("0.139 in", "3,53 mm", "a", "17/64", "", "</script>", "1e3", "²")
NOTES = (
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    "⌀.266 THRU ⌵ ⌀.531 X 82°",
    "⌀.281 THRU ⌴ ⌀.438 ↧ .25",
    "2X ⌀.266 THRU SF ⌀.625",
    "⌀6,6 THRU ⌵ ⌀12,6 X 90°",
    "DRILL .3125 THRU, CHAMFER 1/32 X 45°",
)


def question(given: dict) -> list:
    """Say all that a question of a type says with the numbers of one seed."""
    asked = named(given["type"]).draw(random.Random(given["seed"]))
    right = [right_answer(part) for part in asked.parts]
    slips = [
        str(slip.value)
        for part in asked.parts
        if isinstance(part, NumberPart)
        for slip in part.slips
    ]
    judged = [
        [[verdict.kind, [slip.code for slip in verdict.slips]] for verdict in judge_all(asked, one)]
        for one in [right, *([text] * len(right) for text in (*slips, *TYPED))]
    ]
    said = [asked.ask("inch"), asked.ask("metric"), asked.worked(), *asked.hints, *right]
    return [said, judged]


def stock(given: dict) -> list:
    """Name the materials and the machines of the shop."""
    del given
    shop = Shop.at()
    return [[one.name for one in shop.materials], [one.name for one in shop.machines]]


def plan(given: dict) -> str:
    """Say a whole plan, or why there is none."""
    try:
        return str(make_plan(given["note"], material=given["material"], machine=given["machine"]))
    except SeatworkError as error:
        return str(error)


def call(name: str, text: str) -> str:
    """Answer what a page asks."""
    return json.dumps({"question": question, "stock": stock, "plan": plan}[name](json.loads(text)))
