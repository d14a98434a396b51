"""The bot's device hangs on its account's own signing keys, at the first start and after whatever became of them."""

from pathlib import Path
from typing import Any

import pytest

from bot.matrix.crypto.signatures import is_signed
from bot.matrix.faults import Refused, Unproven
from tests.live.encrypted import is_signed_by_owner
from tests.matrix.fakes import BOT
from tests.matrix.key_desk import Client, KeyDesk, talker

UPLOAD = "v3/keys/device_signing/upload"


async def chain_at(desk: KeyDesk) -> bool:
    """Whether the chain holds in the eyes of another client, and the device vouches for the master key."""
    told: Any = await desk.answer((BOT, BOT), "v3/keys/query", (), {"device_keys": {BOT: []}})
    device_key = desk.devices[BOT][BOT]["keys"][f"ed25519:{BOT}"]
    return is_signed_by_owner(told, BOT, BOT) and is_signed(told["master_keys"][BOT], BOT, BOT, device_key)


async def test_the_device_is_signed_at_the_first_start_and_left_alone_at_the_next(tmp_path: Path) -> None:
    """The same keys serve for ever; a chain that holds is only looked at."""
    desk = KeyDesk()
    for uploads in (1, 1):
        async with talker(desk, tmp_path, BOT) as bot:
            assert bot.encryption.chain.holds
        assert await chain_at(desk)
        assert desk.asked.count(UPLOAD) == uploads


@pytest.mark.parametrize("lost", ["device", "master", "all"])
async def test_a_broken_chain_is_mended(tmp_path: Path, lost: str) -> None:
    """A signature that is gone is made again; keys that somebody else has put in the place of ours are replaced."""
    desk = KeyDesk()
    async with talker(desk, tmp_path, BOT):
        pass
    ours = desk.signing[BOT]["master"]["keys"]
    if lost == "device":
        del desk.devices[BOT][BOT]["signatures"][BOT][next(iter(desk.signing[BOT]["self_signing"]["keys"]))]
    elif lost == "master":
        del desk.signing[BOT]["master"]["signatures"]
    else:
        async with talker(desk, tmp_path, BOT, "ELEMENT"):
            pass
        assert desk.signing[BOT]["master"]["keys"] != ours
    assert not await chain_at(desk)
    async with talker(desk, tmp_path, BOT) as bot:
        assert bot.encryption.chain.holds
    assert desk.signing[BOT]["master"]["keys"] == ours
    assert await chain_at(desk)


async def test_a_refusal_is_told_and_the_bot_works_all_the_same(tmp_path: Path) -> None:
    """So it is where a server knows no signing keys, and where it takes the request but not the signatures."""
    desk = KeyDesk()
    desk.faults[UPLOAD].append(Refused("404 M_UNRECOGNIZED", 404, "M_UNRECOGNIZED"))
    async with talker(desk, tmp_path, BOT) as bot:
        assert not bot.encryption.chain.holds
        assert "M_UNRECOGNIZED" in bot.encryption.chain.problem
    desk.failures = {BOT: {BOT: {"errcode": "M_INVALID_SIGNATURE"}}}
    async with talker(desk, tmp_path, BOT) as bot:
        assert "M_INVALID_SIGNATURE" in bot.encryption.chain.problem


async def test_keys_that_are_not_ours_are_never_signed(tmp_path: Path) -> None:
    """A server that shows other keys under the device's name gets no signature for them."""
    desk = KeyDesk()
    async with talker(desk, tmp_path, BOT) as bot:
        desk.devices[BOT][BOT]["keys"][f"curve25519:{BOT}"] = "A" * 43
        del desk.devices[BOT][BOT]["signatures"]
        chain = await bot.encryption._signing.hold()
    assert not chain.holds
    assert "signatures" not in desk.devices[BOT][BOT]


async def test_the_password_is_given_where_it_is_asked_for() -> None:
    """With the name of the asking; without a password the refusal is passed on. Source: T, specification, UIA."""
    desk = KeyDesk()
    keys: dict[str, object] = {f"{kind}_key": {} for kind in ("master", "self_signing", "user_signing")}
    desk.faults[UPLOAD].append(Unproven("401", "s1"))
    await Client(desk, BOT, BOT, password="pw").keys.publish_signing_keys(keys)
    identifier = {"type": "m.id.user", "user": BOT}
    assert desk.proof == {"type": "m.login.password", "identifier": identifier, "password": "pw", "session": "s1"}
    desk.faults[UPLOAD].append(Unproven("401", "s2"))
    with pytest.raises(Unproven):
        await Client(desk, BOT, BOT).keys.publish_signing_keys(keys)
