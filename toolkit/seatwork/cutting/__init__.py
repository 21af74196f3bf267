"""Cutting: speeds, feeds, forces and chatter, from floats to small frozen results."""

from seatwork.cutting.drilling import DrillLoad, handbook_drilling, maker_drilling
from seatwork.cutting.feeds import feed_per_tooth, feed_per_turn, feed_rate, time_in_cut
from seatwork.cutting.forces import power, removal_rate, thrust, torque
from seatwork.cutting.metals import Coefficients, shear_plane, specific_force
from seatwork.cutting.shortcuts import SHORTCUTS, SPREAD, Shortcut, SpeedRule, operation_speed
from seatwork.cutting.speeds import (
    SpeedRange,
    Step,
    cutting_speed,
    geared_steps,
    mean_diameter,
    pick_step,
    pulley_steps,
    spindle_speed,
)
from seatwork.cutting.stalling import Stall, stall

__all__ = [
    "SHORTCUTS",
    "SPREAD",
    "Coefficients",
    "DrillLoad",
    "Shortcut",
    "SpeedRange",
    "SpeedRule",
    "Stall",
    "Step",
    "cutting_speed",
    "feed_per_tooth",
    "feed_per_turn",
    "feed_rate",
    "geared_steps",
    "handbook_drilling",
    "maker_drilling",
    "mean_diameter",
    "operation_speed",
    "pick_step",
    "power",
    "pulley_steps",
    "removal_rate",
    "shear_plane",
    "specific_force",
    "spindle_speed",
    "stall",
    "thrust",
    "time_in_cut",
    "torque",
]
