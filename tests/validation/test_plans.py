"""Complete plans against hand-worked answers: every figure with its sum and its source.

The sums stand in ``data/plans.toml``; none of the expected values was read off the program.
"""

import math
import tomllib
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest
from proof.holding import BY_HAND
from seatwork import notes, plan, units
from seatwork.errors import SeatworkError
from seatwork.plan import SeatPlan
from seatwork.shop.shop import Shop

SHEET = "plans of one seat, worked by hand"
READ = tomllib.loads(Path(__file__).with_name("data").joinpath("plans.toml").read_text("utf-8"))
PLANS, CONFLICTS = READ["plan"], READ["conflict"]
# how far a figure may be off: half a unit of the last digit of the hand-worked value, or so
TOLERANCE = {"in": 6e-5, "mm": 1e-3, "deg": 1e-9, "rpm": 0.06, "Nm": 0.01, "W": 0.1}
SUMS = {
    "pi": math.pi,
    "tan": lambda degrees: math.tan(math.radians(degrees)),
    "sin": lambda degrees: math.sin(math.radians(degrees)),
}


@pytest.fixture(scope="module")
def shop() -> Shop:
    """Return the package's own shop."""
    return Shop.at()


def made(case: dict[str, Any], shop: Shop) -> SeatPlan:
    """Plan a case; every case here has one seat."""
    known = {name: units.length(case[name]) for name in ("thickness", "edge") if name in case}
    planned = plan.make(
        notes.read(case["note"]),
        screw=case.get("screw"),
        material=case.get("material", "1018 steel"),
        machine=case.get("machine", "knee mill"),
        shop=shop,
        **known,
    )
    (seat,) = planned.seats
    return SimpleNamespace(seat=seat, questions=" ".join(planned.questions))


def figure(seat: SeatPlan, what: str, unit: str) -> float:
    """Read one figure of a plan, in the unit of the hand-worked one."""
    kind, _, rest = what.partition(" ")
    per = 25.4 if unit == "in" else 1.0
    if kind == "size":
        name, _, end = rest.rpartition(" ")
        if end in ("least", "greatest"):
            return getattr(seat.size(name), end) / per
        return seat.size(rest).value / per
    if kind == "stop":
        number, name = rest.split()
        return getattr(seat.stops[int(number)], name) / per
    if kind == "reading":
        instrument, _, end = rest.rpartition(" ")
        (one, *_) = [r for r in seat.readings if r.instrument.startswith(instrument)]
        return getattr(one, end) / per
    (step,) = [step for step in seat.operations if step.name == rest]
    return {
        "raw": lambda: step.spindle.raw,
        "set": lambda: step.spindle.step.spindle_speed,
        "feed": lambda: step.feed / per,
        "torque": lambda: step.load.torque,
        "power": lambda: step.power,
    }[kind]()


def case_name(case: dict[str, Any]) -> str:
    """Name a case in the report."""
    return case["name"]


def test_there_are_25_plans_or_more() -> None:
    """Twenty-five complete plans are worked by hand."""
    assert len(PLANS) >= 25
    assert sum(len(case["figures"]) for case in PLANS) > 110


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_hand_worked_values_are_what_their_sums_give(case) -> None:
    """Each expected value agrees with the sum written beside it."""
    for what, value, unit, work, source in case["figures"]:
        assert source, what
        summed = eval(work, {"__builtins__": {}}, SUMS)
        assert summed == pytest.approx(value, abs=TOLERANCE[unit]), (what, work)


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_give_the_hand_worked_figures(case, shop, outside) -> None:
    """Sizes, speeds, feeds, travels, readings and loads are those worked by hand."""
    seat = made(case, shop).seat
    for what, value, unit, _, _ in case["figures"]:
        name, found = f"plan: {case['name']}: {what}", figure(seat, what, unit)
        assert outside(
            name, found, value, within=TOLERANCE[unit], unit=unit, source=SHEET, kind=BY_HAND
        )


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_keep_the_order_of_operations(case, shop) -> None:
    """Operations come in the order of the trade, each with its reason."""
    seat = made(case, shop).seat
    assert [step.name for step in seat.operations] == case["steps"]
    assert all(step.why for step in seat.operations)


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_say_what_was_looked_at(case, shop) -> None:
    """Checks have the verdict a machinist gives, and a stop asks its question."""
    found = made(case, shop)
    verdicts = {check.name: check.verdict for check in found.seat.checks}
    assert {name: verdicts.get(name) for name in case.get("checks", {})} == case.get("checks", {})
    for words in case.get("asks", ()):
        assert words in found.questions
    looked = " ".join(check.sentence for check in found.seat.checks)
    for words in case.get("looked", ()):
        assert words in looked
    for words in case.get("said", ()):
        assert words in " ".join(found.seat.advice)
    oils = {step.oil for step in found.seat.operations if step.feed}
    assert "oil" not in case or oils == {case["oil"]}


@pytest.mark.parametrize("case", CONFLICTS, ids=case_name)
def test_conflicts_stop_with_the_question_to_ask(case, shop) -> None:
    """A contradiction is not planned round: the sentence is what a machinist would ask."""
    with pytest.raises(SeatworkError) as refused:
        made(case, shop)
    for words in case["asks"]:
        assert words in str(refused.value)
