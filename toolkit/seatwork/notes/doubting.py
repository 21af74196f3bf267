"""What in a note to ask about before cutting."""

import re
from collections.abc import Iterator

from seatwork.notes.callout import Callout, NoteWarning
from seatwork.notes.evidence import Decision
from seatwork.notes.fastening import doubt_about
from seatwork.notes.features import (
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    Feature,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.grouping import grouped, part_of, width_of
from seatwork.notes.parsing import Phrase
from seatwork.notes.placing import of_place
from seatwork.notes.sizes import Size
from seatwork.shop import HouseRules

USUAL_ANGLES = (60, 75, 82, 90, 100, 110, 118, 120, 130)
VERY_WIDE = 76.2  # mm; 3 in, no fastener seat taught here is wider


def warnings(
    callout: Callout,
    phrases: list[Phrase],
    decision: Decision,
    differing: list[str],
    rules: HouseRules,
) -> tuple[NoteWarning, ...]:
    """Return what to ask about.

    Parameters
    ----------
    callout : Callout
        The note as read.
    phrases : list of Phrase
        As parsed, for how it was written.
    decision : Decision
        How inches or millimeters were found.
    differing : list of str
        Sizes whose two units do not agree.
    rules : HouseRules
        The house rules in force.
    """
    return (
        *_of_writing(phrases, decision, differing),
        *_of_features(callout, rules),
    )


def _of_writing(
    phrases: list[Phrase], decision: Decision, differing: list[str]
) -> Iterator[NoteWarning]:
    for index, phrase in enumerate(phrases):
        spaced = re.fullmatch(r"(\d+)\s+X", phrase.text) if phrase.kind == "COUNT" else None
        if spaced and _could_be_a_size(phrases[index + 1 : index + 2]):
            yield NoteWarning(
                code="count-spacing",
                sentence=f"{phrase.text} is read as {spaced[1]} places; close up, {spaced[1]}X, "
                "it could not be taken for a size by a size.",
            )
        if _tight_by(phrases, index):
            number = phrases[index - 1].text
            yield NoteWarning(
                code="count-spacing",
                sentence=f"{number}X is read as the size {number} by the next; "
                f"with spaces, {number} X, it could not be taken for {number} places.",
            )
    if decision.warning == "inch-on-metric":
        read = "inches" if decision.system == "inch" else "millimeters, as the print is"
        yield NoteWarning(
            code="inch-on-metric",
            sentence=f"The note is written the inch way on a metric print; its bare numbers are "
            f"read in {read}. Ask.",
        )
    for size in differing:
        yield NoteWarning(
            code="dual-differs", sentence=f"The two units of {size} do not agree: ask which holds."
        )


def _could_be_a_size(following: list[Phrase]) -> bool:
    """Tell whether what follows a count could be the other size of two: a bare number."""
    return not following or following[0].kind == "plain"


def _tight_by(phrases: list[Phrase], index: int) -> bool:
    """Tell whether a whole number stands tight against its X, as in ``13X90°``."""
    phrase = phrases[index]
    if phrase.kind != "BY" or index == 0:
        return False
    before = phrases[index - 1]
    if index > 1 and phrases[index - 2].kind == "CHAMFER":
        return False
    whole = re.fullmatch(r"\d{1,3}", before.text) is not None
    return whole and before.end == phrase.start and phrase.text == "X"


def _of_features(callout: Callout, rules: HouseRules) -> Iterator[NoteWarning]:
    parts = [part_of(feature) for feature in callout.features]
    for places in grouped(parts):
        group = [callout.features[place] for place in places]
        for place in places:
            feature = callout.features[place]
            yield from _of_any(place, feature)
            if isinstance(feature, Countersink):
                yield from _of_countersink(place, feature, group)
            elif isinstance(feature, Counterbore):
                yield from _of_counterbore(place, feature, group, rules)
            elif isinstance(feature, Thread):
                yield from _of_thread(place, feature, group)
            elif isinstance(feature, Counterdrill):
                yield from _of_counterdrill(place, feature)
            elif isinstance(feature, Chamfer):
                yield from _of_chamfer(place, feature, group)
            elif isinstance(feature, Spotface):
                yield from _of_spotface(place, feature)
            yield from of_place(place, feature, group)
            yield from _smaller_than_hole(place, feature, group)
            yield from _more_than_holes(place, feature, group)


def _of_spotface(place: int, seat: Spotface) -> Iterator[NoteWarning]:
    """Ask where a spotface has two depths: as deep as it cleans up, and a size."""
    if seat.clean_up and seat.depth is not None and seat.depth.bound != "max":
        yield NoteWarning(
            code="two-depths",
            feature=place,
            sentence="TO CLEAN UP and a depth: is it cut until it cleans up, or to that depth?",
        )


def _of_any(place: int, feature: Feature) -> Iterator[NoteWarning]:
    if feature.scope == "typical" and feature.count == 1:
        yield NoteWarning(
            code="typical",
            feature=place,
            sentence="TYP does not say how many places: count them on the print; "
            "newer prints write the number, such as 4X.",
        )
    if feature.side == "other":
        yield NoteWarning(
            code="side",
            feature=place,
            sentence="OTHER SIDE: other than which? Mark it on the part before cutting.",
        )
    is_seat = isinstance(feature, Countersink | Counterbore)
    if feature.screw and (question := doubt_about(feature.screw, is_seat=is_seat)):
        yield NoteWarning(
            code="screw-unknown", feature=place, sentence=f"{feature.screw}: {question}."
        )
    deep = None if isinstance(feature, Hole | Thread) else getattr(feature, "depth", None)
    widths = [width_of(getattr(feature, "diameter", None)), width_of(deep)]
    if any(width is not None and width > VERY_WIDE for width in widths):
        yield NoteWarning(
            code="very-wide",
            feature=place,
            sentence="A size over 3 in (76 mm) is rare for a fastener: check inches or mm.",
        )


def _of_countersink(place: int, seat: Countersink, group: list[Feature]) -> Iterator[NoteWarning]:
    threaded = any(isinstance(feature, Thread) for feature in group)
    screw = any(feature.screw for feature in group)
    if seat.angle is None and not screw and not threaded:
        yield NoteWarning(
            code="angle-missing",
            feature=place,
            sentence="Which angle? The countersink has none, and no screw is named: it must be "
            "the screw's if one sits there, and may be any tidy one if it only takes the burr off.",
        )
    elif seat.angle is None:
        pass
    elif seat.angle.least is None and seat.angle.value not in USUAL_ANGLES:
        yield NoteWarning(
            code="angle-unusual",
            feature=place,
            sentence=f"{seat.angle.value:g}° is no usual angle of a countersink: check the print.",
        )
    if seat.diameter is None and seat.depth is None and not threaded and not screw:
        yield NoteWarning(
            code="size-missing",
            feature=place,
            sentence="The countersink has neither diameter nor depth, and no screw is named: ask.",
        )
    if seat.head is not None and seat.head.state == "proud" and seat.head.amount is None:
        yield NoteWarning(
            code="proud",
            feature=place,
            sentence="The print asks for a head above the face and does not say how far: ask.",
        )


def _of_counterbore(
    place: int, seat: Counterbore, group: list[Feature], rules: HouseRules
) -> Iterator[NoteWarning]:
    screw = any(feature.screw for feature in group)
    shallow = seat.depth is not None and _value(seat.depth) <= rules.number(
        "spotface.disguise_depth"
    )
    if shallow or (seat.depth is None and seat.left is None and not screw):
        yield NoteWarning(
            code="spotface-disguise",
            feature=place,
            sentence="This may be a spotface: prints before 2009 gave it the counterbore symbol, "
            "with little or no depth. Ask from where the depth counts.",
        )
    if seat.head is not None and seat.head.state == "proud":
        yield NoteWarning(
            code="proud",
            feature=place,
            sentence="The print asks for a head above the face of a counterbore: ask.",
        )


def _of_thread(place: int, thread: Thread, group: list[Feature]) -> Iterator[NoteWarning]:
    hole = next((one for one in group if isinstance(one, Hole)), None)
    if hole is None or thread.depth is None or hole.depth is None:
        return
    if not _value(thread.depth) < _value(hole.depth):
        yield NoteWarning(
            code="thread-depth",
            feature=place,
            sentence="The thread is as deep as its drilled hole or deeper than it: which yields?",
        )


def _of_counterdrill(place: int, feature: Counterdrill) -> Iterator[NoteWarning]:
    if feature.meaning == "ask":
        yield NoteWarning(
            code="counterdrill",
            feature=place,
            sentence="C'DRILL can mean counterdrill, or center drill on the end of a shaft: ask.",
        )


def _of_chamfer(place: int, feature: Chamfer, group: list[Feature]) -> Iterator[NoteWarning]:
    angle = feature.angle
    hole = next((width_of(f.diameter) for f in group if isinstance(f, Hole)), None)
    if feature.leg is not None and hole is not None and _value(feature.leg) > hole:
        yield NoteWarning(
            code="leg-wide",
            feature=place,
            sentence="The leg of the chamfer is wider than its hole: in or mm, or is another "
            "size meant?",
        )
    if feature.leg is not None and angle is not None and angle.value != 90:
        yield NoteWarning(
            code="chamfer-leg",
            feature=place,
            sentence="A chamfer that is not 45° has two unlike legs: ask which one the note gives, "
            "and from which face the angle counts.",
        )


def _smaller_than_hole(place: int, seat: Feature, group: list[Feature]) -> Iterator[NoteWarning]:
    width = width_of(getattr(seat, "diameter", None))
    hole = next((f for f in group if isinstance(f, Hole)), None)
    hole_width = width_of(hole.diameter) if hole else None
    if not isinstance(seat, Countersink | Counterbore | Spotface | Counterdrill | Chamfer):
        return
    if width is not None and hole_width is not None and not width > hole_width:
        yield NoteWarning(
            code="seat-smaller",
            feature=place,
            sentence="The seat is no wider than its hole: the two sizes may be turned round.",
        )


def _more_than_holes(place: int, seat: Feature, group: list[Feature]) -> Iterator[NoteWarning]:
    """Ask about more seats of a kind than there are holes for them."""
    hole = next((f for f in group if isinstance(f, Hole | Thread)), None)
    if hole is not None and seat is not hole and seat.count > hole.count:
        yield NoteWarning(
            code="count",
            feature=place,
            sentence=f"{seat.count} seats on {hole.count} hole{'s' * (hole.count > 1)}: which "
            "count holds?",
        )


def _value(size: Size) -> float:
    return 0.0 if size.value is None else size.value
