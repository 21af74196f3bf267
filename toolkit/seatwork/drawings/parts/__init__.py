"""What pictures show: plates, heads, holes, cutters."""
