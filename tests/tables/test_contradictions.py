"""Where published sources disagree: what the table of contradictions decides is what is used."""

import csv
from pathlib import Path

import pytest
from seatwork import hardware, tables
from seatwork.errors import SeatworkError

INCH = 25.4
CONTRADICTIONS = Path(__file__).parent / "data" / "contradictions.csv"

USED = {
    "82 deg flat head sharp diameter #10": lambda: (
        hardware.screw("#10 FHMS").sharp_diameter / INCH,
        hardware.screw("#10 FHMS").edge_diameter / INCH,
    ),
    "size 18 (.294) flat head A max": lambda: (
        tables.row("inch_flat82_asme_b18_6_3_2013", "#18")["head_dia_A_max_in"],
    ),
    "ISO 10642 head": lambda: (hardware.screw("M3 csk socket").sharp_diameter,),
    "counterbore M3 (ISO 4762)": lambda: (hardware.listed_counterbore("M3 SHCS").diameter,),
    "counterbore M4..M8 depth": lambda: tuple(
        hardware.listed_counterbore(f"{size} SHCS").depth for size in ("M4", "M5", "M6", "M8")
    ),
    "counterbore dia 1/4 SHCS": lambda: (hardware.listed_counterbore("1/4 SHCS").diameter / INCH,),
    "clearance hole M12": lambda: (hardware.clearance_hole("M12", fit="medium").diameter,),
    "clearance drill 1/4 in close": lambda: (
        hardware.clearance_hole("1/4", fit="close").diameter / INCH,
    ),
    "DIN 974-1 with washer, M5 M6 M10": lambda: tuple(
        hardware.listed_counterbore(f"{size} SHCS", series=5).diameter
        for size in ("M5", "M6", "M10")
    ),
    "ISO 10642 M14 M16 M20 k": lambda: tuple(
        hardware.screw(f"{size} csk socket").head_height for size in ("M14", "M16", "M20")
    ),
    "B18.3 flat socket A min 1/4": lambda: (
        hardware.screw("1/4 socket flat").rounded_edge_diameter / INCH,
    ),
    "ISO 4014 s M14": lambda: (hardware.screw("M14 hex").across_flats,),
}
DECIDED = {
    "82 deg flat head sharp diameter #10": (0.385, 0.362),
    "size 18 (.294) flat head A max": (0.561,),
    "ISO 10642 head": (6.72,),
    "counterbore M3 (ISO 4762)": (6.5,),
    "counterbore M4..M8 depth": (4.4, 5.4, 6.4, 8.6),
    "counterbore dia 1/4 SHCS": (0.4375,),
    "clearance hole M12": (13.5,),
    "clearance drill 1/4 in close": (0.265625,),
    "DIN 974-1 with washer, M5 M6 M10": (13, 15, 24),
    "ISO 10642 M14 M16 M20 k": (8.4, 8.8, 10.16),
    "B18.3 flat socket A min 1/4": (0.480,),
    "ISO 4014 s M14": (21,),
}
ELSEWHERE = {
    "ISO 10642 M2 / M2.5": "left out: no such row is held",
    "ISO 273 M68 coarse / M110": "left out: the table ends at M64",
    "ISO 10642 head, actual minimum M3": "from memory, and said so",
    "countersink speed rule": "a house rule",
    "counterbore speed rule": "a house rule",
    "edge distance, rivets": "rules side by side",
    "knife-edge rule": "rules side by side",
    "DIN 74 form B M22, M24 (60 deg) and form A M7 depth": "exceptions of the depth test",
    "DIN 7991 / DIN 963 head diameter": "refused as theoretical sharp",
}


@pytest.mark.parametrize("topic", USED)
def test_the_value_decided_on_is_the_value_used(topic) -> None:
    """For each contradiction with a judgement, the program gives the judged value."""
    assert USED[topic]() == pytest.approx(DECIDED[topic])


def test_every_contradiction_is_dealt_with() -> None:
    """No topic of the table is left without a value, a rule or a refusal."""
    with CONTRADICTIONS.open(encoding="utf-8", newline="") as file:
        topics = {row["topic"] for row in csv.DictReader(file)}
    assert topics == USED.keys() | ELSEWHERE.keys()
    assert USED.keys() == DECIDED.keys()


def test_unresolved_sizes_are_left_out() -> None:
    """ISO 10642 M2 and M2.5 are not resolved between sources, so they are not offered."""
    for size in ("M2", "M2.5"):
        with pytest.raises(SeatworkError, match=f"has no {size}"):
            hardware.screw(f"{size} csk socket")


def test_least_actual_head_is_marked_from_memory() -> None:
    """ISO 10642 M3 least edge 5.54 is shown with its caution."""
    fact = hardware.screw("M3 csk socket").facts["rounded_edge_diameter"]
    assert (fact.value, fact.caution) == (5.54, "from memory: check your copy")


def test_rules_that_differ_stand_side_by_side() -> None:
    """Edge distance 1.5 D, 2 D and 2.5 D each come back under their document."""
    found = {each.length: each.rule for each in hardware.edge_distances(1.0)}
    assert set(found) == {1.5, 2.0, 2.5}
    assert found[1.5].startswith("TM 1-1520-240-BD")
    assert found[2.5].startswith("FAA-H-8083-31")
