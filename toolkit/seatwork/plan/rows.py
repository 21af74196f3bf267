"""A plan as people read it: rows of label, words and source, the same on screen and card."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from seatwork.plan import sentences
from seatwork.plan.loads import OVERLOAD
from seatwork.plan.records import Check, Given, Operation, Reading, Setup, Stop
from seatwork.plan.settings import CAGE, CLOSE, FINER, in_table
from seatwork.rows import Row as Row
from seatwork.rows import Rows as Rows
from seatwork.shop import Rule
from seatwork.units import (
    show_angle,
    show_both,
    show_feed,
    show_length,
    show_number,
    show_speed,
    show_spindle,
)

LB_IN = 8.850746  # lb·in in a newton meter: 0.45359237 kg, 9.80665 m/s², 25.4 mm
HP = 745.6999  # W in a horsepower of 550 ft·lb/s


def size_rows(sizes: Sequence[Given], system: str) -> tuple[Row, ...]:
    """Return the sizes of a seat, each with its source."""
    return tuple(_size_row(given, system) for given in sizes)


def operation_rows(operations: Sequence[Operation], system: str) -> tuple[tuple[Row, ...], ...]:
    """Return the operations of a seat, each as rows: what and why, tool, speed, feed, oil, load."""
    return tuple(_operation(step, system) for step in operations)


def tool_rows(operations: Sequence[Operation]) -> Iterator[Row]:
    """Yield why each cutter was chosen, why the nearer-looking one was not, or what to get."""
    for step in operations:
        text = " ".join(_choice(step))
        if text:
            yield Row(label=step.name, text=text, kind="tool")


def _choice(step: Operation) -> Iterator[str]:
    if not step.in_shop:
        yield f"None in the crib. Get: {step.tool}"
        if step.grind:
            yield f"Or {step.grind}."
    elif step.tool_reason:
        yield f"{step.tool} ({step.tool_reason})."
    if step.passed:
        others = (f"{one.tool.name}, {one.sentence.rstrip('.')}" for one in step.passed)
        yield f"Passed over: {'; '.join(others)}."


def stop_rows(stops: Sequence[Stop], system: str) -> tuple[Row, ...]:
    """Return touch-off and quill travel, and what a stop error does."""
    return tuple(row for stop in stops for row in _stop(stop, system))


def reading_rows(readings: Sequence[Reading], system: str) -> tuple[Row, ...]:
    """Return the gage readings to expect."""
    return tuple(
        replace(_reading(one, system), kind="check" if in_table(one, readings) else "gage")
        for one in readings
    )


def check_rows(checks: Sequence[Check]) -> tuple[Row, ...]:
    """Return what was looked at, each line of the kind of its verdict; a stop with its question."""
    return tuple(Row(label=check.name, text=_looked(check), kind=check.verdict) for check in checks)


def _looked(check: Check) -> str:
    """Return a check in words, with its question where that says more."""
    whole = check.sentence in check.question
    return check.question if whole else f"{check.sentence} {check.question}".rstrip()


def setup_rows(setups: Sequence[Setup]) -> tuple[Row, ...]:
    """Return a row for each setup: face up, how held, what is under it, zero, steps."""
    return tuple(_setup(number, one) for number, one in enumerate(setups, 1))


def _setup(number: int, setup: Setup) -> Row:
    cells = {"Held": setup.held, "Under it": setup.under, "Zero": setup.zero}
    text = " ".join(f"{head}: {words}." for head, words in cells.items())
    return Row(
        label=f"Setup {number}, {setup.face}",
        text=f"{text} Steps: {', '.join(setup.steps)}.",
        kind="setup",
        cells=tuple(cells.items()),
    )


def rule_row(rule: Rule) -> Row:
    """Return a house rule with its value in force and its source."""
    text = f"{rule.name} = {rule.shown}"
    return Row(label="House rule", text=text, source=rule.source, kind="rule")


def show_torque(newton_meters: float, system: str) -> str:
    """Write a torque in both systems, the reader's own first.

    Examples
    --------
    >>> show_torque(1.0, "metric"), show_torque(1.0, "inch")
    ('1.0 N·m (9 lb·in)', '9 lb·in (1.0 N·m)')
    """
    metric = f"{show_number(newton_meters, 1, least=1)} N·m"
    inch = f"{show_number(newton_meters * LB_IN, 0)} lb·in"
    return f"{inch} ({metric})" if system == "inch" else f"{metric} ({inch})"


def show_power(watts: float, system: str) -> str:
    """Write a power in both systems, the reader's own first.

    Examples
    --------
    >>> show_power(745.7, "inch")
    '1.00 hp (746 W)'
    """
    metric = f"{show_number(watts, 0)} W"
    inch = f"{show_number(watts / HP, 2, least=2)} hp"
    return f"{inch} ({metric})" if system == "inch" else f"{metric} ({inch})"


def show_limits(given: Given, system: str) -> str:
    """Write a size with its limits.

    Examples
    --------
    >>> show_limits(Given(about="hole", value=5.1, least=5.1, greatest=5.2), "metric")
    '5.10 mm (0.201 in), limits 5.10 mm to 5.20 mm'
    """
    if given.kind == "angle":
        return _angle_limits(given)
    if given.least is None and given.greatest is None:
        return show_both(given.value, system)
    value, least, greatest = _between(given.value, given.smallest, given.largest, system)
    return f"{value}, limits {least} to {greatest}"


def _between(value: float, least: float, greatest: float, system: str) -> tuple[str, str, str]:
    """Write a size [mm] and its limits, with a place more where they lie close together."""
    places = FINER[system] if 0 < greatest - least < CLOSE else None
    low, high = (show_length(end, system, places) for end in (least, greatest))
    return show_both(value, system, places), low, high


def _angle_limits(given: Given) -> str:
    if given.least is None or given.greatest is None:
        return show_angle(given.value)
    ends = f"{show_angle(given.least)} to {show_angle(given.greatest)}"
    return f"{show_angle(given.value)}, limits {ends}"


def _size_row(given: Given, system: str) -> Row:
    beside = f" ({given.beside})" if given.beside else ""
    name = f"{given.name} drill{beside}, " if given.name else ""
    text = name + show_limits(given, system)
    return Row(label=given.about, text=text, source=given.source, kind="size")


def _operation(step: Operation, system: str) -> tuple[Row, ...]:
    how = step.feed is None or step.by_hand
    rows = [Row(label=step.name, text=step.why, kind="how" if how else "why")]
    if step.tool:
        have = "" if step.in_shop else "Not in the shop's list. "
        reason = f" ({step.tool_reason})" if step.tool_reason else ""
        rows.append(Row(label="tool", text=f"{have}{step.tool}{reason}", kind="why"))
    if step.feed is None:
        return tuple(rows)
    rows += [*_spindle(step, system), _feed(step, system), _oil(step)]
    if step.load:
        rows.append(_load(step, system))
    return tuple(rows)


def _oil(step: Operation) -> Row:
    note = f": {step.oil_note}" if step.oil_note else ""
    return Row(label="oil", text=f"{step.oil}{note}", kind="why")


def _load(step: Operation, system: str) -> Row:
    stall = step.load
    assert stall is not None
    verdict = "The machine should carry it."
    if stall.may_stall:
        verdict = "May stall: take a lighter cut or a stronger machine."
    elif stall.over_plate:
        verdict = (
            "That is over the motor's plate, which it pulls for the length of a cut "
            f"(house rule {OVERLOAD}, x {show_number(stall.overload, 2)}): "
            "if it slows, ease the feed."
        )
    power = f" Power: {show_power(step.power, system)}." if step.power is not None else ""
    thin, worn = (show_number(one, 1, least=1) for one in (stall.size_factor, stall.wear_factor))
    return Row(
        label="torque",
        text=f"Reckon with {show_torque(stall.torque, system)} of the "
        f"{show_torque(stall.available, system)} there are. {verdict}{power} Thin "
        f"chips are in it with x {thin}; a worn lip with x {worn}, which errs high on purpose.",
        kind="why",
    )


def _spindle(step: Operation, system: str) -> list[Row]:
    spindle = step.spindle
    if spindle is None:
        return [Row(label="spindle speed", text=sentences.NOT_LISTED, kind="why")]
    share = f" x {show_number(spindle.ratio, 3)} ({spindle.rule})" if spindle.rule else ""
    worked = (
        f"{spindle.step.advice} Worked from {show_speed(spindle.surface_speed, system)}{share}"
        f" at {show_both(spindle.diameter, system)}: {show_spindle(spindle.raw)}."
    )
    return [Row(label="spindle speed", text=worked, source=spindle.source, kind="why")]


def _feed(step: Operation, system: str) -> Row:
    assert step.feed is not None
    other = "metric" if system == "inch" else "inch"
    text = f"{show_feed(step.feed, system)} ({show_feed(step.feed, other)})"
    return Row(label="feed", text=text, source=step.feed_source, kind="why")


def _stop(stop: Stop, system: str) -> tuple[Row, ...]:
    travel = Row(
        label=f"{_device(stop)} after {stop.touch}", text=_travel(stop, system), kind="travel"
    )
    if not stop.effect or stop.device == CAGE:
        return (travel,)
    error = show_length(stop.error, system)
    effect = Row(
        label=f"{error} of stop error",
        text=f"moves the diameter at the face by {show_both(stop.effect, system)}",
        kind="travel",
    )
    return (travel, effect)


def _device(stop: Stop) -> str:
    return f"clicks of the {CAGE}" if stop.device == CAGE else f"{stop.device} travel"


def _travel(stop: Stop, system: str) -> str:
    """Write the travel to aim for, its limits, and what does on every hole."""
    if stop.device == CAGE and stop.step:
        return _clicks(stop, stop.step, system)
    if stop.least is None or stop.greatest is None:
        return show_both(stop.travel, system)
    travel, least, greatest = _between(stop.travel, stop.least, stop.greatest, system)
    text = f"{travel}, limits {least} to {greatest}"
    if stop.any_hole is None:
        return text
    _, low, high = _between(stop.travel, stop.any_hole.least, stop.any_hole.greatest, system)
    return f"{text}; on every hole in its limits {low} to {high}"


def _clicks(stop: Stop, click: float, system: str) -> str:
    """Write the travel in clicks of the cage, with the travel itself and what a click does."""
    ends = [size for size in (stop.least, stop.greatest) if size is not None]
    between = f" ({' to '.join(f'{size / click:.0f}' for size in ends)})" if ends else ""
    moves = stop.effect * click / stop.error
    return (
        f"{stop.travel / click:.0f}{between}, {show_both(stop.travel, system)}; one click of "
        f"{show_length(click, system)} moves the diameter at the face by {show_both(moves, system)}"
    )


def _turns(reading: Reading) -> Row:
    most = "" if reading.least == reading.greatest else " at most"
    text = f"{show_number(reading.value, 1)} turns{most}: {reading.about}"
    return Row(label=reading.instrument, text=text, source=reading.source)


def _reading(reading: Reading, system: str) -> Row:
    if reading.kind == "turns":
        return _turns(reading)
    if reading.least == reading.greatest:
        text = show_both(reading.value, system)
    else:
        ends = reading.least, reading.greatest
        value, least, greatest = _between(reading.value, *ends, system)
        text = f"{value}, good from {least} to {greatest}"
    return Row(label=reading.instrument, text=f"{text}: {reading.about}", source=reading.source)
