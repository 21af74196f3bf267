"""The recipe of a hub, what a learner's server lays out, and whose folders are whose."""

import os
import re
import stat
import sys
from pathlib import Path

import pytest
from seatwork.cli import program
from seatwork.errors import SeatworkError
from seatwork.marking import examples, sheets, submissions
from seatwork.opening import sockets
from seatwork.record import hand_out
from seatwork.school import hub_folders, hub_look, hub_recipe, learner_server
from seatwork.shop.folder import hand_in_folder
from typer.testing import CliRunner

FILES = {"jupyterhub_config.py", "seatwork-hub.service", "README.md", "learners.txt"}


class Settings:
    """Stands for the configuration object of traitlets: takes any value under any name."""

    def __getattr__(self, name: str) -> "Settings":
        made = Settings()
        setattr(self, name, made)
        return made


def configured(folder: Path, monkeypatch: pytest.MonkeyPatch, **environment: str) -> Settings:
    """Run the written configuration as JupyterHub does."""
    for name, value in environment.items():
        monkeypatch.setenv(name, value)
    found = Settings()
    path = folder / "jupyterhub_config.py"
    exec(
        compile(path.read_text(), str(path), "exec"),
        {"__file__": str(path), "get_config": lambda: found},
    )
    return found


def test_the_recipe_is_whole_and_names_the_class(tmp_path: Path, monkeypatch) -> None:
    """The configuration runs; the class alone may come in, from this machine, let in by hand."""
    hub_recipe.write_recipe(tmp_path / "hub", ["L01", "L07"])
    assert {path.name for path in (tmp_path / "hub").iterdir()} == FILES
    c = configured(tmp_path / "hub", monkeypatch)
    assert c.Authenticator.allowed_users == {"i1"}  # the sign-up page lets these in at once
    pattern = re.compile(c.Authenticator.username_pattern)
    names = ("l01", "l07", "i1", "l070", "al01", "l0", "", "l01\n", "i1|l07")
    assert [name for name in names if pattern.match(name)] == ["l01", "l07", "i1"]
    assert "admin_users" not in vars(c.Authenticator)  # these open every learner's server
    (role,) = c.JupyterHub.load_roles
    assert role["users"] == ["i1"]
    assert not [scope for scope in role["scopes"] if "access" in scope or "token" in scope]
    assert c.JupyterHub.bind_url.startswith("http://127.0.0.1:")
    assert c.ConfigurableHTTPProxy.command[1:] == ["--proxy-timeout", "300000"]
    assert c.JupyterHub.authenticator_class == "native"
    assert c.NativeAuthenticator.open_signup is False
    assert c.Spawner.cmd == [sys.executable, "-m", learner_server.__name__]
    for path in (tmp_path / "hub").iterdir():
        text = path.read_text()
        assert not [
            word for word in ("folder", "instructor", "python", "proxy") if f"${word} " in text
        ]


def test_a_trial_needs_a_password(tmp_path: Path, monkeypatch) -> None:
    """A hub for trials never starts with a password that everybody knows."""
    hub_recipe.write_recipe(tmp_path, ["L01"])
    monkeypatch.delenv("SEATWORK_TRIAL_PASSWORD", raising=False)
    with pytest.raises(KeyError):
        configured(tmp_path, monkeypatch, SEATWORK_HUB_TRIAL=str(tmp_path))


@pytest.mark.parametrize("name", ["I1", "root; rm", "", "i" * 17, "l07\n"])
def test_a_name_that_is_none_is_refused(tmp_path: Path, name: str) -> None:
    """Nothing that could be more than a name goes into the configuration."""
    with pytest.raises(SeatworkError, match="no name on a hub"):
        hub_recipe.write_recipe(tmp_path / "hub", ["L01"], instructor=name)
    assert not (tmp_path / "hub").exists()


def test_a_recipe_is_not_written_over_unasked(tmp_path: Path) -> None:
    """What a school changed stays, and the way to replace it is told."""
    hub_recipe.write_recipe(tmp_path, ["L01"])
    (tmp_path / "README.md").write_text("ours")
    with pytest.raises(SeatworkError, match="--replace"):
        hub_recipe.write_recipe(tmp_path, ["L01"])
    assert (tmp_path / "README.md").read_text() == "ours"


def test_the_command_takes_the_class_from_the_roster(tmp_path: Path) -> None:
    """Codes of the roster come in; without a roster nobody does, and that is said."""
    examples.make_course(tmp_path / "course")
    args = ["hub", "recipe", str(tmp_path / "hub"), "--course", str(tmp_path / "course")]
    assert CliRunner().invoke(program.app, args).exit_code == 0
    assert (tmp_path / "hub/learners.txt").read_text().split() == [
        code.lower() for code in examples.CLASS
    ]
    told = CliRunner().invoke(program.app, ["hub", "recipe", str(tmp_path / "empty")])
    assert "Nobody may come in yet" in told.output


def test_a_learner_gets_what_was_handed_out_to_that_learner(tmp_path: Path) -> None:
    """L07's sheet lies in l07's workbook, L01's does not; the folder to hand in to is named."""
    given, box = tmp_path / "given", tmp_path / "in"
    cones = sheets.load("cones")
    hand_out(tmp_path / "course", cones, ("L01", "L07"), target=given, day="2026-09-14")
    folder = learner_server.lay_out(tmp_path / "home", "l07", given, box)
    assert '"learner": "L07"' in (folder / "cones.given.json").read_text()
    assert hand_in_folder(folder) == box / "l07"
    assert [path.name for path in folder.glob("*.given.json")] == ["cones.given.json"]
    sheet_of_many = given / "L07" / "many.given.json"
    sheet_of_many.write_bytes(b'{"sizes": "' + b"1" * 50_000 + b'"}')
    again = learner_server.lay_out(tmp_path / "home", "l07", given, box)
    assert again == folder
    assert (folder / "many.given.json").read_bytes() == sheet_of_many.read_bytes()


@pytest.mark.parametrize("user", ["i1", "../l07", "l7", "l07/.."])
def test_who_is_no_learner_is_given_nothing(tmp_path: Path, user: str) -> None:
    """An instructor's workbook names no folder, and no name leads out of the folders."""
    (tmp_path / "given" / "L07").mkdir(parents=True)
    (tmp_path / "given" / "L07" / "cones.given.json").write_text("{}")
    folder = learner_server.lay_out(tmp_path / "home", user, tmp_path / "given", tmp_path / "in")
    assert hand_in_folder(folder) is None
    assert not list(folder.glob("*.given.json"))


def test_a_server_with_kernels_that_can_be_heard_does_not_start(monkeypatch) -> None:
    """Without sockets of files a learner's server says why it does not start."""
    monkeypatch.setattr(sockets, "socket_folder", lambda: None)
    with pytest.raises(SeatworkError, match="every account of it can listen"):
        learner_server.kernels_apart()


def test_a_server_has_no_terminal_and_ends_idle_kernels(tmp_path: Path) -> None:
    """What keeps learners apart is among the options."""
    told = learner_server.options(tmp_path)
    assert told["ServerApp.terminals_enabled"] is False
    assert told["MappingKernelManager.cull_idle_timeout"] == 1800


@pytest.mark.skipif(os.name != "posix", reason="a hub runs on Linux")
def test_a_hand_in_folder_is_closed_to_other_learners(tmp_path: Path) -> None:
    """Others may not look into it; twice does no harm."""
    for _ in range(2):
        hub_folders.prepare("l07", tmp_path / "given", tmp_path / "in")
    assert stat.S_IMODE((tmp_path / "in" / "l07").stat().st_mode) == 0o2750


@pytest.mark.skipif(os.name != "posix", reason="a hub runs on Linux")
def test_a_link_in_the_place_of_a_folder_is_refused(tmp_path: Path) -> None:
    """The hub gives nobody the rights to what a link points at."""
    (tmp_path / "in").mkdir()
    (tmp_path / "secret").mkdir(mode=0o700)
    (tmp_path / "in" / "l07").symlink_to(tmp_path / "secret")
    with pytest.raises(PermissionError):
        hub_folders.prepare("l07", tmp_path / "given", tmp_path / "in")
    assert stat.S_IMODE((tmp_path / "secret").stat().st_mode) == 0o700


def test_a_paper_in_anothers_folder_is_left_to_a_person(tmp_path: Path) -> None:
    """L05's file in l07's folder is named; in its own, or in a folder of no learner, it counts."""
    from seatwork.marking.answers import AnswerFile

    paper = AnswerFile(learner="L05", sheet="cones", form=1)
    for folder in ("l07", "l05", "evening 3", "l07/L05"):
        paper.save(tmp_path / folder)
    doubts = {one.name.rpartition("/")[0]: one.doubt for one in submissions.collect(tmp_path)}
    assert doubts == {
        "l07": "L05's paper lies in L07's folder",
        "l05": "",
        "evening 3": "",
        "l07/L05": "",
    }


def checks_of(folder: Path) -> dict[str, bool]:
    """Look a hub over; each check's name and whether it passed."""
    return {one.name: one.passed for one in hub_look.examine(folder)}


def test_the_doctor_looks_a_hub_over(tmp_path: Path) -> None:
    """A recipe of now has its configuration, its door and its codes; accounts are told missing."""
    hub_recipe.write_recipe(tmp_path / "hub", ["L01", "L07"])
    (tmp_path / "hub").chmod(0o700)
    found = checks_of(tmp_path / "hub")
    for name in (
        "jupyterhub_config.py",
        "service file",
        "door",
        "sign-up",
        "learners",
        "hub's own files",
        "sockets",
    ):
        assert found[name], name
    assert not found["accounts"]


@pytest.mark.parametrize(
    ("file", "old", "new", "name"),
    [
        ("jupyterhub_config.py", "http://127.0.0.1:8000", "http://0.0.0.0:8000", "door"),
        ("jupyterhub_config.py", "c = get_config()", "c = = get_config()", "jupyterhub_config.py"),
        (
            "jupyterhub_config.py",
            "c.JupyterHub.bind_url",
            "c.Authenticator.allowed_users = 1\nc.x",
            "sign-up",
        ),
        ("seatwork-hub.service", "-m jupyterhub", "-m jupyter", "service file"),
        ("seatwork-hub.service", sys.executable, "/gone/python", "service file"),
        ("learners.txt", "l07", "L07", "learners"),
        ("learners.txt", "l07", "l01", "learners"),
        ("learners.txt", "l01\nl07\n", "", "learners"),
    ],
)
def test_the_doctor_finds_what_a_school_spoiled(
    tmp_path: Path, file: str, old: str, new: str, name: str
) -> None:
    """One thing changed, that thing is told with a fix."""
    hub_recipe.write_recipe(tmp_path, ["L01", "L07"])
    path = tmp_path / file
    path.write_text(path.read_text().replace(old, new))
    assert not checks_of(tmp_path)[name]


@pytest.mark.parametrize(
    ("hub", "sign_up", "passed"),
    [("5.5.4", "1.3.0", True), ("6.1.1", "1.3.0", False), ("6.1.1", "1.4.0", True)],
)
def test_the_doctor_knows_versions_that_fail_together(
    monkeypatch, hub: str, sign_up: str, passed: bool
) -> None:
    """A log-in was tried with the first two pairs: it worked, it ended in an error of the page."""
    there = {"jupyterhub": hub, hub_look.SIGN_UP: sign_up}
    monkeypatch.setattr(hub_look, "version", there.__getitem__)
    assert hub_look.program().passed is passed


def test_the_doctor_finds_a_recipe_that_was_moved(tmp_path: Path) -> None:
    """A copied folder has a service file that starts the hub of the old one; that is told."""
    hub_recipe.write_recipe(tmp_path / "old", ["L01"])
    (tmp_path / "old").rename(tmp_path / "new")
    told = hub_look.service(tmp_path / "new")
    assert str(tmp_path / "old") in told.found
    hub_recipe.write_recipe(tmp_path / "new", ["L01"], replace=True)
    assert hub_look.service(tmp_path / "new").passed


@pytest.mark.skipif(os.name != "posix", reason="a hub runs on Linux")
def test_the_doctor_finds_papers_open_to_all(tmp_path: Path) -> None:
    """A learner's folder that others may read is named."""
    for name in ("given", "in"):
        (tmp_path / name).mkdir()
    text = f'GIVEN = Path(x("A", "{tmp_path}/given"))\nHAND_IN = Path(x("B", "{tmp_path}/in"))\n'
    hub_folders.prepare("l07", tmp_path / "given", tmp_path / "in")
    (tmp_path / "given" / "L07").chmod(0o750)
    assert hub_look.folders(text).passed
    (tmp_path / "in" / "l07").chmod(0o755)
    assert "in/l07" in hub_look.folders(text).fix
    (tmp_path / "in" / "l07").chmod(0o750)
    (tmp_path / "in").chmod(0o777)
    assert "every account may write in" in hub_look.folders(text).found


@pytest.mark.skipif(os.name != "posix", reason="a hub runs on Linux")
def test_the_doctor_finds_a_hand_in_folder_of_another_account(tmp_path: Path, monkeypatch) -> None:
    """What lies in the folder of l07 is believed of that account, so it must be its own."""
    import pwd

    (tmp_path / "in" / "l07").mkdir(parents=True, mode=0o750)
    (tmp_path / "in" / "l07").chmod(0o750)
    text = f'HAND_IN = Path(x("B", "{tmp_path}/in"))\n'
    owner = (tmp_path / "in" / "l07").stat().st_uid
    for uid, passed in ((owner, True), (owner + 1, False)):
        account = pwd.struct_passwd(("l07", "x", uid, uid, "", str(tmp_path), "/bin/false"))
        monkeypatch.setattr(pwd, "getpwnam", lambda _, account=account: account)
        assert hub_look.folders(text).passed is passed


def test_the_doctor_says_where_there_is_no_recipe(tmp_path: Path) -> None:
    """An empty folder ends in a fault and the command that writes the recipe."""
    told = CliRunner().invoke(program.app, ["doctor", "--hub", str(tmp_path)])
    assert told.exit_code == 1
    assert "seatwork hub recipe" in told.output
