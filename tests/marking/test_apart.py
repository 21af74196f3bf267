"""Questions of one form stand apart: no number printed in one answers another."""

import re
from pathlib import Path
from random import Random

import pytest
from seatwork.marking import given, sheets
from seatwork.marking.apart import clash
from seatwork.marking.seeds import sheet_seed
from seatwork.questions import Question, judge, named
from seatwork.questions.type.parts import NumberPart

NAMES = sorted(path.stem for path in sheets.folder().rglob("*.toml"))
NUMBER = re.compile(r"(?<![\w/.#-])(?:\d+/\d+|\d*\.\d+|\d+)(?![\w/.-]*\d)(?:\s?(?:in|mm)\b)?")


def copied(drawn: dict[str, Question]) -> list[tuple[str, str, str]]:
    """Type each number printed in one question into each other one; return what is right."""
    asked = {name: set(NUMBER.findall(question.text())) for name, question in drawn.items()}
    return [
        (one, other, text)
        for one, texts in asked.items()
        for other, question in drawn.items()
        if one != other
        for part in question.parts
        if isinstance(part, NumberPart)
        for text in texts
        if judge(part, text).is_right
    ]


def forms(name: str, count: int) -> list[tuple[str, str, str]]:
    """Draw so many learners' forms of a sheet and try every copied number."""
    sheet = sheets.load(name)
    seeds = (sheet_seed(b"a class", f"L{number}", name, 1) for number in range(count))
    return [found for seed in seeds for found in copied(sheet.draw(seed))]


@pytest.mark.slow
@pytest.mark.parametrize("name", NAMES)
def test_no_printed_number_answers_another_question(name: str) -> None:
    """In ten learners' forms of each sheet a copied number is never right."""
    assert forms(name, 10) == []


@pytest.mark.long
@pytest.mark.parametrize("name", NAMES)
def test_no_printed_number_answers_another_question_in_a_thousand(name: str) -> None:
    """In a thousand forms of each sheet a copied number is never right."""
    assert forms(name, 1000) == []


@pytest.mark.slow
@pytest.mark.parametrize("name", NAMES)
def test_practice_numbers_stand_apart(name: str) -> None:
    """The numbers everyone gets stand apart, and so do the new ones of a second try."""
    sheet, mine = sheets.load(name), given.practice(name)
    assert copied(sheet.draw(mine.seed)) == []
    for item in sheet.items:
        assert copied(sheet.draw(mine.seed, {item.id: 2})) == [], item.id


def test_a_copied_number_is_a_clash() -> None:
    """Two cones of the same numbers ask for each other's sizes: depth and diameter."""
    depth = named("seat-depth")(hole_diameter=10.3, diameter=19.6, included_angle=90.0)
    width = named("seat-diameter")(hole_diameter=10.3, depth=4.65, included_angle=90.0)
    assert clash(depth, width)
    assert not clash(depth, named("pilot-size").draw(Random(2)))


def test_a_form_of_before_keeps_its_numbers(tmp_path: Path) -> None:
    """What was handed out in the older format shows the numbers it had: each drawn by itself."""
    sheet, seed = sheets.load("cones"), sheet_seed(b"key", "L07", "cones", 1)
    old = given.Given(learner="L07", sheet="cones", form=1, mode="graded", seed=seed, apart=False)
    path = tmp_path / "cones.given.json"
    path.write_text(old.text(), encoding="utf-8")
    assert '"format": 1' in old.text()
    read = given.read(path)
    assert read == old
    alone = {item.id: sheets.draw_item(item, seed) for item in sheet.items}
    assert sheet.draw(read.seed, apart=read.apart) == alone
