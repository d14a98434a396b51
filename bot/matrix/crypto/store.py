"""What encryption remembers, in a directory of its own: one process at a time, every secret pickled with a key."""

import fcntl
import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from secrets import token_urlsafe

from nio.store import SqliteStore

from bot.errors import NO_DATABASE, OperatorError

_DATABASE = "store.db"


class CryptoStore(SqliteStore):  # type: ignore[misc]  # nio ships no types
    """nio's own store, and beside its tables the pickles for which it has no place."""

    def __post_init__(self) -> None:
        """Make what is missing."""
        super().__post_init__()
        self.database.execute_sql("CREATE TABLE IF NOT EXISTS pickled (name TEXT PRIMARY KEY, pickle TEXT NOT NULL)")

    def recall(self, name: str) -> str | None:
        """The pickle kept under this name."""
        row = self.database.execute_sql("SELECT pickle FROM pickled WHERE name = ?", (name,)).fetchone()
        return str(row[0]) if row else None

    def remember(self, pickles: dict[str, str]) -> None:
        """Keep these pickles by name, all or none."""
        with self.database.atomic():
            for name, pickle in pickles.items():
                self.database.execute_sql("INSERT OR REPLACE INTO pickled VALUES (?, ?)", (name, pickle))


@contextmanager
def open_store(
    directory: Path, key_file: Path, given_key: str | None, user_id: str, device_id: str
) -> Iterator[CryptoStore]:
    """The store of this device, for this process alone; an OperatorError says what stands in its way."""
    try:
        directory.mkdir(mode=0o700, parents=True, exist_ok=True)
        with _locked(directory):
            key = given_key or _key(key_file, new=not (directory / _DATABASE).exists())
            store = CryptoStore(user_id, device_id, str(directory), pickle_key=key, database_name=_DATABASE)
            try:
                yield store
            finally:
                store.database.close()
    except OSError as fault:
        raise OperatorError(f"The crypto store {directory} cannot be used: {fault}", NO_DATABASE) from fault


@contextmanager
def _locked(directory: Path) -> Iterator[None]:
    with (directory / "lock").open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError as held:
            raise OperatorError(
                f"Another process works with the crypto store {directory}. Two would make each other's sessions "
                "unreadable: stop the other, or give this one a store and an account of its own.",
                NO_DATABASE,
            ) from held
        yield


def _key(file: Path, *, new: bool) -> str:
    """The pickle key in the file; of a new store one that is made here, for its owner alone to read."""
    if file.exists():
        key = file.read_text("utf-8").strip()
        if not key:
            raise OperatorError(f"The key file {file} is empty: put back the key that the crypto store was made with.")
        return key
    if not new:
        raise OperatorError(
            f"The key file {file} is gone, and without it the crypto store cannot be read: put it back, or set "
            "PLATEPACE_PICKLE_KEY to what was in it."
        )
    key = token_urlsafe(32)
    with os.fdopen(os.open(file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "w", encoding="utf-8") as made:
        made.write(f"{key}\n")
    return key
