"""What a wrong answer is told: every kind of novice's answer by name, chance numbers by none."""

import sys
from pathlib import Path

import pytest
from seatwork.questions import Question, all_types, judge, named
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.draws import generator
from seatwork.questions.type.parts import ChoicePart, NumberPart

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
import teaching_measures as measures

DRAWS = 6


@pytest.fixture(scope="module")
def told() -> measures.Told:
    """Return the measures over a few draws of every type."""
    return measures.measure(DRAWS)


@pytest.mark.slow
@pytest.mark.parametrize("kind", sorted(measures.GOALS))
def test_a_kind_of_wrong_answer_is_told(told: measures.Told, kind: str) -> None:
    """Steps, copied numbers, lost points, wrong units and fractions get a name."""
    assert told.tried[kind] > 50
    assert told.share(kind) >= measures.GOALS[kind]


@pytest.mark.slow
def test_chance_numbers_are_not_named(told: measures.Told) -> None:
    """A random wrong number seldom gets a name: 2 % over all, 5 % in any type."""
    assert told.random_share() <= measures.MOST_RANDOM
    share, name = told.worst()
    # few numbers of each type: three of them above the share are no proof against it
    assert told.hit[name] <= 3 + measures.MOST_RANDOM_OF_A_TYPE * told.drawn[name], (share, name)


@pytest.mark.slow
def test_no_slip_is_told_in_place_of_another(told: measures.Told) -> None:
    """What was done is among the ways told, whatever else gives the same number."""
    assert told.falsely == []


def test_the_fourteen_tries_of_a_weak_student() -> None:
    """Nine are told truly, one cannot be read, four have no known slip, none is told falsely."""
    found = measures.tries()
    untrue = [text for text in found if not measures.told_truly(text, found[text])]
    assert [text for text in untrue if measures.TRIES[text]] == []
    assert {found[text].kind for text in untrue} == {"wrong"}


def test_two_ways_to_one_number_are_both_told() -> None:
    """At 90° the tangent is 1: stopped at across and used 90° are told together."""
    sizes = {"diameter": 20.0, "hole_diameter": 10.0, "included_angle": 82.0}
    part = named("seat-depth")(system="metric", **sizes).main
    verdict = judge(part, "5.00")
    assert verdict.kind == "several slips"
    assert {slip.code for slip in verdict.slips} == {"M07", "M52"}


def test_a_number_of_two_figures_is_asked_about() -> None:
    """.018 may be a slip or chance, so it is asked; with a fourth figure it is told."""
    standing = named("standing").draw(generator(b"two figures"))
    part = standing.main
    assert isinstance(part, NumberPart)
    slip = part.slips[1]
    assert judge(part, f"{slip.value:.3f}").kind == "asks back"
    assert judge(part, f"{slip.value:.5f}").kind in ("slip", "several slips")


@pytest.mark.parametrize("name", sorted(all_types()))
def test_slips_are_told_in_you_sentences(name: str) -> None:
    """No code, no fragment: each slip says what you did, and ends as a sentence."""
    for state in range(8):
        for sentence in sentences(all_types()[name].draw(generator(f"{name} {state}".encode()))):
            assert "you" in sentence.casefold(), sentence
            assert sentence[-1] in ".?", sentence
            assert "[M" not in sentence


def sentences(question: Question) -> list[str]:
    """Return the sentences of all slips of a question."""
    found = [slip.sentence for slip in question.slips]
    for part in question.parts:
        if isinstance(part, NumberPart):
            found += [slip.sentence for slip in common_slips(question, part)]
    return found


@pytest.mark.parametrize("name", sorted(all_types()))
def test_a_slip_of_a_choice_never_tells_the_right_choice(name: str) -> None:
    """The words of the right option do not stand in what is said of a wrong one."""
    for state in range(8):
        for part in all_types()[name].draw(generator(f"{name} {state}".encode())).parts:
            if isinstance(part, ChoicePart) and not part.is_on_drawing:
                right = dict(part.options)[part.right].casefold()
                assert not [slip for slip in part.slips if right in slip.sentence.casefold()]
