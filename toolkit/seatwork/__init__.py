"""A teaching workbook and widget kit for cutting seats for fasteners.

Rooms, from the ground up: ``units``, ``seats``, ``cutting``, ``tables``; ``shop``,
``hardware``, ``notes``; ``plan``, ``inspection``, ``drawings``; ``questions``,
``marking``, ``cards``; ``benches``, ``worksheet``. Nothing is loaded before it is needed.
"""

__version__ = "0.1.0"
