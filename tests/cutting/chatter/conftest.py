"""Parameter sets of the chatter proofs, named as the tests name them."""

from collections.abc import Callable

import pytest
from seatwork import cutting


@pytest.fixture(scope="session")
def axial_set() -> cutting.Machine:
    """Set Ax: quill or column of a drill press, 8 N/um, 250 Hz, 4 %; assumed, no tap test."""
    return cutting.Machine(stiffness=8e6, natural_frequency=250, damping_ratio=0.04)


@pytest.fixture(scope="session")
def lateral_set() -> cutting.Machine:
    """Set L: spindle of a good drill press, 8 N/um, 350 Hz, 3 %; assumed, no tap test."""
    return cutting.Machine(
        stiffness=8e6, natural_frequency=350, damping_ratio=0.03, direction="lateral"
    )


@pytest.fixture(scope="session")
def steel() -> Callable[..., cutting.Cut]:
    """Steel of 500 MPa on a 9 mm mean diameter, by rake and process damping."""

    def cut(rake: float = 0.0, process_damping: float = 0.0) -> cutting.Cut:
        metal = cutting.shear_plane(shear_stress=500, friction_angle=35, rake=rake)
        return cutting.Cut(
            normal_coefficient=1e6 * metal.normal,
            tangential_coefficient=1e6 * metal.tangential,
            mean_diameter=9,
            process_damping=process_damping,
        )

    return cut


@pytest.fixture(scope="session")
def lips() -> Callable[..., cutting.Cutter]:
    """Cutters of 82° by number of lips."""

    def cutter(flutes: int, **more: object) -> cutting.Cutter:
        return cutting.Cutter(flutes=flutes, included_angle=82, **more)

    return cutter
