"""The map: which widths chatter at which spindle speeds.

Notes
-----
A cut chatters where the characteristic function of ``loop`` has a root to the right of the
imaginary axis.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from seatwork.cutting.chatter.crossings import Crossings, find_crossings
from seatwork.cutting.chatter.limits import loop_of
from seatwork.cutting.chatter.loop import Floats, Ints
from seatwork.cutting.chatter.parts import NOTE, Cut, Cutter, Machine
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Map:
    """Quiet and chattering cuts over spindle speed and width.

    Parameters
    ----------
    spindle_speeds : ndarray, shape (speeds,)
        Columns of the map [rev/min].
    widths : ndarray, shape (widths,)
        Rows of the map, rising [mm].
    unstable_roots : ndarray of int, shape (widths, speeds)
        Number of growing motions in each cell; zero is quiet.
    limit : ndarray, shape (speeds,)
        Width where chatter begins [mm]; NaN where not found up to the widest row.
    frequency : ndarray, shape (speeds,)
        Frequency there [Hz], below zero for backward whirl; NaN without a limit.
    note : str
        What the map is not.
    """

    spindle_speeds: Floats
    widths: Floats
    unstable_roots: Ints
    limit: Floats
    frequency: Floats
    note: str = NOTE

    def __repr__(self) -> str:
        rows, columns = self.unstable_roots.shape
        share = 100 * float(self.chatters.mean())
        return f"<Map {columns} speeds, {rows} widths: {share:.0f} % chatters; illustration>"

    @property
    def chatters(self) -> npt.NDArray[np.bool_]:
        """Whether each cell chatters, shape (widths, speeds)."""
        return self.unstable_roots > 0


def stability(
    *,
    machine: Machine,
    cutter: Cutter,
    cut: Cut,
    spindle_speeds: Sequence[float] | Floats,
    widths: Sequence[float] | Floats,
) -> Map:
    """Count the growing motions in every cell of a map.

    Parameters
    ----------
    machine : Machine
        How the machine gives.
    cutter : Cutter
        Lips, angle and spacing; pass ``cutter.in_cut(feed)`` where a lip stands proud.
    cut : Cut
        Cutting coefficients, mean diameter, process damping.
    spindle_speeds : array of float
        Spindle speeds [rev/min], all above zero.
    widths : array of float
        Widths of cut [mm], rising from above zero.

    Returns
    -------
    Map
        Counts, limits and frequencies.

    Raises
    ------
    SeatworkError
        If a speed or width is not above zero, or the widths do not rise.

    Notes
    -----
    Read it upward: during the plunge the width grows from nothing at one
    spindle speed. Exact count of the roots that crossed into chatter below each
    cell, no stepping in time. Process damping is trustworthy while the wear
    land is under about a quarter of the wave. Illustration, not a prediction
    for your machine.

    References
    ----------
    D-subdivision: every root that is unstable at a width crossed the imaginary
    axis at a smaller one (Stepan 1989).
    """
    speeds = _axis(spindle_speeds, "spindle speed")
    rows = _axis(widths, "width")
    if not np.all(np.diff(rows) > 0):
        raise SeatworkError("widths", "they do not rise from row to row", "sort them, none twice")
    model = loop_of(machine, cutter, cut, speeds)
    found = find_crossings(model, float(rows[-1]) / 1000)
    limit, frequency = _lowest(found, len(speeds))
    for column in np.flatnonzero(np.isfinite(limit)):
        frequency[column] = model.stationary(frequency[column], int(column), limit[column])
    return Map(
        spindle_speeds=speeds,
        widths=rows,
        unstable_roots=_count(found, rows / 1000, len(speeds)),
        limit=1000 * limit,
        frequency=frequency / (2 * np.pi),
    )


def _axis(values: Sequence[float] | Floats, name: str) -> Floats:
    axis = np.asarray(values, dtype=float)
    if axis.ndim != 1 or not len(axis) or not np.all((axis > 0) & np.isfinite(axis)):
        raise SeatworkError(
            f"{name} axis", "it holds something that is not above zero", f"give a row of {name}s"
        )
    return axis


def _count(found: Crossings, widths: Floats, speeds: int) -> Ints:
    """Sum up each column the roots gained and lost below each cell."""
    row = np.searchsorted(widths, found.width)
    inside = row < len(widths)
    cell = (row * speeds + found.column)[inside]
    gained = np.bincount(cell, weights=found.change[inside], minlength=len(widths) * speeds)
    return gained.reshape(len(widths), speeds).cumsum(axis=0).round().astype(np.intp)


def _lowest(found: Crossings, speeds: int) -> tuple[Floats, Floats]:
    """Lowest crossing of each column [m] and its frequency [rad/s]."""
    limit, frequency = np.full(speeds, np.nan), np.full(speeds, np.nan)
    order = np.argsort(-found.width)  # written last, and so kept, is the lowest
    limit[found.column[order]] = found.width[order]
    frequency[found.column[order]] = found.frequency[order]
    return limit, frequency
