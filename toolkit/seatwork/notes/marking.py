"""First pass over the phrases: marks that stand before or behind a size join that size."""

from seatwork.notes.callout import NoteError
from seatwork.notes.parsing import Phrase
from seatwork.notes.repeats import repeated_in_brackets, repeats

SIZES = ("plain", "diameter", "depth", "drill_name", "c_chamfer")
BREAKS = ("SEPARATOR", "NEWLINE")
IDLE = ("FILLER", "TO_LIMIT", "ASIDE", "LEFT", "RIGHT")
KIND = {
    "DIA": "diameter",
    "DEEP": "depth",
    "THICKNESS": "left",
    "LEAVE": "left",
    "FILLET": "fillet",
}
"""What each mark makes of its size."""
NAMES = {"left": "thickness", "fillet": "corner radius"}


def marked(text: str, phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases with DIA, DEEP, THK, R, MAX, INCL and brackets joined to their sizes.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        As parsed; those that are sizes are changed.

    Raises
    ------
    NoteError
        At a mark with no size on either side.
    """
    return Marking(text, repeated_in_brackets(phrases)).run()


class Marking:
    """Joins the marks of one note to their sizes.

    Parameters
    ----------
    text : str
        The note, for errors.
    phrases : list of Phrase
        Its phrases, brackets read.
    """

    def __init__(self, text: str, phrases: list[Phrase]) -> None:
        self.text = text
        self.rest = [phrase for phrase in phrases if phrase.kind not in IDLE]
        self.kept: list[Phrase] = []
        self.bound: Phrase | None = None

    def run(self) -> list[Phrase]:
        """Return the phrases that are left."""
        while self.rest:
            self._place(self.rest.pop(0))
        if self.bound is not None:
            raise self._fault(self.bound, "it bounds no size", "write it behind its size")
        return self.kept

    def _place(self, phrase: Phrase) -> None:
        if phrase.kind in KIND:
            self._join(phrase, KIND[phrase.kind])
        elif phrase.kind in ("INCLUDED", "PER_SIDE"):
            self._mark_angle(phrase)
        elif phrase.kind == "BOUND":
            self._take_bound(phrase)
        elif phrase.kind == "FULL_THREAD":
            if self.kept and _open(self.kept[-1], "depth"):
                self.kept[-1].kind = "depth"
        elif self.kept and repeats(self.kept[-1], phrase):
            self.kept[-1].also = phrase
        else:
            self._keep(phrase)

    def _keep(self, phrase: Phrase) -> None:
        if self.bound is not None and phrase.quantity is not None:
            phrase.bound = self.bound.text[:3].lower()
            self.bound = None
        self.kept.append(phrase)

    def _take_bound(self, bound: Phrase) -> None:
        """Give MAX or MIN to the size it stands behind, else to the next one."""
        last = self.kept[-1] if self.kept else None
        ahead = self.rest[0] if self.rest else None
        leads = ahead is not None and ahead.kind == "LEAVE"
        if last is not None and last.quantity is not None and not leads:
            last.bound = last.bound or bound.text[:3].lower()
        elif self.bound is not None:
            raise self._fault(bound, "two bounds for one size", "write one of them")
        else:
            self.bound = bound

    def _join(self, mark: Phrase, kind: str) -> None:
        last = self.kept[-1] if self.kept else None
        follows = self._size_ahead()
        if last is not None and last.kind == kind == "left":
            return
        if last and _open(last, kind) and not self._belongs_ahead(mark, follows):
            last.kind = kind
            last.end = mark.end
        elif follows and _open(follows, kind):
            follows.kind = kind
            follows.start = mark.start
            if mark.kind == "THICKNESS" and last is not None:
                self._hand_bound_on(last, follows)
        else:
            name = NAMES.get(kind, kind)
            raise self._fault(
                mark, f"no size stands by this {name}", f"write the {name}, such as .25 {mark.text}"
            )

    def _size_ahead(self) -> Phrase | None:
        """Return the size right behind a mark; MAX and MIN may stand between."""
        return next((one for one in self.rest[:2] if one.kind != "BOUND"), None)

    def _belongs_ahead(self, mark: Phrase, follows: Phrase | None) -> bool:
        """Tell whether a mark with sizes on either side speaks for the one behind it."""
        if follows is None or not _open(follows, KIND[mark.kind]) or mark.kind == "DIA":
            return False
        if mark.kind != "DEEP":
            return True
        place = self.rest.index(follows) + 1
        closed = len(self.rest) <= place or self.rest[place].kind not in ("DEEP", "DIA")
        behind_x = len(self.kept) > 1 and self.kept[-2].kind == "BY"
        return closed and not behind_x

    def _hand_bound_on(self, last: Phrase, follows: Phrase) -> None:
        """Give MIN in ``⌀1-1/4 MIN FLANGE .500`` to the flange."""
        if last.quantity is None or not last.quantity.bounds:
            return
        follows.bound = last.quantity.bounds[-1]
        last.quantity = last.quantity.without_bounds()

    def _mark_angle(self, mark: Phrase) -> None:
        last = self.kept[-1] if self.kept else None
        if last is None or not last.is_angle:
            raise self._fault(
                mark,
                f"no angle stands before {mark.text}",
                f"write the angle, such as 82° {mark.text}",
            )
        last.marks.add("included" if mark.kind == "INCLUDED" else "per_side")

    def _fault(self, phrase: Phrase, fault: str, remedy: str) -> NoteError:
        return NoteError(self.text, start=phrase.start, end=phrase.end, fault=fault, remedy=remedy)


def _open(phrase: Phrase, kind: str) -> bool:
    """Tell whether a phrase is a length that this mark can still say something about."""
    is_length = phrase.quantity is not None and not phrase.quantity.is_angle
    return (phrase.kind == "plain" and is_length) or phrase.kind == kind == "diameter"
