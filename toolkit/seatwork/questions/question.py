"""Now `seatwork.questions.type.question`; own question types find it here for one version."""

import warnings

from seatwork.questions.type.question import *  # noqa: F403

warnings.warn(
    "seatwork.questions.question goes with the next version; import from seatwork.questions",
    DeprecationWarning,
    stacklevel=2,
)
