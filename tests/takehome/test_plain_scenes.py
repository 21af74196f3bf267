"""A bench in a page's own Python shows, setting for setting, what the true live bench shows."""

import json
import random
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from seatwork.benches.build.controls import Choice, Number, Pick, Switch
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.takehome.calls import BenchCall
from seatwork.takehome.inside import plain_arrays
from seatwork.takehome.live_told import LIVE, letters, live_told
from seatwork.takehome.package_block import live_files
from seatwork.units import explain

SCRIPT = Path(__file__).parent / "plain_process.py"
FEW, MANY = 30, 1000


class TrueView:
    """Follows a bench as the notebook's live view does: by a move, or by another picture."""

    def __init__(self, bench: Any) -> None:
        self.bench = bench
        self.redraws = {control.name for control in bench.controls if control.redraws}
        self.draw()
        bench.attach(self)

    def draw(self) -> None:
        """Draw another picture."""
        with self.bench.as_read:
            self.picture = LivePicture(self.bench.scene(self.bench.result, self.bench.look()))
        self.text = self.picture.drawing.text
        self.state = [dict(one) for one in self.picture.page()["state"]]

    def follow(self, names: frozenset[str]) -> None:
        """Move the picture, or draw another."""
        if names & self.redraws:
            self.draw()
            return
        result = self.bench.result
        part = self.bench.shows(result)[1](result, self.bench.system)
        self.text, changes = self.picture.move(part)
        for number, change in changes["move"].items():
            self.state[int(number)] |= change

    def after(self, values: dict[str, Any]) -> Any:
        """Set some values; return text, attributes and readouts, or the sentence of refusal."""
        try:
            self.bench.set(**values)
        except SeatworkError as error:
            return explain(error, self.bench.system)
        return json.loads(json.dumps([self.text, self.state, self.bench.readouts()]))


def random_values(bench: Any, rng: random.Random) -> dict[str, Any]:
    """Turn one to three controls to any place of theirs; a slider is given as its step."""
    found: dict[str, Any] = {}
    for control in rng.sample(bench.controls, min(len(bench.controls), rng.choice((1, 1, 2, 3)))):
        if isinstance(control, Number):
            low, high = control.steps(bench.system, bench.values[control.name])
            found[control.name] = {"step": rng.randint(low, high)}
        elif isinstance(control, Switch):
            found[control.name] = rng.random() < 0.7
        elif isinstance(control, Choice):
            found[control.name] = rng.choice(control.options)
        elif isinstance(control, Pick):
            found[control.name] = rng.choice(control.listed())
    return found


def plain_told(folder: Path, told: Any, settings: list[dict[str, Any]]) -> list[Any]:
    """Return what the page's Python makes of the settings, in a process without any library."""
    for name, content in live_files().items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    asked = json.dumps([told, letters()["told"], settings])
    (folder / "asked.json").write_text(asked, encoding="utf-8")
    subprocess.run([sys.executable, "-I", "-S", str(SCRIPT), str(folder)], check=True, timeout=600)
    found, loaded = json.loads((folder / "told.json").read_text(encoding="utf-8"))
    assert loaded == []
    return found


def asked_and_true(name: str, count: int) -> tuple[list[dict[str, Any]], list[Any]]:
    """Return random settings of a bench, as a page asks for them, and what the true one shows."""
    call = BenchCall(name=name, values={})
    view, rng = TrueView(call.bench()), random.Random(f"{name} {count}")
    controls = {control.name: control for control in view.bench.controls}
    settings, wanted = [], []
    for _ in range(count):
        values = random_values(view.bench, rng)
        settings.append(values)
        wanted.append(view.after({
            one: controls[one].at(given["step"], "inch") if isinstance(given, dict) else given
            for one, given in values.items()
        }))  # fmt: skip
    assert sum(isinstance(one, list) for one in wanted) > count / 2  # not refused
    assert len({json.dumps(one) for one in wanted}) > count / 4  # and not the same again
    return settings, wanted


def compare(name: str, count: int, folder: Path) -> None:
    """Hold one bench's plain pictures to its true ones at random settings."""
    settings, wanted = asked_and_true(name, count)
    told = live_told(BenchCall(name=name, values={}))
    found = plain_told(folder, told, settings)
    for values, plain, true in zip(settings, found, wanted, strict=True):
        assert plain == true, f"{name} after {values}"


@pytest.mark.slow
@pytest.mark.parametrize("name", LIVE)
def test_a_plain_scene_shows_what_the_live_one_shows(name: str, tmp_path: Path) -> None:
    """After each of thirty changes at random, one upon the other."""
    compare(name, FEW, tmp_path)


@pytest.mark.long
@pytest.mark.parametrize("name", LIVE)
def test_a_plain_scene_shows_the_same_at_a_thousand_settings(name: str, tmp_path: Path) -> None:
    """Attributes, words, readouts and sentences of refusal, one upon the other."""
    compare(name, MANY, tmp_path)


@pytest.mark.parametrize("name", ["chatter", "spotface", "note", "which_seat"])
def test_other_benches_stay_recorded(name: str) -> None:
    """They need arrays, or an image, or each choice is another picture."""
    assert live_told(BenchCall(name=name, values={})) is None


def test_plain_arrays_do_what_numpy_does() -> None:
    """Numpy itself is asked; what a scene writes as `np.thing` must mean the same in both."""
    import numpy

    def told(np: Any) -> list[Any]:
        points = np.array([(1.0, 2.0), (3.0, -4.0), (0.5, 8.0)])
        row = np.linspace(0.0, 5.0, 6)
        return [
            points[::-1] * np.array([-1.0, 1.0]) + np.array([[1.0, 2.0]]),
            points[-1, 0], points[:1], points[1:, 1], points.T, points.mean(axis=0),
            np.concatenate([points, points[:1]]), np.column_stack([row, 2.0 - row]),
            np.maximum(points, (-np.inf, 0.5)), np.where((row >= 1) & (row <= 3), row, -1.0),
            np.diff(points, axis=0), np.arange(0.5, 3.0, 0.5), np.geomspace(3.0, 60.0, 25),
            np.clip(row, 1.0, 4.0), np.hypot(points[:, 0], points[:, 1])[:, None] / points,
            points[0] @ points[1], np.transpose([(1, 2), (3, 4)]), np.subtract((1, 2), (3, 5)),
            row[row > 2.0], np.full_like(row, 7.0), np.zeros_like(row), np.full((2, 2), 3.0),
            row[:2] - (3.0, 4.0), (3.0, 4.0) - row[:2], np.ones(2), np.radians(row),
            1.0 / points[0], np.vstack([(9.0, 8.0), points]),
        ]  # fmt: skip

    for number, (plain, true) in enumerate(zip(told(plain_arrays), told(numpy), strict=True)):
        listed = plain.tolist() if hasattr(plain, "tolist") else plain
        assert numpy.allclose(listed, true, rtol=1e-15, atol=0), number
        assert numpy.shape(listed) == numpy.shape(true), number
