"""Starts a private Synapse, reachable from this machine alone, for the demo and the tests.

The server keeps everything in one directory, talks to no other server and dies with the process that started it.
"""

import asyncio
import contextlib
import hashlib
import hmac
import json
import os
import secrets
import signal
import socket
import sys
import time
from base64 import b64encode
from collections.abc import AsyncIterator
from dataclasses import dataclass, field
from pathlib import Path

import aiohttp

from bot.errors import NO_HOMESERVER, OperatorError

_PATIENCE_S = 60.0
_PARTING_S = 5.0

# Run by the child: it asks the kernel to be killed when its parent dies (on Linux; elsewhere the process group that
# the parent ends must do), checks that the parent is still there, and becomes Synapse.
_BOOT = """
import contextlib, ctypes, os, runpy, sys
with contextlib.suppress(OSError, AttributeError):
    ctypes.CDLL(None).prctl(1, 9)
if os.getppid() != int(sys.argv.pop(1)):
    sys.exit("the process that wanted this homeserver is gone")
runpy.run_module("synapse.app.homeserver", run_name="__main__", alter_sys=True)
"""


@dataclass
class Homeserver:
    """A private Synapse: ``url`` is where it listens, ``name`` what user ids end in."""

    directory: Path
    port: int
    secret: str = field(repr=False)
    name: str = "tern.localhost"
    _process: asyncio.subprocess.Process | None = field(default=None, repr=False)

    @property
    def url(self) -> str:
        """The address for any Matrix client on this machine."""
        return f"http://127.0.0.1:{self.port}"

    async def start(self) -> None:
        """Start the server and wait until it answers."""
        arguments = ["-c", _BOOT, str(os.getpid()), "-c", str(self.directory / "homeserver.yaml")]
        with (self.directory / "console.log").open("ab") as console:
            self._process = await asyncio.create_subprocess_exec(
                sys.executable, *arguments, cwd=self.directory, stdout=console, stderr=console, start_new_session=True
            )
        await self._wait_until_it_answers(self._process)

    async def stop(self) -> None:
        """Ask the server to end, and make it end if it does not."""
        process = self._signal(signal.SIGTERM)
        if process is not None:
            with contextlib.suppress(TimeoutError):
                await asyncio.wait_for(process.wait(), _PARTING_S)
        await self.kill()

    async def kill(self) -> None:
        """End the server at once, as a power cut would."""
        process = self._signal(signal.SIGKILL)
        if process is not None:
            await process.wait()

    async def restart(self) -> None:
        """Stop the server and start it again at the same address with the same data."""
        await self.stop()
        await self.start()

    async def register(
        self, localpart: str, password: str, *, admin: bool = False, display_name: str | None = None
    ) -> str:
        """Make an account; its user id."""
        address = f"{self.url}/_synapse/admin/v1/register"
        names = {"username": localpart, "displayname": display_name or localpart}
        order = names | {"password": password, "admin": admin, "inhibit_login": True}
        async with aiohttp.ClientSession() as session:
            async with session.get(address) as answer:
                nonce = str((await answer.json())["nonce"])
            sealed = {"nonce": nonce, "mac": _seal(self.secret, nonce, localpart, password, admin=admin)}
            async with session.post(address, json=order | sealed) as answer:
                told = await answer.json()
        if "user_id" not in told:
            raise OperatorError(f"The private homeserver did not make an account for {localpart}: {told}")
        return str(told["user_id"])

    def _signal(self, number: signal.Signals) -> asyncio.subprocess.Process | None:
        process = self._process
        if process is None or process.returncode is not None:
            return None
        with contextlib.suppress(ProcessLookupError):
            os.killpg(process.pid, number)
        return process

    async def _wait_until_it_answers(self, process: asyncio.subprocess.Process) -> None:
        deadline = time.monotonic() + _PATIENCE_S
        async with aiohttp.ClientSession() as session:
            while not await _answers(session, self.url):
                if process.returncode is not None or time.monotonic() > deadline:
                    await self.kill()
                    last_words = _last_line(self.directory / "console.log") or f"silent for {_PATIENCE_S:.0f} s"
                    raise OperatorError(f"The private homeserver did not start: {last_words}", NO_HOMESERVER)
                await asyncio.sleep(0.05)


@contextlib.asynccontextmanager
async def private_homeserver(directory: Path, *, rate_limits: bool = False) -> AsyncIterator[Homeserver]:
    """A running private homeserver in this directory; Synapse's own default rate limits with ``rate_limits``."""
    server = Homeserver(directory, _free_port(), secrets.token_urlsafe(24))
    _set_up(server, rate_limits=rate_limits)
    try:
        await server.start()
        yield server
    finally:
        await server.stop()


def _seal(secret: str, nonce: str, localpart: str, password: str, *, admin: bool) -> str:
    parts = (nonce, localpart, password, "admin" if admin else "notadmin")
    return hmac.new(secret.encode(), "\0".join(parts).encode(), hashlib.sha1).hexdigest()


def _last_line(log: Path) -> str:
    """What a program said last."""
    return log.read_text("utf-8", "replace").strip().rpartition("\n")[2]


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


async def _answers(session: aiohttp.ClientSession, url: str) -> bool:
    try:
        async with session.get(f"{url}/health") as answer:
            return answer.ok
    except aiohttp.ClientError:
        return False


def _set_up(server: Homeserver, *, rate_limits: bool) -> None:
    """Write the server's configuration, its log's and a signing key (JSON is YAML, so no YAML library is needed)."""
    where = server.directory
    where.mkdir(parents=True, exist_ok=True)
    settings = _settings(server) | ({} if rate_limits else _no_limits())
    (where / "homeserver.yaml").write_text(json.dumps(settings, indent=1))
    (where / "log.yaml").write_text(json.dumps(_logging(where / "homeserver.log")))
    key = where / "signing.key"
    if not key.exists():
        key.write_text(f"ed25519 a_1 {b64encode(secrets.token_bytes(32)).decode().rstrip('=')}\n")


def _settings(server: Homeserver) -> dict[str, object]:
    where = server.directory
    return {
        "server_name": server.name,
        "public_baseurl": f"{server.url}/",
        "listeners": [
            {
                "port": server.port,
                "type": "http",
                "bind_addresses": ["127.0.0.1"],
                "resources": [{"names": ["client", "health"], "compress": False}],
            }
        ],
        "database": {"name": "sqlite3", "args": {"database": str(where / "homeserver.db")}},
        "media_store_path": str(where / "media"),
        "signing_key_path": str(where / "signing.key"),
        "log_config": str(where / "log.yaml"),
        "registration_shared_secret": server.secret,
        "macaroon_secret_key": server.secret,
        "report_stats": False,
        "trusted_key_servers": [],
        "federation_domain_whitelist": [],
        "presence": {"enabled": False},
        "user_directory": {"enabled": False},
        "stats": {"enabled": False},
        "url_preview_enabled": False,
        "bcrypt_rounds": 4,
        "caches": {"sync_response_cache_duration": "0s"},  # a bot that starts twice in two minutes gets news twice
    }


def _no_limits() -> dict[str, object]:
    free = {"per_second": 10_000, "burst_count": 10_000}
    single = ("message", "registration", "joins_per_room", "room_creation", "media_create", "profile")
    return {f"rc_{name}": free for name in single} | {
        "rc_login": {"address": free, "account": free, "failed_attempts": free},
        "rc_joins": {"local": free, "remote": free},
        "rc_invites": {"per_room": free, "per_user": free, "per_issuer": free},
    }


def _logging(log: Path) -> dict[str, object]:
    return {
        "version": 1,
        "formatters": {"line": {"format": "%(asctime)s %(levelname)s %(name)s %(message)s"}},
        "handlers": {"file": {"class": "logging.FileHandler", "filename": str(log), "formatter": "line"}},
        "root": {"level": "WARNING", "handlers": ["file"]},
    }
