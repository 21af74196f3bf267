"""A real hub with a real proxy and five learners in five browsers: the whole way of a sheet.

``SEATWORK_HUB_LEARNERS=18`` asks for more of them, ``SEATWORK_HUB_FOLDER`` keeps what it made.
"""

import importlib.util
import os
import re
import secrets
import shutil
import subprocess
import sys
import time
from contextlib import contextmanager, suppress
from pathlib import Path

import pytest
from browser.hub_served import LOOSE, Hub, free_port, proxy_program, stop, wait_for
from playwright.sync_api import expect
from seatwork.marking import answers, sheets
from seatwork.record import forms, hand_out, mark
from seatwork.school.hub_recipe import write_recipe
from seatwork.worksheet.entry import typed_parts

pytestmark = [
    pytest.mark.long,
    pytest.mark.skipif(os.name != "posix", reason="a hub runs on Linux"),
    pytest.mark.skipif(
        importlib.util.find_spec("jupyterhub") is None, reason="jupyterhub is not installed"
    ),
]
COUNT = int(os.environ.get("SEATWORK_HUB_LEARNERS", "5"))
CODES = [f"L{number:02d}" for number in range(1, COUNT + 1)]
DAYS = ("2026-09-14", "2026-09-21")
MOST = 250  # MB a learner at work
PICTURES = os.environ.get("SEATWORK_PICTURES")


@contextmanager
def serving(home: Path, more: str = ""):
    """Hand out, write the recipe with `more` below it, run the hub until the test is done."""
    hand_out(
        home / "course", sheets.load("cones"), CODES, mode="graded",
        target=home / "given", day=DAYS[0],
    )  # fmt: skip
    write_recipe(home / "hub", CODES)
    with (home / "hub/jupyterhub_config.py").open("a") as config:
        config.write(more)
    for name in [*CODES, "i1"]:
        (home / "homes" / name.lower()).mkdir(parents=True)
    door, inner, api = free_port(), free_port(), free_port()
    password = secrets.token_hex(12)
    environment = os.environ | {
        "SEATWORK_HUB_TRIAL": str(home), "SEATWORK_TRIAL_PASSWORD": password,
        "SEATWORK_TRIAL_INSTRUCTOR_PASSWORD": f"{password}-and-the-instructor",
        "SEATWORK_HUB_URL": f"http://127.0.0.1:{door}", "SEATWORK_HUB_PORT": str(inner),
        "SEATWORK_PROXY_PORT": str(api), "SEATWORK_PROXY": proxy_program(),
        "SEATWORK_GIVEN": str(home / "given"), "SEATWORK_HAND_IN": str(home / "in"),
    }  # fmt: skip
    command = [sys.executable, "-m", "jupyterhub", "-f", str(home / "hub/jupyterhub_config.py")]
    with (home / "hub.log").open("wb") as log:
        process = subprocess.Popen(
            command, cwd=home / "hub", env=environment, stdout=log, stderr=log,
            start_new_session=True,
        )  # fmt: skip
    hub = Hub(url=f"http://127.0.0.1:{door}", home=home, password=password, process=process)
    try:
        wait_for(hub)
        yield hub
    finally:
        stop(hub)


@pytest.fixture(scope="module")
def hub(tmp_path_factory: pytest.TempPathFactory):
    """Serve one class for all tests here."""
    named = os.environ.get("SEATWORK_HUB_FOLDER")
    home = Path(named) if named else tmp_path_factory.mktemp("hub")
    with serving(home) as started:
        yield started
        sys.stdout.write("\n".join(["", *started.told, ""]))


@pytest.fixture(scope="module")
def pages(hub: Hub, chromium):
    """Let each learner log in, answer two questions rightly and hand in, in a browser each."""
    found, handed_out = {}, forms(hub.home / "course")
    for code in CODES:
        began = time.monotonic()
        page = chromium.new_context(viewport={"width": 1280, "height": 720}).new_page()
        hub.log_in(page, code)
        hub.open_sheet(page, code)
        ready = time.monotonic() - began
        form = handed_out.form("cones", code, 1)
        for number, item in enumerate(sheets.load("cones").items[:2]):
            (text,) = typed_parts(str(form.question(item).parts[0].rounded))
            field = page.locator(".seatwork-form").nth(number).get_by_role("textbox")
            field.fill(text)
        expect(page.get_by_text("2 of 3 answered")).to_be_visible(timeout=LOOSE)
        page.get_by_role("button", name="Hand in", exact=True).click()
        expect(page.get_by_text(f"Handed in: {code}-cones-1.json.")).to_be_visible(timeout=LOOSE)
        hub.tell(f"{code}: log in to page with forms {ready:.1f} s")
        found[code] = page
    if PICTURES:
        page.get_by_role("button", name="Hand in", exact=True).scroll_into_view_if_needed()
        page.screenshot(path=str(Path(PICTURES) / "hub_learner.png"))
    return found


def test_a_learner_at_work_takes_at_most_so_much(hub: Hub, pages) -> None:
    """Server and kernel of each learner, by proportional memory, and what the hub itself takes."""
    each = [hub.memory("singleuser", code) + hub.memory("ipykernel", code) for code in CODES]
    hub.tell(
        f"hub answers after {hub.ready:.1f} s; a learner {max(each):.0f} MB at most, "
        f"{sum(each) / len(each):.0f} on average, {sum(each):.0f} for {len(each)}; "
        f"proxy {hub.memory('proxy'):.0f} MB"
    )
    assert max(each) <= MOST


def test_every_paper_is_collected_and_marked(hub: Hub, pages) -> None:
    """Two of three questions are right in each paper, and the papers lie in the learner's own."""
    cones = sheets.load("cones")
    done = mark(hub.home / "course", cones, hub.box, day=DAYS[1])
    assert (done.new, len(done.marked)) == (COUNT, COUNT)
    worth = sum(item.points for item in cones.items[:2])
    assert [one.points for one in done.marked] == [worth] * COUNT
    assert sorted(path.name for path in hub.box.iterdir()) == [code.lower() for code in CODES]


def test_no_learner_opens_anothers_answers(hub: Hub, pages) -> None:
    """Files, kernels and the hub's own list of people are refused."""
    ask = pages["L02"].context.request
    for place in ("contents/answers", "kernels", "contents/answers/L01-cones-1.json"):
        assert ask.get(f"{hub.url}/user/l01/api/{place}").status == 403
    assert ask.get(f"{hub.url}/hub/admin").status == 403
    assert ask.get(f"{hub.url}/user/l02/api/contents/answers").status == 200
    assert ask.get(f"{hub.url}/user/l02/api/terminals").status in (403, 404)


def test_a_stranger_on_the_machine_hears_no_kernel(hub: Hub, pages) -> None:
    """A listener on every port of every kernel hears nothing of what a learner types."""
    import zmq

    kernels = hub.children("ipykernel")
    assert len(kernels) >= COUNT
    listener = zmq.Context.instance().socket(zmq.SUB)
    listener.subscribe(b"")
    for kernel in kernels:
        for one in kernel.net_connections("inet"):
            if one.status == "LISTEN":  # the kernel's own pipe for output of its children
                listener.connect(f"tcp://127.0.0.1:{one.laddr.port}")
    field = pages["L03"].locator(".seatwork-form").first.get_by_role("textbox")
    typed = field.input_value()
    field.fill("1.234")
    expect(pages["L03"].get_by_text("changed since you handed in")).to_be_visible(timeout=LOOSE)
    field.fill(typed)
    expect(pages["L03"].get_by_text("Nothing changed since.")).to_be_visible(timeout=LOOSE)
    assert listener.poll(1_000) == 0
    listener.close(linger=0)
    for kernel in kernels:
        assert '"transport": "ipc"' in Path(kernel.cmdline()[-1]).read_text()


def test_whoever_is_not_of_the_class_stays_out(hub: Hub, chromium) -> None:
    """A code that is not in the class does not come in, the password known or not."""
    page = chromium.new_context().new_page()
    page.goto(f"{hub.url}/hub/login")
    page.fill("input[name=username]", "L99")
    page.fill("input[name=password]", hub.password)
    page.click("#login_submit")
    page.wait_for_load_state()
    assert "/user/" not in page.url
    assert not (hub.box / "l99").exists()
    page.context.close()


def test_a_killed_kernel_loses_nothing(hub: Hub, pages) -> None:
    """The kernel ends in the middle of work; the page goes on with the answers as they were."""
    before = answers.read(hub.box / "l01" / "L01-cones-1.json")
    (kernel,) = hub.children("ipykernel", "L01")
    kernel.kill()
    pages["L01"].wait_for_timeout(8_000)
    hub.open_sheet(pages["L01"], "L01")
    expect(pages["L01"].get_by_text("Nothing changed since.")).to_be_visible(timeout=LOOSE)
    field = pages["L01"].locator(".seatwork-form").first.get_by_role("textbox")
    expect(field).to_have_value(before.of("c1").parts[0])


def test_a_killed_server_loses_nothing(hub: Hub, pages) -> None:
    """The learner's whole server ends; started again it has every answer."""
    for one in hub.children("singleuser", "L02"):
        one.kill()
    page = pages["L02"]
    deadline = time.monotonic() + 120
    while time.monotonic() < deadline:  # the hub looks after its servers every half minute
        page.goto(f"{hub.url}/hub/spawn/l02")
        with suppress(Exception):
            page.wait_for_url(re.compile(r".*/user/l02/(doc|lab).*"), timeout=20_000)
            break
    hub.open_sheet(page, "L02")
    expect(page.get_by_text("Nothing changed since.")).to_be_visible(timeout=LOOSE)


def test_a_paper_in_anothers_folder_waits_for_a_person(hub: Hub, pages) -> None:
    """L02's paper in l01's folder is named, and nobody's mark changes."""
    copy = hub.box / "l01" / "L02-cones-1.json"
    shutil.copy(hub.box / "l02" / copy.name, copy)
    done = mark(hub.home / "course", sheets.load("cones"), hub.box, day=DAYS[1])
    assert (done.new, done.changed) == (0, 0)
    assert [one.doubt for one in done.marked if one.doubt] == ["L02's paper lies in L01's folder"]


def test_the_instructor_sees_who_is_there(hub: Hub, pages, chromium) -> None:
    """The instructor has a workbook and the list of people."""
    page = chromium.new_context(viewport={"width": 1280, "height": 720}).new_page()
    hub.log_in(page, "i1", f"{hub.password}-and-the-instructor")
    page.goto(f"{hub.url}/hub/admin")
    expect(page.get_by_text("l01", exact=True).first).to_be_visible(timeout=LOOSE)
    if PICTURES:
        page.screenshot(path=str(Path(PICTURES) / "hub_instructor.png"))
    assert not (hub.home / "homes/i1/seatwork-workbook/workbook.toml").read_text().count("hand_in")
    page.context.close()


SLOW_START = """
c.Spawner.cmd = ["sh", "-c", 'sleep 25; exec "$0" "$@"', *c.Spawner.cmd]
"""
"""A machine at its limit: a proxy that gives up after 20 s leaves the learner's page standing."""


def test_a_slow_start_is_waited_for(chromium, tmp_path: Path) -> None:
    """The page of a learner whose server takes long goes on to the workbook by itself."""
    with serving(tmp_path, SLOW_START) as hub:
        page = chromium.new_context().new_page()
        hub.log_in(page, "L01")
        page.context.close()
