"""What is said of the triangle: a title and a line for each step, and the text twin."""

from collections.abc import Callable, Iterator
from math import radians, sin

from seatwork.drawings.parts.triangle_part import BESIDE, FINDS, TrianglePart
from seatwork.units import show_angle, show_both, show_length, show_number

FINER = {"inch": 4, "metric": 3}
"""Places of what is halved, so that the half of .241 is seen to be .1205 [-]."""

Show = Callable[[float, str], str]
ASKED = "?"


def across(part: TrianglePart, system: str, show: Callable[..., str] = show_length) -> str:
    """Write across, one place finer than a size."""
    return show(part.triangle.across, system, FINER[system])


def rows(part: TrianglePart, system: str) -> list[tuple[str, str]]:
    """Say each step that is reached: its title with its number, and where that comes from."""
    said = _BALL if part.holds == "a ball" else _SEAT
    return [said[name](part, system) for name in FINDS[part.find][: part.step]]


def text_of(part: TrianglePart, system: str) -> str:
    """Tell the triangle as far as it is built, with all its numbers, slips last."""
    return " ".join([_begins(part, system), *_told(part, system), *_slips(part, system)])


def beside_words(part: TrianglePart, name: str, system: str) -> tuple[str, str]:
    """Name what is drawn dashed, a slip or another angle, and the number it gives."""
    if name == BESIDE:
        other = part.other
        return f"at {show_angle(other.included_angle)}", show_length(other.down, system)
    return slip_words(part, name, system)


def slip_words(part: TrianglePart, slip: str, system: str) -> tuple[str, str]:
    """Name a slip, and the wrong number it gives."""
    down = part.triangle.slipped(slip)
    return slip, "no number" if down is None else show_length(down, system)


def _sized(part: TrianglePart, system: str, show: Show) -> dict[str, str]:
    seat, held = part.seat, part.held
    return {
        "diameter": show(seat.diameter, system) if part.shows("diameter") else ASKED,
        "hole": show(seat.hole_diameter, system),
        "angle": show_angle(seat.included_angle) if part.shows("angle") else ASKED,
        "held": show(held, system) if held else "",
        "down": show(part.triangle.down, system),
    }


def _seat_row(part: TrianglePart, system: str) -> tuple[str, str]:
    size = _sized(part, system, show_length)
    if part.holds == "a head":
        return "Head and seat", f"⌀ {size['held']}, seat ⌀ {size['diameter']}, {size['angle']}"
    if part.holds != "nothing":
        name = part.holds.removeprefix("a ")
        return f"Seat and {name}", f"⌀ {size['diameter']}, {name} {size['held']}, {size['angle']}"
    if part.find == "down":
        return "The seat", f"⌀ {size['diameter']}, hole {size['hole']}, {size['angle']}"
    first = size["angle"] if part.find == "diameter" else f"⌀ {size['diameter']}"
    return "The seat", f"hole {size['hole']}, {first}, down {size['down']}"


def _difference(part: TrianglePart, system: str) -> tuple[str, str]:
    return f"Difference {show_length(part.triangle.difference, system)}", {
        "nothing": "what is left on both sides of the hole",
        "a pin": "what is left on both sides of the pin",
        "a head": "what the two diameters differ by",
    }[part.holds]


def _across(part: TrianglePart, system: str) -> tuple[str, str]:
    how = "fold it: half the difference"
    if part.find == "diameter":
        how = f"down x {_tangent(part)}, the tangent of {_half(part)}"
    return f"Across {across(part, system)}", how


def _half_row(part: TrianglePart, system: str) -> tuple[str, str]:
    whole = show_angle(part.seat.included_angle)
    return "Half the angle " + _half(part), f"fold it: half of {whole}"


def _tangent_row(part: TrianglePart, system: str) -> tuple[str, str]:
    return f"Tangent {_tangent(part)}", "across ÷ down; half the angle has it"


def _down(part: TrianglePart, system: str) -> tuple[str, str]:
    title = show_length(part.triangle.down, system)
    if part.holds == "a head":
        title = f"Down {title}, {'proud' if part.proud else 'below'}"
    else:
        title = f"Down {title}"
    return title, f"across ÷ {_tangent(part)}, the tangent of {_half(part)}"


def _diameter(part: TrianglePart, system: str) -> tuple[str, str]:
    shown = show_length(part.seat.diameter, system)
    return f"Diameter {shown}", "hole + two times across"


def _angle(part: TrianglePart, system: str) -> tuple[str, str]:
    whole = show_angle(part.seat.included_angle)
    return f"Angle {whole}", f"two times half the angle, {_half(part)}"


def _lines(part: TrianglePart, system: str) -> tuple[str, str]:
    return "A line up from each hole edge", "two triangles, one on each side"


def _radius(part: TrianglePart, system: str) -> tuple[str, str]:
    shown = show_length((part.held or 0.0) / 2, system, FINER[system])
    return f"Radius {shown}", "half the ball, square to the slope"


def _to_the_middle(part: TrianglePart, system: str) -> tuple[str, str]:
    return f"Across {across(part, system)}", "to the middle: half the diameter"


def _ball_row(part: TrianglePart, system: str) -> tuple[str, str]:
    sine = show_number(sin(radians(part.triangle.half_angle)), 3)
    how = f"radius ÷ {sine} + radius − across ÷ {_tangent(part)}"
    shown = show_length(abs(part.ball_top), system)
    return f"Top {shown} {'over' if part.ball_top >= 0 else 'below'} the face", how


Said = Callable[[TrianglePart, str], tuple[str, str]]
_SEAT: dict[str, Said] = {
    "seat": _seat_row,
    "difference": _difference,
    "lines": _lines,
    "across": _across,
    "half": _half_row,
    "tangent": _tangent_row,
    "down": _down,
    "diameter": _diameter,
    "angle": _angle,
}
_BALL = _SEAT | {"difference": _radius, "across": _to_the_middle, "down": _ball_row}


def _half(part: TrianglePart) -> str:
    return show_angle(part.triangle.half_angle, 2)


def _tangent(part: TrianglePart) -> str:
    return show_number(part.triangle.tangent, 3)


def _begins(part: TrianglePart, system: str) -> str:
    """Tell the seat and what lies in it; what is looked for is not told."""
    size = _sized(part, system, show_both)
    across_face, angle = (
        "to be found" if size[name] == ASKED else size[name] for name in ("diameter", "angle")
    )
    said = f"A cone, included angle {angle}, diameter at the face {across_face}, on a hole of "
    said += size["hole"]
    if part.find != "down":
        said += f", {size['down']} deep"
    if part.holds != "nothing":
        said += f", with {part.holds} of {size['held']} in it"
    return f"{said}."


def _told(part: TrianglePart, system: str) -> Iterator[str]:
    """Yield a sentence for each step after the first."""
    reached = FINDS[part.find][1 : part.step]
    for name, (title, how) in zip(reached, rows(part, system)[1:], strict=True):
        if name == "down" and part.holds != "a ball":
            title = title.replace(
                show_length(part.triangle.down, system), show_both(part.triangle.down, system)
            )
        yield f"{title}, {how.removeprefix('fold it: ')}."


def _slips(part: TrianglePart, system: str) -> Iterator[str]:
    if part.beside is not None:
        deep, at = show_both(part.other.down, system), show_angle(part.beside)
        yield f"Beside it, dashed, the same at {at}: down {deep}."
    for slip in part.slips:
        down = part.triangle.slipped(slip)
        if down is None:
            yield f"Slip, {slip}: no number comes of it, for its tangent has no end or is below 0."
        else:
            yield f"Slip, {slip}: down would be {show_both(down, system)}."
