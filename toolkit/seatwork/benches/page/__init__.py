"""A bench on the page: its rows, boxes and notes, and the view that ties them to a bench."""
