"""The gaging bench: what a reading means, what it cannot say, and that it says so."""

import itertools
from math import asin, cos, degrees, radians, sin, tan

import pytest
from seatwork import benches
from seatwork.benches.bank.gaging_sums import (
    BALL,
    BALLS,
    CALIPER,
    HEAD,
    SCREW,
    WAYS,
    gaged_job,
    readings,
)
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH = 25.4
FRAME, HOPPER, CRANK = (
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "M6 socket flat 90° (hopper plate)",
)


def verdict(bench):
    """Give what the bench says of the seat."""
    return bench.result.decision.verdict


def test_it_opens_on_a_seat_that_the_caliper_passes():
    """The caliper reads .511, asked .507 to .533, and the bench asks whether it may pass."""
    bench = benches.gaging()
    assert "Will you pass this seat?" in bench.text
    assert bench.readouts()[0][1] == "0.511 in (12.98 mm)"
    assert verdict(bench) == "inside"
    assert "90°" not in bench.text


def test_two_balls_find_the_wrong_cutter():
    """By hand: balls .594 and .406, tops .2263 apart, give 90°, asked 81° to 83°.

    Sine of half the angle is the difference of the radii over that of the centers.
    """
    bench = benches.gaging(shown=True)
    radii = (0.59375 - 0.40625) / 2
    angle = 2 * degrees(asin(radii / (bench.values["rise"] / INCH - radii)))
    assert bench.result.value == pytest.approx(angle)
    assert angle == pytest.approx(90, abs=0.1)
    assert verdict(bench) == "outside"


def test_a_thou_of_height_is_half_a_degree_with_two_balls():
    """Near 82° .001 in of height turns the angle by about half a degree.

    Source: plane geometry; doubt of .001 in at both tops is 1.4 times that.
    """
    bench = benches.gaging(shown=True, rise=0.2365 * INCH)
    higher = benches.gaging(shown=True, rise=0.2375 * INCH)
    assert bench.result.value == pytest.approx(82.6, abs=0.8)
    assert bench.result.value - higher.result.value == pytest.approx(0.75, abs=0.25)


def test_two_balls_can_hardly_prove_one_degree():
    """With a doubt of nearly a degree, one step of the reading at most is proven in."""
    bench = benches.gaging(shown=True)
    steps = [step / 1000 * INCH for step in range(226, 242)]
    assert sum(verdict(bench.set(rise=rise)) == "inside" for rise in steps) <= 1


def test_the_screw_stands_proud_by_the_fit():
    """By hand: the 82° head lies on the hole edge of the 90° seat and stands .016 in proud.

    Head cone .507 down to the hole of .266 is .1386 high; the seat from .511 is .1225 deep.
    """
    bench = benches.gaging(shown=True, way=SCREW)
    head = (0.507 - 0.266) / 2 / tan(radians(41))
    seat = (0.511 - 0.266) / 2 / tan(radians(45))
    assert bench.values["stand"] / INCH == pytest.approx(head - seat, abs=0.0002)
    assert verdict(bench) == "outside"
    assert "proud" in bench.text


def test_one_ball_needs_the_angle():
    """Taken for an 82° cone, the ball in the 90° seat tells a diameter that is not there.

    By hand: diameter = 2 tan 41° (r / sin 41° + r - top), which is .492 where the caliper has .511.
    """
    bench = benches.gaging(shown=True, way=BALL)
    radius, top = 0.25, bench.values["top"] / INCH
    by_hand = 2 * tan(radians(41)) * (radius / sin(radians(41)) + radius - top)
    assert bench.result.value / INCH == pytest.approx(by_hand, abs=1e-6)
    assert by_hand == pytest.approx(0.492, abs=0.0005)


def test_the_head_gage_clears_the_screw():
    """The 1/4 head on its gage of .424: .029 to .050 in, so .044 is a good screw.

    Source: ASME B18.6.3 as printed in handbooks, columns F and G.
    """
    bench = benches.gaging(shown=True, way=HEAD)
    assert (bench.result.least / INCH, bench.result.greatest / INCH) == pytest.approx(
        (0.029, 0.050)
    )
    assert verdict(bench) == "inside"


def test_a_head_below_the_face_may_lie_on_its_rim():
    """In the crank's seat the screw is below, and in; the angle is wrong all the same."""
    below = benches.gaging(shown=True, job=CRANK, way=SCREW)
    assert verdict(below) == "inside"
    assert verdict(below.set(way=BALLS)) == "outside"


@pytest.mark.parametrize("reading", [0.0, 0.02])
def test_near_a_limit_nothing_is_claimed(reading):
    """Within the indicator's .001 in of flush no verdict is given (ISO 14253-1, from memory)."""
    bench = benches.gaging(shown=True, way=SCREW, side="below the face", stand=reading)
    assert verdict(bench) == "cannot be told"
    assert "too near a limit to tell" in bench.text


def test_the_readings_begin_where_the_class_read():
    """Every gage starts at what it shows on the first seat: balls .2263 in apart, caliper .511."""
    begin = readings(gaged_job(FRAME))
    values = benches.gaging().values
    assert {name: values[name] for name in begin} == begin
    assert values["rise"] / INCH == pytest.approx(0.2263, abs=5e-5)
    assert values["rim"] / INCH == pytest.approx(0.511)


@pytest.mark.parametrize("name", ["#8 flat head", "M8 socket flat head", "3/8 flat head machine"])
def test_any_flat_head_can_be_gaged(name):
    """Balls that touch the cone are found, of the angle asked for and of the one cut."""
    held = gaged_job(name)
    for ball in (held.ball, *held.balls):
        for seat in (held.cut, held.as_asked(held.limits[0])):
            touch = ball * cos(radians(seat.included_angle / 2))
            assert seat.hole_diameter < touch < seat.diameter
    bench = benches.gaging(shown=True, job=name)
    assert verdict(bench) == "outside"
    assert eval(bench.code(), {"benches": benches}).text == bench.text


def test_another_seat_brings_its_readings():
    """A seat brings readings of its own; one that is given stays."""
    bench = benches.gaging(shown=True)
    assert bench.set(job=HOPPER).values["rim"] == pytest.approx(readings(gaged_job(HOPPER))["rim"])
    assert bench.set(job=FRAME, rim=".52").values["rim"] == pytest.approx(0.52 * INCH)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"shown": True, "job": CRANK, "way": HEAD}, "no head gage"),
        ({"shown": True, "way": "a ruler"}, "no such choice"),
        ({"shown": True, "rise": 6.79, "job": HOPPER}, "on the rim"),
        ({"rim": "9 in"}, "Caliper|caliper"),
        ({"rim": "wide"}, "wide"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What no seat gives is told in a sentence; the bench stays as it was."""
    bench = benches.gaging(shown=True)
    before = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == before


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.gaging(shown=True, job=HOPPER, way=SCREW, stand=0.2).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert (again.values, again.text) == (bench.values, bench.text)


def steps(way):
    """Give the slider of a gage and some values over its range."""
    if way == CALIPER:
        return "rim", [12.3, 12.88, 13.2, 13.6, 14.4]
    return {
        BALLS: ("rise", [5.6, 5.749, 6.0, 6.3]),
        BALL: ("top", [7.9, 8.3, 8.842, 9.3]),
        SCREW: ("stand", [0.0, 0.1, 0.4, 1.0]),
        HEAD: ("over", [0.4, 0.74, 1.1, 1.6]),
    }[way]


@pytest.mark.slow
@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(way, look, drawing_faults):
    """Over the range of every gage words stand clear and whole, and a move equals a new picture."""
    name, values = steps(way)
    bench = benches.gaging(shown=True, way=way)
    moved = bench.scene(bench.result, look)
    moved.draw()
    found = []
    for value, side in itertools.product(values, ("proud of the face", "below the face")):
        bench.set(**{name: value}, side=side)
        drawing = bench.scene(bench.result, look).draw()
        found += [f"{value} {side}: {fault}" for fault in drawing_faults(drawing)]
        assert moved.move(bench.part(bench.result, look.system)) == drawing.text
    assert found == []


@pytest.mark.slow
def test_all_seats_are_drawn_clear(drawing_faults):
    """Every seat with every gage there is for it, as it opens."""
    found = []
    for job, way in itertools.product((FRAME, HOPPER, CRANK), WAYS):
        if (job, way) != (CRANK, HEAD):
            bench = benches.gaging(shown=True, job=job, way=way)
            found += [f"{job} {way}: {fault}" for fault in drawing_faults(bench.drawing)]
    assert found == []


@pytest.mark.slow
def test_the_page_can_show_it():
    """The scene goes through the live picture, and a move is short."""
    bench = benches.gaging(shown=True)
    scene = bench.scene(bench.result, bench.look())
    assert isinstance(scene, Scene)
    picture = LivePicture(scene)
    picture.move(bench.set(rise=5.95).drawn)  # the letters travel once
    text, changes = picture.move(bench.set(rise=5.9).drawn)
    assert text == bench.text
    assert len(str(changes)) < 3000


def test_the_ball_touches_its_cone_where_geometry_says():
    """A ball's circle of contact is its diameter times the cosine of the half angle."""
    job = gaged_job(FRAME)
    for ball in (job.ball, *job.balls):
        for angle in (82, 90):
            touch = ball * cos(radians(angle / 2))
            assert job.cut.hole_diameter < touch < job.limits[1]
