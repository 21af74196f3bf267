"""A graded page holds what the paper form holds: nothing of what is right."""

import gzip
import json
import random
import re
from base64 import b64decode

import pytest
from seatwork import questions
from seatwork.errors import SeatworkError
from seatwork.marking import Item, Sheet, examples, sheets
from seatwork.marking.speaking import speaker
from seatwork.record import hand_out
from seatwork.takehome import Paper, graded_page, papers
from seatwork.takehome.shapes import shape

pytestmark = pytest.mark.slow

KEYS = {"id", "points", "ask", "picture", "alt", "parts"}
SPOKEN = {"spoken"}  # where the picture has words
PART_KEYS = {"kind", "measure", "system", "unit", "such", "options", "count"}
BLOCK = re.compile(r'<script type="text/plain" id="([\w-]+)">([A-Za-z0-9+/=]*)</script>')
MOST_BYTES = 300_000


def blocks(page: str) -> dict[str, bytes]:
    """Unpack every block of a page."""
    return {name: gzip.decompress(b64decode(data)) for name, data in BLOCK.findall(page)}


def paper_of(kind: type[questions.Question]) -> Paper:
    """Return a paper that asks one question of a type."""
    item = Item(id="q1", kind=kind, points=2.0, system=None)
    sheet = Sheet(
        name="one", title="One & <all>", mode="graded", tries=0, hint_cost=0.0, pass_mark=0.8,
        items=(item,),
    )  # fmt: skip
    drawn = {"q1": kind.draw(random.Random(5))}
    return Paper(learner="L01", sheet=sheet, form=3, questions=drawn)


@pytest.mark.parametrize("name", sorted(questions.all_types()))
def test_nothing_of_the_answer_is_in_the_page(name: str) -> None:
    """Every block unpacked: the question's words, its picture, how it is read, and no more."""
    paper = paper_of(questions.all_types()[name])
    question = paper.questions["q1"]
    page = graded_page(paper)
    found = blocks(page)
    assert set(found) == {"sheet"}
    assert page.count("<script") == 2
    told = json.loads(found["sheet"])
    assert set(told) == {
        *("learner", "sheet", "form", "form_id", "secret", "asked", "items", "said", "shapes")
    }
    assert told["shapes"] == {
        f"{part['measure']} {part['system']}": shape(part["measure"], part["system"])
        for part in told["items"][0]["parts"]
        if part["kind"] == "number"
    }
    (item,) = told["items"]
    assert set(item) - SPOKEN == KEYS
    assert item["ask"] == question.ask()
    assert item["alt"] == (question.drawing().text if question.drawing() else "")
    for part in item["parts"]:
        assert set(part) <= PART_KEYS
    assert b"tEXt" not in b64decode(item["picture"])
    text = json.dumps(told, ensure_ascii=False)
    kept = [*question.hints, question.worked()]
    kept += [slip.sentence for part in question.parts for slip in part.slips]
    kept += [speaker("es")(one) for one in tuple(kept)]
    assert not [one for one in kept if one and one in text]


NUMBER = re.compile(r"\d*[.,]?\d+")
OTHER_SYSTEM = re.compile(r"\([^)]*\)")


@pytest.mark.parametrize("system", ["inch", "metric"])
def test_a_question_says_every_number_of_its_picture(system: str) -> None:
    """A phone shows a picture whole and its letters small: nothing stands there alone."""
    for kind in questions.all_types().values():
        for seed in range(3):
            question = kind.draw(random.Random(seed)).stated_in(system)
            drawing = question.drawing()
            shown = OTHER_SYSTEM.sub("", drawing.text) if drawing else ""
            assert [one for one in NUMBER.findall(shown) if one not in question.ask()] == []


def test_a_page_is_light_and_its_markup_is_ours(tmp_path) -> None:
    """A whole sheet is under 0.3 MB; a title is text; the policy allows this one script."""
    folder = examples.make_course(tmp_path / "course")
    hand_out(folder, "whole_part", ["L01"], mode="graded", day="2026-09-07")
    (paper,) = papers(folder, sheets.load("whole_part"))
    assert len(graded_page(paper).encode()) < MOST_BYTES
    page = graded_page(paper_of(questions.all_types()["seat-depth"]))
    assert ">One &amp; &lt;all&gt;, L01, form 3</span>" in page
    assert "default-src 'none'; script-src 'sha256-" in page
    assert "unsafe-eval" not in page


def test_both_languages_are_in_the_page_and_one_is_seen_first() -> None:
    """Each text stands there in Spanish, too; what a file holds and how it is read stay."""
    paper = paper_of(questions.all_types()["choose-seat"])
    english, spanish = graded_page(paper), graded_page(paper, language="es")
    assert '<html lang="es">' in spanish
    assert blocks(english) == blocks(spanish)
    told = json.loads(blocks(spanish)["sheet"])
    (item,) = told["items"]
    texts = [
        item["ask"],
        *filter(None, [item["alt"]]),
        *(text for part in item["parts"] for text in part["options"]),
    ]
    assert [text for text in texts if text not in told["said"]] == []
    with pytest.raises(SeatworkError, match="no catalog"):
        graded_page(paper, language="tlh")


def test_what_was_not_handed_out_so_is_refused(tmp_path) -> None:
    """Nobody, another sitting, practice: one sentence each, and nothing is kept for it."""
    folder = examples.make_course(tmp_path / "course")
    plan = sheets.load("cones")
    hand_out(folder, "angles", ["L01"], mode="practice", day="2026-09-07")
    with pytest.raises(SeatworkError, match="handed out to nobody"):
        list(papers(folder, plan))
    with pytest.raises(SeatworkError, match="not handed out to L09, sitting 1"):
        list(papers(folder, plan, only=["l09"]))
    with pytest.raises(SeatworkError, match=r"for practice; .* --sitting 2 --mode graded"):
        list(papers(folder, sheets.load("angles")))
