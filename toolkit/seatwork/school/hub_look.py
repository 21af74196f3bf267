"""Looking a hub over: its programs, its door, its learners, its folders and its sockets."""

import os
import re
import shlex
import shutil
import stat
import sys
from collections.abc import Iterator
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from urllib.parse import urlsplit

from packaging.version import Version

from seatwork.opening import sockets
from seatwork.opening.checked import Check
from seatwork.school.hub_recipe import CONFIG, LEARNERS, PROXIES, SERVICE

NAME = re.compile(r"[a-z]\d{2,6}", re.ASCII)
DOOR = re.compile(r"""^DOOR = .*?["'](https?://[^"']+)["']\)""", re.MULTILINE)
PLACE = re.compile(r"""^(GIVEN|HAND_IN) = .*?["'](/[^"']+)["']""", re.MULTILINE)
SIGN_UP = "jupyterhub-nativeauthenticator"
NEWER, LAST_TRIED = Version("6"), Version("1.3")
"""From this hub on, sign-up pages up to this version fail at the log-in (tried: 6.1.1, 1.3.0)."""
STARTS = re.compile(r"""^ExecStart="([^"]+)" -m jupyterhub -f "([^"]+)"$""", re.MULTILINE)
AT_ONCE = re.compile(r"^c\.Authenticator\.allowed_users\b", re.MULTILINE)
HERE = ("127.0.0.1", "localhost", "::1")
MOST_NAMED = 6


def examine(folder: Path) -> Iterator[Check]:
    """Look at everything a hub needs, one check after the other.

    Parameters
    ----------
    folder : Path
        Where ``seatwork hub recipe`` wrote its files.
    """
    yield program()
    yield proxy()
    yield kernels()
    text = _text(folder / CONFIG)
    if text is None:
        fix = f"run: seatwork hub recipe {shlex.quote(str(folder))}"
        yield Check(name="hub recipe", found=f"no {CONFIG} in {folder}", fix=fix)
        return
    yield configuration(text)
    yield service(folder)
    yield door(text)
    yield approval(text, folder)
    names = (_text(folder / LEARNERS) or "").split()
    yield learners(names)
    yield accounts(names)
    yield closed("hub's own files", [folder, *folder.glob("*.sqlite"), folder / "cookie_secret"])
    yield closed("homes", [home for name in names if (home := _home(name))])
    yield folders(text)


def program() -> Check:
    """Look for JupyterHub and its sign-up page in this Python, in versions that work together."""
    fix = f'{sys.executable} -m pip install "jupyterhub>=5,<6" {SIGN_UP}'
    found = []
    for name in ("jupyterhub", SIGN_UP):
        try:
            found.append(f"{name} {version(name)}")
        except PackageNotFoundError:
            return Check(name="hub", found=f"{name} is not installed", fix=fix)
    told = ", ".join(found)
    if Version(version("jupyterhub")) >= NEWER and Version(version(SIGN_UP)) <= LAST_TRIED:
        return Check(name="hub", found=f"{told}: nobody could log in with these two", fix=fix)
    return Check(name="hub", found=told)


def proxy() -> Check:
    """Look for the proxy, on the path or beside this Python."""
    beside = (Path(sys.executable).with_name(name) for name in PROXIES)
    found = next(filter(None, map(shutil.which, PROXIES)), None)
    found = found or next((str(path) for path in beside if path.is_file()), None)
    if found:
        return Check(name="proxy", found=found)
    fix = f"npm install -g {PROXIES[0]}, or pip install {PROXIES[0]}"
    return Check(name="proxy", found=f"no {PROXIES[0]}", fix=fix)


def kernels() -> Check:
    """Look whether kernels can talk where no other account listens."""
    if sockets.socket_folder():
        return Check(name="sockets", found="kernels talk through files of each account")
    fix = "use Linux, and a TMPDIR whose name is short"
    return Check(name="sockets", found="none; learners' servers would not start", fix=fix)


def configuration(text: str) -> Check:
    """Look whether the configuration is Python; it is not run."""
    try:
        compile(text, CONFIG, "exec")
    except (SyntaxError, ValueError) as error:
        line = getattr(error, "lineno", None) or "?"
        return Check(name=CONFIG, found=f"line {line} is no Python", fix="write it anew")
    return Check(name=CONFIG, found="can be read")


def service(folder: Path) -> Check:
    """Look whether the service file starts this recipe, by a Python that is there.

    A folder that was moved or copied, and a Python that was installed anew elsewhere, leave one
    behind that starts another hub, or none.
    """
    found = STARTS.search(_text(folder / SERVICE) or "")
    if found is None:
        told, fix = f"no {SERVICE} as it was written", "write it anew, or look at its ExecStart"
    elif not os.access(found[1], os.X_OK):
        told, fix = f"its Python is not there: {found[1]}", _anew(folder)
    elif Path(found[2]) != folder.absolute() / CONFIG:
        told, fix = f"it starts another recipe: {found[2]}", _anew(folder)
    else:
        told, fix = "starts this recipe", ""
    return Check(name="service file", found=told, fix=fix)


def door(text: str) -> Check:
    """Look whether the hub answers this machine alone, so that HTTPS stands in front."""
    found = DOOR.search(text)
    address = os.environ.get("SEATWORK_HUB_URL") or (found[1] if found else "")
    if not address:
        return Check(name="door", found="the line DOOR is not as it was written; look at it")
    try:
        parts = urlsplit(address)
        is_here = parts.scheme == "https" or parts.hostname in HERE
    except ValueError:
        is_here = False
    fix = "" if is_here else "write http://127.0.0.1:8000, and let a web server bring HTTPS"
    told = address if is_here else f"{address}: passwords would go over the network in the open"
    return Check(name="door", found=told, fix=fix)


def approval(text: str, folder: Path) -> Check:
    """Look whether a learner who signs up waits for the instructor.

    The sign-up page lets whoever stands in ``allowed_users`` in at once.
    """
    if not AT_ONCE.search(text):
        return Check(name="sign-up", found="each waits until the instructor lets in")
    told = "whoever signs up first with a code of the class comes in, without the instructor"
    return Check(name="sign-up", found=told, fix=f"{_anew(folder)}, then start the hub anew")


def learners(names: list[str]) -> Check:
    """Look at the list of those who may come in: codes, each once."""
    wrong = [name for name in names if not NAME.fullmatch(name)]
    twice = sorted({name for name in names if names.count(name) > 1})
    if not names:
        return Check(name="learners", found="nobody may come in", fix=f"write codes in {LEARNERS}")
    if wrong or twice:
        told = f"no code, or there twice: {' '.join((wrong + twice)[:MOST_NAMED])!a}"
        return Check(name="learners", found=told, fix="write each once and small, such as l07")
    return Check(name="learners", found=f"{len(names)} codes")


def accounts(names: list[str]) -> Check:
    """Look for the system account of each learner."""
    missing = [name for name in names if _home(name) is None]
    if not missing:
        return Check(name="accounts", found="one for each code" if names else "none needed yet")
    more = f" and {len(missing) - MOST_NAMED} more" if len(missing) > MOST_NAMED else ""
    told = f"this machine has no account {' '.join(missing[:MOST_NAMED])}{more}"
    return Check(name="accounts", found=told, fix="make them: README.md, Once, step 1")


def closed(name: str, places: list[Path]) -> Check:
    """Look whether other accounts are kept out of files and folders."""
    open_ones = [place for place in places if place.exists() and _mode(place) & 0o077]
    if not open_ones:
        return Check(name=name, found="closed to other accounts")
    told = " ".join(shlex.quote(str(place)) for place in open_ones[:MOST_NAMED])
    return Check(name=name, found=f"others may look into {told}", fix=f"run: chmod go= {told}")


def folders(text: str) -> Check:
    """Look whether learners can look into each other's papers, handed out or handed in."""
    places = {name: Path(place) for name, place in PLACE.findall(text)}
    missing = [str(place) for place in places.values() if not place.is_dir()]
    if missing or not places:
        told = f"not there: {' '.join(missing) or 'GIVEN, HAND_IN'}"
        return Check(name="papers", found=told, fix="make them: README.md, Once, step 3")
    written = [str(place) for place in places.values() if _mode(place) & 0o002]
    if written:
        told = " ".join(map(shlex.quote, written))
        said = f"every account may write in {told}, and take folders away"
        return Check(name="papers", found=said, fix=f"run: chmod o-w {told}")
    inner = [path for place in places.values() for path in place.iterdir() if path.is_dir()]
    open_ones = [str(path) for path in inner if _mode(path) & 0o007]
    if open_ones:
        told = " ".join(map(shlex.quote, open_ones[:MOST_NAMED]))
        return Check(name="papers", found=f"open to all: {told}", fix=f"run: chmod o= {told}")
    strange = [
        path for path in inner if path.parent == places.get("HAND_IN") and _is_anothers(path)
    ]
    if strange:
        told = " ".join(shlex.quote(str(path)) for path in strange[:MOST_NAMED])
        fix = "give each to the account of its name: chown l07 .../l07"
        return Check(name="papers", found=f"another account's: {told}", fix=fix)
    return Check(name="papers", found=f"{len(inner)} folders, each closed to other learners")


def _is_anothers(box: Path) -> bool:
    """Whether a hand-in folder belongs to another account than that of its name, if there is one.

    The folder says who was logged in, so what is in it is believed of that account.
    """
    try:
        import pwd

        return pwd.getpwnam(box.name).pw_uid != box.stat().st_uid
    except (ImportError, KeyError):
        return False


def _anew(folder: Path) -> str:
    return f"run: seatwork hub recipe {shlex.quote(str(folder))} --replace"


def _home(name: str) -> Path | None:
    try:
        import pwd

        return Path(pwd.getpwnam(name).pw_dir)
    except (ImportError, KeyError):
        return None


def _mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def _text(path: Path) -> str | None:
    try:
        return path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        return None
