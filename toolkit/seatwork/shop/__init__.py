"""The shop: its workbook folder, its house rules, its wording and its own lists.

``rules()`` gives the house rules in force; ``find()`` the workbook folder, or None.
The lists of cutters, machines and materials live in modules of their own.
"""

from seatwork.shop.folder import find
from seatwork.shop.house_rules import HouseRules, Rule, rules
from seatwork.shop.wording import Wording, wording

__all__ = ["HouseRules", "Rule", "Wording", "find", "rules", "wording"]
