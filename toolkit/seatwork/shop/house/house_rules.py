"""House rules: one named value for each rule that sources dispute or a print leaves open.

Defaults are package data with source and alternatives; a workbook folder's
``shop/house_rules.toml`` changes any of them. Inside, lengths are mm and angles deg.
"""

from collections.abc import Iterator, Mapping
from functools import lru_cache
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Row, Shown
from seatwork.shop import folder as workbook
from seatwork.shop.house.rule import Alternative as Alternative
from seatwork.shop.house.rule import Rule as Rule
from seatwork.shop.house.rule_file import FILE as FILE
from seatwork.shop.house.rule_file import apply as apply
from seatwork.shop.house.rule_file import change, standard, unknown
from seatwork.shop.house.rule_file import limits as limits
from seatwork.shop.house.rule_file import template as template


class HouseRules(Shown, Mapping[str, Rule]):
    """The house rules in force, by name.

    Parameters
    ----------
    rules : dict of str to Rule
        All rules.
    origin : str
        One sentence: where the values come from.

    Examples
    --------
    >>> defaults().number("speeds.countersink_cap"), defaults().word("display.system")
    (300.0, 'inch')
    """

    def __init__(self, rules: dict[str, Rule], origin: str) -> None:
        self._rules = rules
        self.origin = origin

    def _line(self) -> str:
        return f"{len(self)} rules. {self.origin}"

    def _blocks(self) -> Blocks:
        rules = self._rules.values()
        yield "", tuple(Row(label=r.name, text=r.shown, source=r.source) for r in rules)

    def __getitem__(self, name: str) -> Rule:
        try:
            return self._rules[name]
        except KeyError:
            raise unknown(name, "house rule", self._rules, name) from None

    def __iter__(self) -> Iterator[str]:
        return iter(self._rules)

    def __contains__(self, name: object) -> bool:
        return name in self._rules

    def __len__(self) -> int:
        return len(self._rules)

    def number(self, name: str) -> float:
        """Return the value of a rule that is a number [mm, deg, rev/min or none].

        Raises
        ------
        SeatworkError
            If there is no such rule, or it is a choice of words.
        """
        value = self[name].value
        if isinstance(value, str):
            raise SeatworkError(name, "that rule is a word, not a number", "ask for its word")
        return value

    def word(self, name: str) -> str:
        """Return the value of a rule that is a choice of words.

        Raises
        ------
        SeatworkError
            If there is no such rule, or it is a number.
        """
        value = self[name].value
        if not isinstance(value, str):
            raise SeatworkError(name, "that rule is a number, not a word", "ask for its number")
        return value

    def changed(self, texts: Mapping[str, str], whose: str) -> "HouseRules":
        """Return the rules with other values for some, as for one part.

        Parameters
        ----------
        texts : mapping of str to str
            New values by the rules' names, as a rule file writes them.
        whose : str
            What they hold for, such as ``"this part"``; errors and the rule itself say so.

        Raises
        ------
        SeatworkError
            If there is no such rule, or it cannot have that value.
        """
        found = dict(self._rules)
        for name, text in texts.items():
            found[name] = change(name, text, found, f"{whose}, {name}")
        return HouseRules(found, self.origin) if texts else self

    def table(self) -> list[dict[str, str]]:
        """Return the rules in force as rows of text, for a page or the command line.

        Returns
        -------
        list of dict
            Columns rule, about, value, source, confirmed, alternatives, changed.
        """
        return [
            {
                "rule": rule.name,
                "about": rule.about,
                "value": rule.shown,
                "source": rule.source,
                "confirmed": rule.confirmed,
                "alternatives": "; ".join(f"{a.value} ({a.source})" for a in rule.alternatives),
                "changed": rule.changed_in,
            }
            for rule in self._rules.values()
        ]


def rules(folder: str | Path | None = None) -> HouseRules:
    """Return the house rules in force.

    Parameters
    ----------
    folder : str or Path, optional
        A workbook folder; looked for from the working folder upward if not given.

    Returns
    -------
    HouseRules
        The defaults, with what ``shop/house_rules.toml`` of the folder changes.

    Raises
    ------
    SeatworkError
        For an unknown rule, a wrong unit or a value out of range: file, line, what would do.
    """
    return _here() if folder is None else _in_force(Path(folder))


@workbook.once
def _here() -> HouseRules:
    return _in_force(workbook.find())


def _in_force(place: Path | None) -> HouseRules:
    if place is None:
        return defaults()
    path = place / "shop" / FILE
    try:
        stamp = path.stat()
    except OSError:
        return HouseRules(dict(defaults()), f"The package's defaults: {place} has no shop/{FILE}.")
    return _changed(path, stamp.st_mtime_ns, stamp.st_size)


@lru_cache(maxsize=1)
def defaults() -> HouseRules:
    """Return the package's own house rules, as if no workbook folder were there."""
    return HouseRules(standard(), "The package's defaults: no workbook folder was found.")


@lru_cache(maxsize=8)
def _changed(path: Path, _modified: int, _length: int) -> HouseRules:
    """Return the rules as a file changes them; read again when the file was saved."""
    found = apply(workbook.read_text(path), str(path))
    return HouseRules(found, f"The package's defaults, as {path} changes them.")
