"""The contract of the live picture, clause by clause, with one scene of every kind of artist."""

import json
from statistics import median

import pytest
from seatwork.benches.page import view as benches_page
from seatwork.benches.page.view import LIVE_ONLY, BenchView
from seatwork.drawings.scene import GhostScene, Look, Scene
from seatwork.live import slots
from seatwork.live.picture import LivePicture
from seatwork.live.server import drop_views
from seatwork.opening import lab

FIXED = ("get_linewidth", "get_linestyle", "get_hatch", "get_zorder", "get_fontsize", "get_color")


def looks_of(figure):
    """Give what a move may not touch: how many artists there are, their looks, the limits."""
    axes = figure.axes[0]
    looks = [
        [str(getattr(artist, get)()) for get in FIXED if hasattr(artist, get)]
        for artist in axes.get_children()
    ]
    return looks, axes.get_xlim(), axes.get_ylim()


@pytest.fixture
def page(plug, monkeypatch):
    """Show the plug's bench; keep what the kernel sends to its page."""
    view = BenchView(plug.PlugBench())
    view.sent = []

    def keep(content, buffers=None):
        view.sent.append(json.loads(json.dumps(content)))

    monkeypatch.setattr(view.live, "send", keep)
    yield view
    view.close()


def ask(view, **question):
    """Ask the depth's row as a page asks; return the last message."""
    view.panel.parts["depth"]._hear(None, question | {"asked": "page:1"}, [])
    return view.sent[-1]


def test_1_a_move_sets_data_and_nothing_else(plug):
    """Moved to a part the scene shows, to the pixel, what a fresh one of that part shows."""
    shallow, deep = plug.Plug(depth=2.0), plug.Plug(depth=6.0)
    scene = plug.PlugScene(shallow, Look())
    drawing = scene.draw()
    before = looks_of(drawing.figure)
    text = scene.move(deep)
    fresh = plug.PlugScene(deep, Look()).draw()
    assert looks_of(drawing.figure) == before
    assert (text, drawing.png(1.0)) == (fresh.text, fresh.png(1.0))
    assert isinstance(scene, Scene)
    assert isinstance(scene, GhostScene)


def test_2_the_text_has_every_number(plug):
    """Depth and height stand in the text, in both systems: 3.81 mm is .150 in by definition."""
    text = plug.PlugScene(plug.Plug(depth=3.81), Look()).draw().text
    assert "0.150 in (3.81 mm)" in text
    assert "0.020 in (0.51 mm)" in text


def test_3_two_outputs_the_live_view_first(page, monkeypatch):
    """The first output is the widget without any text, the second the still with its own id."""
    shown = []
    monkeypatch.setattr(benches_page, "display", lambda what, **how: shown.append((what, how)))
    page.display()
    (live, how), (still, own) = shown
    assert (set(live), how) == ({LIVE_ONLY}, {"raw": True})
    assert (still.text, own) == (page.bench.text, {"display_id": True})


def test_3_the_still_is_renewed_when_nothing_has_moved_for_a_while(page):
    """Once the page says that it has settled, the still shows what the view shows, once."""

    class Still:
        told = ()

        def update(self, drawing):
            self.told = (*self.told, drawing.text)

    page._still = Still()
    ask(page, step=200)
    assert page._still.told == ()
    for _ in range(2):
        page._heard({"settled": True})
    assert page._still.told == (page.bench.text,)


def test_4_a_move_is_one_short_message_and_every_question_is_answered(page):
    """The median message is under 2.5 kB; a question that cannot be gets a sentence."""
    sizes = []
    for step in range(100, 200):
        count = len(page.sent)
        answer = ask(page, step=step)
        assert len(page.sent) == count + 1
        assert answer["tell"]["depth"]["asked"] == "page:1"
        sizes.append(len(json.dumps(answer, separators=(",", ":"))))
    assert median(sizes) < 2500
    trouble = ask(page, typed="9 in")["tell"]["depth"]
    assert "goes from" in trouble["trouble"]
    assert trouble["asked"] == "page:1"


def test_5_dark_and_scale_redraw_once_each(page, monkeypatch):
    """A page that says again what it said before changes nothing."""
    drawn = []
    redraw = page._redraw
    monkeypatch.setattr(page, "_redraw", lambda: drawn.append(1) or redraw())
    for dark, scale in ((True, 1.0), (True, 1.0), (True, 2.0), (True, 2.0)):
        page._heard({"page": {"dark": dark, "scale": scale}})
    assert len(drawn) == 1
    assert page.picture.drawing.figure.get_facecolor() != (1.0, 1.0, 1.0, 1.0)


def test_6_running_a_cell_again_closes_what_it_showed(plug, monkeypatch):
    """The view of the former run lets go of its bench and of every model."""
    runs = iter([("cell", "one"), ("cell", "two")])
    monkeypatch.setattr(slots, "_running", lambda: next(runs))
    first, second = BenchView(plug.PlugBench()), BenchView(plug.PlugBench())
    slots.place(first)
    slots.place(second)
    assert first.live.comm is None
    assert first.bench._followers == []
    assert second.live.comm is not None
    second.close()


def test_7_only_the_server_of_open_loads_the_server_part(tmp_path):
    """Its options name the part; at save a live view goes and the text stays."""
    options = lab.options(tmp_path, token="t", port=None, browser=False)
    assert "--ServerApp.jpserver_extensions=seatwork.live.server=True" in options
    output = {"data": {LIVE_ONLY: {"model_id": "m"}, "text/plain": "a plug"}}
    drop_views(model={"type": "notebook", "content": {"cells": [{"outputs": [output]}]}})
    assert output == {"data": {"text/plain": "a plug"}}


def test_8_picture_readouts_and_rows_travel_together(page):
    """One message has the moved elements, the readouts and the row; who joins late is told all."""
    told = ask(page, step=160)
    assert {"move", "text", "rows", "tell"} <= told.keys()
    page._heard({"hello": True})
    late = page.sent[-1]
    assert (late["text"], late["rows"]) == (told["text"], told["rows"])
    assert late["quiet"]
    assert page.panel.parts["depth"].now["step"] == 160


def test_a_picture_travels_once(plug):
    """Letters that the page has are not sent again: a move back and forth grows shorter."""
    scene = plug.PlugScene(plug.Plug(depth=3.0), Look())
    picture = LivePicture(scene)
    parts = [plug.Plug(depth=depth) for depth in (4.0, 3.0)]
    first = [len(json.dumps(picture.move(part)[1])) for part in parts]
    again = [len(json.dumps(picture.move(part)[1])) for part in parts]
    assert sum(again) <= sum(first)
