"""Question types, one a file."""
