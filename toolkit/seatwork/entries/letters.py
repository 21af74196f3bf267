"""Letters typed for a choice, or for an order of steps, without the right answer."""

from collections.abc import Sequence

LETTERS = "abcdefghij"
NO_ORDER = "Each step must stand there once; answer with the letters, such as CABD."


def option_meant(text: str, options: Sequence[tuple[str, ...]]) -> int | None:
    """Return the place of the option meant by `text`, counted from 0; None if none is.

    Parameters
    ----------
    text : str
        What was typed.
    options : sequence of tuple of str
        Of each option in order, what it may be called besides its letter.

    Examples
    --------
    >>> option_meant("B)", [("the hole",), ("the head",)])
    1
    """
    plain = " ".join(text.lower().split()).rstrip(".)")
    for place, (letter, called) in enumerate(zip(LETTERS, options, strict=False)):
        if plain in (letter, *(one.lower() for one in called)):
            return place
    return None


def order_meant(text: str, count: int) -> str | None:
    """Return the letters in the order typed; None unless each of the first `count` stands once.

    Examples
    --------
    >>> order_meant("C, A, B", 3), order_meant("CAB", 4)
    ('cab', None)
    """
    letters = "".join(sign for sign in text.lower() if sign.isalnum())
    return letters if sorted(letters) == sorted(LETTERS[:count]) else None


def no_option(count: int) -> str:
    """Say that an entry is none of `count` options."""
    return f"That is none of the options; answer with a letter from a to {LETTERS[count - 1]}."
