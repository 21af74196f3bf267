"""What comes of one's own number at the machine: surface speed at the lip, turns, travel, time."""

from math import pi
from typing import Any

from seatwork.questions.cuts.own_cut import OwnCut, bars, words
from seatwork.units import show_length, show_speed


def lip_speed(speed: float, diameter: float) -> float:
    """Return the surface speed of the lips [m/min] at `diameter` [mm] and `speed` [rev/min]."""
    return pi * diameter * speed / 1000.0


def spindle_speed(question: Any, _part: int, value: float) -> OwnCut:
    """Say how fast the lips run at a spindle speed, beside the drilling speed."""
    if not value > 0:
        return words("A spindle that stands still cuts nothing.")
    system = question.system
    lip, right = (lip_speed(turns, question.diameter) for turns in (value, question.value()))
    drilled = show_speed(question.surface_speed, system)
    wide = show_length(question.diameter, system)
    runs = show_speed(lip, system)
    said = f"At {value:.0f} rev/min the lips at ⌀{wide} run {runs}. The drill runs {drilled}."
    return bars(lip, right, said)


def cutting_time(question: Any, _part: int, value: float) -> OwnCut:
    """Say how far the cutter goes in such a time, beside the travel asked for."""
    turns = max(value, 0.0) * question.speed / 60
    gone = show_length(turns * question.feed, question.system)
    travel = question.stated("travel")
    said = f"In {value:.1f} s it makes {turns:.1f} turns and goes {gone}. Asked: {travel}."
    return bars(turns * question.feed, question.travel, said)


def chatter_marks(question: Any, _part: int, value: float) -> OwnCut:
    """Say how many marks such a chatter leaves at this speed."""
    marks = max(value, 0.0) * 60 / question.speed
    said = f"At {value:.0f} Hz and {question.speed:.0f} rev/min that is {marks:.1f} marks a turn."
    return bars(marks, question.marks, said)
