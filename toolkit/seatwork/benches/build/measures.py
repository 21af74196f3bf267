"""The readouts of a bench, and how a state differs from the one that was kept."""

from dataclasses import dataclass

from seatwork.benches.build.kinds import KINDS


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

    def change(self, kept: "Measure", system: str) -> str:
        """Return how this readout differs from the one kept.

        Examples
        --------
        >>> Measure("Depth", 3.0).change(Measure("Depth", 2.0), "metric")
        '+1.00 mm (0.039 in)'
        """
        if self.text(system) == kept.text(system):
            return "same"
        if not isinstance(self.value, float | int) or not isinstance(kept.value, float | int):
            return "changed"
        shift = self.value - kept.value
        sign = "+" if shift > 0 else "−"
        return f"{sign}{KINDS[self.kind].both(abs(shift), system)}"


def table(
    now: tuple[Measure, ...], kept: tuple[Measure, ...] | None, system: str
) -> list[list[str]]:
    """Return rows of label and readout; with a kept state also its readout and the change.

    Parameters
    ----------
    now, kept : tuple of Measure
        Readouts; those of `kept` are found by label.
    system : {"inch", "metric"}
        Unit system named first.
    """
    if kept is None:
        return [[one.label, one.text(system)] for one in now]
    before = {one.label: one for one in kept}
    return [
        [one.label, one.text(system), before[one.label].text(system),
         one.change(before[one.label], system)]
        if one.label in before
        else [one.label, one.text(system), "none", "new"]
        for one in now
    ]  # fmt: skip
