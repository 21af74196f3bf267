from seatwork.cards.job import job_card as job_card
from seatwork.cards.pages import Pages as Pages
from seatwork.cards.part import part_card as part_card
from seatwork.cards.row_table import told as told

NAMES: dict[str, str]
__all__: list[str]
