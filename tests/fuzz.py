"""Fuzz every door where text of a learner, an instructor or a print comes in, for a given time.

``python tests/fuzz.py --minutes 10 [DOOR ...]`` tries the doors in turn, each in a process of its
own, and says how many inputs were tried. With atheris (``pip install -e ".[long]"``) the inputs are
guided by what code they reach; without it they are mutations of the corpus. A find is named with
its bytes; mend it, and keep it as ``tests/fuzzing/corpus/DOOR/NAME``. With ``--keep`` the few
inputs of this run that reach most code replace the corpus' ``reached-`` files.
"""

import argparse
import os
import re
import subprocess
import sys
import tempfile
import time
from importlib.util import find_spec
from pathlib import Path
from random import Random

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE / "fuzzing"))
CORPUS = HERE / "fuzzing" / "corpus"
TRIED = re.compile(r"(?:stat::number_of_executed_units|tried):\s+(\d+)")
LONGEST, SLOWEST = 4096, 20  # bytes of an input, seconds for one
MOST_KEPT = 12  # inputs of a door that a run may keep
WORDS = (
    "⌀", "⌴", "⌵", "↧", "°", "±", "THRU", "CBORE", "CSK", "SF", "DP", "X", "FOR", "FLAT HEAD",
    "M6", "#10-32", "1/4-20 UNC-2B", "17/64", ".385", "0,5", " mm", " in", '"', "rpm", "sfm",
    "ipr", "NaN", "Infinity", "1e400", "\\x00", "\\u2028", "learner", "L07", "c1", "format",
    "[[questions]]", "[note]", "=", ";", ",", "\\t", "\\r\\n",
)  # fmt: skip


def folder_of(door: str) -> Path:
    """Name the folder of a door's corpus."""
    return CORPUS / door.replace(" ", "_")


def beginnings(door: str) -> list[bytes]:
    """Return what a door's fuzzer begins with: its samples and its corpus."""
    from fuzz_doors import DOORS

    kept = sorted(path for path in folder_of(door).glob("*") if path.is_file())
    return [*DOORS[door].samples, *(path.read_bytes() for path in kept)]


def guided(door: str, given: list[str]) -> None:
    """Fuzz one door in this process with atheris; it ends the process itself."""
    import atheris

    with atheris.instrument_imports(include=["seatwork", "tomllib", "fuzz_doors"]):
        from fuzz_doors import DOORS
    atheris.Setup([sys.argv[0], *given], lambda raw: DOORS[door].try_(raw) and None)
    atheris.Fuzz()


def mutated(door: str, seconds: float) -> None:
    """Fuzz one door in this process by mutations of what it begins with."""
    from fuzz_doors import DOORS

    rng, pool = Random(time.time_ns()), beginnings(door)
    words = [word.encode() for word in WORDS]
    end, tried = time.monotonic() + seconds, 0
    while time.monotonic() < end:
        raw = mutation(rng, pool, words)
        try:
            DOORS[door].try_(raw)
        except Exception:
            sys.stdout.write(f"find: {raw!r}\n")
            raise
        tried += 1
    sys.stdout.write(f"tried: {tried}\n")


def mutation(rng: Random, pool: list[bytes], words: list[bytes]) -> bytes:
    """Change one of the beginnings in a few places."""
    raw = bytearray(rng.choice(pool))
    for _ in range(rng.randint(1, 6)):
        at, to = sorted(rng.randrange(len(raw) + 1) for _ in range(2))
        piece = rng.choice([b"", rng.choice(words), bytes([rng.randrange(256)]), bytes(raw[at:to])])
        raw[at : rng.choice([at, to])] = piece
    return bytes(raw[:LONGEST])


def fuzz(door: str, seconds: int, *, keep: bool) -> tuple[int, str]:
    """Fuzz one door in a process; return how many inputs were tried, and the find, or ""."""
    memory = "/dev/shm" if Path("/dev/shm").is_dir() else None  # files of a door cost no disk
    with tempfile.TemporaryDirectory(dir=memory) as made:
        begun, words = Path(made) / "begun", Path(made) / "words"
        begun.mkdir()
        for number, raw in enumerate(beginnings(door)):
            (begun / f"{number}").write_bytes(raw)
        words.write_text("".join(f'"{hexed(word)}"\n' for word in WORDS))
        given = [
            f"-max_total_time={seconds}", f"-max_len={LONGEST}", f"-timeout={SLOWEST}",
            "-print_final_stats=1", "-rss_limit_mb=1024", f"-dict={words}",
            f"-artifact_prefix={made}/find-", "-verbosity=0", str(begun),
        ]  # fmt: skip
        asked = [sys.executable, __file__, "--one", door, "--seconds", str(seconds), *given]
        done = subprocess.run(
            asked, check=False, capture_output=True, env=os.environ | {"TMPDIR": made}
        )
        said = (done.stdout + done.stderr).decode("utf-8", "replace")
        if keep and not done.returncode:
            keep_reached(door, begun)
        finds = [path.read_bytes() for path in sorted(Path(made).glob("find-*"))]
    counted = sum(int(count) for count in TRIED.findall(said))
    return counted, f"{finds!r}\n{said[-3000:]}" if done.returncode else ""


def hexed(word: str) -> str:
    """Write a word as a fuzzer's dictionary does."""
    plain = word.encode().decode("unicode_escape") if "\\" in word else word
    return "".join(f"\\x{byte:02x}" for byte in plain.encode())


def keep_reached(door: str, reached: Path) -> None:
    """Keep the shortest inputs that reached something new, in place of those kept before."""
    home = folder_of(door)
    home.mkdir(parents=True, exist_ok=True)
    for path in home.glob("reached-*"):
        path.unlink()
    new = sorted((path for path in reached.iterdir() if len(path.name) == 40),
                 key=lambda path: (path.stat().st_size, path.name))  # fmt: skip
    step = max(1, len(new) // MOST_KEPT)
    for number, path in enumerate(new[::step][:MOST_KEPT]):
        (home / f"reached-{number:02d}").write_bytes(path.read_bytes())


def asked_for() -> tuple[argparse.Namespace, list[str]]:
    """Read the command line."""
    from fuzz_doors import DOORS

    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("doors", nargs="*", metavar="DOOR", help=", ".join(DOORS))
    parser.add_argument("--minutes", type=float, default=5.0)
    parser.add_argument("--keep", action="store_true")
    found = parser.parse_args()
    unknown = [door for door in found.doors if door not in DOORS]
    if unknown:
        parser.error(f"no such door: {', '.join(unknown)}")
    return found, found.doors or list(DOORS)


def main() -> int:
    """Fuzz the doors in turn, and say what was tried."""
    if sys.argv[1:2] == ["--one"]:
        door, seconds, given = sys.argv[2], float(sys.argv[4]), sys.argv[5:]
        guided(door, given) if find_spec("atheris") else mutated(door, seconds)
        return 0
    given, doors = asked_for()
    seconds = max(1, round(60 * given.minutes / len(doors)))
    total, finds = 0, 0
    for door in doors:
        tried, find = fuzz(door, seconds, keep=given.keep)
        total, finds = total + tried, finds + bool(find)
        sys.stdout.write(f"{door}: {tried} inputs in {seconds} s {find}\n")
        sys.stdout.flush()
    sys.stdout.write(f"{total} inputs, {finds} finds\n")
    return bool(finds)


if __name__ == "__main__":
    sys.exit(main())
