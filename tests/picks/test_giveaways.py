"""No bet is given away: what a learner can see of a stored page before locking does not answer."""

import re
from functools import cache
from pathlib import Path

import nbformat
import pytest
from seatwork import opening
from seatwork.picks.wording import every, words

pytestmark = pytest.mark.slow

PAGES = sorted((opening.source() / "notebooks").glob("*.ipynb"))
CALL = re.compile(r'\bsw\.pick\("([^"]+)"')
FOLD = re.compile(r"<details>.*?</details>", re.DOTALL)
PICTURE = re.compile(r"\(data:[^)]*\)")
ENDS = re.compile(r"^> \*\*⚠️|^## (Check|Exit ticket)$", re.MULTILINE)
ASKS = re.compile(r"\*\*(Think|Find what is wrong)\.\*\*|^## Find what is wrong$", re.MULTILINE)
OLD_WAYS = re.compile(r"\bthen press \*\*(Show the answer|Cut it open|Cut number 2|Tighten it)")


@cache
def cells(path: Path) -> list[nbformat.NotebookNode]:
    """Read the cells of a stored page, once."""
    return list(nbformat.read(path, as_version=4).cells)


def shown(cell: nbformat.NotebookNode) -> str:
    """Give all that a cell shows before a bet: source, outputs, alternative text; no fold."""
    texts = [cell.source]
    for output in cell.get("outputs", ()):
        data = output.get("data", {})
        texts += [output.get("text", ""), output.get("evalue", "")]
        texts += [data.get("text/plain", ""), data.get("text/markdown", "")]
    return PICTURE.sub("", FOLD.sub("", "\n".join(texts)))


def asked_in(path: Path) -> list[tuple[int, str]]:
    """List the picks of a page with the places of their cells."""
    calls = ((n, CALL.search(cell.source)) for n, cell in enumerate(cells(path)))
    return [(n, call[1]) for n, call in calls if call and cells(path)[n].cell_type == "code"]


def seen_before(path: Path, at: int) -> str:
    """Give what is seen of a page before the bet: all above, and below it through the next pick.

    Below the last pick of a page it is all that stands before the page's caution or its Check.
    """
    told = [shown(cell) for cell in cells(path)[:at]]
    for cell in cells(path)[at + 1 :]:
        if cell.cell_type == "markdown" and ENDS.search(cell.source):
            break
        told.append(shown(cell))
        if cell.cell_type == "code" and CALL.search(cell.source):
            break
    return "\n".join(told)


ALL = [(path, at, name) for path in PAGES for at, name in asked_in(path)]


@pytest.mark.parametrize(
    ("path", "at", "name"), ALL, ids=[f"{path.stem}-{name}" for path, _, name in ALL]
)
def test_nothing_seen_before_the_bet_answers_it(path: Path, at: int, name: str) -> None:
    """None of its giveaway words stands above it, or below it through the next pick."""
    seen = seen_before(path, at)
    assert [one for one in words(name).giveaway if one in seen] == []


@pytest.mark.parametrize(
    ("path", "at", "name"), ALL, ids=[f"{path.stem}-{name}" for path, _, name in ALL]
)
def test_its_own_cell_answers_only_in_its_fold(path: Path, at: int, name: str) -> None:
    """The cell is one line; what it stores says the question, and its answer in a closed fold."""
    cell = cells(path)[at]
    assert len(cell.source.splitlines()) == 1
    (still,) = [output.data for output in cell.outputs if output.get("data")]
    assert "<details><summary>" in still["text/markdown"]
    assert still["text/plain"].startswith("Your pick.")
    assert words(name).after[:20] not in shown(cell)


def test_a_word_that_answers_would_be_found() -> None:
    """The check sees what stands above a pick, and a section that a heading parts from it."""
    path, at, _ = ALL[0]
    assert cells(path)[0].source.split("\n")[0] in seen_before(path, at)
    lesson = next(one for one in PAGES if one.stem.endswith("_chatter"))
    (at,) = [n for n, name in asked_in(lesson) if name == "chatter-flutes"]
    below = cells(lesson)[at + 1].source
    assert below.startswith("## ")
    assert below.split("\n")[-1] in seen_before(lesson, at)


def test_every_pick_is_asked_once_on_its_page() -> None:
    """Each pick stands on the page that its words name, and on no other, in that order."""
    found: dict[str, list[str]] = {}
    for path in PAGES:
        found.setdefault(re.sub(r"^\d\d_", "", path.stem), []).extend(
            name for _, name in asked_in(path)
        )
    wanted: dict[str, list[str]] = {}
    for pick in every().values():
        wanted.setdefault(pick.page, []).append(pick.name)
    assert {page: names for page, names in found.items() if names} == wanted


@pytest.mark.parametrize("path", PAGES, ids=[path.stem for path in PAGES])
def test_every_think_takes_a_bet(path: Path) -> None:
    """The next code cell after **Think.** or **Find what is wrong** is a pick, on every page."""
    listed = cells(path)
    for n, cell in enumerate(listed):
        if cell.cell_type == "markdown" and ASKS.search(cell.source):
            following = next(one for one in listed[n + 1 :] if one.cell_type == "code")
            assert CALL.search(following.source), cell.source[-200:]
        assert not OLD_WAYS.search(cell.source), cell.source
