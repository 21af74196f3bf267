"""Keys that all widgets treat alike: their own stay with them, Esc leads out to the page."""

from pathlib import Path

KEYS = (Path(__file__).parent / "keys.js").read_text(encoding="utf-8")


def with_keys(script: Path) -> str:
    """Return a widget's script that may call ``guardKeys``."""
    return f"{KEYS}\n{script.read_text(encoding='utf-8')}"
