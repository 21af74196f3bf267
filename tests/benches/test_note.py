"""The note bench: read, drawn, left open, rewritten; a fault shows its exact place."""

import itertools

import pytest
from seatwork import benches, notes
from seatwork.benches.bank.note_bench import NOTES, TYPED
from seatwork.drawings.scene import Look, Scene
from seatwork.drawings.views.note_view import lines_of
from seatwork.errors import SeatworkError
from seatwork.live.picture import LivePicture

INCH = 25.4


@pytest.mark.slow
def test_it_opens_on_a_question(words):
    """First there is a note with no size of its seat, a question, and no size given away."""
    bench = benches.note()
    assert bench.values["note"] == "DRILL & C'BORE FOR 3/8 SHCS"
    assert "What does this note leave open?" in words(bench)
    for told in ("0.625", "0.406", "0.385"):
        assert told not in bench.text
        assert told not in words(bench)


def test_the_surprise(words):
    """That note leaves four things open: hole .406, bore .625, depth head plus .010.

    Sources: ASME B18.2.8 normal hole 13/32; ASME B18.3 appendix counterbore 5/8 (from memory);
    head .375 high (ASME B18.3) and .010 below, a house rule (common practice, no source).
    """
    bench = benches.note(opened=True)
    assert "4 things are not in the note" in bench.text
    shape = bench.result.seats[0].shape
    assert shape.hole_diameter / INCH == pytest.approx(13 / 32)
    assert shape.diameter / INCH == pytest.approx(0.625)
    assert shape.depth / INCH == pytest.approx(0.385)
    for rule in ("hole.inch_fit", "hole.no_depth", "counterbore.inch_list",
                 "counterbore.inch_below_face"):  # fmt: skip
        assert rule not in bench.text  # a learner reads what was taken, the sources name the rule
        assert any(rule in line for line in bench.sources(bench.result))


@pytest.mark.slow
def test_a_note_is_written_in_the_other_styles():
    """A note with all sizes stands in symbols, words and ISO form, and each reads back the same."""
    bench = benches.note(note="4X ⌀.201 THRU ⌵ ⌀.385 X 82°", opened=True)
    rows = dict(bench.readouts())
    assert rows["In words"] == "HOLE .201 DIA THRU, CSK .385 DIA X 82°, 4 PLACES"
    assert notes.read(rows["In words"]) == notes.read(bench.values["note"])
    assert rows["ISO 15786 form"] == ".385 × 82° / 4× ⌀.201 THRU"
    assert "With symbols: 4X ⌀.201 THRU ⌵ ⌀.385 X 82°." in bench.text
    assert dict(benches.note().readouts())["ISO 15786 form"] == "cannot carry this note"
    assert "It leaves no size open." in bench.text
    for number in ("0.201 in (5.11 mm)", "0.385 in (9.78 mm)", "82°"):
        assert number in bench.text


def test_an_old_spotface_is_asked_about():
    """A shallow counterbore of an old print earns the question whether it is a spotface."""
    bench = benches.note(pick="Frame pad, old symbol", opened=True)
    assert "spotface" in dict(bench.readouts())["Ask first"]


@pytest.mark.parametrize(
    ("note", "piece", "understood"),
    [
        ("4X ⌀.201 THRU ⌵ ⌀.385 X 82° PRONTO", "PRONTO", "82° included"),
        ("<b>$x$</b>", "<", "nothing"),
        ("⌀.201 THRU ⌵ ⌀", "the end of the note", "through"),
    ],
)
def test_a_fault_is_marked_at_its_place(note, piece, understood):
    """What cannot be read is named with its place, and with what was understood before it."""
    bench = benches.note(note=note)
    assert bench.result.callout is None
    assert bench.readouts()[0][1].startswith(piece)
    assert understood in bench.text
    weights = [line for line in bench.drawing.figure.axes[0].lines if line.get_zorder() == 5.4]
    assert len(weights) == 1


def test_the_mark_lies_under_the_word():
    """The mark begins where the word begins, on the line the word is on, wrapped or not."""
    note = "4X ⌀.201 THRU ⌵ ⌀.385 X 82° " * 3 + "PRONTO"
    pieces = lines_of(note, 1212.0, 25.0)
    assert len(pieces) > 1
    assert "".join(note[start : start + len(line)] for start, line in pieces) == note
    drawn = benches.note(note=note).drawing.figure.axes[0]
    mark = next(line for line in drawn.lines if line.get_zorder() == 5.4)
    run = next(t for t in drawn.texts if t.get_text().endswith("PRONTO"))
    box = run.get_window_extent()
    assert mark.get_xdata()[1] == pytest.approx(box.x1, abs=6)
    assert mark.get_ydata()[0] == pytest.approx(run.get_position()[1] - 10)


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ({"note": "   "}, "wants some text"),
        ({"note": "X" * 241}, "240 characters at most"),
        ({"note": "⌀.201\x00THRU"}, "cannot be seen"),
        ({"note": 7}, "wants some text"),
        ({"pick": "a note of mine"}, "no such choice"),
        ({"opened": "yes"}, "on or off"),
    ],
)
def test_errors_are_sentences_and_change_nothing(given, sentence):
    """What is no text for a note is told in a sentence; the bench stays as it was."""
    bench = benches.note()
    before = bench.values, bench.text
    with pytest.raises(SeatworkError, match=sentence):
        bench.set(**given)
    assert (bench.values, bench.text) == before


def test_typing_and_picking_go_together():
    """A picked note brings its text, a typed text is no picked note unless it is the same."""
    bench = benches.note()
    assert bench.set(pick="Frame pad, old words").values["note"] == "17/32 DR, 1-1/4 S.F., 3 HOLES"
    assert bench.set(note="⌀.201 THRU").values["pick"] == TYPED
    assert bench.set(note="Ø6.6 ⌴ Ø11 ↧ 6.5").values["pick"] == "Hopper plate, metric"


def test_code_rebuilds_it():
    """The line that code() gives makes a bench with the same values and the same text."""
    bench = benches.note(note="17/32 DR, 1-1/4 S.F., 3 HOLES", opened=True).use("metric")
    again = eval(bench.code(), {"benches": benches})
    assert again.values == bench.values
    assert again.text == bench.text


@pytest.mark.slow
@pytest.mark.parametrize("look", [Look(), Look(system="metric", projector=True)])
def test_nothing_overlaps_or_leaves_the_page(look, drawing_faults):
    """Over all notes of the list, open or not, and two long ones, words stand clear and whole."""
    long = ["⌀.201 THRU ⌵ ⌀.385 X 82° NEAR SIDE AND " * 6, "W" * 240, "⌵" * 40]
    found = []
    for note, opened in itertools.product([*NOTES.values(), *long], (False, True)):
        bench = benches.note(note=note.strip(), opened=opened)
        drawing = bench.scene(bench.result, look).draw()
        found += [f"{note}: {fault}" for fault in drawing_faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_the_page_can_show_it():
    """The scene goes through the live picture, and a second telling changes nothing."""
    bench = benches.note(note="$a$ ⌵ 中")
    scene = bench.scene(bench.result, bench.look())
    assert isinstance(scene, Scene)
    picture = LivePicture(scene)
    assert picture.move(bench.drawn)[0] == bench.text
