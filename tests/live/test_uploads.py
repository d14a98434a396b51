"""Pictures on a real homeserver, in the clear and in an encrypted room; and a homeserver that takes none."""

import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import aiohttp
import pytest
from nio.crypto.attachments import decrypt_attachment

from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from bot.matrix.messenger import RoomMessenger
from bot.matrix.outbox import Sender
from bot.matrix.pace import Pace
from bot.matrix.secrecy import InTheClear
from bot.matrix.uploads import Uploads
from bot.services.ports.messages import Waiting
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import FixedClock
from tests.live.bot_process import BotProcess
from tests.live.conftest import MakePerson
from tests.live.encrypted import encrypting
from tests.live.people import PASSWORD, Person, sign_in
from tests.live.saying import Say
from tests.matrix.fakes import Reports, Rests, a_world
from tests.matrix.test_uploads import PICTURE, Studio

pytestmark = pytest.mark.live

PNG = b"\x89PNG\r\n\x1a\n"


async def download(server: Homeserver, person: Person, mxc: str) -> bytes:
    """A file as a person's client fetches it."""
    address = f"{server.url}/_matrix/client/v1/media/download/{mxc.removeprefix('mxc://')}"
    async with aiohttp.ClientSession() as session, session.get(address, headers=person.headers) as answer:
        assert answer.ok, await answer.text()
        return await answer.read()


def with_files(storage: SqlStorage, client: Client, clock: FixedClock, reports: Reports) -> Sender:
    """A sender whose messages may carry files."""

    async def on_dead(_: UnitOfWork, __: Waiting, problem: str) -> None:
        raise AssertionError(problem)

    world = a_world(Rests(clock))
    messenger = RoomMessenger(client, reports, uploads=Uploads(client, InTheClear(), Studio()))
    return Sender(storage, messenger, world, Pace(world, rate_per_s=1e6, burst=1e6), on_dead=on_dead)


async def test_a_picture_in_the_clear(
    server: Homeserver,
    storage: SqlStorage,
    client: Client,
    reports: Reports,
    say: Say,
    chef: Person,
    kitchen: str,
) -> None:
    """What the people fetch is what was rendered, the small one too."""
    await say(kitchen, "Rope coil.", style="text", attachment=PICTURE)
    await with_files(storage, client, FixedClock(), reports).flush()
    (content,) = [event["content"] for event in await chef.read(kitchen)]
    assert (content["msgtype"], content["body"], content["filename"]) == ("m.image", "Rope coil.", "rope-coil.png")
    assert await download(server, chef, content["url"]) == b"<svg/>"
    assert await download(server, chef, content["info"]["thumbnail_url"]) == b"<sv"
    assert reports.told == []


@asynccontextmanager
async def frugal(directory: Path) -> AsyncIterator[Homeserver]:
    """A homeserver that takes no file of more than two bytes."""
    async with private_homeserver(directory) as server:
        settings = directory / "homeserver.yaml"
        settings.write_text(json.dumps(json.loads(settings.read_text()) | {"max_upload_size": 2}))
        await server.restart()
        yield server


async def test_where_files_are_refused_the_words_go_alone(
    storage: SqlStorage, clock: FixedClock, reports: Reports, say: Say, tmp_path: Path
) -> None:
    """413: the text is sent all the same, and whoever runs the bot is told once."""
    async with frugal(tmp_path) as server, aiohttp.ClientSession() as session:
        chef = await sign_in(server, session, await server.register("ime", PASSWORD), "Ime")
        client = Client(server.url, Account(await server.register("platepace", PASSWORD), password=PASSWORD))
        await client.sign_in()
        room_id = await chef.open_room(invite=[client.user_id])
        await client.join(room_id)
        await say(room_id, "Rope coil.", style="text", attachment=PICTURE)
        await say(room_id, "Full tide.", style="text", attachment=PICTURE)
        await with_files(storage, client, clock, reports).flush()
        said: list[dict[str, Any]] = [event["content"] for event in await chef.read(room_id)]
        await client.close()
    assert [(content["msgtype"], content["body"]) for content in said] == [
        ("m.text", "Rope coil."),
        ("m.text", "Full tide."),
    ]
    assert len(reports.told) == 1


async def test_a_card_in_an_encrypted_room(server: Homeserver, person: MakePerson, tmp_path: Path) -> None:
    """The whole bot posts a drill: the homeserver holds no picture that it could look at, the people do."""
    bot = BotProcess(tmp_path / "bot", await server.register(f"bot-{tmp_path.name.lower()[:40]}", PASSWORD))
    chef = await person("Ime")
    bot.configure(server, chef.user_id)
    async with encrypting(server, chef, tmp_path / "ime") as ime, bot.running():
        room_id = await ime.open_room(bot.user_id)
        await ime.until_heard(room_id, "I am Platepace", bot.user_id)
        await ime.say(room_id, "!post now 6")
        card = (await ime.until_heard(room_id, "Rope coil (drill 6)", bot.user_id)).source["content"]
    sealed = await download(server, chef, card["file"]["url"])
    assert not sealed.startswith(PNG)
    opened = decrypt_attachment(sealed, card["file"]["key"]["k"], card["file"]["hashes"]["sha256"], card["file"]["iv"])
    assert opened.startswith(PNG)
    assert card["filename"] == "drill-6.png"
