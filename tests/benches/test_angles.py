"""The angles bench: what the first lesson needs of it, in its order."""

import json
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.page.notes import Notes
from seatwork.drawings.scene import GhostScene, Scene
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import job
from seatwork.live.picture import LivePicture

M6, QUARTER, TEN, SHEET = (
    "M6 socket flat 90° (hopper plate)",
    "1/4 flat head 82° (frame)",
    "#10 flat head 82° (hopper plate)",
    "#10 flat head 100° (guard)",
)

INCH = 25.4


def words(bench):
    """Give all words on the page."""
    axes = bench.drawing.figure.axes[0]
    return [text.get_text() for text in axes.texts if text.get_text()]


def test_it_opens_on_two_heads_and_no_number():
    """First there are two heads from above, a question, and nothing that gives the answer away."""
    bench = benches.angles()
    assert "Both flush by the shop's rule. Which would you sign for?" in words(bench)
    assert bench.readouts() == []
    assert "°" not in bench.text
    shown = [control.name for control in bench.controls if control.needs is None]
    assert shown == ["cut_open"]


def test_cut_open_one_bears_on_its_cone():
    """Cut open, both stand beside each other, the contact of each in words."""
    page = words(benches.angles().set(cut_open=True))
    assert {"bears on the cone", "touches at the rim"} <= set(page)


def test_three_numbers():
    """Cut open there are three numbers: proud or below, contact, diameter at the face."""
    bench = benches.angles(cut_open=True)
    labels = [row[0] for row in bench.readouts()]
    assert labels == ["Head below", "Contact", "Diameter at the face"]


def test_the_m6_head_lies_below_on_a_line():
    """M6 of least edge in an 82° seat of 13.44: .158 mm below, on the rim at 11.34.

    Source: ISO 10642:2004 (edge from memory); 1.05 - (13.44 - 11.34)/(2 tan 41°), by hand.
    """
    found = benches.angles(cut_open=True).result.found
    assert found.amount == pytest.approx(-0.158, abs=5e-4)
    assert (found.state, found.contact) == ("below", "rim")
    assert found.contact_diameter == pytest.approx(11.34)


def test_minute_ten():
    """Cutter 90, head 82, .507 on .266: .018 proud on the hole edge, about four sheets of paper.

    Source: (.507 - .266)/2 x (1/tan 41° - 1) = .0181, by hand; at .0042 in a sheet, .0181 is 4.3.
    """
    bench = benches.angles(screw=QUARTER, cutter_angle="90", measure=True)
    assert bench.readouts() == [
        ["Head proud", "0.018 in (0.46 mm) or about 4 sheets of paper"],
        ["Contact", "0.266 in (6.76 mm) across, touches at the hole edge"],
        ["Diameter at the face", "0.507 in (12.88 mm)"],
    ]
    assert {".266 THRU", ".507 X 90°", "90° included"} <= set(words(bench))


@pytest.mark.parametrize("screw", [M6, QUARTER, TEN, SHEET])
def test_steeper_rides_the_hole_flatter_rides_the_rim(screw):
    """Over the whole slider a steeper head is caught by the hole edge, a flatter one by the rim."""
    bench = benches.angles(screw=screw, measure=True)
    head = bench.result.part.head.included_angle
    for cutter in range(60, 121):
        contact = bench.set(cutter_angle=cutter).result.found.contact
        expected = "rim" if cutter < head else "hole edge" if cutter > head else "cone"
        assert contact == expected, (cutter, head)


@pytest.mark.parametrize(
    ("screw", "sharp", "hole", "angle"),
    [
        (QUARTER, 0.507 * INCH, 0.266 * INCH, 82),
        (TEN, 0.385 * INCH, 0.201 * INCH, 82),
        (SHEET, 0.385 * INCH, 0.201 * INCH, 100),
        (M6, 13.44, 6.6, 90),
    ],
)
def test_the_mill_s_screws(screw, sharp, hole, angle):
    """Sharp diameters and holes are the published ones.

    Sources: ASME B18.6.3 (.507, .385), ISO 10642 (13.44), drills H and #7, ISO 273 medium (6.6).
    """
    found = job(screw)
    assert found.screw.head.sharp_diameter == pytest.approx(sharp)
    assert found.hole.diameter == pytest.approx(hole, abs=1e-3)
    assert found.screw.seat_angle == angle


def test_any_flat_head_goes_on_the_bench():
    """An M8 socket flat head has a sharp diameter of 17.92 and a hole of 9 mm.

    Source: ISO 10642, theoretical maximum; ISO 273, medium.
    """
    values = benches.angles(screw="M8 socket flat head").values
    assert (values["diameter"], values["hole"]) == (17.92, 9.0)
    with pytest.raises(SeatworkError, match="slotted, recessed or socket"):
        benches.angles(screw="M8 flat head")
    assert benches.angles(screw="3/4 socket flat head").values["diameter"] > 26.0
    with pytest.raises(SeatworkError, match="every screw of the lists"):
        benches.angles(diameter="9 in")


def test_a_screw_brings_its_own_seat():
    """Choosing a screw sets hole and seat with it, unless they are given in the same breath."""
    bench = benches.angles()
    values = bench.set(screw=TEN).values
    assert values["diameter"] == pytest.approx(9.779)
    assert bench.set(screw=QUARTER, hole="9/32").values["hole"] == pytest.approx(7.14375)


def test_measuring_cuts_open():
    """Asked to measure, the bench cuts open by itself; closed again, it shows both from above."""
    bench = benches.angles(measure=True)
    assert bench.values["cut_open"]
    assert bench.text.startswith("Section of a 90° head")
    assert bench.set(cut_open=False).text.startswith("Two flat heads in their seats, seen from")


def test_the_system_keeps_the_part():
    """Switching to metric relabels everything and changes no size."""
    bench = benches.angles(screw=QUARTER, cutter_angle=90, measure=True)
    before = bench.result
    assert bench.use("metric").result is before
    assert bench.readouts()[0][1].startswith("0.46 mm (0.018 in)")
    assert {"6.76 THRU", "12.88 X 90°"} <= set(words(bench))


def test_flush_is_a_word():
    """A matched seat says flush, and no amount."""
    bench = benches.angles(cutter_angle=90, cut_open=True)
    assert bench.readouts()[0] == ["Head", "flush with the face"]


def test_the_question_is_asked_of_flush_heads_only():
    """With a head that stands proud nobody is asked which of two flush ones to sign for."""
    page = words(benches.angles(cutter_angle=120))
    assert not any("flush" in word for word in page)


def test_thin_amounts_are_not_counted_in_paper():
    """Below half a sheet, and above twenty, paper is no help and is not named."""
    thin = benches.angles(screw=QUARTER, cutter_angle=82.5, cut_open=True)
    thick = benches.angles(screw=QUARTER, cutter_angle=82, diameter="0.3", cut_open=True)
    for bench in (thin, thick):
        assert "Head proud" in bench.readouts()[0][0]
        assert "paper" not in bench.readouts()[0][1]


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"hole": "13 mm"}, "hole"),
        ({"hole": "12 mm"}, "drops through"),
        ({"diameter": "5 mm"}, "hole"),
        ({"cutter_angle": 130}, "countersinks are ground from 60° to 120°"),
        ({"cutter_angle": "nan"}, "nan"),
        ({"screw": "M7"}, "which head"),
        ({"angle": 90}, "no such control"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What cannot be is told in a sentence; the bench stays as it was."""
    bench = benches.angles(measure=True)
    values, text = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == (values, text)


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.angles(screw=QUARTER, cutter_angle=90, measure=True).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("values", [{}, {"cut_open": True}, {"measure": True}])
def test_every_view_moves(values):
    """Each of the three views is a scene, and a moved one shows what a fresh one shows."""
    bench = benches.angles(**values)
    scene = bench.scene(bench.result, bench.look())
    drawing = scene.draw()
    assert isinstance(scene, Scene)
    assert scene.move(bench.set(cutter_angle=100).drawn) == bench.text
    assert drawing.png(0.5) == bench.drawing.png(0.5)


def test_the_section_leaves_a_ghost():
    """Only the dimensioned section can keep a former state in sight."""
    bench = benches.angles(measure=True)
    scene = bench.scene(bench.result, bench.look())
    scene.draw()
    assert isinstance(scene, GhostScene)
    assert len(scene.ghosts) == 2


@pytest.mark.slow
def test_a_move_is_short_on_the_wire():
    """A step of the slider sends less than 2.5 kB once the page has the letters."""
    bench = benches.angles(measure=True)
    picture = LivePicture(bench.scene(bench.result, bench.look()))
    sizes = []
    for cutter in (*range(60, 121), *range(60, 121)):
        _, changes = picture.move(bench.set(cutter_angle=cutter).drawn)
        sizes.append(len(json.dumps(changes, separators=(",", ":"))))
    assert median(sizes[61:]) < 2500


def test_sources_name_the_head_the_hole_and_the_rules():
    """The head's document, the hole's, and the house rules of flush stand in the sources."""
    bench = benches.angles(screw="M8 socket flat head")
    told = " ".join(bench.sources(bench.result))
    for name in ("ISO 10642", "ISO 273", "flush.greatest_below", "flush.greatest_proud"):
        assert name in told


def test_what_is_taken_for_granted_in_a_name_is_told():
    """A flat head of 1/4 in can be a machine screw or a socket screw: which was read is told."""
    notes = Notes(benches.angles(screw="1/4 flat head"))
    assert "1/4 flat head machine screw" in notes.sources[0]
    assert "read as a machine screw" in notes.sources[0]
    told = Notes(benches.angles(screw="1/4 flat head socket screw")).sources
    assert not any("read as" in line for line in told)
