"""A kitchen's room is replaced: everything moves once, whatever arrives first, and nothing moves on a forged word.

Power levels: Matrix specification, client-server API, m.room.power_levels and m.room.tombstone (read from memory).
"""

from collections.abc import AsyncIterator, Sequence
from dataclasses import replace
from itertools import permutations

import pytest

from bot.services.faults import Faults
from bot.services.ports.events import Incoming, Membership, RoomState, StateType
from bot.services.ports.messages import Cause
from bot.services.ports.records import Kitchen
from bot.services.speaker import Speaker
from tests.chat import COOKS, KITCHEN, Chat, rope_coil, user

NEW = "!new-kitchen:tern.example"
BOT = "@platepace:tern.example"
MOVED = "The kitchen has moved here: drills, results and posts go on as before."


@pytest.fixture
async def chat() -> AsyncIterator[Chat]:
    """Rope coil is live, Noor has a run and the place of a sous, Tuesdays are planned."""
    async with rope_coil() as chat:
        await chat.run("noor", "3:02 8/8")
        await chat.say("ime", "!role @noor sous")
        await chat.say("ime", "!post 5 tue 15:00")
        yield chat


def state(chat: Chat, room: str, kind: StateType, content: dict[str, object], sender: str = "ime") -> RoomState:
    """A state event of a room."""
    return RoomState(
        event_id=chat.stage.new_id(), room_id=room, sender=user(sender), sent_at=chat.now, type=kind, content=content
    )


def comes(chat: Chat, person: str, room: str = NEW) -> Membership:
    """Somebody comes into a room."""
    return Membership(
        event_id=chat.stage.new_id(),
        room_id=room,
        sender=user(person),
        sent_at=chat.now,
        person=user(person),
        state="join",
        name=person.capitalize(),
    )


def goes(chat: Chat, person: str, room: str = KITCHEN) -> Membership:
    """Somebody goes out of a room."""
    return replace(comes(chat, person, room), state="leave")


def tombstone(chat: Chat, sender: str = "ime") -> RoomState:
    """The old room is declared replaced."""
    return state(chat, KITCHEN, "m.room.tombstone", {"body": "moved", "replacement_room": NEW}, sender)


def creation(chat: Chat, predecessor: str | None = KITCHEN, version: str = "12") -> RoomState:
    """The new room is made."""
    named: dict[str, object] = {"predecessor": {"room_id": predecessor}} if predecessor else {}
    return state(chat, NEW, "m.room.create", {"room_version": version} | named)


async def happens(chat: Chat, events: Sequence[Incoming]) -> list[tuple[str, str]]:
    """These events come in at once; what the bot says or does to it, with its room."""
    heard = await chat.stage.take_now(*events)
    return [(said.room_id, said.note.text or said.note.style) for said in heard]


async def moves(chat: Chat) -> None:
    """The kitchen moves."""
    await happens(chat, [tombstone(chat), creation(chat), comes(chat, BOT)])
    assert await kitchens(chat) == {NEW}


async def kitchens(chat: Chat) -> set[str]:
    """The rooms of the kitchens that the bot is in."""
    async with chat.stage.storage.begin() as work:
        return {kitchen.room_id for kitchen in await work.kitchens.all()}


@pytest.mark.parametrize("order", [order for order in permutations(range(3)) if order.index(1) < order.index(2)])
async def test_everything_moves_once_whatever_comes_first(chat: Chat, order: tuple[int, ...]) -> None:
    """Tombstone before, between or after the new room's making and the bot's joining; once more moves nothing."""
    events: list[Incoming] = [tombstone(chat), creation(chat), comes(chat, BOT)]
    said = await happens(chat, [events[place] for place in order])
    line = f"{MOVED} Open: 6, with results in this thread or anywhere in the room."
    assert sorted(said) == sorted([(NEW, "join"), (NEW, line)])
    assert await happens(chat, [tombstone(chat), comes(chat, BOT)]) == []
    assert await kitchens(chat) == {NEW}
    await happens(chat, [comes(chat, "noor"), comes(chat, "ime"), comes(chat, "lio")])
    (best,) = await chat.say("noor", "!best", room=NEW)
    assert "3:02" in best
    (roles,) = await chat.say("ime", "!role", room=NEW)
    assert "Noor" in roles
    (posts,) = await chat.say("ime", "!post", room=NEW)
    assert posts.startswith("1. Tuesday 15:00 (Europe/London): drill 5")


async def test_results_go_on_in_the_new_room(chat: Chat) -> None:
    """In the thread of the line that said so, and without being counted in anew."""
    heard = await chat.stage.take_now(tombstone(chat), creation(chat), comes(chat, BOT), comes(chat, "lio"))
    line = next(said.event_id for said in heard if said.note.style == "notice")
    (told,) = await chat.say("lio", "3:10 8/8", room=NEW, thread=line)
    assert told.startswith("Heard. 3:10, 8 of 8.")
    assert {said.note.thread for said in chat.heard if said.note.text} == {line}


@pytest.mark.parametrize(
    ("levels", "sender", "counts"),
    [
        ({"users": {user("ime"): 100}}, "noor", False),
        ({"users": {user("ime"): 100, user("noor"): 50}}, "noor", True),
        ({"users": {user("ime"): 100, user("noor"): 50}, "state_default": 60}, "noor", False),
        ({"users": {user("noor"): 50}, "events": {"m.room.tombstone": 100}}, "noor", False),
        ({"users": {user("noor"): 50}, "events": {"m.room.tombstone": "none"}}, "noor", False),
        ({"events": {"m.room.tombstone": 0}}, "noor", True),
        ({}, "ime", False),
    ],
)
async def test_a_tombstone_counts_by_the_power_of_its_sender(
    chat: Chat, levels: dict[str, object], sender: str, counts: bool
) -> None:
    """The level named for it goes before the one for all state; without either 50; one unreadable nobody has."""
    await happens(chat, [state(chat, KITCHEN, "m.room.power_levels", levels)])
    await happens(chat, [tombstone(chat, sender), creation(chat), comes(chat, BOT)])
    assert await kitchens(chat) == {NEW if counts else KITCHEN}


@pytest.mark.parametrize(
    ("version", "invite", "counts"), [("12", 50, True), ("11", 50, False), ("11", 0, True), ("12", "odd", False)]
)
async def test_who_declared_it_may_invite_in_the_new_room(
    chat: Chat, version: str, invite: object, counts: bool
) -> None:
    """By level, or in a version 12 room as its creator."""
    levels = state(chat, NEW, "m.room.power_levels", {"users": {}, "invite": invite})
    await happens(chat, [tombstone(chat), creation(chat, version=version), levels, comes(chat, BOT)])
    assert await kitchens(chat) == {NEW if counts else KITCHEN}


async def test_a_room_that_does_not_name_the_old_one_is_left(chat: Chat) -> None:
    """Nothing moves, and no second kitchen is opened."""
    said = await happens(chat, [tombstone(chat), creation(chat, None), comes(chat, BOT)])
    assert said == [(NEW, "join"), (NEW, "leave")]
    assert await kitchens(chat) == {KITCHEN}


async def test_a_room_that_names_the_old_one_without_its_word_opens_nothing(chat: Chat) -> None:
    """Whoever makes a room can name any other as the one it replaces."""
    assert await happens(chat, [creation(chat), comes(chat, BOT)]) == []
    assert await kitchens(chat) == {KITCHEN}


async def test_an_invitation_to_the_replacement_is_accepted_from_anybody(chat: Chat) -> None:
    """The room that they invite to is the kitchen's own; to any other room it is left alone."""
    await happens(chat, [tombstone(chat)])
    invitation = replace(comes(chat, BOT), sender=user("noor"), state="invite")
    assert await happens(chat, [invitation]) == [(NEW, "join")]
    other = replace(invitation, event_id="$other", room_id="!other:tern.example")
    assert await happens(chat, [other]) == []


async def test_two_upgrades_while_the_bot_was_away(chat: Chat) -> None:
    """The room in between is given up when the bot comes to it; the kitchen goes on to the last and says so there."""
    last = "!last:tern.example"
    gone = state(chat, NEW, "m.room.tombstone", {"replacement_room": last})
    said = await happens(chat, [tombstone(chat), creation(chat), gone, comes(chat, BOT)])
    assert said == [(NEW, "join"), (last, "join")]
    made = state(chat, last, "m.room.create", {"room_version": "12", "predecessor": {"room_id": NEW}})
    assert [room for room, words in await happens(chat, [made, comes(chat, BOT, last)]) if MOVED in words] == [last]
    assert await kitchens(chat) == {last}
    await chat.say("lio", "3:10 8/8")
    assert {said.room_id for said in chat.heard if said.note.text} == {last}


async def test_who_is_not_there_yet_is_nobodys_mate(chat: Chat) -> None:
    """Until they come, those of the old room count as having left; then they are who they were."""
    await moves(chat)
    await happens(chat, [comes(chat, "lio")])
    (asked,) = await chat.say("lio", "2:58 8/8 for noor", room=NEW)
    assert asked.startswith("I cannot tell who noor is here.")
    await happens(chat, [comes(chat, "noor")])
    assert await chat.say("lio", "2:58 8/8 for noor", room=NEW) == ["Waiting for Noor to say yes."]


async def test_what_is_read_late_from_the_old_room_is_not_lost(chat: Chat) -> None:
    """A result whose key came after the move, or that was still sent there, is taken and answered in the new room."""
    await moves(chat)
    (told,) = await chat.say("lio", "3:10 8/8")
    assert told.startswith("Heard. 3:10")
    assert {said.room_id for said in chat.heard if said.note.text} == {NEW}
    await chat.edit("lio", chat.last, "3:20 8/8")
    (best,) = await chat.say("lio", "!best", room=NEW)
    assert "3:20" in best


async def test_what_was_not_sent_yet_goes_to_the_new_room(chat: Chat) -> None:
    """A post never tried moves with its pin; one tried, or a memo pad on something in the old room, does not."""
    async with chat.stage.storage.begin() as work:
        speaker = Speaker(work, Cause(event_id="close:1"))
        await speaker.notice(KITCHEN, "Tried.")
        post = await speaker.post(KITCHEN, "Rope coil is closed.")
        await speaker.pin(KITCHEN, post, None)
        await speaker.noted(KITCHEN, "$said")
        head = (await work.outbox.head(KITCHEN, 1))[0]
        assert await work.outbox.lease(head.id, [], head.note, chat.now)
        await work.moves.carry_over(KITCHEN, NEW, await speaker.notice(NEW, MOVED))
        assert {lane for lane, _ in await work.outbox.lanes()} == {KITCHEN, f"{KITCHEN}#ack", NEW}
        assert [one.note.text for one in await work.outbox.head(KITCHEN, 9)] == ["Tried."]
        moved = [(one.note.to, one.note.text or one.note.target) for one in await work.outbox.head(NEW, 9)]
        assert moved == [(NEW, "Rope coil is closed."), (NEW, post), (NEW, MOVED)]


async def test_what_the_old_room_refuses_is_said_in_the_new_one(chat: Chat) -> None:
    """It was tried before the move, so until the refusal nobody knew whether it was said."""
    async with chat.stage.storage.begin() as work:
        await Speaker(work, Cause(event_id="close:1")).notice(KITCHEN, "Tried.")
        head = (await work.outbox.head(KITCHEN, 1))[0]
        assert await work.outbox.lease(head.id, [], head.note, chat.now)
    async with chat.stage.storage.begin() as work:
        for event in (tombstone(chat), creation(chat)):
            await work.kitchens.save_state(event.room_id, event.type, event.content, event.sender)
        await work.moves.carry_over(KITCHEN, NEW, await Speaker(work, Cause(event_id="$line")).notice(NEW, MOVED))
        await work.outbox.bury(head.id, "403")
        await Faults(chat.stage.house, chat.stage.storage).tell_dead(work, head, "403")
        assert [one.note.text for one in await work.outbox.head(NEW, 9)] == [MOVED, "Tried."]


async def test_a_kitchen_of_its_own_is_not_overrun(chat: Chat) -> None:
    """Where the replacement is a kitchen already, both stay as they are."""
    async with chat.stage.storage.begin() as work:
        await work.kitchens.save(Kitchen(room_id=NEW, name="Upper Lock", opened_at=chat.now))
    await happens(chat, [creation(chat), comes(chat, BOT), tombstone(chat)])
    assert await kitchens(chat) == {KITCHEN, NEW}


async def test_the_bot_leaves_a_room_in_which_it_is_alone(chat: Chat) -> None:
    """With the last one out, and not before."""
    people = ["ime", "bastian", *COOKS]
    assert await happens(chat, [goes(chat, name) for name in people[:-1]]) == []
    assert await happens(chat, [goes(chat, people[-1])]) == [(KITCHEN, "leave_if_empty")]


async def test_a_private_room_is_left_with_its_person(chat: Chat) -> None:
    """And the next private answer opens another."""
    private = await chat.stage.private_room(user("noor"))
    await happens(chat, [comes(chat, "noor", private), comes(chat, BOT, private)])
    assert await happens(chat, [goes(chat, "noor", private)]) == [(private, "leave_if_empty")]
    async with chat.stage.storage.begin() as work:
        assert await work.kitchens.private_room(user("noor")) is None
