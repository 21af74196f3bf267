"""Seeds: everyone's own numbers, from the course key and who, what and which form."""

import hashlib
import hmac
import json
from collections.abc import Sequence

PRACTICE_KEY = b"practice"  # no secret: practice numbers are the same for everyone


def sheet_seed(course_key: bytes, learner: str, sheet: str, form: int) -> bytes:
    """Return the seed of one learner's sheet.

    Examples
    --------
    >>> len(sheet_seed(PRACTICE_KEY, "L00", "cones", 1))
    32
    """
    return _hashed(course_key, ["sheet", learner, sheet, form])


def question_seed(seed: bytes, question: str, attempt: int, version: int, again: int = 0) -> bytes:
    """Return the seed of one question on a sheet, drawn `again` so many times."""
    more: list[str | int] = ["again", again] if again else []
    return _hashed(seed, ["question", question, attempt, version, *more])


def _hashed(key: bytes, parts: Sequence[str | int]) -> bytes:
    text = json.dumps(list(parts), ensure_ascii=False, separators=(",", ":"))
    return hmac.new(key, text.encode(), hashlib.sha256).digest()
