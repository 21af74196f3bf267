"""What a newcomer meets: the server that ``seatwork open`` starts, seen in a real browser."""

import re

FIRST = "notebooks/first_try.ipynb"
SLIDER = """
import ipywidgets as w
depth = w.IntSlider(min=0, max=100, value=50, description='depth')
label = w.Label('depth 50'); label.add_class('told')
depth.observe(lambda change: setattr(label, 'value', f'depth {change.new}'), 'value')
w.VBox([depth, label])
"""


def test_a_notebook_runs_and_its_slider_moves(lab, page):
    """A slider in a notebook answers the keyboard, in a page free of errors."""
    lab.open(page, lab.write(FIRST, [SLIDER]))
    lab.run_all(page)
    handle = lab.slider(page, "depth")
    handle.focus()
    page.keyboard.press("ArrowRight")
    page.locator(".told", has_text=re.compile("depth 51")).wait_for()
    assert handle.get_attribute("aria-valuetext") == "51"
