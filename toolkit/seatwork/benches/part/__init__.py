"""The page of one's own part: its state, what comes of it, where it is kept, how it looks."""
