"""What the sizes of questions are called where a learner wrote one of them back."""

WORDS = {
    "ball": "the diameter of the ball",
    "below": "the amount below the face",
    "close": "the hole for a close fit",
    "drilled": "the hole as it was drilled",
    "drill_point": "the point of the drill",
    "error": "the extra depth",
    "floor": "the floor that must stay",
    "full": "the length of full thread",
    "greatest": "the greatest break",
    "greatest_sharp": "the greatest head",
    "height": "the height of the head",
    "large": "the diameter of the large ball",
    "large_top": "the height of the large ball",
    "least": "the least break",
    "least_sharp": "the least head",
    "limit": "the limit of the shop",
    "loose": "the hole for a loose fit",
    "marks": "the number of marks",
    "mouth": "the diameter of the mouth",
    "normal": "the hole for a normal fit",
    "over": "how much wider the chamfer is",
    "pilot": "the diameter of the pilot",
    "scale": "the amount for the scale",
    "small": "the diameter of the small ball",
    "small_top": "the height of the small ball",
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
