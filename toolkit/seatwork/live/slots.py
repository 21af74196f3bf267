"""Which view stands below which cell: running a cell again closes what stood there before."""

from typing import Any, Protocol


class Closable(Protocol):
    """Anything that can be closed for good."""

    def close(self) -> None:
        """Let go of the page and of the bench."""


_OPEN: dict[str, tuple[str, list[Closable]]] = {}


def place(view: Closable) -> None:
    """Put a view below the running cell; views of the cell's earlier run are closed.

    Parameters
    ----------
    view : Closable
        The view just made.
    """
    cell, run = _running()
    former, views = _OPEN.get(cell, (run, []))
    if former != run:
        for old in views:
            old.close()
        views = []
    _OPEN[cell] = run, [*views, view]


def _running() -> tuple[str, str]:
    """Return what names the running cell and its run; two empty texts outside a kernel."""
    from IPython.core.getipython import get_ipython

    kernel = getattr(get_ipython(), "kernel", None)  # type: ignore[no-untyped-call,unused-ignore]
    if kernel is None:
        return "", ""
    parent: dict[str, Any] = kernel.get_parent("shell")
    cell = parent.get("metadata", {}).get("cellId") or parent.get("content", {}).get("code", "")
    return str(cell), str(parent.get("header", {}).get("msg_id", ""))
