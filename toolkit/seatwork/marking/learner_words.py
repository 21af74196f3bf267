"""Feedback for one learner: verdicts in plain words, as data and as a page without scripts."""

from collections.abc import Mapping
from dataclasses import dataclass
from html import escape

from seatwork.errors import plainly
from seatwork.marking.handed import HandedOut
from seatwork.marking.marker import Marked
from seatwork.marking.scoring import Scored
from seatwork.marking.sheets import Sheet
from seatwork.marking.speaking import Speaker, speaker
from seatwork.marking.text import verdict_text
from seatwork.shop.house.wording import defaults

LETTERS = "abcdefgh"
STYLE = (
    "body{font:18px/1.5 sans-serif;max-width:46em;margin:2em auto;color:#111;background:#fff}"
    "h2{font-size:1.1em;margin:1.4em 0 .2em}p{margin:.3em 0}.asked{white-space:pre-line}"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """What is said of one question."""

    heading: str
    asked: str
    lines: tuple[str, ...]
    worked: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Feedback:
    """What is said of one learner's sheet."""

    language: str
    heading: str
    total: str
    entries: tuple[Entry, ...]


def feedback(
    sheet: Sheet, form: HandedOut, marked: Marked, words: Mapping[str, str], language: str = "en"
) -> Feedback:
    """Put a learner's marks into words.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    form : HandedOut
        The learner's form.
    marked : Marked
        What was marked.
    words : mapping
        The wording in force, or that of another language.
    language : str
        Code of the language of `words`, such as en or es.
    """
    words = {**defaults(), **words}
    file = marked.file
    assert file is not None, "a file that could not be read has no feedback"
    return Feedback(
        language=language,
        heading=f"{speaker(language)(sheet.title)}: {file.learner}",
        total=_total(sheet, marked, words),
        entries=tuple(
            _entry(sheet, form, item, words, speaker(language)) for item in marked.scored
        ),
    )


def _total(sheet: Sheet, marked: Marked, words: Mapping[str, str]) -> str:
    if marked.points is None:
        return words["marking.person"]
    return words["marking.total"].format(points=f"{marked.points:g}", of=f"{sheet.points:g}")


def _entry(
    sheet: Sheet,
    form: HandedOut,
    item: Scored,
    words: Mapping[str, str],
    say: Speaker,
) -> Entry:
    if not item.verdicts:
        heading = f"{item.id}: {_shown(item.points)} / {item.of:g}"
        line = words["marking.person" if item.points is None else "marking.given"]
        return Entry(heading=heading, asked="", lines=(line,), worked="")
    question = form.question(sheet.item(item.id))
    parts = question.parts
    lines = []
    for number, (verdict, part) in enumerate(zip(item.verdicts, parts, strict=True)):
        label = f"({LETTERS[number]}) " if len(parts) > 1 else ""
        typed = item.typed[number] if number < len(item.typed) else ""
        quoted = f"“{plainly(typed)}”. " if typed.strip() else ""
        lines.append(label + quoted + verdict_text(verdict, part, words, say))
    if item.points != item.computed:
        lines.append(words["marking.given"])
    right = all(verdict.is_right for verdict in item.verdicts)
    return Entry(
        heading=f"{item.id}: {_shown(item.points)} / {item.of:g}",
        asked=say(question.ask()),
        lines=tuple(lines),
        worked="" if right else say(question.worked()),
    )


def _shown(points: float | None) -> str:
    return "?" if points is None else f"{points:g}"


def page(shown: Feedback) -> str:
    """Return feedback as one HTML page: no script, no request, every text escaped."""
    blocks = "".join(_block(entry) for entry in shown.entries)
    return (
        f'<!doctype html>\n<html lang="{escape(shown.language)}">\n<head>\n<meta charset="utf-8">\n'
        f"<title>{escape(shown.heading)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n"
        f"<h1>{escape(shown.heading)}</h1>\n<p>{escape(shown.total)}</p>\n{blocks}</body>\n</html>\n"
    )


def _block(entry: Entry) -> str:
    lines = "".join(f"<p>{escape(line)}</p>\n" for line in entry.lines)
    worked = f"<p>{escape(entry.worked)}</p>\n" if entry.worked else ""
    return (
        f"<h2>{escape(entry.heading)}</h2>\n"
        f'<p class="asked">{escape(entry.asked)}</p>\n{lines}{worked}'
    )
