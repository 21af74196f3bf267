"""What is said of an answer: edges of the band, units, coarse numbers, chains."""

from random import Random

import pytest
from seatwork.questions import judge, judge_all
from seatwork.questions.bank.read_note import ReadNote
from seatwork.questions.bank.seat_depth import SeatDepth
from seatwork.questions.bank.whole_part import WholePart
from seatwork.questions.type.parts import OrderPart

# .507 on .266 at 82° is 0.1386 deep; the wrong values are worked out on paper.
DEPTH = SeatDepth(diameter=12.8778, hole_diameter=6.7564, included_angle=82.0)


@pytest.mark.parametrize(
    ("typed", "kind", "code"),
    [
        (".139", "right", ""),
        (".137", "right", ""),
        (".141", "right", ""),
        (".1411", "wrong", ""),
        (".1369", "wrong", ""),
        (".1", "coarse", ""),
        (".0169", "slip", "M01"),
        (".017", "slip", "M01"),
        (".277", "slip", "M02"),
        (".292", "slip", "M03"),
        (".105", "slip", "M04"),
        (".184", "slip", "M08"),
        (".750", "slip", "M06"),
        (".12", "asks back", "M52"),
        (".3", "asks back", "M03"),
        ("3.52", "other unit", ""),
        ("3.52 mm", "right", ""),
        ("", "blank", ""),
        ("   ", "blank", ""),
        ("depth", "unreadable", ""),
        (".241", "slip", "M53"),
        (".1205", "several slips", "M52"),
        ("139", "slip", "M54"),
        ("1/8", "slip", "M56"),
        (".266", "slip", "M57"),
        (".869", "slip", "M58"),
        (".222", "wrong", ""),
    ],
)
def test_a_depth_is_judged(typed: str, kind: str, code: str) -> None:
    """The worked example of the misconception list, typed in many ways."""
    verdict = judge(DEPTH.parts[0], typed)
    assert verdict.kind == kind
    assert (verdict.slips[0].code if verdict.slips else "") == code


def test_twins_are_told_as_one() -> None:
    """Two slips that always give one number: the first is matched, its twin is known."""
    part = DEPTH.parts[0]
    assert {slip.code for slip in part.slips if slip.twin_of == "M04"} == {"M09"}
    assert [slip.code for slip in judge(part, ".1047").slips] == ["M04"]


def test_a_chain_goes_on_from_the_learners_own_step() -> None:
    """A slip in the first step is paid for once; later steps follow from it.

    Worked on paper: head .507, .010 below, hole .281, 82°. Taking the flush seat .507, the
    depth that follows is (.507 - .281) / 2 / .8693 = .130; the right ones are .524 and .140.
    The speed at .507 is within what is accepted at .524.
    """
    chain = WholePart(
        size="1/4",
        sharp_diameter=12.8778,
        below=0.254,
        hole_diameter=7.1374,
        included_angle=82.0,
        surface_speed=27.432,
        feed=0.0508,
    )
    kinds = [verdict.kind for verdict in judge_all(chain, [".507", ".130", "339", "11.5 s"])]
    assert kinds == ["slip", "own step", "right", "own step"]
    kinds = [verdict.kind for verdict in judge_all(chain, [".524", ".140", "328", "12.8"])]
    assert kinds == ["right", "right", "right", "right"]
    kinds = [verdict.kind for verdict in judge_all(chain, ["", ".140", "?", ""])]
    assert kinds == ["blank", "right", "unreadable", "blank"]


def test_a_slip_after_a_rounded_step_is_found() -> None:
    """The cone down to its point from .524: .524 / 2 / .8693 = .3014, worked by hand.

    From the diameter not rounded, .52439, it would be .3016, which nobody types as .301.
    """
    chain = WholePart(
        size="1/4",
        sharp_diameter=12.8778,
        below=0.254,
        hole_diameter=7.1374,
        included_angle=82.0,
        surface_speed=27.432,
        feed=0.0508,
    )
    verdicts = judge_all(chain, [".524", ".301", "", ""])
    assert verdicts[0].kind == "right"
    assert [slip.code for slip in verdicts[1].slips] == ["M03"]


def test_a_chain_takes_any_nonsense_forward() -> None:
    """Steps that no seat can have do not break the ones after."""
    chain = WholePart.draw(Random(3))
    for text in ("0", "9999", "1e9", "-1", "nan", "0.0000001"):
        assert len(judge_all(chain, [text] * 4)) == 4


def test_an_order_is_judged_by_its_pairs() -> None:
    """The right order, a known wrong pair, and letters that are no order."""
    part = OrderPart(
        steps=("drill", "clamp", "face"),
        right="bac",
        wrong=(("a", "c", "M48", "the pilot has no hole yet"),),
    )
    assert judge(part, "B, A, C").is_right
    assert judge(part, "bca").slips[0].code == "M48"
    assert judge(part, "bb").kind == "unreadable"
    assert judge(part, "abc").kind == "wrong"


def test_the_fields_of_a_note_are_judged_one_by_one() -> None:
    """Hole and seat swapped are two slips of the same kind."""
    note = ReadNote(count=4, hole_diameter=6.7564, diameter=12.8778, included_angle=82.0)
    assert "4X ⌀.266 THRU ⌵ ⌀.507 X 82°" in note.ask()
    verdicts = judge_all(note, ["4", ".507", ".266", "41"])
    assert [v.slips[0].code if v.slips else v.kind for v in verdicts] == [
        *("right", "M44", "M44", "M01")
    ]
