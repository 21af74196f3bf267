"""One learner's report on one page: theory, practical and safety, and no sum of them."""

from seatwork.cards.blocks import caption, heading
from seatwork.cards.pages import Pages
from seatwork.marking.speaking import speaker
from seatwork.record.learner_report import NOBODY, Report

COLUMNS = (0.28, 0.14, 0.58)
"""Shares of the columns of the table of sheets [-]."""


def report_page(report: Report, *, name: str = "", paper: str = "", language: str = "en") -> Pages:
    """Set the report of one learner.

    Parameters
    ----------
    report : Report
        As `seatwork.record.report` gives it.
    name : str
        The learner's name, from the instructor's own list.
    paper : {"letter", "a4"}, optional
        Size of the page; by house rule ``display.paper`` if not given.
    language : {"en", "es"}
        What it is said in, as the report that `report_in` gave with it.

    Raises
    ------
    SeatworkError
        If there is no catalog of that language.
    """
    who, say = f"{name} ({report.learner})" if name else report.learner, speaker(language)
    foot = f"{say('Report of')} {report.learner}, {report.day}"
    pages = Pages(paper, foot=foot, say=say)
    heading(pages, f"{say('Report of')} {who}", f"As of {report.day}.")
    if report.left:
        pages.text(f"{say('Left the course')}: {report.left}")
    caption(pages, f"Theory (the {report.counts} sitting counts)")
    _sheets(pages, report)
    for title, lines, none in (
        ("Practical", report.practical, "No part inspected."),
        ("Safety", report.safety, "Nothing signed."),
    ):
        caption(pages, title)
        for line in lines or (none,):
            pages.text(line, indent=0.15)
    caption(pages, "Outline: points earned/asked, parts accepted of cut")
    earned = " · ".join(map(str, report.outline)).replace(" part ", f" {say('part')} ")
    pages.text(earned or "Nothing asked yet.", indent=0.15)
    left = " ".join(report.not_asked) or say("nothing")
    pages.text(f"{say('Not asked yet')}: {left}", indent=0.15)
    pages.space()
    pages.text(NOBODY, bold=True)
    return pages


def _sheets(pages: Pages, report: Report) -> None:
    if not report.theory:
        pages.text("Nothing handed out.", indent=0.15)
        return
    rows = [
        (
            one.title,
            f"{one.sitting}",
            one.outcome + ("" if one.counts else f" ({pages.say('does not count')})"),
        )
        for one in report.theory
    ]
    head = ("sheet", "sitting", "how it stands")
    pages.table([head, *rows], [share * pages.room for share in COLUMNS])
