"""The live picture and the control row in a real JupyterLab: seen, heard, saved and printed."""

import importlib.util
import io
import os
import re
import shutil
import sys
from dataclasses import replace
from pathlib import Path
from urllib.parse import urlsplit

import numpy as np
import pytest
from PIL import Image

TESTS = Path(__file__).parents[1]
RANGE = ".seatwork-row input[type=range]"
PICTURE = ".seatwork-picture svg"
STILL = ".jp-OutputArea-output img"
CELLS = ["from plug import PlugBench", "bench = PlugBench()\nbench"]
COUNT = "from ipywidgets.widgets import widget; print('widgets', len(widget._instances))"
GROWTH = """
import gc, psutil; gc.collect()
print('memory', psutil.Process().memory_info().rss)
"""


def load(name: str, path: Path):
    """Load a module that lies beside the tests."""
    spec = importlib.util.spec_from_file_location(name, path)
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    return module


def run(lab, page, place: str, cells: list[str]) -> str:
    """Run a notebook of cells to the end, until its picture stands; give its place."""
    shutil.copy(TESTS / "benches" / "plug.py", lab.folder / "plug.py")
    lab.open(page, lab.write(place, cells))
    lab.run_all(page)
    page.locator(PICTURE).first.wait_for()
    return place


@pytest.fixture(scope="module")
def window(lab, chromium):
    """Open one window in which the bench stands, for all tests that only work it."""
    context = chromium.new_context(viewport={"width": 1280, "height": 720})
    opened = context.new_page()
    faults: list[str] = []
    opened.on("pageerror", lambda error: faults.append(str(error)))
    run(lab, opened, "bench.ipynb", CELLS)
    yield opened
    opened.evaluate("() => jupyterapp.shell.currentWidget.sessionContext.shutdown()")
    context.close()
    assert not faults


@pytest.fixture
def bench(window):
    """Put the bench of the shared window back to its start."""
    window.bring_to_front()
    window.get_by_role("button", name="Back to start").click()
    says(window, "0.150 in (3.81 mm)")
    return window


@pytest.fixture
def place(lab, page, request):
    """Run the bench in a notebook of the test's own; give its place."""
    return run(lab, page, f"{request.node.name}.ipynb", CELLS)


def label(page) -> str:
    """Read the name of the picture."""
    return page.locator(PICTURE).get_attribute("aria-label")


def press(page, *keys: str) -> None:
    """Press keys on the first range."""
    page.locator(RANGE).first.focus()
    for key in keys:
        page.keyboard.press(key)


def value(page) -> str:
    """Read what the first range tells a screen reader."""
    return page.locator(RANGE).first.get_attribute("aria-valuetext")


def says(page, text: str) -> None:
    """Wait until the first range tells a value."""
    page.locator(f'{RANGE}[aria-valuetext="{text}"]').first.wait_for()


def settled(page, text: str) -> None:
    """Wait until the page has announced a text, half a second after the last move."""
    page.locator(".seatwork-said", has_text=text).wait_for(state="attached")


def run_source(lab, page, source: str) -> str:
    """Run one more cell at the end of the notebook and read what it prints."""
    page.evaluate(
        """async (source) => {
          const panel = jupyterapp.shell.currentWidget, notebook = panel.content;
          notebook.activeCellIndex = notebook.widgets.length - 1;
          await jupyterapp.commands.execute('notebook:insert-cell-below');
          notebook.activeCell.model.sharedModel.setSource(source);
          await jupyterapp.commands.execute('notebook:run-cell');
        }""",
        source,
    )
    lab.wait_idle(page)
    return page.locator(".jp-Cell").last.locator(".jp-OutputArea-output").last.inner_text().strip()


def test_the_keyboard_moves_picture_words_and_box(bench):
    """Arrows go one step, Page keys ten, Home and End to the ends; all that is shown agrees."""
    steps = [("ArrowRight", "0.151 in (3.84 mm)"), ("PageUp", "0.161 in (4.09 mm)"),
             ("ArrowLeft", "0.160 in (4.06 mm)"), ("ArrowUp", "0.161 in (4.09 mm)"),
             ("PageDown", "0.151 in (3.84 mm)"), ("Home", "0.010 in (0.25 mm)")]  # fmt: skip
    for key, text in steps:
        press(bench, key)
        says(bench, text)
        assert label(bench).startswith(f"Cone {text} deep")
        assert bench.locator(".seatwork-row input[type=text]").first.input_value() == text[:8]
    assert bench.locator(".seatwork-readout td").first.inner_text().endswith("proud")
    settled(bench, "Cone 0.010 in")


def test_the_end_of_the_range_says_why_and_keeps_the_last_good_state(bench):
    """End asks for a depth that the plate cannot bear: a sentence, and the picture stays."""
    press(bench, "End")
    bench.locator(".seatwork-row .seatwork-trouble", has_text="too thin a floor").wait_for()
    assert value(bench) == "0.150 in (3.81 mm)"
    assert label(bench).startswith("Cone 0.150 in")
    press(bench, "ArrowRight")
    says(bench, "0.151 in (3.84 mm)")
    assert bench.locator(".seatwork-row .seatwork-trouble:visible").count() == 0


def test_the_box_reads_shop_text(bench):
    """A fraction is taken; a size out of range says the range and why and stays to be mended."""
    box = bench.locator(".seatwork-row input[type=text]").first
    box.fill("17/64")
    box.press("Enter")
    says(bench, "0.266 in (6.75 mm)")
    box.fill("2 in")
    box.press("Enter")
    trouble = bench.locator(".seatwork-row .seatwork-trouble").first
    trouble.filter(has_text="0.010 in to 0.400 in, since the plate would be cut").wait_for()
    assert (box.input_value(), box.get_attribute("aria-invalid")) == ("2 in", "true")
    assert box.get_attribute("aria-describedby") == trouble.get_attribute("id")
    assert value(bench) == "0.266 in (6.75 mm)"
    box.press("Escape")
    assert box.input_value() == "0.266 in"


def test_a_drag_ends_where_the_hand_lets_go(bench):
    """The last value of a quick drag always arrives; picture, row and range agree."""
    handle = bench.locator(RANGE).first
    box = handle.bounding_box()
    bench.mouse.move(box["x"] + box["width"] * 0.36, box["y"] + box["height"] / 2)
    bench.mouse.down()
    for x in [*range(40, 90), 45]:
        bench.mouse.move(box["x"] + box["width"] * x / 100, box["y"] + 8)
    bench.mouse.up()
    bench.wait_for_timeout(600)
    step = int(handle.input_value())
    assert step == pytest.approx(10 + 0.45 * 390, abs=8)
    assert value(bench).startswith(f"0.{step:03d} in")
    assert label(bench).startswith(f"Cone 0.{step:03d} in")


def grey(shot: bytes, size: tuple[int, int] | None = None) -> np.ndarray:
    """Return a picture's lightness, 0 to 255, if asked for at another size."""
    image = Image.open(io.BytesIO(shot)).convert("L")
    return np.asarray(image.resize(size, Image.Resampling.BOX) if size else image, float)


def test_the_live_picture_is_what_matplotlib_draws(bench):
    """At a quarter of the size, which forgives edges, page and still of one state are the same."""
    plug = load("plug", TESTS / "benches" / "plug.py")
    press(bench, "PageUp", "PageUp", "ArrowRight")
    says(bench, "0.171 in (4.34 mm)")
    shot, still, other = (
        grey(png, (180, 112))
        for png in (
            bench.locator(PICTURE).screenshot(),
            plug.PlugBench(depth="0.171 in").drawing.png(),
            plug.PlugBench(depth="0.150 in").drawing.png(),
        )
    )
    assert (np.abs(shot - still) > 40).mean() < 0.003
    assert (np.abs(shot - other) > 40).mean() > 0.01


def test_in_greys_proud_still_differs_from_below(bench):
    """Without color the picture shows, and the words say, how the plug lies."""
    bench.evaluate("() => { document.documentElement.style.filter = 'grayscale(1)'; }")
    shots = []
    for key, word in (("Home", "proud"), ("PageUp", "proud")):
        press(bench, key)
        bench.locator(".seatwork-readout td", has_text=word).first.wait_for()
    shots.append(grey(bench.locator(PICTURE).screenshot()))
    press(bench, *["PageUp"] * 14)
    bench.locator(".seatwork-readout td", has_text="below").first.wait_for()
    shots.append(grey(bench.locator(PICTURE).screenshot()))
    assert (np.abs(shots[0] - shots[1]) > 60).mean() > 0.02


def test_every_control_is_reached_and_worked_by_keyboard(bench):
    """Tab walks all controls in the order they stand, focus is seen, and nothing traps it."""
    bench.get_by_role("button", name="More settings").press("Enter")
    bench.get_by_role("combobox", name="Metal").wait_for()
    bench.get_by_role("button", name="Look closer").focus()
    walked = []
    for _ in range(10):
        walked.append(bench.evaluate(
            "() => { const e = document.activeElement; return [e.getAttribute('aria-label')"
            " || (e.labels && e.labels[0] || e).textContent.trim(),"
            " getComputedStyle(e).outlineStyle, e.getBoundingClientRect().height]; }"))  # fmt: skip
        bench.keyboard.press("Tab")
    assert [name for name, *_ in walked] == [
        "Look closer", "Depth of the cone: smaller", "Depth of the cone",
        "Depth of the cone: larger", "Depth of the cone: type a value", "Fewer settings",
        "Metric first", "Back to start", "Keep to compare", "Metal"]  # fmt: skip
    assert [name for name, outline, _ in walked[1:] if outline != "solid"] == []
    assert [name for name, _, height in walked if height < 24] == []
    bench.get_by_role("button", name="Depth of the cone: larger").press("Space")
    says(bench, "0.151 in (3.84 mm)")
    bench.get_by_role("button", name="Metric first").press("Enter")
    says(bench, "3.84 mm (0.151 in)")
    bench.get_by_role("button", name="Back to start").press("Space")
    says(bench, "3.81 mm (0.150 in)")
    bench.get_by_role("button", name="Inch first").press("Enter")
    says(bench, "0.150 in (3.81 mm)")


def test_the_accessibility_tree_has_names_and_values_with_units(bench):
    """A screen reader finds picture, slider, box and buttons by name, values with their units."""
    tree = bench.locator(".seatwork-bench").aria_snapshot()
    for line in (
        'img "Cone 0.150 in (3.81 mm) deep; plug 0.020 in (0.51 mm) below."',
        'slider "Depth of the cone"',
        'button "Depth of the cone: smaller"',
        """textbox "Depth of the cone: type a value"': 0.150 in""",
        'row "Plug over the face 0.020 in (0.51 mm) below"',
        'button "Metric first"',
    ):
        assert line in tree, tree
    # Chromium's inspectors show a slider's plain number; what is read aloud is this attribute
    assert value(bench) == "0.150 in (3.81 mm)"


def test_a_rule_saved_since_is_said_under_the_bench(place, lab, page):
    """Once the hand rests, a line says that a rule is newer than the bench, and not before."""
    newer = page.locator(".seatwork-notes [role=status]")
    press(page, "ArrowRight")
    says(page, "0.151 in (3.84 mm)")
    settled(page, "0.151 in")
    assert newer.is_hidden()
    rules = lab.folder / "shop" / "house_rules.toml"
    rules.parent.mkdir(exist_ok=True)
    rules.write_text("format = 1\n", encoding="utf-8") if not rules.exists() else os.utime(rules)
    press(page, "ArrowRight")
    newer.filter(has_text="run the cell again").wait_for()


def test_two_benches_on_a_page_share_no_name(lab, page):
    """Names inside a page, of clips, hatches and inputs, are each given once."""
    run(lab, page, "two.ipynb", [*CELLS, "PlugBench(depth='0.3 in')"])
    page.locator(PICTURE).nth(1).wait_for()
    names = page.evaluate(
        "() => [...document.querySelectorAll('.seatwork-bench [id]')].map((e) => e.id)"
    )
    assert len(names) > 20
    assert len(set(names)) == len(names)


@pytest.mark.parametrize(
    "palette",
    ["light", *(pytest.param(other, marks=pytest.mark.long) for other in ("dark", "print"))],
)
def test_axe_finds_nothing_inside_a_bench(lab, page, palette):
    """No fault by axe-core's rules, folded open, comparing, with a trouble shown, any palette."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    cells = [CELLS[0], f"PlugBench(palette={palette!r}, projector={palette == 'dark'})"]
    run(lab, page, f"axe_{palette}.ipynb", cells)
    for name in ("More settings", "Look closer", "Keep to compare"):
        page.get_by_role("button", name=name).click()
    press(page, "End")
    page.locator(".seatwork-row .seatwork-trouble:visible").first.wait_for()
    found = axe.run(page, context=".seatwork-bench")
    faults = [
        (v["id"], [n["html"][:200] for n in v["nodes"]]) for v in found.response["violations"]
    ]
    assert not faults, faults


@pytest.mark.long
def test_a_larger_picture_gets_a_sharper_ground(lab, chromium):
    """On a page with twice the pixels the still ground is drawn with twice the pixels."""
    context = chromium.new_context(viewport={"width": 1280, "height": 720}, device_scale_factor=2)
    page = context.new_page()
    run(lab, page, "sharper.ipynb", CELLS)
    page.wait_for_function(
        """async (picture) => {
          const image = document.querySelector(picture + ' image');
          if (!image) return false;
          const probe = new Image();
          probe.src = image.href.baseVal;
          await probe.decode().catch(() => {});
          return probe.naturalWidth === 1440;
        }""",
        arg=PICTURE,
    )
    context.close()


def stored(lab, place: str) -> list:
    """Read the outputs of the bench's cell as they lie on disk."""
    return lab.read(place)["cells"][1]["outputs"]


def wait_saved(lab, page, place: str, text: str) -> None:
    """Save until the file holds a text."""
    for _ in range(20):
        lab.save(page)
        if any(text in str(o.get("data", {}).get("text/plain", "")) for o in stored(lab, place)):
            return
        page.wait_for_timeout(200)
    pytest.fail(f"the file never held {text!r}: {stored(lab, place)!r:.500}")


def test_the_whole_life_of_a_bench_cell(place, lab, page):
    """Run, move, save, reopen without a kernel, run again, print, export."""
    page.locator(STILL).wait_for(state="attached")
    assert not page.locator(STILL).is_visible()
    press(page, "PageUp")
    settled(page, "Cone 0.160 in")
    wait_saved(lab, page, place, "Cone 0.160 in")
    outputs = stored(lab, place)
    assert "widget-view" not in str(outputs)
    assert "widgets" not in lab.read(place)["metadata"]
    picture = re.search(
        r"!\[(.*?)\]\(data:image/png", "".join(outputs[-1]["data"]["text/markdown"])
    )
    assert picture[1].startswith("Cone 0.160 in")

    page.emulate_media(media="print")
    assert page.locator(STILL).is_visible()
    assert not page.locator(PICTURE).is_visible()
    page.emulate_media(media="screen")

    before = run_source(lab, page, COUNT)
    for _ in range(3):
        page.evaluate(
            """async () => {
              jupyterapp.shell.currentWidget.content.activeCellIndex = 1;
              await jupyterapp.commands.execute('notebook:run-cell');
            }"""
        )
        lab.wait_idle(page)
    page.locator(PICTURE).wait_for()
    assert page.locator(PICTURE).count() == 1
    assert run_source(lab, page, COUNT) == before
    answers = "from seatwork.live.view import LiveView as L; n = []; f = L.follow\n"
    run_source(lab, page, answers + "L.follow = lambda s, *a: (n.append(a), f(s, *a)); print('on')")
    press(page, "ArrowRight")
    says(page, "0.151 in (3.84 mm)")
    assert run_source(lab, page, "print('moves', len(n))") == "moves 1"

    page.evaluate("() => jupyterapp.shell.currentWidget.sessionContext.shutdown()")
    wait_saved(lab, page, place, "Cone 0.15")
    lab.open(page, place)
    page.locator(STILL).first.wait_for()
    assert page.locator(STILL).first.get_attribute("alt").startswith("Cone 0.15")
    shown = page.locator(".jp-Cell").nth(1).inner_text()
    assert "Cone 0.15" in shown
    assert not re.search("error|not found|Loading widget", shown, re.IGNORECASE), shown

    from seatwork.opening.export import export

    html = export(lab.folder / place, lab.folder / "life.html")
    asked: list[str] = []
    paper = page.context.new_page()
    paper.on("request", lambda request: asked.append(request.url))
    paper.goto(html.as_uri())
    assert paper.locator("img").first.get_attribute("alt").startswith("Cone 0.15")
    assert paper.locator("img").first.evaluate("image => image.naturalWidth") > 0
    assert [url for url in asked if not url.startswith(("file:", "data:"))] == []
    paper.close()


@pytest.mark.long
def test_restart_and_run_all_twice_stores_the_same(place, lab, page):
    """What is stored depends on the notebook alone, not on the run."""
    kept = []
    for _ in range(2):
        page.evaluate("() => jupyterapp.shell.currentWidget.sessionContext.restartKernel()")
        lab.wait_idle(page)
        lab.run_all(page)
        page.locator(PICTURE).wait_for()
        page.wait_for_timeout(1200)
        wait_saved(lab, page, place, "Cone 0.150 in")
        kept.append(stored(lab, place))
    assert kept[0] == kept[1]


@pytest.mark.long
def test_over_a_slow_line_the_last_value_arrives_and_nothing_piles_up(lab, chromium):
    """With 60 ms each way and 1 Mbit/s a drag is slower, right in the end, and soon over."""
    relay = load("slow_line", Path(__file__).parent / "slow_line.py").relay
    context = chromium.new_context(viewport={"width": 1280, "height": 720})
    page = context.new_page()
    with relay(urlsplit(lab.url).port) as line:
        near = replace(lab, url=f"http://127.0.0.1:{line.port}")
        run(near, page, "slow.ipynb", CELLS)
        page.wait_for_timeout(1500)
        line.delay, line.rate = 0.06, 1e6
        page.evaluate(
            """(picture) => {
              window.changes = [];
              new MutationObserver(() => window.changes.push(performance.now())).observe(
                document.querySelector(picture), { attributes: true });
            }""",
            PICTURE,
        )
        released = page.evaluate(
            """async (range) => {
              const input = document.querySelector(range);
              for (let n = 0; n < 250; n++) {
                input.value = 60 + (n % 100);
                input.dispatchEvent(new Event('input', { bubbles: true }));
                await new Promise((done) => setTimeout(done, 8));
              }
              input.value = 123;
              input.dispatchEvent(new Event('input', { bubbles: true }));
              return performance.now();
            }""",
            RANGE,
        )
        says(page, "0.123 in (3.12 mm)")
        page.wait_for_timeout(1000)
        changes = page.evaluate("window.changes")
        assert label(page).startswith("Cone 0.123 in")
    context.close()
    during = [t for t in changes if t <= released]
    after = [t for t in changes if t > released]
    sys.stdout.write(f"\nslow line: {len(during) / 2.0:.0f} changes in each second of the drag, "
                     f"the last {after[-1] - released:.0f} ms after the hand let go\n")  # fmt: skip
    assert len(during) >= 8
    assert len(after) <= 3


@pytest.mark.long
def test_a_thousand_moves_leave_the_kernel_as_large_as_it_was(place, lab, page):
    """A thousand real moves after a warm-up add less than 5 MB to the kernel."""

    def moves(count: int) -> None:
        page.evaluate(
            """async ([range, count]) => {
              const input = document.querySelector(range);
              for (let n = 0; n < count; n++) {
                const before = input.getAttribute('aria-valuetext');
                input.value = 60 + (n % 200);
                input.dispatchEvent(new Event('input', { bubbles: true }));
                while (input.getAttribute('aria-valuetext') === before)
                  await new Promise((done) => setTimeout(done, 1));
              }
            }""",
            [RANGE, count],
        )

    moves(200)
    before = int(run_source(lab, page, GROWTH).split()[-1])
    moves(1000)
    after = int(run_source(lab, page, GROWTH).split()[-1])
    assert after - before < 5e6


ACTIVE = "() => jupyterapp.shell.currentWidget.content.activeCellIndex"
MODE = "() => jupyterapp.shell.currentWidget.content.mode"


def test_escape_leads_out_of_a_bench(bench):
    """From range, box, button and switch Esc goes to the page, where the arrows move on."""
    for place in (RANGE, ".seatwork-row input[type=text]", ".seatwork-panel button"):
        one = bench.locator(place).first
        one.focus()
        bench.keyboard.press("Escape")
        assert bench.locator(".seatwork-bench :focus").count() == 0, place
        assert bench.evaluate(MODE) == "command"
        before = bench.evaluate(ACTIVE)
        bench.keyboard.press("ArrowUp")
        assert bench.evaluate(ACTIVE) == before - 1, place


def test_escape_in_a_changed_box_puts_back_first(bench):
    """A first Esc takes back what was typed, a second one leaves the box."""
    box = bench.locator(".seatwork-row input[type=text]").first
    box.fill("9")
    box.press("Escape")
    assert box.input_value() == "0.150 in"
    assert box.evaluate("box => box === document.activeElement")
    box.press("Escape")
    assert not box.evaluate("box => box === document.activeElement")


def test_shift_and_enter_on_a_bench_run_its_cell(lab, page, place):
    """As everywhere in a notebook; the number of the cell rises."""
    prompt = page.locator(".jp-InputArea-prompt").nth(1)
    ran = prompt.text_content()
    page.locator(RANGE).first.press("Shift+Enter")
    page.wait_for_function(
        "([n, old]) => document.querySelectorAll('.jp-InputArea-prompt')[n].textContent !== old"
        " && /\\d/.test(document.querySelectorAll('.jp-InputArea-prompt')[n].textContent)",
        arg=[1, ran],
    )
