"""The stick: wheels for other computers, a script of its own, pages without network."""

import os
import subprocess
import sys
import types
import zipfile
from importlib import resources
from pathlib import Path

import pytest
from seatwork import __version__
from seatwork.cli import program
from seatwork.errors import SeatworkError
from seatwork.school import own_wheel, stick, stick_look, stick_pages, wheels
from seatwork.school.stick_targets import COMPUTERS, computer, python_version
from typer.testing import CliRunner

HERE = Path(__file__).parent


def wheel(folder: Path, name: str, *needs: str) -> Path:
    """Write a wheel that holds nothing but what it needs."""
    path = folder / f"{name}-1.0-py3-none-any.whl"
    said = [f"Name: {name}", "Version: 1.0", *(f"Requires-Dist: {need}" for need in needs)]
    with zipfile.ZipFile(path, "w") as inside:
        inside.writestr(
            f"{name}-1.0.dist-info/METADATA", "Metadata-Version: 2.1\n" + "\n".join(said)
        )
    return path


@pytest.fixture
def script(tmp_path: Path) -> types.ModuleType:
    """Load the install script as it lies on a stick."""
    text = (resources.files("seatwork.school") / "stick_files" / "install.txt").read_text()
    path = tmp_path / "install.py"
    path.write_text(text, encoding="utf-8")
    found = types.ModuleType("install")
    found.__file__ = str(path)
    exec(compile(text, str(path), "exec"), found.__dict__)
    (tmp_path / "wheels").mkdir()
    return found


def needed(tmp_path: Path, monkeypatch, name: str, python: str = "3.12") -> tuple[set, list]:
    """Follow made-up requirements for a kind of computer."""
    lines = ("a", "win ; sys_platform == 'win32'", "pipe ; os_name != 'nt'", "tool ; extra == 'x'")
    said = "Metadata-Version: 2.1\n" + "".join(f"Requires-Dist: {line}\n" for line in lines)
    monkeypatch.setattr(wheels, "metadata", lambda: said)
    wheel(tmp_path, "a", "old ; python_version < '3.12'", "b[more]", "debugpy")
    wheel(tmp_path, "b", "c ; extra == 'more'", "d ; extra == 'other'", "a")
    for one in ("c", "pipe", "stranger"):
        wheel(tmp_path, one)
    there = wheels.wheels_in(tmp_path)
    return wheels.closure("seatwork", there, COMPUTERS[name], python)


def test_requirements_are_judged_by_the_other_computer(tmp_path: Path, monkeypatch) -> None:
    """What Windows alone needs is missing for Windows, what Linux alone needs is left out there."""
    found, missing = needed(tmp_path, monkeypatch, "windows")
    assert missing == ["win"]
    assert "pipe" not in found
    found, missing = needed(tmp_path, monkeypatch, "linux")
    assert (missing, "pipe" in found, "c" in found) == ([], True, True)
    assert not {"stranger", "debugpy", "d", "tool"} & found


def test_requirements_are_judged_by_the_other_python(tmp_path: Path, monkeypatch) -> None:
    """What only an older Python needs is asked for there alone."""
    assert needed(tmp_path, monkeypatch, "mac", "3.11")[1] == ["old"]
    assert needed(tmp_path, monkeypatch, "mac", "3.13")[1] == []


def test_the_own_wheel_brings_the_lessons(tmp_path: Path) -> None:
    """Installed elsewhere it runs, and lays the same workbook out."""
    made = own_wheel.make_wheel(tmp_path)
    with zipfile.ZipFile(made) as inside:
        names = set(inside.namelist())
        inside.extractall(tmp_path / "there")
    assert {"seatwork/workbook/notebooks/00_start_here.ipynb", "seatwork/py.typed"} <= names
    assert not [name for name in names if "__pycache__" in name]
    look = (
        "import sys; sys.path.insert(0, sys.argv[1]); from pathlib import Path\n"
        "import seatwork; from seatwork import opening\n"
        "assert Path(sys.argv[1]) in Path(seatwork.__file__).parents\n"
        "assert len(opening.deliver(Path(sys.argv[2])).added) > 40"
    )
    command = [sys.executable, "-c", look, str(tmp_path / "there"), str(tmp_path / "book")]
    done = subprocess.run(command, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr


@pytest.mark.parametrize(
    ("system", "machine", "name"),
    [
        ("Linux", "x86_64", "linux"),
        ("Windows", "AMD64", "windows"),
        ("Darwin", "arm64", "mac"),
        ("Darwin", "x86_64", "mac-intel"),
        ("Linux", "aarch64", None),
        ("Windows", "ARM64", None),
        ("FreeBSD", "amd64", None),
    ],
)
def test_the_script_knows_its_computer(script, system: str, machine: str, name) -> None:
    """Each kind by the words that its Python has for it; any other kind is none."""
    assert script.computer(system, machine) == name
    assert name is None or name in COMPUTERS


def test_the_script_says_what_the_stick_serves(script, tmp_path: Path) -> None:
    """A computer without a list is told what it is and what there is; nothing is installed."""
    (tmp_path / "wheels" / "windows-3.12.txt").write_text("")
    assert script.list_for("Windows", "AMD64", (3, 12, 1))[0].name == "windows-3.12.txt"
    listed, fault = script.list_for("Windows", "AMD64", (3, 13, 0))
    assert listed is None
    assert fault == "This is Windows AMD64 with Python 3.13. The stick serves: windows-3.12."


def test_the_script_finds_a_damaged_wheel(script, tmp_path: Path) -> None:
    """One byte turned, or a wheel gone: named before anything is installed."""
    made = [wheel(tmp_path / "wheels", name) for name in ("a", "b", "c")]
    stick._keep(tmp_path / "wheels", "linux-3.11", made)
    listed = tmp_path / "wheels" / "linux-3.11.txt"
    assert script.wheels_of(listed) == (made, [])
    made[1].write_bytes(made[1].read_bytes()[:-1] + b"x")
    made[2].unlink()
    assert script.wheels_of(listed)[1] == [made[1].name, made[2].name]


@pytest.mark.parametrize("windows", [True, False])
def test_the_script_installs_without_network_and_copies_on_windows(
    script, tmp_path: Path, monkeypatch, windows: bool
) -> None:
    """The wheel of pip runs, asks no index; Windows gets no links, which need rights."""
    made, ran = [], []

    class Builder:
        def __init__(self, **words: object) -> None:
            made.append(words)

        def create(self, place: Path) -> None:
            place.mkdir()

    monkeypatch.setattr(script.venv, "EnvBuilder", Builder)
    monkeypatch.setattr(script.subprocess, "call", lambda command: ran.append(command) or 0)
    given = [tmp_path / "pip-26-py3-none-any.whl", tmp_path / "a b-1.whl"]
    assert script.install(tmp_path / "é à", given, windows) == 0
    assert made == [{"with_pip": False, "symlinks": not windows}]
    (command,) = ran
    assert Path(command[0]).name == ("python.exe" if windows else "python")
    assert Path(command[0]).parent.name == ("Scripts" if windows else "bin")
    assert command[1] == f"{given[0]}/pip"
    assert {"--no-index", "--no-deps", "--isolated"} <= set(command)
    assert command[-1] == str(given[1])


def test_the_script_leaves_a_folder_with_other_things_alone(
    script, tmp_path: Path, monkeypatch, capsys
) -> None:
    """Whoever names a folder of photographs is asked for another."""
    made = [wheel(tmp_path / "wheels", "pip")]
    stick._keep(tmp_path / "wheels", "linux-3.11", made)
    listed = tmp_path / "wheels" / "linux-3.11.txt"
    monkeypatch.setattr(script, "list_for", lambda *_: (listed, ""))
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / "photo").write_text("mine")
    assert script.main(str(tmp_path / "mine")) == 1
    assert "holds other things" in capsys.readouterr().out
    assert [path.name for path in (tmp_path / "mine").iterdir()] == ["photo"]


def test_a_failed_install_leaves_nothing(script, tmp_path: Path, monkeypatch, capsys) -> None:
    """A wheel that does not install ends in a sentence, and the new folder goes."""
    made = [wheel(tmp_path / "wheels", "pip")]
    stick._keep(tmp_path / "wheels", "linux-3.11", made)
    listed = tmp_path / "wheels" / "linux-3.11.txt"
    monkeypatch.setattr(script, "list_for", lambda *_: (listed, ""))
    monkeypatch.setattr(script, "install", lambda place, *_: place.mkdir() or 1)
    assert script.main(str(tmp_path / "new")) == 1
    assert "Nothing is left behind" in capsys.readouterr().out
    assert not (tmp_path / "new").exists()


@pytest.mark.parametrize("odd", ["toaster", "", "Linux", "../linux"])
def test_an_unknown_kind_is_refused(odd: str, tmp_path: Path) -> None:
    """Kinds and versions that a stick cannot serve are told with those it can."""
    with pytest.raises(SeatworkError, match="linux, windows"):
        computer(odd)
    with pytest.raises(SeatworkError, match=r"3\.11"):
        python_version(odd)
    told = CliRunner().invoke(program.app, ["stick", str(tmp_path / "s"), "--for", "toaster"])
    assert told.exit_code
    assert not (tmp_path / "s").exists()


def test_a_folder_with_other_things_becomes_no_stick(tmp_path: Path) -> None:
    """Nothing is written among what somebody keeps there."""
    (tmp_path / "photo").write_text("mine")
    with pytest.raises(SeatworkError, match="holds other things"):
        stick.make_stick(tmp_path, ["linux"], ["3.11"])
    assert [path.name for path in tmp_path.iterdir()] == ["photo"]


@pytest.fixture
def small(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give a stick with one lesson, one sheet, pip, and a seatwork that needs no more than one."""
    monkeypatch.setattr(wheels, "metadata", lambda: "Requires-Dist: plug\nMetadata-Version: 2.1\n")
    (tmp_path / "pages").mkdir()
    (tmp_path / "cards").mkdir()
    (tmp_path / "wheels").mkdir()
    (tmp_path / "pages" / "a.html").write_text("<title>Which angle?</title><p>https://x</p>")
    (tmp_path / "cards" / "drills.pdf").write_bytes(b"%PDF")
    keep(tmp_path, "pip", "plug", "seatwork")
    stick_pages.first_page(tmp_path, ["windows-3.12"])
    return tmp_path


def keep(folder: Path, *names: str, version: str = __version__) -> None:
    """Put made-up wheels on a stick, and list them."""
    made = [wheel(folder / "wheels", name) for name in names]
    for n, path in enumerate(made):
        if path.name.startswith("seatwork-"):
            made[n] = path.rename(path.with_name(f"seatwork-{version}-py3-none-any.whl"))
    stick._keep(folder / "wheels", "windows-3.12", made)


def faults(folder: Path) -> list[str]:
    """Name the checks of the doctor that found a fault."""
    return [one.name for one in stick_look.examine(folder) if not one.passed]


def test_the_first_page_says_what_was_not_tried(small: Path) -> None:
    """Two lines to type, the lessons by title, and that Windows was never tried."""
    text = (small / "START.html").read_text()
    assert "python3 install.py" in text
    assert '<a href="pages/a.html">Which angle?</a>' in text
    assert "Not tried yet on a real one: windows." in text
    assert faults(small) == []


def test_the_doctor_finds_what_is_wrong_with_a_stick(small: Path) -> None:
    """A wheel gone, a page that asks the network, the script gone: each is told."""
    next((small / "wheels").glob("*.whl")).unlink()
    assert faults(small) == ["wheels for windows-3.12"]
    (small / "pages" / "a.html").write_text('<script src="https://x/y.js"></script>')
    (small / "install.py").unlink()
    assert faults(small) == ["wheels for windows-3.12", "pages", "start"]
    (small / "wheels" / "windows-3.12.txt").unlink()
    assert faults(small)[0] == "wheels"


def test_the_doctor_finds_a_wheel_that_no_list_names_any_more(small: Path) -> None:
    """A list cut short still fits its wheels; what seatwork needs is missing all the same."""
    listed = small / "wheels" / "windows-3.12.txt"
    lines = listed.read_text().splitlines(keepends=True)
    listed.write_text("".join(line for line in lines if "plug" not in line))
    assert faults(small) == ["needed by windows-3.12"]


def test_the_doctor_finds_a_stick_of_another_seatwork(small: Path) -> None:
    """A stick made before the last update is told, with both versions."""
    keep(small, "pip", "plug", "seatwork", version="0.0.9")
    (told,) = [one for one in stick_look.examine(small) if not one.passed]
    assert "0.0.9" in told.found
    assert __version__ in told.found


@pytest.mark.long
@pytest.mark.browser
@pytest.mark.skipif(sys.platform != "linux", reason="namespaces are Linux's")
def test_a_stick_installs_and_works_with_the_network_cut(tmp_path: Path) -> None:
    """Read-only, spaces and accents in every path, the workbook elsewhere, no interface at all."""
    pytest.importorskip("playwright")
    cut = ["unshare", "-n"] if os.geteuid() == 0 else ["unshare", "-rn"]
    if subprocess.run([*cut, "true"], capture_output=True).returncode:
        pytest.skip("this system gives no namespace without network")
    named = os.environ.get("SEATWORK_STICK")
    folder = Path(named) if named else tmp_path / "stick à l'école"
    if not named:
        version = f"{sys.version_info.major}.{sys.version_info.minor}"
        try:
            stick.make_stick(folder, ["linux"], [version])
        except SeatworkError as error:
            pytest.skip(f"no wheels could be fetched: {error.fault}")
    subprocess.run(["chmod", "-R", "a-w", str(folder)], check=True)
    home = tmp_path.resolve() / "h"
    home.mkdir()
    pictures = os.environ.get("SEATWORK_PICTURES", "")
    command = [*cut, sys.executable, str(HERE / "cut_off.py"), str(folder), str(home)]
    done = subprocess.run([*command, *filter(None, [pictures])], capture_output=True, text=True)
    subprocess.run(["chmod", "-R", "u+w", str(folder)], check=True)
    assert done.returncode == 0, done.stdout + done.stderr
