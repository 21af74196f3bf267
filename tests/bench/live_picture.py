"""How quickly a picture follows the hand: ours, a bare label, interact and ipympl, in one run.

    python tests/bench/live_picture.py            # a plug in a plate, shown in four ways
    python tests/bench/live_picture.py benches    # the benches of the course beside a bare label

prints the table. It needs Chromium and the extras of the tests (ipympl among them). Per variant
a notebook runs in a JupyterLab started by ``seatwork open``; real key presses and a real drag go
to its slider. The columns:

change  key press to the first change of the picture [ms]
paint   key press to the first frame after that change [ms]
work    the kernel's part, from hearing the page to having answered: processor time of its thread
        alone, so that what else runs on the machine does not count [ms]
fps     changes per second while the pointer moves every 8 ms and waits for nobody
late    the last change after the last pointer move [ms]
open    from the page's address to its first picture, a new kernel included [s]
bytes   that come from the server for one key press
/label  change beside that of the bare label in the same run [-]
/inter  change beside that of plain interact in the same run [-]

Each is a median, the 95th percentile behind the stroke. The variants take turns, round by round.
Compare ratios, and of one run only.
"""

import asyncio
import importlib.util
import random
import statistics
import sys
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path

from playwright.async_api import async_playwright

TESTS = Path(__file__).parents[1]
PRESSES, DRAG_SECONDS, ROUNDS = 24, 3.0, 2

HEAD = """
import functools, time
import ipywidgets as w
from plug import Plug, PlugBench, PlugScene
from seatwork.drawings.scene import Look
WORK = open({log!r}, 'a', buffering=1)
def timed(deed):
    @functools.wraps(deed)
    def run(*args, **named):
        begin = time.perf_counter()
        result = deed(*args, **named)
        WORK.write(f'{{(time.perf_counter() - begin) * 1e3}}\\n')
        return result
    return run
def still(figure):
    for axes in figure.axes:
        for artist in axes.get_children(): artist.set_animated(False)
    return figure
def slider(): return w.IntSlider(value=150, min=10, max=350, description='depth',
                                 layout=w.Layout(width='760px'))
"""
HEARD = """
from seatwork import benches
from seatwork.benches.page.rows import ControlRow
ControlRow._hear = timed(ControlRow._hear)
"""
LABEL = """
s, label = slider(), w.Label('150')
label.add_class('target')
s.observe(timed(lambda change: setattr(label, 'value', str(change.new))), 'value')
w.VBox([s, label])
"""
INTERACT = """
%matplotlib inline
import matplotlib.pyplot as plt, plug
plug.Figure = plt.figure
def show(depth):
    still(PlugScene(Plug(depth=depth * 0.0254), Look()).draw().figure)
    plt.show()
w.interactive(timed(show), depth=slider())
"""
IPYMPL = """
%matplotlib widget
import matplotlib.pyplot as plt, plug
plug.Figure = plt.figure
plt.ioff()
scene = PlugScene(Plug(depth=3.81), Look())
figure = still(scene.draw().figure)
def move(change):
    scene.move(Plug(depth=change.new * 0.0254))
    figure.canvas.draw_idle()
s = slider()
s.observe(timed(move), 'value')
w.VBox([s, figure.canvas])
"""
PROBE = """([kind, selector]) => {
  const probe = window.__probe = { keys: [], changes: [], paints: [], moves: [] };
  const channel = new MessageChannel();
  let waiting = false;
  channel.port1.onmessage = () => { probe.paints.push(performance.now()); waiting = false; };
  const mark = () => {
    probe.changes.push(performance.now());
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => channel.port2.postMessage(0));
  };
  document.addEventListener('keydown', (e) => probe.keys.push(e.timeStamp), true);
  document.addEventListener('pointermove', (e) => probe.moves.push(e.timeStamp), true);
  if (kind === 'dom')
    new MutationObserver(mark).observe(document.querySelector(selector),
      { subtree: true, childList: true, attributes: true, characterData: true });
  if (kind === 'img')
    document.addEventListener('load', (e) => { if (e.target.matches('img')) mark(); }, true);
  if (kind === 'canvas') {
    const draw = CanvasRenderingContext2D.prototype.drawImage;
    CanvasRenderingContext2D.prototype.drawImage = function (...args) {
      if (this.canvas.isConnected) mark();
      return draw.apply(this, args);
    };
  }
}"""
FORGET = "() => { for (const list of Object.values(window.__probe)) list.length = 0; }"


@dataclass(frozen=True, kw_only=True)
class Variant:
    """A way to show the scene: the cell, where its picture is, and where its slider is."""

    cell: str
    kind: str
    picture: str
    handle: str = ".noUi-handle"


def ours(call: str) -> Variant:
    """Show one of our benches."""
    return Variant(
        cell=HEARD + call,
        kind="dom",
        picture=".seatwork-picture",
        handle=".seatwork-row input[type=range]",
    )


VARIANTS = {
    "label": Variant(cell=LABEL, kind="dom", picture=".target"),
    "ours": ours("PlugBench()"),
    "ipympl": Variant(cell=IPYMPL, kind="canvas", picture=".jupyter-widgets canvas"),
    "interact": Variant(cell=INTERACT, kind="img", picture=".jp-OutputArea img"),
}
BENCHES = {
    "angles": ours("benches.angles(cut_open=True)"),
    "depth": ours("benches.depth(cut=True)"),
    "edges": ours("benches.edges(all_round=True)"),
    "speeds": ours("benches.speeds()"),
    "flush": ours("benches.flush()"),
    "counterbore": ours("benches.counterbore()"),
    "spotface": ours("benches.spotface(shown=True, depth=1.0)"),
    "gaging": ours("benches.gaging(shown=True)"),
    "on_the_hole": ours("benches.on_the_hole(shown=True)"),
    "chatter": ours("benches.chatter(shown=True, on_map=True)"),
    "cones": ours("benches.chatter(shown=True)"),
}
EVERY = VARIANTS | BENCHES


@dataclass(kw_only=True)
class Times:
    """What was measured of one variant [ms], frames per second apart."""

    change: list[float] = field(default_factory=list)
    paint: list[float] = field(default_factory=list)
    work: list[float] = field(default_factory=list)
    fps: list[float] = field(default_factory=list)
    late: list[float] = field(default_factory=list)
    open: list[float] = field(default_factory=list)
    bytes: list[float] = field(default_factory=list)
    missed: int = 0


def browser_tests():
    """Load the fixtures' module of the browser tests: the server and the way to Chromium."""
    spec = importlib.util.spec_from_file_location("lab_parts", TESTS / "browser" / "conftest.py")
    parts = importlib.util.module_from_spec(spec)
    sys.modules["lab_parts"] = parts
    spec.loader.exec_module(parts)
    return parts


async def open_variant(page, parts, lab, name: str, times: Times) -> tuple[Path, object]:
    """Run a variant's notebook; return the file of its work times and its slider's handle."""
    log, began = lab.folder / f"work-{name}.txt", time.perf_counter()
    place = lab.write(f"{name}.ipynb", [HEAD.format(log=str(log)), EVERY[name].cell])
    await page.goto(lab.address(place))
    await page.locator("#jupyterlab-splash").wait_for(state="detached")
    await page.wait_for_function(parts.CURRENT_IS, arg=place)
    await page.wait_for_function(parts.IDLE)
    await page.get_by_role("menuitem", name="Run", exact=True).click()
    await page.get_by_role("menuitem", name="Run All Cells", exact=True).click()
    await page.wait_for_function(parts.ALL_RUN)
    await page.locator(EVERY[name].picture).first.wait_for()
    times.open.append(time.perf_counter() - began)
    await page.wait_for_timeout(1500)
    await page.evaluate(PROBE, [EVERY[name].kind, EVERY[name].picture])
    log.write_text("")
    return log, page.locator(EVERY[name].handle).first


async def press_keys(page, handle, times: Times) -> None:
    """Press arrow keys one by one, far enough apart for each to be answered."""
    chance = random.Random(3)
    await handle.focus()
    for number in range(PRESSES):
        await page.evaluate(FORGET)
        await page.keyboard.press("ArrowRight" if number % 4 else "ArrowLeft")
        await page.wait_for_timeout(260 + 120 * chance.random())
        seen = await page.evaluate("() => window.__probe")
        if not seen["changes"] or not seen["paints"]:
            times.missed += 1
            continue
        times.change.append(seen["changes"][0] - seen["keys"][0])
        times.paint.append(seen["paints"][0] - seen["keys"][0])


async def drag(page, handle, times: Times) -> None:
    """Drag to and fro; every 8 ms a pointer move that waits for nothing."""
    session = await page.context.new_cdp_session(page)
    box = await handle.bounding_box()
    wide = box["width"] > 100
    x = box["x"] + box["width"] * (0.41 if wide else 0.5)
    y = box["y"] + box["height"] / 2
    low, high, speed = x - 150, x + 250, 3.0
    if wide:  # the box is the whole track; its last part is more than the plate can bear
        low, high, speed = box["x"] + 0.1 * box["width"], box["x"] + 0.8 * box["width"], 1.5
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.evaluate(FORGET)
    sent, begin = [], time.perf_counter()
    while (now := time.perf_counter() - begin) < DRAG_SECONDS:
        while len(sent) < now / 0.008:
            speed = -speed if not low < x + speed < high else speed
            x += speed
            event = {"type": "mouseMoved", "x": x, "y": y, "button": "left", "buttons": 1}
            sent.append(asyncio.create_task(session.send("Input.dispatchMouseEvent", event)))
        await asyncio.sleep(0.004)
    lasted = time.perf_counter() - begin
    await asyncio.gather(*sent)
    await page.mouse.up()
    await page.wait_for_timeout(2500)
    seen = await page.evaluate("() => window.__probe")
    ends = seen["moves"][0] + lasted * 1e3
    during = [t for t in seen["changes"] if t <= ends]
    apart = [t for n, t in enumerate(during) if n == 0 or t - during[n - 1] > 2]
    times.fps.append(len(apart) / lasted)
    times.late.append(max(0.0, seen["changes"][-1] - seen["moves"][-1]))


def listened(page) -> list[int]:
    """Keep the size of all that comes by a page's open connections [bytes]."""
    came: list[int] = []
    page.on("websocket", lambda one: one.on("framereceived", lambda part: came.append(len(part))))
    return came


async def measure_one(browser, parts, lab, name: str, times: Times) -> None:
    """Measure one variant in a window of its own."""
    context = await browser.new_context(viewport={"width": 1280, "height": 900})
    page = await context.new_page()
    page.set_default_timeout(60_000)
    came = listened(page)
    try:
        log, handle = await open_variant(page, parts, lab, name, times)
        came.clear()
        await press_keys(page, handle, times)
        times.bytes.append(sum(came) / PRESSES)
        await drag(page, handle, times)
        times.work += [float(line) for line in log.read_text().split()]
    finally:
        await page.evaluate(parts.SHUT_DOWN)
        await context.close()


async def measure_all(names: list[str], rounds: int) -> dict[str, Times]:
    """Measure all variants, one after the other, in several rounds."""
    parts, found = browser_tests(), {name: Times() for name in names}
    with tempfile.TemporaryDirectory() as home, parts.serving(Path(home)) as lab:
        plug = (TESTS / "benches" / "plug.py").read_text(encoding="utf-8")
        (lab.folder / "plug.py").write_text(plug, encoding="utf-8")
        async with async_playwright() as playwright:
            program = parts.chromium_program(playwright.chromium.executable_path)
            browser = await playwright.chromium.launch(
                executable_path=program, args=parts.ARGUMENTS
            )
            for name in names * rounds:
                await measure_one(browser, parts, lab, name, found[name])
                sys.stderr.write(f"{name} measured\n")
            await browser.close()
    return found


def middle(times: list[float]) -> float:
    """Return the median, NaN of nothing."""
    return statistics.median(times) if times else float("nan")


def shown(times: list[float]) -> str:
    """Write median and 95th percentile."""
    if not times:
        return "-"
    last = sorted(times)[min(len(times) - 1, int(0.95 * len(times)))]
    return f"{middle(times):.1f}/{last:.1f}"


def table(found: dict[str, Times]) -> str:
    """Write the table."""
    columns = ("change", "paint", "work", "fps", "late")
    ends = "".join(f"{end:>8}" for end in ("open", "bytes", "missed", "/label", "/inter"))
    lines = [f"{'':12}" + "".join(f"{column:>14}" for column in columns) + ends]
    for name, times in found.items():
        cells = "".join(f"{shown(getattr(times, column)):>14}" for column in columns)
        beside = "".join(f"{ratio(found, name, to):>8.2f}" for to in ("label", "interact"))
        once = f"{middle(times.open):>8.1f}{middle(times.bytes):>8.0f}{times.missed:>8}"
        lines.append(f"{name:12}{cells}{once}{beside}")
    return "\n".join(lines)


def ratio(found: dict[str, Times], name: str, to: str) -> float:
    """Return a variant's median change beside another's; NaN where the other was not measured."""
    return middle(found[name].change) / middle(found[to].change) if to in found else float("nan")


def main(arguments: list[str]) -> None:
    """Measure all variants, or those named, and print the table."""
    asked = ["label", "interact", *BENCHES] if arguments == ["benches"] else arguments
    names = [name for name in asked if name in EVERY] or list(VARIANTS)
    found = asyncio.run(measure_all(names, ROUNDS))
    sys.stdout.write(table(found) + "\n")


if __name__ == "__main__":
    main(sys.argv[1:])
