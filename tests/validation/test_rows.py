"""The published rows themselves: each has a source, none is left unused."""

import sys
from collections import Counter
from pathlib import Path

import pytest


def test_every_row_has_a_source_and_says_how_it_is_confirmed(all_checks) -> None:
    """No expected value stands without a document, or without a word on its confirmation."""
    for rows in all_checks.values():
        for row in rows:
            assert row.source.strip(), row.id
            assert row.confirmed in ("two-source", "one-source", "memory"), row.id


def test_row_ids_are_unique(all_checks) -> None:
    """A row id names one published value."""
    counted = Counter(row.id for rows in all_checks.values() for row in rows)
    assert [name for name, count in counted.items() if count > 1] == []


def test_every_form_of_row_has_a_test(all_checks) -> None:
    """Each data file is read by one module, which tests every form of row in it."""
    modules = [path.read_text(encoding="utf-8") for path in Path(__file__).parent.glob("test_*.py")]
    for name, rows in all_checks.items():
        (module,) = [text for text in modules if f'\nDATA = "{name}"\n' in text]
        for form in {row.form for row in rows}:
            assert f"({form}_check" in module, (name, form)


def test_share_from_memory_is_told(
    all_checks, record_property, capsys: pytest.CaptureFixture[str]
) -> None:
    """Under a tenth of the published rows rest on memory; the share is printed."""
    grades = Counter(row.confirmed for rows in all_checks.values() for row in rows)
    share = grades["memory"] / grades.total()
    record_property("share_from_memory", share)
    with capsys.disabled():
        sys.stdout.write(f"\npublished rows: {dict(grades)}; from memory {share:.1%}\n")
    assert share < 0.10
