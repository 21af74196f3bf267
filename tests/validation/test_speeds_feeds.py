"""Published speeds and feeds: the examples of books, manuals and makers."""

import pytest
from seatwork import cutting, shop
from seatwork.shop.lists.materials import materials
from seatwork.tables import rows

DATA = "speeds_feeds"
FOOT, INCH = 0.3048, 25.4


def of_drill(inputs: dict) -> float:
    """Spindle speed of a row that gives a cutting speed and a diameter [rev/min]."""
    if "fpm" in inputs:
        return cutting.spindle_speed(
            cutting_speed=inputs["fpm"] * FOOT, diameter=inputs["dia_in"] * INCH
        )
    return cutting.spindle_speed(cutting_speed=inputs["vc_m_min"], diameter=inputs["d_mm"])


@pytest.mark.outside("published example", "cutting.spindle_speed")
def test_spindle_speeds(spindle_check) -> None:
    """A published spindle speed comes out of its cutting speed and diameter."""
    assert spindle_check.agrees(of_drill(spindle_check.inputs))


@pytest.mark.outside("published example", "cutting.Shortcut.spindle_speed")
def test_shortcuts(shortcut_check) -> None:
    """The shop's rule of four gives the speed it is published with."""
    speed, diameter = shortcut_check.inputs["fpm"], shortcut_check.inputs["dia_in"]
    found = cutting.SHORTCUTS["4"].spindle_speed(
        cutting_speed=speed * FOOT, diameter=diameter * INCH
    )
    assert shortcut_check.agrees(found)


@pytest.mark.outside("published example", "cutting.feed_rate")
def test_feed_rates(feed_rate_check) -> None:
    """A published feed rate comes out of feed and spindle speed."""
    inputs = feed_rate_check.inputs
    speed = inputs.get("n_rpm")
    feed = inputs.get("f_mm_rev", inputs.get("f"))
    assert feed_rate_check.agrees(cutting.feed_rate(spindle_speed=speed, feed=feed))


@pytest.mark.outside("published example", "cutting.time_in_cut")
def test_times_in_cut(time_check) -> None:
    """A published cutting time comes out, its spindle speed reckoned first."""
    inputs = time_check.inputs
    found = cutting.time_in_cut(
        travel=inputs["depth_mm"], spindle_speed=of_drill(inputs), feed=inputs["f_mm_rev"]
    )
    assert time_check.agrees(found)


@pytest.mark.outside("published example", "cutting.operation_speed")
def test_operation_speeds(operation_check) -> None:
    """Half the drill speed, not yet capped, is the published countersink speed."""
    inputs = operation_check.inputs
    found = cutting.operation_speed(drill_speed=of_drill(inputs), ratio=inputs["fraction"])
    assert operation_check.agrees(found)


@pytest.mark.outside("published example", "cutting.mean_diameter")
def test_mean_diameters(mean_check) -> None:
    """A maker's countersink speed diameter lies midway between hole and rim."""
    inputs = mean_check.inputs
    found = cutting.mean_diameter(diameter=inputs["d_large_mm"], hole_diameter=inputs["d_small_mm"])
    assert mean_check.agrees(found)


def test_ranges_of_materials(range_check) -> None:
    """The shop's list of materials holds the published range of drill speeds."""
    names = {"low carbon steel": "1018 steel", "aluminum": "6061 aluminum"}
    listed = {material.name: material for material in materials()}
    low, high = listed[names[range_check.inputs["material"]]].drill_speeds
    assert range_check.same(f"{low / FOOT:g}-{high / FOOT:g}")


def test_ranges_of_feed(feed_range_check) -> None:
    """The table of drill feeds holds the published range for 1/8 to 1/4 in."""
    (held,) = {
        f"{row['feed_min_in_per_rev']:g}-{row['feed_max_in_per_rev']:g}"
        for row in rows("drill_feeds")
        if (row["over_dia_in"], row["up_to_dia_in"]) == (0.125, 0.25)
        and row["source"].startswith("NAVEDTRA")
    }
    assert feed_range_check.same(held)


def test_carbide_turns_faster(carbide_check) -> None:
    """The house rule for carbide gives the published doubled speed."""
    ratio = shop.rules().number("speeds.carbide_ratio")
    assert carbide_check.agrees(carbide_check.inputs["fpm"] * ratio)
