"""The referee, through its command: all cases lie in one folder, and one run looks at them.

The right answers to cones are worked by hand in ``exercises/worked/cones.ipynb``.
"""

import hashlib
import json
import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import pytest
from seatwork.marking import given, sheets
from seatwork.marking.text import right_answer
from seatwork.worksheet import Desk

ROOT = Path(__file__).resolve().parents[2]
EXERCISES = ROOT / "exercises"
SHEETS = sorted(path.stem for path in (EXERCISES / "sheets").glob("*.toml"))
RIGHT = {"c1": '".211 in"', "c2": '".652 in"', "c3": '("b", ".022 in")'}
TOOL = ("Cell outputs differ", "Traceback", "nbval", "pytest", "assert", "FAILED", "desk.py")

pytestmark = pytest.mark.slow


def book(name: str = "cones") -> dict:
    """Read a sheet as it is delivered."""
    return json.loads((EXERCISES / f"{name}.ipynb").read_text(encoding="utf-8"))


def worked(**answers: str) -> dict:
    """Give the sheet on cones with every answer right, but for those named."""
    found = book()
    for cell in found["cells"]:
        for name, answer in (RIGHT | answers).items():
            if answer and "".join(cell["source"]) == f'sheet.ask("{name}")':
                cell["source"] = f'sheet.ask("{name}", answer={answer})'
    return found


def without(word: str) -> dict:
    """Give the right sheet without the code cell that holds a word."""
    found = worked()
    found["cells"] = [
        cell
        for cell in found["cells"]
        if cell["cell_type"] == "markdown" or word not in "".join(cell["source"])
    ]
    return found


def with_cell(source: str, place: int = 4) -> dict:
    """Give the right sheet with one more cell of code."""
    found = worked()
    cell = {"cell_type": "code", "source": source, "metadata": {}, "outputs": []}
    found["cells"].insert(place, cell)
    return found


def written(old: str, new: str) -> dict:
    """Give the right sheet with a piece of its code written otherwise."""
    return json.loads(json.dumps(worked()).replace(json.dumps(old)[1:-1], json.dumps(new)[1:-1]))


def workbook(folder: Path) -> Path:
    """Make a workbook with the sheet on cones, untouched."""
    (folder / "exercises").mkdir(parents=True)
    (folder / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (folder / "exercises" / "cones.ipynb").write_bytes((EXERCISES / "cones.ipynb").read_bytes())
    return folder


def answer_right(desk: Desk, *names: str) -> None:
    """Answer questions right, with the numbers that are drawn now."""
    for name in names:
        desk.keep(name, [right_answer(part) for part in desk.question(name).parts])


def renewed(folder: Path) -> None:
    """Draw new numbers for c1, and answer all right in the forms."""
    desk = Desk(sheets.load("cones"), given.practice("cones"), workbook(folder) / "answers")
    before = desk.question("c1")
    desk.renew("c1")
    assert desk.question("c1") != before
    answer_right(desk, "c1", "c2", "c3")


def graded(folder: Path) -> None:
    """Hand out a graded sheet: one answered right, one wrong, one in part."""
    mine = replace(given.practice("cones"), learner="L07", mode="graded", seed=bytes(32))
    desk = Desk(sheets.load("cones"), mine, workbook(folder) / "answers")
    (folder / "cones.given.json").write_text(mine.text(), encoding="utf-8")
    answer_right(desk, "c1")
    desk.keep("c2", ["99 in"])
    desk.keep("c3", ["b", ""])


def practice_numbers(folder: Path) -> None:
    """Hand out numbers of their own, to a page that answers the model's."""
    mine = replace(given.practice("cones"), learner="L07", seed=bytes(32))
    (workbook(folder) / "cones.given.json").write_text(mine.text(), encoding="utf-8")
    page = written("sw.sheet(", "sw.worksheet.model_sheet(")
    (folder / "exercises" / "cones.ipynb").write_text(json.dumps(page), encoding="utf-8")


def own_code(folder: Path) -> None:
    """Give the workbook question code of its own, which notes where it runs, and fails."""
    (workbook(folder) / "questions").mkdir()
    code = (
        "import os\nfrom pathlib import Path\n"
        "Path(__file__).with_name('process').write_text(str(os.getpid()))\n"
        "raise ValueError('no type here')\n"
    )
    (folder / "questions" / "mine.py").write_text(code, encoding="utf-8")
    (folder / "exercises" / "sheets").mkdir()
    text = (EXERCISES / "sheets" / "cones.toml").read_text(encoding="utf-8")
    text += '\n[[questions]]\nid = "c4"\ntype = "my-question"\n'
    (folder / "exercises" / "sheets" / "cones.toml").write_text(text, encoding="utf-8")
    page = with_cell('sheet.ask("c4")', place=-1)
    (folder / "exercises" / "cones.ipynb").write_text(json.dumps(page), encoding="utf-8")


Page = dict | str | Callable[[Path], None]
PASSING: dict[str, Page] = {
    "right": worked(),
    "brackets [1] and::colons, spaces": worked(),
    "new numbers": renewed,
    "a file beside it": worked(),
    "a browser's copy": worked(),
}
OTHERS: dict[str, Page] = {
    "one wrong": worked(c1='".422"'),
    "two wrong": worked(c2='"7"', c3='("a", "12")'),
    "in part": worked(c2="", c3='("b", "")'),
    "unreadable": worked(c1='"two"'),
    "emptied": '{"cells": []}',
    "no question": without('"c2"'),
    "no first cell": without("sw.sheet"),
    "foreign finish": written("sheet.finish()", "sheet  # sheet.finish() is not run"),
    "meant to fail": written('sheet.ask("c2", answer', '# NBVAL_SKIP\nsheet.ask("c2", answer'),
    "stopping cell": with_cell("depth = 1 / 0\ndepth"),
    "half characters": with_cell("raise ValueError('\ud800 \x1b[31m')"),
    "unclosed": written('answer=".211 in")', 'answer=".211 in"'),
    "a missing module": with_cell("import no_such_thing", place=1) | {"metadata": {}},
    "other sheet": book("angles"),
    "graded": graded,
    "practice numbers": practice_numbers,
    "own code": own_code,
    "no sheet": {"cells": [{"cell_type": "code", "source": "1 + 1"}]},
    "no notebook": "nothing",
    "a list": "[]",
    "half a cell": '{"cells": [{"cell_type": "code"}]}',
    "nested": '{"cells": ' + "[" * 100_000,
}


@dataclass(frozen=True, kw_only=True)
class Run:
    """What one run of the command said: its exit code, and the lines for each case."""

    code: int
    process: int
    lines: dict[str, list[str]]
    told: str
    changed: list[str]


def lay_out(folder: Path, cases: dict[str, Page]) -> list[Path]:
    """Write the cases below a folder and give the page of each."""
    pages = []
    for name, page in cases.items():
        place = folder / name
        if callable(page):
            page(place)
            pages.append(place / "exercises" / "cones.ipynb")
            continue
        place.mkdir(parents=True)
        file = {"a browser's copy": "cones (1).ipynb", "no sheet": "mine.ipynb"}
        pages.append(place / file.get(name, "cones.ipynb"))
        text = page if isinstance(page, str) else json.dumps(page)
        pages[-1].write_text(text, encoding="utf-8")
    return pages


def fingerprints(folder: Path) -> dict[str, str]:
    """Give every file below a folder with what it holds."""
    return {
        str(path.relative_to(folder)): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def run(folder: Path, names: list[str], pages: list[Path]) -> Run:
    """Run ``seatwork check`` on pages, from a folder above them."""
    before = fingerprints(folder)
    words = [str(page.relative_to(folder)) for page in pages]
    command = [sys.executable, "-m", "seatwork.cli", "check", *words]
    with subprocess.Popen(
        command, cwd=folder, text=True, stdout=subprocess.PIPE, stderr=subprocess.STDOUT
    ) as running:
        told, _ = running.communicate(timeout=400)
    blocks: list[list[str]] = []
    for line in told.splitlines():
        if line.startswith("  "):
            blocks[-1].append(line.strip())
        else:
            blocks.append([line])
    after = fingerprints(folder)
    return Run(
        code=running.returncode,
        process=running.pid,
        lines=dict(zip(names, blocks, strict=True)),
        told=told,
        changed=[name for name in {**before, **after} if before.get(name) != after.get(name)],
    )


def look(folder: Path, cases: dict[str, Page]) -> Run:
    """Lay cases out and run the command on all of them."""
    return run(folder, list(cases), lay_out(folder, cases))


@pytest.fixture(scope="session")
def passing(tmp_path_factory: pytest.TempPathFactory) -> Run:
    """Run the cases in which everything is right."""
    folder = tmp_path_factory.mktemp("right")
    beside = folder / "a file beside it"
    found = lay_out(folder, PASSING)
    for name in ("json.py", "pytest.py", "conftest.py", "pytest.ini"):
        (beside / name).write_text("raise SystemExit(3)\n", encoding="utf-8")
    return run(folder, list(PASSING), found)


@pytest.fixture(scope="session")
def others(tmp_path_factory: pytest.TempPathFactory) -> Run:
    """Run all other cases, and every sheet as it is delivered."""
    folder = tmp_path_factory.mktemp("others")
    pages = lay_out(folder, OTHERS)
    untouched = workbook(folder / "untouched") / "exercises"
    for name in SHEETS:
        page = untouched / f"{name}.ipynb"
        page.write_bytes((EXERCISES / f"{name}.ipynb").read_bytes())
        pages.append(page)
    return run(folder, [*OTHERS, *SHEETS], pages)


@pytest.mark.parametrize("case", PASSING)
def test_a_right_page_passes(passing: Run, case: str) -> None:
    """Whatever its folder is called, whatever lies beside it, and after new numbers too."""
    head, *lines = passing.lines[case]
    assert head.endswith("the referee passes it.")
    assert lines == ["c1: right.", "c2: right.", "c3: right."]


def test_all_right_ends_with_zero_and_anything_else_does_not(passing: Run, others: Run) -> None:
    """The exit code says whether everything asked is right."""
    assert passing.code == 0
    assert others.code == 1


@pytest.mark.parametrize("name", SHEETS)
def test_an_untouched_sheet_says_so(others: Run, name: str) -> None:
    """Each question of each delivered sheet has its line, and nothing else is said."""
    head, *lines = others.lines[name]
    assert head.endswith(f"{name}.ipynb: not yet.")
    assert lines == [f"{item.id}: not answered yet." for item in sheets.load(name).items]


@pytest.mark.parametrize(
    ("case", "said"),
    [
        ("one wrong", ["c1: answered, not right yet. *You used the whole difference*",
                       "c2: right.", "c3: right."]),
        ("two wrong", ["c1: right.", "c2: answered, not right yet. *",
                       "c3: answered, not right yet. (a) *You swapped the two ends.* (b) *"]),
        ("in part", ["c1: right.", "c2: not answered yet.",
                     "c3: answered in part, still empty: (b)."]),
        ("unreadable", ["c1: answered, not right yet. That could not be read. *",
                        "c2: right.", "c3: right."]),
        ("emptied", ['*missing*: sheet = sw.sheet("cones")', '*missing*: sheet.ask("c1")',
                     '*missing*: sheet.ask("c2")', '*missing*: sheet.ask("c3")',
                     "*missing*: sheet.finish()", "*run seatwork open*"]),
        ("no question", ['*missing*: sheet.ask("c2")', "*seatwork open*", "c1: right.",
                         "c3: right."]),
        ("no first cell", ['*missing*: sheet = sw.sheet("cones")',
                           "*stops, and 4 more after it: NameError*", "*seatwork open*",
                           "c1: not looked at*", "c2: not looked at*", "c3: not looked at*"]),
        ("foreign finish", ["*missing*: sheet.finish()", "*seatwork open*", "c1: right.",
                            "c2: right.", "c3: right."]),
        ("stopping cell", ["*'depth = 1 / 0' stops: ZeroDivisionError*", "c1: right.",
                           "c2: right.", "c3: right."]),
        ("half characters", ["*stops: ValueError: ? ?[31m*", "c1: right.", "c2: right.",
                             "c3: right."]),
        ("unclosed", ["*stops: line 1 cannot be read*", "c1: not looked at*", "c2: right.",
                      "c3: right."]),
        ("a missing module", ["*'import no_such_thing' stops: ModuleNotFoundError*", "c1: right.",
                            "c2: right.", "c3: right."]),
        ("graded", ["c1: answered.", "c2: answered.", "c3: answered in part, still empty: (b).",
                    "This sheet is graded: your instructor says what is right."]),
        ("practice numbers", ["*other numbers than those given to L07*", "c1: right.",
                              "c2: right.", "c3: right."]),
        ("no sheet", ["The page opens no sheet*"]),
        ("no notebook", ["*that is no notebook; name one of your sheets*"]),
        ("a list", ["*that is no notebook; name one of your sheets*"]),
        ("half a cell", ["*that is no notebook; name one of your sheets*"]),
        ("nested", ["*that is no notebook; name one of your sheets*"]),
    ],
)  # fmt: skip
def test_what_is_not_right_is_said_in_words(others: Run, case: str, said: list[str]) -> None:
    """One line for each question, what the page lacks and what would do; in this order."""
    head, *lines = others.lines[case]
    assert head.endswith("not yet.")
    assert len(lines) == len(said), lines
    for line, pattern in zip(lines, said, strict=True):
        pieces = iter(pattern.split("*"))
        place = len(first := next(pieces))
        assert line.startswith(first)
        for piece in pieces:
            assert piece in line[place:], (line, piece)
            place = line.index(piece, place) + len(piece)
        assert pattern.endswith("*") or place == len(line), line


def test_a_mark_for_the_test_tool_skips_no_question(others: Run) -> None:
    """A comment that would make nbval pass a cell over is a comment and nothing else."""
    assert others.lines["meant to fail"][1:] == ["c1: right.", "c2: right.", "c3: right."]


def test_a_page_of_another_sheet_is_not_passed(others: Run) -> None:
    """The sheet that the file is named for is not the one it opens."""
    assert others.lines["other sheet"][1] == "The page is named cones, but opens the sheet angles."


def test_own_question_code_runs_in_a_process_of_its_own(
    others: Run, tmp_path_factory: pytest.TempPathFactory
) -> None:
    """A learner's question code that fails is told, and never ran in the command's process."""
    _, stops, *lines = others.lines["own code"]
    assert "'sheet.ask(\"c4\")' stops" in stops
    assert "my-question: it is left out: mine.py" in stops
    assert lines[:3] == [f"c{number}: right." for number in (1, 2, 3)]
    assert lines[3].startswith("c4: could not be judged: question type my-question")
    noted = [name for name in others.changed if name.endswith("process")]
    assert len(noted) == 1
    folder = next(iter(tmp_path_factory.getbasetemp().glob("others*")))
    assert int((folder / noted[0]).read_text()) not in (others.process, os.getpid())


def test_the_test_tool_is_never_heard(passing: Run, others: Run) -> None:
    """No word of nbval or pytest, no traceback and no control character reaches the learner."""
    for told in (passing.told, others.told):
        assert not [word for word in TOOL if word in told]
        assert all(character.isprintable() or character == "\n" for character in told)


def test_a_check_changes_nothing(passing: Run, others: Run) -> None:
    """Pages, answers and everything beside them are as before; nothing is left lying about."""
    kept = [name for name in others.changed if "questions" not in name]
    assert passing.changed == kept == []


def test_what_is_not_there_is_told(tmp_path: Path) -> None:
    """A missing page, a folder, and no room for temporary files each get one sentence."""
    assert "there is no such notebook" in run(tmp_path, ["a"], [tmp_path / "a.ipynb"]).told
    (tmp_path / "folder").mkdir()
    assert "but a folder" in run(tmp_path, ["b"], [tmp_path / "folder"]).told
    code = (
        "import sys, tempfile; tempfile.tempdir = '/dev/null/no'\n"
        "from seatwork.cli import main\nsys.argv = ['seatwork', 'check', 'a.ipynb']\nmain()"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=tmp_path, capture_output=True, text=True
    )
    assert (done.returncode, len(done.stderr.splitlines())) == (1, 1), done.stderr


@pytest.mark.long
def test_every_sheet_is_refereed(tmp_path: Path) -> None:
    """For each sheet the worked copy passes, and one wrong answer in it is found."""
    spoiled = {}
    for name in SHEETS:
        text = (EXERCISES / "worked" / f"{name}.ipynb").read_text(encoding="utf-8")
        page = json.loads(text)
        asked = [cell for cell in page["cells"] if "answer=" in "".join(cell["source"])]
        code = "".join(asked[-1]["source"])
        spoiled[name] = code.split('"')[1]
        wrong = code[: code.index("answer=")] + 'answer=("9.99", "9.99", "9.99", "9.99"))'
        for folder, source in (("worked", code), ("wrong", wrong)):
            asked[-1]["source"] = source
            (tmp_path / folder).mkdir(exist_ok=True)
            (tmp_path / folder / f"{name}.ipynb").write_text(json.dumps(page), encoding="utf-8")
    right = run(tmp_path, SHEETS, [tmp_path / "worked" / f"{name}.ipynb" for name in SHEETS])
    assert right.code == 0, right.told
    found = run(tmp_path, SHEETS, [tmp_path / "wrong" / f"{name}.ipynb" for name in SHEETS])
    for name in SHEETS:
        lines = found.lines[name][1:]
        not_right = [line.split(":")[0] for line in lines if not line.endswith(": right.")]
        assert not_right == [spoiled[name]]


@pytest.mark.long
def test_a_page_that_never_ends_or_ends_its_kernel_is_told(tmp_path: Path) -> None:
    """A loop without end and a dead kernel each get a sentence, and the next page still runs."""
    cases: dict[str, Page] = {
        "loop": with_cell("while True:\n    pass"),
        "dead": with_cell("import os\nos._exit(3)"),
        "right": worked(),
    }
    found = look(tmp_path, cases)
    assert "'while True:' stops: it ran too long" in found.lines["loop"][1]
    assert "ends at the cell that begins with 'import os'" in found.lines["dead"][1]
    assert found.lines["right"][0].endswith("the referee passes it.")
    assert found.code == 1
