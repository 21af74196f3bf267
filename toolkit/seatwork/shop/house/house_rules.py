"""House rules: one named value for each rule that sources dispute or a print leaves open.

Defaults are package data with source and alternatives; a workbook folder's
``shop/house_rules.toml`` changes any of them. Inside, lengths are mm and angles deg.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import lru_cache
from pathlib import Path
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Row, Shown
from seatwork.shop import folder as workbook
from seatwork.shop.house.rule_values import read_value, show_value

FILE = "house_rules.toml"


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
            raise _unknown(name, "house rule", self._rules, name) from None

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
            found[name] = _change(name, text, found, f"{whose}, {name}")
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
    found = {
        f"{section}.{key}": _default(f"{section}.{key}", facts)
        for section, keys in _facts().items()
        if isinstance(keys, dict)
        for key, facts in keys.items()
    }
    return HouseRules(found, "The package's defaults: no workbook folder was found.")


@lru_cache(maxsize=8)
def _changed(path: Path, _modified: int, _length: int) -> HouseRules:
    """Return the rules as a file changes them; read again when the file was saved."""
    found = apply(workbook.read_text(path), str(path))
    return HouseRules(found, f"The package's defaults, as {path} changes them.")


def apply(text: str, name: str) -> dict[str, Rule]:
    """Return all rules after the changes of a rule file.

    Parameters
    ----------
    text : str
        The file's TOML.
    name : str
        The file's name, for errors.

    Raises
    ------
    SeatworkError
        With file and line, at the first line that cannot stand.
    """
    found = dict(defaults())
    for section, keys in workbook.parse_toml(text, name).items():
        if section == "format":
            _check_format(keys, f"{name}, line {workbook.line_of(text, section)}")
            continue
        for key, value in _keys(section, keys, text, name).items():
            place = f"{name}, line {workbook.line_of(text, section, key)}"
            found[f"{section}.{key}"] = _change(f"{section}.{key}", value, found, place)
    return found


def template() -> str:
    """Return a rule file with every rule in it, switched off, for an instructor to edit."""
    lines = ["# House rules of this shop. Take the # off a line to change a rule.", "format = 1"]
    section = ""
    for rule in defaults().values():
        head, _, key = rule.name.partition(".")
        if head != section:
            lines += ["", f"[{head}]"]
            section = head
        others = "".join(f"\n#   or {a.value}: {a.source}" for a in rule.alternatives)
        lines += [f"# {rule.about}", f"#   {rule.source}{others}", f'# {key} = "{rule.text}"']
    return "\n".join(lines) + "\n"


def _default(name: str, facts: dict[str, Any]) -> Rule:
    return Rule(
        name=name,
        about=facts["about"],
        kind=facts["kind"],
        value=read_value(facts["value"], limits(name), FILE),
        text=facts["value"],
        default=facts["value"],
        source=facts["source"],
        confirmed=facts["confirmed"],
        alternatives=tuple(Alternative(**other) for other in facts["alternatives"]),
    )


@lru_cache(maxsize=1)
def _facts() -> dict[str, Any]:
    return workbook.parse_toml(workbook.package_text(FILE), FILE)


def limits(name: str) -> dict[str, Any]:
    """Return what the defaults say of a rule: kind, least and greatest, or choices."""
    section, _, key = name.partition(".")
    facts: dict[str, Any] = _facts()[section][key]
    return facts


def _keys(section: str, keys: object, text: str, name: str) -> dict[str, Any]:
    sections = {rule.partition(".")[0] for rule in defaults()}
    place = f"{name}, line {workbook.line_of(text, section)}"
    if section not in sections:
        raise _unknown(section, "heading", sections, place)
    if not isinstance(keys, dict):
        raise SeatworkError(
            place, f"{section} is a heading, not a rule", f"write [{section}] and its rules below"
        )
    return keys


def _change(name: str, value: object, found: dict[str, Rule], place: str) -> Rule:
    if name not in found:
        raise _unknown(name, "house rule", found, place)
    old = found[name]
    source = "the instructor"
    if isinstance(value, dict):
        value, source = _value_and_source(value, place)
    read = read_value(value, limits(name), place)
    return Rule(
        name=name,
        about=old.about,
        kind=old.kind,
        value=read,
        text=str(value),
        default=old.default,
        source=source,
        confirmed="shop",
        alternatives=(Alternative(value=old.text, source=old.source), *old.alternatives),
        changed_in=place,
    )


def _value_and_source(value: dict[str, Any], place: str) -> tuple[object, str]:
    if not {"value"} <= set(value) <= {"value", "source"}:
        raise SeatworkError(
            place,
            f"a rule holds value and source, not {', '.join(map(str, value)) or 'nothing'}",
            'write { value = "1/3", source = "our book" }',
        )
    return value["value"], str(value.get("source", "the instructor"))


def _check_format(found: object, place: str) -> None:
    if found != workbook.FORMAT:
        raise SeatworkError(
            place, f"format {found!r} is not known", f"write format = {workbook.FORMAT}"
        )


def _unknown(what: str, sort: str, known: Any, place: str) -> SeatworkError:
    near = get_close_matches(what, list(known), n=1)
    meant = f"{near[0]} may be meant" if near else f"known are {', '.join(sorted(known))}"
    return SeatworkError(place, f"there is no {sort} {what!r}", meant)
