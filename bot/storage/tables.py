"""Every table, by name, and the metadata that holds them.

Where a column holds a field of a record it bears the field's name, so that rows and records match. Only what a query
asks for is a column of its own; the rest of a record stays together as JSON.
"""

from bot.storage.columns import metadata
from bot.storage.drill_tables import (
    drafts,
    fits,
    fitted_weeks,
    frozen_boards,
    hands,
    live_drills,
    photo_checks,
    questions,
    runs,
    set_ups,
    specs,
    wordings,
)
from bot.storage.room_tables import (
    NEW,
    OPEN,
    inbox,
    kitchens,
    members,
    occurrences,
    outbox,
    private_rooms,
    room_states,
    schedules,
    sealed_events,
    sessions,
    sync_tokens,
)

__all__ = [
    "NEW",
    "OPEN",
    "drafts",
    "fits",
    "fitted_weeks",
    "frozen_boards",
    "hands",
    "inbox",
    "kitchens",
    "live_drills",
    "members",
    "metadata",
    "occurrences",
    "outbox",
    "photo_checks",
    "private_rooms",
    "questions",
    "room_states",
    "runs",
    "schedules",
    "sealed_events",
    "sessions",
    "set_ups",
    "specs",
    "sync_tokens",
    "wordings",
]
