"""Cutting: speeds, feeds, forces and chatter, from floats to small frozen results."""

from seatwork.doors import doors

NAMES = {
    "chatter.cone": "ConeSurface ring surface_left",
    "chatter.lips": "depth_of_cut land_damping land_over_wave lip_in_cut",
    "chatter.limits": ("Band CriticalSpeed Limit chatter_band critical_speed width_limit"),
    "chatter.mapping": "Map stability",
    "chatter.marks": "frequency_from_marks marks_per_turn",
    "chatter.parts": "Cut Cutter Machine",
    "chatter.sound": "Sound sound",
    "chatter.tracing": "Trace trace",
    "feeds": "feed_per_tooth feed_rate time_in_cut",
    "forces": "power thrust torque",
    "metals": "Coefficients shear_plane specific_force",
    "shortcuts": "SHORTCUTS Shortcut SpeedRule operation_speed",
    "speeds": "cutting_speed mean_diameter spindle_speed",
    "stalling": "Stall stall",
    "steps": "SpeedRange Step geared_steps pick_step pulley_steps",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
