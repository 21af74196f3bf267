"""One slider of a bench recorded at every step, from the true live picture.

Nothing is worked out between steps: a page that plays a recording shows what the live bench
shows, words and readouts included.
"""

from base64 import b64encode
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from seatwork.benches.build.controls import Control, Number, Switch
from seatwork.benches.build.setup import Setup
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.units import explain

MOST_IMAGES = 40
"""Steps of a slider whose every frame is an image of its own; a longer one is too heavy."""
SCALE = 1.5
"""Pixels of the still ground per pixel of the figure [1]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Recording:
    """A bench whose main slider can be played.

    Parameters
    ----------
    control : Number
        The slider.
    opens : dict
        Switches that had to be turned first, such as "cut it open".
    told : dict
        What a page needs, as JSON data: picture, ground, frames, words.
    """

    control: Number
    opens: dict[str, Any]
    told: dict[str, Any]

    def __repr__(self) -> str:
        return f"<Recording of {self.control.label.lower()}: {len(self.told['frames'])} steps>"


def record(bench: Setup[Any]) -> Recording | None:
    """Record the main slider of a bench: the first that is in sight once the bench is opened.

    Parameters
    ----------
    bench : Setup
        It is set to and fro, and left at its start.

    Returns
    -------
    Recording or None
        None for a bench of choices, which no slider moves.
    """
    start = bench.values
    found = _main_slider(bench)
    if found is None:
        return None
    control, opens = found
    bench.set(**opens)
    try:
        told = _told(bench, control) | {"opens": _button(bench, opens), "turned": opens}
    finally:
        bench.set(**start)
    return Recording(control=control, opens=opens, told=told)


def _main_slider(bench: Setup[Any]) -> tuple[Number, dict[str, Any]] | None:
    """Return the main slider, and which switches must be turned to see it."""
    controls = {control.name: control for control in bench.controls}
    for control in bench.controls:
        if not isinstance(control, Number) or control.folded or control.redraws:
            continue
        opens = _opening(bench, controls, control)
        if opens is not None and not _too_heavy(bench, control, opens):
            return control, opens
    return None


def _opening(
    bench: Setup[Any], controls: dict[str, Control], control: Control
) -> dict[str, Any] | None:
    """Return the switches to turn before a control shows; None if a choice must be made."""
    turned: dict[str, Any] = {}
    while control.needs is not None:
        name, wanted = control.needs if isinstance(control.needs, tuple) else (control.needs, True)
        control = controls[name]
        if bench.values[name] == wanted:
            continue
        if not isinstance(control, Switch):
            return None
        turned[name] = True
    return turned


def _too_heavy(bench: Setup[Any], control: Number, opens: dict[str, Any]) -> bool:
    """Tell whether the scene has a moving image, and the slider more steps than images may be."""
    first, last = control.steps(bench.system, bench.values[control.name])
    if last - first < MOST_IMAGES:
        return False
    start = bench.values
    bench.set(**opens)
    try:
        with bench.as_read:
            return bool(LivePicture(bench.scene(bench.result, bench.look())).pixels)
    finally:
        bench.set(**start)


class _Follower:
    """Follows a bench as its live view does, and keeps the state of every element.

    Parameters
    ----------
    bench : Setup
        Followed from now on.
    """

    def __init__(self, bench: Setup[Any]) -> None:
        self.bench = bench
        with bench.as_read:
            self.picture = LivePicture(bench.scene(bench.result, bench.look()), scale=SCALE)
        self.page = self.picture.page()
        self.text = self.picture.drawing.text
        self.base = [dict(state) for state in self.page["state"]]
        self.now = [dict(state) for state in self.base]

    def follow(self, names: frozenset[str]) -> None:
        """Move the picture to the bench's result."""
        del names  # nothing that needs another picture is set here
        bench = self.bench
        part = bench.shows(bench.result)[1](bench.result, bench.system)
        self.text, changes = self.picture.move(part)
        for number, change in changes["move"].items():
            self.now[int(number)] |= change

    def frame(self) -> dict[str, Any]:
        """Return what differs from the first state, words and readouts."""
        found = {
            "move": _differing(self.base, self.now),
            "text": self.text,
            "rows": self.bench.readouts(),
        }
        return found | ({"pixels": _written(self.picture.pixels)} if self.picture.pixels else {})


def _told(bench: Setup[Any], control: Number) -> dict[str, Any]:
    """Return what a page needs to play a slider."""
    follower, value = _Follower(bench), bench.values[control.name]
    told = {
        "title": bench.title,
        "control": control.name,
        "label": control.label,
        "first": control.steps(bench.system, value)[0],
        "start": control.step(value, bench.system),
        "paging": control.page,
        "glides": control.glides,
        "layers": [_written(layer) for layer in follower.picture.layers],
        "others": [one.label for one in bench.controls if _is_setting(one, control)],
        "before": follower.frame() | {"shown": control.sort.show(value, bench.system)},
    }
    bench.attach(follower)
    try:
        told["frames"] = list(_frames(bench, control, follower))
    finally:
        bench.detach(follower)
    return told | {"page": follower.page | {"letters": follower.picture.page()["letters"]}}


def _is_setting(one: Control, control: Number) -> bool:
    return one is not control and not (isinstance(one, Switch) and one.back is not None)


def _frames(bench: Setup[Any], control: Number, follower: _Follower) -> Iterator[dict[str, Any]]:
    """Yield each step as the live bench shows it, or the sentence by which it is refused."""
    first, last = control.steps(bench.system, bench.values[control.name])
    for step in range(first, last + 1):
        value = control.at(step, bench.system)
        shown = {"shown": control.sort.show(value, bench.system)}
        try:
            bench.set(**{control.name: value})
        except SeatworkError as error:
            yield shown | {"trouble": explain(error, bench.system)}
        else:
            yield shown | follower.frame()


def _differing(base: list[dict[str, Any]], now: list[dict[str, Any]]) -> dict[str, Any]:
    """Return, by element, what is not as it was at first."""
    found = {}
    for number, (before, state) in enumerate(zip(base, now, strict=True)):
        change = {name: value for name, value in state.items() if before.get(name) != value}
        if change:
            found[str(number)] = change
    return found


def _button(bench: Setup[Any], opens: dict[str, Any]) -> str:
    """Return what the button says that shows the slider; empty where it is in sight."""
    labels = [one.label for one in bench.controls if one.name in opens]
    return labels[0] if labels else ""


def _written(png: bytes) -> str:
    return b64encode(png).decode("ascii")
