"""The sender says everything once, in order, whatever happens in between; examples are constructed."""

import asyncio
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager, suppress
from typing import Any

import pytest

from bot.matrix.faults import Refused
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.world import World
from bot.services.ports.messages import Cause, EventRef, Outgoing, TryLater, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, NOOR, FixedClock, a_note
from tests.matrix.fakes import KeepingMessenger, Rests

HOUR_S = 3600.0
OTHER_ROOM = "!upper:tern.example"
FORBIDDEN = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")

Say = Callable[..., Awaitable[EventRef]]


@pytest.fixture
def messenger() -> KeepingMessenger:
    """What was sent."""
    return KeepingMessenger()


@pytest.fixture
def dead() -> list[tuple[str, str]]:
    """What was buried, and why."""
    return []


@pytest.fixture
def sender(storage: SqlStorage, messenger: KeepingMessenger, world: World, dead: list[tuple[str, str]]) -> Sender:
    """The sender between them, as fast as it can."""

    async def on_dead(_: UnitOfWork, waiting: Waiting, problem: str) -> None:
        dead.append((waiting.note.text, problem))

    return Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=on_dead)


@pytest.fixture
def say(storage: SqlStorage) -> Say:
    """Puts a note into the outbox, each for a cause of its own."""
    causes = iter(range(1000))

    async def say(text: str = "Heard.", **changes: Any) -> EventRef:
        async with storage.begin() as work:
            return await work.outbox.add(a_note(text, **changes), Cause(event_id=f"$cause{next(causes)}"), 0)

    return say


@asynccontextmanager
async def running(sender: Sender) -> AsyncIterator[None]:
    """The sender at work, until the block ends."""
    task = asyncio.create_task(sender.run())
    try:
        async with asyncio.timeout(10):
            yield
    finally:
        task.cancel()
        with suppress(asyncio.CancelledError):
            await task


async def until(condition: Callable[[], bool]) -> None:
    """Wait until it holds."""
    while not condition():  # noqa: ASYNC110 - what is awaited is kept in plain lists
        await asyncio.sleep(0.001)


async def test_a_lane_is_sent_in_the_order_in_which_it_was_said(
    sender: Sender, say: Say, messenger: KeepingMessenger
) -> None:
    """Texts are never merged."""
    for number in range(8):
        await say(f"text {number}", style="text")
    await sender.flush()
    assert messenger.texts == [f"text {number}" for number in range(8)]


async def test_an_answer_that_was_lost_is_no_second_message(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """The room has it, the bot does not know; it sends again under the same transaction id."""
    await say("one")
    messenger.lost_answers.append(TryLater("reset by peer"))
    await sender.flush()
    clock.advance(10)
    await sender.flush()
    assert (messenger.tries, messenger.texts) == (2, ["one"])


async def test_a_failure_stops_its_own_lane_and_no_other(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """What comes after the failed one waits behind it."""
    await say("first")
    await say("second")
    await say("elsewhere", to=OTHER_ROOM)
    messenger.faults.append(TryLater("502"))
    await sender.flush()
    assert messenger.texts == ["elsewhere"]
    clock.advance(1.5)
    await sender.flush()
    assert messenger.texts == ["elsewhere", "first", "second"]


async def test_failures_in_a_row_are_tried_at_growing_intervals(
    sender: Sender, say: Say, messenger: KeepingMessenger, storage: SqlStorage, clock: FixedClock
) -> None:
    """1, 2, 4, 8 seconds."""
    await say("one")
    messenger.faults.extend([TryLater("502")] * 4)
    for tries, seconds in enumerate((1.0, 2.0, 4.0, 8.0), start=1):
        await sender.flush()
        async with storage.begin() as work:
            again = await work.outbox.next_try_at()
        assert again is not None
        assert ((again - clock.now).total_seconds(), messenger.tries) == (seconds, tries)
        clock.advance(seconds)
    await sender.flush()
    assert messenger.texts == ["one"]


async def test_the_sender_tries_again_by_itself(sender: Sender, say: Say, messenger: KeepingMessenger) -> None:
    """Nobody wakes it for that."""
    await say("one")
    messenger.faults.extend([TryLater("502")] * 4)
    async with running(sender):
        await until(lambda: messenger.texts == ["one"])


async def test_a_server_that_limits_is_left_alone_by_every_lane(
    storage: SqlStorage, say: Say, messenger: KeepingMessenger, world: World, rests: Rests
) -> None:
    """It counts by account: the other lane rests too, and then goes first."""
    pace = Pace(world, rate_per_s=1.0, burst=10)
    sender = Sender(storage, messenger, world, pace, on_dead=_nobody)
    await say("limited")
    await say("elsewhere", to=OTHER_ROOM)
    messenger.faults.append(TryLater("429", 30.0))
    await sender.flush()
    assert messenger.texts[0] == "elsewhere"
    assert sum(rests.taken) >= 30.0


async def _nobody(_: UnitOfWork, waiting: Waiting, problem: str) -> None:
    """Nobody is told."""
    raise AssertionError(f"buried {waiting}: {problem}")


async def test_what_the_server_refuses_for_good_is_buried_told_and_in_nobodys_way(
    sender: Sender, say: Say, messenger: KeepingMessenger, dead: list[tuple[str, str]]
) -> None:
    """The next of the lane goes at once."""
    await say("too large")
    await say("next")
    messenger.faults.append(Refused("413 M_TOO_LARGE", 413, "M_TOO_LARGE"))
    await sender.flush()
    assert messenger.texts == ["next"]
    assert dead == [("too large", "413 M_TOO_LARGE")]


async def test_an_admin_notice_of_a_burial_is_kept_with_the_burial(
    storage: SqlStorage, messenger: KeepingMessenger, world: World, say: Say
) -> None:
    """In one transaction: if the notice cannot be kept, the row is not dead yet."""

    async def tell(work: UnitOfWork, waiting: Waiting, problem: str) -> None:
        await work.outbox.add(a_note(problem, to=OTHER_ROOM), Cause(event_id=f"dead:{waiting.id}"), 0)

    sender = Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=tell)
    await say("forbidden")
    messenger.faults.append(FORBIDDEN)
    await sender.flush()
    assert messenger.texts == ["403 M_FORBIDDEN"]


async def test_a_fault_of_our_own_blocks_the_lane_for_ten_tries_at_most(
    sender: Sender, say: Say, messenger: KeepingMessenger, dead: list[tuple[str, str]]
) -> None:
    """A note that cannot be composed must not silence the kitchen."""
    await say("poison")
    await say("next")
    messenger.faults.extend([KeyError("odd")] * 10)
    async with running(sender):
        await until(lambda: messenger.texts == ["next"])
    assert dead == [("poison", "KeyError('odd')")]


async def test_references_become_the_events_that_they_stand_for(
    sender: Sender, say: Say, messenger: KeepingMessenger
) -> None:
    """A thread's root and a pin's target were notes in the same outbox when they were said."""
    root = await say("Drill of the week", style="text")
    await say("", style="pin", target=root, replaces=EventRef("$last-week"))
    await say("Heard.", thread=root, reply_to=EventRef("$said"))
    await sender.flush()
    (_, post), (_, pin), (_, answer) = messenger.sent.values()
    root_id = next(f"$sent-{txn_id}" for txn_id in messenger.sent)
    assert (pin.target, pin.replaces, answer.thread, answer.reply_to) == (root_id, "$last-week", root_id, "$said")
    assert post.thread is None


async def test_a_reference_to_what_was_never_sent_is_dropped_but_a_pin_of_it_is_dead(
    sender: Sender, say: Say, messenger: KeepingMessenger, dead: list[tuple[str, str]]
) -> None:
    """An answer can stand without its thread."""
    root = await say("refused", style="text")
    await say("", style="pin", target=root)
    await say("Heard.", thread=root)
    messenger.faults.append(FORBIDDEN)
    await sender.flush()
    ((_, answer),) = messenger.sent.values()
    assert (answer.text, answer.thread) == ("Heard.", None)
    assert [text for text, _ in dead] == ["refused", ""]


async def test_after_twenty_hours_a_row_is_looked_for_before_it_is_sent_again(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """The server has forgotten its transaction id by then; the room has not."""
    messenger.forgetful = True
    await say("one")
    messenger.lost_answers.append(TryLater("reset by peer"))
    await sender.flush()
    clock.advance(21 * HOUR_S)
    await sender.flush()
    assert (messenger.searches, messenger.tries, messenger.texts) == (1, 1, ["one"])


async def test_after_twenty_hours_what_is_not_found_is_sent_again_under_its_old_id(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """It never reached the room."""
    await say("one")
    messenger.faults.append(TryLater("502"))
    await sender.flush()
    clock.advance(21 * HOUR_S)
    await sender.flush()
    assert (messenger.searches, messenger.tries, messenger.texts) == (1, 2, ["one"])


async def test_within_twenty_hours_nothing_is_looked_for(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """The transaction id does it."""
    await say("one")
    messenger.faults.append(TryLater("502"))
    await sender.flush()
    clock.advance(19 * HOUR_S)
    await sender.flush()
    assert (messenger.searches, messenger.texts) == (0, ["one"])


async def test_answers_that_piled_up_go_as_one_message_and_count_as_sent(
    sender: Sender, say: Say, messenger: KeepingMessenger, storage: SqlStorage
) -> None:
    """Each by its cook's name; whoever refers to one of them finds the one message."""
    refs = [await say(f"{number}:00, 8 of 8.", about=f"Cook {number}") for number in range(5)]
    await sender.flush()
    assert messenger.texts == ["\n".join(f"Cook {number}: {number}:00, 8 of 8." for number in range(5))]
    async with storage.begin() as work:
        assert len({await work.outbox.event_of(ref) for ref in refs}) == 1


async def test_a_merged_message_once_tried_is_never_altered(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """It may be in the room: what came later goes after it, and nothing is said twice."""
    for number in range(4):
        await say(f"early {number}")
    messenger.lost_answers.append(TryLater("reset by peer"))
    await sender.flush()
    for number in range(4):
        await say(f"late {number}")
    clock.advance(10)
    await sender.flush()
    assert messenger.texts == [
        "\n".join(f"early {number}" for number in range(4)),
        "\n".join(f"late {number}" for number in range(4)),
    ]


async def test_a_private_answer_opens_the_room_of_two_once(
    sender: Sender, say: Say, messenger: KeepingMessenger, storage: SqlStorage
) -> None:
    """The second goes to the same room."""
    await say("yours alone", to=NOOR, style="text")
    await say("and this", to=NOOR, style="text")
    await sender.flush()
    assert messenger.opened == [(NOOR, False)]
    assert [room_id for room_id, _ in messenger.sent.values()] == ["!private-1:tern.example"] * 2
    async with storage.begin() as work:
        assert await work.kitchens.private_room(NOOR) == "!private-1:tern.example"


async def test_a_private_room_perhaps_made_already_is_looked_for(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """The first attempt's answer never came."""
    await say("yours alone", to=NOOR, style="text")
    messenger.faults.append(TryLater("timeout"))
    await sender.flush()
    clock.advance(10)
    await sender.flush()
    assert messenger.opened == [(NOOR, False), (NOOR, True)]
    assert messenger.texts == ["yours alone"]


class SlowMessenger(KeepingMessenger):
    """Takes its time in one room: until ``let_go`` is set."""

    def __init__(self) -> None:
        super().__init__()
        self.let_go = asyncio.Event()
        self.entered = asyncio.Event()

    async def send(self, waiting: Waiting, room_id: str, note: Outgoing) -> str:
        """Wait in the kitchen, not elsewhere."""
        if room_id == KITCHEN_ROOM:
            self.entered.set()
            await self.let_go.wait()
        return await super().send(waiting, room_id, note)


async def test_lanes_do_not_wait_for_each_other_and_new_notes_wake_the_sender(
    storage: SqlStorage, world: World, say: Say
) -> None:
    """One room's slow server answer holds up that room only."""
    messenger = SlowMessenger()
    sender = Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=_nobody)
    await say("slow")
    async with running(sender):
        await messenger.entered.wait()
        await say("elsewhere", to=OTHER_ROOM)
        sender.wake()
        await until(lambda: messenger.texts == ["elsewhere"])
        messenger.let_go.set()
        await until(lambda: messenger.texts == ["elsewhere", "slow"])


async def test_a_note_said_while_its_lane_is_being_worked_off_is_not_forgotten(
    storage: SqlStorage, world: World, say: Say
) -> None:
    """However often the sender was woken for it in vain."""
    messenger = SlowMessenger()
    sender = Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=_nobody)
    await say("slow")
    async with running(sender):
        await messenger.entered.wait()
        await say("next")
        sender.wake()
        await asyncio.sleep(0.01)
        messenger.let_go.set()
        await until(lambda: messenger.texts == ["slow", "next"])


async def test_a_sender_killed_in_mid_send_leaves_one_message(storage: SqlStorage, world: World, say: Say) -> None:
    """The next process gives up the lease and sends the row, as it was leased, under its id."""
    messenger = SlowMessenger()
    pace = Pace(world, rate_per_s=1e6, burst=1e6)
    for number in range(4):
        await say(f"line {number}")
    async with running(Sender(storage, messenger, world, pace, on_dead=_nobody)):
        await messenger.entered.wait()
    await say("later")
    messenger.let_go.set()
    async with storage.begin() as work:
        await work.outbox.release()
    await Sender(storage, messenger, world, pace, on_dead=_nobody).flush()
    assert messenger.texts == ["line 0\nline 1\nline 2\nline 3", "later"]


async def test_what_somebody_else_is_sending_is_left_to_them(
    sender: Sender, say: Say, messenger: KeepingMessenger, storage: SqlStorage, clock: FixedClock
) -> None:
    """Two processes on one storage do not race for a row."""
    await say("one")
    async with storage.begin() as work:
        (waiting,) = await work.outbox.head(KITCHEN_ROOM, 1)
        assert await work.outbox.lease(waiting.id, (), waiting.note, clock())
    await sender.flush()
    assert messenger.tries == 0
    clock.advance(61)
    await sender.flush()
    assert messenger.texts == ["one"]
