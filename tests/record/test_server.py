"""The same record on a real PostgreSQL server; skipped with a reason where there is none."""

import json
import os
import shutil
import socket
import subprocess
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from schools import answered, points_of
from seatwork.errors import SeatworkError
from seatwork.marking import examples
from seatwork.record import Override, check, hand_out, mark, open_record, override
from seatwork.record.copying import copy
from seatwork.record.deciding import undo
from seatwork.record.erasing import erase
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError

pytestmark = pytest.mark.slow
DAY, LATER = "2026-09-14", "2026-09-15"
LEARNERS = ["L01", "L02", "L03"]


def programs() -> Path | None:
    """Find the server's programs."""
    found = [path.parent for path in sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))]
    named = shutil.which("initdb")
    return found[-1] if found else Path(named).resolve().parent if named else None


def free_port() -> int:
    """Find a free port of this computer."""
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


@pytest.fixture(scope="module")
def server() -> Iterator[str]:
    """Run a server of one's own on this computer, thrown away after; give its address."""
    where = programs()
    if where is None:
        pytest.skip("no PostgreSQL server is installed (initdb was not found)")
    place, port = Path(tempfile.mkdtemp()), free_port()  # pytest's own folder is for root alone
    as_user: dict[str, str] = {}
    if os.getuid() == 0:  # the server refuses to run as root
        if subprocess.run(["id", "postgres"], check=False, capture_output=True).returncode:
            pytest.skip("PostgreSQL does not run as root, and there is no user postgres")
        as_user = {"user": "postgres"}
        shutil.chown(place, "postgres")
    data = str(place / "data")

    def run(program: str, *words: str) -> None:
        subprocess.run(
            [str(where / program), *words], check=True, cwd=place, timeout=120,
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **as_user,
        )  # fmt: skip

    run("initdb", "-D", data, "-A", "trust", "-U", "seatwork", "--no-sync", "-E", "UTF8")
    options = f"-p {port} -k {place} -c listen_addresses=127.0.0.1 -c fsync=off"
    run("pg_ctl", "-D", data, "-o", options, "-l", str(place / "log"), "-w", "start")
    try:
        yield f"postgresql+psycopg://seatwork@127.0.0.1:{port}"
    finally:
        run("pg_ctl", "-D", data, "-m", "immediate", "stop")
        shutil.rmtree(place)


def course(folder: Path, address: str = "") -> Path:
    """Make a course that handed a sheet out and marked it, its record on a server or in a file."""
    examples.make_course(folder)
    if address:
        line = f'format = 1\ninstructor = "I1"\nserver = {json.dumps(address)}\n'
        (folder / "course.toml").write_text(line)
    hand_out(folder, "cones", LEARNERS, day="2026-09-07")
    for code in LEARNERS:
        answered(folder, "cones", code, 1).save(folder.parent / f"in-{folder.name}")
    mark(folder, "cones", folder.parent / f"in-{folder.name}", day=DAY)
    return folder


@pytest.fixture
def both(tmp_path: Path, server: str) -> tuple[Path, Path]:
    """Give the same course twice: its record in a file, and in a database of its own."""
    from sqlalchemy import create_engine

    engine = create_engine(f"{server}/postgres", isolation_level="AUTOCOMMIT")
    name = f"term_{os.getpid()}_{abs(hash(tmp_path.name))}"
    with engine.connect() as connection:
        connection.execute(text(f"CREATE DATABASE {name}"))
    engine.dispose()
    return course(tmp_path / "file"), course(tmp_path / "served", f"{server}/{name}")


def test_the_picture_is_the_same_on_a_server(both) -> None:
    """Handed out, marked, marked again, points given, taken back: every cell is the same."""
    pictures = []
    for folder in both:
        again = mark(folder, "cones", folder.parent / f"in-{folder.name}", day=DAY)
        assert (again.new, again.known) == (0, 3)
        record = open_record(folder)
        given = Override(
            sheet="cones", learner="L01", form=1, question="c1", points=1, reason="said aloud"
        )
        made = override(record, given, LATER)
        pictures.append(points_of(record))
        undo(record, made, "talked it over", LATER)
        pictures.append(points_of(record))
        assert check(record) == []
        record.close()
    assert pictures[0] == pictures[2]
    assert pictures[1] == pictures[3]
    assert pictures[0] != pictures[1]
    assert not (both[1] / "record.db").exists()


def test_the_server_bounds_points_too(both) -> None:
    """The tables' own constraints hold there: nobody gives 900 points."""
    record = open_record(both[1])
    given = Override(
        sheet="cones", learner="L01", form=1, question="c1", points=1, reason="said aloud"
    )
    override(record, given, LATER)
    with pytest.raises(IntegrityError), record.engine.begin() as connection:
        connection.execute(text("UPDATE override SET points = 900"))
    record.close()


def test_what_is_for_files_alone_is_refused(both, tmp_path: Path) -> None:
    """Copies and erasing are the keeper's, said in one sentence."""
    record = open_record(both[1])
    with pytest.raises(SeatworkError, match="on a server"):
        copy(record, tmp_path / "copy.db")
    with pytest.raises(SeatworkError, match="on a server"):
        erase(record, both[1], "L01", LATER)
    record.close()


def test_a_second_computer_needs_the_same_key(both, tmp_path: Path) -> None:
    """Whoever joins a record on a server without its key makes none of their own."""
    other = tmp_path / "other"
    other.mkdir()
    shutil.copy(both[1] / "course.toml", other / "course.toml")
    with pytest.raises(SeatworkError, match="has one already"):
        hand_out(other, "cones", LEARNERS, day=LATER)
    assert not (other / "course.key").exists()
    shutil.copy(both[1] / "course.key", other / "course.key")
    record = open_record(other)
    assert points_of(record)["L01", "cones"]
    record.close()


@pytest.mark.parametrize(
    ("address", "told"),
    [
        ("postgresql+psycopg://seatwork@127.0.0.1:9/term", "does not answer"),
        ("mysql://seatwork@127.0.0.1/term", "PostgreSQL alone"),
        ("nonsense", "no address of a server"),
    ],
)
def test_a_wrong_address_is_one_sentence(tmp_path: Path, address: str, told: str) -> None:
    """No server, another kind of server, no address: told, and no record begun in a file."""
    with pytest.raises(SeatworkError, match=told):
        course(tmp_path / "course", address)
    assert not (tmp_path / "course" / "record.db").exists()
