from seatwork.picks.asking import pick as pick

NAMES: dict[str, str]
__all__: list[str]
