"""Pictures of every bench, to be looked at: three palettes and the projector's size.

    python tests/bench_pictures.py OUTDIR [NAME...]

Each bench is drawn as it opens and in the states listed here, in inch and metric.
"""

import sys
from pathlib import Path

from seatwork import benches

LOOKS = {
    "light": {"palette": "light"},
    "dark": {"palette": "dark", "system": "metric"},
    "print": {"palette": "print"},
    "projector": {"palette": "light", "projector": True},
}
STATES: dict[str, dict[str, dict]] = {
    "which_seat": {
        "opened": {"opened": True},
        "flat": {"screw": "#10-24 flat head machine screw", "opened": True},
    },
    "gaging": {
        "balls": {"shown": True},
        "screw": {"shown": True, "way": "the screw and an indicator"},
        "ball": {"shown": True, "way": "one ball"},
        "head": {"shown": True, "way": "head gage, on the screw itself"},
        "crank": {"shown": True, "job": "M6 socket flat 90° (hopper plate)"},
    },
    "on_the_hole": {
        "beside": {"shown": True},
        "pilot": {"shown": True, "guide": "kept by a pilot"},
        "leaning": {"shown": True, "off_center": 0.5, "out_of_square": 3.0},
        "sheet": {"shown": True, "thickness": 1.5},
    },
    "slips": {
        "opened": {"opened": True},
        "travel": {"opened": True, "pick": "quill travel from the nose"},
        "unknown": {"opened": True, "answer": "0.300 in"},
    },
    "note": {
        "opened": {"opened": True},
        "torn": {"pick": "Crank, torn print"},
        "asks": {"pick": "Guard, no angle", "opened": True},
    },
    "angles": {
        "cut_open": {"cut_open": True},
        "measured": {"measure": True, "cutter_angle": 100},
    },
    "chatter": {
        "cones": {"shown": True},
        "map": {"shown": True, "on_map": True},
        "time": {"shown": True, "in_time": True},
        "cures": {"shown": True, "cures": True},
    },
    "depth": {
        "cut": {"cut": True},
        "edge": {"cut": True, "touch": "lips on the hole edge", "stop_error": 0.1},
        "sheet": {
            "cut": True,
            "screw": "#10 flat head 100° (guard)",
            "stop_error": 0.2,
            "stop_way": "too shallow",
        },
    },
    "edges": {
        "convention": {"note": "CHAMFER, inch print", "angle": 82},
        "tilted": {"all_round": True, "tilt": 8},
        "shaft": {"all_round": True, "place": "crank shaft, oil hole", "hole": "1/4"},
        "bore": {"all_round": True, "place": "crank hub, from inside the bore", "hole": "1/4"},
        "flat": {"all_round": True, "place": "frame pad, milled flat"},
        "broken": {"all_round": True, "tilt": 20, "note": "BREAK EDGES, metric print"},
    },
    "speeds": {
        "too_fast": {"job": "spotface 1-1/4 (frame pad, drill press)"},
        "capped": {"job": "#10 flat head 82° (hopper plate)", "constant": "4"},
        "range": {"operation": "drill", "machine": "hand drill", "diameter": 5},
    },
    "cutters": {
        "opened": {"opened": True},
        "picked": {"pick": "B"},
        "hopper": {"job": "#10 flat head 82° (hopper plate)", "pick": "E"},
        "pads": {"job": "spotface 1-1/4 (frame pad)"},
        "too_fast": {"job": "spotface 1-1/4 (frame pad, drill press)", "pick": "E"},
    },
    "spotface": {
        "tight": {"shown": True},
        "partly": {"shown": True, "depth": "0.040 in"},
        "clean": {"shown": True, "depth": "0.100 in"},
        "boss": {
            "shown": True,
            "depth": "0.050 in",
            "face": "round boss (scale)",
            "grip": "3 in",
        },
    },
    "counterbore": {
        "larger": {"way": "larger counterbore"},
        "key": {"way": "socket head screw", "screw": "M6 hex (guard bracket)"},
        "boss": {"way": "raised boss"},
        "shallow": {"depth": "0.100 in", "washer": True},
    },
    "triangle": {
        "across": {"step": 3},
        "down": {"step": 5},
        "slips": {"step": 5, "whole_difference": True, "whole_angle": True, "to_the_point": True},
        "pin": {"step": 5, "holds": "a pin"},
        "ball": {"step": 5, "holds": "a ball"},
        "head": {"step": 5, "holds": "a head"},
    },
    "flush": {
        "small_seat": {"diameter": 12.5, "heads": "as the standard allows"},
        "sheet": {"screw": "#10 flat head 100° (guard)"},
        "wide_seat": {"diameter": 14.5, "tolerance": 0.3},
    },
}
"""By bench, states beside the one it opens with."""


def pictures(folder: Path, names: list[str]) -> None:
    """Draw benches into `folder`, one PNG for each state and look."""
    folder.mkdir(parents=True, exist_ok=True)
    for name in names:
        states = {"opens": {}} | STATES.get(name, {})
        for state, values in states.items():
            for look, settings in LOOKS.items():
                bench = getattr(benches, name)(**values, **settings)
                path = folder / f"{name}-{state}-{look}.png"
                path.write_bytes(bench.drawing.png())
                sys.stdout.write(f"{path}\n")


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    pictures(Path(sys.argv[1]), sys.argv[2:] or dir(benches))
