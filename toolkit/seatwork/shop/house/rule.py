"""One house rule: its value, where that comes from, and what others do."""

from dataclasses import dataclass

from seatwork.rows import Blocks, Row, Shown
from seatwork.shop.house.rule_values import show_value


@dataclass(frozen=True, slots=True, kw_only=True)
class Alternative:
    """What others do instead.

    Parameters
    ----------
    value : str
        The value as the shop writes it.
    source : str
        Who does so.
    """

    value: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Rule(Shown):
    """One house rule in force.

    Parameters
    ----------
    name : str
        Section and key, such as ``speeds.countersink_cap``.
    about : str
        What the rule settles, in a few words.
    kind : {"length", "angle", "speed", "ratio", "count", "choice"}
        What the value is: a length [mm], angle [deg], spindle speed [rev/min], number or word.
    value : float or str
        The value in force [as `kind` says]; a word for a choice.
    text : str
        The value as written in the file.
    source, confirmed : str
        Where the value comes from, and how far that was confirmed.
    alternatives : tuple of Alternative
        What others do.
    changed_in : str
        File and line that changed the default; empty for a default.
    default : str
        The package's own value as written.
    """

    name: str
    about: str
    kind: str
    value: float | str
    text: str
    source: str
    confirmed: str
    alternatives: tuple[Alternative, ...]
    changed_in: str = ""
    default: str = ""

    @property
    def of_machine(self) -> bool:
        """Whether it settles how a machine is set, and nothing that a print leaves open."""
        return self.name.partition(".")[0] in ("speeds", "feeds", "pilot")

    def _line(self) -> str:
        return f"{self.name} = {self.shown}"

    def _blocks(self) -> Blocks:
        yield (
            "",
            (
                Row(label="settles", text=self.about),
                Row(label="value", text=self.shown, source=self.source),
                *(
                    Row(label="others", text=one.value, source=one.source)
                    for one in self.alternatives
                ),
                *((Row(label="changed in", text=self.changed_in),) if self.changed_in else ()),
            ),
        )

    @property
    def shown(self) -> str:
        """The value for people, a length in both unit systems."""
        return show_value(self.kind, self.value, self.text)
