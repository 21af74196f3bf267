"""Lines that say where a number comes from: house rules, lists and plain geometry."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from seatwork.benches.build.controls import Control, Pick
from seatwork.hardware.facts import caution
from seatwork.hardware.job_list import Job
from seatwork.shop.house.house_rules import rules


def rule_line(name: str) -> str:
    """Tell a house rule in force: what it settles, its value, name and source.

    Examples
    --------
    >>> rule_line("flush.greatest_below")[:60]
    'How far below the face a flat head may sit: 0.015 in (0.38 m'
    """
    rule = rules()[name]
    changed = f", set in {rule.changed_in}" if rule.changed_in else ""
    source = fact_line(f"{rule.about}: {rule.shown}", rule.source, rule.confirmed)
    return f"{source} House rule {name}{changed}."


def fact_line(what: str, source: str, confirmed: str) -> str:
    """Tell a fact and its source, with the warning that its confirmation calls for.

    Examples
    --------
    >>> fact_line("Hole 6.6 mm", "ISO 273", "memory")
    'Hole 6.6 mm. Source: ISO 273 (from memory: check your copy).'
    """
    warning = caution(confirmed)
    return f"{what}. Source: {source}{f' ({warning})' if warning else ''}."


def assumed_lines(controls: Sequence[Control], values: Mapping[str, Any]) -> Iterator[str]:
    """Tell what was taken for granted in reading the screws that are picked."""
    picks = (one for one in controls if isinstance(one, Pick))
    for found in (one.known(values[one.name]) for one in picks):
        if isinstance(found, Job) and found.fastener:
            for text in found.fastener.assumptions:
                yield f"{found.fastener.name}: {text}."
