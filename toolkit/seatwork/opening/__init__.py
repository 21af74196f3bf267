"""Opening: the workbook folder, and JupyterLab started on it.

``source`` finds the lessons as they came; ``deliver`` lays them out in a workbook
folder; ``seatwork.opening.lab`` starts JupyterLab there; ``seatwork.live.server``
is the part that server loads; ``seatwork.opening.doctor`` looks at the installation.
"""

from seatwork.opening.origin import shop_defaults, source
from seatwork.opening.workbook import Delivery, deliver

__all__ = ["Delivery", "deliver", "shop_defaults", "source"]
