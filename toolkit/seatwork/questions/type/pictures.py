"""The drawings that belong to questions, found by name and loaded when the first is drawn."""

import importlib
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources
from pathlib import Path
from typing import Any, Protocol

from seatwork.errors import SeatworkError
from seatwork.questions.type.running import failed, run_file

ROOM = "seatwork.drawings.asked"


class Drawing(Protocol):
    """What a question needs of a drawing: its text, and its picture as Markdown."""

    @property
    def text(self) -> str:
        """All numbers of the picture, in one or two sentences."""

    def markdown(self, scale: float = 1.0) -> str:
        """Return the picture as a Markdown image, then its text."""

    def png(self, scale: float = 1.0) -> bytes:
        """Return the picture as a PNG file."""


def spoken(drawing: Drawing | None, say: Callable[[str], str]) -> Any:
    """Return a drawing with its words in the reader's language; an own one may have no such."""
    told = getattr(drawing, "spoken", None)
    return drawing if told is None or say is str else told(say)


@dataclass(frozen=True, slots=True)
class LostDrawing:
    """Stands in for an own drawing that fails: the question is asked without it, and says so."""

    error: SeatworkError
    text: str = "The drawing of this question cannot be shown; tell your instructor."

    def markdown(self, scale: float = 1.0) -> str:
        """Return the sentence that says so."""
        del scale
        return self.text

    def png(self, scale: float = 1.0) -> bytes:
        """Raise the error: paper without its drawing is not to be printed unseen."""
        raise self.error


def drawing_of(question: Any, name: str, folder: Path | None) -> Drawing | None:
    """Draw a question; None if its type has no drawing, a stand-in if an own drawing fails."""
    try:
        draw = drawer(name, folder)
        return draw(question) if draw else None
    except SeatworkError as error:
        if folder is None:
            raise
        return LostDrawing(error)
    except Exception as error:  # whatever a person's own file may do
        if folder is None:
            raise
        path = folder / "drawings" / f"{name.replace('-', '_')}.py"
        fault = f"it cannot draw the question ({failed(error, path)})"
        return LostDrawing(SeatworkError(f"drawings/{path.name}", fault, "mend the file"))


def drawer(name: str, folder: Path | None = None) -> Callable[[Any], Drawing] | None:
    """Return the function that draws questions of a type, or None if it has no drawing.

    Parameters
    ----------
    name : str
        The id of the type; ``seat-depth`` is drawn by ``drawings/asked/seat_depth.py``.
    folder : Path, optional
        Folder of an instructor's own type; its drawing is ``drawings/NAME.py`` in there.

    Raises
    ------
    SeatworkError
        If the file of an own drawing cannot be run, or draws nothing.
    """
    stem = name.replace("-", "_")
    if not stem.isidentifier():
        return None
    if folder is not None:
        path = folder / "drawings" / f"{stem}.py"
        return _own_drawer(path, path.stat().st_mtime_ns) if path.is_file() else None
    if not (resources.files(ROOM) / f"{stem}.py").is_file():
        return None
    draw: Callable[[Any], Drawing] = importlib.import_module(f"{ROOM}.{stem}").draw
    return draw


@lru_cache(maxsize=64)
def _own_drawer(path: Path, _modified: int) -> Callable[[Any], Drawing]:
    """Run an instructor's own drawing file and return its ``draw``; again when it was saved."""
    draw: Callable[[Any], Drawing] | None = getattr(
        run_file(path, "seatwork_own_drawings"), "draw", None
    )
    if not callable(draw):
        raise SeatworkError(f"drawings/{path.name}", "it defines no draw", "write draw(question)")
    return draw
