"""Where roots cross into chatter: found on a ragged frequency grid, all speeds at once."""

from dataclasses import dataclass
from typing import Protocol

import numpy as np

from seatwork.cutting.chatter.loop import Floats, Ints
from seatwork.cutting.chatter.parts import Machine
from seatwork.cutting.chatter.search import PER_RESONANCE, POINTS_PER_TURN, POLISH, VERTICES


class Crossable(Protocol):
    """What the search asks of a model."""

    @property
    def delays(self) -> Floats:
        """Delays [s], one column per spindle speed."""

    @property
    def machine(self) -> Machine:
        """Structure, whose resonance must be seen."""

    @property
    def roots_each(self) -> int:
        """Number of roots that cross together."""

    def bands(self, widest: float) -> list[tuple[Floats, Floats]]:
        """Lowest and highest frequency [rad/s] at each spindle speed."""

    def mismatch(self, w: Floats, column: Ints) -> Floats:
        """Real function of frequency, zero at a crossing."""

    def width(self, w: Floats, column: Ints) -> Floats:
        """Width of cut [m] at a crossing."""

    def direction(self, w: Floats, column: Ints, width: Floats) -> Ints:
        """+1 into chatter, -1 out of it."""

    def static(self, widest: float) -> tuple[Ints, Floats, Ints]:
        """Column, width [m] and change of roots that cross at zero frequency."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Crossings:
    """Every crossing found, in one flat list.

    Parameters
    ----------
    column : ndarray of int
        Index of the spindle speed.
    frequency : ndarray
        Frequency of the root on the axis [rad/s].
    width : ndarray
        Width of cut [m].
    change : ndarray of int
        Roots gained, or lost where below zero, as the width grows past it.
    """

    column: Ints
    frequency: Floats
    width: Floats
    change: Ints


def find_crossings(
    model: Crossable,
    widest: float,
    *,
    per_turn: int = POINTS_PER_TURN,
    per_resonance: int = PER_RESONANCE,
) -> Crossings:
    """Find all crossings with widths up to `widest` [m].

    `per_turn` points stand on each turn of the phase, and at least `per_resonance`, or
    three over the damping ratio, on each natural frequency.
    """
    found = [_in_band(model, band, per_turn, per_resonance) for band in model.bands(widest)]
    column = np.concatenate([part[0] for part in found])
    w = np.concatenate([part[1] for part in found])
    width = model.width(w, column)
    keep = (width > 0) & (width <= widest)
    column, w, width = column[keep], w[keep], width[keep]
    change = model.roots_each * model.direction(w, column, width)
    still, at, still_change = model.static(widest)
    return Crossings(
        column=np.concatenate([column, still]),
        frequency=np.concatenate([w, np.zeros(len(still))]),
        width=np.concatenate([width, at]),
        change=np.concatenate([change, still_change]),
    )


def _in_band(
    model: Crossable, band: tuple[Floats, Floats], per_turn: int, per_resonance: int
) -> tuple[Ints, Floats]:
    """Columns and polished frequencies of the sign changes in a band of frequencies."""
    resonance = max(per_resonance, 3 / model.machine.damping_ratio)
    density = np.maximum(
        model.delays.max(axis=0) / (2 * np.pi) * per_turn,
        resonance / model.machine.angular_frequency,
    )
    column, w = _grid(*band, density)
    value = model.mismatch(w, column)
    turns = np.signbit(value[1:]) != np.signbit(value[:-1])
    at = np.flatnonzero(turns & (column[1:] == column[:-1]))
    single = column[at], w[at], w[at + 1], value[at], value[at + 1]
    pairs = _pairs(model, column, w, value)
    brackets = [np.concatenate(parts) for parts in zip(single, *pairs, strict=True)]
    return brackets[0], _polish(model, *brackets)


Brackets = tuple[Ints, Floats, Floats, Floats, Floats]


def _pairs(model: Crossable, column: Ints, w: Floats, value: Floats) -> tuple[Brackets, Brackets]:
    """Brackets of two crossings that lie between the same points of the grid.

    There the mismatch turns back before it reaches zero on the grid: the vertex of
    a parabola through three points is tried, twice.
    """
    size = np.abs(value)
    bend = (size[1:-1] <= size[:-2]) & (size[1:-1] <= size[2:])
    same = (np.signbit(value[1:-1]) == np.signbit(value[:-2])) & (
        np.signbit(value[1:-1]) == np.signbit(value[2:])
    )
    at = 1 + np.flatnonzero(bend & same & (column[2:] == column[:-2]))
    where, a, b = column[at], w[at - 1], w[at + 1]
    fa, fb = value[at - 1], value[at + 1]
    middle, fm = w[at], value[at]
    for _ in range(VERTICES):
        vertex = _vertex((a, fa), (middle, fm), (b, fb))
        fv = model.mismatch(vertex, where)
        better = np.where(fm > 0, fv < fm, fv > fm)
        middle, fm = np.where(better, vertex, middle), np.where(better, fv, fm)
    crossed = np.signbit(fm) != np.signbit(fa)
    where, a, b, middle = where[crossed], a[crossed], b[crossed], middle[crossed]
    fa, fb, fm = fa[crossed], fb[crossed], fm[crossed]
    return (where, a, middle, fa, fm), (where, middle, b, fm, fb)


def _vertex(
    left: tuple[Floats, Floats], middle: tuple[Floats, Floats], right: tuple[Floats, Floats]
) -> Floats:
    """Where a parabola through three points turns, kept between the outer two."""
    (a, fa), (m, fm), (b, fb) = left, middle, right
    before, after = (m - a) * (fm - fb), (m - b) * (fm - fa)
    slope = before - after
    with np.errstate(divide="ignore", invalid="ignore"):
        turn = m - 0.5 * ((m - a) * before - (m - b) * after) / slope
    return np.clip(np.where(np.isfinite(turn), turn, m), a, b)


def _grid(low: Floats, high: Floats, density: Floats) -> tuple[Ints, Floats]:
    """Ragged grid, `density` points for each rad/s of the band of each column."""
    span = np.maximum(high - low, 0)
    points = np.ceil(span * density).astype(np.intp) + 3 * (span > 0)
    column = np.repeat(np.arange(len(low)), points)
    start = np.repeat(np.cumsum(points) - points, points)
    step = span / np.maximum(points - 1, 1)
    return column, low[column] + (np.arange(len(column)) - start) * step[column]


def _polish(model: Crossable, column: Ints, a: Floats, b: Floats, fa: Floats, fb: Floats) -> Floats:
    """Close brackets by the Illinois rule, all at once."""
    for _ in range(POLISH):
        span = fb - fa
        c = b - fb * (b - a) / np.where(span == 0, 1, span)
        fc = model.mismatch(c, column)
        other = np.signbit(fc) != np.signbit(fb)
        a, fa = np.where(other, b, a), np.where(other, fb, fa / 2)
        b, fb = c, fc
    return b
