"""The week of an instructor by buttons: hand out, take in, mark, look, decide, print."""
