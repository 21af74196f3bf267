"""Printed matter: worksheets on paper, feedback, cards for the machine, sheets for the wall."""

from seatwork.cards.job import job_card
from seatwork.cards.pages import Pages
from seatwork.cards.part import part_card
from seatwork.cards.told import told

__all__ = ["Pages", "job_card", "part_card", "told"]
