"""How the house does it: its rules, its wording, its cautions and its glossary."""
