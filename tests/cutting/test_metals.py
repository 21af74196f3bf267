"""What the metal asks for."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError


@pytest.mark.parametrize(
    ("rake", "tangential", "normal"),
    [(-10, 2414, 2414), (0, 1921, 1345), (5, 1732, 1000), (10, 1570, 732), (15, 1428, 520)],
)
def test_rake_on_the_shear_plane(rake: float, tangential: float, normal: float) -> None:
    """Merchant's shear plane at 500 MPa and 35° of friction, from the model notes, to 1 MPa."""
    found = cutting.shear_plane(shear_stress=500, friction_angle=35, rake=rake)
    assert found.tangential == pytest.approx(tangential, abs=1)
    assert found.normal == pytest.approx(normal, abs=1)


@given(thin=st.floats(0.001, 0.5), more=st.floats(0.001, 0.5))
def test_thin_chips_cut_harder(thin: float, more: float) -> None:
    """The thinner the chip the higher the specific force."""
    force = {"main_value": 1500.0, "exponent": 0.25}
    harder = cutting.specific_force(chip_thickness=thin, **force)
    assert harder > cutting.specific_force(chip_thickness=thin + more, **force)


def test_too_much_rake_is_refused() -> None:
    """Rake beyond the friction angle has no shear plane."""
    with pytest.raises(SeatworkError, match="take a smaller rake"):
        cutting.shear_plane(shear_stress=500, friction_angle=35, rake=36)


@pytest.mark.parametrize("change", [{"exponent": 1.0}, {"rake": 45.0}, {"chip_thickness": 0.0}])
def test_no_force_outside_the_rule(change: dict[str, float]) -> None:
    """Kienzle's rule is refused outside its range."""
    good = {"main_value": 1500.0, "exponent": 0.25, "chip_thickness": 0.1}
    with pytest.raises(SeatworkError):
        cutting.specific_force(**{**good, **change})
