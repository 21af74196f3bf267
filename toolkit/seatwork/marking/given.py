"""What a learner is given: whose sheet it is, which form, and its numbers.

A form comes with its drawn sizes and the type of each question, so that it stays as it was handed
out when the sheet changes. Nothing in a graded one tells the numbers of another form; in practice
a seed gives new numbers as often as they are asked for.
"""

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from os.path import realpath
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.answers import AnswerFile
from seatwork.marking.handed import HandedOut
from seatwork.marking.names import (
    NAME,
    PRACTICE_LEARNER,
    QUESTION,
    form_number,
    learner_code,
    sheet_name,
)
from seatwork.marking.sealing import FORM_ID
from seatwork.marking.seeds import PRACTICE_KEY, sheet_seed
from seatwork.marking.sheets import MODES, Sheet
from seatwork.questions import Question

FORMAT = 3
"""Format of forms that have an id and a secret of their own."""
BEFORE_IDS = 2
BEFORE_APART = 1
"""Format of forms whose questions were drawn without regard to one another."""
SECRET_BYTES = 32
LONGEST = 256 * 1024
COMMON = {"format", "learner", "sheet", "form", "mode", "version"}
SEED = {"sheet_seed"}
OWN = {"form_id", "secret"}
SIZES = {"sizes", "versions"}
TYPED = SIZES | {"types"}
KEYS = {
    BEFORE_APART: (COMMON | SEED,),
    BEFORE_IDS: (COMMON | SEED,),
    FORMAT: tuple(COMMON | OWN | more for more in (SEED, SIZES, TYPED, SEED | TYPED)),
}
"""What may stand in a file of each format."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Given:
    """Whose sheet it is, which form, and what its numbers are.

    Parameters
    ----------
    learner, sheet : str
        Whose form of which sheet.
    form : int
        Number of the form.
    mode : {"practice", "graded"}
        How it was given.
    seed : bytes
        What new numbers are drawn from; empty where there are none.
    version : str
        Of the program that handed it out.
    apart : bool
        Whether the questions of a seed are kept apart from one another.
    form_id : str
        As printed on the paper; empty where there is none.
    secret : bytes
        What its answers are sealed with; empty where there is no form id.
    sizes, versions, types : mapping
        Drawn sizes, the version of the question's type and the type, by question; no types in
        forms of before.
    """

    learner: str
    sheet: str
    form: int
    mode: str
    seed: bytes
    version: str = ""
    apart: bool = True
    form_id: str = ""
    secret: bytes = field(default=b"", repr=False)
    sizes: Mapping[str, dict[str, Any]] = field(default_factory=dict)
    versions: Mapping[str, int] = field(default_factory=dict)
    types: Mapping[str, str] = field(default_factory=dict)

    @property
    def format(self) -> int:
        """Format of the file."""
        if self.form_id:
            return FORMAT
        return BEFORE_IDS if self.apart else BEFORE_APART

    def text(self) -> str:
        """Return the file's content."""
        content: dict[str, Any] = {
            "format": self.format,
            "learner": self.learner,
            "sheet": self.sheet,
            "form": self.form,
            "mode": self.mode,
        }
        if self.form_id:
            content |= {"form_id": self.form_id, "secret": self.secret.hex()}
        if self.sizes:
            sizes = {name: dict(sorted(self.sizes[name].items())) for name in sorted(self.sizes)}
            content |= {"sizes": sizes, "versions": dict(sorted(self.versions.items()))}
        if self.types:
            content["types"] = dict(self.types)
        if self.seed:
            content["sheet_seed"] = self.seed.hex()
        content["version"] = self.version
        return json.dumps(content, indent=1) + "\n"

    @property
    def empty(self) -> AnswerFile:
        """The answer file of the form, without answers."""
        return AnswerFile(
            learner=self.learner, sheet=self.sheet, form=self.form, form_id=self.form_id
        )

    def asked(self, plan: Sheet) -> Sheet:
        """Return the sheet as this form asks it, whatever has gone or changed on it since."""
        return self._form.asked(plan)

    @property
    def _form(self) -> HandedOut:
        return HandedOut(
            sitting=1, form=self.form, mode=self.mode, sizes=dict(self.sizes),
            versions=dict(self.versions), types=dict(self.types),
        )  # fmt: skip

    def question(self, plan: Sheet, name: str, attempt: int = 1) -> Question:
        """Return a question with this learner's numbers.

        Parameters
        ----------
        plan : Sheet
            The worksheet.
        name : str
            The question.
        attempt : int
            In practice, how often numbers were asked for; a graded form has one.

        Raises
        ------
        SeatworkError
            If the form does not ask it, or its sizes are none of that question.
        """
        if not self.sizes or (self.seed and attempt > 1):
            return plan.question(name, self.seed, attempt, apart=self.apart)
        item = plan.item(name)
        if name not in self.sizes:
            fault = f"form {self.form} was handed out without this question"
            raise SeatworkError(name, fault, "ask for the sheet again")
        try:
            return self._form.question(item)
        except (TypeError, ValueError, LookupError, ArithmeticError) as error:
            raise _damaged(f"{self.sheet}, {name}") from error


def practice(sheet: str) -> Given:
    """Return what holds without a hand-out: learner L00 with the numbers everyone gets."""
    seed = sheet_seed(PRACTICE_KEY, PRACTICE_LEARNER, sheet, 1)
    return Given(learner=PRACTICE_LEARNER, sheet=sheet, form=1, mode="practice", seed=seed)


def look_for(sheet: str, start: Path, workbook: Path | None) -> Given:
    """Return what was given for `sheet`, from the working folder up to the workbook.

    ``given.json`` or ``SHEET.given.json`` is read; without one, practice numbers hold.
    """
    for place in _upward(start, workbook):
        for name in (f"{sheet}.given.json", "given.json"):
            if (place / name).is_file():
                found = read(place / name)
                if found.sheet == sheet:
                    return found
    return practice(sheet)


def whose(start: Path, workbook: Path | None) -> str:
    """Return the learner whom anything given from `start` up to the workbook names; else L00."""
    for place in _upward(start, workbook):
        for path in sorted(place.glob("*given.json")):
            try:
                return read(path).learner
            except SeatworkError:
                continue  # the sheet that needs it says what is wrong with it
    return PRACTICE_LEARNER


def _upward(start: Path, workbook: Path | None) -> Iterator[Path]:
    """Yield the folder itself and those above it, up to the workbook; alone without one."""
    here = Path(realpath(start))  # a link that leads back to itself ends nothing
    for place in (here, *here.parents):
        yield place
        if workbook is None or place == workbook:
            return


def read(path: Path) -> Given:
    """Return the content of a ``given.json``.

    Raises
    ------
    SeatworkError
        If it is damaged or of a newer format.
    """
    try:
        raw = path.read_bytes()
        found = json.loads(raw.decode("utf-8")) if len(raw) <= LONGEST else None
    except (OSError, ValueError, RecursionError) as error:
        raise _damaged(path.name) from error
    written = found.get("format") if isinstance(found, dict) else None
    if isinstance(written, int) and written > FORMAT:
        raise SeatworkError(path.name, "a newer version wrote it", "install that version")
    if not isinstance(found, dict) or type(written) is not int:
        raise _damaged(path.name)
    if set(found) not in KEYS.get(written, ()):
        raise _damaged(path.name)
    return _given(path.name, found)


def _given(name: str, found: dict[str, Any]) -> Given:
    sizes, versions, types = (found.get(name, {}) for name in ("sizes", "versions", "types"))
    try:
        seed = bytes.fromhex(found.get("sheet_seed", ""))
        secret = bytes.fromhex(found.get("secret", ""))
    except (TypeError, ValueError) as error:
        raise _damaged(name) from error
    form_id = found.get("form_id", "")
    if found["mode"] not in MODES or not isinstance(found["version"], str):
        raise _damaged(name)
    if "sheet_seed" in found and not _is_secret(seed):
        raise _damaged(name)
    if "sizes" in found and not _are_sizes(sizes, versions):
        raise _damaged(name)
    if found["mode"] == "graded" and {"sheet_seed", "sizes"} <= set(found):
        raise _damaged(name)  # a seed would tell the numbers of another form
    if "types" in found and not _are_types(types, sizes):
        raise _damaged(name)
    if found["format"] == FORMAT and not (_is_id(form_id) and _is_secret(secret)):
        raise _damaged(name)
    return Given(
        learner=learner_code(found["learner"]),
        sheet=sheet_name(found["sheet"]),
        form=form_number(found["form"]),
        mode=found["mode"],
        seed=seed,
        version=found["version"],
        apart=found["format"] != BEFORE_APART,
        form_id=form_id,
        secret=secret,
        sizes=sizes,
        versions=versions,
        types=types,
    )


def _is_id(found: Any) -> bool:
    return isinstance(found, str) and FORM_ID.fullmatch(found) is not None


def _is_secret(found: bytes) -> bool:
    return len(found) == SECRET_BYTES


def _are_sizes(sizes: Any, versions: Any) -> bool:
    """Tell whether what stands there may be the sizes of a form; each question reads its own."""
    if not isinstance(sizes, dict) or not isinstance(versions, dict) or not sizes:
        return False
    whole = all(isinstance(one, dict) for one in sizes.values())
    return whole and all(type(one) is int for one in versions.values())


def _are_types(types: Any, sizes: Mapping[str, Any]) -> bool:
    """Tell whether what stands there may be the types of the questions that have sizes."""
    if not isinstance(types, dict) or types.keys() != sizes.keys():
        return False
    pairs = types.items()
    return all(QUESTION.fullmatch(n) and isinstance(t, str) and NAME.fullmatch(t) for n, t in pairs)


def _damaged(name: str) -> SeatworkError:
    return SeatworkError(name, "it is not as it was handed out", "ask for it again")
