"""The readouts of a bench, and how a state differs from the one that was kept."""

from dataclasses import dataclass

from seatwork.benches.build.kinds import KINDS

SIDES = {"proud": 1, "over the face": 1, "below": -1, "below the face": -1}
"""Which way from the face a readout counts, by the word that says so [-]."""


@dataclass(frozen=True, slots=True)
class Measure:
    """One readout.

    Parameters
    ----------
    label : str
        What is measured, in shop words.
    value : float, str or None
        A size [mm, deg, m/min, mm/rev or rev/min, by kind], a word, or None: nothing to measure.
    kind : str
        A kind of number, or ``"word"``.
    note : str
        A word after the value, such as "proud" or "from the face".
    """

    label: str
    value: float | str | None
    kind: str = "length"
    note: str = ""

    def text(self, system: str) -> str:
        """Return the readout as people see it.

        Examples
        --------
        >>> Measure("Head", 0.4572, note="proud").text("inch")
        '0.018 in (0.46 mm) proud'
        """
        if self.value is None:
            return "none"
        if isinstance(self.value, str):
            return f"{self.value} {self.note}".strip()
        return f"{KINDS[self.kind].both(self.value, system)} {self.note}".strip()

    @property
    def thing(self) -> str:
        """What is measured, whichever side of the face it is on."""
        stem, _, last = self.label.rpartition(" ")
        return stem if last in SIDES and self.kind == "length" else self.label

    @property
    def height(self) -> float | None:
        """How far over the face it says that something is [mm]; None if it says no such thing."""
        if isinstance(self.value, str):
            return 0.0 if self.value.startswith("flush") else None
        words = (self.note.partition(", ")[0], self.label.rpartition(" ")[2])
        side = next((SIDES[word] for word in words if word in SIDES), None)
        if side is None or self.value is None or self.kind != "length":
            return None
        return side * self.value

    def change(self, kept: "Measure", system: str) -> str:
        """Return how this readout differs from the one kept.

        Examples
        --------
        >>> Measure("Depth", 3.0).change(Measure("Depth", 2.0), "metric")
        '+1.00 mm (0.039 in)'
        >>> Measure("Head", 1.0, note="below").change(Measure("Head", 0.5, note="proud"), "metric")
        '1.50 mm (0.059 in) lower'
        """
        if (self.label, self.text(system)) == (kept.label, kept.text(system)):
            return "same"
        if self.height is not None and kept.height is not None:
            return _moved(self.height - kept.height, system)
        if (self.height is None) != (kept.height is None):
            return "changed"
        if not isinstance(self.value, float | int) or not isinstance(kept.value, float | int):
            return "changed"
        shift = self.value - kept.value
        sign = "+" if shift > 0 else "−"
        return f"{sign}{KINDS[self.kind].both(abs(shift), system)}"


def _moved(rise: float, system: str) -> str:
    """Say how far something stands higher or lower [mm] than it did."""
    moved = f"{KINDS['length'].both(abs(rise), system)} {'higher' if rise > 0 else 'lower'}"
    return moved if rise else "changed"


def table(
    now: tuple[Measure, ...], kept: tuple[Measure, ...] | None, system: str
) -> list[list[str]]:
    """Return rows of label and readout; with a kept state also its readout and the change.

    Parameters
    ----------
    now, kept : tuple of Measure
        Readouts; those of `kept` are found by what is measured.
    system : {"inch", "metric"}
        Unit system named first.
    """
    if kept is None:
        return [[one.label, one.text(system)] for one in now]
    before = {one.thing: one for one in kept}
    return [
        [one.label, one.text(system), before[one.thing].text(system),
         one.change(before[one.thing], system)]
        if one.thing in before
        else [one.label, one.text(system), "none", "new"]
        for one in now
    ]  # fmt: skip
