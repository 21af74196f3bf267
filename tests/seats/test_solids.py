"""Seats against an independent solid modeler, within what its facets allow.

The modeler knows nothing of cones: it is given polygons of N sides, cuts them from one another
and counts. An N-sided prism or pyramid has exactly the share N/(2 pi) sin(2 pi/N) of the round
one's cross section at every height, so volumes can be compared to the last digits.
"""

from math import cos, pi, radians, sin, sqrt
from random import Random

import numpy as np
import pytest
from seatwork.seats import Chamfer, Counterbore, Countersink, Head, Spotface, clean_up, fit, rim
from seatwork.seats.surfaces import Round, Tilted

pytestmark = pytest.mark.slow

solids = pytest.importorskip("manifold3d", reason="the solid modeler is in the test extra")

SIDES = 24
SHARE = SIDES / (2 * pi) * sin(2 * pi / SIDES)
TALL = 100.0


def frustum(low: float, high: float, height: float, sides: int = SIDES) -> "solids.Manifold":
    """Make a frustum standing on z = 0, radii at bottom and top."""
    return solids.Manifold.cylinder(height, low, high, sides)


def cutter(seat: Countersink, above: float = 0.0, sides: int = SIDES) -> "solids.Manifold":
    """Make the cone and the hole below it; the face is z = 0, the cone goes on `above` it."""
    low, depth = seat.hole_diameter / 2, seat.depth
    high = seat.diameter / 2 + above * seat.tangent
    cone = frustum(low, high, depth + above, sides).translate((0, 0, -depth))
    hole = frustum(low, low, TALL, sides).translate((0, 0, -TALL - depth / 2))
    return cone + hole


def random_seat(rng: Random) -> Countersink:
    """Draw a seat."""
    hole = rng.uniform(2, 12)
    return Countersink(
        diameter=hole * rng.uniform(1.2, 2.5),
        hole_diameter=hole,
        included_angle=rng.choice([60.0, 82.0, 90.0, 100.0, 120.0, rng.uniform(50, 130)]),
    )


@pytest.mark.outside("solid modeler", "seats.Countersink.volume", "seats.Counterbore.volume")
def test_volumes_of_200_random_seats() -> None:
    """Metal cut by countersink and counterbore agrees with the modeler within 1e-6."""
    rng = Random(1)
    for _ in range(200):
        seat = random_seat(rng)
        plate = solids.Manifold.cube((80, 80, 30), True).translate((0, 0, -15))
        drilled = plate - frustum(*[seat.hole_diameter / 2] * 2, TALL).translate((0, 0, -TALL + 1))
        sunk = drilled - cutter(seat, above=0.5)
        assert drilled.volume() - sunk.volume() == pytest.approx(seat.volume * SHARE, rel=1e-6)
        bore = Counterbore(
            diameter=seat.diameter, depth=seat.depth, hole_diameter=seat.hole_diameter
        )
        pocket = frustum(*[bore.diameter / 2] * 2, bore.depth + 1).translate((0, 0, -bore.depth))
        cut = drilled.volume() - (drilled - pocket).volume()
        assert cut == pytest.approx(bore.volume * SHARE, rel=1e-6)


@pytest.mark.outside("solid modeler", "seats.Countersink.bearing_area")
def test_areas_of_200_random_lands() -> None:
    """The conical land agrees with the modeler's facets, of which the exact area is known."""
    rng = Random(2)
    for _ in range(200):
        seat = random_seat(rng)
        low, high = seat.hole_diameter / 2, seat.diameter / 2
        body = frustum(low, high, seat.depth)
        ends = SHARE * pi * (low**2 + high**2)
        land = body.surface_area() - ends
        # each facet is a trapezoid: its chords and its height follow from the number of sides
        facet = sqrt(((high - low) * cos(pi / SIDES)) ** 2 + seat.depth**2)
        facets = SIDES * sin(pi / SIDES) * (low + high) * facet
        assert land == pytest.approx(facets, rel=1e-6)
        assert land == pytest.approx(seat.bearing_area, rel=(pi / SIDES) ** 2)


def rim_points(cut: "solids.Manifold") -> np.ndarray:
    """Give the corners of a body, shape (n, 3)."""
    return np.asarray(cut.to_mesh64().vert_properties)[:, :3]


@pytest.mark.outside("solid modeler", "seats.rim")
def test_rims_of_200_random_seats_on_tilted_faces() -> None:
    """Where the modeler's cone edges meet a tilted plane, the rim is found within 1e-6.

    The edges of the many-sided cone lie on the true cone, so no facet error comes in.
    """
    rng = Random(3)
    for _ in range(200):
        seat = random_seat(rng)
        face = Tilted(tilt=rng.uniform(0, 20))
        found = rim(seat, face, points=SIDES)
        above = 1.5 * seat.diameter
        deep = Countersink.from_depth(
            depth=found.depth, hole_diameter=seat.hole_diameter, included_angle=seat.included_angle
        )
        normal = (sin(radians(face.tilt)), 0.0, -cos(radians(face.tilt)))
        points = rim_points(cutter(deep, above=above).trim_by_plane(normal, 0.0))
        on_plane = np.abs(points @ normal) < 1e-9
        radius = np.hypot(points[:, 0], points[:, 1])
        edge = np.sort(radius[on_plane & (radius > seat.hole_diameter / 2 * 0.999)])
        expected = found.radius[found.width > 1e-6]
        assert len(edge) >= len(expected) > SIDES / 2
        nearest = np.abs(edge[:, None] - expected[None, :]).min(axis=0)
        assert nearest.max() < 1e-6


@pytest.mark.outside("solid modeler", "seats.rim", "seats.Countersink.from_depth")
@pytest.mark.parametrize("count", [20, pytest.param(100, marks=pytest.mark.long)])
def test_rims_of_random_seats_on_round_faces(count: int) -> None:
    """Where the modeler's cone meets a many-sided shaft or bore, the rim is found.

    Facets bound it: the cone's lie up to R (1 - cos(pi/N)) inside, the shaft's likewise, and
    the cone turns a height error into T times as much radius.
    """
    rng = Random(4)
    sides = 360
    for inside in (False, True):
        for _ in range(count):
            seat = random_seat(rng)
            face = Round(diameter=seat.diameter * rng.uniform(5, 10), inside=inside)
            found = rim(seat, face)
            deep = Countersink.from_depth(
                depth=found.depth,
                hole_diameter=seat.hole_diameter,
                included_angle=seat.included_angle,
            )
            shaft = solids.Manifold.cylinder(4 * TALL, face.radius, -1, sides, True)
            shaft = shaft.rotate((90, 0, 0)).translate((0, 0, face.radius * (1 if inside else -1)))
            body = cutter(deep, above=1.05 * max(found.height.max(), 0.0) + 0.05, sides=sides)
            # outside: the cone within the shaft; inside: the cone within the metal round the bore
            removed = body - shaft if inside else body ^ shaft
            points = rim_points(removed)
            away = np.hypot(points[:, 0], points[:, 2] - face.radius * (1 if inside else -1))
            facets = 1 - cos(pi / sides)
            skin = face.radius * facets
            radius = np.hypot(points[:, 0], points[:, 1])
            on_rim = (
                (np.abs(away - face.radius) <= 1.5 * skin)
                & (radius > seat.hole_diameter / 2 + 1e-6)
                & (points[:, 2] > -deep.depth)
            )
            assert on_rim.sum() >= sides / 2
            turn = np.degrees(np.arctan2(points[on_rim, 1], points[on_rim, 0])) % 360
            expected = np.interp(turn, found.directions, found.radius, period=360)
            bound = seat.diameter * facets + 4 * seat.tangent * skin + 1e-4
            assert np.abs(radius[on_rim] - expected).max() < bound


@pytest.mark.outside("solid modeler", "seats.fit")
def test_contact_of_200_random_heads() -> None:
    """At the height found, head and part just touch: 1e-6 higher clear, 1e-3 lower they clash.

    Head and seat have the same number of sides, so their facets meet as the round ones do.
    """
    rng = Random(5)
    for _ in range(200):
        seat = random_seat(rng)
        sharp = seat.hole_diameter * rng.uniform(1.3, 2.6)
        edge = rng.uniform(0.8, 1) * sharp
        if edge <= 1.05 * seat.hole_diameter:
            continue
        head = Head(sharp_diameter=sharp, included_angle=rng.uniform(60, 120), edge_diameter=edge)
        part = solids.Manifold.cube((90, 90, 30), True).translate((0, 0, -15)) - cutter(seat, 0.5)
        cone = frustum(0, sharp / 2, head.apex_depth).translate((0, 0, -head.apex_depth))
        screw = cone ^ frustum(edge / 2, edge / 2, TALL).translate((0, 0, -TALL))
        amount = fit(head, seat).amount
        clear = screw.translate((0, 0, amount + 1e-6)) ^ part
        clash = screw.translate((0, 0, amount - 1e-3)) ^ part
        assert clear.volume() < 1e-12
        assert clash.volume() > 1e-9


@pytest.mark.outside("solid modeler", "seats.Chamfer.at_hole")
def test_chamfer_metal_at_a_hole() -> None:
    """A chamfer at a hole takes off what the modeler takes off, within 1e-6."""
    rng = Random(6)
    for _ in range(30):
        hole = rng.uniform(3, 12)
        cone = Chamfer(leg=rng.uniform(0.2, 2), included_angle=rng.uniform(60, 120)).at_hole(hole)
        plate = solids.Manifold.cube((60, 60, 20), True).translate((0, 0, -10))
        drilled = plate - frustum(hole / 2, hole / 2, TALL).translate((0, 0, -TALL / 2))
        cut = drilled.volume() - (drilled - cutter(cone, 0.5)).volume()
        assert cut == pytest.approx(cone.volume * SHARE, rel=1e-6)


@pytest.mark.outside("solid modeler", "seats.clean_up")
def test_a_spotface_is_whole_at_the_depth_found_and_not_before() -> None:
    """In the modeler the ring of a tilted pad is whole at D tan(phi), not just above it."""
    rng = Random(7)
    for _ in range(20):
        tilt, diameter = rng.uniform(1, 10), rng.uniform(15, 40)
        spot = Spotface(diameter=diameter, hole_diameter=diameter / 3)
        found = clean_up(spot, Tilted(tilt=tilt))
        pad = (
            solids.Manifold.cube((120, 120, 60), True).translate((0, 0, -30)).rotate((0, -tilt, 0))
        )
        tool = frustum(diameter / 2, diameter / 2, TALL)
        for above, whole in ((0.0, True), (0.01 * found.full_depth, False)):
            floor = (pad - tool.translate((0, 0, found.lowest + above))).slice(
                found.lowest + above - 1e-7
            )
            disk = solids.CrossSection.circle(diameter / 2, SIDES)
            missing = (disk - floor).area()
            assert (missing < 1e-4) == whole
