from seatwork.units.reading import angle as angle
from seatwork.units.reading import cutting_speed as cutting_speed
from seatwork.units.reading import feed as feed
from seatwork.units.reading import length as length
from seatwork.units.reading import number as number
from seatwork.units.showing import explain as explain
from seatwork.units.showing import rounded as rounded
from seatwork.units.showing import rounded_length as rounded_length
from seatwork.units.showing import show_angle as show_angle
from seatwork.units.showing import show_both as show_both
from seatwork.units.showing import show_feed as show_feed
from seatwork.units.showing import show_length as show_length
from seatwork.units.showing import show_note as show_note
from seatwork.units.showing import show_number as show_number
from seatwork.units.showing import show_speed as show_speed
from seatwork.units.showing import show_spindle as show_spindle

NAMES: dict[str, str]
__all__: list[str]
