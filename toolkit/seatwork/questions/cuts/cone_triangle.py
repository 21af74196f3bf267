"""The triangle that a question is worked by, lit as far as a step goes."""

from collections.abc import Callable
from typing import Any

from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.views.triangle_view import triangle
from seatwork.errors import SeatworkError

LAST = 5
"""The step that shows the answer; a hint never goes so far."""

Sizes = tuple[float, float, float]

CONES: dict[str, tuple[str, Callable[[Any], Sizes]]] = {
    "seat-depth": ("down", lambda q: (q.diameter, q.hole_diameter, q.included_angle)),
    "edge-travel": ("down", lambda q: (q.diameter, q.hole_diameter, q.included_angle)),
    "nose-travel": ("down", lambda q: (q.diameter, q.nose_diameter, q.included_angle)),
    "center-hole": ("down", lambda q: (q.mouth, q.pilot, q.included_angle)),
    "thread-chamfer": ("down", lambda q: (q.major + q.over, q.tap_drill, q.included_angle)),
    "depth-limits": ("down", lambda q: (q.greatest_diameter, q.least_hole, q.included_angle)),
    "seat-diameter": ("diameter", lambda q: (q.value(), q.hole_diameter, q.included_angle)),
    "angle-found": ("angle", lambda q: (q.diameter, q.hole_diameter, q.value())),
}
"""By the id of the type: what is looked for, and diameter, hole and angle of its cone."""


def has_triangle(question: Any) -> bool:
    """Tell whether a question is worked by a triangle that can be drawn."""
    return question.folder is None and question.id in CONES


def step_of_hint(number: int, count: int) -> int:
    """Return how far the triangle is lit at a hint; the last hint stops before the answer.

    Examples
    --------
    >>> [step_of_hint(number, 3) for number in range(3)]
    [2, 3, 4]
    """
    return max(1, LAST - count + number)


def triangle_at(question: Any, step: int, look: Look) -> Drawing | None:
    """Draw the triangle of a question as far as a step goes, 1 to 5; None if it has none."""
    if not has_triangle(question):
        return None
    find, sizes = CONES[question.id]
    diameter, hole, angle = sizes(question)
    try:
        return triangle(diameter, hole, angle, step=step, find=find, look=look)
    except SeatworkError:
        return None
