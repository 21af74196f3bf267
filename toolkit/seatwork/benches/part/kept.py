"""Where a part is kept between two openings of its page."""

import json
import re
from hashlib import sha256
from pathlib import Path

from seatwork import files
from seatwork.benches.part.state import PartState, from_data
from seatwork.errors import SeatworkError

FOLDER = "my_part"
NAME = re.compile(r"[a-z0-9][a-z0-9_-]{0,39}", re.ASCII)
LARGEST = 2_000_000  # bytes


class KeptPart:
    """The file of one part in a workbook's ``my_part`` folder.

    A file that another page has written since this one read it is not written over.

    Parameters
    ----------
    workbook : Path or None
        The workbook folder; None keeps nothing.
    name : str
        What the file is called, without its ending.

    Raises
    ------
    SeatworkError
        If that cannot be a file's name.
    """

    def __init__(self, workbook: Path | None, name: str) -> None:
        if not NAME.fullmatch(name):
            fault = "a part is kept under small letters, digits, - and _"
            raise SeatworkError(name, fault, 'write keep="frame"')
        self.path = workbook / FOLDER / f"{name}.json" if workbook else None
        self._seen = ""

    def read(self) -> PartState | None:
        """Return what was kept; None where nothing was.

        Raises
        ------
        SeatworkError
            If the file cannot be read; it stays as it is.
        """
        raw = self._bytes()
        if raw is None:
            return None
        self._seen = sha256(raw).hexdigest()
        try:
            return from_data(json.loads(raw))
        except (ValueError, RecursionError, SeatworkError) as error:
            self._seen = "spoiled"
            why = error.fault if isinstance(error, SeatworkError) else "it is no JSON"
            remedy = "move it away to begin anew; until then nothing is kept"
            raise SeatworkError(
                self._name, f"the kept part cannot be read: {why}", remedy
            ) from None

    def write(self, state: PartState) -> None:
        """Keep a state.

        Raises
        ------
        SeatworkError
            If another page has written the file, or it cannot be written; it stays as it is.
        """
        if self.path is None:
            return
        try:
            files.make_folder(self.path.parent)
        except OSError as error:
            raise files.refusal(self.path, error) from error
        with files.lock(self.path.parent):
            now = self._bytes()
            if now is not None and sha256(now).hexdigest() != self._seen:
                fault = "not kept, since the file has been changed by another page"
                raise SeatworkError(self._name, fault, "run this cell again to go on from there")
            raw = json.dumps(state.as_data(), ensure_ascii=False, indent=1).encode()
            files.write(self.path, raw, backup=True)
            self._seen = sha256(raw).hexdigest()

    @property
    def _name(self) -> str:
        return f"{FOLDER}/{self.path.name}" if self.path else ""

    def _bytes(self) -> bytes | None:
        if self.path is None or not self.path.is_file():
            return None
        try:
            with self.path.open("rb") as file:
                return file.read(LARGEST)
        except OSError as error:
            raise files.refusal(self.path, error) from error
