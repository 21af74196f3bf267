"""Cautions are complete, defer to others, and can be reworded by an instructor."""

from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.shop.house.cautions import cautions, closing


def test_every_caution_names_hazard_habit_and_source() -> None:
    """No box is shown without what can hurt, what to do and where it comes from."""
    for box in cautions():
        assert box.title
        assert box.hazard
        assert box.do
        assert box.source


def test_the_closing_clears_nobody() -> None:
    """The last line defers to manual, shop rules and instructor."""
    for word in ("manual", "rules", "instructor", "clears nobody"):
        assert word in closing()


def test_a_rag_and_old_solvents_are_warned_of() -> None:
    """Old manuals print gasoline and carbon tetrachloride; shops use rags: common practice."""
    text = " ".join(sentence for box in cautions() for sentence in box.do)
    assert "Never a rag" in text
    assert "Never gasoline, never carbon tetrachloride" in text


def test_compressed_air_is_limited_to_30_psi() -> None:
    """29 CFR 1910.242(b) allows less than 30 psi with chip guarding (from memory)."""
    (box,) = cautions("chips")
    assert "30 psi" in box.number
    assert "from memory" in box.source


def test_an_unknown_operation_is_answered_with_the_known_ones() -> None:
    """A name without a box gets the list of names."""
    with pytest.raises(SeatworkError, match="drill_press"):
        cautions("juggling")


def test_an_instructor_s_file_stands_over_the_package_s(tmp_path: Path) -> None:
    """The workbook folder's wording is used; the closing sentence stays if not reworded."""
    (tmp_path / "shop").mkdir()
    own = '[before]\ntitle = "First"\nhazard = "Chips."\ndo = ["Glasses on."]\nsource = "ours"\n'
    (tmp_path / "shop" / "cautions.toml").write_text(own, encoding="utf-8")
    assert cautions("before", folder=tmp_path)[0].title == "First"
    assert closing(tmp_path) == closing()


def test_boxes_that_are_not_reworded_stay(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One box of one's own leaves the others; in a workbook it holds without being named."""
    (tmp_path / "shop").mkdir()
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    own = '[before]\ntitle = "First"\nhazard = "Chips."\ndo = ["Glasses on."]\nsource = "ours"\n'
    (tmp_path / "shop" / "cautions.toml").write_text(own, encoding="utf-8")
    everywhere = cautions()
    monkeypatch.chdir(tmp_path)
    assert [box.title for box in cautions("before", "belt")] == ["First", "Changing the belt step"]
    assert len(cautions()) == len(everywhere)


@pytest.mark.parametrize(
    "text",
    ["[before]\ntitle = 1", "[before", "[before]\ntitle='a'\nhazard='b'\ndo=[]\nsource='c'\nx=1"],
)
def test_a_spoiled_file_is_named(tmp_path: Path, text: str) -> None:
    """A caution file that is not as described is refused by name."""
    (tmp_path / "shop").mkdir()
    (tmp_path / "shop" / "cautions.toml").write_text(text, encoding="utf-8")
    with pytest.raises(SeatworkError, match=r"cautions\.toml"):
        cautions(folder=tmp_path)
