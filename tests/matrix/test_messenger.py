"""The messenger makes events of notes and tells a refusal from a formality; examples are constructed."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import pytest

from bot.matrix.faults import Refused
from bot.matrix.messenger import RoomMessenger
from bot.matrix.wire import Page, RawEvent
from bot.services.ports.messages import EventRef, Waiting
from tests.fakes import KITCHEN_ROOM, MONDAY, NOOR, a_note
from tests.matrix.fakes import BOT, Reports, raw_event, raw_message

NOON_S = MONDAY.timestamp()


@dataclass
class Room:
    """A homeserver with its state and its past; ``refusals`` are raised by what is asked, by kind."""

    user_id: str = BOT
    states: dict[tuple[str, str, str], dict[str, object]] = field(default_factory=dict)
    creations: dict[str, RawEvent] = field(default_factory=dict)
    refusals: dict[str, Refused] = field(default_factory=dict)
    sent: list[tuple[str, dict[str, Any], str]] = field(default_factory=list)
    reactions: Page = field(default_factory=Page)
    pages: list[Page] = field(default_factory=list)
    made: list[Mapping[str, object]] = field(default_factory=list)
    rooms: list[str] = field(default_factory=list)
    people: list[str] = field(default_factory=list)
    went: list[tuple[str, str, str]] = field(default_factory=list)

    async def send(self, room_id: str, event_type: str, content: Mapping[str, object], txn_id: str) -> str:
        """Keep it."""
        self._refuse(event_type if "m.relates_to" not in content else f"{event_type} in relation")
        self.sent.append((event_type, dict(content), txn_id))
        return f"${txn_id}"

    async def put_state(self, room_id: str, event_type: str, content: Mapping[str, object]) -> str:
        """Keep it."""
        self._refuse(event_type)
        self.states[room_id, event_type, ""] = dict(content)
        return "$pins"

    async def state(self, room_id: str, event_type: str, state_key: str = "") -> Mapping[str, object] | None:
        """What was kept."""
        return self.states.get((room_id, event_type, state_key))

    async def creation(self, room_id: str) -> RawEvent | None:
        """The event that made the room."""
        return self.creations.get(room_id)

    async def reactions_to(self, room_id: str, event_id: str) -> Page:
        """Those scripted."""
        return self.reactions

    async def past(
        self, room_id: str, start: str | None, end: str | None = None, *, only: Mapping[str, object]
    ) -> Page:
        """The page of that number."""
        assert only["senders"] == [BOT]
        return self.pages[int(start or 0)]

    async def create_room(self, order: Mapping[str, object]) -> str:
        """Keep the order."""
        self.made.append(order)
        return "!made:tern.example"

    async def joined_rooms(self) -> list[str]:
        """Those scripted."""
        return self.rooms

    async def join(self, room_id: str, through: str = "") -> None:
        """Come in."""
        self._refuse("join")
        self.went.append(("join", room_id, through))

    async def leave(self, room_id: str) -> None:
        """Go out."""
        self._refuse("leave")
        self.went.append(("leave", room_id, ""))

    async def people_in(self, room_id: str) -> list[str]:
        """Those scripted."""
        return self.people

    def _refuse(self, kind: str) -> None:
        if kind in self.refusals:
            raise self.refusals[kind]


@pytest.fixture
def room() -> Room:
    """An empty one."""
    return Room()


@pytest.fixture
def messenger(room: Room, reports: Reports) -> RoomMessenger:
    """The messenger to it."""
    return RoomMessenger(room, reports)


def waiting(txn_id: str = "t1", **changes: Any) -> Waiting:
    """An outbox row first tried at noon."""
    return Waiting(id=1, lane=KITCHEN_ROOM, txn_id=txn_id, note=a_note(**changes), attempts=1, first_try_at_s=NOON_S)


async def send(messenger: RoomMessenger, **changes: Any) -> str:
    """Send a note as a row of the outbox."""
    row = waiting(**changes)
    return await messenger.send(row, KITCHEN_ROOM, row.note)


async def test_a_message_goes_out_under_its_rows_transaction_id(messenger: RoomMessenger, room: Room) -> None:
    """And carries it, for the day when the server has forgotten it."""
    assert await send(messenger) == "$t1"
    ((event_type, content, txn_id),) = room.sent
    assert (event_type, content["body"], content["platepace.txn"], txn_id) == ("m.room.message", "Heard.", "t1", "t1")


async def test_where_no_thread_is_allowed_it_is_said_all_the_same(
    messenger: RoomMessenger, room: Room, reports: Reports
) -> None:
    """Under the same transaction id, for the refused one was never used; the admins hear of it once."""
    room.refusals["m.room.message in relation"] = Refused("400 M_UNKNOWN", 400, "M_UNKNOWN")
    for _ in range(2):
        assert await send(messenger, thread=EventRef("$root")) == "$t1"
    assert [content.get("m.relates_to") for _, content, _ in room.sent] == [None, None]
    assert len(reports.told) == 1


async def test_a_refusal_that_is_no_matter_of_threads_is_passed_on(messenger: RoomMessenger, room: Room) -> None:
    """The sender buries the row."""
    room.refusals["m.room.message in relation"] = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")
    with pytest.raises(Refused):
        await send(messenger, thread=EventRef("$root"))


REACTION: dict[str, Any] = {"text": "", "style": "reaction", "target": EventRef("$said"), "key": "📝"}


async def test_a_reaction_that_is_there_already_is_a_success(messenger: RoomMessenger, room: Room) -> None:
    """Its event is looked up: ours, and with that key."""
    room.refusals["m.reaction in relation"] = Refused("400", 400, "M_DUPLICATE_ANNOTATION")

    def reaction(event_id: str, sender: str, key: str) -> dict[str, Any]:
        relation = {"rel_type": "m.annotation", "event_id": "$said", "key": key}
        return raw_event(event_id, "m.reaction", sender, content={"m.relates_to": relation})

    room.reactions = Page(chunk=[reaction("$a", NOOR, "📝"), reaction("$b", BOT, "👍"), reaction("$c", BOT, "📝")])
    assert await send(messenger, **REACTION) == "$c"
    room.reactions = Page()
    assert await send(messenger, **REACTION) == "reacted:t1"


async def test_any_other_refusal_of_a_reaction_is_one(messenger: RoomMessenger, room: Room) -> None:
    """It may be that reactions are forbidden in the room."""
    room.refusals["m.reaction in relation"] = Refused("403", 403, "M_FORBIDDEN")
    with pytest.raises(Refused):
        await send(messenger, **REACTION)


def pin(target: str, replaces: str | None = None) -> dict[str, Any]:
    """To pin one message in the place of another."""
    return {"text": "", "style": "pin", "target": EventRef(target), "replaces": replaces and EventRef(replaces)}


async def test_a_pin_takes_the_place_of_the_former_and_leaves_others_pins_alone(
    messenger: RoomMessenger, room: Room
) -> None:
    """Pinning twice pins once."""
    pins = (KITCHEN_ROOM, "m.room.pinned_events", "")
    room.states[pins] = {"pinned": ["$theirs", "$last-week"]}
    for _ in range(2):
        await send(messenger, **pin("$this-week", "$last-week"))
    assert room.states[pins] == {"pinned": ["$theirs", "$this-week"]}
    room.states[pins] = {"pinned": "nonsense"}
    await send(messenger, **pin("$this-week"))
    assert room.states[pins] == {"pinned": ["$this-week"]}


async def test_where_the_bot_may_not_pin_the_week_goes_on_and_the_admins_hear_of_it_once(
    messenger: RoomMessenger, room: Room, reports: Reports
) -> None:
    """The row counts as done, under a name that is no event's."""
    room.refusals["m.room.pinned_events"] = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")
    for _ in range(2):
        assert await send(messenger, **pin("$this-week")) == "unpinned:t1"
    assert len(reports.told) == 1


async def test_a_message_is_found_again_by_the_transaction_id_it_carries(messenger: RoomMessenger, room: Room) -> None:
    """On whatever page; a member who copies the id is not the bot."""
    forged = raw_message("$forged", "Heard.", NOOR, **{"platepace.txn": "t1"})
    ours = raw_message("$ours", "Heard.", BOT, **{"platepace.txn": "t1"})
    room.pages = [Page(chunk=[forged, raw_message("$x", "x", BOT)], end="1"), Page(chunk=[ours])]
    assert await messenger.find_sent(waiting(), KITCHEN_ROOM) == "$ours"


async def test_a_message_is_found_again_by_what_the_server_remembers(messenger: RoomMessenger, room: Room) -> None:
    """Source: T, specification, "Local echo": transaction_id in unsigned, for the device that sent it."""
    room.pages = [Page(chunk=[raw_message("$ours", "Heard.", BOT) | {"unsigned": {"transaction_id": "t1"}}])]
    assert await messenger.find_sent(waiting(), KITCHEN_ROOM) == "$ours"


async def test_the_search_ends_where_the_row_had_not_been_tried(messenger: RoomMessenger, room: Room) -> None:
    """With an hour's allowance for the server's clock: there is no third page to ask for."""
    within = raw_message("$1", "x", BOT) | {"origin_server_ts": int((NOON_S - 3500) * 1000)}
    beyond = raw_message("$2", "x", BOT) | {"origin_server_ts": int((NOON_S - 3700) * 1000)}
    room.pages = [Page(chunk=[within], end="1"), Page(chunk=[beyond], end="2")]
    assert await messenger.find_sent(waiting(), KITCHEN_ROOM) is None


async def test_a_pin_is_not_searched_for(messenger: RoomMessenger) -> None:
    """There is no page to ask for, and pinning again is no harm."""
    assert await messenger.find_sent(waiting(**pin("$this-week")), KITCHEN_ROOM) is None


async def test_a_private_room_is_made_for_two_and_marked(messenger: RoomMessenger, room: Room) -> None:
    """Source: T, createRoom: trusted_private_chat lets the invited read what was said before they accepted."""
    assert await messenger.open_private(NOOR, look_first=False) == "!made:tern.example"
    assert room.made == [
        {
            "preset": "trusted_private_chat",
            "is_direct": True,
            "invite": [NOOR],
            "creation_content": {"platepace.private_with": NOOR},
        }
    ]


def marked(room: Room, room_id: str, person: str, membership: str, creator: str = BOT) -> None:
    """A room of two with somebody who is in it, invited or gone."""
    room.rooms.append(room_id)
    create = raw_event("$create", "m.room.create", creator, content={"platepace.private_with": person}, state_key="")
    room.creations[room_id] = RawEvent.model_validate(create)
    room.states[room_id, "m.room.member", person] = {"membership": membership}


async def test_a_private_room_whose_making_was_never_noted_is_found(messenger: RoomMessenger, room: Room) -> None:
    """Among kitchens, others' rooms, one that the person has left, and one that somebody else marked to listen in."""
    room.rooms.append(KITCHEN_ROOM)
    marked(room, "!forged", NOOR, "join", creator="@mallory:elsewhere.example")
    marked(room, "!lio", "@lio:tern.example", "join")
    marked(room, "!left", NOOR, "leave")
    marked(room, "!noor", NOOR, "invite")
    assert await messenger.open_private(NOOR, look_first=True) == "!noor"
    assert room.made == []


async def test_where_there_is_none_to_find_one_is_made(messenger: RoomMessenger, room: Room) -> None:
    """The attempt before may have failed before the making."""
    marked(room, "!left", NOOR, "leave")
    assert await messenger.open_private(NOOR, look_first=True) == "!made:tern.example"


async def test_the_bot_comes_into_a_room_through_the_server_that_knows_it(messenger: RoomMessenger, room: Room) -> None:
    """And a refusal is passed on, for the sender to try again."""
    assert await send(messenger, style="join", key="tern.example") == f"joined:{KITCHEN_ROOM}"
    assert room.went == [("join", KITCHEN_ROOM, "tern.example")]
    room.refusals["join"] = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")
    with pytest.raises(Refused):
        await send(messenger, style="join")


@pytest.mark.parametrize(
    ("style", "people", "leaves"),
    [("leave", [BOT, NOOR], 1), ("leave_if_empty", [BOT], 1), ("leave_if_empty", [BOT, NOOR], 0)],
)
async def test_the_bot_goes_out(
    messenger: RoomMessenger, room: Room, style: str, people: list[str], leaves: int
) -> None:
    """At once, or only where the server knows of nobody else; being out already is being out."""
    room.people = people
    assert await send(messenger, style=style) == f"left:{KITCHEN_ROOM}"
    assert len(room.went) == leaves
    room.refusals["leave"] = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")
    assert await send(messenger, style=style) == f"left:{KITCHEN_ROOM}"
