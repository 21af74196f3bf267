"""The dimensioned section: its numbers, its words, and that nothing is ever in the way."""

import itertools

import numpy as np
import pytest
from matplotlib.lines import Line2D
from matplotlib.patches import Patch
from matplotlib.spines import Spine
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import GhostScene, Look, Scene
from seatwork.drawings.section import Section
from seatwork.drawings.strokes.style import DESK, POINTS, PROJECTOR
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head

INCH = 25.4
QUARTER = SeatedHead(
    head=Head(sharp_diameter=0.507 * INCH, included_angle=82, edge_diameter=0.477 * INCH),
    seat=Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=90),
)
M6 = SeatedHead(
    head=Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34, height=3.72),
    seat=Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82),
)


def seated(head, *, share, hole, angle):
    """Seat a head in a countersink `share` of its own diameter; None where it cannot lie."""
    diameter = share * head.sharp_diameter
    try:
        seat = Countersink(diameter=diameter, hole_diameter=hole * diameter, included_angle=angle)
    except SeatworkError:
        return None
    return SeatedHead(head=head, seat=seat)


def settings(sizes, head_angles, cutter_angles, shares, holes):
    """Give parts over a grid: small to huge, proud and below, tiny and wide holes."""
    for size, angle, edge in itertools.product(sizes, head_angles, (0.84, 1.0)):
        head = Head(sharp_diameter=size, included_angle=angle, edge_diameter=edge * size)
        for cutter, share, hole in itertools.product(cutter_angles, shares, holes):
            part = seated(head, share=share, hole=hole, angle=cutter)
            if part is not None:
                yield part


def check(scene, drawing, parts, faults):
    """Move a scene through parts and collect what stands in the way of what."""
    shown, found = 0, []
    for part in parts:
        try:
            scene.move(part)
        except SeatworkError:
            continue
        shown += 1
        found += [f"{part}: {fault}" for fault in faults(drawing)]
    return shown, found


LOOKS = [Look(projector=True), Look(projector=True, system="metric"), Look(), Look(palette="dark")]


@pytest.mark.slow
@pytest.mark.parametrize(
    ("look", "sizes"),
    [(LOOKS[0], (1.9, 50.0)), (LOOKS[1], (13.44, 120.0))],
    ids=["inch", "metric"],
)
def test_nothing_overlaps_or_leaves_the_page(look, sizes, faults):
    """Over extremes of size, angle, fit and hole, no words touch, leave the page or are crossed."""
    scene = Section(QUARTER, look)
    parts = settings(sizes, (60, 82, 120), (60, 90, 120), (0.6, 1.0, 1.9), (0.12, 0.7))
    shown, found = check(scene, scene.draw(), parts, faults)
    assert shown > 150
    assert found == []


@pytest.mark.long
@pytest.mark.parametrize("look", LOOKS, ids=["inch", "metric", "desk", "dark"])
def test_nothing_overlaps_over_a_fine_grid(look, faults):
    """The same over some 1,500 settings a look."""
    scene = Section(QUARTER, look)
    parts = settings(
        (1.9, 13.44, 120.0),
        (60, 82, 100, 120),
        (60, 75, 90, 105, 120),
        (0.6, 0.9, 1.0, 1.1, 1.9),
        (0.12, 0.5, 0.8),
    )
    shown, found = check(scene, scene.draw(), parts, faults)
    assert shown > 1200
    assert found == []


@pytest.mark.slow
def test_flush_heads_leave_the_words_room(faults):
    """A head that bears on its cone has one more line of words, and still nothing touches."""
    for angle, system in itertools.product((60, 82, 90, 100, 120), ("inch", "metric")):
        head = Head(sharp_diameter=13.44, included_angle=angle)
        part = seated(head, share=1.0, hole=0.5, angle=angle)
        drawing = Section(part, Look(system=system, projector=True)).draw()
        assert "flush with the face" in drawing.text
        assert faults(drawing) == []


def test_quarter_inch_in_ninety():
    """The first lesson's case in words: .018 proud, on the hole edge.

    Source: an 82° head .507 in a 90° seat .507 on .266, amount by hand from two triangles:
    (.507-.266)/2 x (1/tan 41° - 1/tan 45°) = .0181 in.
    """
    assert Section(QUARTER).draw().text == (
        "Section of an 82° head, 0.507 in (12.88 mm) theoretical sharp diameter, in a 90° seat, "
        "0.507 in (12.88 mm) at the face on a hole of 0.266 in (6.76 mm). The head stands "
        "0.018 in (0.46 mm) proud of the face; it touches on a line at the hole edge, "
        "0.266 in (6.76 mm) in diameter."
    )


def test_m6_in_eighty_two():
    """An M6 head of least edge in an 82° seat lies .158 mm below, on its rim.

    Source: w - (D - De)/(2 tan 41°) with w = (13.44 - 11.34)/2, by hand: 1.05 - 1.2079 = -.158.
    """
    text = Section(M6, Look(system="metric")).draw().text
    assert "lies 0.16 mm (0.006 in) below the face" in text
    assert "touches on a line at the rim, 11.34 mm (0.446 in) in diameter" in text


def words(drawing):
    """Give all words on the page."""
    return [text.get_text() for text in drawing.figure.axes[0].texts if text.get_text()]


def test_every_number_on_the_page_is_in_the_text():
    """The text twin carries each number that the picture shows, in the same rounding."""
    for part, system in itertools.product((QUARTER, M6), ("inch", "metric")):
        drawing = Section(part, Look(system=system)).draw()
        for word in words(drawing):
            if word.endswith("°") or " in (" in word or " mm (" in word:
                for number in word.replace("(", " ").replace(")", " ").split():
                    if number[0].isdigit():
                        assert number in drawing.text, (number, drawing.text)


@pytest.mark.parametrize(
    ("angle", "state", "contact"),
    [(70, "below", "the rim"), (82, "flush", "the cone"), (90, "proud", "the hole edge")],
)
def test_states_are_words(angle, state, contact):
    """Without any color the page says proud, flush or below, and where the head touches."""
    head = Head(sharp_diameter=12.8778, included_angle=82, edge_diameter=12.1)
    seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=angle)
    page = words(Section(SeatedHead(head=head, seat=seat)).draw())
    assert any(state in word for word in page)
    assert contact in page


def test_the_system_relabels_and_keeps_the_part():
    """Inch and metric pictures show the same outline and differ in words only."""
    scenes = [Section(QUARTER, Look(system=system)) for system in ("inch", "metric")]
    drawings = [scene.draw() for scene in scenes]
    outlines = [scene.ghosts[0].get_path().vertices for scene in scenes]
    assert np.array_equal(*outlines)
    assert words(drawings[0]) != words(drawings[1])


@pytest.mark.slow
def test_moving_equals_drawing_anew():
    """A scene moved to a part shows, pixel for pixel, what a fresh one shows: no traces stay."""
    moved = Section(QUARTER)
    drawing = moved.draw()
    for part in (M6, seated(M6.head, share=1.9, hole=0.3, angle=60), QUARTER, M6):
        moved.move(part)
    assert drawing.png(0.5) == Section(M6).draw().png(0.5)


@pytest.mark.slow
def test_a_part_that_cannot_be_leaves_the_picture():
    """A head that drops through is told in a sentence; the last good picture stays."""
    scene = Section(QUARTER)
    drawing = scene.draw()
    before = drawing.png(0.5)
    wide = Countersink(diameter=14.0, hole_diameter=13.0, included_angle=82)
    with pytest.raises(SeatworkError, match="drops through"):
        scene.move(SeatedHead(head=QUARTER.head, seat=wide))
    assert drawing.png(0.5) == before


def test_only_the_weights_of_the_style_are_used():
    """Every line has the weight of its role: edge, thin or contact; nothing in between."""
    for look, sizes in ((Look(), DESK), (Look(projector=True), PROJECTOR)):
        axes = Section(QUARTER, look).draw().figure.axes[0]
        allowed = {0.0, sizes.edge, sizes.thin, 1.8 * sizes.contact}
        artists = [a for a in axes.get_children() if isinstance(a, Line2D | Patch)]
        drawn = [a for a in artists if a is not axes.patch and not isinstance(a, Spine)]
        lines = [a for a in drawn if not (isinstance(a, Line2D) and a.get_linestyle() == "None")]
        for artist in lines:
            weight = artist.get_linewidth() / POINTS
            assert any(weight == pytest.approx(one) for one in allowed), artist


def test_equal_aspect():
    """Angles on the page are angles of the part: one mm is as wide as it is high."""
    axes = Section(QUARTER).draw().figure.axes[0]
    matrix = axes.transData.get_matrix()
    assert matrix[0, 0] == pytest.approx(matrix[1, 1])


def test_the_drawn_angle_is_the_angle():
    """The wall of the seat, measured on the page, stands at half the included angle."""
    for angle in (60, 82, 90, 100, 120):
        part = seated(M6.head, share=1.0, hole=0.5, angle=angle)
        scene = Section(part)
        scene.draw()
        points = scene.ghosts[1].get_xydata()
        wall = points[~np.isnan(points).any(axis=1)][-5:-2]
        across, down = np.abs(wall[1] - wall[0])
        assert np.degrees(np.arctan2(across, down)) * 2 == pytest.approx(angle)


def test_it_is_a_scene():
    """The section keeps the interface of moving pictures, ghosts included."""
    scene = Section(QUARTER)
    scene.draw()
    assert isinstance(scene, Scene)
    assert isinstance(scene, GhostScene)


def test_a_thin_plate_is_drawn_and_carries_less() -> None:
    """In 2 mm a 90° cone of 13.44 ends at 9.44 across: the head bears no lower, by geometry."""
    thick, thin = (
        SeatedHead(
            head=Head(sharp_diameter=13.44, included_angle=90),
            seat=Countersink(diameter=13.44, hole_diameter=6.6, included_angle=90),
            thickness=plate,
        )
        for plate in (8.0, 2.0)
    )
    assert not thick.broken_through
    assert thick.lies.inner_diameter == pytest.approx(6.6)
    assert thin.broken_through
    assert thin.lies.inner_diameter == pytest.approx(13.44 - 2 * 2.0)
    scene = Section(thin)
    assert "breaks through, to a knife edge" in scene.draw().text
    assert "knife edge" not in scene.move(thick)
