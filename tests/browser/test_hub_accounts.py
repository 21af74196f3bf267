"""A hub as a school has it: system accounts, each let in by the instructor, HTTPS in front.

It makes three accounts of this machine and takes them away again, so it runs only where it is
asked for: ``SEATWORK_HUB_ACCOUNTS=1``, as root, by a Python that other accounts may read. nginx,
on the path or named in ``SEATWORK_NGINX``, brings HTTPS with a certificate made here.
"""

import os
import pwd
import re
import secrets
import shutil
import subprocess
import sys
import tempfile
from contextlib import contextmanager
from pathlib import Path

import pytest
from browser.hub_served import LOOSE, Hub, free_port, proxy_program, stop, wait_for
from playwright.sync_api import expect
from seatwork.marking import sheets
from seatwork.record import forms
from seatwork.school import hub_look
from seatwork.school.hub_recipe import CONFIG, PAGE, write_recipe
from seatwork.worksheet.entry import typed_parts

pytestmark = [
    pytest.mark.long,
    pytest.mark.skipif(
        os.environ.get("SEATWORK_HUB_ACCOUNTS") != "1" or os.name != "posix" or os.geteuid() != 0,
        reason="it makes accounts of this machine: SEATWORK_HUB_ACCOUNTS=1, as root",
    ),
]
CODES, INSTRUCTOR, GROUP = ("L970", "L971"), "i970", "seatwork-instructors"
ACCOUNTS = ("l970", "l971", INSTRUCTOR)
PASSWORD = secrets.token_hex(8)
PICTURES = os.environ.get("SEATWORK_PICTURES")
DAY = "2026-09-14"


def run(*command: object, account: str = "", allowed: bool = True) -> str:
    """Run a program, as an account or as root; return what it says."""
    words = ["runuser", "-u", account, "--", *command] if account else list(command)
    done = subprocess.run(list(map(str, words)), cwd="/", capture_output=True, text=True)
    assert (done.returncode == 0) is allowed, done.stdout + done.stderr
    return done.stdout


def seatwork(*words: object, account: str = INSTRUCTOR) -> str:
    """Run a command of seatwork as an account."""
    return run(sys.executable, "-m", "seatwork.cli", *words, account=account)


@contextmanager
def accounts():
    """Make the accounts as the page of the recipe says; take them away at the end."""
    made_group = run("getent", "group", GROUP, allowed=not _no_group()) == ""
    if made_group:
        run("groupadd", GROUP)
    try:
        for name in ACCOUNTS:
            run("useradd", "--create-home", "--shell", "/usr/sbin/nologin", name)
            Path(pwd.getpwnam(name).pw_dir).chmod(0o700)
        run("usermod", "-aG", GROUP, INSTRUCTOR)
        yield
    finally:
        for name in ACCOUNTS:
            subprocess.run(["userdel", "--remove", name], capture_output=True)
        if made_group:
            subprocess.run(["groupdel", GROUP], capture_output=True)


def _no_group() -> bool:
    return subprocess.run(["getent", "group", GROUP], capture_output=True).returncode != 0


def lay_out(home: Path, url: str) -> Path:
    """Write the recipe and the folders, hand a sheet out as the instructor does it."""
    for name in ("given", "in"):
        (home / name).mkdir(mode=0o755)
    run("chgrp", GROUP, home / "given")
    (home / "given").chmod(0o2771)
    write_recipe(home / "hub", list(CODES), instructor=INSTRUCTOR)
    (home / "hub").chmod(0o700)
    config = home / "hub" / CONFIG
    text = config.read_text().replace("http://127.0.0.1:8000", url)
    config.write_text(text.replace("/srv/seatwork", str(home)))
    course = Path(pwd.getpwnam(INSTRUCTOR).pw_dir) / "course"
    roster = "learner,group,extra_tries\\n" + "".join(f"{code},,0\\n" for code in CODES)
    hand_out = (
        f"umask 077; mkdir {course}; printf '{roster}' > {course}/roster.csv; "
        f"{sys.executable} -m seatwork.cli hand-out cones --mode graded --course {course} "
        f"--to {home}/given --day {DAY}"
    )
    run("sh", "-c", hand_out, account=INSTRUCTOR)
    return course


@contextmanager
def https(home: Path, url: str):
    """Let nginx bring HTTPS with a certificate made here, by the lines of the recipe's page."""
    nginx = os.environ.get("SEATWORK_NGINX") or shutil.which("nginx")
    if not nginx:
        pytest.skip("no nginx: name one in SEATWORK_NGINX")
    run("openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj",
        "/CN=127.0.0.1", "-keyout", home / "key.pem", "-out", home / "cert.pem")  # fmt: skip
    port = free_port()
    server = (home / "hub" / PAGE).read_text().partition("```nginx\n")[2].partition("```")[0]
    assert "proxy_pass http://127.0.0.1:8000;" in server
    for old, new in {
        "listen 443 ssl": f"listen 127.0.0.1:{port} ssl",
        "http://127.0.0.1:8000": url,
        "/etc/ssl/hub.pem": str(home / "cert.pem"),
        "/etc/ssl/hub.key": str(home / "key.pem"),
    }.items():
        assert old in server
        server = server.replace(old, new)
    logs = "".join(
        f"{kind}_temp_path {home}/{kind};"
        for kind in ("client_body", "proxy", "fastcgi", "uwsgi", "scgi")
    )
    conf = home / "nginx.conf"
    conf.write_text(
        f"pid {home}/nginx.pid; error_log {home}/nginx.log; daemon off; events {{}}\n"
        f"http {{ access_log off; {logs}\n{server} }}\n"
    )
    front = subprocess.Popen([nginx, "-c", str(conf), "-e", str(home / "nginx.log")])
    try:
        yield f"https://127.0.0.1:{port}"
    finally:
        front.terminate()
        front.wait(20)


@pytest.fixture(scope="module")
def hub():
    """Serve a class of two with an instructor, as the page of the recipe says."""
    inner = free_port()
    environment = os.environ | {
        "SEATWORK_HUB_PORT": str(free_port()), "SEATWORK_PROXY_PORT": str(free_port()),
        "SEATWORK_PROXY": proxy_program(),
    }  # fmt: skip
    with accounts(), tempfile.TemporaryDirectory(prefix="hub-", dir="/tmp") as place:
        home, url = Path(place), f"http://127.0.0.1:{inner}"
        home.chmod(0o755)
        lay_out(home, url)
        command = [sys.executable, "-m", "jupyterhub", "-f", str(home / "hub" / CONFIG)]
        with (home / "hub.log").open("wb") as log:
            process = subprocess.Popen(
                command, cwd=home / "hub", env=environment, stdout=log, stderr=log, umask=0o077,
                start_new_session=True,
            )  # fmt: skip
        served = Hub(url=url, home=home, password=PASSWORD, process=process)
        try:
            wait_for(served)
            with https(home, url) as front:
                served.url = front
                yield served
        finally:
            stop(served)
            if PICTURES:
                shutil.copy(home / "hub.log", PICTURES)


def shown(page, name: str) -> None:
    """Keep a picture of a page."""
    if PICTURES:
        page.screenshot(path=str(Path(PICTURES) / f"hub_{name}.png"))


def sign_up(hub: Hub, page, name: str) -> None:
    """Ask to be let in."""
    page.goto(f"{hub.url}/hub/signup")
    page.fill("input[name=username]", name)
    page.fill("input[name=signup_password]", PASSWORD)
    page.fill("input[name=signup_password_confirmation]", PASSWORD)
    page.click("#signup_submit")
    page.wait_for_load_state()


def try_to_log_in(hub: Hub, page, name: str) -> None:
    """Say name and password at the door."""
    page.goto(f"{hub.url}/hub/login?next=/hub/home")
    page.fill("input[name=username]", name)
    page.fill("input[name=password]", PASSWORD)
    page.click("#login_submit")
    page.wait_for_load_state()


@pytest.fixture(scope="module")
def people(hub: Hub, chromium):
    """Give each a browser of their own."""
    return {
        name: chromium.new_context(
            viewport={"width": 1280, "height": 720}, ignore_https_errors=True
        ).new_page()
        for name in (*ACCOUNTS, "l972")
    }


def test_nobody_comes_in_before_the_instructor_says_so(hub: Hub, people) -> None:
    """A code of the class signs up and waits; a code that is none cannot even sign up."""
    instructor = people[INSTRUCTOR]
    sign_up(hub, instructor, INSTRUCTOR)
    try_to_log_in(hub, instructor, INSTRUCTOR)
    expect(instructor).to_have_url(re.compile(r".*/hub/home"), timeout=LOOSE)
    for name in ("l970", "l971", "l972"):
        sign_up(hub, people[name], name)
        shown(people[name], f"signed_up_{name}")
        try_to_log_in(hub, people[name], name)
        assert "/hub/login" in people[name].url
        shown(people[name], f"waits_{name}")
    instructor.goto(f"{hub.url}/hub/authorize")
    expect(instructor.get_by_text("l971", exact=True)).to_be_visible()
    assert instructor.get_by_text("l972", exact=True).count() == 0
    shown(instructor, "authorize")
    for name in ("l970", "l971"):
        row = instructor.get_by_role("row").filter(has_text=name)
        row.get_by_role("button", name="Authorize", exact=True).click()
        instructor.wait_for_load_state()
    shown(instructor, "authorized")


def test_two_learners_answer_and_hand_in(hub: Hub, people) -> None:
    """Each finds the own sheet in a server of the own account, over HTTPS, and hands in."""
    cones = sheets.load("cones")
    handed_out = forms(Path(pwd.getpwnam(INSTRUCTOR).pw_dir) / "course")
    for code in CODES:
        page, name = people[code.lower()], code.lower()
        hub.log_in(page, name)
        hub.open_sheet(page, name)
        form = handed_out.form("cones", code, 1)
        for number, item in enumerate(cones.items[:2]):
            (text,) = typed_parts(str(form.question(item).parts[0].rounded))
            page.locator(".seatwork-form").nth(number).get_by_role("textbox").fill(text)
        expect(page.get_by_text("2 of 3 answered")).to_be_visible(timeout=LOOSE)
        page.get_by_role("button", name="Hand in", exact=True).click()
        expect(page.get_by_text(f"Handed in: {code}-cones-1.json.")).to_be_visible(timeout=LOOSE)
        page.get_by_role("button", name="Hand in", exact=True).scroll_into_view_if_needed()
        shown(page, f"handed_in_{name}")
        users = {one.username() for one in hub.children("singleuser", name)}
        assert users == {name}


def test_accounts_are_kept_apart(hub: Hub, people) -> None:
    """Neither the page nor the machine lets one learner see another's work; nor does the hub's."""
    ask = people["l971"].context.request
    for place in ("contents/answers", "kernels", "contents/seatwork-workbook"):
        assert ask.get(f"{hub.url}/user/l970/api/{place}").status == 403
    mine, other = f"{hub.home}/in/l970/L970-cones-1.json", "l971"
    given = f"{hub.home}/given/L970/cones.given.json"
    workbook = f"{pwd.getpwnam('l970').pw_dir}/seatwork-workbook"
    for place in (mine, given, workbook):
        run("test", "-r", place, account="l970")
        run("test", "-r", place, account=other, allowed=False)
    run("test", "-w", given, account="l970", allowed=False)
    run("test", "-r", mine, account=INSTRUCTOR)


def test_the_instructor_enters_no_learners_server(hub: Hub, people) -> None:
    """The list of people is there; the way into a learner's server is refused in the browser."""
    page = people[INSTRUCTOR]
    page.goto(f"{hub.url}/hub/admin")
    expect(page.get_by_text("l970", exact=True).first).to_be_visible(timeout=LOOSE)
    shown(page, "admin")
    page.goto(f"{hub.url}/user/l970/")
    ask = page.get_by_role("button", name="Authorize")  # the hub asks whether it may tell who
    refused = page.get_by_text("403").first
    ask.or_(refused).wait_for(timeout=LOOSE)
    if ask.is_visible():
        ask.click()
    expect(refused).to_be_visible(timeout=LOOSE)
    shown(page, "access_refused")
    assert page.context.request.get(f"{hub.url}/user/l970/api/contents").status == 403


def test_the_instructor_marks_what_was_handed_in(hub: Hub, people) -> None:
    """From the own account, by the own record."""
    course = Path(pwd.getpwnam(INSTRUCTOR).pw_dir) / "course"
    told = seatwork("mark", "cones", hub.home / "in", "--course", course, "--day", DAY)
    assert "2 files, 2 marked" in told


def test_the_doctor_finds_nothing_wrong(hub: Hub, people) -> None:
    """Programs, door, learners, accounts, modes, folders and sockets, each looked at."""
    found = {one.name: one for one in hub_look.examine(hub.home / "hub")}
    assert [name for name, one in found.items() if not one.passed] == []
