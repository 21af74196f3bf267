"""What the sizes of questions are called where a learner wrote one of them back."""

WORDS = {
    "across_corners": "the width across corners",
    "ball": "the diameter of the ball",
    "below": "the amount below the face",
    "bore": "the diameter of the bore",
    "close": "the hole for a close fit",
    "coarse": "the tolerance for few places",
    "count": "the number of holes",
    "doubt": "the doubt of the gage",
    "drill": "the size of the drill",
    "drill_point": "the point of the drill",
    "drilled": "the hole as it was drilled",
    "error": "the extra depth",
    "fillet": "the fillet",
    "fine": "the tolerance for more places",
    "first": "the first number of the limits",
    "floor": "the floor that must stay",
    "full": "the length of full thread",
    "goes": "the leaf that goes",
    "greatest": "the greatest break",
    "greatest_below": "the greatest amount below",
    "greatest_sharp": "the greatest head",
    "height": "the height of the head",
    "large": "the diameter of the large ball",
    "large_top": "the height of the large ball",
    "lead": "the threads of the lead",
    "least": "the least break",
    "least_below": "the least amount below",
    "least_floor": "the floor by MIN",
    "least_sharp": "the least head",
    "leg": "the leg",
    "limit": "the limit of the shop",
    "loose": "the hole for a loose fit",
    "major": "the major diameter",
    "marks": "the number of marks",
    "most": "the depth by MAX",
    "mouth": "the diameter of the mouth",
    "normal": "the hole for a normal fit",
    "over": "how much wider the chamfer is",
    "parts_made": "the number of parts",
    "pilot": "the diameter of the pilot",
    "pin": "the diameter of the pin",
    "point_angle": "the angle of the point",
    "proud": "how far the head stands proud",
    "row_above": "the row above",
    "row_below": "the row below",
    "row_size": "the size of the drill",
    "scale": "the amount for the scale",
    "second": "the second number of the limits",
    "small": "the diameter of the small ball",
    "small_top": "the height of the small ball",
    "stops": "the leaf that stops",
    "thickness": "the thickness of the plate",
    "thread": "the size of the thread",
    "threaded": "the depth of the thread",
    "threads": "the threads to an inch",
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
