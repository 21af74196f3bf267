"""The shop: its workbook folder, its house rules, its words and its own lists.

``rules()`` gives the house rules in force; ``find()`` the workbook folder, or None.
"""

from seatwork.doors import doors

NAMES = {
    "folder": "find",
    "house.house_rules": "HouseRules Rule rules",
    "house.wording": "Wording wording",
    "house.cautions": "Caution cautions closing",
    "house.glossary": "glossary",
    "lists.cutters": "SeatCutter cutters",
    "lists.machines": "ShopMachine machines",
    "lists.materials": "Material materials",
    "shop": "Shop",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
