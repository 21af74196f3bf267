"""The slips bench: a wrong number and what gives it."""

import itertools
from math import radians, tan
from pathlib import Path

import pytest
from seatwork import benches
from seatwork.benches.bank.slips_bench import LEARNERS
from seatwork.benches.bank.slips_sums import TOPICS, topics
from seatwork.drawings.scene import Look
from seatwork.errors import SeatworkError
from seatwork.questions.bank import spindle_speed

PROJECTED = Look(system="metric", projector=True)


def test_it_opens_on_a_question(words):
    """First there are two numbers and a question; no slip is named yet."""
    bench = benches.slips()
    assert "What happened?" in words(bench)
    assert "M01" not in words(bench) + bench.text


def test_the_opening_number_is_the_whole_angle_in_the_tangent():
    """By hand: half the difference of the diameters over tan 82° is the number L07 wrote."""
    bench = benches.slips(opened=True)
    sizes = bench.result.question
    by_hand = (sizes.diameter - sizes.hole_diameter) / 2 / tan(radians(82)) / 25.4
    assert float(bench.result.value) == pytest.approx(by_hand, abs=0.0005)
    assert [reason.how[:3] for reason in bench.result.reasons] == ["M01"]
    assert "this matches a known slip" in bench.text


@pytest.mark.parametrize("topic", TOPICS)
def test_each_topic_begins_with_a_known_slip(topic):
    """Whoever's numbers they are, the number to begin with is wrong and matches a slip."""
    for learner in range(1, LEARNERS + 1):
        looked = benches.slips(pick=topic, learner=learner, opened=True).result
        low, high = looked.part.band
        assert not low <= looked.value <= high
        assert looked.reasons[0].how[:3] in {slip.code for slip in looked.slips}


def test_the_right_number_is_said_to_be_right():
    """A right number is no slip."""
    right = benches.slips().result.part
    bench = benches.slips(answer=right.measure.write(right.rounded, "inch"), opened=True)
    assert "is right" in bench.text
    assert "What gives this number" not in bench.text


def test_an_unknown_number_is_left_to_the_teacher():
    """A number that nothing gives leads to a talk, not to blame."""
    bench = benches.slips(answer="0.300 in", opened=True)
    assert "No one slip that is known gives 0.300 in" in bench.text
    assert "say the steps aloud" in bench.text


def test_a_number_in_the_other_unit_is_compared():
    """An inch sheet answered in millimeters is read by its unit."""
    inch = benches.slips(opened=True)
    other = benches.slips(answer="0.63 mm", opened=True)
    assert other.result.reasons == inch.result.reasons


def test_both_systems_are_in_the_text():
    """Every known slip stands in the text with its number in inches and millimeters."""
    bench = benches.slips(opened=True)
    for slip in bench.result.slips:
        assert f"{slip.code} gives {slip.value:.3f} in (" in bench.text


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"answer": "a lot"}, "a lot"),
        ({"answer": "<b>1</b>"}, "<b>"),
        ({"answer": "0"}, "no size to look into"),
        ({"answer": "9" * 25}, "24 characters at most"),
        ({"pick": "my own"}, "no question type of that name"),
        ({"pick": "which-size"}, "asks for no number"),
        ({"learner": 13}, "the class has twelve"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What is no number, or no topic, is told in a sentence; the bench stays as it was."""
    bench = benches.slips()
    before = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == before


def test_another_topic_brings_a_number_of_its_own():
    """A topic or a learner brings a number to look into; a typed number stays as typed."""
    bench = benches.slips()
    first = bench.values["answer"]
    assert bench.set(pick="spindle speed").values["answer"].endswith("rev/min")
    assert bench.set(learner=3).result.learner == "L03"
    assert bench.set(pick="depth of a countersink", answer=".2").values["answer"] == ".2"
    assert bench.reset().values["answer"] == first


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.slips(pick="spindle speed", learner=4, opened=True).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert (again.values, again.text) == (bench.values, bench.text)


@pytest.mark.parametrize(
    ("look", "some"),
    [
        pytest.param(Look(), list(TOPICS)[::2], marks=pytest.mark.slow),
        pytest.param(PROJECTED, list(TOPICS)[1::2], marks=pytest.mark.slow),
        pytest.param(Look(), list(TOPICS)[1::2], marks=pytest.mark.long),
        pytest.param(PROJECTED, list(TOPICS)[::2], marks=pytest.mark.long),
    ],
)
def test_nothing_overlaps_or_leaves_the_page(look, some, drawing_faults):
    """Over topics, near and far numbers, and some learners, words stand clear and whole."""
    near_and_far = ({}, {"answer": "0.0001"}, {"answer": "9999999"})
    shut_and_open = [
        {"opened": opened, **given} for opened in (False, True) for given in near_and_far
    ]
    others = [{"opened": True, "learner": learner} for learner in (5, 12)]
    found = []
    for topic, given in itertools.product(some, [*shut_and_open, *others]):
        bench = benches.slips(pick=topic, **given)
        drawing = bench.scene(bench.result, look).draw()
        found += [f"{topic} {given}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


def test_any_question_of_the_bank_that_asks_for_a_number(tmp_path, monkeypatch):
    """A type by its name does, and a workbook's own one is offered; one with a fault is left out.

    The own type is the bank's spindle speed under another name.
    """
    assert "gage-ball" in benches.slips(pick="gage-ball").code()
    folder = tmp_path / "questions"
    folder.mkdir()
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    text = Path(spindle_speed.__file__).read_text(encoding="utf-8")
    own = text.replace('"spindle-speed"', '"our-spindle"')
    (folder / "our_spindle.py").write_text(own, encoding="utf-8")
    (folder / "broken.py").write_text("def\n", encoding="utf-8")
    (folder / "loud.py").write_text("open('run', 'w')\n", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert topics()[-1] == "our-spindle"
    benches.slips()
    assert not (tmp_path / "run").exists(), "files are run only for a type that is picked"
    bench = benches.slips(pick="our-spindle")
    assert eval(bench.code(), {"benches": benches}).text == bench.text
