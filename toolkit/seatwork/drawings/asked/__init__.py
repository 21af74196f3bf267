"""One file a question drawing, found by the name of its question type: ``draw(question)``."""

from collections.abc import Mapping
from typing import Any, Protocol


class Stated(Protocol):
    """A question as its drawing knows it: the sizes as they are said, never the answer."""

    @property
    def sizes(self) -> Mapping[str, Any]:
        """The sizes that are stated, by name."""

    @property
    def system(self) -> str:
        """Unit system, "inch" or "metric"."""

    def stated(self, name: str) -> str:
        """Write one of the sizes with its unit."""

    def text(self) -> str:
        """Return what is asked."""

    def labels(self, *same: str, **others: str) -> dict[str, str]:
        """Return labels by the names of a sketch: sizes as said, "?" for the one asked for."""
