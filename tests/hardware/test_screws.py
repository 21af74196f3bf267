"""What a screw knows of its head."""

import pytest
from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware import screw
from seatwork.hardware.kinds import KINDS
from seatwork.hardware.threads import thread
from seatwork.seats import Countersink, fit

FLAT = [
    "flat machine 82",
    "flat machine 100",
    "flat socket inch",
    "flat socket metric",
    "flat machine metric",
]


def sizes(kind: str) -> list[str]:
    """Sizes that both the kind's first table and the thread table hold."""
    first = next(iter(KINDS[kind].columns))
    inch, metric = "threads_inch_unc_unf", "threads_metric_iso_262"
    table = inch if KINDS[kind].system == "inch" else metric
    known = {row["size"] for row in tables.rows(table)}
    return [row["size"] for row in tables.rows(first) if row["size"] in known]


def made(kind: str, size: str):
    """Return the screw of a kind and size."""
    return KINDS[kind].screw(kind, thread(f"{size} in" if size == "1" else size))


@pytest.mark.parametrize("kind", KINDS)
def test_every_screw_of_every_kind_says_where_it_is_from(kind) -> None:
    """Each fact has a source and a confirmation; a withdrawn kind names its document."""
    for size in sizes(kind):
        found = made(kind, size)
        assert found.source
        for fact in found.facts.values():
            assert fact.source
            assert fact.confirmed in ("two-source", "one-source", "memory")
        assert ("withdrawn" in found.name) == found.withdrawn


@pytest.mark.parametrize("kind", FLAT)
def test_heads_can_be_built_for_every_size_with_a_sharp_diameter(kind) -> None:
    """Greatest and least head exist, edge below sharp, the least not larger than the greatest."""
    built = 0
    for size in sizes(kind):
        found = made(kind, size)
        if found.sharp_diameter is None:
            with pytest.raises(SeatworkError, match="not its theoretical sharp"):
                _ = found.head
            continue
        built += 1
        head, least = found.head, found.least_head
        assert head.included_angle == found.seat_angle
        assert least.edge <= head.edge <= head.sharp_diameter
        assert least.sharp_diameter <= head.sharp_diameter
        low, high = found.angle_range
        assert low <= found.seat_angle <= high
    assert built >= 7


@pytest.mark.parametrize(
    "kind", ["socket cap inch", "socket cap metric", "hex inch", "hex metric", "din 931"]
)
def test_other_heads_have_no_cone(kind) -> None:
    """A cylinder or hexagon head is refused as a cone, and the right seat is named."""
    for size in sizes(kind)[:3]:
        with pytest.raises(SeatworkError, match="no cone; cut a counterbore"):
            _ = made(kind, size).head


def test_quarter_inch_head_in_a_matched_seat_is_flush() -> None:
    """A 1/4 head of .507 in an 82° seat cut to .507 on .266 is flush on the whole cone."""
    seat = Countersink(diameter=0.507 * 25.4, hole_diameter=0.266 * 25.4, included_angle=82)
    found = fit(screw("1/4 FHMS").head, seat)
    assert (found.state, found.contact) == ("flush", "cone")


def test_least_head_of_a_gaged_screw_comes_from_its_gage() -> None:
    """The least 1/4 head stands F min = .029 above a gage of .424, at the seat's 82°.

    Source: ASME B18.6.3-2013 columns F and G; the cone's geometry.
    """
    least = screw("1/4 FHMS").least_head
    gage = Countersink(diameter=0.424 * 25.4, hole_diameter=0.25 * 25.4, included_angle=82)
    assert fit(least, gage).amount / 25.4 == pytest.approx(0.029, abs=1e-6)


def test_a_seat_cut_to_the_edge_leaves_the_head_proud() -> None:
    """Cut to .477 instead of .507, a 1/4 head stands .017 proud. Source: trade figure, computed.

    At 3/4 it is .052: the seat must be cut to the theoretical sharp diameter.
    """
    for name, edge, hole, proud in (
        ("1/4 FHMS", 0.477, 0.266, 0.017),
        ("3/4 FHMS", 1.285, 0.781, 0.052),
    ):
        seat = Countersink(diameter=edge * 25.4, hole_diameter=hole * 25.4, included_angle=82)
        assert fit(screw(name).head, seat).amount / 25.4 == pytest.approx(proud, abs=0.0005)


@pytest.mark.parametrize(
    ("name", "hole", "proud"), [("1/4 FHMS", 0.266, 0.0050), ("#10 FHMS", 0.201, 0.0038)]
)
def test_an_80_degree_head_stands_proud_in_an_82_degree_seat(name, hole, proud) -> None:
    """The greatest head made at 80° rides the hole edge of its own 82° seat.

    Source: computed trade figures, .0050 at 1/4 on .266 and .0038 at #10 on .201.
    """
    screw_found = screw(name)
    seat = Countersink(
        diameter=screw_found.sharp_diameter, hole_diameter=hole * 25.4, included_angle=82
    )
    found = fit(screw_found.steepest_head, seat)
    assert found.amount / 25.4 == pytest.approx(proud, abs=0.00006)
    assert found.contact == "hole edge"


def test_screws_can_be_kept_in_a_set() -> None:
    """Two readings of one name are one screw."""
    assert len({screw("M6 csk socket"), screw("M6 csk socket"), screw("M8 csk socket")}) == 2


def test_a_missing_fact_is_none() -> None:
    """What no document gives is None, never a guess."""
    found = screw("1/4 socket flat")
    assert found.edge_diameter is None
    assert found.across_flats is None
    assert found.value("knurled_diameter") is None
    assert screw("M6 csk socket").gage is None


def test_hexagons_without_published_corners_use_the_sharp_hexagon() -> None:
    """M10: 16 mm across flats is 18.475 mm across corners. Source: geometry, 16 / cos 30°."""
    assert screw("M10 hex").across_corners == pytest.approx(18.4752, abs=1e-4)
    assert screw("1/2 hex cap").across_corners == pytest.approx(0.866 * 25.4)
