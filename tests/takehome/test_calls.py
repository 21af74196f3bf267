"""Which bench a cell calls: read as written, never run."""

import pytest
from seatwork.takehome import bench_call


@pytest.mark.parametrize(
    ("source", "name", "values"),
    [
        ("sw.benches.triangle()", "triangle", {}),
        (
            'import seatwork as sw\nsw.benches.angles(cutter_angle=90, screw="M6", measure=True)',
            "angles",
            {"cutter_angle": 90, "screw": "M6", "measure": True},
        ),
        ("benches.speeds(hole=-1.5)", "speeds", {"hole": -1.5}),
    ],
)
def test_a_call_that_is_written_out_is_read(source: str, name: str, values: dict) -> None:
    """Texts, numbers, true and false by their names."""
    call = bench_call(source)
    assert (call.name, call.values) == (name, values)


@pytest.mark.parametrize(
    "source",
    [
        "sw.benches.angles(cutter_angle=mine)",
        "sw.benches.angles(cutter_angle=45 * 2)",
        "sw.benches.angles(**mine)",
        "sw.benches.angles(90)",
        'sw.benches.angles(screw=open("x").read())',
        "x = 1\nsw.benches.angles()",
        "sw.benches.my_part()",
        "sw.benches.nothing()",
        "sw.benches.__class__()",
        "other.angles()",
        'sw.pick("angle-eight")',
        "sw.benches.angles(",
        "",
        "(" * 5000,
        "\0",
    ],
)
def test_what_is_more_than_that_keeps_its_still(source: str) -> None:
    """Nothing is looked up, worked out or run for it."""
    assert bench_call(source) is None
