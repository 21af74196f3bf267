"""Works a bench from a page's block alone: no library is on the path of the process that runs it.

Called with the folder of the unpacked block, which also holds `asked.json`; writes `told.json`.
"""

import json
import sys
from pathlib import Path


def main(folder: Path) -> None:
    """Set the bench as asked, one setting after the other, and write what a page would show."""
    sys.path.insert(0, str(folder))
    from seatwork.takehome.inside import bench

    def ask(name: str, given: dict) -> dict:
        return json.loads(bench.call(name, json.dumps(given)))

    told, letters, settings = json.loads((folder / "asked.json").read_text(encoding="utf-8"))
    ask("begin", letters)
    state: dict[str, dict] = {}
    follow(state, ask("open", {"name": "bench-1", "told": told}))
    found = []
    for values in settings:
        answer = ask("set", {"name": "bench-1", "values": values})
        follow(state, answer)
        elements = [dict(state[str(number)]) for number in range(len(state))]
        found.append(answer["trouble"] or [answer["text"], elements, answer["rows"]])
    loaded = sorted({"numpy", "matplotlib", "PIL"} & {name for name in sys.modules if real(name)})
    (folder / "told.json").write_text(json.dumps([found, loaded]), encoding="utf-8")


def real(name: str) -> bool:
    """Tell whether a module came from a library, not from the block."""
    place = getattr(sys.modules[name], "__file__", None) or ""
    return "site-packages" in place


def follow(state: dict[str, dict], answer: dict) -> None:
    """Keep what a page would have on it."""
    if "picture" in answer:
        state.clear()
    for number, change in answer.get("move", {}).items():
        state.setdefault(number, {}).update(change)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
