"""The still that stands in the file: the demonstration, whatever part is on the page."""

from seatwork.benches.build.listed import shop
from seatwork.benches.part.desk import demonstration
from seatwork.benches.part.found import Finder
from seatwork.benches.part.picture import picture_of
from seatwork.benches.part.state import PartState
from seatwork.drawings.parts.hole_section import HoleSection
from seatwork.drawings.scene import Drawing, Look
from seatwork.errors import SeatworkError


def still(palette: str | None = None) -> Drawing:
    """Return the drawing of the demonstration, by the shop's lists and rules as they stand.

    Raises
    ------
    SeatworkError
        If they leave nothing of it to draw.
    """
    house = shop()
    system = house.rules.word("display.system")
    state = PartState(name="my part", seats=(demonstration(),), rules={})
    found = Finder(house).find(state).seats[0]
    drawn = picture_of(found, system)
    if drawn is None:
        raise found.trouble or SeatworkError(found.seat.note, "nothing is drawn", "check the shop")
    return HoleSection(drawn, Look(system=system, palette=palette or "light")).draw()
