"""Where the lessons come from."""

from pathlib import Path

from seatwork import opening
from seatwork.opening.origin import PACKAGE, originals


def test_a_project_folder_is_the_source_of_its_own_lessons(tmp_path: Path) -> None:
    """A package two folders below pyproject.toml and notebooks/ takes the lessons from there."""
    (tmp_path / "pyproject.toml").touch()
    (tmp_path / "notebooks").mkdir()
    assert opening.source(tmp_path / "toolkit" / "seatwork") == tmp_path


def test_a_package_alone_holds_its_lessons(tmp_path: Path) -> None:
    """Without a project around it the package takes the lessons packed with it."""
    package = tmp_path / "site-packages" / "seatwork"
    assert opening.source(package) == package / "workbook"


def test_another_project_around_the_package_is_not_taken_for_ours(tmp_path: Path) -> None:
    """A pyproject.toml without notebooks/ beside it is somebody else's."""
    (tmp_path / "pyproject.toml").touch()
    package = tmp_path / "site" / "seatwork"
    assert opening.source(package) == package / "workbook"


def test_the_source_holds_lessons_and_worksheets() -> None:
    """The folder found in this very installation has notebooks/ and exercises/."""
    assert {"notebooks", "exercises"} <= {path.name for path in opening.source().iterdir()}


def test_the_shop_lists_are_package_data() -> None:
    """The defaults of the shop lie in the package, in every kind of install."""
    assert opening.shop_defaults() == PACKAGE / "shop" / "defaults"
    assert opening.shop_defaults().is_dir()


def test_a_workbook_gets_the_files_of_its_shop() -> None:
    """House rules, wording and glossary are among what a workbook gets, as UTF-8 text."""
    given = dict(originals())
    assert {"shop/house_rules.toml", "shop/wording.toml", "shop/glossary.toml"} <= set(given)
    assert "format = 1" in given["shop/house_rules.toml"].decode()


def test_no_hidden_file_is_handed_out() -> None:
    """Checkpoints, caches and other hidden files stay behind."""
    assert not [place for place, _ in originals() if "/." in place or "/_" in place]
