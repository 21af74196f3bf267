"""What runs in the page's own Python: data in, data out."""
