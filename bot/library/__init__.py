"""The standard seconds and the twelve drills of the Tern & Lantern, as data files."""
