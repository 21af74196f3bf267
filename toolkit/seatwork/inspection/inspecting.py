"""Measured parts held against their plan."""

from collections.abc import Sequence
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.inspection.causes import causes
from seatwork.inspection.changes import changes
from seatwork.inspection.judging import judge, worst
from seatwork.inspection.measured import Measured
from seatwork.inspection.records import ACCEPT, UNKNOWN, Inspection, PartVerdict
from seatwork.inspection.sheets import read_sheet
from seatwork.plan import Plan, SeatPlan
from seatwork.plan.wording import shower
from seatwork.seats import Countersink
from seatwork.shop import HouseRules
from seatwork.shop.shop import Shop

NO_CUT = ("hole", "edge")


def inspect(
    measured: Sequence[Measured], plans: dict[str, Plan], *, shop: Shop | None = None
) -> Inspection:
    """Judge measured parts against the plans of their features.

    Parameters
    ----------
    measured : sequence of Measured
        The parts, in the order they were cut.
    plans : dict of str to Plan
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
    >>> part = Measured(part="L07-1", diameter=10.1, stand=-0.2, angle=82.0, tried=True)
    >>> inspect([part], {"plate": made}).parts[0].verdict
    'accept'
    """
    rules = (shop or Shop.at()).rules
    parts, faults = [], []
    for one in measured:
        try:
            plan, seat = _belongs(one, plans)
        except SeatworkError as error:
            faults.append(f"{one.part}: {error}")
            continue
        parts.append(judge_part(one, seat, system=plan.callout.system, rules=rules))
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
    path: str | Path, plans: dict[str, Plan], *, shop: Shop | None = None
) -> Inspection:
    """Read a sheet of measured values and judge it.

    Parameters
    ----------
    path : str or Path
        A CSV, as `read_sheet` reads it; a length without a unit is in the unit of its print.
    plans : dict of str to Plan
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
    systems = {name: one.callout.system for name, one in plans.items()}
    sheet = read_sheet(Path(path), systems=systems)
    found = inspect(sheet.measured, plans, shop=shop)
    return Inspection(parts=found.parts, faults=(*sheet.faults, *found.faults))


def judge_part(
    measured: Measured, seat: SeatPlan, *, system: str, rules: HouseRules
) -> PartVerdict:
    """Judge one part: its values, the verdict, why it is off and what to change."""
    judged = judge(measured, seat, system=system, rules=rules)
    verdict = worst(judged)
    if verdict == ACCEPT and _angle_is_open(measured, seat):
        verdict = UNKNOWN
    if verdict == ACCEPT and measured.burr:
        verdict = UNKNOWN
    reasons = list(causes(measured, seat, judged))
    if not judged:
        reasons.append("Nothing was measured that the plan gives a limit for.")
    settled = verdict == ACCEPT
    return PartVerdict(
        measured=measured,
        seat=seat,
        judged=judged,
        verdict=verdict,
        system=system,
        reasons=tuple(reasons),
        changes=() if settled else tuple(changes(measured, seat, judged, shower(system))),
    )


def _angle_is_open(measured: Measured, seat: SeatPlan) -> bool:
    """Tell whether a seat for a flat head was judged without its angle."""
    cone = isinstance(seat.shape, Countersink) and seat.screw is not None
    return cone and measured.angle is None


def _belongs(measured: Measured, plans: dict[str, Plan]) -> tuple[Plan, SeatPlan]:
    """Find the plan and the seat that a part's values belong to."""
    name = measured.feature
    if not name and len(plans) == 1:
        name = next(iter(plans))
    plan = plans.get(name)
    if plan is None:
        known = ", ".join(plans) or "none"
        raise SeatworkError(
            f"column feature: {name or 'empty'}",
            "no plan has that feature",
            f"write one of {known}".replace("{", "(").replace("}", ")"),
        )
    cut = [seat for seat in plan.seats if seat.kind not in NO_CUT]
    if not cut:
        raise SeatworkError(name or "the feature", "it has no seat to measure", "leave it out")
    return plan, cut[0]
