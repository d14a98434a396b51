"""The crypto store is one process's alone, opens with its own key, and is missed when it is gone."""

import shutil
from pathlib import Path

import pytest

from bot.errors import NO_DATABASE, OperatorError
from bot.matrix.crypto.encryption import open_encryption
from bot.settings import EncryptionSettings
from tests.fakes import FixedClock
from tests.matrix.fakes import BOT
from tests.matrix.key_desk import Client, KeyDesk, talker


def own(directory: Path, suffix: str = "") -> Path:
    """Where the bot's store, or with the suffix its key, is."""
    return directory / f"{BOT[1:]}-{BOT}{suffix}"


async def refusal(desk: KeyDesk, directory: Path, given_key: str | None = None) -> OperatorError:
    """What stands in the way of the next start."""
    settings = EncryptionSettings(store=own(directory), key_file=own(directory, ".key"))
    with pytest.raises(OperatorError) as refused:
        async with open_encryption(Client(desk, BOT, BOT), BOT, settings, given_key, FixedClock()):
            pass
    return refused.value


async def test_a_lost_store_is_not_made_anew_under_the_known_device(tmp_path: Path) -> None:
    """Again and again, and what the homeserver holds stays as it was; with the store back, the bot goes on."""
    desk = KeyDesk()
    async with talker(desk, tmp_path, BOT):
        pass
    keys = desk.devices[BOT][BOT]
    shutil.move(own(tmp_path), tmp_path / "backup")
    for _ in range(2):
        problem = await refusal(desk, tmp_path)
        assert "was lost" in str(problem)
        assert "Put it back from a backup" in str(problem)
        assert problem.exit_code == NO_DATABASE
    shutil.rmtree(own(tmp_path))
    shutil.move(tmp_path / "backup", own(tmp_path))
    async with talker(desk, tmp_path, BOT) as bot:
        assert bot.encryption.chain.holds
    assert desk.devices[BOT][BOT]["keys"] == keys["keys"]


async def test_a_store_of_other_keys_is_refused(tmp_path: Path) -> None:
    """As one of an older time, from before the device was made anew."""
    desk = KeyDesk()
    async with talker(desk, tmp_path, BOT):
        pass
    desk.devices[BOT][BOT]["keys"][f"ed25519:{BOT}"] = "A" * 43
    assert "belongs to another device or an older time" in str(await refusal(desk, tmp_path))


async def test_two_processes_do_not_share_a_store(tmp_path: Path) -> None:
    """The second is told so."""
    desk = KeyDesk()
    async with talker(desk, tmp_path, BOT):
        assert "Another process works with the crypto store" in str(await refusal(desk, tmp_path))


async def test_the_store_opens_with_its_own_key_alone(tmp_path: Path) -> None:
    """The key is made once, for its owner to read; a wrong, an empty and a lost one are told apart."""
    desk, key_file = KeyDesk(), own(tmp_path, ".key")
    async with talker(desk, tmp_path, BOT):
        pass
    assert key_file.stat().st_mode & 0o777 == 0o600
    assert len(key_file.read_text("utf-8").strip()) >= 40
    assert "does not open with this pickle key" in str(await refusal(desk, tmp_path, "another key"))
    key_file.write_text("\n", "utf-8")
    assert "is empty" in str(await refusal(desk, tmp_path))
    key_file.unlink()
    assert "is gone" in str(await refusal(desk, tmp_path))
