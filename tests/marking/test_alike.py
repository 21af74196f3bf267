"""Numbers typed alike: who is asked, and who is not."""

from collections.abc import Sequence

from seatwork.marking.alike import alike


def paper(learner: str, typed: Sequence[str], right: Sequence[int] = ()) -> dict:
    """Make a row of results in which all is wrong but the questions of these numbers."""
    return {
        "learner": learner,
        "questions": [
            {"id": f"q{n}", "typed": [text], "verdicts": ["right" if n in right else "wrong"]}
            for n, text in enumerate(typed, 1)
        ],
    }


def test_three_questions_alike_are_asked_about() -> None:
    """Two do not do; three do, whatever their case and spaces."""
    one = paper("L01", (".103 IN", "2.41", "3.1", "9"))
    two = paper("L02", (".103  in", "2.41", "3.2", "8"))
    assert alike([one, two]) == []
    three = paper("L03", (".103 in", "2.41", "3.2", "7"))
    (found,) = alike([one, two, three])
    assert str(found) == "L02 and L03 typed the same numbers in 3 questions (q1 q2 q3): ask both"
    assert alike([one, two, three], among=["L01"]) == []
    assert alike([one, two, three], among=["L03"]) == [found]


def test_what_is_right_for_both_tells_nothing() -> None:
    """Forms may have a number in common; right for one and wrong for the other does tell."""
    typed = (".103", "2.41", "3.1")
    assert alike([paper("L01", typed, (1, 2, 3)), paper("L02", typed, (1, 2, 3))]) == []
    assert len(alike([paper("L01", typed, (1, 2, 3)), paper("L02", typed)])) == 1


def test_what_many_typed_and_words_tell_nothing() -> None:
    """Five of nine with one number, and choices without a digit, are passed over."""
    many = [paper(f"L{n:02d}", (".1", ".2", ".3")) for n in range(5)]
    others = [paper(f"L{n:02d}", (f"{n}", f"{n}1", f"{n}2")) for n in range(5, 9)]
    assert alike(many + others) == []
    assert len(alike(many[:3] + others)) == 3
    assert (
        alike([paper("L01", ("flush", "proud", "a")), paper("L02", ("flush", "proud", "a"))]) == []
    )


def test_one_print_with_three_sizes_is_one_answer() -> None:
    """Sizes of one screw come together, so three boxes of one question are no three answers."""
    sizes = {"id": "q1", "typed": ["8", ".201", ".332"], "verdicts": ["wrong"] * 3}
    papers = [{"learner": code, "questions": [sizes]} for code in ("L01", "L02")]
    assert alike(papers) == []
