"""Measured parts held against their plan."""

from collections.abc import Mapping, Sequence
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.inspection.causes import causes
from seatwork.inspection.changes import changes
from seatwork.inspection.cuts import cuts_of, feature_named
from seatwork.inspection.fights import fight
from seatwork.inspection.findings import Inspection, PartVerdict
from seatwork.inspection.grounds import missing, not_judged, verdict_of
from seatwork.inspection.judging import judge
from seatwork.inspection.measured import Measured
from seatwork.inspection.mixed_units import mixed_unit
from seatwork.inspection.readings import read_readings
from seatwork.inspection.records import ACCEPT, Judged
from seatwork.plan import Plan, SeatPlan
from seatwork.plan.sentences import Show, shower
from seatwork.shop import HouseRules
from seatwork.shop.shop import Shop
from seatwork.units import explain


def inspect(
    measured: Sequence[Measured], plans: Mapping[str, Plan], *, shop: Shop | None = None
) -> Inspection:
    """Judge measured parts against the plans of their features.

    Parameters
    ----------
    measured : sequence of Measured
        The parts, in the order they were cut.
    plans : mapping of str to Plan
        The plan of each feature by its name.
    shop : Shop, optional
        The shop, for its house rules.

    Returns
    -------
    Inspection
        Verdict part by part; a part whose feature no plan has is told among the faults.

    Examples
    --------
    >>> from seatwork import notes, plan
    >>> made = plan.make(notes.read("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"),
    ...                  material="6061 aluminum", machine="bench drill press")
    >>> part = Measured(part="L07-1", diameter=10.1, stand=-0.2, angle=82.0, tried=True,
    ...                 instruments={"angle": "optical"})
    >>> inspect([part], {"plate": made}).parts[0].verdict
    'accept'
    """
    rules, cuts = (shop or Shop.at()).rules, cuts_of(plans)
    parts, faults = [], []
    for one in measured:
        try:
            cut = cuts[feature_named(one.feature, tuple(cuts))]
        except SeatworkError as error:
            faults.append(f"{one.place or one.part}, column feature: {error}")
            continue
        try:
            part = judge_part(one, cut.seat, system=cut.system, rules=rules)
        except SeatworkError as error:
            faults.append(f"{one.place or one.part}, column ball: {explain(error, cut.system)}")
            continue
        if doubt := mixed_unit(part):
            faults.append(f"{one.place or one.part}, {doubt}")
        else:
            parts.append(part)
    return Inspection(parts=tuple(parts), faults=tuple(faults))


def inspect_parts(
    plan: Plan, measured: Sequence[Measured] | str | Path, *, shop: Shop | None = None
) -> Inspection:
    """Judge measured parts of one feature against its plan; `Plan.inspect` is this.

    Parameters
    ----------
    plan : Plan
        The plan of the feature.
    measured : sequence of Measured, str or Path
        The parts, in the order they were cut, or the file their values stand in.
    shop : Shop, optional
        The shop, for its house rules.

    Raises
    ------
    SeatworkError
        If the file cannot be read at all.
    """
    plans = {"": plan}
    if isinstance(measured, str | Path):
        return inspect_file(measured, plans, shop=shop)
    return inspect(measured, plans, shop=shop)


def inspect_file(
    path: str | Path, plans: Mapping[str, Plan], *, shop: Shop | None = None
) -> Inspection:
    """Read a sheet of readings and judge it.

    Parameters
    ----------
    path : str or Path
        A CSV, as `read_readings` reads it.
    plans : mapping of str to Plan
        The plan of each feature by its name.
    shop : Shop, optional
        The shop, for its house rules.

    Returns
    -------
    Inspection
        Verdict part by part; rows that cannot be read or judged are told among the faults.

    Raises
    ------
    SeatworkError
        If the file cannot be read at all.
    """
    readings = read_readings(Path(path), features=tuple(cuts_of(plans)))
    found = inspect(readings.measured, plans, shop=shop)
    return Inspection(
        parts=found.parts, faults=(*readings.faults, *found.faults), blank=readings.blank
    )


def judge_part(
    measured: Measured, seat: SeatPlan, *, system: str, rules: HouseRules
) -> PartVerdict:
    """Judge one part: its values, the verdict, why it is off and what to change.

    Raises
    ------
    SeatworkError
        If a ball was used that does not touch the cone.
    """
    judged = judge(measured, seat, system=system, rules=rules)
    show = shower(system)
    fighting = fight(measured, seat, show)
    verdict = verdict_of(measured, seat, judged, fighting=bool(fighting))
    reasons = [
        *filter(None, [fighting]),
        *causes(measured, seat, judged),
        *not_judged(measured, seat),
    ]
    if verdict != ACCEPT:
        reasons += missing(seat, judged)
    settled = verdict == ACCEPT
    return PartVerdict(
        measured=measured,
        seat=seat,
        judged=judged,
        verdict=verdict,
        system=system,
        reasons=tuple(reasons),
        changes=() if settled else _changes(measured, seat, judged, show, fighting),
    )


def _changes(
    measured: Measured, seat: SeatPlan, judged: tuple[Judged, ...], show: Show, fighting: str
) -> tuple[str, ...]:
    if fighting:
        return ("Measure again before the stop or the cutter is touched.",)
    return tuple(changes(measured, seat, judged, show))
