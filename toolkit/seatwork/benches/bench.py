"""A bench: controls, what they work out, and the scene that shows it; no browser needed."""

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any, ClassVar, Generic, Protocol, TypeVar

from seatwork.benches.controls import Control
from seatwork.benches.measures import Measure, table
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.errors import SeatworkError
from seatwork.shop.house_rules import rules

ResultT = TypeVar("ResultT")
Values = Mapping[str, Any]


class Follower(Protocol):
    """Whoever shows a bench and wants to hear of a new state."""

    def follow(self, names: frozenset[str]) -> None:
        """Show the bench as it is; `names` says which values or settings are new."""
        ...


@dataclass(frozen=True, slots=True)
class State(Generic[ResultT]):
    """Values and what they come to: always a pair that was worked out together."""

    values: dict[str, Any]
    result: ResultT


class Bench(ABC, Generic[ResultT]):
    """Base of all benches.

    A bench states its `controls` and gives ``work_out``, ``scene`` and ``measures``; it may name
    `cautions` (of ``shop.cautions``) and tell ``sources``. It can be used from code alone; shown
    in a notebook it becomes a live view above a still picture.

    Parameters
    ----------
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.
    **values
        Start of any control: shop text, or a number in mm, deg, m/min, mm/rev, rev/min.

    Raises
    ------
    SeatworkError
        If a value cannot be read, is out of range, or the values do not go together.
    """

    name: ClassVar[str]
    title: ClassVar[str]
    controls: ClassVar[tuple[Control, ...]]
    cautions: ClassVar[tuple[str, ...]] = ()

    def __init__(
        self,
        *,
        system: str | None = None,
        palette: str | None = None,
        projector: bool = False,
        **values: Any,
    ) -> None:
        self._system = system or rules().word("display.system")
        self._palette, self._projector = palette, projector
        self.look()
        self._kept: State[ResultT] | None = None
        self._followers: list[Follower] = []
        begin = {control.name: control.start for control in self.controls}
        self._start = self._state = self._worked_out(begin | self._read(values))

    @abstractmethod
    def work_out(self, values: Values) -> ResultT:
        """Return what the values come to; raise `SeatworkError` if they do not go together."""

    @abstractmethod
    def scene(self, result: ResultT, look: Look) -> Scene[ResultT]:
        """Return the scene that shows a result."""

    @abstractmethod
    def measures(self, result: ResultT) -> tuple[Measure, ...]:
        """Return the readouts of a result."""

    def sources(self, result: ResultT) -> tuple[str, ...]:
        """Return one line per number of a result: what, value, source, house rule."""
        return ()

    @property
    def values(self) -> dict[str, Any]:
        """Every control's value by name, a copy; lengths [mm], angles [deg]."""
        return dict(self._state.values)

    @property
    def result(self) -> ResultT:
        """What the values come to."""
        return self._state.result

    @property
    def drawing(self) -> Drawing:
        """A still drawing of the present state, made anew."""
        return self.scene(self.result, self.look()).draw()

    @property
    def text(self) -> str:
        """What the picture shows, with all its numbers."""
        return self.drawing.text

    @property
    def system(self) -> str:
        """Unit system named first."""
        return self._system

    @property
    def comparing(self) -> bool:
        """Whether a former state is kept for comparison."""
        return self._kept is not None

    @property
    def kept(self) -> ResultT | None:
        """What the kept state came to; None if none is kept."""
        return self._kept.result if self._kept else None

    def set(self, **values: Any) -> "Bench[ResultT]":
        """Change some values, all or none.

        Parameters
        ----------
        **values
            By control: shop text, or a number in mm, deg, m/min, mm/rev, rev/min.

        Returns
        -------
        Bench
            The bench itself.

        Raises
        ------
        SeatworkError
            As at the start; the bench then stays as it was.
        """
        self._go(self._worked_out(self._state.values | self._read(values)))
        return self

    def reset(self) -> "Bench[ResultT]":
        """Go back to the values the bench began with."""
        self._go(self._start)
        return self

    def use(self, system: str) -> "Bench[ResultT]":
        """Name another unit system first; the part stays what it is."""
        Look(system=system)
        self._system = system
        self._tell(frozenset({"system"}))
        return self

    def keep(self) -> "Bench[ResultT]":
        """Keep the present state for comparison."""
        self._kept = self._state
        self._tell(frozenset({"kept"}))
        return self

    def forget(self) -> "Bench[ResultT]":
        """Keep no state for comparison any longer."""
        self._kept = None
        self._tell(frozenset({"kept"}))
        return self

    def look(self, *, dark: bool = False) -> Look:
        """Return how pictures of this bench look, on a dark page or a light one."""
        palette = self._palette or ("dark" if dark else "light")
        return Look(system=self._system, palette=palette, projector=self._projector)

    def attach(self, follower: Follower) -> None:
        """Let someone hear of every new state."""
        self._followers.append(follower)

    def detach(self, follower: Follower) -> None:
        """Let someone hear no longer."""
        if follower in self._followers:
            self._followers.remove(follower)

    def readouts(self) -> list[list[str]]:
        """Return rows of label and readout; while comparing also kept readout and change."""
        kept = self.measures(self._kept.result) if self._kept else None
        return table(self.measures(self.result), kept, self._system)

    def code(self) -> str:
        """Return one line that rebuilds the bench as it stands."""
        values = self._state.values
        given = {c.name: values[c.name] for c in self.controls if values[c.name] != c.start}
        brought = self._read(given)  # one value may bring others, also away from their start
        changed = [
            f"{c.name}={c.written(values[c.name], self._system)}"
            for c in self.controls
            if c.name in given or values[c.name] != brought.get(c.name, c.start)
        ]
        if self._system != rules().word("display.system"):
            changed.append(f"system={self._system!r}")
        return f"benches.{self.name}({', '.join(changed)})"

    def __repr__(self) -> str:
        return self.text

    def _ipython_display_(self) -> None:
        from seatwork.benches.view import show

        show(self)

    def _read(self, given: Values) -> dict[str, Any]:
        """Return the values given, read and checked one by one."""
        controls = {control.name: control for control in self.controls}
        for name in given:
            if name not in controls:
                raise _no_control(name, list(controls))
        return {name: controls[name].read(value, self._system) for name, value in given.items()}

    def _worked_out(self, values: dict[str, Any]) -> State[ResultT]:
        return State(values, self.work_out(values))

    def _go(self, state: State[ResultT]) -> None:
        """Take on a state; whoever cannot show it makes the bench stay as it was."""
        before, self._state = self._state, state
        names = frozenset(n for n, v in state.values.items() if v != before.values[n])
        try:
            self._tell(names)
        except Exception:
            self._state = before
            self._tell(names)
            raise

    def _tell(self, names: frozenset[str]) -> None:
        for follower in tuple(self._followers):
            follower.follow(names)


def _no_control(name: str, known: list[str]) -> SeatworkError:
    near = get_close_matches(name, known, n=1)
    remedy = f"perhaps {near[0]} is meant" if near else f"set one of {', '.join(known)}"
    return SeatworkError(name, "this bench has no such control", remedy)
