"""The package as a page carries it: the rooms that a page needs, from the user's own folder."""

import json
import struct
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import lark

import seatwork
from seatwork.marking import sheets
from seatwork.notes.parsing import READY, parser
from seatwork.takehome.compiling import Files

READER = (
    "__init__.py", "arguments.py", "doors.py", "entries", "errors.py", "kinds.py",
    "quantities.py", "units", "takehome/__init__.py", "takehome/inside/__init__.py",
    "takehome/inside/reader.py",
)  # fmt: skip
"""What reads entries; no question is among them."""
PRACTICE = (
    *READER, "checks.py", "cutting", "files", "hardware", "marking", "notes", "plan",
    "questions", "rows.py", "seats", "shop", "tables", "worksheet", "takehome/inside/desk.py",
)  # fmt: skip
"""What asks, judges and plans."""
LIVE = (
    *PRACTICE, "inspection", "benches/__init__.py", "benches/bench.py", "benches/build",
    "benches/bank", "drawings/__init__.py", "drawings/scene.py", "drawings/section.py",
    "drawings/view.py", "drawings/parts", "drawings/strokes", "drawings/views", "live/__init__.py",
    "live/laying.py", "live/writing.py", "takehome/inside",
)  # fmt: skip
"""What works benches; the fonts and what draws stay behind."""
NOT_CARRIED = (
    "lark/grammars", "lark/reconstruct", "lark/tools",
    "lark/tree_templates", "seatwork/cutting/chatter/cone", "seatwork/cutting/chatter/crossings",
    "seatwork/cutting/chatter/limits", "seatwork/cutting/chatter/loop",
    "seatwork/cutting/chatter/mapping", "seatwork/cutting/chatter/marks",
    "seatwork/cutting/chatter/sound", "seatwork/cutting/chatter/surfaces",
    "seatwork/cutting/chatter/tracing", "seatwork/cutting/chatter/whirl",
    "seatwork/marking/alike", "seatwork/marking/evening", "seatwork/marking/examples",
    "seatwork/marking/handing_out", "seatwork/marking/learner_words",
    "seatwork/marking/lesson_pages", "seatwork/marking/likeness", "seatwork/marking/marker",
    "seatwork/marking/outline", "seatwork/marking/pick_file", "seatwork/marking/results",
    "seatwork/marking/roster", "seatwork/marking/scoring", "seatwork/marking/slip_count",
    "seatwork/marking/submissions", "seatwork/marking/typed_back", "seatwork/marking/why",
    "seatwork/plan/examples", "seatwork/plan/part_files", "seatwork/questions/checking",
    "seatwork/shop/house/glossary", "seatwork/tables/printed", "seatwork/worksheet/checking",
    "seatwork/worksheet/findings", "seatwork/worksheet/term_desk",
    "seatwork/worksheet/witness",
)  # fmt: skip
"""Parts of the rooms of a practice sheet that no learner asks for."""
ENDINGS = (".py", ".toml", ".csv", ".lark", ".json", ".mo")


def reader_files() -> Files:
    """Return the files of the reader of entries, by their place."""
    return dict(_of_rooms(READER))


def practice_files() -> Files:
    """Return the files that ask, judge and plan, with the sheets, by their place."""
    found = _with_grammar(PRACTICE)
    return {name: found[name] for name in found if not name.startswith(NOT_CARRIED)}


def live_files() -> Files:
    """Return the files that work benches, by their place."""
    return _with_grammar(LIVE)


def _with_grammar(rooms: tuple[str, ...]) -> Files:
    """Return the files of rooms that read notes, with the reader's own and the sheets."""
    found = dict(_of_rooms(rooms))
    home = Path(lark.__file__).parent
    found |= {
        f"lark/{path.relative_to(home).as_posix()}": path.read_bytes()
        for path in _files(home)
        if "__pyinstaller" not in path.parts
    }
    ready = BytesIO()
    parser().save(ready)
    found[f"seatwork/notes/{READY}"] = ready.getvalue()
    place = sheets.folder()
    for path in sorted(place.rglob("*.toml")):
        found[f"seatwork/workbook/exercises/sheets/{path.relative_to(place).as_posix()}"] = (
            path.read_bytes()
        )
    return found


def _of_rooms(rooms: tuple[str, ...]) -> Iterator[tuple[str, bytes]]:
    home = Path(seatwork.__file__).parent
    for room in rooms:
        for path in _files(home / room):
            yield f"seatwork/{path.relative_to(home).as_posix()}", path.read_bytes()


def _files(place: Path) -> list[Path]:
    """Return a file, or the files below a folder that Python or a reader of lists opens."""
    if place.is_file():
        return [place]
    found = sorted(place.rglob("*"))
    return [one for one in found if one.suffix in ENDINGS and "__pycache__" not in one.parts]


def packed(files: Files) -> bytes:
    """Return files as one block: length of the index, index as JSON, contents."""
    index = [[name, len(content)] for name, content in files.items()]
    head = json.dumps(index, separators=(",", ":")).encode()
    return struct.pack("<I", len(head)) + head + b"".join(files.values())
