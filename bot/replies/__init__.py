"""What the bot says: domain results turned into a few short lines."""
