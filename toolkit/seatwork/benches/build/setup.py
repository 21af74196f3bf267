"""A setup: controls with their values and what they come to; no page and no browser."""

import inspect
import re
from abc import ABC, abstractmethod
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any, ClassVar, Generic, Protocol, TypeVar

from seatwork.benches.build.controls import Control
from seatwork.benches.build.measures import Measure, table
from seatwork.benches.build.signature import documented, signature, starts
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.errors import SeatworkError
from seatwork.shop.folder import AsRead
from seatwork.shop.house.house_rules import rules

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


class Setup(ABC, Generic[ResultT]):
    """What every bench is: controls, the values they have, and what these come to.

    A bench states its `title`, its `controls` and its `view`, and gives ``work_out`` and
    ``measures``. It may say what one value brings with it (``brings``), what its view draws of a
    result (``part``, or ``shows`` where there are several views), where its numbers come from
    (``sources``), and name its `cautions`.

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

    title: ClassVar[str]
    controls: ClassVar[tuple[Control, ...]] = ()
    view: ClassVar[type[Any]] = object  # a bench that builds its scene itself states none
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press")
    heard: Callable[[], tuple[Any, str]] | None = None
    """Gives a sound and what is to be said of it, where a bench can be heard."""

    def __init_subclass__(cls, **_: Any) -> None:
        """Give the class the signature and the parameters that its controls say."""
        cls.name = cls.__dict__.get("name") or _spaced(cls.__name__)
        if cls.__dict__.get("controls"):
            cls.__signature__ = signature(cls.controls)  # type: ignore[attr-defined]
            cls.__doc__ = documented(inspect.cleandoc(cls.__doc__ or ""), cls.controls)

    name: ClassVar[str]

    def __init__(
        self,
        *,
        system: str | None = None,
        palette: str | None = None,
        projector: bool = False,
        **values: Any,
    ) -> None:
        self.as_read = AsRead()
        with self.as_read:
            self._system = system or rules().word("display.system")
        self._palette, self._projector = palette, projector
        self.look()
        self._kept: State[ResultT] | None = None
        self._followers: list[Follower] = []
        self._begin = self._read(starts(self.controls), {})
        self._start = self._state = self._worked_out(self._begin | self._read(values, self._begin))

    @abstractmethod
    def work_out(self, *args: Any, **values: Any) -> ResultT:
        """Return what the values come to; raise `SeatworkError` if they do not go together."""

    def brings(self, given: Values, now: Values) -> Values:
        """Return values that those given bring along, such as a screw its hole.

        Parameters
        ----------
        given : mapping
            Values set by hand.
        now : mapping
            All values, those given among them.
        """
        del given, now  # most values bring none
        return {}

    def part(self, result: ResultT, system: str) -> Any:
        """Return what the view draws of a result; the result itself unless a bench says so."""
        del system  # most views write their own numbers
        return result

    def shows(self, result: ResultT) -> tuple[type[Any], Callable[[ResultT, str], Any]]:
        """Return the view of a result and what gives that view its part; `view` and `part`."""
        del result  # most benches have one view
        return self.view, self.part

    def scene(self, result: ResultT, look: Look) -> Scene[Any]:
        """Return the view of a result as a scene."""
        view, part = self.shows(result)
        scene: Scene[Any] = view(part(result, look.system), look)
        return scene

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
    def drawn(self) -> Any:
        """What the view draws of the present state."""
        with self.as_read:
            return self.shows(self.result)[1](self.result, self._system)

    @property
    def drawing(self) -> Drawing:
        """A still drawing of the present state, made anew."""
        with self.as_read:
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

    def set(self, **values: Any) -> "Setup[ResultT]":
        """Change some values, all or none.

        Parameters
        ----------
        **values
            By control: shop text, or a number in mm, deg, m/min, mm/rev, rev/min.

        Returns
        -------
        Setup
            The setup itself.

        Raises
        ------
        SeatworkError
            As at the start; the bench then stays as it was.
        """
        now = self._state.values
        self._go(self._worked_out(now | self._read(values, now)))
        return self

    def reset(self) -> "Setup[ResultT]":
        """Go back to the values the bench began with."""
        self._go(self._start)
        return self

    def use(self, system: str) -> "Setup[ResultT]":
        """Name another unit system first; the part stays what it is."""
        Look(system=system)
        self._system = system
        self._notify(frozenset({"system"}))
        return self

    def keep(self) -> "Setup[ResultT]":
        """Keep the present state for comparison."""
        self._kept = self._state
        self._notify(frozenset({"kept"}))
        return self

    def forget(self) -> "Setup[ResultT]":
        """Keep no state for comparison any longer."""
        self._kept = None
        self._notify(frozenset({"kept"}))
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
        with self.as_read:
            kept = self.measures(self._kept.result) if self._kept else None
            return table(self.measures(self.result), kept, self._system)

    def code(self) -> str:
        """Return one line that rebuilds the bench as it stands; what others bring is left out."""
        values: dict[str, Any] = self._state.values
        given: dict[str, Any] = {}
        while (built := self._begin | self._read(given, self._begin)) != values:
            given |= {n: v for n, v in values.items() if built[n] != v}
        for name in tuple(given):
            without = {n: v for n, v in given.items() if n != name}
            if self._begin | self._read(without, self._begin) == values:
                given = without
        lines = [
            f"{c.name}={c.written(given[c.name], self._system)}"
            for c in self.controls
            if c.name in given
        ]
        if self._system != rules().word("display.system"):
            lines.append(f"system={self._system!r}")
        return f"benches.{self.name}({', '.join(lines)})"

    def __repr__(self) -> str:
        return self.text

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Return the values given, read and checked one by one, and what they bring."""
        controls = {control.name: control for control in self.controls}
        for name in given:
            if name not in controls:
                raise _no_control(name, list(controls))
        with self.as_read:
            read = {
                name: controls[name].read(value, self._system)
                for name, value in given.items()
                if value is not None or controls[name].start is not None
            }
            brought = self.brings(read, {**(now or {}), **read})
            return {n: controls[n].read(v, self._system) for n, v in brought.items()} | read

    def _worked_out(self, values: dict[str, Any]) -> State[ResultT]:
        with self.as_read:
            return State(values, self.work_out(**values))

    def _go(self, state: State[ResultT]) -> None:
        """Take on a state; whoever cannot show it makes the bench stay as it was."""
        before, self._state = self._state, state
        names = frozenset(n for n, v in state.values.items() if v != before.values[n])
        try:
            self._notify(names)
        except Exception:
            self._state = before
            self._notify(names)
            raise

    def _notify(self, names: frozenset[str]) -> None:
        with self.as_read:
            for follower in tuple(self._followers):
                follower.follow(names)


def _no_control(name: str, known: list[str]) -> SeatworkError:
    near = get_close_matches(name, known, n=1)
    remedy = f"perhaps {near[0]} is meant" if near else f"set one of {', '.join(known)}"
    return SeatworkError(name, "this bench has no such control", remedy)


def _spaced(name: str) -> str:
    """Write a class's name as its bench is called: ``WhichSeat`` is which_seat."""
    return re.sub(r"(?<!^)(?=[A-Z])", "_", name).lower()
