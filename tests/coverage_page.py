"""Run the tests, see which lines none of them reaches, and write ``toolkit/proof/coverage.md``.

``python tests/coverage_page.py`` takes a quarter of an hour on two quiet cores and wants
``pip install -e ".[test,long]"``. It runs the everyday tests but those in the browser and the
notebooks' cells. Functions with lines that were not reached stand in ``tests/proof/unreached.toml``
with the reason, by whoever looked; one that does not is listed first, as not looked at. With
``--kept`` nothing is run: the page is written from what the last run left.
"""

import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

PROJECT = Path(__file__).parents[1]
sys.path.insert(0, str(Path(__file__).parent))

from proof.reaching import page, read, reasons, unlooked  # noqa: E402

PAGE = PROJECT / "toolkit" / "proof" / "coverage.md"
ASKED = (
    *("-q", "-p", "no:cacheprovider", "-n", "2", "toolkit", "tests"),
    *("-m", "not long and not bench and not browser"),
)
"""What pytest is asked for, beside the project's own settings."""


def run(*words: str) -> int:
    """Run a command of Python's in the project."""
    return subprocess.run([sys.executable, "-m", *words], cwd=PROJECT, check=False).returncode


def main() -> int:
    """Run, combine, and write the page; say which functions nobody has looked at."""
    os.environ["COVERAGE_FILE"] = str(Path(tempfile.gettempdir()) / "seatwork-reached" / "lines")
    failed = 0
    if "--kept" not in sys.argv[1:]:
        run("coverage", "erase")
        failed = run("coverage", "run", "-m", "pytest", *ASKED)
        run("coverage", "combine", "-q")
    with tempfile.TemporaryDirectory() as folder:
        told = Path(folder) / "told.json"
        if run("coverage", "json", "-q", "-i", "-o", str(told)):
            return 1
        files = read(json.loads(told.read_text("utf-8")))
    PAGE.write_text(page(files, reasons()), "utf-8")
    for name in unlooked(files, reasons()):
        sys.stdout.write(f"not looked at: {name}\n")
    return failed


if __name__ == "__main__":
    sys.exit(main())
