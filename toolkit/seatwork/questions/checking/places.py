"""Where the files of a question type lie: in the package, and among the project's tests."""

from pathlib import Path

from seatwork.questions import bank

BANK = Path(bank.__file__).resolve().parent
PACKAGE = BANK.parents[1]


def project_tests() -> Path | None:
    """Return the folder of the tests of questions; None where the package is installed alone."""
    folder = PACKAGE.parents[1] / "tests" / "questions"
    return folder if folder.is_dir() and (PACKAGE.parents[1] / "pyproject.toml").is_file() else None


def stem(name: str) -> str:
    """Return the file name of a type: ``seat-depth`` is in ``seat_depth.py``."""
    return name.replace("-", "_")
