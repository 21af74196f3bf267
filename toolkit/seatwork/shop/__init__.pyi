from seatwork.shop.folder import find as find
from seatwork.shop.house.cautions import Caution as Caution
from seatwork.shop.house.cautions import cautions as cautions
from seatwork.shop.house.cautions import closing as closing
from seatwork.shop.house.glossary import glossary as glossary
from seatwork.shop.house.house_rules import HouseRules as HouseRules
from seatwork.shop.house.house_rules import Rule as Rule
from seatwork.shop.house.house_rules import rules as rules
from seatwork.shop.house.wording import Wording as Wording
from seatwork.shop.house.wording import wording as wording
from seatwork.shop.lists.cutters import SeatCutter as SeatCutter
from seatwork.shop.lists.cutters import cutters as cutters
from seatwork.shop.lists.machines import ShopMachine as ShopMachine
from seatwork.shop.lists.machines import machines as machines
from seatwork.shop.lists.materials import Material as Material
from seatwork.shop.lists.materials import materials as materials
from seatwork.shop.shop import Shop as Shop

NAMES: dict[str, str]
__all__: list[str]
