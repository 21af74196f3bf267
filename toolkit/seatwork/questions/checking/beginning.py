"""Beginning a question type: which files are written, and where."""

import re
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import write
from seatwork.questions.checking.places import project_tests, stem
from seatwork.questions.checking.template import DRAWING, bank_files, own_type
from seatwork.questions.registry import is_ours
from seatwork.shop import find
from seatwork.shop.lists.outline import read_outline

NAME = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*", re.ASCII)
TRADE = "E1"  # chamfers and edge breaks: what the template asks for


def begin(name: str, *, here: bool = False, drawing: bool = False) -> tuple[Path, ...]:
    """Write the files of a new question type; nothing that is there is written over.

    Parameters
    ----------
    name : str
        Its id, such as ``chamfer-mouth``; or the file it shall have, ending in ``.py``.
    here : bool
        Whether it goes into the folder one stands in, as a type of one's own.
    drawing : bool
        Whether a type of one's own gets a drawing; one of the package always does.

    Returns
    -------
    tuple of Path
        The files written: in a workbook the type alone, or with its drawing; in the project
        type, drawing and proof.

    Raises
    ------
    SeatworkError
        If the name is none or is taken, or one stands in neither a workbook nor the project.
    """
    file = Path(name) if name.endswith(".py") else None
    given = (file.stem if file else name).replace("_", "-").casefold()
    if not NAME.fullmatch(given):
        raise SeatworkError(name, "that is no name", "write words with hyphens: chamfer-mouth")
    if is_ours(given):
        raise SeatworkError(given, "the package has a type of that name", "choose another name")
    texts = _texts(given, file, here=here, drawing=drawing)
    for path in texts:
        if path.exists():
            raise SeatworkError(str(path), "that file is there already", "choose another name")
    for path, text in texts.items():
        write(path, text)
    return tuple(texts)


def _texts(name: str, file: Path | None, *, here: bool, drawing: bool) -> dict[Path, str]:
    """Name the files to write, with what goes into them."""
    workbook, project = find(), project_tests()
    if file is None and not here and workbook is None:
        home = project.parents[1] if project else None
        if home is None or home not in (Path.cwd(), *Path.cwd().parents):
            raise SeatworkError(
                name,
                "you stand neither in a workbook nor in the project",
                "go to your workbook's folder, or add --here",
            )
        return {home / place: text for place, text in bank_files(name).items()}
    folder = file.parent if file else Path() if here or workbook is None else workbook / "questions"
    path = file or folder / f"{stem(name)}.py"
    code = TRADE if TRADE in read_outline(workbook) else ""
    texts = {path: own_type(name, code, drawn=drawing)}
    return texts | ({folder / "drawings" / f"{stem(name)}.py": DRAWING} if drawing else {})
