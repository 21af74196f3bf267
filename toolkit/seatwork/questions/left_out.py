"""Stand-ins for question types that are named and not run, or cannot be loaded."""

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from random import Random
from typing import Any, ClassVar, NoReturn, Self

from seatwork.errors import SeatworkError
from seatwork.questions.type.question import Question

LARGEST = 200_000  # bytes
NOT_RUN = "files of questions are run only from a folder that you name"
NAME_IT = "add --questions FOLDER, or --course FOLDER for the course in your workbook"
MEND_IT = "mend that file"


@dataclass(frozen=True, slots=True, init=False)
class LeftOut(Question):
    """A question type that can be named and not asked; every use of it says why.

    Parameters
    ----------
    why, remedy : str
        Why it is left out, and what would do.
    """

    why: ClassVar[str]
    remedy: ClassVar[str]

    def __init__(self, **sizes: object) -> None:
        del sizes
        self.refuse()

    @classmethod
    def refuse(cls) -> NoReturn:
        """Raise the error that says why it is left out."""
        raise SeatworkError(f"question type {cls.id}", f"it is left out: {cls.why}", cls.remedy)

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Refuse to be drawn."""
        del rng
        cls.refuse()

    @classmethod
    def draw(cls, rng: Random) -> Self:
        """Refuse to be drawn."""
        return cls.propose(rng)

    @property
    def parts(self) -> NoReturn:
        """Nothing to answer."""
        self.refuse()

    def worked(self) -> NoReturn:
        """Refuse to be worked out."""
        self.refuse()


def left_out(
    name: str, why: str = NOT_RUN, remedy: str = NAME_IT, codes: tuple[str, ...] = ()
) -> type[LeftOut]:
    """Return the stand-in for a question type.

    Parameters
    ----------
    name : str
        Its name.
    why, remedy : str
        Why it is left out, as a sentence goes on after a colon, and what would do.
    codes : tuple of str
        Codes of the course outline that it serves.
    """
    content = {"id": name, "why": why, "remedy": remedy, "codes": codes, "version": 0}
    return type("LeftOut", (LeftOut,), content)


def described(
    folder: Path, why: str = NOT_RUN, remedy: str = NAME_IT, *, only: str = "*.py"
) -> dict[str, type[LeftOut]]:
    """Return stand-ins for the question types in a folder, by name; no file of it is run.

    What a file says of its name and its codes is read as text; a file that says it otherwise
    is passed over.

    Parameters
    ----------
    folder : Path
        Where the files lie.
    why, remedy : str
        Why they are left out, and what would do.
    only : str
        Name of the one file that is read; all if not given.
    """
    found = {}
    for path in sorted(folder.glob(only)):
        for kind in _classes(path):
            stated = dict(_stated(kind))
            name, codes = stated.get("id"), stated.get("codes", ())
            if isinstance(name, str) and isinstance(codes, tuple):
                found[name] = left_out(name, why, remedy, tuple(map(str, codes)))
    return found


def _classes(path: Path) -> list[ast.ClassDef]:
    try:
        with path.open("rb") as file:
            tree = ast.parse(file.read(LARGEST + 1)[:LARGEST])
    except (OSError, SyntaxError, ValueError, RecursionError, MemoryError):
        return []
    return [node for node in tree.body if isinstance(node, ast.ClassDef)]


def _stated(kind: ast.ClassDef) -> Iterator[tuple[str, Any]]:
    for node in kind.body:
        targets = node.targets if isinstance(node, ast.Assign) else []
        if isinstance(node, ast.AnnAssign) and node.value is not None:
            targets = [node.target]
        for target in targets:
            if isinstance(target, ast.Name) and target.id in ("id", "codes"):
                value = getattr(node, "value", None)
                if isinstance(value, ast.Constant | ast.Tuple):
                    try:
                        yield target.id, ast.literal_eval(value)
                    except ValueError:
                        continue
