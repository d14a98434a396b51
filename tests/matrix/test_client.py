"""The bot signs in as itself, on its one device, and reads what its server answers; examples are constructed."""

import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from urllib.parse import parse_qs, urlsplit

import pytest

from bot.errors import OperatorError
from bot.matrix.client import Account, Client
from bot.matrix.faults import LoggedOut, Refused, TokenRefused
from bot.services.ports.messages import TryLater
from tests.fakes import KITCHEN_ROOM
from tests.matrix.fakes import BOT
from tests.matrix.stub import Answer, StubHomeserver, refuses, says, stub_homeserver

LOGGED_IN = says({"user_id": BOT, "device_id": "KITCHEN", "access_token": "new"})
WHO = says({"user_id": BOT, "device_id": "KITCHEN"})
UNKNOWN = refuses(401, "M_UNKNOWN_TOKEN")


@asynccontextmanager
async def client_of(account: Account, *answers: Answer) -> AsyncIterator[tuple[Client, StubHomeserver]]:
    """A client and the homeserver that gives it these answers."""
    async with stub_homeserver(*answers) as stub:
        client = Client(stub.url, account, patience_s=5.0)
        try:
            yield client, stub
        finally:
            await client.close()


def paths(stub: StubHomeserver) -> list[str]:
    """What was asked for, without the common beginning."""
    return [asked.path.removeprefix("/_matrix/client/v3/") for asked in stub.asked]


async def test_a_first_login_gets_its_device_from_the_server() -> None:
    """It is kept by whoever asked."""
    async with client_of(Account(BOT, password="pw", device_name="Pass"), LOGGED_IN) as (client, stub):
        assert await client.sign_in() == "KITCHEN"
        assert client.token == "new"
    order = json.loads(stub.asked[0].body)
    assert (order["identifier"], order["initial_device_display_name"]) == ({"type": "m.id.user", "user": BOT}, "Pass")
    assert "device_id" not in order


async def test_a_token_is_tried_before_the_password_and_the_device_stays() -> None:
    """A login on another device would make the server forget which messages it has had."""
    account = Account(BOT, device_id="KITCHEN", password="pw", token="old")
    async with client_of(account, UNKNOWN, LOGGED_IN, WHO) as (client, stub):
        assert await client.sign_in() == "KITCHEN"
        assert paths(stub) == ["account/whoami", "login"]
        assert json.loads(stub.asked[1].body)["device_id"] == "KITCHEN"
        assert "Authorization" not in stub.asked[1].headers


async def test_a_good_token_needs_no_login() -> None:
    """Who it belongs to is asked."""
    async with client_of(Account(BOT, device_id="KITCHEN", token="old"), WHO) as (client, stub):
        assert await client.sign_in() == "KITCHEN"
        assert paths(stub) == ["account/whoami"]


@pytest.mark.parametrize(
    ("account", "answers"),
    [
        (Account(BOT, token="old"), [UNKNOWN]),
        (Account(BOT, password="wrong"), [refuses(403, "M_FORBIDDEN")]),
        (Account(BOT, password="pw"), [refuses(403, "M_USER_DEACTIVATED")]),
    ],
)
async def test_where_there_is_no_way_in_the_bot_is_logged_out(account: Account, answers: list[Answer]) -> None:
    """Trying again would only be locked out."""
    async with client_of(account, *answers) as (client, _):
        with pytest.raises(LoggedOut):
            await client.sign_in()


@pytest.mark.parametrize(
    ("account", "told"),
    [
        (Account(BOT, token="old"), {"user_id": "@other:tern.example", "device_id": "KITCHEN"}),
        (Account(BOT, device_id="OTHER", token="old"), {"user_id": BOT, "device_id": "KITCHEN"}),
        (Account(BOT, token="old"), {"user_id": BOT}),
    ],
)
async def test_a_token_of_somebody_or_some_device_else_is_an_operators_fault(
    account: Account, told: dict[str, str]
) -> None:
    """Nothing is sent under a wrong name."""
    async with client_of(account, says(told)) as (client, _):
        with pytest.raises(OperatorError):
            await client.sign_in()


async def test_a_limited_login_may_be_tried_later() -> None:
    """It is not a refusal."""
    async with client_of(Account(BOT, password="pw"), refuses(429, "M_LIMIT_EXCEEDED")) as (client, _):
        with pytest.raises(TryLater):
            await client.sign_in()


def test_neither_password_nor_token_is_printed() -> None:
    """Not even in a traceback's locals."""
    assert "secret" not in repr(Account(BOT, password="secret1", token="secret2"))


async def test_a_sync_asks_for_what_is_read_and_no_more() -> None:
    """Members eagerly, a hundred events a room, no presence, no typing."""
    async with client_of(Account(BOT), says({"next_batch": "s2"})) as (client, stub):
        assert (await client.sync("s1", wait_s=20.0)).next_batch == "s2"
    query = parse_qs(urlsplit(stub.asked[0].path).query)
    wanted = json.loads(query["filter"][0])
    assert (query["since"], query["timeout"]) == (["s1"], ["20000"])
    assert wanted["room"]["timeline"]["limit"] >= 50
    assert wanted["room"]["state"]["lazy_load_members"] is False
    assert wanted["presence"] == wanted["room"]["ephemeral"] == {"types": []}
    assert set(wanted["room"]["timeline"]["types"]) == {
        "m.room.message",
        "m.reaction",
        "m.room.redaction",
        "m.room.encrypted",
        "m.room.member",
        "m.room.encryption",
        "m.room.create",
        "m.room.power_levels",
        "m.room.name",
        "m.room.tombstone",
    }


async def test_a_refused_sync_token_is_told_from_a_refused_sync() -> None:
    """Without a token there is none to give up."""
    refusal = refuses(400, "M_UNKNOWN")
    async with client_of(Account(BOT), refusal, refusal, says({"rooms": {}})) as (client, _):
        with pytest.raises(TokenRefused):
            await client.sync("s1", wait_s=0)
        with pytest.raises(TryLater):
            await client.sync(None, wait_s=0)
        with pytest.raises(TryLater):  # an answer without next_batch
            await client.sync("s1", wait_s=0)


async def test_state_that_is_not_there_is_none_and_state_that_may_not_be_read_is_refused() -> None:
    """Both are 404s or 403s on the wire."""
    answers = [refuses(404, "M_NOT_FOUND"), refuses(403, "M_FORBIDDEN"), says({"pinned": []})]
    async with client_of(Account(BOT), *answers) as (client, _):
        assert await client.state(KITCHEN_ROOM, "m.room.pinned_events") is None
        with pytest.raises(Refused):
            await client.state(KITCHEN_ROOM, "m.room.pinned_events")
        assert await client.state(KITCHEN_ROOM, "m.room.pinned_events") == {"pinned": []}


async def test_a_success_without_its_event_id_is_tried_again() -> None:
    """The row must not be marked as sent under no name."""
    async with client_of(Account(BOT), says({})) as (client, _):
        with pytest.raises(TryLater):
            await client.send(KITCHEN_ROOM, "m.room.message", {}, "t1")
