"""Kinds of computers that a stick serves, by the words that wheels and requirements know."""

from dataclasses import dataclass

from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True)
class Computer:
    """A kind of computer.

    Parameters
    ----------
    tags : tuple of str
        Platform tags of wheels that run there, as in their file names.
    system, platform, family, machine : str
        ``platform_system``, ``sys_platform``, ``os_name`` and ``platform_machine`` of its Python.
    """

    tags: tuple[str, ...]
    system: str
    platform: str
    family: str
    machine: str

    def environment(self, python: str, extra: str) -> dict[str, str]:
        """Return what the markers of requirements are judged by there.

        Parameters
        ----------
        python, extra : str
            Version such as "3.12", and the extra that is asked for.
        """
        return {
            "os_name": self.family,
            "sys_platform": self.platform,
            "platform_system": self.system,
            "platform_machine": self.machine,
            "platform_python_implementation": "CPython",
            "implementation_name": "cpython",
            "python_version": python,
            "python_full_version": f"{python}.0",
            "implementation_version": f"{python}.0",
            "platform_release": "",
            "platform_version": "",
            "extra": extra,
        }


COMPUTERS = {
    "linux": Computer(
        tags=("manylinux_2_28_x86_64", "manylinux_2_17_x86_64", "manylinux2014_x86_64"),
        system="Linux",
        platform="linux",
        family="posix",
        machine="x86_64",
    ),
    "windows": Computer(
        tags=("win_amd64",), system="Windows", platform="win32", family="nt", machine="AMD64"
    ),
    "mac": Computer(
        tags=("macosx_14_0_arm64",),
        system="Darwin",
        platform="darwin",
        family="posix",
        machine="arm64",
    ),
    "mac-intel": Computer(
        tags=("macosx_14_0_x86_64",),
        system="Darwin",
        platform="darwin",
        family="posix",
        machine="x86_64",
    ),
}
PYTHONS = ("3.11", "3.12", "3.13")
UNTRIED = ("windows", "mac", "mac-intel")
"""Computers on which nobody has run an install from a stick yet."""


def computer(name: str) -> Computer:
    """Return a kind of computer by its name.

    Raises
    ------
    SeatworkError
        If there is no such kind.
    """
    if name not in COMPUTERS:
        raise SeatworkError(name, "no such kind of computer", f"name {', '.join(COMPUTERS)}")
    return COMPUTERS[name]


def python_version(text: str) -> str:
    """Return a version of Python that seatwork runs on.

    Raises
    ------
    SeatworkError
        For any other.
    """
    if text not in PYTHONS:
        raise SeatworkError(text, "no version for a stick", f"name {', '.join(PYTHONS)}")
    return text
