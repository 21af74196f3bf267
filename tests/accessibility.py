"""Walk every page as its readers do, and write ``toolkit/proof/accessibility.md``.

``python tests/accessibility.py`` walks them all and writes the page; with ``--check`` it writes
nothing and says whether the page is as the walk has it. Words pick pages, as pytest's ``-k``
takes them: those alone are walked, what is wrong is said, and nothing is written. ``--kept FILE``
keeps what was found, and with words takes the pages that are not picked from there.
"""

import argparse
import json
import sys
from pathlib import Path
from typing import Any

import pytest

PROJECT = Path(__file__).parents[1]
sys.path.insert(0, str(PROJECT))

from tests.access.report import report  # noqa: E402

PAGE = PROJECT / "toolkit" / "proof" / "accessibility.md"
WALKS = PROJECT / "tests" / "browser" / "test_accessibility.py"
ASKED = ("-q", "--import-mode=importlib", "-p", "no:cacheprovider", "-o", "addopts=", "-m", "long")


class Found:
    """A plugin of pytest: keeps what each walk found."""

    def __init__(self, pages: dict[str, Any], kept: Path | None) -> None:
        self.pages, self.kept = pages, kept
        self.fresh, self.other = set[str](), list[str]()

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Keep the properties of a walk that ended; name a test that failed without any."""
        found = dict(report.user_properties)
        if report.when == "call" and found:
            self.pages[report.nodeid] = found
            self.fresh.add(report.nodeid)
            if self.kept:
                self.kept.write_text(json.dumps(self.pages), "utf-8")
        elif report.failed or report.skipped:
            self.other.append(f"not walked: {report.nodeid}")


def faults(pages: dict[str, Any], names: set[str]) -> list[str]:
    """List what was found wrong, a line each."""
    return [
        f"{pages[name]['accessibility']['page']}, {look}: {fault}"
        for name in sorted(names)
        if "accessibility" in pages[name]
        for look, found in pages[name]["accessibility"]["faults"].items()
        for fault in found
    ]


def arguments() -> argparse.Namespace:
    """Read the command's own words."""
    asked = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    asked.add_argument("words", nargs="?", default="", help="pages to walk; all without")
    asked.add_argument("--check", action="store_true", help="write nothing; say what differs")
    asked.add_argument("--kept", type=Path, help="file that keeps what was found")
    asked.add_argument("-n", type=int, default=1, help="processes that walk")
    return asked.parse_args()


def main() -> int:
    """Walk the pages; write the report, or check it."""
    asked = arguments()
    before = asked.kept if asked.kept and asked.words and asked.kept.is_file() else None
    found = Found(json.loads(before.read_text("utf-8")) if before else {}, asked.kept)
    more = ["-k", asked.words] if asked.words else []
    more += ["-n", str(asked.n)] if asked.n > 1 else []
    pytest.main([*ASKED, *more, str(WALKS)], plugins=[found])
    said = faults(found.pages, found.fresh) + found.other
    if not asked.words or before:
        written = report(found.pages)
        if not asked.check:
            PAGE.write_text(written, "utf-8")
        elif not PAGE.is_file() or PAGE.read_text("utf-8") != written:
            said.append(f"{PAGE.relative_to(PROJECT)} is not as the walk has it")
    sys.stdout.write("\n".join([*said, ""]))
    return bool(said)


if __name__ == "__main__":
    sys.exit(main())
