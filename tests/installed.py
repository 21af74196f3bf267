"""Prove that an installation works, whatever versions it holds, by using it.

    python tests/installed.py

imports every room, asks every command for its help, and plans, prints, sets, marks and checks
through the commands, as people do, in a folder of its own. It stops at the first fault and
says which. It wants nothing but seatwork itself; the tests come after it.
"""

import csv
import importlib
import pkgutil
import subprocess
import sys
import tempfile
from pathlib import Path

import seatwork
from seatwork import record
from seatwork.cli.commands import COMMANDS
from seatwork.marking import examples, sheets

WORKED = Path(__file__).parents[1] / "exercises" / "worked"
NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
SHOP = ("--material", "6061 aluminum", "--machine", "bench drill press")
SHEET = "cones"


def run(folder: Path, *words: str, code: int = 0) -> str:
    """Give a command in a folder and return what it printed; another ending is the fault."""
    command = [sys.executable, "-m", "seatwork.cli", *words]
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True, encoding="utf-8")
    if done.returncode != code or "Traceback" in done.stderr:
        sys.exit(f"seatwork {' '.join(words)}: ended with {done.returncode}\n{done.stderr}")
    return done.stdout


def expect(holds: bool, fault: str) -> None:
    """Stop with a fault unless something holds."""
    if not holds:
        sys.exit(fault)


def rooms(folder: Path) -> None:
    """Import every module of every room."""
    found = pkgutil.walk_packages(seatwork.__path__, "seatwork.")
    names = [module.name for module in found if not module.name.endswith("__main__")]
    for name in names:
        importlib.import_module(name)
    expect(len(names) > 100, f"only {len(names)} modules found")


def helps(folder: Path) -> None:
    """Ask the program and every command for help."""
    told = run(folder, "--help")
    for name in COMMANDS:
        expect(name in told, f"--help does not list {name}")
        expect("Usage" in run(folder, name, "--help"), f"{name} --help tells no usage")


def plans(folder: Path) -> None:
    """Plan a note; an inch flat head is 82° (common practice, no source)."""
    expect("82°" in run(folder, "plan", NOTE, *SHOP), "the plan has no 82° seat")


def prints(folder: Path) -> None:
    """Print the card of the note."""
    run(folder, "card", NOTE, "card.pdf", *SHOP)
    expect((folder / "card.pdf").read_bytes().startswith(b"%PDF"), "the card is no PDF")


def marks(folder: Path) -> None:
    """Hand a sheet out to twelve learners and mark what they answered."""
    course = examples.make_course(folder / "course")
    run(folder, "hand-out", SHEET, "--to", "out")
    answers = examples.answer(course, sheets.load(SHEET), record.forms(course))
    told = run(folder, "mark", SHEET, str(answers), "--feedback")
    with (course / f"{SHEET}-marks.csv").open(encoding="utf-8") as table:
        learners = {row["learner"] for row in csv.DictReader(table)}
    expect(learners == set(examples.CLASS), f"{len(learners)} of 12 were marked\n{told}")


def checks(folder: Path) -> None:
    """Let the referee check a worked sheet."""
    (folder / f"{SHEET}.ipynb").write_bytes((WORKED / f"{SHEET}.ipynb").read_bytes())
    run(folder, "check", f"{SHEET}.ipynb")


def looks(folder: Path) -> None:
    """Let the installation be looked over."""
    expect("All is well." in run(folder, "doctor"), "doctor found a fault")


def main() -> None:
    """Try everything, one after the other."""
    for trial in (rooms, helps, plans, prints, marks, checks, looks):
        with tempfile.TemporaryDirectory() as folder:
            trial(Path(folder))
        sys.stdout.write(f"{trial.__name__}: well\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
