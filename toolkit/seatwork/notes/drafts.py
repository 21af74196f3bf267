"""A feature while its sizes are still coming in."""

import re
from dataclasses import dataclass, field, replace
from dataclasses import fields as fields_of
from fractions import Fraction
from typing import Any

from seatwork.notes.features import (
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import Size

HALF_THOU = 0.0005  # in; a size of three places is rounded by as much
SEATS = (Countersink, Counterbore, Spotface, Counterdrill)
DEPTH_BY_X = (Hole, Counterbore, Spotface, Counterdrill)


@dataclass(slots=True, eq=False)
class Draft:
    """A feature in the making.

    Parameters
    ----------
    kind : type of Feature
        What it will be.
    start, end : int
        Where its words stand in the note.
    line : int
        Line of the note.
    """

    kind: type[Feature]
    start: int
    end: int
    line: int
    stated: dict[str, Any] = field(default_factory=dict)
    count: int | None = None
    above: bool = False  # written bare above its hole, as ISO 15786 does
    at_mouth: bool = False  # a chamfer called a countersink: it stands at a hole
    of_next: bool = False  # a chamfer that stands before the hole it is of
    bare: bool = False  # a hole without a word of its own
    joined: str = ""  # the separator before it
    by_depth: str = ""  # how the depth was given: "X", or "marked"
    phrases: dict[str, Phrase] = field(default_factory=dict)  # what each size was read from

    def has(self, name: str) -> bool:
        """Tell whether the feature has a field of this name."""
        return any(f.name == name for f in fields_of(self.kind))

    def build(self, count: int) -> Feature:
        """Return the finished feature, its angle included."""
        stated = dict(self.stated)
        if self.is_side_angle():
            stated["angle"] = doubled(stated["angle"])
        return self.kind(count=count, **stated)

    def take(self, phrase: Phrase, size: Size, *, by: bool, also: Size | None = None) -> bool:
        """Take a size if it has a place for it.

        Parameters
        ----------
        phrase : Phrase
            The size's phrase; its kind says how it is marked.
        size : Size
            The size [mm or deg].
        by : bool
            Whether an X or BY stands before it.
        also : Size, optional
            The same size said again; a hole keeps it.

        Returns
        -------
        bool
            False if the size belongs elsewhere.
        """
        slot = self._slot(phrase, size, by)
        if slot is None or slot in self.stated:
            return False
        self.stated[slot] = size
        self.phrases[slot] = phrase
        if phrase.kind == "c_chamfer":
            self.stated["angle"] = Size(value=90.0, unit="deg")
        if slot == "depth":
            self.by_depth = "marked" if phrase.kind == "depth" else "X"
        if also is not None and slot == "diameter" and self.kind is Hole:
            self.stated["also"] = also
        if slot == "angle":
            self._give_bound_to_leg()
        self.end = max(self.end, phrase.end)
        return True

    def _give_bound_to_leg(self) -> None:
        """Let MAX behind ``.015 X 45°`` bound the leg: the angle of an edge has none."""
        name = {Chamfer: "leg", EdgeBreak: "size"}.get(self.kind, "")
        leg, angle = self.stated.get(name), self.stated["angle"]
        if leg is not None and angle.bound and not leg.bound:
            self.stated[name] = replace(leg, bound=angle.bound)
            self.stated["angle"] = replace(angle, bound="")

    def _slot(self, phrase: Phrase, size: Size, by: bool) -> str | None:
        if phrase.kind == "c_chamfer":
            return "leg" if self.kind is Chamfer else None
        if size.unit == "deg":
            return "angle" if self.has("angle") else None
        if phrase.kind == "depth":
            return "depth" if self.has("depth") else None
        if phrase.kind in ("diameter", "drill_name"):
            return "diameter" if self.has("diameter") else None
        return self._plain_slot(by)

    def _plain_slot(self, by: bool) -> str | None:
        first = {Chamfer: "leg", EdgeBreak: "size", Thread: "depth"}.get(self.kind, "diameter")
        if first not in self.stated and self.has(first) and (by or self.kind is not Thread):
            return first
        return "depth" if by and self.kind in DEPTH_BY_X else None

    def is_side_angle(self) -> bool:
        """Tell whether the angle as written is that of one side, as in ``.03 X 45°``."""
        phrase = self.phrases.get("angle")
        if phrase is None or "included" in phrase.marks:
            return False
        if "per_side" in phrase.marks or self.kind is EdgeBreak:
            return True
        return self.kind is Chamfer and "diameter" not in self.stated


def copy_of(draft: Draft) -> Draft:
    """Return the same feature once more, for the other face of the part."""
    return replace(draft, stated=dict(draft.stated), phrases=dict(draft.phrases))


def doubled(size: Size) -> Size:
    """Return the included angle of a 45° per side angle, tolerance and all."""

    def twice(value: float | None) -> float | None:
        return None if value is None else 2 * value

    if size.least is not None and size.greatest is not None:
        return Size.limits(
            least=2 * size.least, greatest=2 * size.greatest, unit="deg", bound=size.bound
        )
    return Size(
        value=twice(size.value),
        unit="deg",
        upper=twice(size.upper),
        lower=twice(size.lower),
        fit=size.fit,
        bound=size.bound,
    )


def thread_fields(text: str) -> dict[str, Any]:
    """Return the fields of a thread's designation, such as ``1/4-20 UNC-2B`` or ``M8``."""
    text = re.sub(r"\s*-\s*", "-", text)
    text = re.sub(r"\b(U?)\.?N\.([CF])\.?", r"\1N\2", text)
    if text.startswith("M"):
        size, _, pitch = text.replace(" ", "").replace(",", ".").partition("-")
        return {"size": size} | ({"pitch": float(pitch)} if pitch else {})
    found = re.fullmatch(
        r"(#\s?\d+|\d+[- ]\d+/\d+|\d+/\d+|\d*\.?\d+)-(\d+(?:\.5)?)[\s-]*(UN[A-Z]*|N[CFS]|NPTF?)?"
        r"[\s-]*([123][AB])?[\s-]*(LH)?",
        text,
    )
    if found is None:
        return {"size": text}
    size, pitch, series, thread_class, left = found.groups()
    return {
        "size": _named_size(size, float(pitch)),
        "threads_per_inch": float(pitch),
        "series": series or "",
        "thread_class": thread_class or "",
        "left_hand": bool(left),
    }


def _named_size(size: str, threads_per_inch: float) -> str:
    """Return ``#10`` for 10-32, but ``1`` for 1-8: number sizes are fine-pitched."""
    size = size.replace("# ", "#").replace(" ", "-")
    if "." in size:
        return _name_of_decimal(size)
    numbered = re.fullmatch(r"0|[1-6]|8|10|12", size) and threads_per_inch >= 24
    return f"#{size}" if numbered else size


def _name_of_decimal(size: str) -> str:
    """Return ``1/4`` for .250 and ``#10`` for .190, as newer prints write sizes."""
    inches = float(size)
    for number in (*range(7), 8, 10, 12):
        if abs(inches - (0.060 + 0.013 * number)) < HALF_THOU:
            return f"#{number}"
    sixteenths = Fraction(round(inches * 16), 16)
    if abs(inches - float(sixteenths)) > HALF_THOU + 1e-9:
        return size
    whole, rest = divmod(sixteenths.numerator, sixteenths.denominator)
    if not rest:
        return str(whole)
    part = f"{rest}/{sixteenths.denominator}"
    return f"{whole}-{part}" if whole else part
