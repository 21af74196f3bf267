"""The recipes of DEVELOPERS.md name files that are there."""

import re
from pathlib import Path

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
RECIPES = (PROJECT / "DEVELOPERS.md").read_text("utf-8")
PATH = re.compile(r"`([\w.-]+(?:/[\w.-]+)+/?)`")
NAMED = re.compile(r"NAME|DOOR|OUTDIR|FOLDER|SHEET")
"""Words that stand for a name of the reader's own."""


def stands(name: str) -> bool:
    """Tell whether a path is there, from the project, the package, or a room of the package."""
    pattern = NAMED.sub("*", name).removesuffix("/")
    places = (PROJECT, PACKAGE, *(path for path in PACKAGE.iterdir() if path.is_dir()))
    return any(next(place.glob(pattern), None) is not None for place in places)


def test_every_path_that_the_page_names_is_there():
    """A path with a folder in it stands from the project's folder, the package's or a room's."""
    named = sorted(set(PATH.findall(RECIPES)))
    assert len(named) > 50
    assert [name for name in named if not stands(name)] == []
    assert not stands("benches/bank/NAME_stool.py")


CHANGES = (
    *("Change a bench", "Change a question", "Add a row to a table", "Add a slip"),
    *("Change a pick", "Change a sentence of a card"),
)


def test_the_six_changes_have_recipes():
    """Who changes a bench, question, table, slip, pick or card opens this page and its files."""
    for change in CHANGES:
        assert f"- **{change}**" in RECIPES
