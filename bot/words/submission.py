"""Messages of results: which are results and which are ordinary talk, each line judged singly."""

from collections.abc import Collection

from bot.domain.durations import is_clocklike
from bot.domain.pace import clock_text
from bot.domain.run import Sent
from bot.errors import UserError
from bot.replies.markup import plain_name
from bot.words.result_line import COUNT, Reading, read_line, words_of

MOST_LINES = 50
_MOST_WORDS_OF_AN_ANSWER = 5


def read_lines(text: str, names: Collection[str] = ()) -> list[tuple[str, Sent | UserError]]:
    """The lines of a message of results, each as sent and as read; none at all where the message is ordinary talk.

    A result has a clock, be it a faulty one, and a count. A message is talk unless it has more results than lines of
    plain talk; in a message of results, whatever else is there is named. ``names``: see ``read_line``. Raises
    UserError where there are too many lines.
    """
    lines = [line for line in text.splitlines() if line.strip()]
    readings = [read_line(line, names) for line in lines[:MOST_LINES]]
    results = sum(reading is not None and reading.whole for reading in readings)
    talk = sum(reading is None and not _has_count(line) for line, reading in zip(lines, readings, strict=False))
    if results <= talk:
        return []
    if len(lines) > MOST_LINES:
        raise UserError("too-many-lines", lines=len(lines), most=MOST_LINES)
    return [(line, _judged(line, reading)) for line, reading in zip(lines, readings, strict=True)]


def lone_clock(text: str, names: Collection[str] = ()) -> Sent | None:
    """A clock without a count, to be asked about; None for anything else. Raises UserError for a faulty clock."""
    reading = _of_one_line(text, names)
    return reading.taken() if reading and reading.has_clock and not reading.has_count else None


def lone_count(text: str) -> Sent | None:
    """A count without a clock (``11/12``, ``all``, ``redo 1``), the answer to a question; None for anything else."""
    reading = _of_one_line(text)
    return reading.taken() if reading and reading.has_count and not reading.has_clock else None


def lone_steps(text: str) -> tuple[int, ...]:
    """Splits without a clock and a count, the answer to a question; none for anything else."""
    reading = _of_one_line(text)
    return reading.taken().splits_s if reading and not reading.has_clock and not reading.has_count else ()


def read_answer(text: str) -> Sent | None:
    """A lone count. Raises a UserError that asks for the clock where other words stand in its place: ``8/8 quick``."""
    words = words_of(text)
    count = COUNT.fullmatch(words[0]) if words and len(words) <= _MOST_WORDS_OF_AN_ANSWER else None
    if count and not _of_one_line(text) and not any(map(is_clocklike, words)):
        raise _clock_needed(int(count[1]), int(count[2]))
    return lone_count(text)


def _has_count(line: str) -> bool:
    return any(map(COUNT.fullmatch, words_of(line)))


def _of_one_line(text: str, names: Collection[str] = ()) -> Reading | None:
    return None if len(text.strip().splitlines()) > 1 else read_line(text, names)


def _judged(line: str, reading: Reading | None) -> Sent | UserError:
    if reading is None or reading.whole:
        return reading.fault or reading.sent if reading else UserError("line-unreadable", line=plain_name(line))
    sent = reading.sent
    if sent.clock_s is not None:
        return UserError("count-needed", clock=clock_text(sent.clock_s))
    if sent.accepted is not None and sent.plates is not None:
        return _clock_needed(sent.accepted, sent.plates)
    return reading.fault or UserError("line-unreadable", line=plain_name(line))


def _clock_needed(good: int, plates: int) -> UserError:
    return UserError("clock-needed", good=good, plates=plates)
