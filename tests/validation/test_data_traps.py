"""Values that public lists are known to get wrong."""

from seatwork import hardware

DATA = "data_traps"
INCH = 25.4


def test_iso_10642_head_is_the_theoretical_one(sharp_check) -> None:
    """A flush calculation uses ISO 10642's theoretical head, not DIN 7991's edge."""
    inputs = sharp_check.inputs
    found = hardware.screw(f"{inputs['thread']} {inputs['standard']}")
    assert sharp_check.agrees(found.head.sharp_diameter)


def test_drill_keeps_its_fourth_place(drill_check) -> None:
    """Number drills are kept to .0001 in."""
    assert drill_check.agrees(hardware.drill(drill_check.inputs["drill"]).diameter / INCH)


def test_width_across_flats_by_iso_and_by_old_din(flats_check) -> None:
    """The same thread has two wrench sizes, by the age of the standard."""
    size = flats_check.inputs["thread"]
    found = [hardware.screw(f"{size} {which}").across_flats for which in ("ISO 4014", "DIN 931")]
    assert flats_check.same(" and ".join(f"{each:g}" for each in found))
