"""The stand-in for the slow grammars: put in early, and the real ones still answer."""

import json
import subprocess
import sys

import pytest

FACTS = {
    # RFC 3987, section 1.3 and 2.2: an IRI may hold letters of any script, and no space
    "iri": {"https://example.org/rosé": True, "https://example.org/a b": False},
    "iri_reference": {"../rosé#top": True, "a b": False},
}


def said(script: str) -> object:
    """Run a script in a new Python and read what it prints last, as JSON."""
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True
    )
    return json.loads(done.stdout.splitlines()[-1])


@pytest.mark.slow
def test_the_real_grammars_still_answer() -> None:
    """Through jsonschema, which reads its function at import, each address is judged rightly."""
    told = said(
        "import json, sys\n"
        "from seatwork import deferred\n"
        "deferred.put_off_grammars()\n"
        "import jsonschema\n"
        "late = type(sys.modules[deferred.NAME]) is deferred.Deferred\n"
        "ask = jsonschema.FormatChecker().conforms\n"
        f"facts = json.loads({json.dumps(json.dumps(FACTS))})\n"
        "found = {k: {t: ask(t, k.replace('_', '-')) for t in v} for k, v in facts.items()}\n"
        "real = type(sys.modules[deferred.NAME]) is not deferred.Deferred\n"
        "print(json.dumps([late, found, real]))\n"
    )
    assert told == [True, FACTS, True]


@pytest.mark.slow
def test_other_names_come_from_the_real_module() -> None:
    """Whoever wants another name of the module gets the real one."""
    told = said(
        "import json\n"
        "from seatwork.deferred import put_off_grammars\n"
        "put_off_grammars()\n"
        "import rfc3987_syntax\n"
        "print(json.dumps('iri' in rfc3987_syntax.RFC3987_SYNTAX_TERMS))\n"
    )
    assert told is True


@pytest.mark.slow
@pytest.mark.parametrize(
    "before",
    ["import rfc3987_syntax", "import sys; sys.path[:] = [sys.path[-1]]; sys.meta_path.clear()"],
)
def test_a_module_already_loaded_or_missing_is_left_alone(before: str) -> None:
    """Nothing stands in for a module that is there, or for one that is not installed."""
    told = said(
        "import json, sys\n"
        "from seatwork import deferred\n"
        f"{before}\n"
        "deferred.put_off_grammars()\n"
        "stands = type(sys.modules.get(deferred.NAME)) is deferred.Deferred\n"
        "print(json.dumps(stands))\n"
    )
    assert told is False


@pytest.mark.slow
@pytest.mark.parametrize(
    "steps",
    [
        "from seatwork.opening.export import _read\nimport pathlib\n"
        "try: _read(pathlib.Path('nowhere'))\nexcept Exception: pass",
        "import pytest\npytest.main(['-p', 'seatwork.deferred', '--co', '-q', 'nowhere'])",
    ],
)
def test_the_grammars_are_not_built(steps: str) -> None:
    """Export and pytest with nbval load notebooks without building the grammars."""
    told = said(
        f"import json, sys\n{steps}\n"
        "print(json.dumps(['nbformat' in sys.modules, 'rfc3987_syntax.utils' in sys.modules]))\n"
    )
    assert told == [True, False]
