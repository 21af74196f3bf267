"""A whole part from a file of notes: good rows planned, bad ones told, none lost."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.plan.examples import example_parts
from seatwork.plan.part_files import plan_part
from seatwork.shop.shop import Shop

SHOP = Shop.at()
HEADING = "feature,note,material,machine,thickness\n"
GOOD = "lid {n},4X ⌀.201 THRU ⌵ ⌀.385 X 82°,6061 aluminum,bench drill press,1/4 in\n"


def planned(tmp_path, text, name="plate.csv"):
    """Plan a file of notes."""
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return plan_part(path, shop=SHOP, material="1018 steel", machine="knee mill")


def test_the_cider_mill_is_planned_without_a_fault() -> None:
    """Every note of the demonstration parts is planned."""
    for path in example_parts():
        part = plan_part(path, shop=SHOP)
        assert part.faults == ()
        assert part.plans


@pytest.mark.parametrize(
    ("row", "words"),
    [
        ("bad,⌀.5 ⌵ ⌀.4 X 82°,,,", "no wider than its hole"),
        ("bad,no note at all,,,", "row 3"),
        ("bad,⌀.201 THRU,cheese,,", "cheese"),
        ("bad,⌀.201 THRU,,,thick", "column thickness"),
        ("bad,⌀.201 THRU,,,-1 in", "column thickness"),
        ('bad,"⌀.201 THRU', "cannot be read as CSV"),
        ("bad,⌀.201 THRU, ⌀.5 S.F.,,,x", "more cells"),
        ("lid 1,⌀.201 THRU,,,", "two rows"),
        ("bad,=1+1,,,", "row 3"),
    ],
)
def test_a_bad_row_is_told_and_loses_no_other(tmp_path, row, words) -> None:
    """The rows round a bad one are planned; the fault names file and row."""
    part = planned(tmp_path, HEADING + GOOD.format(n=1) + row + "\n" + GOOD.format(n=2))
    assert list(part.plans) == ["lid 1", "lid 2"]
    (fault,) = part.faults
    assert fault.startswith("plate.csv, row 3")
    assert words in fault


def test_a_text_file_holds_a_note_a_line(tmp_path) -> None:
    """A line that begins with a drill's number is a note, not a remark."""
    text = "# the lid\n#7 DRILL THRU\n\n⌀.266 THRU, CHAM .03 X 45°\n"
    part = planned(tmp_path, text, "notes.txt")
    assert list(part.plans) == ["row 2", "row 4"]


def test_an_unknown_column_is_refused(tmp_path) -> None:
    """A heading with a stranger says which columns there are."""
    with pytest.raises(SeatworkError, match="colour"):
        planned(tmp_path, "note,colour\n⌀.201 THRU,red\n")


def test_an_empty_or_huge_list_is_refused(tmp_path) -> None:
    """No note, or more than 500, is no part."""
    with pytest.raises(SeatworkError, match="no note"):
        planned(tmp_path, "")
    with pytest.raises(SeatworkError, match="500"):
        planned(tmp_path, HEADING + "x,⌀.201 THRU,,,\n" * 501)


@pytest.mark.slow
@settings(max_examples=60, deadline=None)
@given(lines=st.lists(st.text(max_size=40).map(lambda t: " ".join(t.split())), max_size=4))
def test_no_line_spoils_another(tmp_path_factory, lines) -> None:
    """Whatever stands in other rows, the good ones are planned."""
    path = tmp_path_factory.mktemp("fuzz") / "plate.csv"
    text = HEADING + "\n".join([*lines, GOOD.format(n=1).strip(), *lines, GOOD.format(n=2).strip()])
    path.write_bytes(text.encode("utf-8", "surrogatepass"))
    part = plan_part(path, shop=SHOP, material="1018 steel", machine="knee mill")
    assert {"lid 1", "lid 2"} <= part.plans.keys()
