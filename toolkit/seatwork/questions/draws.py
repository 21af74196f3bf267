"""Now `seatwork.questions.type.draws`; own question types find it here for one version."""

import warnings

from seatwork.questions.type.draws import *  # noqa: F403

warnings.warn(
    "seatwork.questions.draws goes with the next version; import from seatwork.questions",
    DeprecationWarning,
    stacklevel=2,
)
