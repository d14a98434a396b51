"""The chat vocabulary: every word that the bot understands, declared once."""
