"""A bench in a page's own Python: the bench and its scene unchanged, on plain things."""

import json
from collections.abc import Callable
from typing import Any

from seatwork.takehome.inside.followed import Followed
from seatwork.takehome.inside.stand_ins import BOX, stand_in

Told = dict[str, Any]
OPEN: dict[str, "LiveBench"] = {}
"""The benches of the page, by the name of their block."""
LETTERS: dict[str, dict[str, int]] = {}
"""By font the width of each letter [1/1000 em]."""


class LiveBench:
    """One bench of the page.

    Parameters
    ----------
    told : dict
        Its name, the values it is called with, and its pictures.
    """

    def __init__(self, told: Told) -> None:
        from seatwork import benches

        self.told = told
        self.bench: Any = getattr(benches, told["name"])(**told["values"])
        self._redraws = frozenset(told["redraws"])
        self._answer: Told = {}
        with self.bench.as_read:
            self._draw()
        self.bench.attach(self)

    def follow(self, names: frozenset[str]) -> None:
        """Move the picture to the bench's result, or draw another."""
        if names & self._redraws:
            self._draw()
            return
        bench = self.bench
        text = self._scene.move(bench.shows(bench.result)[1](bench.result, bench.system))
        self._answer = {"text": text, "move": self._followed.changes()}

    def set(self, values: dict[str, Any]) -> Told:
        """Set some values; tell what changed, or the sentence of refusal."""
        from seatwork.errors import SeatworkError
        from seatwork.units import explain

        self._answer = {}
        try:
            self.bench.set(**{name: self._wanted(name, one) for name, one in values.items()})
        except SeatworkError as error:
            return self._answer | {"trouble": explain(error, self.bench.system)}
        return self.now()

    def now(self) -> Told:
        """Return the picture's changes, the readouts, and the controls as they are."""
        controls = {control.name: self._control(control) for control in self.bench.controls}
        return self._answer | {
            "trouble": "", "rows": self.bench.readouts(), "controls": controls,
        }  # fmt: skip

    def reset(self) -> Told:
        """Go back to the start."""
        self._answer = {}
        self.bench.reset()
        return self.now()

    def greet(self) -> Told:
        """Return everything about the bench as it is, for a page that has nothing yet."""
        self._answer = {}
        with self.bench.as_read:
            self._draw()
        specs = {control.name: _spec(control) for control in self.bench.controls}
        return self.now() | {"title": self.bench.title, "specs": specs}

    def _wanted(self, name: str, one: Any) -> Any:
        """Return a value as the bench takes it: a step of a slider, or what was typed or chosen."""
        control = next((c for c in self.bench.controls if c.name == name), None)
        if isinstance(one, dict):
            assert control is not None
            return control.at(int(one["step"]), self.bench.system)
        return one

    def _draw(self) -> None:
        """Draw the scene that the values want, from the start, as the notebook's view does."""
        bench = self.bench
        key = json.dumps([bench.values[name] for name in self.told["turns"]])
        number = self.told["keys"][key]
        told = self.told["pictures"][number]
        self._scene = bench.scene(bench.result, bench.look())
        drawing = self._scene.draw()
        (axes,) = drawing.figure.axes
        self._followed = Followed(axes.moving, told["reads"], _widths_of(told["fonts"]))
        self._answer = {"picture": number, "text": drawing.text, "move": self._followed.changes()}

    def _control(self, control: Any) -> Told:
        """Return a control as it is now."""
        bench, value = self.bench, self.bench.values[control.name]
        told = {"seen": self._seen(control), "value": value}
        if _sort(control) != "number":
            return told
        low, high = control.steps(bench.system, value)
        return told | {
            "low": low, "high": high, "step": control.step(value, bench.system),
            "text": control.sort.boxed(value, bench.system),
            "value": control.sort.both(value, bench.system),
        }  # fmt: skip

    def _seen(self, control: Any) -> bool:
        """Tell whether what a control needs is set, and in sight itself."""
        if control.needs is None:
            return True
        name, wanted = control.needs if isinstance(control.needs, tuple) else (control.needs, True)
        other = next(one for one in self.bench.controls if one.name == name)
        return bool(self.bench.values[name] == wanted) and self._seen(other)


def _sort(control: Any) -> str:
    return {"Number": "number", "Switch": "switch", "TextLine": "text"}.get(
        type(control).__name__, "choice"
    )


def _spec(control: Any) -> Told:
    """Return what of a control never changes."""
    sort = _sort(control)
    told = {"sort": sort, "label": control.label, "folded": control.folded}
    if sort == "number":
        return told | {"page": control.page, "glides": control.glides}
    if sort == "switch":
        return told | {"back": control.back or ""}
    if sort == "choice":
        options = control.options if hasattr(control, "options") else control.listed()
        return told | {"options": list(options)}
    return told


def _widths_of(fonts: list[str]) -> Callable[[int], Callable[[str], int]]:
    """Return what gives, for the number of a font, what measures a line in it."""

    def width_of(font: int) -> Callable[[str], int]:
        wide = LETTERS[fonts[font]]
        box = wide[BOX]
        return lambda line: sum(wide.get(letter, box) for letter in line)

    return width_of


def begin(given: Told) -> Told:
    """Take the letters, and let plain things stand in for what the page has not."""
    LETTERS.update(given["letters"])
    stand_in(given["widths"], given["pairs"])
    return {}


def open_bench(given: Told) -> Told:
    """Open a bench of the page; `values` are those that a recorded slider was moved to."""
    bench = OPEN[given["name"]] = LiveBench(given["told"])
    if given.get("values"):
        bench.set(given["values"])
    return bench.greet()


CALLS: dict[str, Callable[[Told], Told]] = {
    "begin": begin,
    "open": open_bench,
    "set": lambda given: OPEN[given["name"]].set(given["values"]),
    "reset": lambda given: OPEN[given["name"]].reset(),
}


def call(name: str, text: str) -> str:
    """Answer what the page asks."""
    return json.dumps(CALLS[name](json.loads(text)))
