"""What drawings say: the sentences and labels that carry every number in both systems."""

from seatwork.drawings.parts.seated import SeatedHead
from seatwork.seats import Countersink, Fit
from seatwork.units import show_angle, show_both, show_note

STANDING = {
    "proud": "stands {amount} proud of the face",
    "flush": "is flush with the face",
    "below": "lies {amount} below the face",
}
TOUCHING = {
    "cone": "bears on the cone, from {upper} down to {lower} diameter",
    "rim": "touches on a line at the rim, {upper} in diameter",
    "hole edge": "touches on a line at the hole edge, {upper} in diameter",
}
CONTACT_LABEL = {
    "cone": ("bears on", "the cone"),
    "rim": ("touches at", "the rim"),
    "hole edge": ("touches at", "the hole edge"),
}


def seat_note(seat: Countersink, system: str) -> str:
    """Write the print note a countersunk through hole would carry.

    Examples
    --------
    >>> seat = Countersink(diameter=9.779, hole_diameter=5.1054, included_angle=82)
    >>> seat_note(seat, "inch")
    '⌀.201 THRU ⌵ ⌀.385 X 82°'
    """
    hole, face = (show_note(size, system) for size in (seat.hole_diameter, seat.diameter))
    return f"⌀{hole} THRU ⌵ ⌀{face} X {show_angle(seat.included_angle)}"


def seated(part: SeatedHead, found: Fit, system: str) -> str:
    """Tell how a head lies in its seat, in two sentences with all the numbers."""
    head, seat = part.head, part.seat
    amount = show_both(abs(found.amount), system)
    touching = TOUCHING[found.contact].format(
        upper=show_both(found.contact_diameter, system),
        lower=show_both(found.inner_diameter, system),
    )
    return (
        f"Section of {an(show_angle(head.included_angle))} head, "
        f"{show_both(head.sharp_diameter, system)} theoretical sharp diameter, in "
        f"{an(show_angle(seat.included_angle))} seat, "
        f"{show_both(seat.diameter, system)} at the face on a hole of "
        f"{show_both(seat.hole_diameter, system)}. "
        f"The head {STANDING[found.state].format(amount=amount)}; it {touching}."
        f"{through(part, system)}"
    )


def through(part: SeatedHead, system: str) -> str:
    """Tell of a cone that comes out at the far side of a thin plate; blank where it does not."""
    if part.thickness is None or not part.broken_through:
        return ""
    thick = show_both(part.thickness, system)
    return f" In a plate {thick} thick the cone breaks through, to a knife edge."


def standing(found: Fit, system: str) -> str:
    """Name amount and state: "0.018 in (0.46 mm) proud", or "flush with the face"."""
    if found.state == "flush":
        return "flush with the face"
    return f"{show_both(abs(found.amount), system)} {found.state}"


def contact_lines(found: Fit, system: str) -> tuple[str, str, str]:
    """Tell the contact in two or three short lines, the last one blank for a line contact."""
    first = " ".join(CONTACT_LABEL[found.contact])
    upper, lower = (show_both(d, system) for d in (found.contact_diameter, found.inner_diameter))
    if found.contact == "cone":
        return f"{first}, from", f"{upper} down", f"to {lower} across"
    return first, f"{upper} across", ""


def an(number: str) -> str:
    """Put "a" or "an" before a number, as it is spoken.

    Examples
    --------
    >>> an("82°"), an("90°"), an("118°")
    ('an 82°', 'a 90°', 'a 118°')
    """
    whole = number.partition(".")[0].strip("°")
    return f"an {number}" if number.startswith("8") or whole in ("11", "18") else f"a {number}"


def from_above(found: tuple[Fit, Fit]) -> str:
    """Tell what two heads look like from above: no angle and no size."""
    states = [one.state for one in found]
    if "proud" not in states:
        return (
            "Two flat heads in their seats, seen from above, numbers 1 and 2. Neither stands "
            "proud, and from above nothing tells which seat was cut with the wrong angle."
        )
    proud = " and ".join(f"number {i + 1}" for i, state in enumerate(states) if state == "proud")
    return f"Two flat heads in their seats, seen from above, numbers 1 and 2; {proud} stands proud."


def cut_open(parts: tuple[SeatedHead, SeatedHead], found: tuple[Fit, Fit], system: str) -> str:
    """Tell how two heads lie in their seats, cut open, a sentence each."""
    sentences = []
    for number, (part, one) in enumerate(zip(parts, found, strict=True)):
        head, seat = (show_angle(cone.included_angle) for cone in (part.head, part.seat))
        contact = CONTACT_LABEL[one.contact]
        upper = show_both(one.contact_diameter, system)
        sentences.append(
            f"Number {number + 1}, {an(head)} head in {an(seat)} seat, "
            f"{STANDING[one.state].format(amount=show_both(abs(one.amount), system))} "
            f"and {contact[0]} {contact[1]}, {upper} across."
        )
    return "Two heads cut open. " + " ".join(sentences)
