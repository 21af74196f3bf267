"""Now `seatwork.questions.type.slips`; own question types find it here for one version."""

import warnings

from seatwork.questions.type.slips import *  # noqa: F403

warnings.warn(
    "seatwork.questions.slips goes with the next version; import from seatwork.questions",
    DeprecationWarning,
    stacklevel=2,
)
