"""Tap drills, and the chamfer that a hole gets before it is tapped."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.drill_list import drill
from seatwork.hardware.facts import Sourced
from seatwork.hardware.spelling import as_typed
from seatwork.hardware.threads import METRIC_PITCHES, METRIC_TABLE, Thread, thread
from seatwork.shop import HouseRules, rules
from seatwork.units import show_angle, show_both

RUNOUT_TABLE = "thread_runout_din_76_1"
OVER, METRIC_MOUTH = "tapped_hole.chamfer_over", "tapped_hole.metric_mouth"
FULL_THREAD = 1.29904
"""Twice the height of a full 60° thread, 5/8 of the sharp triangle, for a pitch of 1."""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class TapDrill(Sourced):
    """The drill for a hole to be tapped.

    Parameters
    ----------
    thread : Thread
        The thread, pitch known.
    name : str
        Name of the drill.
    diameter : float
        Its diameter [mm].
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    thread: Thread
    name: str
    diameter: float

    def _line(self) -> str:
        return f"{self.name} for {self.thread.name}: {show_both(self.diameter)}"

    @property
    def share_of_thread(self) -> float:
        """Height of the thread left in the hole, as a part of the full thread [1]."""
        return share_of_thread(self.thread, self.diameter) or 0.0


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class TappedHoleChamfer(Sourced):
    """The chamfer cut at the mouth of a hole before it is tapped.

    Parameters
    ----------
    diameter : float
        Diameter at the face [mm].
    included_angle : float
        Included angle of the cutter [deg].
    rules : tuple of str
        Names of the house rules it follows.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    diameter: float
    included_angle: float
    rules: tuple[str, ...]

    def _line(self) -> str:
        return f"{show_both(self.diameter)} at the face, {show_angle(self.included_angle)}"


def tap_drill(text: str | Thread) -> TapDrill:
    """Find the tap drill of a thread, as the list gives it.

    Parameters
    ----------
    text : str or Thread
        ``1/4-20``, ``10-32``, ``M8x1``; ``M6`` is the coarse thread, unless the house
        rule ``tapped_hole.pitch`` asks.

    Returns
    -------
    TapDrill
        Its `share_of_thread` says how full the thread becomes.

    Raises
    ------
    SeatworkError
        If the pitch of an inch thread is not named, or the list has no such thread.

    Examples
    --------
    >>> tap_drill("1/4-20").name, tap_drill("M6").name
    ('#7', '5 mm')
    """
    with as_typed(text):
        found = _with_pitch(thread(text) if isinstance(text, str) else text)
        metric = found.system == "metric"
        row = tables.row("tap_drills_metric" if metric else "tap_drills_inch", found.name)
        named = f"{row['tap_drill_mm']:g} mm" if metric else str(row["tap_drill"])
        drilled = drill(named)
    return TapDrill(
        thread=found,
        name=drilled.name,
        diameter=drilled.diameter,
        source=str(row["source"]),
        confirmed=str(row["confirmed"]),
    )


def share_of_thread(found: Thread, hole_diameter: float) -> float | None:
    """Return the height of the thread that a hole leaves, as a part of the full thread.

    Parameters
    ----------
    found : Thread
        The thread.
    hole_diameter : float
        Diameter of the hole before it is tapped [mm].

    Returns
    -------
    float or None
        Share [-]; None where the pitch is not known.

    Examples
    --------
    >>> share_of_thread(thread("3/8-16"), 7.9375)
    0.77

    Notes
    -----
    Geometry of a 60° thread: .6495 of the pitch on a side.
    """
    if found.pitch is None:
        return None
    return (found.diameter - hole_diameter) / (FULL_THREAD * found.pitch)


def pitched(text: str | Thread) -> Thread:
    """Return a thread with its pitch: what is named, or the coarse one of a metric size.

    Raises
    ------
    SeatworkError
        If it is no thread held here, or the pitch of an inch thread is not named.

    Examples
    --------
    >>> pitched("M8").pitch
    1.25
    """
    with as_typed(text):
        return _with_pitch(thread(text) if isinstance(text, str) else text)


def thread_runout(pitch: float) -> float | None:
    """Return the regular run-out of an internal metric thread [mm]: DIN 76-1, from memory.

    Parameters
    ----------
    pitch : float
        Its pitch [mm].

    Returns
    -------
    float or None
        How much deeper than its full thread a blind hole is drilled; None for other pitches.

    Examples
    --------
    >>> thread_runout(1.25), thread_runout(0.9)
    (6.2, None)
    """
    held = tables.rows(RUNOUT_TABLE)
    found = next((row["runout_e1_mm"] for row in held if row["pitch_mm"] == pitch), None)
    return float(found) if found else None


def mouth_diameter(major: float, *, metric: bool, house: HouseRules) -> tuple[float, str]:
    """Return the diameter of a tapped hole's chamfer [mm], and the house rule that gives it.

    Parameters
    ----------
    major : float
        Major diameter of the thread [mm].
    metric : bool
        Whether the thread is metric.
    house : HouseRules
        The rules in force.

    Examples
    --------
    >>> from seatwork.shop import rules
    >>> round(mouth_diameter(9.525, metric=False, house=rules())[0], 3)
    10.033
    """
    if metric and house.word(METRIC_MOUTH).startswith("1.05"):
        return 1.05 * major, METRIC_MOUTH
    return major + house.number(OVER), OVER


def tapped_hole_chamfer(text: str | Thread) -> TappedHoleChamfer:
    """Return the chamfer for a hole to be tapped, by the house rules.

    Parameters
    ----------
    text : str or Thread
        The thread or its size.

    Returns
    -------
    TappedHoleChamfer
        To the major diameter plus ``tapped_hole.chamfer_over``, or a metric one to
        ``tapped_hole.metric_mouth``.

    Raises
    ------
    SeatworkError
        If it is no thread held here.

    Examples
    --------
    >>> tapped_hole_chamfer("3/8-16").diameter
    10.033
    """
    found = thread(text) if isinstance(text, str) else text
    house = rules()
    across, name = mouth_diameter(found.diameter, metric=found.system == "metric", house=house)
    over = house[name]
    return TappedHoleChamfer(
        diameter=across,
        included_angle=house.number("tapped_hole.chamfer_angle"),
        rules=(over.name, "tapped_hole.chamfer_angle"),
        source=over.source,
        confirmed=over.confirmed,
    )


def _with_pitch(found: Thread) -> Thread:
    if found.pitch is not None:
        return found
    if found.system == "metric" and rules().word("tapped_hole.pitch") == "coarse":
        pitch = tables.row(METRIC_TABLE, found.size)["coarse_pitch_mm"]
        return thread(f"{found.size}x{pitch:g}")
    if found.system == "metric":
        row = tables.row(METRIC_TABLE, found.size)
        text = " or ".join(f"{found.size}x{row[pitch]:g}" for pitch in METRIC_PITCHES if row[pitch])
        raise SeatworkError(found.size, "which pitch?", f"write {text}")
    raise SeatworkError(
        found.size, "coarse or fine thread?", f"write {found.size} UNC or {found.size} UNF"
    )
