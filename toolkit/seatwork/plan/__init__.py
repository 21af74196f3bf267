"""The cutting plan: a note, a material and the shop's machine in, everything to do out."""

from seatwork.plan.making import make
from seatwork.plan.records import (
    Check,
    Given,
    Operation,
    Plan,
    Reading,
    SeatPlan,
    Stop,
)

__all__ = ["Check", "Given", "Operation", "Plan", "Reading", "SeatPlan", "Stop", "make"]
