"""A bench on a page, seen from the kernel: messages, answers, stills and closing."""

import json

import ipywidgets
import psutil
import pytest
from seatwork.benches.page.view import BenchView

pytestmark = pytest.mark.slow


class Page:
    """Stands for the page: keeps what the kernel sends and asks as a page asks."""

    def __init__(self, view, monkeypatch):
        self.view, self.sent = view, []
        monkeypatch.setattr(view.live, "send", lambda content, buffers=None: self.keep(content))

    def keep(self, content):
        """Keep a message."""
        self.sent.append(json.loads(json.dumps(content)))

    def ask(self, name, **question):
        """Ask as a control row does; return its answer."""
        row = self.view.panel.parts[name]
        row._hear(row, question | {"asked": "page:1"}, [])
        return self.sent[-1]["tell"][name]


@pytest.fixture
def view(plug):
    """Show a bench, and close it afterwards."""
    shown = BenchView(plug.PlugBench())
    yield shown
    shown.close()


@pytest.fixture
def page(view, monkeypatch):
    """Join as a page."""
    return Page(view, monkeypatch)


def test_a_step_is_answered_with_picture_and_words(page):
    """One move is one message: elements, text, readouts and the answer for the row."""
    answer = page.ask("depth", step=160)
    assert answer["value"] == "0.160 in (4.06 mm)"
    assert (answer["trouble"], answer["asked"]) == ("", "page:1")
    assert len(page.sent) == 1
    assert page.sent[0]["text"].startswith("Cone 0.160 in (4.06 mm) deep")
    assert page.sent[0]["rows"][0][1] == "0.030 in (0.76 mm) below"
    assert len(json.dumps(page.sent[0])) < 1400


def test_typed_text_is_exact(page):
    """A fraction between two steps is kept as typed."""
    page.ask("depth", typed="17/64")
    assert page.view.bench.values["depth"] == 6.746875


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("2 in", "0.010 in to 0.400 in, since the plate would be cut through"),
        ("9 mm", "0.354 in: that leaves too thin a floor"),
        ("#10", "names a drill or a screw"),
        ("<b>", "<b>"),
    ],
)
def test_trouble_is_told_and_the_last_good_state_stays(page, typed, says):
    """The answer holds the sentence in the reader's units; value and picture stay."""
    before = page.view.bench.values
    answer = page.ask("depth", typed=typed)
    assert says in answer["trouble"]
    assert answer["text"] == "0.150 in"
    assert page.view.bench.values == before
    assert page.ask("depth", step=151)["trouble"] == ""


def test_a_fault_of_the_bench_is_told_too(page, monkeypatch, caplog):
    """An error nobody foresaw gets a sentence and a line in the log; the page gets its answer."""
    monkeypatch.setattr(page.view.bench, "work_out", lambda **values: 1 / 0)
    answer = page.ask("depth", step=151)
    assert "ZeroDivisionError" in answer["trouble"]
    assert answer["asked"] == "page:1"
    assert "could not follow" in caplog.text


def test_units_switch_relabels_everything(page):
    """After the switch row, range and picture speak metric; the part is the same."""
    page.view.bench.set(depth="0.150 in").use("metric")
    row = page.view.panel.parts["depth"]
    assert row.now["value"] == "3.81 mm (0.150 in)"
    assert (row.spec["low"], row.spec["high"]) == (26, 1016)
    assert page.view.live.page["text"].startswith("Cone 3.81 mm")
    assert page.view.bench.values["depth"] == 3.81


def test_a_control_that_needs_a_switch_shows_with_it(page):
    """The angle row is out of sight until the switch is on; the button then says the way back."""
    parts = page.view.panel.parts
    assert parts["angle"].layout.display == "none"
    parts["closer"].click()
    assert parts["angle"].layout.display is None
    assert parts["closer"].description == "Step back"


def test_folded_controls_come_when_asked_for(page):
    """Folded controls are out of sight until the button is pressed."""
    panel = page.view.panel
    assert panel.parts["metal"].layout.display == "none"
    panel._fold.click()
    assert panel.parts["metal"].layout.display is None


def test_ipywidgets_controls_set_the_bench_and_follow_it(page):
    """A dropdown sets the bench; a bench set from code shows in the dropdown."""
    parts = page.view.panel.parts
    parts["metal"].value = "steel"
    assert page.view.bench.values["metal"] == "steel"
    page.view.bench.set(metal="iron", greased=True)
    assert (parts["metal"].value, parts["greased"].value) == ("iron", True)


def test_a_page_that_joins_late_is_told_everything(page):
    """The greeting holds the state of every element, all letters and the words."""
    page.ask("depth", step=160)
    page.view.live._hear(None, {"hello": True}, [])
    greeting = page.sent[-1]
    assert len(greeting["move"]) == len(page.view.picture.page()["looks"])
    assert greeting["text"].startswith("Cone 0.160 in")
    assert greeting["quiet"]


def test_a_dark_page_gets_a_dark_picture_once(page):
    """Dark is drawn anew, with another number; the same report again draws nothing."""
    number = page.view.live.page["number"]
    for _ in range(2):
        page.view.live._hear(None, {"page": {"dark": True, "scale": 2}}, [])
        assert page.view.live.page["palette"] == "dark"
        assert page.view.live.page["number"] == number + 1


def test_comparison_sends_outlines_and_survives_a_new_picture(page):
    """Outlines of the kept state go out at once and with every new picture; then they go."""
    bench = page.view.bench
    bench.set(depth=2.0).keep()
    kept = page.sent[-1]["kept"]
    assert len(kept) == 2
    bench.set(depth=4.0).use("metric")
    assert page.view.live.page["kept"] == kept
    assert page.view.live.page["compared"]
    bench.forget()
    assert page.sent[-1]["kept"] == []


def test_the_still_is_renewed_when_the_page_has_settled(page):
    """A settled page brings the still up to date, once per state."""
    updates = []
    page.view._still = type("Handle", (), {"update": staticmethod(updates.append)})
    page.view._stands = page.view._state()
    page.ask("depth", step=160)
    for _ in range(2):
        page.view.live._hear(None, {"settled": True}, [])
    assert [drawing.text[:25] for drawing in updates] == ["Cone 0.160 in (4.06 mm) d"]


def test_a_new_picture_settles_too(page):
    """A switch that draws anew starts the page's clock as a move does, so the still follows."""
    page.view.panel.parts["closer"].click()
    assert not page.sent[-1].get("quiet")


def test_closing_leaves_nothing_behind(plug):
    """Every widget a view made is gone, and the bench no longer tells it anything."""
    before = set(ipywidgets.widgets.widget._instances)
    bench = plug.PlugBench()
    view = BenchView(bench)
    assert set(ipywidgets.widgets.widget._instances) - before
    view.close()
    assert set(ipywidgets.widgets.widget._instances) == before
    assert bench._followers == []


def test_a_thousand_moves_do_not_grow_the_kernel(page):
    """After a warm-up, 1,000 moves add less than 5 MB."""
    process = psutil.Process()

    def moves(count):
        for number in range(count):
            page.ask("depth", step=100 + number % 200)
            page.sent.clear()

    moves(300)
    before = process.memory_info().rss
    moves(1000)
    assert process.memory_info().rss - before < 5e6
