"""What a weak student was told and had not done: each worked by hand, and told truly now."""

import pytest
from seatwork.questions import judge, judge_all, named
from seatwork.questions.bank.cap_screw_length import CapScrewLength
from seatwork.questions.bank.print_blind_tap_drill import PrintBlindTapDrill
from seatwork.questions.bank.seat_depth import SeatDepth
from seatwork.questions.bank.standing import Standing
from seatwork.questions.bank.washer_depth import WasherDepth
from seatwork.questions.bank.wrong_angle import WrongAngle

IN = 25.4
# .750 - .375 = .375 of plate, 1.6 - .077 = 1.5231 of thread: 1.898, so 1.875 of the box
SCREW = CapScrewLength(size="1/4", threads=13, thickness=0.75 * IN, depth=0.375 * IN, full=1.6 * IN)
WASHER = WasherDepth(size="1/4", height=0.25 * IN, washer=0.095 * IN, below=0.028 * IN)
# .507 on .273 at 82°: .117 / .86929 = .13459
DEPTH = SeatDepth(diameter=0.507 * IN, hole_diameter=0.273 * IN, included_angle=82.0)
# a 100° head of .412 in a seat of .384 at the face: .014 / 1.19175 = .0117 proud
FLAT = WrongAngle(
    head_diameter=0.412 * IN,
    head_angle=100.0,
    diameter=0.384 * IN,
    hole_diameter=0.2 * IN,
    included_angle=82.0,
)
STANDING = Standing(
    size="1/4", sharp_diameter=0.507 * IN, diameter=0.467 * IN, included_angle=100.0
)


def test_a_length_of_the_box_is_no_rounding() -> None:
    """2 is the next length up, not 1.875 rounded."""
    assert judge(SCREW.main, "1.875").is_right
    verdict = judge(SCREW.main, "2")
    assert verdict.kind == "slip"
    assert "next length up" in verdict.slips[0].sentence


@pytest.mark.parametrize(("typed", "said"), [(".317", "took off where you add"),
                                             (".345", "head and washer only")])  # fmt: skip
def test_a_washer_counts_and_is_counted_on(typed: str, said: str) -> None:
    """.250 + .095 - .028 = .317, and .250 + .095 = .345; right is .373."""
    verdict = judge(WASHER.main, typed)
    assert verdict.kind in ("slip", "several slips")
    assert said in verdict.slips[0].sentence


@pytest.mark.parametrize("typed", [".14", ".13"])
def test_the_right_number_rounded_twice_is_rounded_too_far(typed: str) -> None:
    """.1346 is .13 to two places, and .14 by way of .135."""
    assert judge(DEPTH.main, typed).kind == "coarse"


@pytest.mark.parametrize("typed", ["1/8", "⅛", "9/64"])
def test_a_fraction_is_said_to_be_near_and_no_more(typed: str) -> None:
    """1/8 and 9/64 lie to either side of .1346; neither is called the nearest of all."""
    verdict = judge(DEPTH.main, typed)
    assert [slip.code for slip in verdict.slips] == ["M56"]
    assert "nearest" not in verdict.slips[0].sentence


def test_the_angle_that_counts_is_named() -> None:
    """A flatter head shows its own slope: .014 / tan 60° = .0081, and the question says 100°."""
    assert judge_all(FLAT, ["b", ".012"])[1].is_right
    slips = judge_all(FLAT, ["b", ".0081"])[1].slips
    assert "You used 120°. The question says 100°." in [slip.sentence for slip in slips]
    told = [slip.sentence for slip in judge_all(FLAT, ["b", ".030"])[1].slips]
    assert not [sentence for sentence in told if "110°" in sentence]


@pytest.mark.parametrize(("question", "typed"), [(FLAT, ".028"), (STANDING, ".040")])
def test_a_diameter_for_a_depth_is_told_with_the_angle_that_counts(question, typed: str) -> None:
    """At 100° a diameter moves 2 tan 50° = 2.4 times as far as the depth."""
    told = " ".join(slip.sentence for slip in judge_all(question, ["a", typed])[1].slips)
    assert "at 100° the diameter moves 2.4 times as far" in told


@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        (("proud", ".017 proud"), "right"),
        (("", ".017 proud"), "right"),
        (("proud", ".017 below"), "unreadable"),
        (("below", ".017 proud"), "unreadable"),
        (("proud", ".017 deep"), "unreadable"),
    ],
)
def test_a_word_beside_a_number_goes_with_the_choice(typed: tuple[str, str], kind: str) -> None:
    """.020 / tan 50° = .0168; a word that goes against the choice is left to a person."""
    assert judge_all(STANDING, typed)[1].kind == kind


def test_a_word_that_is_not_asked_for_is_left_to_a_person() -> None:
    """How deep is the counterbore: deep may stand there, wide and proud may not."""
    said = [judge_all(WASHER, [f".373 {word}"])[0].kind for word in ("deep", "wide", "proud")]
    assert said == ["right", "unreadable", "unreadable"]
    assert named("washer-depth") is WasherDepth


# .62 + 5 / 16 = .9325, so the drill goes .933 deep at least
DRILL = PrintBlindTapDrill(size="3/8", threads=16, lead=4, threaded=0.62 * IN)


@pytest.mark.parametrize(
    ("typed", "kind"),
    [
        (".933", "right"),
        (".9325", "right"),
        ("15/16", "right"),
        (".943", "right"),
        (".944", "wrong"),
        (".932", "slip"),
        (".927", "wrong"),
        (".93", "coarse"),
    ],
)
def test_a_least_depth_is_rounded_up_and_taken_deeper(typed: str, kind: str) -> None:
    """Too shallow is never right; a little deeper is, and what was handed out stays as it was."""
    assert judge(DRILL.main, typed).kind == kind
    assert "0.933 in" in DRILL.worked()
    before = DRILL.earlier[1](size="3/8", threads=16, lead=4, threaded=0.62 * IN)
    assert judge(before.main, ".932").is_right
