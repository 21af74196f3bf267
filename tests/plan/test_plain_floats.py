"""Plans are the same whether the chatter outlook is worked out with arrays or without."""

from typing import Any

import pytest
import seatwork as sw
from seatwork import cutting
from seatwork.shop.choosing import situation
from seatwork.shop.shop import Shop

NOTES = (
    "4X \u2300.201 THRU \u2335 FOR #10-32 FLAT HEAD",
    "\u2300.266 THRU \u2335 \u2300.531 X 82\u00b0",
    "\u2300.281 THRU \u2334 \u2300.438 \u21a7 .25",
    "2X \u2300.266 THRU SF \u2300.625",
    "\u23006,6 THRU \u2335 \u230012,6 X 90\u00b0",
    "DRILL .3125 THRU, CHAMFER 1/32 X 45\u00b0",
)
LEAST = 144


def by_arrays(**given: Any) -> tuple[float, float] | None:
    """Find the limit as the benches do, with arrays."""
    found = cutting.width_limit(**given)
    return None if found.width is None else (found.width, found.frequency or 0.0)


def plans() -> list[str]:
    """Plan each note for each material on each machine of the shop, as printed."""
    shop = Shop.at()
    return [
        str(sw.make_plan(note, material=material.name, machine=machine.name))
        for note in NOTES
        for material in shop.materials
        for machine in shop.machines
    ]


@pytest.mark.long
def test_whole_plans_are_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    """At least 144 plans, byte for byte."""
    plain = plans()
    monkeypatch.setattr(situation, "axial_limit", by_arrays)
    assert plans() == plain
    assert len(plain) >= LEAST
