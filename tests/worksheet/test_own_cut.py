"""A learner's own number, cut: what is drawn beside the right seat, and what is said of it."""

import io
from random import Random

import numpy as np
import pytest
from PIL import Image
from seatwork.drawings import Look
from seatwork.drawings.views.beside_heads import LiftedHead
from seatwork.drawings.views.beside_right import Bars, beside_right
from seatwork.marking.speaking import Voice
from seatwork.quantities import INCH
from seatwork.questions import all_types
from seatwork.questions.cuts.cone_triangle import CONES, step_of_hint
from seatwork.questions.cuts.finding import CUTTERS, UNCUT, own_cut, right_cut
from seatwork.questions.registry import retired_types
from seatwork.questions.type.draws import generator
from seatwork.questions.type.parts import NumberPart
from seatwork.worksheet import model_sheet
from seatwork.worksheet.cutting_room import own_figures, right_figures
from seatwork.worksheet.form import Form

FIRST = (
    "seat-depth", "seat-diameter", "wrong-angle", "sink-below", "flush-diameter", "least-head",
    "bore-and-floor", "bore-diameter", "washer-depth", "spotface-depth", "edge-break",
)  # fmt: skip
"""The types that are to be cut first of all; some may be merged with others."""


def asked(name: str):
    """Draw a question of a type; always the same numbers."""
    return all_types()[name].draw(generator(name.encode()))


def checked(sheet: str, name: str, *texts: str) -> Form:
    """Check an answer on a practice sheet."""
    form = Form(model_sheet(sheet).ask(name))
    form.press("check", texts)
    return form


def of_before() -> dict[str, type]:
    """Return the types, and versions of types, that only forms of before still ask."""
    gone = retired_types()
    kinds = [*gone.values(), *all_types().values()]
    versions = {f"{kind.id} {n}": one for kind in kinds for n, one in kind.earlier.items()}
    return gone | versions


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(of_before()))
def test_a_form_of_before_is_cut_too(name: str) -> None:
    """Right numbers, slips and nonsense, in both systems: cut or told, and nothing fails."""
    for seed in range(5):
        drawn = of_before()[name].draw(Random(seed))
        for question in (drawn.stated_in("inch"), drawn.stated_in("metric")):
            for number, part in enumerate(question.parts):
                if not isinstance(part, NumberPart):
                    continue
                right_cut(question, number)
                wrong = [part.rounded * 100, -part.rounded, *(slip.value for slip in part.slips)]
                for value in wrong:
                    own_cut(question, number, f"{value:f}")


def test_a_screw_of_before_says_how_far_it_was_to_reach() -> None:
    """By hand: .563 in through a .250 in guard goes .313 in into the frame."""
    sizes = {"thickness": 0.25 * INCH, "engagement": 0.25 * INCH, "height": 0.153 * INCH}
    kind = all_types()["screw-length"].earlier[1]
    found = own_cut(kind(system="inch", size="1/4", **sizes), 0, ".563 in")
    assert found is not None
    assert "goes 0.313 in" in found.said
    assert "Asked for: 0.250 in" in found.said


def test_every_number_is_cut_or_it_is_said_why_not() -> None:
    """No type that asks for a number is passed over without a reason."""
    numbers = {
        name
        for name in all_types()
        if any(isinstance(part, NumberPart) for part in asked(name).parts)
    }
    assert numbers - CUTTERS.keys() == UNCUT.keys()


@pytest.mark.parametrize("name", [name for name in FIRST if name in all_types()])
def test_twice_the_right_number_is_cut_or_told(name: str) -> None:
    """What is twice too much is a seat with a fault, or a sentence; what is right is neither."""
    question = asked(name)
    place = len(question.parts) - 1
    part = question.parts[place]
    assert isinstance(part, NumberPart)
    found = own_cut(question, place, str(2 * part.rounded))
    assert found is not None
    assert found.own is None or found.own.standing().faults or name == "edge-break"
    right = right_cut(question, place)
    assert right is not None
    assert right.own is not None
    if right.own.held is None:
        assert {"proud", "rattling", "broken through"}.isdisjoint(right.own.standing().names)


def test_the_seat_cut_is_the_one_the_number_gives() -> None:
    """Seat .773 on .406 at 82°, .184 deep: ⌀.726, and a .773 head stands .027 proud.

    By hand: .406 + 2 x .184 x .8693 = .7259; (.773 - .7259) / 2 / .8693 = .0271.
    """
    form = checked("cones", "c1", ".184")
    caption = form.view.now["figures"][-1]["caption"]
    assert "0.184 in deep" in caption
    assert "⌀0.726 in" in caption
    assert "roud by 0.027 in" in caption


def test_a_radius_for_a_diameter_is_the_half_wide_seat() -> None:
    """Half of the right diameter, where it is wider than the hole, is cut half as wide."""
    question = asked("least-head")
    half = str(round(question.parts[0].answer / 2, 3))
    found = own_cut(question, 0, half)
    assert found is not None
    if found.own is not None:
        assert found.own.across == pytest.approx(question.value() / 2, abs=0.02)
        assert "proud" in found.own.standing().names
    else:
        assert "no wider than the hole" in found.said


def test_half_the_angle_for_the_included_one_is_the_steep_cone() -> None:
    """Half of the included angle cuts a cone so steep, and the head bears on a line."""
    question = asked("angle-found")
    found = own_cut(question, 0, str(round(question.value() / 2, 1)))
    assert found is not None
    assert found.own is not None
    assert found.own.seat.included_angle == pytest.approx(question.value() / 2, abs=0.1)
    assert "on a line" in found.own.standing().names


@pytest.mark.parametrize("typed", ["211", "2.11", "5.36 in"])
def test_a_number_that_cannot_be_cut_says_so(typed: str) -> None:
    """Deeper than the plate: it is told in words, and no picture is made of it."""
    form = checked("cones", "c1", typed)
    figures = form.view.now["figures"]
    assert [figure["kind"] for figure in figures] == ["words"]
    assert "cannot be cut" in figures[0]["caption"]
    assert form.view.figures == [b""]


def test_the_right_seat_says_no_size() -> None:
    """Picture and words of the right seat, beside one's own, have no number to copy."""
    right, own = checked("cones", "c1", ".184").view.now["figures"]
    assert not [sign for sign in right["alt"] + right["caption"] if sign.isdigit()]
    assert "0.184 in" in own["alt"]
    assert "proud" in own["alt"]


def test_a_height_that_cannot_be_is_drawn_and_told() -> None:
    """Said too high the head hangs in the air, said too low it would be in the metal."""
    high = checked("cones", "c3", "rim", ".030").view.now["figures"][0]["caption"]
    low = checked("cones", "c3", "rim", ".010").view.now["figures"][0]["caption"]
    assert "angs in the air" in high
    assert "into the metal" in low


def test_a_right_answer_may_be_looked_at() -> None:
    """A button shows the right answer as it is cut; before it is right there is none."""
    form = checked("cones", "c1", ".3")
    assert "See it cut" not in [one["label"] for one in form.view.now["buttons"]]
    form = checked("cones", "c1", ".211")
    assert "See it cut" in [one["label"] for one in form.view.now["buttons"]]
    form.press("cut")
    (figure,) = form.view.now["figures"]
    assert figure["caption"].endswith("The head lies flush.")
    assert Image.open(io.BytesIO(form.view.figures[0])).size[0] > 300


def test_the_cut_is_dark_on_a_dark_page() -> None:
    """On a dark page the ground of both cuts is dark."""
    form = checked("cones", "c1", ".184")
    form._heard({"page": {"dark": True, "scale": 1.0}})
    for png in form.view.figures:
        corner = np.asarray(Image.open(io.BytesIO(png)).convert("L"))[0, 0]
        assert corner < 60


@pytest.mark.parametrize("name", [name for name in CONES if name in all_types()])
def test_a_hint_never_draws_the_answer(name: str) -> None:
    """The triangle beside the last hint has no answer in its words; the worked answer has."""
    from seatwork.drawings import Look
    from seatwork.questions.cuts.cone_triangle import LAST, triangle_at

    question = asked(name)
    count, look = len(question.hints), Look(system=question.system)
    answer = question.parts[-1].measure.show(question.value(), question.system)
    hinted = triangle_at(question, step_of_hint(count - 1, count), look)
    worked = triangle_at(question, LAST, look)
    assert hinted is not None
    assert worked is not None
    assert answer not in hinted.text
    assert answer in worked.text


def test_the_triangle_stands_beside_a_hint() -> None:
    """A hint puts the triangle, lit at its step, in the place of the cut; a check takes it back."""
    form = checked("cones", "c1", ".184")
    form.press("hint")
    assert [figure["kind"] for figure in form.view.now["figures"]] == ["triangle"]
    form.press("check", [".19"])
    assert {figure["kind"] for figure in form.view.now["figures"]} == {"cut"}


@pytest.mark.parametrize("name", sorted(CUTTERS.keys() & all_types().keys()))
@pytest.mark.parametrize("typed", ["0", "-1", "1e9", "999999", "0.0000001", "1/3", "nan", "⅞"])
def test_no_number_breaks_a_form(name: str, typed: str) -> None:
    """Whatever is typed is cut, told, or passed over; nothing else happens."""
    question = asked(name)
    for place, part in enumerate(question.parts):
        found = own_cut(question, place, typed) if isinstance(part, NumberPart) else None
        assert found is None or found.own is not None or found.said


PRINTS = sorted(name for name in CUTTERS if name.startswith("print-"))


@pytest.mark.parametrize("name", PRINTS)
def test_a_wrong_number_of_a_print_is_cut_or_told(name: str) -> None:
    """Every slip of a print question comes to a seat or a sentence; what is right has no fault."""
    for system in ("inch", "metric"):
        question = asked(name).stated_in(system)
        for place, part in enumerate(question.parts):
            if not isinstance(part, NumberPart) or (name == "print-slash-stack" and place < 2):
                continue
            for slip in part.slips:
                found = own_cut(question, place, f"{slip.value:.4f}")
                assert found is not None
                assert found.said.endswith(".")
            right = own_cut(question, place, str(part.rounded))
            assert right is not None
            if right.own is not None:
                assert {"proud", "broken through"}.isdisjoint(right.own.standing().names)


def test_a_far_side_seat_begun_too_low_is_shallow() -> None:
    """Plate .375, ⌀.507 on .281 at 82°: the cone is .130 deep, so it begins at .245.

    By hand: (.507 - .281) / 2 / .8693 = .1300. Half the difference, .113, taken for the depth
    begins at .262 and leaves the head proud by .0170.
    """
    sizes = {"hole_diameter": 7.1374, "diameter": 12.8778, "thickness": 9.525}
    question = all_types()["print-far-side"](included_angle=82.0, **sizes)
    found = own_cut(question, 1, ".262")
    assert found is not None
    assert found.own is not None
    assert "begins 0.262 in below the near face" in found.said
    assert "0.113 in deep" in found.said
    assert "proud" in found.own.standing().names


@pytest.mark.parametrize(
    ("kind", "part", "sizes", "typed", "said"),
    [
        ("off-center", 0, {"offset": 0.254, "included_angle": 90.0}, ".020", "seat 0.020 in"),
        ("tilted-head", 0, {"size": "3/8", "width": 25.4, "slope": 2.0}, "1.000", "45°"),
        (
            "decide",
            1,
            {
                "least_diameter": 0.385 * 25.4,
                "greatest_diameter": 0.411 * 25.4,
                "doubt": 0.002 * 25.4,
                "reading": 0.386 * 25.4,
            },
            ".385",
            "0.383 in to 0.387 in",
        ),
    ],
)  # fmt: skip
def test_what_a_number_means_is_said(kind: str, part: int, sizes: dict, typed: str, said: str):
    """By plane geometry: 90° leans 1 for 1, a gap as wide as the head is 45°, .385 less .002."""
    found = own_cut(all_types()[kind](**sizes), part, typed)
    assert found is not None
    assert said in found.said


BESIDE = ("off-center", "decide", "tilted-head", "spindle-speed", "cutting-time", "chatter-marks")
"""Types of which no whole seat is cut: a head, a band, a pad, an amount is drawn."""


@pytest.mark.parametrize("name", BESIDE)
def test_what_is_no_seat_is_drawn_beside_the_right_one(name: str) -> None:
    """Twice too much is drawn beside what is right, whose words have no number."""
    question = asked(name)
    place = next(n for n, part in enumerate(question.parts) if isinstance(part, NumberPart))
    part = question.parts[place]
    assert isinstance(part, NumberPart)
    low = float(question.least_diameter / 25.4) if name == "decide" else 2 * float(part.rounded)
    look, voice = Look(system=question.system), Voice()
    right, own = own_figures(question, place, f"{low:.4f}", look, voice)
    assert not [sign for sign in right.alt + right.caption if sign.isdigit()]
    assert own.png.startswith(b"\x89PNG")
    assert right.png != own.png
    (alone,) = right_figures(question, place, look, voice)
    assert alone.png.startswith(b"\x89PNG")


def test_bars_are_as_long_as_their_amounts() -> None:
    """Twice the time goes twice as far: its bar is twice as long, counted in the picture.

    A bar is counted on a line through its middle, in pixels of the color of its face.
    """
    pair = Bars(own=2.0, right=1.0)
    lengths = []
    for png in beside_right(pair, Look()):
        row = np.asarray(Image.open(io.BytesIO(png)).convert("RGB")).astype(int)
        middle = row[row.shape[0] // 2]
        lengths.append(int((middle[:, 2] - middle[:, 0] > 20).sum()))
    assert lengths[1] / lengths[0] == pytest.approx(2.0, abs=0.1)


@pytest.mark.parametrize(("lift", "clear"), [(0.5, False), (1.0, True), (1.5, True)])
def test_a_head_too_low_would_be_in_the_metal(lift: float, clear: bool) -> None:
    """By plane geometry, at 90°: a head clears a seat .25 beside its hole from a lift of .25 on."""
    head = LiftedHead(offset=0.25, included_angle=90.0, right=0.25, own=0.25 * lift)
    assert (len(head._overlap(head.own)) == 0) is clear
