"""The term in a notebook: the class to click through, and the week by buttons."""
