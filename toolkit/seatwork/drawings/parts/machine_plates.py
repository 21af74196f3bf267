"""Plates of the glossary: the machine, its speeds, what it leaves, gages, centers, the note."""

import numpy as np

from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Point, Points, arc
from seatwork.drawings.strokes.sketch import Sketch
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.seats import Countersink, Head, ball_top, fit


def _box(left: float, low: float, right: float, high: float) -> list[Point]:
    return [(left, low), (left, high), (right, high), (right, low)]


def press(sketch: Sketch) -> str:
    """Draw quill, spindle, stop, tool, part and vise of a drill press."""
    axis = 560.0
    sketch.steel(_box(380.0, 352.0, 800.0, 420.0), 2.0)
    sketch.steel(_box(axis - 52.0, 250.0, axis + 52.0, 352.0))
    sketch.steel(_box(axis - 24.0, 212.0, axis + 24.0, 250.0))
    sketch.steel([(axis - 30.0, 212.0), (axis + 30.0, 212.0), (axis + 30.0, 180.0),
                  (axis, 146.0), (axis - 30.0, 180.0)])  # fmt: skip
    sketch.center((axis, 130.0), (axis, 428.0))
    sketch.steel(_box(700.0, 214.0, 720.0, 412.0), 3.1)
    sketch.steel(_box(axis + 52.0, 308.0, 740.0, 328.0), 3.0)
    sketch.steel(_box(684.0, 240.0, 736.0, 266.0), 3.4)
    sketch.metal(_box(axis - 90.0, 70.0, axis + 90.0, 146.0))
    sketch.edge([*_box(axis - 90.0, 70.0, axis + 90.0, 146.0), (axis - 90.0, 70.0)])
    for near, far in ((axis - 90.0, axis - 140.0), (axis + 90.0, axis + 140.0)):
        sketch.steel(_box(near, 60.0, far, 122.0))
    sketch.steel(_box(axis - 170.0, 30.0, axis + 170.0, 60.0))
    sketch.label("quill", 330.0, 300.0, (axis - 55.0, 306.0), "right")
    sketch.label("spindle", 330.0, 214.0, (axis - 27.0, 230.0), "right")
    for height in (308.0, 266.0):
        sketch.work.extension((740.0, height), (800.0, height))
    sketch.work.outside((800.0, 266.0), (800.0, 308.0), (0.0, 1.0))
    sketch.label("quill travel", 860.0, 352.0, (806.0, 288.0))
    sketch.label("depth stop", 860.0, 250.0, (739.0, 252.0))
    sketch.label("touch off", 860.0, 170.0, (axis + 6.0, 149.0))
    sketch.label("vise", 860.0, 92.0, (axis + 143.0, 92.0))
    return "The head of a drill press over a part in a vise; the nose of the tool touches the part."


def speed(sketch: Sketch) -> str:
    """Draw a turning lip, its way down, and a stepped pulley."""
    center, radius = (250.0, 220.0), 96.0
    lip = center[0] + radius
    sketch.metal(arc(center, radius + 34.0, 0.0, 360.0), 0.8)
    sketch.steel(arc(center, radius, 0.0, 360.0), 1.5)
    sketch.edge([center, (lip, center[1])])
    sketch.arrow((lip, 160.0), (lip, 318.0))
    sketch.label("surface speed", lip + 40.0, 384.0, (lip + 3.0, 322.0), "center")
    sketch.thin(arc(center, 52.0, 40.0, 300.0))
    sketch.arrow(*(tuple(spot) for spot in arc(center, 52.0, 286.0, 316.0)[[0, -1]]))
    sketch.label("spindle speed", center[0], 42.0, (center[0] - 8.0, center[1] - 54.0), "center")
    axis = 660.0
    sketch.metal(_box(axis - 120.0, 40.0, axis + 120.0, 150.0))
    for up, order in ((0.0, 3.0), (34.0, 2.0)):
        cone = [(axis - 70.0, 250.0 + up), (axis + 70.0, 250.0 + up), (axis + 70.0, 210.0 + up),
                (axis, 130.0 + up), (axis - 70.0, 210.0 + up)]  # fmt: skip
        sketch.steel(cone, order) if not up else sketch.hidden([*cone, cone[0]], order=order)
    sketch.work.extension((axis + 70.0, 244.0), (axis + 110.0, 244.0))
    sketch.work.extension((axis + 70.0, 210.0), (axis + 110.0, 210.0))
    sketch.work.outside((axis + 110.0, 210.0), (axis + 110.0, 244.0), (0.0, 1.0))
    sketch.label("feed", axis, 350.0, (axis + 107.0, 250.0), "center")
    _pulley(sketch, 1020.0)
    return "A lip turning in its hole, a tool one turn deeper, and a pulley with four steps."


def _pulley(sketch: Sketch, axis: float) -> None:
    speeds = (("1300", 46.0), ("875", 72.0), ("550", 98.0), ("410", 124.0))
    for number, (name, radius) in enumerate(speeds):
        low = 320.0 - 56.0 * number
        sketch.steel(_box(axis - radius, low - 50.0, axis + radius, low))
        sketch.write(axis, low - 25.0, name, ha="center")
    sketch.write(axis + 190.0, 178.0, "500 ?", ha="center")
    sketch.arrow((axis + 190.0, 160.0), (axis + 190.0, 127.0), (axis + 128.0, 127.0))
    sketch.label("next step down", axis, 38.0, (axis, 100.0), "center")


def marks(sketch: Sketch) -> str:
    """Draw a quiet cone and a chattered one from above, and a chip."""
    for axis, waves in ((230.0, 0.0), (640.0, 9.0)):
        turn = np.linspace(0.0, 2.0 * np.pi, 721)
        ring = 130.0 + waves * np.sin(13.0 * turn)
        rim = np.column_stack([axis + ring * np.cos(turn), 175.0 + ring * np.sin(turn)])
        sketch.metal(_box(axis - 175.0, 18.0, axis + 175.0, 332.0), 0.8)
        sketch.steel(rim, 1.5)
        sketch.steel(arc((axis, 175.0), 52.0, 0.0, 360.0), 1.6, plain=True)
        if waves:
            _spokes(sketch, (axis, 175.0))
    sketch.label("chatter", 435.0, 380.0, (520.0, 250.0), "center")
    sketch.label("chatter marks", 790.0, 380.0, (742.0, 262.0))
    curl = np.linspace(0.0, 5.0 * np.pi, 200)
    width = 20.0 + 5.0 * curl
    spiral = np.column_stack([1060.0 + width * np.cos(curl), 150.0 + width * np.sin(curl)])
    sketch.edge(spiral)
    sketch.label("chip", 1060.0, 300.0, (1040.0, 232.0), "center")
    return "A smooth cone and a cone with waves round it, from above, and a curled chip."


def _spokes(sketch: Sketch, center: Point) -> None:
    for turn in np.arange(13) * 2.0 * np.pi / 13.0 + 1.5 * np.pi / 13.0:
        way = np.array([np.cos(turn), np.sin(turn)])
        sketch.thin(np.array(center) + np.outer((56.0, 119.0), way))


def gaging(sketch: Sketch) -> str:
    """Draw a ball in a cone under a depth gage, and a feeler blade under a head."""
    _ball(sketch, 420.0)
    _feeler(sketch, 1000.0)
    return "A ball in a cone under a depth gage, and a blade under one side of a tilted bolt head."


def _wedge(sketch: Sketch, axis: float, wall: Points, half: float, floor: float) -> None:
    for side, sign in zip(profiles.left_and_right(wall), (-1.0, 1.0), strict=True):
        placed = side + np.array([axis, 0.0])
        end = axis + sign * half
        sketch.metal([*placed, (placed[-1, 0], floor), (end, floor), (end, placed[0, 1])])
        sketch.edge([(end, placed[0, 1]), *placed, (placed[-1, 0], floor)])


def _ball(sketch: Sketch, axis: float) -> None:
    face, seat = 190.0, Countersink(diameter=220.0, hole_diameter=80.0, included_angle=82.0)
    wall = profiles.countersink_wall(seat, -150.0) + np.array([0.0, face])
    _wedge(sketch, axis, wall, 200.0, 40.0)
    radius = 84.0
    top = face + ball_top(2 * radius, seat)
    sketch.steel(arc((axis, top - radius), radius, 0.0, 360.0), 2.0)
    sketch.steel(_box(axis - 150.0, 320.0, axis + 150.0, 356.0))
    sketch.steel(_box(axis - 14.0, top, axis + 14.0, 420.0), 3.2)
    for left in (axis - 150.0, axis + 116.0):
        sketch.steel(_box(left, face, left + 34.0, 320.0))
    sketch.label("gage", 240.0, 340.0, (axis - 153.0, 338.0), "right")
    sketch.label("gage ball", 190.0, 240.0, (axis - 80.0, 222.0), "right")


def _feeler(sketch: Sketch, axis: float) -> None:
    wall = np.array([(46.0, 190.0), (46.0, 40.0)])
    _wedge(sketch, axis, wall, 210.0, 40.0)
    lean = 0.08
    spin = np.array([[1.0, lean], [-lean, 1.0]])
    bolt = np.array([(-110.0, 0.0), (-110.0, 90.0), (110.0, 90.0), (110.0, 0.0), (28.0, 0.0),
                     (28.0, -140.0), (-28.0, -140.0), (-28.0, 0.0)])  # fmt: skip
    sketch.steel(bolt @ spin.T + np.array([axis, 191.0 + 110.0 * lean]))
    blade = _box(axis - 250.0, 192.0, axis - 66.0, 203.0)
    sketch.steel(blade, 2.5)
    sketch.label("feeler gage", axis - 180.0, 345.0, (axis - 200.0, 206.0), "center")


def centers(sketch: Sketch) -> str:
    """Draw a shaft on a lathe center, a center drill, and a tube on a bull-nose center."""
    middle = 170.0
    _on_center(sketch, 250.0, middle)
    axis = 600.0
    drill = [(44.0, 300.0), (44.0, 162.0), (16.0, 114.0), (16.0, 78.0), (0.0, 70.0)]
    sketch.steel(profiles.whole(np.array(drill[::-1])[::-1]) + np.array([axis, 0.0]))
    sketch.edge([(axis - 10.0, 80.0), (axis + 22.0, 160.0), (axis + 22.0, 240.0)])
    sketch.label("center drill", axis, 366.0, (axis, 304.0), "center")
    _tube(sketch, 860.0, middle)
    return (
        "A shaft on a lathe center, whose tip is free in the center hole, a center drill, and a "
        "tube on a bull-nose center."
    )


def _on_center(sketch: Sketch, end: float, middle: float) -> None:
    """Draw a shaft whose 60° cone rides on a lathe center; the tip never bottoms."""
    hole = Countersink(diameter=84.0, hole_diameter=34.0, included_angle=60.0)
    floor, low, high = end - hole.depth - 48.0, middle - 65.0, middle + 65.0
    cone = [(end, 42.0), (end - hole.depth, 17.0), (floor, 17.0), (floor - 9.0, 0.0)]
    upper = [(x, middle + y) for x, y in cone]
    wall = [*upper, *[(x, 2 * middle - y) for x, y in upper[-2::-1]]]
    sketch.metal([(60.0, high), (end, high), *wall, (end, low), (60.0, low)])
    sketch.edge([(60.0, high), (end, high), *wall, (end, low), (60.0, low)])
    tip = end - hole.apex_depth
    wide = hole.apex_depth * 144.0 / hole.diameter
    nose = [(tip, 0.0), (tip + wide, 72.0), (400.0, 72.0)]
    center = [*nose, *[(x, -y) for x, y in nose[:0:-1]]]
    sketch.steel(np.array(center) + np.array([0.0, middle]))
    sketch.center((40.0, middle), (430.0, middle))
    sketch.label("lathe center", 260.0, 366.0, (tip + wide + 12.0, middle + 74.0), "center")
    sketch.label("center hole", 150.0, 48.0, (floor + 12.0, middle - 15.0), "center")


def _tube(sketch: Sketch, left: float, middle: float) -> None:
    right = left + 150.0
    for sign in (-1.0, 1.0):
        wall = [(left, 92.0), (right, 92.0), (right, 82.0), (right - 14.0, 72.0), (left, 72.0)]
        ring = np.array([(x, middle + sign * y) for x, y in wall])
        sketch.metal(ring)
        sketch.edge(np.vstack([ring, ring[:1]]))
    nose = [(right - 60.0, 44.0), (right + 60.0, 113.0), (right + 120.0, 113.0)]
    upper = [(x, middle + y) for x, y in nose]
    sketch.steel([*upper, *[(x, middle - y) for x, y in nose[::-1]]], 2.0)
    sketch.center((left - 20.0, middle), (right + 150.0, middle))
    sketch.label("bull-nose center", right, 366.0, (right + 50.0, 280.0), "center")


def note(sketch: Sketch) -> str:
    """Draw a hole with its note, and what the note leaves to the shop."""
    axis, face = 330.0, 250.0
    seat = Countersink(diameter=170.0, hole_diameter=80.0, included_angle=82.0)
    head = Head(sharp_diameter=140.0, included_angle=82.0, edge_diameter=134.0)
    wall = profiles.countersink_wall(seat, -180.0) + np.array([0.0, face])
    _wedge(sketch, axis, wall, 190.0, 50.0)
    amount = fit(head, seat).amount
    outline = profiles.head_outline(head, seat, amount, -210.0).to_polygons()[0]
    sketch.steel(np.asarray(outline) + np.array([axis, face]))
    for height, start in ((face, axis - 190.0), (face + amount, axis - 190.0)):
        sketch.work.extension((start, height), (axis - 240.0, height))
    across = axis - 240.0
    sketch.work.outside((across, face + amount), (across, face), (0.0, 1.0))
    sketch.write(across - 24.0, face - 10.0, "?", ha="right", fontweight="bold")
    sketch.work.leader((590.0, 300.0), (550.0, 300.0), (axis + 88.0, face + 3.0))
    line = SignedLine(sketch.axes, sketch.style, x=600.0, y=291.0)
    line.set("4X ⌀.201 THRU ⌵ ⌀.385 X 82°")
    sketch.label("print note", 900.0, 386.0, (900.0, 318.0), "center")
    sketch.label("through", 830.0, 226.0, (778.0, 284.0))
    sketch.steel(_box(640.0, 44.0, 800.0, 150.0), 2.0, plain=True)
    sketch.write(658.0, 124.0, "?", fontweight="bold")
    sketch.thin(*([(682.0, height), (780.0, height)] for height in (124.0, 96.0, 68.0)))
    sketch.label("house rule", 880.0, 98.0, (804.0, 110.0))
    return "A hole with its note; what the note leaves open, a rule of the shop fills."
