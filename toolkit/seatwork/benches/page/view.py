"""A bench on the page: a live view and its controls above a still that stays in the file."""

import logging
from collections.abc import Callable, Iterator
from typing import Any

import ipywidgets
from IPython.display import display

from seatwork.benches.build.controls import Number
from seatwork.benches.build.setup import Setup
from seatwork.benches.page.hearing import Hearing
from seatwork.benches.page.notes import Notes
from seatwork.benches.page.panel import Panel
from seatwork.benches.page.rows import ControlRow, RowState
from seatwork.drawings.scene import GhostScene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.live.slots import place
from seatwork.live.view import LiveView
from seatwork.units import explain

LIVE_ONLY = "application/vnd.jupyter.widget-view+json"
log = logging.getLogger(__name__)


def show(bench: Setup[Any]) -> None:
    """Show a bench below the running cell: the live view, then the still."""
    view = BenchView(bench)
    place(view)
    view.display()


class BenchView:
    """Ties one bench to the widgets that show and set it.

    Parameters
    ----------
    bench : Setup
        Followed until `close`.
    dark : bool
        Whether the page is known to be dark; else it says so once it shows the bench.
    """

    def __init__(self, bench: Setup[Any], *, dark: bool = False) -> None:
        self.bench = bench
        self._dark, self._scale, self._number = dark, 1.0, 0
        self._still: Any = None
        self._stands: object = None
        self._asked: tuple[str, str] | None = None
        self.live = LiveView(self._heard)
        with bench.as_read:
            self._redraw()
        self.panel = Panel(bench, self.attempt, self.ask, can_keep=self._ghostly)
        self.panel.box.add_class("seatwork-panel")
        with bench.as_read:
            self.notes = Notes(bench)
        self.box = ipywidgets.VBox([self.live, self.panel.box, self.notes])
        self.box.add_class("seatwork-bench")
        self._hear()
        bench.attach(self)

    def _hear(self) -> None:
        """Put the hearing box among the buttons, where the bench can be heard."""
        if self.bench.heard is None:
            return
        self.hearing = Hearing(self.bench.heard)
        turns = self.panel.box.children[0]
        turns.children = [*turns.children, self.hearing]
        self.bench.attach(self.hearing)

    def display(self) -> None:
        """Put out the live view, without any text, and the still with its text."""
        view = {"version_major": 2, "version_minor": 0, "model_id": self.box.model_id}
        display({LIVE_ONLY: view}, raw=True)  # type: ignore[no-untyped-call,unused-ignore]
        self._stands = self._state()
        self._still = display(self.bench.drawing, display_id=True)  # type: ignore[no-untyped-call,unused-ignore]

    def follow(self, names: frozenset[str]) -> None:
        """Show the bench as it is: by a move where that will do, else by a new picture."""
        if names & self._redrawing():
            self._redraw()
        else:
            text, changes = self.picture.move(self._part(self.bench.result))
            if "kept" in names:
                changes["kept"] = self._ghost()
            pixels = self.picture.pixels if "pixels" in changes else b""
            changes["glide"] = bool(names) and names <= self._gliding
            rows = self._answered(self.panel.follow(names))
            self.live.follow(changes | self._beside(text) | {"tell": rows}, pixels)
            return
        self.live.follow({"tell": self._answered(self.panel.follow(names))})

    def ask(self, row: ControlRow, wanted: float | str, asked: str) -> None:
        """Set a row's number; picture and answer travel together, trouble with an answer too."""
        self._asked = row.number.name, asked
        trouble = self.attempt(lambda: self.bench.set(**{row.number.name: wanted}))
        if self._asked:
            self._asked = None
            value = self.bench.values[row.number.name]
            self.live.follow(
                {"tell": {row.number.name: row.shown(value, asked, trouble)}, "quiet": True}
            )

    def _answered(self, rows: dict[str, RowState]) -> dict[str, RowState]:
        """Return what rows should show, the answer that a page waits for among it."""
        if self._asked and self._asked[0] in rows:
            name, asked = self._asked
            rows[name] = rows[name] | {"asked": asked}
            self._asked = None
        return rows

    def attempt(self, deed: Callable[[], Any]) -> str:
        """Do something to the bench; return, and show, one sentence if it cannot be."""
        try:
            deed()
        except SeatworkError as error:
            trouble = explain(error, self.bench.system)
        except Exception as error:
            log.exception("a bench could not follow its controls")
            trouble = f"The bench has a fault ({type(error).__name__}); the last picture stays."
        else:
            return ""
        self.live.follow({"trouble": trouble, "quiet": True})
        return trouble

    def close(self) -> None:
        """Let go of the bench, the page and every widget."""
        self.bench.detach(self)
        if self.bench.heard is not None:
            self.bench.detach(self.hearing)
        for widget in list(_tree(self.box)):
            widget.close()

    def _redrawing(self) -> frozenset[str]:
        return frozenset(c.name for c in self.bench.controls if c.redraws) | {"system"}

    @property
    def _gliding(self) -> frozenset[str]:
        return frozenset(c.name for c in self.bench.controls if isinstance(c, Number) and c.glides)

    @property
    def _ghostly(self) -> bool:
        return isinstance(self._scene, GhostScene)

    def _redraw(self) -> None:
        """Make a new picture in the present look."""
        look = self.bench.look(dark=self._dark)
        self._scene = self.bench.scene(self.bench.result, look)
        self._gives = self.bench.shows(self.bench.result)[1]
        self.picture = LivePicture(self._scene, self._scale)
        self._number += 1
        page = self.picture.page()
        page |= self._beside(self.picture.drawing.text)
        page |= {"title": self.bench.title, "palette": look.palette, "projector": look.projector}
        page["kept"] = self._ghost()
        self.live.show(page, self.picture.layers, self.picture.pixels)

    def _beside(self, text: str) -> dict[str, Any]:
        """Return what stands beside the picture."""
        self._text = text
        return {
            "number": self._number,
            "text": text,
            "rows": self.bench.readouts(),
            "compared": self.bench.comparing,
            "trouble": "",
        }

    def _ghost(self) -> list[str]:
        """Return the outlines of the kept state; the scene is back at the present one after."""
        if not self.bench.comparing:
            return []
        self.picture.move(self._part(self.bench.kept))
        outlines = self.picture.ghost()
        self.picture.move(self._part(self.bench.result))
        return outlines

    def _heard(self, content: dict[str, Any]) -> None:
        """Hear the page: it has joined, it looks so, or nothing has moved for a while."""
        with self.bench.as_read:
            if "hello" in content:
                self._greet()
            if "page" in content:
                self._fit(**content["page"])
            if "settled" in content:
                self._renew_still()
                self.notes.compare(self.bench)

    def _greet(self) -> None:
        """Tell a page that joined the state of the moment."""
        self.panel.greet()
        page = self.picture.page()
        state = {str(number): state for number, state in enumerate(page["state"])}
        self.live.follow(
            {"move": state, "letters": page["letters"], "kept": self._ghost(), "quiet": True}
            | self._beside(self._text)
        )

    def _fit(self, dark: bool, scale: float) -> None:
        """Draw again for a dark page, or more sharply for a larger one."""
        sharper, self._scale = scale != self._scale, float(scale)
        darker, self._dark = dark != self._dark, dark
        if darker and self.bench.look(dark=True) != self.bench.look(dark=False):
            self._redraw()
        elif sharper:
            self.live.layers = self.picture.still(self._scale)

    def _part(self, result: Any) -> Any:
        """Return what the picture draws of a result."""
        return self._gives(result, self.bench.system)

    def _state(self) -> object:
        return self.bench.values, self.bench.system

    def _renew_still(self) -> None:
        """Let still and sources below show what the live view has settled on."""
        if self._still is not None and self._stands != self._state():
            self._stands = self._state()
            self._still.update(self.bench.drawing)
            self.notes.renew(self.bench)


def _tree(widget: Any) -> Iterator[Any]:
    """Yield a widget, all below it, and the models of layout and style that go with each."""
    for child in getattr(widget, "children", ()):
        yield from _tree(child)
    for name in ("layout", "style"):
        if hasattr(widget, name):
            yield getattr(widget, name)
    yield widget
