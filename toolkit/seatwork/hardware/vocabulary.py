"""The words, abbreviations and documents that screws are named with."""

import re

WANTED = "a screw such as #10-32 flat head, 1/4-20 socket flat, M6 csk socket or 3/8-16 hex cap"

DOCUMENT = re.compile(
    r"\b(din|iso|(?:(?:asme|ansi) ?)*b|ms|bs)[ -]?(\d+(?:\.\d+)*)(?:-\d+(?!\.\d)|:\d{4})?\b"
)
ANGLE = re.compile(
    r"(?<![\w/.#-])(?<!x )(?<!by )(60|82|90|100|110|120)(?: ?°| ?deg(?:rees?)?\b|$|(?= [a-z]))"
)
SIZE_STARTS = re.compile(r"(?<![\w./#-])(?:#|(?:number|no\.?) ?(?=\d)|m ?(?=\d)|\.?\d)")
LENGTH = re.compile(
    r'^(?:x|by) ?(\d+-\d+/\d+|\d+ \d+/\d+|\d+/\d+|\d*[.,]?\d+)( ?(?:"|in\b\.?|mm\b))?'
    r"( ?(?:long|lg)\b\.?)?"
)

STRENGTH = (
    r"(?:(?:gr(?:ade)?\.?|class|cl\.?) ?(?:[258]|\d{1,2}\.\d)"
    r"|-? ?(?:4\.[68]|5\.[68]|8\.8|10\.9|12\.9)|-? ?a[24](?:-[578]0)?)(?![\w/-])"
)
GRADE = re.compile(
    rf"(?<![\w./-])(?:{STRENGTH}|(?:18-8|ss|(?:st|stainless|alloy)(?: st(?:ee)?l)?|stl|steel"
    r"|brass|zinc|(?:black )?oxide|(?:zinc |cad(?:mium)? )?plated)(?![\w/-]))"
)
"""Strength, metal or finish of a screw, which changes nothing of its head."""

INITIALS = re.compile(r"\b([a-z])\. (?=[a-z]\.)")
"""Initials set apart, ``F. H. M. S.``, which are one word."""

WORDS = {
    **dict.fromkeys(
        (
            "flat",
            "flathead",
            "fh",
            "flh",
            "fl",
            "flt",
            "csk",
            "countersunk",
            "countersink",
            "c'sunk",
        ),
        "flat",
    ),
    **dict.fromkeys(("socket", "soc", "skt", "sock"), "socket"),
    **dict.fromkeys(("hex", "hexagon", "hexagonal"), "hex"),
    **dict.fromkeys(
        ("machine", "mach", "slotted", "slot", "cross", "recess", "recessed", "phillips", "ph"),
        "machine",
    ),
    **dict.fromkeys(("cap",), "cap"),
    **dict.fromkeys(
        ("head", "heads", "hd", "headed", "screw", "screws", "scr", "scrs", "drive"), ""
    ),
    **dict.fromkeys(("bolt", "bolts"), "bolt"),
    **dict.fromkeys(("aircraft", "included", "angle"), ""),
}
SHORT = {
    **dict.fromkeys(("fhms", "fms"), "flat machine"),
    **dict.fromkeys(("fhscs", "fshcs", "sfhcs", "shfcs", "fhsc", "sfhscs"), "flat socket"),
    "fhcs": "flat cap",
    "fhs": "flat",
    **dict.fromkeys(("shcs", "sockethead", "hshcs", "sochd", "shc"), "socket cap"),
    **dict.fromkeys(("hhcs", "hexcap", "hhb", "hxhd", "hhcb", "hexhd", "hhms", "setscrew"), "hex"),
}
DOCUMENTS = {
    **dict.fromkeys(("din 7991",), "din 7991"),
    **dict.fromkeys(("din 963", "din 965", "din 964", "din 966"), "din 963"),
    **dict.fromkeys(("iso 10642",), "flat socket metric"),
    **dict.fromkeys(
        ("iso 7721", "iso 2009", "iso 2010", "iso 7046", "iso 7047"), "flat machine metric"
    ),
    **dict.fromkeys(("iso 4762", "din 912"), "socket cap metric"),
    **dict.fromkeys(("iso 4014", "iso 4017"), "hex metric"),
    **dict.fromkeys(("din 931", "din 933"), "din 931"),
    **dict.fromkeys(("ms 24693", "ms 24694"), "flat machine 100"),
    **dict.fromkeys(("b 18.2.1",), "hex inch"),
}
RIVET = re.compile(r"\brivets?\b|\bms ?20426")
RIVET_WORDS = {"rivet", "rivets", "flush", "csk", "countersunk", "flat", "head", "hd", "solid"}
"""What a countersunk rivet is named with; a rivet has no thread and no list of screws."""

WORDED = {
    "flat socket": {"inch": "flat socket inch", "metric": "flat socket metric"},
    "flat machine": {"inch": "flat machine 82", "metric": "flat machine metric"},
    "socket cap": {"inch": "socket cap inch", "metric": "socket cap metric"},
    "hex": {"inch": "hex inch", "metric": "hex metric"},
}
SAME_WORDS = {
    "din 7991": "flat socket metric",
    "din 963": "flat machine metric",
    "din 931": "hex metric",
}


READ_AS = {
    "din 912": "withdrawn DIN 912 read as ISO 4762, which replaced it",
    "iso 2010": "a raised countersunk head: its cone is that of ISO 7721",
    "iso 7047": "a raised countersunk head: its cone is that of ISO 7721",
    "din 964": "a raised countersunk head: its cone is that of DIN 963",
    "din 966": "a raised countersunk head: its cone is that of DIN 965",
}
