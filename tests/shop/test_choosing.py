"""Choosing a cutter: what fits, in what order and why; or what would fit."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Choices, Where, choose
from seatwork.shop.shop import Shop

SEAT = Countersink(diameter=12.88, hole_diameter=6.75, included_angle=82)


@pytest.fixture(scope="module")
def shop() -> Shop:
    """Open the demo shop of the cider mill class."""
    return Shop.at()


def names(choices: Choices) -> list[str]:
    """Names of what fits, best first."""
    return [choice.tool.name for choice in choices.ranked]


def why_not(choices: Choices, name: str) -> str:
    """Tell what keeps a tool from fitting."""
    (sentence,) = {r.sentence for r in choices.refused if r.tool.cutter.name == name}
    return sentence


def about(choices: Choices, name: str) -> str:
    """All that is said of a tool that fits."""
    (choice,) = [choice for choice in choices.ranked if choice.tool.name == name]
    return " / ".join(r.sentence for r in (*choice.reasons_for, *choice.reasons_against))


def test_what_fits_fits(shop: Shop) -> None:
    """Every cutter ranked has the angle, a body over the seat and a nose under the hole."""
    found = choose(seat=SEAT, where=Where(material="1018 steel", machine="knee mill"), shop=shop)
    assert found.ranked
    for choice in found.ranked:
        cutter = choice.tool.cutter
        assert cutter.included_angle == pytest.approx(82, abs=0.5)
        assert cutter.body_diameter >= SEAT.diameter
        assert cutter.nose_diameter < SEAT.hole_diameter
    scores = [choice.score for choice in found.ranked]
    assert scores == sorted(scores, reverse=True)


def test_one_lip_comes_first_and_six_worn_ones_last(shop: Shop) -> None:
    """In steel on the drill press one lip is first, six worn ones last; common practice."""
    found = choose(
        seat=SEAT, where=Where(material="1018 steel", machine="bench drill press"), shop=shop
    )
    assert names(found)[0] == "CS82-1"
    assert names(found)[-1] == "CS82-6"
    assert "one lip chatters least" in about(found, "CS82-1")
    assert "it is worn" in about(found, "CS82-6")
    assert "spaced unevenly" in about(found, "CS82-6U")


def test_no_step_chosen_is_over_the_cap(shop: Shop) -> None:
    """The step that comes with each choice keeps the countersink cap of the house."""
    cap = shop.rules.number("speeds.countersink_cap")
    for machine in ("bench drill press", "knee mill", "hand drill"):
        where = Where(material="6061 aluminum", machine=machine)
        for choice in choose(seat=SEAT, where=where, shop=shop).ranked:
            assert choice.step.spindle_speed <= cap


def test_each_refusal_says_the_first_fault(shop: Shop) -> None:
    """Angle, kind, shank: what keeps a cutter out is told in the drawer's words."""
    found = choose(
        seat=SEAT, where=Where(material="1018 steel", machine="bench drill press"), shop=shop
    )
    assert why_not(found, "CS90-3") == "its angle is 90°, the seat has 82°"
    assert why_not(found, "EM3/8") == "an end mill cuts no cone"
    assert "is smaller than the seat" in why_not(found, "CS82-3P")


def test_a_nose_that_does_not_go_in_is_refused(shop: Shop) -> None:
    """A cross-hole cutter with a 3/16 in nose does not start in a 4 mm hole."""
    seat = Countersink(diameter=8, hole_diameter=4, included_angle=82)
    found = choose(seat=seat, where=Where(material="1018 steel", machine="knee mill"), shop=shop)
    assert "does not go into the hole" in why_not(found, "XH82")


def test_sheet_by_hand_asks_for_the_stop_cage(shop: Shop) -> None:
    """In thin sheet with a hand drill the piloted cutter in the cage leads, with its clicks."""
    seat = Countersink(diameter=9.8, hole_diameter=5.1, included_angle=82)
    where = Where(material="sheet steel", machine="hand drill", thickness=1.5)
    found = choose(seat=seat, where=where, shop=shop)
    assert names(found)[0] == "CS82-3P + CAGE"
    assert "in clicks of 0.001 in" in about(found, "CS82-3P + CAGE")
    assert "of a leg up to 0.030 in" in why_not(found, "XH82")
    assert "it can raise a burr in sheet" in about(found, "CS82-3P + CAGE")
    assert "3 bare lips grab in a hand drill" in why_not(found, "CS82-3")
    assert "positive rake grabs" in about(found, "CS82-1")


def test_a_cross_hole_cutter_is_for_burrs_and_light_chamfers(shop: Shop) -> None:
    """Up to a leg of .030 in it is taken, and cuts sheet clean; common practice, no source."""
    where = Where(material="sheet steel", machine="hand drill", thickness=1.5)
    light = Countersink(diameter=6.5, hole_diameter=5.1, included_angle=82)
    found = choose(seat=light, where=where, shop=shop)
    assert "leaves no burr, in sheet too" in about(found, "XH82")
    full = Countersink(diameter=6.8, hole_diameter=5.1, included_angle=82)
    refused = choose(seat=full, where=where, shop=shop)
    assert "house rule crosshole.greatest_leg" in why_not(refused, "XH82")


def test_a_cage_is_for_the_machine_without_a_stop(shop: Shop) -> None:
    """One stop decides: on a drill press the quill's, so the cage stays in the drawer."""
    seat = Countersink(diameter=9.8, hole_diameter=5.1, included_angle=82)
    where = Where(material="1018 steel", machine="bench drill press")
    assert "one decides" in why_not(choose(seat=seat, where=where, shop=shop), "CS82-3P")


def test_rake_grabs_in_brass(shop: Shop) -> None:
    """In brass positive rake speaks against a cutter, in steel for it."""
    seat = Countersink(diameter=9, hole_diameter=6, included_angle=90)
    brass, steel = (
        choose(seat=seat, where=Where(material=metal, machine="knee mill"), shop=shop)
        for metal in ("brass", "1018 steel")
    )
    assert "positive rake grabs and feeds itself in brass" in about(brass, "CS90-1")
    assert "positive rake cuts with less force" in about(steel, "CS90-1")


def test_a_counterbore_needs_its_pilot(shop: Shop) -> None:
    """The M6 counterbore fits a 6.6 mm hole, not one of 7 mm (loose) or 6.5 mm (does not go in)."""
    where = Where(material="gray iron", machine="bench drill press")
    fits = choose(
        seat=Counterbore(diameter=11, depth=6.4, hole_diameter=6.6), where=where, shop=shop
    )
    assert names(fits) == ["CB-M6"]
    for hole, told in ((7.0, "hangs loose"), (6.5, "does not go into the hole")):
        seat = Counterbore(diameter=11, depth=6.4, hole_diameter=hole)
        assert told in why_not(choose(seat=seat, where=where, shop=shop), "CB-M6")


def test_small_counterbores_are_fragile(shop: Shop) -> None:
    """A 5/16 in counterbore is to be fed in small steps; common practice, no source."""
    seat = Counterbore(diameter=7.95, depth=5, hole_diameter=5.1)
    found = choose(seat=seat, where=Where(material="1018 steel", machine="knee mill"), shop=shop)
    assert "small counterbores snap" in about(found, "CB#10")


def test_sets_are_put_together_for_the_hole(shop: Shop) -> None:
    """A head gets the largest pilot under the hole and each holder the machine takes."""
    seat = Counterbore(diameter=22.225, depth=8, hole_diameter=10.32)
    found = choose(seat=seat, where=Where(material="gray iron", machine="lathe"), shop=shop)
    assert set(names(found)) == {
        "A-7/8 + A-P13/32 + A-HOLDER",
        "A-7/8 + A-P13/32 + A-HOLDER-S",
    }
    mill = choose(seat=seat, where=Where(material="gray iron", machine="knee mill"), shop=shop)
    assert names(mill) == ["A-7/8 + A-P13/32 + A-HOLDER-S"]


def test_a_machine_too_fast_speaks_against(shop: Shop) -> None:
    """A 31 mm spotface in iron is too slow for the drill press, and the reason says what to do."""
    seat = Spotface(diameter=31, hole_diameter=13.5)
    found = choose(
        seat=seat, where=Where(material="gray iron", machine="bench drill press"), shop=shop
    )
    assert all(choice.step.too_fast for choice in found.ranked)
    assert "use a machine with back gear" in about(found, "SF1-1/4")


def test_nothing_fits_and_what_would(shop: Shop) -> None:
    """For a 120° seat each cutter is refused, and one sentence says what would do."""
    seat = Countersink(diameter=12.88, hole_diameter=6.75, included_angle=120)
    found = choose(seat=seat, where=Where(material="brass", machine="knee mill"), shop=shop)
    assert found.best is None
    assert found.would_do.startswith("A countersink of 120°, body at least 0.507 in (12.88 mm)")
    cutting = {one.name for one in shop.cutters if one.kind not in ("pilot", "holder", "stop cage")}
    assert {refusal.tool.cutter.name for refusal in found.refused} == cutting


def test_a_chamfer_needs_its_hole(shop: Shop) -> None:
    """A chamfer is chosen for as a small countersink on the hole the job names."""
    where = Where(material="1018 steel", machine="knee mill")
    with pytest.raises(SeatworkError, match="give the hole diameter with the job"):
        choose(seat=Chamfer(leg=1), where=where, shop=shop)
    on_hole = Where(material="1018 steel", machine="knee mill", hole_diameter=6)
    found = choose(seat=Chamfer(leg=1), where=on_hole, shop=shop)
    assert {"CS90-1", "SD90", "CM90"} <= set(names(found))


def test_an_end_mill_needs_a_collet(shop: Shop) -> None:
    """End mills cut counterbores on the mill, without a pilot; not in a drill chuck."""
    seat = Counterbore(diameter=11, depth=6.4, hole_diameter=6.6)
    mill, press = (
        choose(seat=seat, where=Where(material="6061 aluminum", machine=machine), shop=shop)
        for machine in ("knee mill", "bench drill press")
    )
    assert "no pilot: bring the spindle over the hole" in about(mill, "EM11")
    assert "held in a collet" in why_not(press, "EM11")


def test_every_outlook_is_an_illustration(shop: Shop) -> None:
    """The chatter outlook is words, with the warning of the model, and never a number."""
    found = choose(
        seat=SEAT, where=Where(material="1018 steel", machine="bench drill press"), shop=shop
    )
    for choice in found.ranked:
        (outlook,) = [
            reason.sentence
            for reason in (*choice.reasons_for, *choice.reasons_against)
            if reason.sentence.startswith(("likely quiet", "may sing: try on scrap"))
        ]
        assert "illustration, not a prediction for your machine" in outlook
        assert not any(sign.isdigit() for sign in outlook)
