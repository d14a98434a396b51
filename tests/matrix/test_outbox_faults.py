"""Whatever fails, the sender says everything once, in order, and blocks no lane for ever; examples are constructed."""

from bot.matrix.faults import Refused
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.world import World
from bot.services.ports.messages import Cause, TryLater, Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, FixedClock, a_note
from tests.matrix.fakes import KeepingMessenger, Rests
from tests.matrix.outgoing import Say, SlowMessenger, nobody, running, until

HOUR_S = 3600.0
OTHER_ROOM = "!upper:tern.example"
FORBIDDEN = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")


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
            ((_, again),) = await work.outbox.lanes()
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
        await until(lambda: bool(messenger.texts))
    assert (messenger.texts, messenger.tries) == (["one"], 5)


async def test_a_server_that_limits_is_left_alone_by_every_lane(
    storage: SqlStorage, say: Say, messenger: KeepingMessenger, world: World, rests: Rests
) -> None:
    """It counts by account: the other lane rests too, and then goes first."""
    pace = Pace(world, rate_per_s=1.0, burst=10)
    sender = Sender(storage, messenger, world, pace, on_dead=nobody)
    await say("limited")
    await say("elsewhere", to=OTHER_ROOM)
    messenger.faults.append(TryLater("429", 30.0))
    await sender.flush()
    assert messenger.texts[0] == "elsewhere"
    assert sum(rests.taken) >= 30.0


async def test_what_the_server_refuses_for_good_is_buried_told_and_innobodys_way(
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
    assert dead == [("poison", "an unforeseen KeyError")]


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


async def test_a_sender_killed_in_mid_send_leaves_one_message(storage: SqlStorage, world: World, say: Say) -> None:
    """The next process gives up the lease and sends the row, as it was leased, under its id."""
    messenger = SlowMessenger()
    pace = Pace(world, rate_per_s=1e6, burst=1e6)
    for number in range(4):
        await say(f"line {number}")
    async with running(Sender(storage, messenger, world, pace, on_dead=nobody)):
        await messenger.entered.wait()
    await say("later")
    messenger.let_go.set()
    async with storage.begin() as work:
        await work.outbox.release()
    await Sender(storage, messenger, world, pace, on_dead=nobody).flush()
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


async def test_a_room_that_the_bot_may_not_join_yet_is_tried_again(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock, dead: list[tuple[str, str]]
) -> None:
    """After 1, 5, 30, 120 and 600 seconds, what is to be said there waiting behind it; then the admins are told."""
    await say("", style="join")
    await say("hello")
    messenger.faults.extend([FORBIDDEN] * 6)
    for tries, seconds in enumerate((1.0, 5.0, 30.0, 120.0, 600.0), start=1):
        await sender.flush()
        assert (messenger.tries, dead) == (tries, [])
        clock.advance(seconds - 0.5)
        await sender.flush()
        assert messenger.tries == tries
        clock.advance(0.5)
    await sender.flush()
    assert dead == [("", "403 M_FORBIDDEN")]
    assert messenger.texts == ["hello"]
