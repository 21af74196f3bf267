"""Plans of whole prints worked by hand: sides, threads, blind holes, reamers, casts, centers.

The sums stand in ``data/worked_plans.toml``; none of the expected values was read off the
program. Every note is read as it is printed.
"""

import math
import tomllib
from pathlib import Path
from typing import Any

import pytest
from proof.holding import BY_HAND
from seatwork import plan, units
from seatwork.plan import Plan, SeatPlan
from seatwork.shop.shop import Shop

SHEET = "plans of whole prints, worked by hand"
DATA = Path(__file__).with_name("data") / "worked_plans.toml"
PLANS = tomllib.loads(DATA.read_text("utf-8"))["plan"]
TOLERANCE = {"in": 6e-5, "mm": 1e-3, "deg": 1e-9, "rpm": 0.06, "turns": 0.01}
SUMS = {
    "pi": math.pi,
    "tan": lambda degrees: math.tan(math.radians(degrees)),
    "sin": lambda degrees: math.sin(math.radians(degrees)),
}
SHOP = Shop.at()
IN = 25.4


def made(case: dict[str, Any]) -> Plan:
    """Plan a case."""
    thick = units.length(case["thickness"]) if "thickness" in case else None
    return plan.make(
        case["note"],
        material=case["material"],
        machine=case["machine"],
        thickness=thick,
        shop=SHOP,
    )


def figure(seat: SeatPlan, what: str, unit: str) -> float:
    """Read one figure of a seat's plan, in the unit of the hand-worked one."""
    kind, _, rest = what.partition(" ")
    per = 25.4 if unit == "in" else 1.0
    if kind == "size":
        name, _, end = rest.rpartition(" ")
        if end in ("least", "greatest"):
            return getattr(seat.size(name), end) / per
        return seat.size(rest).value / per
    if kind in ("stop", "every"):
        number, name = rest.split()
        stop = seat.stops[int(number)]
        return getattr(stop.any_hole if kind == "every" else stop, name) / per
    if kind == "reading":
        instrument, _, end = rest.rpartition(" ")
        (one, *_) = [r for r in seat.readings if r.instrument.startswith(instrument)]
        return getattr(one, end) / per
    (step,) = [step for step in seat.operations if step.name == rest]
    return {
        "raw": lambda: step.spindle.raw,
        "set": lambda: step.spindle.step.spindle_speed,
        "feed": lambda: step.feed / per,
    }[kind]()


def case_name(case: dict[str, Any]) -> str:
    """Name a case in the report."""
    return case["name"]


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_hand_worked_values_are_what_their_sums_give(case) -> None:
    """Each expected value agrees with the sum written beside it."""
    for _, what, value, unit, work, source in case.get("figures", ()):
        assert source, what
        summed = eval(work, {"__builtins__": {}}, SUMS)
        assert summed == pytest.approx(value, abs=TOLERANCE[unit]), (what, work)


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_give_the_hand_worked_figures(case, outside) -> None:
    """Every number of the sheet stands in the plan of its seat."""
    seats = made(case).seats
    for at, what, value, unit, _, _ in case.get("figures", ()):
        name, found = f"print: {case['name']}: {at} {what}", figure(seats[at], what, unit)
        assert outside(
            name, found, value, within=TOLERANCE[unit], unit=unit, source=SHEET, kind=BY_HAND
        )


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_keep_the_order_of_work(case) -> None:
    """Seats, places and steps come as a machinist does them, each step with its reason."""
    seats = made(case).seats
    assert [seat.count for seat in seats] == case.get("counts", [seat.count for seat in seats])
    steps = [[step.name for step in seat.operations] for seat in seats]
    assert steps == case.get("steps", steps)
    assert all(step.why for seat in seats for step in seat.operations)
    drilled = [step.tool for seat in seats for step in seat.operations if step.name == "drill"]
    assert "drill" not in case or drilled[0].startswith(f"drill {case['drill']},")
    outside = {s.name for seat in seats for s in seat.operations if not s.in_shop}
    assert "not_in_shop" not in case or outside == set(case["not_in_shop"])


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_look_and_stop_where_the_sheet_does(case) -> None:
    """Each LOOK and STOP of the sheet is there, and a stop asks in the words of the shop."""
    planned = made(case)
    for seat, wanted in zip(planned.seats, case.get("checks", ()), strict=False):
        found = {check.name: check.verdict for check in seat.checks}
        assert {name: found.get(name) for name in wanted} == wanted
    checks = [check for seat in planned.seats for check in seat.checks]
    looked = " ".join(check.sentence for check in checks)
    for words in case.get("looked", ()):
        assert words in looked
    for words in case.get("asks", ()):
        assert words in " ".join(planned.questions)
    assert planned.must_ask is ("asks" in case)
    assert not {check.name for check in checks} & set(case.get("never", ()))


@pytest.mark.parametrize("case", PLANS, ids=case_name)
def test_plans_name_their_tools_and_touch_off_each_face(case) -> None:
    """Taps, heads and pilots are named; a far face is touched off anew."""
    planned = made(case)
    steps = [step for seat in planned.seats for step in seat.operations]
    for words in case.get("tools", ()):
        assert any(words in step.tool for step in steps), words
    for words in case.get("whys", ()):
        assert any(words in step.why for step in steps), words
    for words in case.get("tells", ()):
        assert words in str(planned)
    for seat, far in zip(planned.seats, case.get("touches", ()), strict=False):
        anew = ["far face, touched off anew" in stop.touch for stop in seat.stops]
        assert anew == [bool(far)] * len(seat.stops)
