"""One scene a file: what a bench shows."""
