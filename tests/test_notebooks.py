"""Hygiene of the stored notebooks: what a reader sees first, and what keeps nbval honest."""

import ast
import json
import re
import subprocess
import sys
import tomllib
from functools import cache
from itertools import chain
from pathlib import Path

import nbformat
import pytest
from seatwork import opening
from seatwork.marking import given, sheets
from seatwork.shop.folder import package_text

pytestmark = pytest.mark.slow

HOME = opening.source()
LESSONS = sorted((HOME / "notebooks").glob("*.ipynb"))
TAUGHT = [path for path in LESSONS if re.match(r"(0[1-9]|1\d)_", path.name)]
SHEETS = sorted((HOME / "exercises").glob("*.ipynb"))
WORKED = sorted((HOME / "exercises" / "worked").glob("*.ipynb"))
ALL = [*LESSONS, *SHEETS, *WORKED]
# what nbval compares as text, so what must not change from run to run
ADDRESS = re.compile(r" at 0x[0-9a-f]+")
OWN_PATH = re.compile(r"/(home|root|tmp|Users|work)/|[A-Z]:\\\\")
LINK = re.compile(r"(?<!!)\[[^\]]*\]\(([^)\s]+)\)")
IMAGE = re.compile(r"!\[([^\]]*)\]\(([^)\s]+)\)")
BY_NUMBER = re.compile(r"\blessons? \d", re.IGNORECASE)
IGNORED = {"nbval-ignore-output", "nbval-skip"}
MOST_IGNORED = 2
MOST_LINES = 12
MOST_BYTES = 450_000  # a page of bets keeps two stills of a picture: before the bet, and after


def names(paths: list[Path]) -> pytest.MarkDecorator:
    """Run a test once for each notebook, named by its file."""
    return pytest.mark.parametrize(
        "path", paths, ids=[path.relative_to(HOME).as_posix() for path in paths]
    )


@cache
def read(path: Path) -> nbformat.NotebookNode:
    """Read a stored notebook, once."""
    return nbformat.read(path, as_version=4)


def code(path: Path) -> list[nbformat.NotebookNode]:
    """List the code cells."""
    return [cell for cell in read(path).cells if cell.cell_type == "code"]


def prose(path: Path) -> str:
    """Join the words between the code."""
    return "\n\n".join(cell.source for cell in read(path).cells if cell.cell_type == "markdown")


def outputs(path: Path) -> list[nbformat.NotebookNode]:
    """List all stored outputs."""
    return list(chain.from_iterable(cell.outputs for cell in code(path)))


def test_there_are_notebooks_to_look_at() -> None:
    """The start page and lesson 02 are among the lessons."""
    assert {"00_start_here.ipynb", "02_angle_standards.ipynb"} <= {path.name for path in LESSONS}


def test_names_are_plain() -> None:
    """File names are lower-case ASCII without spaces, on every system the same."""
    assert not [path for path in ALL if not re.fullmatch(r"[a-z0-9_]+\.ipynb", path.name)]


@names(ALL)
def test_the_file_is_a_valid_notebook_of_moderate_size(path: Path) -> None:
    """Nbformat accepts the file; it stays under 450 kB."""
    nbformat.validate(read(path))
    assert path.stat().st_size < MOST_BYTES


@names(ALL)
def test_the_kernel_is_the_plain_one(path: Path) -> None:
    """The kernelspec is python3, never an author's own environment."""
    assert read(path).metadata.kernelspec.name == "python3"


@names(ALL)
def test_the_first_cell_is_the_title(path: Path) -> None:
    """A first-level heading opens the notebook, and there is no second one."""
    first = read(path).cells[0]
    assert first.cell_type == "markdown"
    assert first.source.startswith("# ")
    assert len(re.findall(r"^# ", prose(path), re.MULTILINE)) == 1


@names(TAUGHT)
def test_a_lesson_has_its_parts(path: Path) -> None:
    """Goals, a caution, what was learned, and sources are there."""
    told = prose(path)
    parts = ("You will be able to", "⚠️ At the machine", "You learned", "Sources")
    assert [part for part in parts if part.lower() not in told.lower()] == []


@names(TAUGHT)
def test_cautions_stay_rare(path: Path) -> None:
    """At most two caution boxes, so that they are read."""
    assert 1 <= prose(path).count("⚠️") <= 2


@names(ALL)
def test_imports_stand_in_the_first_code_cell_alone(path: Path) -> None:
    """No later cell imports anything."""
    kinds = (ast.Import, ast.ImportFrom)
    later = [
        cell.source
        for cell in code(path)[1:]
        if any(isinstance(node, kinds) for node in ast.walk(ast.parse(cell.source)))
    ]
    assert later == []


@names(ALL)
def test_lessons_take_everything_from_a_door(path: Path) -> None:
    """A notebook imports rooms, and from a room what it hands out: no file within one."""
    for cell in code(path):
        for node in ast.walk(ast.parse(cell.source)):
            if isinstance(node, ast.ImportFrom) and str(node.module).startswith("seatwork"):
                assert node.module.count(".") <= 1, ast.unparse(node)


@names(ALL)
def test_cells_are_short_and_plain(path: Path) -> None:
    """No cell over 12 lines, none with a loop, function, class, magic or trailing semicolon."""
    machinery = (ast.FunctionDef, ast.ClassDef, ast.For, ast.While, ast.AsyncFunctionDef)
    for cell in code(path):
        assert len(cell.source.splitlines()) <= MOST_LINES, cell.source
        assert not cell.source.rstrip().endswith(";"), cell.source
        tree = ast.parse(cell.source)  # a magic does not parse
        assert not [node for node in ast.walk(tree) if isinstance(node, machinery)], cell.source


@names([*LESSONS, *WORKED])
def test_stored_counts_prove_a_clean_run(path: Path) -> None:
    """Execution counts are 1 to n in order: run once, from top to bottom."""
    counts = [cell.execution_count for cell in code(path)]
    assert counts == list(range(1, len(counts) + 1))


@names([*LESSONS, *WORKED])
def test_every_code_cell_shows_something_or_sets_something(path: Path) -> None:
    """A cell without an output is an import or an assignment."""
    silent = (ast.Import, ast.ImportFrom, ast.Assign, ast.AnnAssign)
    for cell in code(path):
        last = ast.parse(cell.source).body[-1]
        assert cell.outputs or isinstance(last, silent), cell.source


@names(ALL)
def test_outputs_do_not_change_from_run_to_run(path: Path) -> None:
    """No memory address, no error stream and no path of the author's computer is stored."""
    stored = json.dumps(outputs(path))
    assert not ADDRESS.search(stored)
    assert not OWN_PATH.search(stored)
    assert not [one for one in outputs(path) if one.get("name") == "stderr"]


@names(ALL)
def test_no_live_view_and_no_script_is_stored(path: Path) -> None:
    """A reopened notebook shows text and stills: no widget view or state, HTML or script."""
    kinds = set(chain.from_iterable(one.get("data", {}) for one in outputs(path)))
    assert not kinds & {
        "application/vnd.jupyter.widget-view+json",
        "application/javascript",
        "text/html",
    }
    assert "widgets" not in read(path).metadata


@names(ALL)
def test_every_picture_has_words(path: Path) -> None:
    """Pictures in prose and stored stills carry alt text; a stored PNG comes with its text."""
    for words, where in IMAGE.findall(prose(path)):
        assert words.strip(), f"no alt text: {where}"
    for one in outputs(path):
        data = one.get("data", {})
        for words, where in IMAGE.findall(data.get("text/markdown", "")):
            assert words.strip(), f"no alt text: {where[:60]}"
        if "image/png" in data:
            assert data.get("text/plain", "").strip()
            assert not data["text/plain"].startswith("<")


@names(ALL)
def test_links_lead_to_files_that_are_there(path: Path) -> None:
    """Links and pictures are relative and lead into the workbook; none needs a network."""
    told = prose(path)
    for where in LINK.findall(told) + [found for _, found in IMAGE.findall(told)]:
        if where.startswith(("#", "attachment:")):
            continue
        assert "://" not in where, f"{where} needs a network"
        assert (path.parent / where.partition("#")[0]).is_file(), f"{where} is not there"


def asked(path: Path) -> dict[str, str]:
    """Give what the stored cells of a sheet ask, by the question's place, without pictures."""
    found = {}
    for cell in code(path):
        name = re.search(r'\.ask\("(\w+)"', cell.source)
        told = [one.data.get("text/markdown", "") for one in cell.outputs if "data" in one]
        if name and told:
            found[name[1]] = re.sub(r"\(data:[^)]*\)", "", "".join(told))
    return found


@names(SHEETS)
def test_a_sheet_asks_what_its_worked_sheet_answers(path: Path) -> None:
    """A stored sheet shows the questions of today, which nbval holds the worked sheet to."""
    assert asked(path) in (asked(path.parent / "worked" / path.name), {})


@names(LESSONS)
def test_few_cells_escape_the_comparison(path: Path) -> None:
    """At most two cells of a lesson keep their output out of nbval's comparison."""
    tags = [set(cell.metadata.get("tags", ())) for cell in code(path)]
    comments = [re.search(r"^#\s*NBVAL_(IGNORE|SKIP)", c.source, re.M) for c in code(path)]
    ignored = [bool(tag & IGNORED) or bool(note) for tag, note in zip(tags, comments, strict=True)]
    assert sum(ignored) <= MOST_IGNORED


@names(SHEETS)
def test_a_worksheet_is_handed_out_unworked(path: Path) -> None:
    """A worksheet stores no answer: no output, and no answer typed into a cell."""
    assert not [cell for cell in code(path) if "answer=" in cell.source]


@names(WORKED)
def test_a_worked_sheet_has_its_worksheet(path: Path) -> None:
    """Each model answer belongs to a worksheet of the same name."""
    assert path.name in {sheet.name for sheet in SHEETS}


@names(WORKED)
def test_the_working_is_of_the_question_asked(path: Path) -> None:
    """What a worked copy answers is what its sheet asks now; other numbers may end alike."""
    drawn = sheets.load(path.stem).draw(given.practice(path.stem).seed)
    asked = [cell.metadata["asked"] for cell in read(path).cells if "asked" in cell.metadata]
    assert sorted(asked) == sorted(question.text() for question in drawn.values())


@names(ALL)
def test_a_lesson_is_named_by_its_title(path: Path) -> None:
    """No page says "lesson 02": a page that comes between would make it false."""
    assert not BY_NUMBER.search(prose(path))


def test_the_first_link_of_the_start_page_is_the_first_lesson() -> None:
    """A newcomer's first click leads to the page that stands first, as its list does."""
    links = LINK.findall(prose(HOME / "notebooks" / "00_start_here.ipynb"))
    assert links[0] == "01_seats_and_their_screws.ipynb"


@pytest.mark.slow
def test_every_page_is_listed_and_linked_in_order() -> None:
    """Each page is in the list of contents; links, start page and README are as it writes."""
    listed = tomllib.loads(package_text("contents.toml"))["page"]
    assert {page["file"] for page in listed} == {path.stem for path in LESSONS}
    command = [sys.executable, str(HOME / "tests" / "contents.py"), "--check"]
    checked = subprocess.run(command, capture_output=True, text=True, check=False)
    assert (checked.returncode, checked.stdout) == (0, ""), checked.stdout + checked.stderr


def test_the_start_page_names_every_worksheet() -> None:
    """No sheet is left for a learner to find alone."""
    links = set(LINK.findall(prose(HOME / "notebooks" / "00_start_here.ipynb")))
    assert {f"../exercises/{path.name}" for path in SHEETS} <= links
