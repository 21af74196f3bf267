"""What a learner gets back, on paper: verdicts in plain words, worked answers."""

from pathlib import Path

from seatwork.cards.pages import Pages
from seatwork.marking.learner_words import Feedback


def feedback_page(path: str | Path, feedback: Feedback, paper: str = "") -> None:
    """Write one learner's feedback as a PDF.

    Parameters
    ----------
    path : str or Path
        The PDF.
    feedback : Feedback
        What is said.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot=feedback.heading)
    pages.text(feedback.heading, size=18, bold=True)
    pages.text(feedback.total)
    for entry in feedback.entries:
        pages.space(0.2)
        pages.keep_together(1.4)
        pages.text(entry.heading, bold=True)
        pages.text(entry.asked)
        for line in entry.lines:
            pages.text(line, indent=0.3)
        if entry.worked:
            pages.text(entry.worked, indent=0.3)
    pages.save(path, private=True)
