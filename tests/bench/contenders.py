"""The processes that are measured: Platepace as ``platepace run`` starts it, and the echo bot beside it."""

import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

PASSWORD = "throwaway"


@dataclass
class Process:
    """A running contender and when it was started."""

    started_s: float
    process: subprocess.Popen[bytes] = field(repr=False)

    def peak_mib(self) -> float:
        """The most resident memory so far (VmHWM of proc(5))."""
        status = Path(f"/proc/{self.process.pid}/status").read_text("utf-8")
        (line,) = (line for line in status.splitlines() if line.startswith("VmHWM:"))
        return int(line.split()[1]) / 1024


@dataclass(frozen=True)
class Contender:
    """A bot by name, the account it answers under and the command that starts it."""

    name: str
    user_id: str
    command: tuple[str, ...]

    @contextmanager
    def running(self, log: Path) -> Iterator[Process]:
        """The process, from its start to its end."""
        with log.open("ab") as out:
            started_s = time.perf_counter()
            process = subprocess.Popen(self.command, stdout=out, stderr=out)
            try:
                yield Process(started_s, process)
            finally:
                process.terminate()
                process.wait(20)


def platepace(name: str, directory: Path, homeserver: str, user_id: str, *, encryption: bool = True) -> Contender:
    """Platepace on a database of its own in this directory, with no limit of its own on sending."""
    directory.mkdir(parents=True, exist_ok=True)
    (directory / "password").write_text(PASSWORD, "utf-8")
    (directory / "config.toml").write_text(
        f"""
[matrix]
homeserver = "{homeserver}"
user = "{user_id}"
password_file = "{directory / "password"}"
messages_per_second = 1000
burst = 1000
[encryption]
enabled = {str(encryption).lower()}
store = "{directory / "crypto"}"
key_file = "{directory / "key"}"
[storage]
url = "{database_url(directory)}"
[people]
may_invite = ["@ime:{user_id.partition(":")[2]}"]
[admin]
log_level = "WARNING"
""",
        "utf-8",
    )
    command = (sys.executable, "-m", "bot", "run", "--config", str(directory / "config.toml"))
    return Contender(name, user_id, command)


def database_url(directory: Path) -> str:
    """Where the Platepace of this directory keeps everything."""
    return f"sqlite+aiosqlite:///{directory / 'platepace.db'}"


def echo(homeserver: str, user_id: str) -> Contender:
    """The echo bot."""
    return Contender("echo", user_id, (sys.executable, "-m", "tests.bench.echo", homeserver, user_id, PASSWORD))
