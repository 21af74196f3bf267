"""Inches or millimeters: what a note itself shows, before any number is read."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from seatwork import units
from seatwork.notes.callout import NoteError
from seatwork.notes.fastening import is_metric
from seatwork.notes.parsing import Number, Phrase
from seatwork.shop import HouseRules

INCH_UNITS = ("IN", '"', "''", "THOU")
WIDE = 3.0  # a bare size from here up is hardly in inches
BORES = ("PROCESS", "COUNTERBORE", "COUNTERSINK", "SPOTFACE", "diameter", "HOLE")
LEG = 1.0  # likewise for the leg of a chamfer
NEAR = 0.1  # share; a size said twice, rounded or a little wrong, still shows which is in mm


@dataclass(frozen=True, slots=True)
class Decision:
    """The system of a note's bare numbers, and how it was found."""

    system: str
    by_rule: bool = False
    warning: str = ""


def decide(text: str, phrases: list[Phrase], system: str | None, rules: HouseRules) -> Decision:
    """Decide what the bare numbers of a note are in.

    Parameters
    ----------
    text : str
        The note as typed, for errors.
    phrases : list of Phrase
        The note as parsed.
    system : {"inch", "metric"} or None
        The system of the print, if the caller knows it.
    rules : HouseRules
        For notes that show nothing (``note.bare_numbers``).

    Raises
    ------
    NoteError
        "in or mm?", at the first number in doubt.
    """
    bare = [number for number in lengths(phrases) if not _marked(number)]
    inch, metric = _inch_style(bare), _metric_style(bare)
    if system is not None:
        return _against_print(text, phrases, system, inch, metric)
    duals, shown = duals_show(phrases), signs(phrases)
    if len(duals) == 1 and shown <= duals and not any("," in one.text for one in metric):
        return Decision(duals.pop())
    if inch and metric:
        raise ask(text, metric[0], "some numbers are written the inch way and some the metric way")
    if metric and not inch and signs(phrases) == {"inch"} and _thousandths(metric):
        return Decision("inch")
    if metric and not inch and _may_be_inches(phrases, metric):
        raise ask(text, metric[0], "one number is written the metric way, and no size is wide")
    if inch or metric:
        return Decision("inch" if inch else "metric")
    if len(shown) == 1:
        return Decision(shown.pop())
    if not bare:
        return Decision("inch" if "inch" in shown or not shown else "metric")
    if shown:
        raise ask(text, bare[0], "the note shows both inch and metric signs")
    return _by_rule(text, phrases, bare, rules)


def lengths(phrases: list[Phrase]) -> list[Number]:
    """Return the numbers of a note that are lengths."""
    found: list[Number] = []
    for phrase in phrases:
        quantity = phrase.quantity
        if quantity and not quantity.is_angle and phrase.kind not in ("pitch", "depth_pair"):
            own = () if phrase.kind == "flush_within" else (quantity.number,)
            found += (*own, *quantity.others)
    return found


def signs(phrases: Iterable[Phrase]) -> set[str]:
    """Return the systems that units, fractions, drill names, threads and fits speak for."""
    phrases = list(phrases)
    found = {"inch" for n in lengths(phrases) if n.unit.startswith(INCH_UNITS) or _fraction(n)}
    found |= {"metric" for n in lengths(phrases) if n.unit.startswith("MM")}
    for phrase in phrases:
        if phrase.kind == "ISO_CENTER":
            found.add("metric")
        if phrase.kind == "SCREW":
            found.add("metric" if is_metric(phrase.text) else "inch")
        if phrase.kind == "drill_name" or (phrase.kind == "thread" and phrase.text[0] != "M"):
            found.add("inch")
        fit = phrase.quantity.fit if phrase.quantity else ""
        if fit or phrase.kind == "c_chamfer" or (phrase.kind == "thread" and phrase.text[0] == "M"):
            found.add("metric")
    return found


def duals_show(phrases: Iterable[Phrase]) -> set[str]:
    """Return the systems that sizes said twice speak for: ``12.7 [.500]`` is in millimeters."""
    found, inch = set(), units.length("1 in")
    for phrase in phrases:
        quantity = phrase.quantity
        if quantity is None or quantity.is_angle or not quantity.again or _marked(quantity.number):
            continue
        first, again = _amount(quantity.number), quantity.again[0]
        if abs(again - first * inch) <= NEAR * again:
            found.add("inch")
        if abs(again * inch - first) <= NEAR * first:
            found.add("metric")
    return found


def ask(text: str, number: Number, why: str) -> NoteError:
    """Return the error that asks "in or mm?" at a number."""
    return NoteError(
        text,
        start=number.start,
        end=number.end,
        fault=f"in or mm? {why}",
        remedy="write the unit behind the number, or say what the print is in",
        options=(f"{number.text} in", f"{number.text} mm"),
    )


def _against_print(
    text: str, phrases: list[Phrase], system: str, inch: list[Number], metric: list[Number]
) -> Decision:
    if system == "inch":
        commas = [number for number in metric if "," in number.text]
        if commas:
            raise ask(text, commas[0], "a decimal comma on an inch print")
        return Decision("inch")
    thousandths = [number for number in inch if len(number.text) > 3]
    if thousandths and not metric:
        return Decision("inch", warning="inch-on-metric")
    shown = "inch" in signs(phrases)
    return Decision("metric", warning="inch-on-metric" if shown else "")


def _by_rule(text: str, phrases: list[Phrase], bare: list[Number], rules: HouseRules) -> Decision:
    rule = rules.word("note.bare_numbers")
    if rule in ("inch", "metric"):
        return Decision(rule, by_rule=True)
    if rule == "by size" and _too_wide_for_inches(phrases):
        return Decision("metric", by_rule=True)
    raise ask(text, bare[0], "nothing in the note shows which")


def _thousandths(numbers: list[Number]) -> bool:
    """Tell whether every number is written to a thousandth, which no size in mm is."""
    return all(re.fullmatch(r"0\.\d{3,4}", number.text) for number in numbers)


def _too_wide_for_inches(phrases: list[Phrase]) -> bool:
    for index, phrase in enumerate(phrases):
        if phrase.quantity is None or phrase.quantity.is_angle:
            continue
        limit = LEG if _small_angle_follows(phrases[index + 1 : index + 3]) else WIDE
        if _amount(phrase.quantity.number) >= limit:
            return True
    return False


def _small_angle_follows(following: list[Phrase]) -> bool:
    if len(following) < 2 or following[0].kind != "BY":
        return False
    quantity = following[1].quantity
    return bool(quantity and quantity.is_angle and _amount(quantity.number) <= 45)


def _may_be_inches(phrases: list[Phrase], metric: list[Number]) -> bool:
    """Tell whether a zero before the point is all that speaks for mm, and every size is small.

    ``SF 1.25 DIA, DRILL 0.5 THRU`` is likely in inches.
    """
    if any("," in number.text for number in metric) or "metric" in signs(phrases):
        return False
    bores = any(phrase.kind in BORES for phrase in phrases)
    return bores and not _too_wide_for_inches(phrases)


def _amount(number: Number) -> float:
    """Return a plain decimal as a number; fractions say inches and need no measure."""
    return 0.0 if _fraction(number) else float(number.text.replace(",", "."))


def _inch_style(bare: list[Number]) -> list[Number]:
    return [number for number in bare if number.text.startswith(".")]


def _metric_style(bare: list[Number]) -> list[Number]:
    return [number for number in bare if re.match(r"0[.,]\d*[1-9]|\d+,", number.text)]


def _marked(number: Number) -> bool:
    return bool(number.unit) or _fraction(number)


def _fraction(number: Number) -> bool:
    return re.search(r"[/½¼¾⅛⅜⅝⅞]", number.text) is not None
