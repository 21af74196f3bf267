"""The benches: NAME_bench with the controls, NAME_sums what they come to, NAME_words what is said.

No bench imports another.
"""
