"""Schema changes from an empty database onward, run in order."""
