"""The speeds bench: the sum in its order, a third slower, caps, and machines too fast."""

import json
from math import pi
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.bank.speeds_sums import FREE
from seatwork.benches.bank.speeds_words import ladder
from seatwork.cutting import SHORTCUTS
from seatwork.drawings.scene import Scene
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

COUNTERBORE, SPOTFACE, CRANK, HOPPER = (
    "counterbore 7/8 in 1018 (crank hub)",
    "spotface 1-1/4 (frame pad, drill press)",
    "1/4 flat head 82° (crank arm)",
    "#10 flat head 82° (hopper plate)",
)


def test_it_opens_on_one_third(words):
    """7/8 counterbore, 1018 at 80 sfm: drill 349, a third slower 233, a third of it 116.

    Source: 80 x 12/(pi x .875) = 349.2, x 2/3 = 232.8, x 1/3 = 116.4, by hand.
    """
    bench = benches.speeds()
    found = bench.result
    assert found.drill == pytest.approx(80 * 12 / (pi * 0.875), rel=1e-6)
    assert found.spindle.raw == pytest.approx(232.8, abs=0.05)
    assert found.misread == pytest.approx(116.4, abs=0.05)
    assert "One third slower is 233. One third of it is 116." in words(bench)
    assert bench.readouts()[0] == ["Set", "210 rev/min"]


def test_the_sum_stands_in_its_order(words):
    """Rule, constant, surface speed with its source, diameter, raw speed, cap, step: so."""
    rungs = ladder(benches.speeds().result, "inch")
    assert [what.partition(":")[0] for what, _ in rungs] == [
        "Rule", "Constant", "Surface speed", "Diameter", "Raw speed", "Cap", "Step"]  # fmt: skip
    assert rungs[0][1] == "the shop's rule"
    assert "NAVEDTRA 14345" in rungs[2][1]
    page = words(benches.speeds())
    assert all(what in page and why in page for what, why in rungs)


def test_a_machine_too_fast_at_its_slowest_is_said_so(words):
    """1-1/4 spotface on gray iron: 143 wanted, the drill press begins at 250: set nothing.

    Source: 70 x 12/(pi x 1.25) x 2/3 = 142.6, by hand; 70 sfm is the slow end of the list.
    """
    bench = benches.speeds(job=SPOTFACE)
    assert bench.result.spindle.raw == pytest.approx(142.6, abs=0.05)
    assert bench.result.spindle.step.too_fast
    assert bench.readouts() == [["Set", "none: machine too fast"]]
    assert "Too fast: the slowest of the bench drill press is 250" in words(bench)
    assert "do not guess" in bench.text


def test_a_countersink_is_held_by_the_cap(words):
    """.385 in 6061: 992 wanted, the house rule's cap of 300 holds, 250 is the next step down.

    Source: 200 x 12/(pi x .385) x 1/2 = 992.1, by hand; the cap is common practice, no source.
    """
    bench = benches.speeds(job=HOPPER)
    assert bench.result.spindle.raw == pytest.approx(992.1, abs=0.1)
    assert bench.result.spindle.step.limited_by
    assert bench.readouts()[0] == ["Set", "250 rev/min"]
    assert "held by the cap of 300" in words(bench)
    assert "One third" not in bench.text


@pytest.mark.parametrize(("constant", "error"), [("3.82", 0.007), ("4", 4.72), ("320", 0.53)])
def test_a_shortcut_stands_beside_the_exact_one(constant, error):
    """A short constant changes nothing that is set; it is shown with its error.

    Source: 4 pi/12 = 1.0472, 3.82 pi/12 = 1.00007, 320 pi/1000 = 1.0053, by hand.
    """
    exact = benches.speeds().result.spindle
    bench = benches.speeds(constant=constant)
    assert bench.result.spindle == exact
    assert bench.result.short == pytest.approx(exact.raw * (1 + error / 100), rel=1e-4)
    assert bench.readouts()[-1][1].endswith("% fast")


def test_every_number_has_its_source():
    """The sources hold rules, the list of speeds, what others publish, and each shortcut."""
    bench = benches.speeds(job=CRANK)
    told = " ".join(bench.sources(bench.result))
    for word in ("speeds.countersink_ratio", "speeds.countersink_cap", "speeds.step",
                 "TC 9-524", "Others:", "common practice, no source"):  # fmt: skip
        assert word in told
    assert told.count("Shortcut") == len(SHORTCUTS)


def test_a_job_brings_its_cut_and_a_changed_one_is_one_s_own():
    """A job sets operation, diameter, machine and material; changing one makes it one's own."""
    bench = benches.speeds(job=CRANK)
    values = bench.values
    assert values["diameter"] == pytest.approx(0.507 * 25.4)
    assert (values["operation"], values["material"]) == ("countersink", "1018 steel")
    assert bench.set(diameter="5/8").values["job"] == FREE
    assert bench.values["operation"] == "countersink"
    assert bench.set(job=SPOTFACE).values["machine"] == "bench drill press"


def test_the_rim_never_turns_faster_than_wanted():
    """The step passes what was wanted by 0.5 % at most (house rule speeds.step_over), no cap."""
    bench = benches.speeds()
    controls = {control.name: control for control in bench.controls}
    for operation in controls["operation"].options:
        for machine in controls["machine"].listed():
            for diameter in (3.0, 12.7, 60.0):
                step = bench.set(
                    operation=operation, machine=machine, diameter=diameter
                ).result.spindle.step
                assert step.spindle_speed is None or step.spindle_speed <= step.allowed * 1.0051
                assert not step.limited_by or (step.spindle_speed or 0.0) <= step.allowed * 1.0001
                assert step.allowed <= (bench.result.cap or step.wanted)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"diameter": "9 in"}, "every screw of the lists"),
        ({"diameter": "nan"}, "nan"),
        ({"diameter": "#7"}, "names a drill or a screw"),
        ({"machine": "big mill"}, "does not list it"),
        ({"operation": "reaming"}, "no such choice"),
        ({"speed": 300}, "no such control"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.speeds()
    values, text = bench.values, bench.text
    with pytest.raises(SeatworkError) as refused:
        bench.set(**given)
    assert sentence in f"{refused.value.value} {refused.value}"
    assert (bench.values, bench.text) == (values, text)


def test_the_text_carries_every_number():
    """The text twin has the whole sum, both systems, and the machine's steps."""
    text = benches.speeds().text
    for number in ("80 sfm (24 m/min)", "0.875 in (22.23 mm)", "233 rev/min", "drill 349", "2/3",
                   "12/π = 3.820", "80, 135, 210", "Set 210 rev/min", "116 rev/min"):  # fmt: skip
        assert number in text


@pytest.mark.slow
def test_code_and_move():
    """The line of code() rebuilds the bench; a moved scene shows what a fresh one shows."""
    bench = benches.speeds()
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    bench.set(job=HOPPER, constant="4")
    assert scene.move(bench.drawn) == bench.text
    assert drawing.png(0.5) == bench.drawing.png(0.5)
    again = eval(bench.use("metric").code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
def test_a_move_is_short_on_the_wire():
    """A step of the slider sends less than 2.5 kB once the page has the letters."""
    bench = benches.speeds()
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for tenth in (*range(40, 590, 5), *range(40, 590, 5)):
        _, changes = picture.move(bench.set(diameter=tenth / 10).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[110:]) < 2500
