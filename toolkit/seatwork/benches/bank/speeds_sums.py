"""What the speeds bench works out: a spindle speed, and what goes beside it."""

from dataclasses import dataclass

from seatwork import cutting
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.shop.choosing.spindles import Spindle
from seatwork.shop.lists.machines import ShopMachine

FREE = "my own choice"
"""Stands for no job: operation and sizes as they are set."""


def turned_jobs() -> tuple[str, ...]:
    """Name the jobs of the list of which the cutter's diameter is known, and one's own choice."""
    return (*jobs(_wide), FREE)


def turned_job(name: str) -> Job | None:
    """Find a job of the list, or any screw's; None for one's own choice.

    Raises
    ------
    SeatworkError
        If nothing says how wide its seat is.
    """
    if name == FREE:
        return None
    found = job(name)
    return found if found.across else None


def _wide(one: Job) -> bool:
    try:
        return bool(one.across)
    except SeatworkError:
        return False


@dataclass(frozen=True, slots=True, kw_only=True)
class Turning:
    """What the bench shows.

    Parameters
    ----------
    operation : str
        What is cut.
    material : str
        In what.
    machine : ShopMachine
        On what.
    spindle : Spindle
        The sum in its order.
    cap : float or None
        Greatest speed by house rule [rev/min].
    misread : float or None
        Speed if "one third slower" is read as "one third of" [rev/min].
    shortcut : cutting.shortcuts.Shortcut or None
        A short constant to set beside the exact one.
    """

    operation: str
    material: str
    machine: ShopMachine
    spindle: Spindle
    cap: float | None
    misread: float | None
    shortcut: cutting.Shortcut | None

    @property
    def drill(self) -> float:
        """Speed of a drill of that diameter [rev/min]."""
        return self.spindle.raw / self.spindle.ratio

    @property
    def short(self) -> float | None:
        """Raw speed by the short constant [rev/min]."""
        if self.shortcut is None:
            return None
        drill = self.shortcut.spindle_speed(
            cutting_speed=self.spindle.surface_speed, diameter=self.spindle.diameter
        )
        return drill * self.spindle.ratio
