"""What a bench is put together from: its controls, values and words, without a page."""
