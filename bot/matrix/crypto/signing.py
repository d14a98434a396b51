"""The bot signs its own device, so that clients that talk to signed devices alone talk to it.

Three Ed25519 keys: the master key stands for the account, the self-signing key for its devices, the user-signing key
for other people (the bot vouches for nobody, but the specification wants it there). An account's keys for encrypting
serve as well: vodozemac gives no bare signing key.
"""

import logging
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

import vodozemac
from nio.crypto.sessions import derive_pickle_key

from bot.matrix.crypto.machine import Machine
from bot.matrix.crypto.server import KeyServer
from bot.matrix.crypto.signatures import is_signed, sign
from bot.matrix.crypto.store import CryptoStore
from bot.matrix.crypto.wire import Queried, SigningKey
from bot.matrix.wire import parsed
from bot.services.ports.messages import SendRefused, TryLater

log = logging.getLogger(__name__)

Usage = Literal["master", "self_signing", "user_signing"]
_USAGES: tuple[Usage, ...] = ("master", "self_signing", "user_signing")


@dataclass(frozen=True)
class Chain:
    """Whether master key, self-signing key and device hang together at the homeserver; if not, what is in the way."""

    holds: bool
    problem: str = ""


def published_chain(told: Queried, user_id: str, device_id: str) -> Chain:
    """The chain as anybody sees it: whether the published keys hang together, whoever holds the secret ones."""
    master, signing = (parsed(SigningKey, keys.get(user_id)) for keys in (told.master_keys, told.self_signing_keys))
    device = told.device_keys.get(user_id, {}).get(device_id)
    if device is None:
        return Chain(False, f"device {device_id} has published no keys")
    if master is None or signing is None:
        return Chain(False, "no signing keys are published")
    if not is_signed(told.self_signing_keys[user_id], user_id, master.public, master.public):
        return Chain(False, "the master key has not signed the self-signing key")
    if not is_signed(device, user_id, signing.public, signing.public):
        return Chain(False, "the self-signing key has not signed the device")
    if not is_signed(told.master_keys[user_id], user_id, device_id, _own_key(device, device_id)):
        return Chain(False, "the device has not signed the master key")
    return Chain(True)


def _own_key(device: Mapping[str, Any], device_id: str) -> str:
    keys = device.get("keys")
    return str(keys.get(f"ed25519:{device_id}", "")) if isinstance(keys, Mapping) else ""


class Signing:
    """The signing keys of the bot's account and the chain that they make."""

    def __init__(self, machine: Machine, server: KeyServer, store: CryptoStore) -> None:
        self._machine = machine
        self._server = server
        self._user_id: str = machine.user_id
        self._device_id: str = machine.device_id
        self._accounts = _kept_or_new(store)
        self._public = {usage: account.ed25519_key.to_base64() for usage, account in self._accounts.items()}

    async def hold(self) -> Chain:
        """See that the chain holds, mending what does not; what came of it. The bot can work without it."""
        try:
            told = await self._server.query([self._user_id])
            if not self._published(told):
                await self._publish()
                told = await self._server.query([self._user_id])
            if self._unsigned(told):
                await self._sign(told)
                told = await self._server.query([self._user_id])
            problem = self._unsigned(told)
        except (SendRefused, TryLater) as refused:
            problem = f"the homeserver said: {refused}"
        if problem:
            log.warning("device %s is not signed by its owner: %s", self._device_id, problem)
        else:
            log.info("device %s is signed by its owner, and the chain of keys holds", self._device_id)
        return Chain(holds=not problem, problem=problem)

    def _published(self, told: Queried) -> bool:
        listed = (told.master_keys, told.self_signing_keys, told.user_signing_keys)
        found = {
            usage: parsed(SigningKey, keys.get(self._user_id)) for usage, keys in zip(_USAGES, listed, strict=True)
        }
        return all(key is not None and key.public == self._public[usage] for usage, key in found.items())

    async def _publish(self) -> None:
        keys = {f"{usage}_key": self._key(usage) for usage in _USAGES}
        for usage in _USAGES[1:]:
            signed = sign(self._accounts["master"], self._user_id, self._public["master"], keys[f"{usage}_key"])
            keys[f"{usage}_key"] = signed
        await self._server.publish_signing_keys(keys)

    def _key(self, usage: Usage) -> dict[str, Any]:
        public = self._public[usage]
        return {"user_id": self._user_id, "usage": [usage], "keys": {f"ed25519:{public}": public}}

    def _unsigned(self, told: Queried) -> str:
        """What is missing in the chain; nothing if it holds."""
        if not self._published(told):
            return "its signing keys are not the account's"
        if self._own_device(told) is None:
            return "its keys are not published, or others under its name"
        return published_chain(told, self._user_id, self._device_id).problem

    async def _sign(self, told: Queried) -> None:
        device = self._own_device(told)
        if device is None:
            return  # never sign what is not ours
        signed = sign(self._accounts["self_signing"], self._user_id, self._public["self_signing"], _bare(device))
        own = self._machine.account._account
        master = sign(own, self._user_id, self._device_id, self._key("master"))
        keys = {self._device_id: signed, self._public["master"]: master}
        failures = await self._server.publish_signatures({self._user_id: keys})
        if failures:
            raise TryLater(f"signatures were not taken: {failures}")

    def _own_device(self, told: Queried) -> Mapping[str, Any] | None:
        """The device as published, if its keys are those that we hold."""
        device = told.device_keys.get(self._user_id, {}).get(self._device_id)
        own = self._machine.account.identity_keys
        ours = {f"{kind}:{self._device_id}": own[kind] for kind in ("ed25519", "curve25519")}
        return device if isinstance(device, dict) and device.get("keys") == ours else None


def _bare(device: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in device.items() if key not in {"signatures", "unsigned"}}


def _kept_or_new(store: CryptoStore) -> dict[Usage, vodozemac.Account]:
    """The three accounts, made and kept the first time: before anybody hears of them."""
    key = derive_pickle_key(store.pickle_key)
    kept = {usage: pickle for usage in _USAGES if (pickle := store.recall(usage))}
    if len(kept) == len(_USAGES):
        return {usage: vodozemac.Account.from_pickle(pickle, key) for usage, pickle in kept.items()}
    made: dict[Usage, vodozemac.Account] = {usage: vodozemac.Account() for usage in _USAGES}
    store.remember({usage: account.pickle(key) for usage, account in made.items()})
    return made
