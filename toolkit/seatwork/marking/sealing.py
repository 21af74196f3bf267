"""Form ids and seals: which form a paper answers, and whether its own page saved it.

Both are keyed hashes over data that any program can write: HMAC with SHA-256 over JSON with
sorted keys, no spaces, and letters as they are. A form's secret lies in what its learner was
given and nowhere else; the course key gives it again.
"""

import hashlib
import hmac
import json
import re
from collections.abc import Mapping
from typing import Any

SIGNS = "ABCDEFGHJKLMNPQRTUVWXY346789"
"""Signs of a form id; none of them is taken for another on paper."""
LENGTH = 8
FORM_ID = re.compile(rf"[{SIGNS}]{{4}}-[{SIGNS}]{{4}}")


def form_id(key: bytes, learner: str, sheet: str, form: int, sizes: Mapping[str, Any]) -> str:
    """Return the id of a form: eight signs, printed on the paper and kept in its file.

    Parameters
    ----------
    key : bytes
        The course key.
    learner, sheet : str
        Whose form of which sheet.
    form : int
        Number of the form.
    sizes : mapping
        Drawn sizes by question.

    Examples
    --------
    >>> form_id(bytes(32), "L07", "cones", 1, {"c1": {"angle": 82}})
    'B4DY-WVRH'
    """
    number = int.from_bytes(_keyed(key, ["form", learner, sheet, form, sizes])[:8], "big")
    signs = ""
    for _ in range(LENGTH):
        number, rest = divmod(number, len(SIGNS))
        signs += SIGNS[rest]
    return f"{signs[:4]}-{signs[4:]}"


def form_secret(key: bytes, form: str) -> bytes:
    """Return the secret of a form, 32 bytes: what its page seals answers with.

    Parameters
    ----------
    key : bytes
        The course key.
    form : str
        The form's id.
    """
    return _keyed(key, ["hand-in", form])


def seal_of(content: Mapping[str, Any], secret: bytes) -> str:
    """Return the seal of an answer file, 64 hex digits.

    Parameters
    ----------
    content : mapping
        What the file says, without its seal.
    secret : bytes
        The form's own.
    """
    return _keyed(secret, dict(content)).hex()


def is_seal_of(content: Mapping[str, Any], secret: bytes, found: str) -> bool:
    """Tell whether a seal is that of an answer file."""
    return hmac.compare_digest(seal_of(content, secret).encode(), found.encode())


def _keyed(key: bytes, said: object) -> bytes:
    text = json.dumps(said, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return hmac.new(key, text.encode(), hashlib.sha256).digest()
