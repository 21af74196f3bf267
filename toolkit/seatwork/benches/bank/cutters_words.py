"""What the cutters bench says of cutters: under their pictures, in the answer, in the text."""

import re
from dataclasses import dataclass

from seatwork.benches.bank.cutters_sums import LETTERS, THICKEST_SHEET, Wanted, seat_words
from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.parts.cutter_shapes import CutterShape
from seatwork.drawings.views.cutters_view import CutterChoice, ShownCutter
from seatwork.shop.choosing.choosing import Choice, Choices, Refusal
from seatwork.shop.choosing.fitting import Assembly
from seatwork.shop.lists.cutters import SeatCutter
from seatwork.units import show_angle, show_both, show_length, show_spindle

MORE = "{count} more: see the text and “Where the numbers come from”."
FOOT = ("“Likely quiet”, “may sing”:", "illustration, not a prediction", "for your machine.")
RULE = re.compile(r" \(house rule [\w.]+\)")
Judged = Choice | Refusal


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line of cutters and what is to be cut.

    Parameters
    ----------
    wanted : Wanted
        Seat and place.
    material, machine : str
        What it is cut in, and on.
    thickness : float
        Of the part [mm].
    choices : Choices
        All of the shop's cutters, judged.
    shown : tuple of Choice or Refusal
        Those to choose from, by letter.
    pick : str
        The letter picked; empty for none.
    opened : bool
        Whether the answer is shown.
    """

    wanted: Wanted
    material: str
    machine: str
    thickness: float
    choices: Choices
    shown: tuple[Judged, ...]
    pick: str
    opened: bool

    @property
    def picked(self) -> Judged | None:
        """The cutter picked."""
        return self.shown[LETTERS.index(self.pick)] if self.pick else None

    def letter(self, one: Judged) -> str:
        """Return the letter of a cutter that is shown."""
        return LETTERS[self.shown.index(one)]


def cutters_page(line: Line, system: str) -> CutterChoice:
    """Give everything that stands on the page."""
    best = line.choices.best
    chosen = [one for one in (best, line.picked) if one is not None]
    shown = (chosen or line.shown[:1]) if line.opened else line.shown
    cutters = tuple(_shown(line, one, system) for one in dict.fromkeys(shown))
    return CutterChoice(
        heading=heading(line),
        job=f"{job(line, system)}.",
        cutters=cutters,
        lists=_answer(line) if line.opened else (),
        foot=FOOT,
        more=MORE,
        text=text_of(line, system),
    )


def heading(line: Line) -> str:
    """Ask, or answer in one line."""
    best, picked = line.choices.best, line.picked
    if not line.opened:
        return f"Which would you take for {line.wanted.where}?"
    if best is None:
        return "None of the shop's cutters does it"
    letter, name = line.letter(best), best.tool.cutter.name
    if best.step is not None and best.step.too_fast:
        return f"{letter}, {name}, fits, but this machine is too fast"
    if picked is None:
        return f"Take {letter}, {name}"
    if picked == best:
        return f"Yes: take {letter}, {name}"
    does = "does it, but" if isinstance(picked, Choice) else "does not fit:"
    return f"{line.pick} {does} take {letter}, {name}"


def job(line: Line, system: str) -> str:
    """Tell seat, material and machine."""
    seat = seat_words(line.wanted.seat, line.wanted.hole_diameter, system)
    thick = line.thickness if line.thickness <= THICKEST_SHEET else None
    metal = f"{line.material}{f' {show_length(thick, system)} thick' if thick else ''}"
    return f"{_sentence(seat).rstrip('.')}; in {metal}, on the {line.machine}"


def _shown(line: Line, one: Judged, system: str) -> ShownCutter:
    """Draw a cutter; with the answer its lines say which it is."""
    letter, tool = line.letter(one), one.tool
    lines = described(tool, system)
    if line.opened:
        best = one is line.choices.best
        lines = ("take this one" if best else "your pick" if one is line.picked else "not this",)
    return ShownCutter(name=f"{letter}  {tool.cutter.name}", shape=shape(tool), lines=lines)


def shape(tool: Assembly) -> CutterShape:
    """Give what is drawn of a tool."""
    cutter, flutes = tool.cutter, tool.cutter.flutes or 1
    return CutterShape(
        included_angle=cutter.included_angle or 180.0,
        body=cutter.body_diameter or 0.0,
        nose=cutter.nose_diameter,
        lips=cutter.spacing or (360.0 / flutes,) * flutes,
        pilot=tool.pilot_diameter,
        removable=tool.pilot is not None,
        shank=tool.held.shank_diameter,
        tapered=tool.held.morse_taper is not None,
        cross_hole=cutter.kind == "cross-hole countersink",
    )


def described(tool: Assembly, system: str) -> tuple[str, ...]:
    """Give the lines that stand under a cutter."""
    cutter = tool.cutter
    flutes = f"{cutter.flutes} flute{'' if cutter.flutes == 1 else 's'}"
    angle = "flat" if cutter.included_angle == 180 else show_angle(cutter.included_angle or 0.0)
    lines = [f"{angle}, {flutes}", f"body {show_length(cutter.body_diameter or 0.0, system)}"]
    if tool.pilot_diameter is not None:
        lines.append(f"pilot {show_length(tool.pilot_diameter, system)}")
    elif cutter.nose_diameter:
        lines.append(f"nose {show_length(cutter.nose_diameter, system)}")
    lines.append(tool.held.shank or "no shank")
    lines += [remark] if (remark := _remark(cutter)) else []
    return tuple(lines)


def _remark(cutter: SeatCutter) -> str:
    """Say the one thing more that the eye might miss."""
    if cutter.condition in ("worn", "dull"):
        return cutter.condition
    if cutter.uneven:
        return "uneven spacing"
    plain = ("countersink", "counterbore", "counterbore head")
    return "" if cutter.kind in plain else cutter.kind.replace(" countersink", "")


def _answer(line: Line) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Give the best one, the one picked, and the others."""
    best, picked = line.choices.best, line.picked
    lists: list[tuple[str, tuple[str, ...]]] = []
    if best is None:
        lists.append(("What would do", (line.choices.would_do,)))
    else:
        lists.append((f"{line.letter(best)}  {best.tool.name}", reasoned(best)))
    if picked is not None and picked != best:
        lines = tuple(one for one in reasoned(picked) if not one.startswith("Spindle"))
        lists.append((f"Your pick: {line.pick}  {picked.tool.name}", lines))
    rest = [one for one in line.shown if one not in (best, picked)]
    if rest:
        others = tuple(f"{line.letter(one)}: {_short(one)}." for one in rest)
        lists.append(("The others", others))
    return tuple(lists)


def reasoned(one: Judged) -> tuple[str, ...]:
    """Tell what speaks for a cutter and against it, weightiest first; or why it does not fit."""
    if isinstance(one, Refusal):
        return (f"{_sentence(one.sentence)}",)
    lines = []
    for name, reasons in (("For it", one.reasons_for), ("Against it", one.reasons_against)):
        if reasons:
            text = "; ".join(reason.sentence.rstrip(".") for reason in reasons)
            lines.append(f"{name}: {text.replace(f' ({NOTE})', '')}.")
    if one.step is not None and one.step.spindle_speed is not None:
        lines.append(f"Spindle: {show_spindle(one.step.spindle_speed)}.")
    return tuple(lines)


def _short(one: Judged) -> str:
    """Tell the weightiest thing against a cutter."""
    if isinstance(one, Refusal):
        return RULE.sub("", one.sentence)  # the sources name the rule
    against = one.reasons_against[0].sentence.rstrip(".") if one.reasons_against else ""
    return f"does it; {against}" if against else "does it"


def _sentence(text: str) -> str:
    return f"{text[:1].upper()}{text[1:]}."


def text_of(line: Line, system: str) -> str:
    """Tell the page, all numbers in both systems."""
    other = "metric" if system == "inch" else "inch"
    asked = f"Which would you take for {line.wanted.where}?"
    question = f"{asked} {job(line, system)} ({job(line, other)})."
    tools = [f"{line.letter(one)}: {_listed(one.tool, system)}." for one in line.shown]
    if not line.opened:
        return " ".join([question, *tools])
    lines = [f"{heading(line)}.", question, *tools]
    for title, sentences in _answer(line):
        lines += [f"{title}.", *sentences]
    lines.append(" ".join(FOOT))
    return " ".join(lines)


def _listed(tool: Assembly, system: str) -> str:
    """Tell a cutter with its sizes in both systems."""
    cutter = tool.cutter
    parts = [f"{tool.name}, {cutter.kind}", described(tool, system)[0]]
    parts.append(f"body {show_both(cutter.body_diameter or 0.0, system)}")
    if tool.pilot_diameter is not None:
        parts.append(f"pilot {show_both(tool.pilot_diameter, system)}")
    elif cutter.nose_diameter:
        parts.append(f"nose {show_both(cutter.nose_diameter, system)}")
    parts += [tool.held.shank or "no shank", cutter.condition]
    if cutter.uneven:
        parts.append("uneven spacing")
    return ", ".join(parts)
