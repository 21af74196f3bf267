"""Seeds are the keyed hashes the design names, checked against another program's."""

from seatwork.marking.seeds import PRACTICE_KEY, question_seed, sheet_seed


def test_seeds_equal_another_programs() -> None:
    """Both seeds were computed with ``openssl dgst -sha256 -hmac`` over the same JSON text."""
    seed = sheet_seed(PRACTICE_KEY, "L00", "cones", 1)
    assert seed.hex() == "c7e349523da265aa5add6f0a261e81dac7e844c1e3887896270fb31bdb0c6746"
    own = question_seed(seed, "c1", 1, 1)
    assert own.hex() == "af6f1be4489a4db0d44d93f551efc4a1f889908da2c060c2ca2500fa2cb68276"


def test_every_part_changes_the_seed() -> None:
    """Key, learner, sheet, form, question, attempt and version each count."""
    seeds = {
        sheet_seed(key, learner, sheet, form)
        for key in (b"a", b"b")
        for learner in ("L01", "L02")
        for sheet in ("cones", "angles")
        for form in (1, 2)
    }
    assert len(seeds) == 16
    own = {question_seed(b"a", q, a, v) for q in ("c1", "c2") for a in (1, 2) for v in (1, 2)}
    assert len(own) == 8
