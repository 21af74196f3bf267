"""Every command given rightly, by name; what hostile words take the place of."""

import os
from pathlib import Path

from seatwork.files import write_table

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
SHOP = ("--material", "6061 aluminum", "--machine", "bench drill press")
RIGHT: dict[str, tuple[str, ...]] = {
    "open": ("open", "workbook", "--no-browser", "--port", "8899", "--language", "en"),
    "doctor": ("doctor", "workbook"),
    "doctor of a hub": ("doctor", "--hub", "hub"),
    "doctor of a stick": ("doctor", "--stick", "stick"),
    "stick": ("stick", "stick", "--for", "toaster", "--python", "3.12"),
    "hub recipe": ("hub", "recipe", "hub", "--course", "course", "--instructor", "i1", "--replace"),
    "plan": ("plan", NOTE, *SHOP, "--screw", "#10 flat head", "--thickness", "1/4 in",
             "--edge", "1/2 in", "--engagement", "1/4 in"),
    "plan of a part": ("plan", "plate.csv", *SHOP),
    "inspect": ("inspect", "measured.csv", "--part", "plate.csv", *SHOP, "--to", "out.csv",
                "--feature", "A", "--replace"),
    "demo": ("demo", "mill", "--paper", "letter"),
    "card": ("card", NOTE, "card.pdf", *SHOP, "--screw", "#10 flat head", "--thickness",
             "1/4 in", "--edge", "1/2 in", "--name", "hopper", "--paper", "letter", "--date",
             "2026-03-02", "--replace"),
    "card of a part": ("card", "plate.csv", "card.svg", *SHOP, "--replace"),
    "print": ("print", "formulas", "sheet.pdf", "--paper", "a4", "--replace"),
    "print of a seat": ("print", "gage-sheet", "sheet.svg", "--note", NOTE, *SHOP, "--screw",
                        "#10 flat head", "--thickness", "1/4 in", "--date", "1", "--replace"),
    "export": ("export", "page.ipynb", "pages", "--replace"),
    "sources": ("sources", "--from-memory", "--full"),
    "rules": ("rules", "angle"),
    "coverage": ("coverage", "countersink", "--csv", "coverage.csv", "--replace"),
    "hand-out": ("hand-out", "counterbores", "--course", "course", "--to", "given", "--sitting",
                 "1", "--mode", "graded", "--only", "L01", "--due", "2026-03-09", "--day",
                 "2026-03-02"),
    "hand-out by rooms": ("hand-out", "counterbores", "--rooms", "school", "--workers", "1",
                          "--sitting", "1", "--mode", "graded", "--due", "2026-03-09", "--day",
                          "2026-03-02"),
    "mark": ("mark", "counterbores", "in", "--course", "course", "--day", "2026-03-02",
             "--handed-in", "2026-03-01", "--language", "en"),
    "mark by rooms": ("mark", "counterbores", "school", "--rooms", "--workers", "1", "--day",
                      "2026-03-02", "--handed-in", "2026-03-01"),
    "check": ("check", "page.ipynb"),
    "why": ("why", "counterbores", "L01", "b3", "0.5", "--course", "course"),
    "slips": ("slips", "counterbores", "--course", "course", "--learners"),
    "slips of a made-up class": ("slips", "counterbores", "--made-up", "3", "--workers", "1"),
    "override": ("override", "counterbores", "L01", "b3", "1", "said aloud", "--form", "1",
                 "--course", "course", "--day", "2026-03-02"),
    "record new": ("record", "new", "--by", "I2", "--course", "course", "--day", "2026-03-02"),
    "record check": ("record", "check", "--course", "course", "--names", "names.csv"),
    "record copy": ("record", "copy", "stick", "--with-key", "--course", "course",
                    "--day", "2026-03-02"),
    "record bring-back": ("record", "bring-back", "--course", "course", "--from", "one.db"),
    "record combine": ("record", "combine", "one.db", "--course", "course", "--day", "2026-03-02"),
    "record erase": ("record", "erase", "L02", "--course", "course", "--yes"),
    "record reseal": ("record", "reseal", "--course", "course", "--yes"),
    "class": ("class", "--course", "course", "--day", "2026-03-02", "--print", "class.pdf",
              "--names", "names.csv", "--size", "a4", "--replace"),
    "class as a table": ("class", "--course", "course", "--table", "class.csv", "--replace"),
    "report": ("report", "L01", "--course", "course", "--day", "2026-03-02", "--to", "reports",
               "--names", "names.csv", "--replace"),
    "history": ("history", "L01", "--course", "course", "--csv", "history.csv"),
    "undo": ("undo", "4f2a", "talked it over", "--course", "course", "--day", "2026-03-02"),
    "excuse": ("excuse", "counterbores", "L01", "court date", "--sitting", "1",
               "--course", "course", "--day", "2026-03-02"),
    "lost": ("lost", "counterbores", "L01", "lost in the shop", "--sitting", "1",
             "--course", "course", "--day", "2026-03-02"),
    "void": ("void", "counterbores", "L01", "sheets mixed up", "--sitting", "1",
             "--course", "course", "--day", "2026-03-02"),
    "count-paper": ("count-paper", "4f2a", "the other is a copy", "--course", "course",
                    "--day", "2026-03-02"),
    "leave": ("leave", "L02", "moved away", "--course", "course", "--day", "2026-03-02"),
    "sign": ("sign", "L01", "bench drill press", "--paper-at", "binder 2026, sheet 4",
             "--course", "course", "--day", "2026-03-02"),
    "roster new": ("roster", "new", "2", "--course", "other"),
    "roster show": ("roster", "show", "--course", "course"),
    "question new": ("question", "new", "questions/mine.py"),
    "question check": ("question", "check", "own.py"),
    "question allow": ("question", "allow", "own.py", "--course", "course"),
}  # fmt: skip
"""Words of each command, run in the folder that `ground` lays out."""

WORDS = (
    "", "abc", "nan", "inf", "-1", "0", "1e400", "9" * 400, "x" * 2000, "a\nb", "\udcff\u202e",
    "a{b}c", "%s", "<b>",
)  # fmt: skip
PLACES = (
    "folder", "folder.csv", "folder.pdf", "folder.ipynb", "folder.py", "nowhere/deep/file.csv",
    "pipe.csv", "pipe.pdf", "pipe.ipynb", "pipe.py", "loop.csv", "loop.pdf", "empty.csv",
    "empty.ipynb", "empty.py", "bytes.csv", "bytes.ipynb", "bytes.py", "bytes.pdf/in.pdf",
    "/dev/full", "full.csv", "full.pdf", "n" * 300 + ".csv", "n" * 300 + ".pdf", "fails.py",
    "[x]::y.csv", "course/roster.csv",
)  # fmt: skip


def ground(folder: Path) -> None:
    """Lay out what the commands work on, and the odd places beside it."""
    (folder / "plate.csv").write_text(f"feature,note\nA,{NOTE}\n", encoding="utf-8")
    (folder / "measured.csv").write_text("part,feature,diameter\nP1,A,.385 in\n", encoding="utf-8")
    page = '{"cells": [], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}'
    (folder / "page.ipynb").write_text(page, encoding="utf-8")
    (folder / "own.py").write_text("", encoding="utf-8")
    (folder / "fails.py").write_text("1 / 0\n", encoding="utf-8")
    for name in (
        "folder",
        "in",
        "course",
        *(f"folder.{end}" for end in ("csv", "pdf", "ipynb", "py")),
    ):
        (folder / name).mkdir()
    (folder / "names.csv").write_text("learner,name\nL01,Ottoline\n", encoding="utf-8")
    write_table(folder / "course" / "roster.csv", ("learner", "group"), [("L01", ""), ("L02", "")])
    for end in ("csv", "pdf", "ipynb", "py"):
        os.mkfifo(folder / f"pipe.{end}")
        (folder / f"empty.{end}").write_bytes(b"")
        (folder / f"bytes.{end}").write_bytes(bytes(range(256)) * 4)
        (folder / f"full.{end}").symlink_to("/dev/full")
        (folder / f"loop.{end}").symlink_to(folder / f"loop.{end}")
