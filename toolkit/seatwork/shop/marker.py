"""What a workbook names in its marker: where sheets are handed in, and its language."""

import json
import re
from pathlib import Path

from seatwork.files import write
from seatwork.shop.folder import MARKER, read_text


def name_in_marker(folder: Path, key: str, value: str) -> None:
    """Write one thing that a workbook names: where sheets are handed in, or its language.

    Parameters
    ----------
    folder : Path
        The workbook, as ``deliver`` made it.
    key : str
        What is named, such as hand_in or language.
    value : str
        Such as ``/srv/hand-in`` or ``es``; the rest of the marker stays as it is.
    """
    marker = folder / MARKER
    line = f"{key} = {json.dumps(value, ensure_ascii=False)}"
    before = read_text(marker).splitlines()
    kept = [old for old in before if not re.match(rf"\s*{key}\s*=", old)]
    heading = next((n for n, old in enumerate(kept) if old.lstrip().startswith("[")), len(kept))
    after = [*kept[:heading], line, *kept[heading:]]
    if after != before:
        write(marker, "\n".join(after) + "\n")
