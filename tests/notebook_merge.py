"""Merge two changes of a notebook cell by cell, as git calls a merge driver: BASE OURS THEIRS.

Once in a clone: ``git config merge.notebook.driver "python tests/notebook_merge.py %O %A %B"``;
``.gitattributes`` then has git merge notebooks with it. A cell that only one side changed is taken
from that side, whole; where both changed one cell, its text is merged and its outputs are theirs.
The order is that of the side that moved cells; where both moved them, apart, it is ours and a
person must look. What cannot be merged is left in the cell with git's marks, and the notebook
still opens. Run ``tests/store.py`` on a notebook merged so.
"""

import json
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

Cell = dict[str, Any]


def merge(base: list[Cell], ours: list[Cell], theirs: list[Cell]) -> tuple[list[Cell], bool]:
    """Return the merged cells, and whether a person must look."""
    old, mine, other = by_id(base), by_id(ours), by_id(theirs)
    merged = []
    names, torn = order(list(old), list(mine), list(other))
    for name in names:
        sides = old.get(name), mine.get(name), other.get(name)
        cell, apart = merged_cell(*sides)
        torn |= apart
        merged += [cell] if cell is not None else []
    return merged, torn


def by_id(cells: list[Cell]) -> dict[str, Cell]:
    """Return the cells by their names; one without a name of its own goes by its place, too."""
    found: dict[str, Cell] = {}
    for number, cell in enumerate(cells):
        name = cell.get("id", "cell")
        found[f"{name} {number}" if name in found or "id" not in cell else name] = cell
    return found


def order(base: list[str], ours: list[str], theirs: list[str]) -> tuple[list[str], bool]:
    """Return the names in the order of the side that moved cells, and whether both moved them.

    Names of the other side alone stand behind the nearest one that they follow there.
    """
    shared = {*base} & {*ours} & {*theirs}
    old, mine, other = ([one for one in side if one in shared] for side in (base, ours, theirs))
    first, then = (theirs, ours) if mine == old else (ours, theirs)
    names = first.copy()
    for place, name in enumerate(then):
        if name not in names:
            before = next((one for one in reversed(then[:place]) if one in names), None)
            names.insert(names.index(before) + 1 if before else 0, name)
    return names, mine not in (old, other) and other != old


def merged_cell(
    old: Cell | None, mine: Cell | None, other: Cell | None
) -> tuple[Cell | None, bool]:
    """Return one cell merged, None where it is gone, and whether both sides changed one line."""
    if mine == other or other == old:
        return mine, False
    if mine == old:
        return other, False
    if mine is None or other is None:  # changed here, taken out there: keep it, and look
        return mine or other, True
    text, torn = merged_text(
        *("".join(cell["source"]) if cell else "" for cell in (old, mine, other))
    )
    return {**other, "source": text.splitlines(keepends=True)}, torn


def merged_text(old: str, mine: str, other: str) -> tuple[str, bool]:
    """Merge three texts with git's own merge."""
    with TemporaryDirectory() as folder:
        paths = [Path(folder) / name for name in ("ours", "base", "theirs")]
        for path, text in zip(paths, (mine, old, other), strict=True):
            path.write_text(f"{text}\n", encoding="utf-8")
        done = subprocess.run(
            ["git", "merge-file", "-p", *map(str, paths)], capture_output=True, check=False
        )
    return done.stdout.decode("utf-8").removesuffix("\n"), done.returncode != 0


def main(base: str, ours: str, theirs: str) -> int:
    """Merge three files into the second; 1 where a person must look."""
    books = [json.loads(Path(path).read_text(encoding="utf-8")) for path in (base, ours, theirs)]
    cells, torn = merge(*(book["cells"] for book in books))
    text = json.dumps({**books[1], "cells": cells}, ensure_ascii=False, indent=1)
    Path(ours).write_text(f"{text}\n", encoding="utf-8")
    return int(torn)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
