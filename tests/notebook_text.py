"""Print a notebook as text, for readable differences: sources and printed outputs, no pictures.

Once in a clone: ``git config diff.notebook.textconv "python tests/notebook_text.py"``;
``.gitattributes`` then has git show every change of a notebook through it.
"""

import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any


def lines_of(notebook: dict[str, Any]) -> Iterator[str]:
    """Yield the notebook line by line, a rule before each cell."""
    for number, cell in enumerate(notebook["cells"], 1):
        yield f"--- {number}, {cell['cell_type']}"
        yield from "".join(cell["source"]).splitlines()
        for output in cell.get("outputs", ()):
            yield from (f"> {line}" for line in told(output).splitlines())


def told(output: dict[str, Any]) -> str:
    """Return what an output says in words."""
    if "text" in output:
        return "".join(output["text"])
    if "traceback" in output:
        return f"{output.get('ename')}: {output.get('evalue')}"
    return "".join(output.get("data", {}).get("text/plain", ""))


if __name__ == "__main__":
    found = json.loads(Path(sys.argv[1]).read_text(encoding="utf-8"))
    sys.stdout.write("\n".join(lines_of(found)) + "\n")
