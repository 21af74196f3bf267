"""What the sizes of questions are called where a learner wrote one of them back."""

WORDS = {
    "across_corners": "the width across corners",
    "ball": "the diameter of the ball",
    "below": "the amount below the face",
    "close": "the hole for a close fit",
    "count": "the number of holes",
    "doubt": "the doubt of the gage",
    "drill_point": "the point of the drill",
    "drilled": "the hole as it was drilled",
    "error": "the extra depth",
    "floor": "the floor that must stay",
    "full": "the length of full thread",
    "goes": "the leaf that goes",
    "greatest": "the greatest break",
    "greatest_sharp": "the greatest head",
    "height": "the height of the head",
    "large": "the diameter of the large ball",
    "large_top": "the height of the large ball",
    "least": "the least break",
    "least_sharp": "the least head",
    "limit": "the limit of the shop",
    "loose": "the hole for a loose fit",
    "major": "the major diameter",
    "marks": "the number of marks",
    "mouth": "the diameter of the mouth",
    "normal": "the hole for a normal fit",
    "over": "how much wider the chamfer is",
    "pilot": "the diameter of the pilot",
    "pin": "the diameter of the pin",
    "proud": "how far the head stands proud",
    "scale": "the amount for the scale",
    "small": "the diameter of the small ball",
    "small_top": "the height of the small ball",
    "stops": "the leaf that stops",
    "tolerance_of_diameter": "the tolerance of the diameter",
    "wanted": "the speed that was worked out",
    "washer": "the thickness of the washer",
}
"""By the name of a size, where its name alone would not do."""


def size_words(name: str) -> str:
    """Return what a size is called.

    Examples
    --------
    >>> size_words("hole_diameter"), size_words("below")
    ('the hole diameter', 'the amount below the face')
    """
    return WORDS.get(name, f"the {name.replace('_', ' ')}")
