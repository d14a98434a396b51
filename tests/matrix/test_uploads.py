"""A file goes to the homeserver before its message, once, and never holds a message back; examples are constructed.

Source of the messages' shape: T, Matrix specification, client-server API, m.image, m.file and encrypted attachments.
"""

from dataclasses import dataclass, field

import pytest

from bot.matrix.compose import compose_message
from bot.matrix.faults import Refused
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import Sender
from bot.matrix.secrecy import InTheClear, Locked
from bot.matrix.uploads import Uploads
from bot.services.ports.attachments import Attachment, Rendered, RenderFailed
from bot.services.ports.messages import TryLater
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, FixedClock, a_note
from tests.matrix.fakes import KeepingMessenger, Reports
from tests.matrix.outgoing import Say
from tests.matrix.test_messenger import Room

PICTURE = Attachment(name="rope-coil.png", media="image/png", source="<svg/>", width_px=780, height_px=1200)
DATA = Attachment(name="records.json", media="application/json", source='{"run": []}')


@dataclass
class Media(Room):
    """A homeserver that keeps files, or raises ``refusal``."""

    files: list[tuple[bytes, str, str]] = field(default_factory=list)
    refusal: Exception | None = None

    async def upload(self, content: bytes, media: str, name: str = "") -> str:
        """Keep it."""
        if self.refusal:
            raise self.refusal
        self.files.append((content, media, name))
        return f"mxc://tern.example/{len(self.files)}"


class Studio:
    """Renders a picture as its source, with the beginning of it as thumbnail; data as it is."""

    async def render(self, attachment: Attachment, alt: str) -> Rendered:
        """The bytes of the source."""
        if not alt:
            raise RenderFailed("nothing says the same")
        content = attachment.source.encode()
        return Rendered(content, content[:3], (300, 462)) if attachment.width_px else Rendered(content)


class Locking(InTheClear):
    """Turns bytes round, with the word for turning them back."""

    async def lock_up(self, room_id: str, content: bytes) -> Locked | None:
        """Turned round."""
        return Locked(content[::-1], {"v": "turned"})


async def test_a_picture_says_what_it_is_and_how_large() -> None:
    """Address, media type, bytes and measures, of the thumbnail too; the words are the caption."""
    media = Media()
    told = await Uploads(media, InTheClear(), Studio()).put(KITCHEN_ROOM, PICTURE, "Rope coil.")
    assert media.files == [(b"<sv", "image/png", ""), (b"<svg/>", "image/png", "rope-coil.png")]
    small = {"mimetype": "image/png", "size": 3, "w": 300, "h": 462}
    thumbnail = {"thumbnail_url": "mxc://tern.example/1", "thumbnail_info": small}
    info = {"mimetype": "image/png", "size": 6, "w": 780, "h": 1200, **thumbnail}
    assert told == {"msgtype": "m.image", "filename": "rope-coil.png", "info": info, "url": "mxc://tern.example/2"}
    content = compose_message(a_note("Rope coil.", html="<b>Rope coil.</b>", uploaded=told), "t1")
    assert (content["msgtype"], content["body"], content["m.mentions"]) == ("m.image", "Rope coil.", {})
    assert content["formatted_body"] == "<b>Rope coil.</b>"


async def test_data_is_a_file() -> None:
    """It has no measures and no thumbnail."""
    media = Media()
    told = await Uploads(media, InTheClear(), Studio()).put(KITCHEN_ROOM, DATA, "All of it.")
    assert told["msgtype"] == "m.file"
    assert told["info"] == {"mimetype": "application/json", "size": 11}
    assert media.files == [(b'{"run": []}', "application/json", "records.json")]


async def test_for_an_encrypted_room_it_is_locked_up() -> None:
    """The homeserver gets neither bytes, name nor kind; what opens them is in the message alone."""
    media = Media()
    told = await Uploads(media, Locking(), Studio()).put(KITCHEN_ROOM, PICTURE, "Rope coil.")
    assert media.files == [(b"vs<", "application/octet-stream", ""), (b">/gvs<", "application/octet-stream", "")]
    assert "url" not in told
    assert told["file"] == {"url": "mxc://tern.example/2", "v": "turned"}
    info = told["info"]
    assert isinstance(info, dict)
    assert info["thumbnail_file"] == {"url": "mxc://tern.example/1", "v": "turned"}


@pytest.mark.parametrize("refusal", [Refused("413 M_TOO_LARGE", 413, "M_TOO_LARGE"), RenderFailed("no font")])
async def test_what_is_refused_is_told_of_once_and_left_out(refusal: Exception) -> None:
    """The message goes without it, again and again; whoever runs the bot hears of it once."""
    media, reports = Media(refusal=refusal), Reports()
    messenger = RoomMessenger(media, reports, uploads=Uploads(media, InTheClear(), Studio()))
    for _ in range(2):
        assert await messenger.upload(KITCHEN_ROOM, a_note("Rope coil.", attachment=PICTURE)) is None
    assert len(reports.told) == 1


async def test_the_file_is_kept_before_the_message_is_sent(
    sender: Sender, say: Say, messenger: KeepingMessenger, storage: SqlStorage, clock: FixedClock
) -> None:
    """A send that fails after the upload is tried again with the same file; what was sent is erased."""
    messenger.uploads.append({"msgtype": "m.image", "url": "mxc://tern.example/1"})
    messenger.faults.append(TryLater("reset by peer"))
    await say("Rope coil.", style="text", attachment=PICTURE)
    await sender.flush()
    async with storage.begin() as work:
        (kept,) = await work.outbox.head(KITCHEN_ROOM, 1)
    assert kept.note.attachment is None
    assert kept.note.uploaded == {"msgtype": "m.image", "url": "mxc://tern.example/1"}
    clock.advance(60)
    await sender.flush()
    assert messenger.uploaded == ["rope-coil.png"]
    ((_, sent),) = messenger.sent.values()
    assert sent.uploaded == {"msgtype": "m.image", "url": "mxc://tern.example/1"}


async def test_a_broken_store_of_files_holds_nothing_up(
    sender: Sender, say: Say, messenger: KeepingMessenger, clock: FixedClock
) -> None:
    """After four tries the words go alone, and what waits behind them too."""
    messenger.uploads.extend([TryLater("503")] * 9)
    await say("Rope coil.", style="text", attachment=PICTURE)
    await say("Heard.")
    for _ in range(4):
        await sender.flush()
        clock.advance(60)
    assert messenger.texts == ["Rope coil.", "Heard."]
    assert len(messenger.uploaded) == 4


async def test_files_share_no_message(sender: Sender, say: Say, messenger: KeepingMessenger) -> None:
    """Short answers that wait are sent as one, but for those with a file."""
    messenger.uploads.append({"msgtype": "m.image", "url": "mxc://tern.example/1"})
    await say("Plan.", attachment=PICTURE)
    for number in range(4):
        await say(f"{number}")
    await sender.flush()
    assert messenger.texts == ["Plan.", "0\n1\n2\n3"]
