"""The sender says everything once and in order; examples are constructed."""

import asyncio

from bot.matrix.faults import Refused
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.world import World
from bot.services.ports.messages import EventRef, TryLater
from bot.storage.storage import SqlStorage
from tests.fakes import NOOR, FixedClock
from tests.matrix.fakes import KeepingMessenger
from tests.matrix.outgoing import Say, SlowMessenger, nobody, running, until

OTHER_ROOM = "!upper:tern.example"
FORBIDDEN = Refused("403 M_FORBIDDEN", 403, "M_FORBIDDEN")


async def test_a_lane_is_sent_in_the_order_in_which_it_was_said(
    sender: Sender, say: Say, messenger: KeepingMessenger
) -> None:
    """Texts are never merged."""
    for number in range(8):
        await say(f"text {number}", style="text")
    await sender.flush()
    assert messenger.texts == [f"text {number}" for number in range(8)]


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


async def test_lanes_do_not_wait_for_each_other_and_new_notes_wake_the_sender(
    storage: SqlStorage, world: World, say: Say
) -> None:
    """One room's slow server answer holds up that room only."""
    messenger = SlowMessenger()
    sender = Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=nobody)
    await say("slow")
    async with running(sender):
        await messenger.entered.wait()
        await say("elsewhere", to=OTHER_ROOM)
        sender.wake()
        await until(lambda: bool(messenger.texts))
        assert messenger.texts == ["elsewhere"]
        messenger.let_go.set()
        await until(lambda: len(messenger.texts) > 1)
    assert messenger.texts == ["elsewhere", "slow"]


async def test_a_note_said_while_its_lane_is_being_worked_off_is_not_forgotten(
    storage: SqlStorage, world: World, say: Say
) -> None:
    """However often the sender was woken for it in vain."""
    messenger = SlowMessenger()
    sender = Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=nobody)
    await say("slow")
    async with running(sender):
        await messenger.entered.wait()
        await say("next")
        sender.wake()
        await asyncio.sleep(0.01)
        messenger.let_go.set()
        await until(lambda: len(messenger.texts) > 1)
    assert messenger.texts == ["slow", "next"]


async def test_words_go_before_reactions_of_the_same_room(
    sender: Sender, say: Say, messenger: KeepingMessenger
) -> None:
    """The reaction was said first; somebody waits for the words."""
    await say("", style="reaction", target=EventRef("$said"), key="📝")
    for number in range(3):
        await say(f"text {number}", style="text")
    async with running(sender):
        await until(lambda: len(messenger.sent) == 4)
    assert messenger.texts == ["text 0", "text 1", "text 2", ""]


async def test_reactions_do_not_wait_for_words_that_may_not_go_yet(
    sender: Sender, say: Say, messenger: KeepingMessenger
) -> None:
    """Nor for those of another room."""
    await say("failing", style="text")
    await say("", style="reaction", target=EventRef("$said"), key="📝")
    messenger.faults.append(TryLater("502"))
    await sender.flush()
    assert messenger.texts == [""]
