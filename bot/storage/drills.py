"""Everything kept of drills, under the one name that the services know."""

from bot.storage.drafts import Drafts
from bot.storage.lives import Lives
from bot.storage.specs import Specs


class SqlDrills(Specs, Drafts, Lives):
    """Specs, set-ups, wordings, drafts, and the drills that are live."""
