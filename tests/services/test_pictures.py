"""What is shown beside the words: which answers carry a picture, of what, in private or in the room."""

from datetime import timedelta
from xml.etree import ElementTree as ET

from bot.services.ports.attachments import Attachment
from tests.chat import KITCHEN, Chat
from tests.services.practice import DAY, practise

PHONE_PX = 780
"""Two pixels for each of a narrow phone's 390."""

LINES = {
    "noor": ("3:24 8/8", "3:10 8/8", "3:02 8/8"),
    "lio": ("3:40 8/8", "3:39 8/8", "3:41 8/8"),
    "kwabena": ("4:00 8/8", "4:02 8/8", "3:58 7/8 fell"),
    "petra": ("3:50 8/8", "3:52 8/8", "3:51 8/8"),
}


def carried(chat: Chat, room_id: str = KITCHEN) -> list[Attachment]:
    """What the messages that the bot sent last to a room carry."""
    return [heard.note.attachment for heard in chat.heard if heard.room_id == room_id and heard.note.attachment]


def words_on(attachment: Attachment) -> str:
    """The words on a picture, without spaces, which a line may break at."""
    texts = (node.text or "" for node in ET.fromstring(attachment.source).iter() if node.tag.endswith("text"))  # noqa: S314
    return "".join("".join(texts).split())


def is_for_a_phone(attachment: Attachment) -> bool:
    """Whether it is a picture as wide as a phone."""
    return (attachment.media, attachment.width_px) == ("image/png", PHONE_PX) and attachment.height_px > 0


async def test_the_weekly_post_and_the_card_carry_the_plate(chat: Chat) -> None:
    """What is posted and what `spec` answers carry the same plate card, and each says in words what is on it."""
    posted = await chat.say("ime", "!post now 6")
    (card,) = carried(chat)
    assert is_for_a_phone(card)
    assert card.name == "drill-6.png"
    assert "Ropecoil(drill6),8plates,onerow." in words_on(card)
    assert any("Rope coil (drill 6), 8 plates, one row." in text for text in posted)
    await chat.say("noor", "!spec")
    assert carried(chat) == [card]
    await chat.say("noor", "!spec 11B")
    assert carried(chat)[0].name == "drill-11B.png"


async def test_a_table_is_drawn_where_something_fits(live: Chat) -> None:
    """`table` draws the drill's own pattern, a given table what fits or the most that would; of none is no picture."""
    (told,) = await live.say("noor", "!table")
    (plan,) = carried(live)
    assert is_for_a_phone(plan)
    assert "".join(told.split("\n")[0].split()) in words_on(plan)
    assert "12345678" in words_on(plan)
    await live.say("noor", "!table 180x70 5")
    assert "12348765" in words_on(carried(live)[0])
    await live.say("noor", "!table 100x60")
    assert "2x3" in words_on(carried(live)[0])
    await live.say("noor", "!table 20x20")
    assert carried(live) == []


async def test_the_trend_is_drawn_for_oneself(live: Chat) -> None:
    """The picture goes where the words go, into the private room, with its bests marked by their times."""
    for clock in ("3:24", "3:33", "3:02"):
        await live.run("noor", f"{clock} 8/8")
        await live.wait(live.now + timedelta(days=1))
    (told,) = await live.say("noor", "!trend")
    assert carried(live) == []
    (trend,) = carried(live, "!private@noor:tern.example")
    assert is_for_a_phone(trend)
    assert "".join(told.split("\n")[0].split()) in words_on(trend)
    in_list_and_ring, in_list, as_median = 2, 1, 1
    assert words_on(trend).count("3:24") == in_list_and_ring + as_median
    assert words_on(trend).count("3:33") == in_list
    assert words_on(trend).count("3:02") == in_list_and_ring


async def test_the_weeks_close_is_drawn(live: Chat) -> None:
    """The closing post carries what the house did and the boards, as it says in words."""
    first = live.now
    await practise(live, LINES, days=3)
    told = await live.wait(first + 8 * DAY)
    (close,) = carried(live)
    assert is_for_a_phone(close)
    (text,) = [text for text in told if "the week is closed" in text]
    assert all("".join(line.split()) in words_on(close) for line in text.split("\n"))


async def test_paper_is_a_page(live: Chat) -> None:
    """`paper` answers with an A4 page of the live drill, or of the one named, and columns to write in."""
    assert await live.say("noor", "!paper") == [
        "Rope coil on paper, with a table for the runs. Send the runs later, like `yesterday 3:02 8/8`."
    ]
    (page,) = carried(live)
    assert (page.name, page.media) == ("drill-6.pdf", "application/pdf")
    assert "DateNameClockGoodplatesRedoreasonWatchedby" in words_on(page)
    await live.whisper("noor", "paper 11B")
    (other,) = carried(live, "!private@noor:tern.example")
    assert other.name == "drill-11B.pdf"
    assert words_on(other).endswith("Localfood-safety,employmentandsafetyrules,andyourchef,comefirst.")


async def test_nothing_else_is_drawn(live: Chat) -> None:
    """A result, a board and the list of drills are words alone."""
    for line in ("3:24 8/8", "!board", "!drills", "!mise"):
        await live.say("noor", line)
        assert carried(live) == carried(live, "!private@noor:tern.example") == []
