"""What every picture is drawn with: pens, hatches, letters, lines, outlines."""
