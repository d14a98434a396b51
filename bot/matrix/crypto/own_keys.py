"""The bot's own keys at the homeserver: its device's, one-time keys, and a fallback for when those are used up."""

import logging

from bot.errors import NO_DATABASE, OperatorError
from bot.matrix.crypto.machine import Machine
from bot.matrix.crypto.server import KeyServer
from bot.matrix.crypto.store import CryptoStore
from bot.matrix.wire import News

log = logging.getLogger(__name__)

_KIND = "signed_curve25519"


async def open_machine(store: CryptoStore, server: KeyServer) -> Machine:
    """The machine on this store; an OperatorError where the homeserver knows this device by other keys.

    A new set of keys under an old device id is what an impostor would show: other clients would not talk to it.
    """
    user_id, device_id = store.user_id, store.device_id
    try:
        known = store.load_account()
    except ValueError as fault:  # vodozemac's are ValueErrors
        raise OperatorError(
            f"The crypto store {store.database_path} does not open with this pickle key: put back the key that it was "
            "made with.",
            NO_DATABASE,
        ) from fault
    published = (await server.query([user_id])).device_keys.get(user_id, {}).get(device_id)
    if published and (known is None or published["keys"].get(f"ed25519:{device_id}") != known.identity_keys["ed25519"]):
        what = "was lost" if known is None else "belongs to another device or an older time"
        raise OperatorError(
            f"The crypto store of device {device_id} {what}: {store.database_path}. Put it back from a backup. If "
            f"there is none: sign device {device_id} out of the account {user_id}, delete its row in the table session "
            "and the directory of the crypto store; the bot then starts as a new device.",
            NO_DATABASE,
        )
    machine = Machine(user_id, device_id, store)
    machine.account.shared = bool(published)
    return machine


class OwnKeys:
    """Keeps enough keys at the server for others to begin sessions with the bot."""

    def __init__(self, machine: Machine, server: KeyServer) -> None:
        self._machine = machine
        self._server = server
        self._left: int | None = None
        self._fallback_used = not machine.account.shared

    def count(self, news: News) -> None:
        """Take note of what the server has left. None left of a kind it does not name is none, not nothing said."""
        if news.device_one_time_keys_count is not None:
            self._left = news.device_one_time_keys_count.get(_KIND, 0)
        if news.device_unused_fallback_key_types is not None:
            self._fallback_used = _KIND not in news.device_unused_fallback_key_types

    @property
    def may_be_gone(self) -> bool:
        """Whether the server may have forgotten the device, as it does when it is signed out."""
        return self._left == 0

    async def look_again(self) -> bool:
        """Ask the server whether it still has the device's keys; whether they have to be published anew."""
        user_id, device_id = self._machine.user_id, self._machine.device_id
        published = (await self._server.query([user_id])).device_keys.get(user_id, {}).get(device_id)
        if not published:
            self._machine.account.shared = False
            self._fallback_used = True
        return not published

    async def top_up(self) -> None:
        """Upload what is missing."""
        most = self._machine.account.max_one_time_keys
        left = most if self._left is None else self._left
        if self._machine.account.shared and left > most // 2 and not self._fallback_used:
            return
        keys = self._machine.keys_to_publish(left, fallback=self._fallback_used)
        await self._server.upload(keys)
        self._machine.keys_are_published()
        self._left, self._fallback_used = None, False
        log.info("%s keys were published for others to begin sessions with", len(keys["one_time_keys"]))
