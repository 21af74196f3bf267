"""What a plan rests on: what was assumed, from memory, and the documents, in lines."""

from collections.abc import Iterator, Sequence

from seatwork.plan.records import Assumed, Given, Operation
from seatwork.rows import Row
from seatwork.shop import Rule


def assumed_rows(assumed: Sequence[Assumed], rules: Sequence[Rule]) -> Iterator[Row]:
    """Yield what was taken for what the note leaves open, each with the house rule behind it.

    Parameters
    ----------
    assumed : sequence of Assumed
        What the note leaves open.
    rules : sequence of Rule
        The house rules in force that the plan rests on; those of speed and feed are no
        assumption about the note.
    """
    for one in assumed:
        kind = "assumed" if one.rule else "read"
        yield Row(label=one.rule or "read as", text=one.sentence, kind=kind)
    named = {one.rule for one in assumed}
    for rule in rules:
        if rule.name not in named and not rule.of_machine:
            text = f"{rule.about}: {rule.shown}, house rule {rule.name}."
            yield Row(label=rule.name, text=text, kind="assumed")


def source_rows(sizes: Sequence[Given], operations: Sequence[Operation]) -> Iterator[Row]:
    """Yield each document, rule or sum that sizes, speeds and feeds come from, with what does.

    Parameters
    ----------
    sizes : sequence of Given
        The sizes of the plan.
    operations : sequence of Operation
        Its operations.
    """
    found: dict[str, dict[str, None]] = {}
    for what, source in (*_of_sizes(sizes), *_of_steps(operations)):
        found.setdefault(source, {})[what] = None
    for source, names in found.items():
        yield Row(label=", ".join(names), text=source, kind="source")


def _of_sizes(sizes: Sequence[Given]) -> Iterator[tuple[str, str]]:
    yield from ((given.about, given.source) for given in sizes)


def _of_steps(operations: Sequence[Operation]) -> Iterator[tuple[str, str]]:
    for step in operations:
        if step.spindle:
            yield f"speed of the {step.name}", step.spindle.source
        if step.feed_source:
            yield f"feed of the {step.name}", step.feed_source
