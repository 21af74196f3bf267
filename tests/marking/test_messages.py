"""Answers in a message, and names that mail and phones make of an answer file's."""

from dataclasses import replace

import pytest
from seatwork.marking import Answer, AnswerFile
from seatwork.marking.messages import in_message
from seatwork.marking.submissions import collect

FILE = AnswerFile(
    learner="L01",
    sheet="cones",
    form=1,
    answers={"c1": Answer(parts=("1 1/4 in\u2028",)), "c2": Answer(parts=("b", ""), sure=True)},
)
SECRET = bytes(range(32))
LINE = FILE.content().decode()


def taken(tmp_path, name: str, content: str):
    """Hand one file in, and return what was found."""
    (tmp_path / name).write_bytes(content.encode())
    (found,) = collect(tmp_path)
    return found


@pytest.mark.parametrize(
    ("name", "content"),
    [
        ("L01-cones-1 (1).json", LINE),
        ("L01-cones-1.json.txt", LINE),
        ("L01-cones-1 (2).json.TXT", LINE),
        ("message.txt", LINE),
        ("from L01.txt", f"Good evening,\r\n\r\n  {LINE.rstrip()}  \r\n\r\nL01\r\n"),
        ("bom.txt", "\ufeff" + LINE),
    ],
)
def test_the_answers_are_taken(tmp_path, name: str, content: str) -> None:
    """As a second download, with a second ending, or as a line in a message: the same answers."""
    assert taken(tmp_path, name, content).file == FILE


@pytest.mark.parametrize(
    ("content", "why"),
    [
        ("Good evening", "no answers copied from a page"),
        ("", "no answers copied from a page"),
        (LINE + LINE, "more than once"),
        (LINE.replace(" ", "\n", 1), "broken over several lines"),
        (LINE[:-5], "cut off"),
        (LINE.replace("{", "\u201d", 1), "no answers copied"),
        (LINE.replace('"parts"', '"part"'), "other fields than it should"),
    ],
)
def test_what_a_mail_program_changed_goes_to_a_person(tmp_path, content: str, why: str) -> None:
    """Above all a broken line: a space would be lost, and 1 1/4 would be read as 11/4."""
    found = taken(tmp_path, "message.txt", content)
    assert found.file is None
    assert why in found.doubt


def test_a_page_handed_in_is_told_as_one(tmp_path) -> None:
    """The page holds no answers: they are kept in the browser."""
    assert "holds no answers" in taken(tmp_path, "L01-cones-1.html", "<html>").doubt


CURLY = replace(
    FILE,
    form_id="K7QM-4XRD",
    answers={"c1": Answer(parts=('1/4"', "\u201cabout\u201d 3 mm", '"', 'a\\"b"', ""))},
)


@pytest.mark.parametrize("mark", ["\u201d", "\u201c", "\u201e", "\u201f"])
def test_quotation_marks_that_a_phone_made_curly_are_read(tmp_path, mark: str) -> None:
    """Those of the answers themselves: inch marks, and what was typed curly, come back as typed."""
    line = CURLY.sealed(SECRET).content().decode().replace('"', mark)
    found = taken(tmp_path, "message.txt", f"{mark}Here{mark}\n{line}")
    assert found.file == CURLY.sealed(SECRET)
    assert found.file.has_seal(SECRET)


def test_curly_marks_that_end_a_text_elsewhere_go_to_a_person(tmp_path) -> None:
    """An answer that looks like the end of one is not guessed at."""
    odd = replace(FILE, answers={"c1": Answer(parts=("\u201d:\u201d",))})
    line = odd.content().decode().replace('"', "\u201d")
    found = taken(tmp_path, "message.txt", line)
    assert found.file is None
    assert "broken" in found.doubt


def test_a_sealed_line_is_whole() -> None:
    """A line whose last entry is a seal ends otherwise, and is as whole as one without."""
    line = LINE.strip().removesuffix("}") + ',"seal":"abc"}'
    assert in_message(f"Here it is\n{line}\nL07".encode()) == line.encode()
