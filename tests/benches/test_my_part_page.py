"""The boxes of the page of a part: what they say when refused, and what they never lose."""

import pytest
from seatwork import benches
from seatwork.benches.part.page import PartPage

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
RULE = "flush.greatest_below"


@pytest.fixture
def page(tmp_path, monkeypatch):
    """Give the page of a part that is kept nowhere."""
    monkeypatch.chdir(tmp_path)
    made = PartPage(benches.my_part(NOTE, thickness=".250 in"))
    yield made
    made.close()


def pressed(page: PartPage, words: str) -> None:
    """Press the button of the page that says so."""
    row = page.box.children[2].children
    buttons = [one for box in row for one in getattr(box, "children", ())]
    next(one for one in buttons if getattr(one, "description", "") == words).click()


def words(tables) -> str:
    """Return every word that stands in some tables."""
    return " ".join(cell for block in tables.blocks for row in block["rows"] for cell in row)


def test_a_refused_assumption_is_told_at_its_box_and_keeps_its_text(page) -> None:
    """The sentence stands below the box; the other boxes change without wiping what was typed."""
    box = page.rules.boxes[RULE]
    box.value = "quite deep"
    line = next(one for one in page.rules.box.children if box in getattr(one, "children", ()))
    assert "quite deep" in words(line.children[-1])
    page.rules.boxes["tapped_hole.engagement"].value = "2"
    assert (box.value, page.rules.boxes[RULE]) == ("quite deep", box)


def test_what_holds_typed_anew_takes_the_refusal_away(page) -> None:
    """After a refused text the value that holds is typed again; nothing stays in red."""
    box = page.rules.boxes[RULE]
    before, box.value = box.value, "quite deep"
    box.value = before
    line = next(one for one in page.rules.box.children if box in getattr(one, "children", ()))
    assert words(line.children[-1]) == ""
    assert page.picture.live.page["trouble"] == ""


def test_a_changed_assumption_keeps_its_box(page) -> None:
    """The box stays, so that the hand at the keys goes on to the next; its label says it."""
    box = page.rules.boxes[RULE]
    box.value = "0.010 in"
    assert page.rules.boxes[RULE] is box
    assert box.description == f"{RULE} (changed here)"
    box.value = "0.015 in"
    assert box.description == RULE


def test_a_part_without_a_mark_is_refused(page) -> None:
    """An emptied mark is told beside the readings, and readings go to no part unsaid."""
    page.readings.mark_box.value = ""
    assert "a mark of its own" in words(page.readings.refused)
    page.readings.mark_box.value = "L07-2"
    assert words(page.readings.refused) == ""
    page.readings.boxes["diameter [in]"].value = ".390"
    assert [one.part for one in page.part.state.readings] == ["L07-2"]


def test_another_part_gets_the_same_boxes_filled_anew(page) -> None:
    """Going to another mark empties the boxes, going back fills them; none is made anew."""
    boxes = dict(page.readings.boxes)
    boxes["diameter [in]"].value, boxes["burr"].value = ".390", "yes"
    page.readings.mark_box.value = "L07-2"
    assert {boxes["diameter [in]"].value, boxes["burr"].value} == {""}
    page.readings.mark_box.value = "L07-1"
    assert (boxes["diameter [in]"].value, boxes["burr"].value) == (".390", "yes")
    assert page.readings.boxes == boxes
    boxes["burr"].value = ""
    assert "burr" not in page.part.state.readings[0].cells


def test_readings_written_by_a_line_of_code_are_not_lost_by_the_boxes(page) -> None:
    """A reading from a cell stands in its box, and is kept when the next one is typed."""
    page.part.measure("L07-1", diameter=".390 in")
    assert page.readings.boxes["diameter [in]"].value == ".390 in"
    page.readings.boxes["depth [in]"].value = ".110"
    assert len(page.part.state.readings[0].cells) == 2


def test_no_card_stands_beside_another_note(page) -> None:
    """A card that was seen goes as soon as the part changes, and the page says why."""
    pressed(page, "See the card")
    assert page.card_picture.layout.display is None
    page.note.value = "⌀.250 THRU"
    assert page.card_picture.layout.display == "none"
    assert "has changed since" in words(page.card_said)


def test_a_card_that_cannot_be_is_told_at_its_button(page) -> None:
    """Without a plan the buttons of the card say why nothing comes."""
    page.note.value = "⌀.250 WHATNOT"
    for button in ("See the card", "Save the card as a PDF"):
        page.card_said.show([])
        pressed(page, button)
        assert "WHATNOT" in words(page.card_said)


def test_a_note_copied_from_a_file_keeps_no_hidden_spaces(page) -> None:
    """Tabs and hard spaces, as copied text has them, read as spaces; the plan follows."""
    page.note.value = "⌀.250\u00a0THRU\t⌵\u2009⌀.500 X 82°"
    assert page.part.seat.trouble is None
    assert page.part.state.seat.note == "⌀.250 THRU ⌵ ⌀.500 X 82°"


def test_a_reading_keeps_its_unit_when_the_note_is_in_the_other(page) -> None:
    """A diameter read in inches stands as inches in the box of a metric note."""
    page.readings.boxes["diameter [in]"].value = ".390"
    page.note.value = "⌀6.6 THRU ⌵ ⌀13 X 90°"
    assert page.readings.boxes["diameter [mm]"].value == ".390 in"
    page.readings.boxes["depth [mm]"].value = "3.2"
    assert not page.part.inspection.faults
    assert page.part.state.readings[0].cells["diameter [mm]"] == ".390 in"
