"""Drafts: one a chef in a kitchen, found by its message, gone when dropped."""

from dataclasses import replace

from bot.services.ports.drill_records import Draft
from bot.storage.storage import SqlStorage
from tests.fakes import IME, KITCHEN_ROOM, MONDAY, NOOR, a_drill


async def test_a_chef_has_one_draft_in_a_kitchen(storage: SqlStorage) -> None:
    """A later one takes the place of the former; another chef's is another."""
    draft = Draft(room_id=KITCHEN_ROOM, author=IME, event_id="$draft", drill=a_drill())
    async with storage.begin() as work:
        parent = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        first = await work.drills.save_draft(draft)
        assert await work.drills.draft(KITCHEN_ROOM, IME) == first == replace(draft, id=first.id)
        second = await work.drills.save_draft(replace(draft, event_id="$again", parent=parent.spec_id))
        other = await work.drills.save_draft(replace(draft, author=NOOR, event_id="$hers"))
        assert await work.drills.draft(KITCHEN_ROOM, IME) == second
        assert await work.drills.draft_of_event("$draft") is None
        assert await work.drills.draft_of_event("$again") == second
        await work.drills.drop_draft(second.id)
        assert await work.drills.draft(KITCHEN_ROOM, IME) is None
        assert await work.drills.draft(KITCHEN_ROOM, NOOR) == other


async def test_an_edited_draft_is_saved_over_itself(storage: SqlStorage) -> None:
    """Saving a stored draft again keeps one draft."""
    draft = Draft(room_id=KITCHEN_ROOM, author=IME, event_id="$draft", drill=a_drill())
    async with storage.begin() as work:
        first = await work.drills.save_draft(draft)
        changed = await work.drills.save_draft(replace(first, drill=a_drill(number=3)))
        assert await work.drills.draft_of_event("$draft") == changed
        assert changed.drill.number == 3
