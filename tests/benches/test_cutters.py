"""The cutters bench: a seat and five of the shop's cutters, which one to take, and why."""

import itertools

import pytest
from seatwork import benches
from seatwork.benches.bank import cutters_bench
from seatwork.benches.bank.cutters_sums import LETTERS, seated_jobs
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture
from seatwork.shop.choosing.choosing import Choice, Refusal
from seatwork.shop.shop import Shop

GUARD, HOPPER, CAP, PAD, SHEET = (
    "edges of the holes (guard)",
    "#10 flat head 82° (hopper plate)",
    "3/8 socket head (bearing cap)",
    "spotface 1-1/4 (frame pad)",
    "#10 flat head 100° (guard)",
)
ANSWERS = {GUARD: "XH90", HOPPER: "CS82-1", CAP: "A-5/8", PAD: "A-1-1/4", SHEET: "CS100-3"}
"""Common practice, no source: a cross-hole cutter in sheet; one flute chatters least; a flat
seat wants the cutter of its size with a pilot for its hole; a seat wants its own angle."""


@pytest.mark.slow
@pytest.mark.parametrize("job", seated_jobs())
def test_it_opens_as_a_question(words, job):
    """Before a pick neither picture, text, readouts nor sources say which one fits."""
    bench = benches.cutters(job=job)
    told = f"{words(bench)} {bench.text} {bench.readouts()} {bench.sources(bench.result)}"
    assert "Which would you take for" in told
    for sign in ("does it", "does not fit", "Take ", "For it", "smaller than the seat"):
        assert sign not in told
    for letter, one in zip(LETTERS, bench.result.shown, strict=False):
        assert f"{letter}: {one.tool.name}, {one.tool.cutter.kind}" in bench.text


@pytest.mark.parametrize(("job", "answer"), ANSWERS.items())
def test_the_answer(words, job, answer):
    """The cutter to take is that of shop practice, and is among those to choose from."""
    bench = benches.cutters(job=job, opened=True)
    assert bench.result.choices.best.tool.cutter.name == answer
    assert bench.result.choices.best in bench.result.shown
    assert bench.readouts()[0] == ["Take", answer]
    assert f"{answer}" in words(bench)


@pytest.mark.parametrize("job", seated_jobs())
def test_five_to_choose_from(job):
    """Five different cutters, in the order of the list; some fit and at least two do not."""
    shown = benches.cutters(job=job).result.shown
    names = [one.tool.cutter.name for one in shown]
    order = [cutter.name for cutter in Shop.at().cutters]
    assert len(set(names)) == 5
    assert [order.index(name) for name in names] == sorted(order.index(name) for name in names)
    assert sum(isinstance(one, Choice) for one in shown) in (1, 2, 3)
    assert sum(isinstance(one, Refusal) for one in shown) >= 2


@pytest.mark.slow
def test_a_pick_shows_the_answer_with_reasons(words):
    """Picking a one-flute countersink for sheet: it does it, its rake grabs, take the other."""
    bench = benches.cutters().set(pick="A")
    assert bench.result.opened
    said = words(bench)
    assert "A does it, but take C, XH90" in said
    assert "positive rake grabs" in bench.text
    assert "no burr, in sheet too" in bench.text
    assert "illustration, not a prediction" in bench.text


def test_a_pick_that_does_not_fit(words):
    """A countersink with a Morse taper does not go into a hand drill."""
    bench = benches.cutters(pick="B")
    assert "B does not fit: take C, XH90" in words(bench)
    assert "Its shank is Morse taper 2, and the hand drill does not take it." in bench.text


def test_the_right_pick(words):
    """The one-flute cutter of the right angle is the right pick for the hopper plate."""
    bench = benches.cutters(job=HOPPER, pick="A")
    assert "Yes: take A, CS82-1" in words(bench)
    assert "one flute has the most chip room" in bench.text


def test_a_machine_that_is_too_fast(words):
    """A 1-1/4 spotface in gray iron is too fast for the slowest step of the drill press."""
    bench = benches.cutters(job=PAD, machine="bench drill press", opened=True)
    assert "this machine is too fast" in words(bench)
    assert bench.readouts()[1] == ["Spindle", "no step is slow enough"]


def test_another_job_is_another_question():
    """Another job, machine or material hides the answer and forgets the pick."""
    bench = benches.cutters(pick="B")
    assert bench.set(job=PAD).values["pick"] == "none yet"
    assert not bench.result.opened
    assert bench.values["machine"] == "knee mill"
    assert bench.set(pick="E").result.opened
    assert not bench.set(machine="bench drill press").result.opened


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"pick": "F"}, "no such choice"),
        ({"machine": "<b>lathe</b>"}, "does not list it"),
        ({"material": "wood"}, "does not list it"),
        ({"opened": 1}, "on or off"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What is no choice is told in a sentence; the bench stays as it was."""
    bench = benches.cutters(pick="A")
    before = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == before


def shop_without(*kinds):
    """Give the shop without some kinds of cutter."""
    shop = Shop.at()
    left = tuple(cutter for cutter in shop.cutters if cutter.kind not in kinds)
    return Shop(cutters=left, machines=shop.machines, materials=shop.materials, rules=shop.rules)


@pytest.mark.slow
def test_a_shop_with_nothing_that_fits(words, monkeypatch, drawing_faults):
    """Where nothing fits the bench says so, and what would do."""
    shop = shop_without("counterbore head", "end mill")
    monkeypatch.setattr(cutters_bench, "shop", lambda: shop)
    bench = benches.cutters(job=CAP, opened=True)
    assert "None of the shop's cutters does it" in words(bench)
    assert "would do" in bench.text
    assert bench.readouts() == [["Take", "none of these"]]
    assert drawing_faults(bench.drawing) == []
    assert "smaller than the seat" in benches.cutters(job=CAP, pick="A").text


def test_a_shop_without_such_cutters(monkeypatch):
    """A shop with no flat-bottomed cutter at all gets a sentence for a counterbore."""
    shop = shop_without("counterbore", "counterbore head", "spotface cutter", "end mill")
    monkeypatch.setattr(cutters_bench, "shop", lambda: shop)
    with pytest.raises(SeatworkError, match="no such cutter at all"):
        benches.cutters(job=CAP)


@pytest.mark.slow
def test_the_text_carries_every_number():
    """The text has every size in both systems, the system that is asked for first."""
    bench = benches.cutters(job=CAP)
    for number in ("0.625 in (15.88 mm)", "0.404 in (10.26 mm)", "0.352 in (8.95 mm)"):
        assert number in bench.text
    assert "15.88 mm (0.625 in)" in bench.use("metric").text


def test_every_cutter_of_the_shop_is_told_of():
    """The sources name every cutter of the shop, fitting or not, once the answer is shown."""
    bench = benches.cutters(pick="A")
    told = " ".join(bench.sources(bench.result))
    parts = ("pilot", "holder", "stop cage")
    for cutter in Shop.at().cutters:
        assert cutter.kind in parts or cutter.name in told
    assert "speeds.countersink_cap" in told
    assert "common practice, no source" in told


@pytest.mark.parametrize(
    "values",
    [
        {"job": PAD, "pick": "B"},
        {"job": PAD, "machine": "bench drill press", "opened": True},
        {"pick": "A", "opened": False},
        {"job": HOPPER, "material": "brass"},
    ],
)
def test_code_rebuilds_it(values):
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.cutters(**values).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(look, drawing_faults):
    """Over all jobs and picks all words stand clear and whole."""
    found = []
    for job, pick in itertools.product(seated_jobs(), ("none yet", "A", "C", "E")):
        bench = benches.cutters(job=job, pick=pick)
        drawing = bench.scene(bench.result, look).draw()
        found += [f"{job}, {pick}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


@pytest.mark.slow
@pytest.mark.parametrize("job", seated_jobs())
def test_all_reasons_have_room(words, job):
    """For every pick of every preset all of the answer stands on the page."""
    for pick in LETTERS:
        assert "more: see the text" not in words(benches.cutters(job=job, pick=pick))


@pytest.mark.slow
def test_the_page_can_show_it():
    """The scene goes through the live picture, and a second telling changes nothing."""
    bench = benches.cutters(pick="B")
    scene = bench.scene(bench.result, bench.look())
    assert isinstance(scene, Scene)
    assert LivePicture(scene).move(bench.drawn)[0] == bench.text


def test_any_screw_is_a_job():
    """An M8 socket head screw wants 15 mm by 8.6, by DIN 974-1; a hex cap room for its wrench."""
    seat = benches.cutters(job="M8 SHCS").result.wanted.seat
    assert (seat.diameter, seat.depth) == pytest.approx((15.0, 8.6))
    bench = benches.cutters(job="3/8-16 hex cap")
    assert bench.result.wanted.seat.diameter == 28.0
    assert "measure yours" in " ".join(bench.sources(bench.result))
