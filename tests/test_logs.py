"""The log tells what happened where, and of what kind, and repeats nobody's words."""

import io
import logging
from collections.abc import Iterator

import pytest

from bot.logs import begin_log

SAID, WHO = "3:02 8/8", "said by Noor"


@pytest.fixture
def log() -> Iterator[io.StringIO]:
    """A log of its own at its most talkative; the handlers of the test run come back afterwards."""
    root, own = logging.getLogger(), logging.getLogger("bot")
    before, level, own_level = root.handlers[:], root.level, own.level
    root.handlers = []
    stream = io.StringIO()
    begin_log("DEBUG", stream)
    yield stream
    root.handlers = before
    root.setLevel(level)
    own.setLevel(own_level)


def test_a_fault_is_told_by_kind_and_place(log: io.StringIO) -> None:
    """The chain of faults with their lines, and not the messages, which quote a row."""
    try:
        try:
            raise KeyError(SAID)
        except KeyError as cause:
            raise ValueError(WHO) from cause
    except ValueError:
        logging.getLogger("bot.services.inbox").exception("event %s failed", "$1")
    text = log.getvalue()
    assert "event $1 failed" in text
    assert text.index("builtins.KeyError") < text.index("builtins.ValueError")
    assert "test_logs.py" in text
    assert "3:02" not in text
    assert "Noor" not in text


def test_libraries_warn_and_no_more(log: io.StringIO) -> None:
    """What nio and SQLAlchemy say below that holds whole answers and rows; the bot's own lines are as set."""
    logging.getLogger("nio.client").debug("syt_token")
    logging.getLogger("sqlalchemy.engine").info("INSERT syt_token")
    logging.getLogger("bot.matrix.sync").debug("sync")
    logging.getLogger("nio.crypto").warning("no session")
    assert "syt_token" not in log.getvalue()
    assert [line.split()[2] for line in log.getvalue().splitlines()] == ["DEBUG", "WARNING"]
