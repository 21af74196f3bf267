"""Sentences whose values are taken out, so that one template says each of them in any language.

A sentence is looked up with its numbers, units and names of drills taken out, ``A plate is {0}
thick.``, and each value is copied as it stands. A print note, which two spaces set apart, is never
touched. A sentence without a template stays as it is.
"""

import re
from collections.abc import Callable, Iterator

UNIT = (
    "mm/rev|mm/min|mm²|mm|µm|in/rev|in/min|in²|in|ipr|ipm|rev/min|rpm|sfm|ft/min|m/min|kHz|Hz|"
    "N·m|lbf·in|lbf·ft|lbf|MPa|kW|hp|deg|N|W|s|%"
)
NUMBER = (
    r"[(√]*[⌀⌵⌴↧⌲□#±−-]*[A-Z]{0,2}\.?\d(?:[\w.,/°×–²-]*[\w°²])?" + rf"(?:\s(?:{UNIT})(?!\w))?[²)]*"
)
SUM = rf"{NUMBER}(?:(?:\s[÷×−+=–]\s|\s?[÷×]\s?){NUMBER})*"
STEPS = r"\d+(?:, \d+){2,}"
CHART = rf"[A-Z]: {NUMBER}(?:; [A-Z]: {NUMBER})*"
LETTER = (
    r"(?<=The )[A-Z](?= drill\b)|[A-Z](?= is (?:the |\.?\d))|(?<=letter from )[a-j]\b|"
    r"(?<=letter from [a-j] to )[a-j]\b|"
    r"[A-E](?= (?:across the hole|straight down|from edge|along one slope))"
)
ANSWERED = r"(?<=answered it )\(.+\)"
QUOTED = r"""'[^']+'(?!\w)|"[^"]*'[^"]*"(?!\w)"""
VALUE = re.compile(rf"(?<![\w.])(?:{ANSWERED}|{QUOTED}|{CHART}|{STEPS}|{SUM}|{LETTER})")
"""What is copied: a number with its sign and unit, a sum of such, steps of a machine, rows of a
drill chart, the letter of a drill, of an option or of a size on a drawing, what was typed."""

ENDS = re.compile(r"(?<=[.?!])(\s+)(?=[^a-z\s]|[a-j]\) )")
OPTION = re.compile(r"\(?[a-j]\) ")
JOINTS = (re.compile(r"(; )(?=[a-j]\) )"), re.compile(r"(; )"), re.compile(r"(: )"))
"""Where a sentence without a template is parted: between options, at semicolons, at colons."""

PLACE = re.compile(r"\{(\d+)\}")
STOPS = ".?!"

Lookup = Callable[[str], str]
"""Gives the text of a template in another language; empty where there is none."""


def template(sentence: str) -> tuple[str, tuple[str, ...]]:
    """Return a sentence with its values taken out, and the values.

    Examples
    --------
    >>> template("A plate is 0.750 in thick.")
    ('A plate is {0} thick.', ('0.750 in',))
    >>> template("Depth: 0.1190 in ÷ 0.8693 = 0.137 in.")
    ('Depth: {0}.', ('0.1190 in ÷ 0.8693 = 0.137 in',))
    """
    values: list[str] = []

    def taken(found: re.Match[str]) -> str:
        values.append(found[0])
        return f"{{{len(values) - 1}}}"

    return VALUE.sub(taken, sentence), tuple(values)


def pieces(text: str, lookup: Lookup, missing: list[str]) -> Iterator[str]:
    """Yield a text sentence by sentence in another language, with what stands between.

    What has no template comes as it is, and `missing` gets it.
    """
    for number, line in enumerate(text.split("\n")):
        told, gap, note = line.partition("  ")
        yield "\n" if number else ""
        whole = _template(told, lookup)
        for piece in ENDS.split(told) if whole is None else ():
            said = _sentence(piece, lookup)
            if said is None:
                missing.append(piece)
            yield piece if said is None else said
        yield (whole or "") + gap + note


def _sentence(sentence: str, lookup: Lookup) -> str | None:
    """Say one sentence: whole, else by its parts; None if a part of it has no template."""
    if (whole := _template(sentence, lookup)) is not None:
        return whole
    body = sentence.rstrip(STOPS)
    stop = sentence[len(body) :]
    if stop == "." and (whole := _template(body, lookup)) is not None:
        return whole + stop
    for joint in JOINTS:
        parts = joint.split(body)
        if len(parts) > 1:
            said = [part if n % 2 else _sentence(part, lookup) for n, part in enumerate(parts)]
            if None not in said:
                return "".join(map(str, said)) + stop
    if letter := OPTION.match(sentence):
        option = _sentence(sentence[letter.end() :], lookup)
        return None if option is None else letter[0] + option
    return None


def _template(sentence: str, lookup: Lookup) -> str | None:
    """Say a sentence by its template; None if there is none."""
    asked, values = template(sentence)
    if asked.upper() == asked:
        return sentence  # values, signs and words of a print
    said = lookup(asked)
    return PLACE.sub(lambda place: values[int(place[1])], said) if said else None
