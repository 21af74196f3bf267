"""Tables of right calls and right commands stand beside the tests that spoil them."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
