"""What the bot asks the homeserver to tell it of, and what to leave out."""

from bot.matrix.events import SPOKEN, STATE

_TIMELINE_LIMIT = 100
_NOTHING: dict[str, object] = {"types": []}
PAST: dict[str, object] = {"types": (*SPOKEN, *STATE)}
NEWS: dict[str, object] = {
    "presence": _NOTHING,
    "account_data": _NOTHING,
    "room": {
        # Members are never loaded lazily: who is in the room, under which name and since when is what boards, turnout
        # and rights are made of, and a lazy server leaves out whoever has said nothing yet.
        "state": {"types": STATE, "lazy_load_members": False},
        "timeline": {"types": (*SPOKEN, *STATE), "limit": _TIMELINE_LIMIT},
        "ephemeral": _NOTHING,
        "account_data": _NOTHING,
    },
}
# A filter that names no room would leave out the invitations too (Synapse 1.163).
INVITATIONS = NEWS | {"room": dict.fromkeys(("state", "timeline", "ephemeral", "account_data"), _NOTHING)}
