"""A person's Python file is run as it is written."""

import os
from pathlib import Path

from seatwork.questions.type.running import run_file


def test_a_change_of_one_digit_in_the_same_second_is_run(tmp_path: Path) -> None:
    """Same size and same time of saving: the new text counts, and no compiled copy is left."""
    path = tmp_path / "mine.py"
    found = []
    for text in ("answer = 1\n", "answer = 2\n"):
        path.write_text(text, encoding="utf-8")
        os.utime(path, (1_767_225_600, 1_767_225_600))
        found.append(run_file(path, "own").answer)
    assert found == [1, 2]
    assert list(tmp_path.iterdir()) == [path]
