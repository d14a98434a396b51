"""What is held about one person is found and erased alike in both databases."""

from bot.services.ports.events import Sealed
from bot.services.ports.records import Member
from bot.storage.storage import SqlStorage
from tests.chat import KITCHEN, MORNING, user


async def test_a_person_is_found_and_erased(storage: SqlStorage) -> None:
    """A member, a hand and a sealed message are held; erased, the member is a stranger and the rest gone."""
    noor = user("noor")
    sealed = Sealed(event_id="$s", room_id=KITCHEN, sender=noor, sent_at=MORNING, session_id="k", raw={})
    async with storage.begin() as work:
        await work.kitchens.save_member(
            Member(room_id=KITCHEN, user_id=noor, name="Noor", state="join", consent="in", role="sous", ready=(6,))
        )
        await work.runs.raise_hand("$run", noor, "$hand")
        await work.sealed.keep([sealed])
    async with storage.begin() as work:
        held = await work.persons.held(noor)
        assert held.keys() == {"member", "hand", "sealed_event"}
        assert held["hand"][0]["event_id"] == "$run"
        await work.persons.erase(noor)
    async with storage.begin() as work:
        assert await work.persons.held(noor) == {}
        stranger = Member(room_id=KITCHEN, user_id=noor, name="", state="join")
        assert await work.kitchens.member(KITCHEN, noor) == stranger
        assert await work.sealed.waiting() == []
