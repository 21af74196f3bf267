"""Everything a shop has, in one hand: its lists and its house rules."""

from dataclasses import dataclass
from pathlib import Path
from typing import Self

from seatwork.rows import Blocks, Row, Shown
from seatwork.shop.house.house_rules import HouseRules, rules
from seatwork.shop.lists import cutters as drawer
from seatwork.shop.lists import machines as floor
from seatwork.shop.lists import materials as rack
from seatwork.shop.lists.reading import named


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Shop(Shown):
    """The shop's lists and rules.

    Parameters
    ----------
    cutters : tuple of SeatCutter
        What lies in the drawer.
    machines : tuple of ShopMachine
        What stands on the floor.
    materials : tuple of Material
        What is cut.
    rules : HouseRules
        The house rules in force.
    """

    cutters: tuple[drawer.SeatCutter, ...]
    machines: tuple[floor.ShopMachine, ...]
    materials: tuple[rack.Material, ...]
    rules: HouseRules

    def _line(self) -> str:
        counts = f"{len(self.cutters)} cutters, {len(self.machines)} machines"
        return f"{counts}, {len(self.materials)} materials"

    def _blocks(self) -> Blocks:
        yield "Cutters", tuple(Row(label=one.name, text=one.kind) for one in self.cutters)
        yield "Machines", tuple(Row(label=one.name, text=one.kind) for one in self.machines)
        yield (
            "Materials",
            tuple(Row(label=one.name, text=one.cutting_oil) for one in self.materials),
        )

    @classmethod
    def at(cls, folder: str | Path | None = None) -> Self:
        """Read the shop of a workbook folder.

        Parameters
        ----------
        folder : str or Path, optional
            Workbook folder; the one found from the working folder if not given,
            and the package's own shop where there is none.

        Raises
        ------
        SeatworkError
            If a list or a rule cannot be read; with file, row and column.
        """
        return cls(
            cutters=drawer.cutters(folder),
            machines=floor.machines(folder),
            materials=rack.materials(folder),
            rules=rules(folder),
        )

    def machine(self, name: str) -> floor.ShopMachine:
        """Find the machine of that `name`, in any case.

        Raises
        ------
        SeatworkError
            If the list has none; the names it has are told.
        """
        return named(self.machines, name, floor.FILE, lambda one: one.name)

    def material(self, name: str) -> rack.Material:
        """Find the material of that `name`, in any case.

        Raises
        ------
        SeatworkError
            If the list has none; the names it has are told.
        """
        return named(self.materials, name, rack.FILE, lambda one: one.name)

    def cutter(self, name: str) -> drawer.SeatCutter:
        """Find the cutter of that `name`, in any case.

        Raises
        ------
        SeatworkError
            If the list has none; the names it has are told.
        """
        return named(self.cutters, name, drawer.FILE, lambda one: one.name)
