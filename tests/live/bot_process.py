"""The bot as a process of its own, started as its operator would, and a look into its database."""

import asyncio
import sqlite3
import sys
import time
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager, closing
from dataclasses import dataclass
from pathlib import Path

from bot.homeserver import Homeserver
from tests.live.people import PASSWORD

_PATIENCE_S = 40.0


@dataclass(frozen=True)
class BotProcess:
    """A bot with a directory of its own for settings and database."""

    directory: Path
    user_id: str

    @property
    def database(self) -> Path:
        """Its SQLite file."""
        return self.directory / "platepace.db"

    @property
    def url(self) -> str:
        """The same as a URL."""
        return f"sqlite+aiosqlite:///{self.database}"

    def configure(
        self,
        server: Homeserver,
        inviter: str,
        *,
        database_url: str | None = None,
        through: str = "",
        encryption: bool = True,
    ) -> None:
        """Write its settings: no limit of its own on sending, invitations from one person, a proxy if there is one."""
        self.directory.mkdir(parents=True, exist_ok=True)
        (self.directory / "config.toml").write_text(
            f"""
[matrix]
homeserver = "{through or server.url}"
user = "{self.user_id}"
password_file = "{self.directory / "password"}"
messages_per_second = 1000
burst = 1000
[encryption]
enabled = {str(encryption).lower()}
store = "{self.directory / "crypto"}"
key_file = "{self.directory / "key"}"
[storage]
url = "{database_url or self.url}"
[people]
may_invite = ["{inviter}"]
""",
            "utf-8",
        )
        (self.directory / "password").write_text(PASSWORD, "utf-8")

    async def start(self, *, die_at: str = "") -> asyncio.subprocess.Process:
        """Start it, plainly or so that it kills itself at a step."""
        config = str(self.directory / "config.toml")
        plain = ["-m", "bot", "run", "--config", config]
        command = ["-m", "tests.live.killable", config, die_at] if die_at else plain
        with (self.directory / "bot.log").open("ab") as log:
            return await asyncio.create_subprocess_exec(sys.executable, *command, stdout=log, stderr=log)

    @asynccontextmanager
    async def running(self) -> AsyncIterator[asyncio.subprocess.Process]:
        """Run it plainly, and end it in good order."""
        process = await self.start()
        try:
            yield process
        finally:
            if process.returncode is None:
                process.terminate()
            await asyncio.wait_for(process.wait(), _PATIENCE_S)

    def ask(self, query: str, *values: object) -> Sequence[tuple[object, ...]]:
        """Rows of its database."""
        with closing(sqlite3.connect(f"file:{self.database}?mode=ro", uri=True, timeout=30)) as connection:
            return connection.execute(query, values).fetchall()

    async def until(self, query: str, *values: object) -> None:
        """Wait until a query of its database finds a row."""
        deadline = time.monotonic() + _PATIENCE_S
        while not (self.database.exists() and self._found(query, *values)):
            assert time.monotonic() < deadline, f"never true: {query} {values}\n{self.log()}"
            await asyncio.sleep(0.1)

    def _found(self, query: str, *values: object) -> bool:
        try:
            return bool(self.ask(query, *values))
        except sqlite3.OperationalError:  # its tables are not made yet
            return False

    async def until_settled(self, *event_ids: str) -> None:
        """Wait until it has dealt with these events and has nothing left to send."""
        for event_id in event_ids:
            await self.until("SELECT 1 FROM inbox WHERE event_id = ? AND state = 'done'", event_id)
        await self.until("SELECT 1 WHERE NOT EXISTS (SELECT 1 FROM outbox WHERE state IN ('waiting', 'leased'))")

    def log(self, *, whole: bool = False) -> str:
        """What it has written; of that the end, for a failing test's message."""
        return (self.directory / "bot.log").read_text("utf-8")[0 if whole else -3000 :]
