"""The pages of the course, and the names that they had before."""

import tomllib
from functools import cache

from seatwork.shop.folder import package_text

CONTENTS = "contents.toml"


@cache
def renamed() -> dict[str, str]:
    """Tell which page each former file name now is, both without ending.

    Examples
    --------
    >>> renamed().get("02_angle_standards", "still its name")
    'still its name'
    """
    pages = tomllib.loads(package_text(CONTENTS))["page"]
    return {former: page["file"] for page in pages for former in page.get("was", ())}


def present(name: str) -> str:
    """Return the name that a page has now, for one it has or had.

    Examples
    --------
    >>> present("02_angle_standards")
    '02_angle_standards'
    """
    return renamed().get(name, name)
