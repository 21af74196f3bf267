"""What a stranger reads first leads on: links to files and headings, and commands there are."""

import re
from pathlib import Path

import pytest
import typer
from seatwork.cli import program

PROJECT = Path(__file__).parents[1]
PAGES = [PROJECT / name for name in ("README.md", "DEVELOPERS.md", "toolkit/SCHOOL.md")]
LINK = re.compile(r"\]\((?!https?:)([^)#]*)(?:#([^)]+))?\)")
COMMAND = re.compile(r"(?<![\w.-])(?<!import )seatwork ([a-z][a-z-]*)(?: ([a-z][a-z-]*))?")


def anchors(page: Path) -> set[str]:
    """Give the anchors of a Markdown page's headings, as repositories on the web make them."""
    headings = re.findall(r"^#+ (.*)$", page.read_text("utf-8"), re.MULTILINE)
    return {re.sub(r"[^\w -]", "", heading.lower()).replace(" ", "-") for heading in headings}


@pytest.mark.parametrize("page", PAGES, ids=lambda path: path.stem)
def test_every_link_leads_somewhere(page: Path) -> None:
    """A link names a file or folder of the project, and a heading that its page has."""
    dead = []
    for name, heading in LINK.findall(page.read_text("utf-8")):
        target = page.parent / name if name else page
        if not target.exists() or (heading and heading not in anchors(target)):
            dead.append(f"{name}#{heading}")
    assert dead == []


def commands() -> set[str]:
    """Give every command, such as `mark`, `hub` and `hub recipe`."""
    top = typer.main.get_command(program.app)
    below = {name: getattr(one, "commands", {}) for name, one in top.commands.items()}
    return set(below) | {f"{name} {word}" for name, words in below.items() for word in words}


@pytest.mark.parametrize("page", PAGES, ids=lambda path: path.stem)
def test_every_command_is_one(page: Path) -> None:
    """What a page says to type is a command, and after a group of commands one of the group."""
    quoted = "\n".join(re.findall(r"```.*?```|`[^`\n]+`", page.read_text("utf-8"), re.DOTALL))
    known = commands()
    groups = {name.split()[0] for name in known if " " in name}
    said = COMMAND.findall(quoted)
    asked = {f"{one} {two}" if one in groups and two else one for one, two in said}
    assert asked
    assert asked - known == set()
