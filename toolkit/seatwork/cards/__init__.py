"""Printed matter: worksheets on paper, feedback, cards for the machine."""

from seatwork.cards.job import job_card

__all__ = ["job_card"]
