"""The note bench: a print note read, drawn, what it leaves open, and written in other styles."""

from dataclasses import dataclass
from typing import ClassVar

from seatwork import notes, plan
from seatwork.benches.bank.note_words import assumed_words, feature_words
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Pick, Switch, TextLine
from seatwork.benches.build.listed import machine, machines, material, materials
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.sourced import fact_line
from seatwork.drawings.views.note_view import DrawnSeat, NotePage, NoteView
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import FIRST_MACHINE, FIRST_MATERIAL
from seatwork.notes import Callout, NoteError
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Given
from seatwork.units import explain, show_angle, show_length

TYPED = "as typed below"
NOTES = {
    "Frame, 3/8 socket head cap screw": "DRILL & C'BORE FOR 3/8 SHCS",
    "Hopper plate, #10 flat heads": "4X ⌀.201 THRU ⌵ FOR #10 FLAT HEAD",
    "Hopper plate, all sizes given": "4X ⌀.201 THRU ⌵ ⌀.385 X 82°",
    "Hopper plate, metric": "Ø6.6 ⌴ Ø11 ↧ 6.5",
    "Frame pad, old words": "17/32 DR, 1-1/4 S.F., 3 HOLES",
    "Frame pad, old symbol": "⌀.406 ⌴ ⌀1.00 ↧.02",
    "Frame, tapped hole": "#7 X .75 DP, 1/4-20 UNC-2B X .50 DP, CSK ⌀.28 X 90°",
    "Guard, no angle": "DRILL 9/32, CSK 1/2 DIA OTHER SIDE",
    "Guard, edges": "BREAK ALL SHARP EDGES .005-.015",
    "Crank, torn print": "4X ⌀.201 THRU ⌵ ⌀.385 X",
}
START = "Frame, 3/8 socket head cap screw"
STYLES = {"In words": "words", "ISO 15786 form": "iso"}
"""Styles beside the picture; symbols are drawn in it, since many a page has no letters for them."""

LONGEST = 240
ACROSS = ("diameter at the face", "counterbore diameter", "spotface diameter", "hole")


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadNote:
    """What a note came to.

    Parameters
    ----------
    note : str
        As typed.
    callout : Callout or None
        What was read; None where it could not be.
    error : NoteError or None
        Why it could not be read, and where.
    seats : tuple of SeatPlan
        The seats it asks for, with their sizes.
    asked : tuple of str
        What must be asked before anything is cut; what its screw settles is left out.
    trouble : SeatworkError or None
        Why there is nothing to draw, where the note was read.
    opened : bool
        Whether what it leaves open is shown.
    """

    note: str
    callout: Callout | None
    error: NoteError | None
    seats: tuple[SeatPlan, ...]
    asked: tuple[str, ...]
    trouble: SeatworkError | None
    opened: bool


class Note(Bench[ReadNote]):
    """Show how a print note is read, and what it leaves to the shop.

    Opens on a note without a single size of its seat; one button shows what was taken, and by
    which house rule. A note that cannot be read is marked at the exact place.

    Examples
    --------
    >>> bench = Note(note="4X ⌀.201 THRU ⌵ ⌀.385 X 82°")
    >>> dict(bench.readouts())["In words"]
    'HOLE .201 DIA THRU, CSK .385 DIA X 82°, 4 PLACES'
    """

    title = "Print notes: what do they say, and what do they leave open?"
    view = NoteView
    cautions: ClassVar[tuple[str, ...]] = ()
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="opened", label="What does it leave open?", back="Hide what it leaves open",
               redraws=True),
        Choice(name="pick", label="Note", options=(*NOTES, TYPED), start=START, redraws=True),
        TextLine(name="note", label="Or type one", start=NOTES[START], longest=LONGEST, rows=2,
                 redraws=True),
        Pick(name="material", label="Material", listed=materials, known=material,
             start=FIRST_MATERIAL, folded=True, redraws=True),
        Pick(name="machine", label="Machine", listed=machines, known=machine,
             start=FIRST_MACHINE, folded=True, redraws=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a picked note bring its text; a typed one is no picked one."""
        if "note" in given and "pick" not in given:
            return {"pick": next((n for n, text in NOTES.items() if text == given["note"]), TYPED)}
        if given.get("pick") in NOTES and "note" not in given:
            return {"note": NOTES[given["pick"]]}
        return {}

    def part(self, result: ReadNote, system: str) -> NotePage:
        """Draw the note, its seats in section, and what was read."""
        return _page(result, system)

    def work_out(
        self, *, opened: bool, pick: str, note: str, material: str, machine: str
    ) -> ReadNote:
        """Read the note; where it is read, find the sizes of its seats."""
        callout, error, trouble = None, None, None
        seats: tuple[SeatPlan, ...] = ()
        asked: tuple[str, ...] = ()
        try:
            callout = notes.read(note)
        except NoteError as found:
            error = found
        if callout is not None:
            asked = tuple(one.sentence for one in callout.warnings)
            try:
                made = plan.make(callout, material=material, machine=machine)
                seats, asked = made.seats, _asked(made)
            except SeatworkError as found:
                trouble = found
        return ReadNote(
            note=note,
            callout=callout,
            error=error,
            seats=seats,
            asked=asked,
            trouble=trouble,
            opened=opened,
        )

    def measures(self, result: ReadNote) -> tuple[Measure, ...]:
        """Give the note in every style that can carry it; once opened also what to ask."""
        if result.callout is None:
            place = result.error.value if result.error else ""
            return (Measure("Reading stopped at", str(place), kind="word"),)
        styles = tuple(
            Measure(label, _written(result.callout, style), kind="word")
            for label, style in STYLES.items()
        )
        return (*styles, *_questions(result)) if result.opened else styles

    def sources(self, result: ReadNote) -> tuple[str, ...]:
        """Tell the house rule behind every assumption and the source of every size."""
        callout = result.callout
        if callout is None:
            return ()
        rules = tuple(one.sentence for one in callout.assumptions)
        sizes = tuple(
            fact_line(f"{seat.title}, {given.about} {_value(given, self.system)}", *_whence(given))
            for seat in result.seats
            for given in seat.sizes
        )
        return rules + sizes


def _page(result: ReadNote, system: str) -> NotePage:
    """Put together what stands on the page."""
    lists = _lists(result, system)
    heading = _heading(result)
    sentence = " ".join(f"{title}: {'; '.join(lines).rstrip('.')}." for title, lines in lists)
    sections = [] if result.error else [_section(seat, result, system) for seat in result.seats]
    sizes = "; ".join(text for seat in sections if (text := _text_of(seat)))
    drawn = f" In section: {sizes}." if sizes else ""
    stopped = (result.error.start, result.error.end) if result.error else None
    return NotePage(
        note=result.note,
        stopped=stopped,
        heading=heading,
        seats=tuple(sections[:2]),
        lists=lists,
        text=f"Print note: {' / '.join(result.note.split(chr(10)))}. {heading} {sentence}{drawn}",
    )


def _heading(result: ReadNote) -> str:
    if result.callout is None:
        return "This note cannot be read past the marked place."
    if not result.opened:
        return "What does this note leave open?"
    count = len(result.callout.assumptions)
    if not count:
        return "It leaves no size open."
    what = "thing is" if count == 1 else "things are"
    return f"{count} {what} not in the note, and taken by house rule."


def _lists(result: ReadNote, system: str) -> tuple[tuple[str, tuple[str, ...]], ...]:
    callout = result.callout
    if callout is None:
        return _unread(result, system)
    lists = [("It says", tuple(feature_words(one, system) for one in callout.features))]
    if result.opened and callout.assumptions:
        taken = tuple(
            assumed_words(one, callout.features[one.feature], system) for one in callout.assumptions
        )
        lists.append(("Taken by house rule", taken))
    lists.append(("With symbols", (_written(callout, "symbols"),)))
    if result.trouble is not None:
        lists.append(("Nothing to draw", (explain(result.trouble, system),)))
    return tuple(lists)


def _unread(result: ReadNote, system: str) -> tuple[tuple[str, tuple[str, ...]], ...]:
    error = result.error
    if error is None:
        return ()
    what = SeatworkError(error.value, error.fault, error.remedy)
    understood = tuple(feature_words(one, system) for one in error.understood)
    return (
        ("What is wrong", (explain(what, system),)),
        ("Understood before that", understood or ("nothing",)),
    )


def _questions(result: ReadNote) -> tuple[Measure, ...]:
    """Tell what to ask before cutting."""
    count = len(result.asked)
    labels = ("Ask first", *(f"Ask, number {number}" for number in range(2, count + 1)))
    return tuple(
        Measure(label, sentence, kind="word")
        for label, sentence in zip(labels, result.asked, strict=False)
    )


def _asked(made: plan.Plan) -> tuple[str, ...]:
    """Return what the note makes one ask, then what stops the cut in this metal on this machine."""
    rows = made.rows()
    return tuple(dict.fromkeys(row.text for row in (*rows.of("ask"), *rows.of("stop"))))


def _section(seat: SeatPlan, result: ReadNote, system: str) -> DrawnSeat:
    """Show one seat; what the note leaves open is a question mark until it is opened."""
    hole = seat.size("hole")
    across = next((g for name in ACROSS if (g := seat.size(name))), None)
    deep, angle, leg = (
        seat.size(n) for n in ("depth from the face", "included angle", "leg along the face")
    )
    known = result.opened or all(given.noted for given in (hole, across, angle) if given)

    def stated(given: Given | None, sign: str) -> str:
        if given is None:
            return ""
        open_to_see = known or given.noted
        return f"{sign}{_value(given, system) if open_to_see else '?'}"

    places = f", {seat.count} places" if seat.count > 1 else ""
    below = (
        f"{'edge' if hole is None else seat.kind}{places}",
        ", ".join(part for part in (stated(angle, ""), stated(hole, "hole ")) if part),
    )
    return DrawnSeat(
        shape=seat.shape,
        hole_diameter=hole.value if hole else None,
        across=stated(across, "⌀ ") or stated(leg, "leg ") or stated(seat.size("edge break"), ""),
        deep=stated(deep, "↧ "),
        below=tuple(line for line in below if line),
    )


def _text_of(seat: DrawnSeat) -> str:
    """Tell a drawn seat in words."""
    parts = (*seat.below, seat.across, seat.deep.replace("↧", "depth"))
    return ", ".join(part for part in parts if part)


def _value(given: Given, system: str) -> str:
    return show_angle(given.value) if given.kind == "angle" else show_length(given.value, system)


def _whence(given: Given) -> tuple[str, str]:
    return given.source, given.confirmed or "two-source"


def _written(callout: Callout, style: str) -> str:
    """Write the note in a style, or say why that style cannot carry it."""
    try:
        return notes.write(callout, style).replace("\n", " / ")
    except SeatworkError:
        return "cannot carry this note"


note = Note
