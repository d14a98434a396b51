"""Use cases: what the bot does for the people in the room, told in units of work."""
