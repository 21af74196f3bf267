"""The spotface bench: a bolt on a rough pad, and the pad cleaned up under the cutter."""

from dataclasses import replace
from typing import Any, ClassVar

from seatwork.benches.bench import Bench
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import fact_line, rule_line
from seatwork.benches.spotface_pads import (
    BOLT,
    BOSS,
    PAD,
    bolt_hole,
    bolt_on,
    ground_of,
    pad_at,
)
from seatwork.drawings.scene import Look, Scene
from seatwork.drawings.spotface_joint import Bolt
from seatwork.drawings.spotface_pad import percent
from seatwork.drawings.spotface_view import Facing, SpotfaceView, stress
from seatwork.hardware import screw
from seatwork.seats.bolting import CAUTION
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_both

PROOF = 586.0
"""Proof load of a grade 5 bolt [MPa]: 85 ksi, SAE J429, from memory."""

ALLOWANCE = "spotface.scale_allowance"


class SpotfaceBench(Bench[Facing]):
    """The bench itself; begin with ``spotface``."""

    name = "spotface"
    title = "Spotface: what a rough pad does to a bolt"
    cautions: ClassVar[tuple[str, ...]] = ("before", "spotface", "taper_shank", "bolt")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Tighten it", back="Ask again"),
        Number(
            name="depth",
            label="Cutter below first touch",
            low=0.0,
            high=6.35,
            start=0.0,
            why="deeper is a counterbore",
            needs="shown",
        ),
        Number(
            name="tilt",
            label="Draft of the frame pad",
            kind="fine angle",
            low=0,
            high=6,
            start=3,
            size=5,
            why="draft of castings lies there",
            needs="shown",
        ),
        Choice(name="face", label="Pad", options=(PAD, BOSS), start=PAD, folded=True),
        Number(
            name="roughness",
            label="Roughness of the scale (standard deviation)",
            low=0.0,
            high=0.5,
            start=0.15,
            why="rougher castings are scrap",
            folded=True,
        ),
        Number(
            name="diameter",
            label="Spotface",
            low=22.225,
            high=50.8,
            start=31.75,
            why="less does not hold the head of this bolt",
            folded=True,
        ),
        Number(
            name="thickness",
            label="Flange at the low side",
            low=3.0,
            high=18.0,
            start=12.7,
            why="a thicker one leaves the bolt no base",
            folded=True,
        ),
        Number(
            name="grip",
            label="Grip of the bolt",
            low=31.75,
            high=101.6,
            start=38.1,
            why="that is from flange to the first thread of these bolts",
            folded=True,
        ),
        Number(
            name="boss",
            label="Diameter of the round boss",
            low=70.0,
            high=300.0,
            start=100.0,
            why="a smaller one is narrower than the cutter and its pad",
            folded=True,
        ),
    )

    def work_out(self, **values: Any) -> Facing:
        """Face the pad as far as the cutter has come, and lay the bolt on it.

        Raises
        ------
        SeatworkError
            If the cut goes through the flange.
        """
        ground = ground_of(
            values["face"],
            values["tilt"] if values["face"] == PAD else values["boss"],
            values["roughness"],
            values["diameter"],
        )
        before = bolt_on(ground.surface, values["grip"])
        return Facing(
            rough=pad_at(ground, values, 0.0),
            faced=pad_at(ground, values, values["depth"]),
            before=before,
            after=replace(before, slope=0.0, tilt=0.0, bending=0.0),
            shown=values["shown"],
            proof=PROOF,
        )

    def scene(self, result: Facing, look: Look) -> Scene[Facing]:
        """Show the bolt on the rough pad, the pad from above, and the pad under the cutter."""
        return SpotfaceView(result, look)

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
        part, hole, system = screw(BOLT), bolt_hole(), self.system
        across = show_both(part.across_flats or 0.0, system)
        bore = show_both(hole.diameter, system)
        return (
            fact_line(f"{BOLT}, {across} across flats", part.source, part.confirmed),
            fact_line(f"Its hole {bore}", hole.source, hole.confirmed),
            "Clean all round: highest less lowest place of the ring between hole and cutter, on "
            "the pad drawn here. The scale is drawn at random, the same for everyone; its "
            "roughness, the draft and the flange are examples.",
            rule_line(ALLOWANCE),
            "Bending: E x diameter x tilt / (2 x grip), the head following its seat fully while "
            "the far end stays straight: an upper bound, worked out for a straight, elastic bolt. "
            "A head beds in and gets less; above its yield a bolt stays bent.",
            fact_line(
                f"Proof load of a grade 5 bolt: {stress(PROOF, system)}", "SAE J429", "memory"
            ),
            "1:20 (2.9°) is a structural-steel rule for beveled washers (RCSC 6.1.1, from memory: "
            "check your copy). It does not make a seat flat enough.",
            CAUTION,
        )


def spotface(
    *,
    shown: bool = False,
    depth: float | str = 0.0,
    tilt: float | str = 3,
    face: str = PAD,
    roughness: float | str = 0.15,
    diameter: float | str = 31.75,
    thickness: float | str = 12.7,
    grip: float | str = 38.1,
    boss: float | str = 100.0,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> SpotfaceBench:
    """Show what a rough pad does to a bolt, and how a spotface cleans it up.

    Opens on a question: a bolt laid on the rough pad, about to be tightened.

    Parameters
    ----------
    shown : bool
        Begin with the bolt tightened.
    depth : float or str
        Cutter below its first touch [mm], or shop text.
    tilt : float or str
        Draft of the frame pad [deg], 0 to 6.
    face : str
        The frame pad, or a round boss.
    roughness : float or str
        Standard deviation of the scale [mm], or shop text.
    diameter, thickness, grip, boss : float or str
        Spotface, flange at the low side, grip of the bolt, round boss [mm], or shop text.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    SpotfaceBench
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or the cut goes through the flange.

    Examples
    --------
    >>> spotface(shown=True).readouts()[4]
    ['Bending, as cast', 'at most 260 ksi (1,800 MPa)']
    """
    return SpotfaceBench(
        system=system,
        palette=palette,
        projector=projector,
        shown=shown,
        depth=depth,
        tilt=tilt,
        face=face,
        roughness=roughness,
        diameter=diameter,
        thickness=thickness,
        grip=grip,
        boss=boss,
    )


def _bending(bolt: Bolt, system: str) -> str:
    if bolt.bending is None:
        return "rocks on the crown: no number"
    if bolt.bending == 0:
        return "none from a tilt"
    return f"at most {stress(bolt.bending, system)}"
