"""Now `seatwork.entries.measures`; own question types find it here for one version."""

import warnings

from seatwork.entries.measures import *  # noqa: F403

warnings.warn(
    "seatwork.questions.measures goes with the next version; import from seatwork.questions",
    DeprecationWarning,
    stacklevel=2,
)
