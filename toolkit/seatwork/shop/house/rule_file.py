"""The file of house rules: the package's own, the changes a shop makes, a template to edit."""

from collections.abc import Iterable
from difflib import get_close_matches
from functools import lru_cache
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.shop import folder as workbook
from seatwork.shop.house.rule import Alternative, Rule
from seatwork.shop.house.rule_values import read_value

FILE = "house_rules.toml"


@lru_cache(maxsize=1)
def standard() -> dict[str, Rule]:
    """Return the package's own rules by name; copy before changing."""
    return {
        f"{section}.{key}": _default(f"{section}.{key}", facts)
        for section, keys in _facts().items()
        if isinstance(keys, dict)
        for key, facts in keys.items()
    }


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
    found = dict(standard())
    for section, keys in workbook.parse_toml(text, name).items():
        if section == "format":
            _check_format(keys, f"{name}, line {workbook.line_of(text, section)}")
            continue
        for key, value in _keys(section, keys, text, name).items():
            place = f"{name}, line {workbook.line_of(text, section, key)}"
            found[f"{section}.{key}"] = change(f"{section}.{key}", value, found, place)
    return found


def template() -> str:
    """Return a rule file with every rule in it, switched off, for an instructor to edit."""
    lines = ["# House rules of this shop. Take the # off a line to change a rule.", "format = 1"]
    section = ""
    for rule in standard().values():
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
    sections = {rule.partition(".")[0] for rule in standard()}
    place = f"{name}, line {workbook.line_of(text, section)}"
    if section not in sections:
        raise unknown(section, "heading", sections, place)
    if not isinstance(keys, dict):
        raise SeatworkError(
            place, f"{section} is a heading, not a rule", f"write [{section}] and its rules below"
        )
    return keys


def change(name: str, value: object, found: dict[str, Rule], place: str) -> Rule:
    """Return a rule with another value.

    Parameters
    ----------
    name : str
        Section and key of the rule.
    value : object
        The new value as the file has it: a text, or a table of value and source.
    found : dict of str to Rule
        The rules so far.
    place : str
        File and line, or what the value holds for; errors and the rule itself say so.

    Raises
    ------
    SeatworkError
        If there is no such rule, or it cannot have that value.
    """
    if name not in found:
        raise unknown(name, "house rule", found, place)
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


def unknown(what: str, sort: str, known: Iterable[str], place: str) -> SeatworkError:
    """Return the error for a name that is not there: what is near it, or all that are known."""
    names = sorted(known)
    near = get_close_matches(what, names, n=1)
    meant = f"{near[0]} may be meant" if near else f"known are {', '.join(names)}"
    return SeatworkError(place, f"there is no {sort} {what!r}", meant)
