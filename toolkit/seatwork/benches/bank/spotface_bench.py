"""The spotface bench: a bolt on a rough pad, and the pad cleaned up under the cutter."""

from dataclasses import replace
from functools import partial
from typing import ClassVar

from seatwork.benches.bank.spotface_sums import (
    BOSS,
    PAD,
    across,
    bolt_job,
    bolt_on,
    bolts,
    brought,
    grip_for,
    ground_of,
    pad_at,
    strength,
)
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import plate_size, seat_size
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.spotface_joint import Bolt
from seatwork.drawings.parts.spotface_pad import percent
from seatwork.drawings.views.spotface_view import Facing, SpotfaceView, stress
from seatwork.errors import SeatworkError
from seatwork.hardware.screws import Screw
from seatwork.quantities import Length
from seatwork.seats.bolting import CAUTION
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_both

FIRST = "spotface 1-1/4 (frame pad)"
ALLOWANCE = "spotface.scale_allowance"


class Spotface(Bench[Facing]):
    """Show what a rough pad does to a bolt, and how a spotface cleans it up.

    Opens on a question: a bolt laid on the rough pad, about to be tightened.

    Examples
    --------
    >>> Spotface(shown=True).readouts()[4]
    ['Bending, as cast', 'at most 260 ksi (1,800 MPa)']
    """

    title = "Spotface: what a rough pad does to a bolt"
    view = SpotfaceView
    cautions: ClassVar[tuple[str, ...]] = ("before", "spotface", "taper_shank", "bolt")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Tighten it", back="Ask again"),
        Number(name="depth", label="Cutter below first touch", low=0.0, high=6.35, start=0.0,
               why="deeper is a counterbore", needs="shown"),
        Number(name="tilt", label="Draft of the frame pad", kind="fine angle", low=0, high=6,
               start=3, size=5, why="draft of castings lies there", needs="shown"),
        Choice(name="face", label="Pad", options=(PAD, BOSS), start=PAD, folded=True),
        Number(name="roughness", label="Roughness of the scale (standard deviation)", low=0.0,
               high=0.5, start=0.15, why="rougher castings are scrap", folded=True),
        Pick(name="bolt", label="Bolt", listed=bolts, known=bolt_job, start=FIRST,
             others="another screw", folded=True),
        seat_size("diameter", "Spotface", 12.0, 65.0, folded=True),
        plate_size(3.0, 25.0, label="Flange at the low side"),
        seat_size("grip", "Grip of the bolt", 15.0, 120.0, folded=True),
        Number(name="boss", label="Diameter of the round boss", low=70.0, high=300.0, start=100.0,
               why="a smaller one is narrower than the cutter and its pad", folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a bolt bring its spotface, its grip and the flange; a thick flange a longer grip."""
        if not {"bolt", "thickness"} & given.keys():
            return {}
        one = bolt_job(now["bolt"])
        brings: dict[str, float] = brought(one) if "bolt" in given else {}
        if "thickness" in given:
            grip = brings.get("grip") or now["grip"]
            brings["grip"] = grip_for(given["thickness"], grip, one.screw.thread.diameter)
        return brings

    def work_out(
        self, *, shown: bool, depth: float, tilt: float, face: str, roughness: float, bolt: str,
        diameter: float, thickness: float, grip: float, boss: float,
    ) -> Facing:  # fmt: skip
        """Face the pad as far as the cutter has come, and lay the bolt on it.

        Raises
        ------
        SeatworkError
            If the cut goes through the flange, the spotface does not hold the head, or the grip
            leaves no base under the flange.
        """
        one = bolt_job(bolt)
        shape, hole = tilt if face == PAD else boss, one.hole.diameter
        _refuse_misfits(one.screw, diameter, thickness, grip)
        ground = ground_of(face, shape, roughness, diameter, hole)
        before = bolt_on(ground.surface, one.screw, grip)
        pad = partial(pad_at, ground, diameter=diameter, hole=hole, thickness=thickness, face=face)
        grade, proof, _ = strength(one.screw)
        return Facing(
            rough=pad(0.0),
            faced=pad(depth),
            before=before,
            after=replace(before, slope=0.0, tilt=0.0, bending=0.0),
            shown=shown,
            proof=proof,
            grade=grade,
        )

    def measures(self, result: Facing) -> tuple[Measure, ...]:
        """Give the clean share, what cleans up, what is left, and the bending."""
        pad, bolt = result.faced, result.before
        grip = Measure("Grip of the bolt", bolt.grip)
        if not result.shown:
            return (grip,)
        left = Measure("Left at the low side", pad.left)
        clean = Measure("Clean", percent(pad.share), kind="word", note="of the ring")
        if self.look().projector:
            return clean, left
        under = pad.full_depth + rules().number(ALLOWANCE)
        return (
            clean,
            Measure("Clean all round at", pad.full_depth, note="below first touch"),
            Measure("And under the skin at", under, note="below first touch"),
            left,
            Measure("Bending, as cast", _bending(bolt, self.system), kind="word"),
        )

    def sources(self, result: Facing) -> tuple[str, ...]:
        """Tell where each number comes from."""
        one, system = bolt_job(self.values["bolt"]), self.system
        part, hole = one.screw, one.hole
        grade, proof, document = strength(part)
        wide = show_both(part.across_flats or across(part), system)
        where = "across flats" if part.across_flats else "across the head"
        bore = show_both(hole.diameter, system)
        return (
            fact_line(f"{part.name}, {wide} {where}", part.source, part.confirmed),
            fact_line(f"Its hole {bore}", hole.source, hole.confirmed),
            "Clean all round: highest less lowest place of the ring between hole and cutter, on "
            "the pad drawn here. The scale is drawn at random, the same for everyone; its "
            "roughness, the draft and the flange are examples.",
            rule_line(ALLOWANCE),
            "Bending: E x diameter x tilt / (2 x grip), the head following its seat fully while "
            "the far end stays straight: an upper bound, worked out for a straight, elastic bolt. "
            "A head beds in and gets less; above its yield a bolt stays bent.",
            fact_line(f"Proof load of a {grade} bolt: {stress(proof, system)}", document, "memory"),
            "1:20 (2.9°) is a structural-steel rule for beveled washers (RCSC 6.1.1, from memory: "
            "check your copy). It does not make a seat flat enough.",
            CAUTION,
        )


def _refuse_misfits(bolt: Screw, diameter: float, thickness: float, grip: float) -> None:
    """Refuse a spotface that does not hold the head, and a grip that ends in the flange."""
    wide = across(bolt)
    if diameter < wide:
        raise SeatworkError(
            Length(diameter),
            f"so narrow a spotface does not hold the head of {bolt.name}, {{wide}} across",
            "face it wider",
            wide=Length(wide),
        )
    if grip < thickness + bolt.thread.diameter:
        raise SeatworkError(
            Length(grip),
            "so short a grip leaves no base under a flange of {flange}",
            "take a longer grip or a thinner flange",
            flange=Length(thickness),
        )


def _bending(bolt: Bolt, system: str) -> str:
    if bolt.bending is None:
        return "rocks on the crown: no number"
    if bolt.bending == 0:
        return "none from a tilt"
    return f"at most {stress(bolt.bending, system)}"


spotface = Spotface
