"""The log: what the bot does, never what was said, by whom it is called, or a secret."""

import logging
import traceback
from collections.abc import Iterator
from types import TracebackType
from typing import TextIO

ExcInfo = tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None]


def begin_log(level: str, stream: TextIO | None = None) -> None:
    """Write the bot's own log from this level on, and of the libraries warnings alone.

    What libraries say below that holds whole answers of the homeserver and whole rows: tokens, keys and words.
    """
    handler = logging.StreamHandler(stream)
    handler.setFormatter(Discreet("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)
    logging.getLogger("bot").setLevel(level)


class Discreet(logging.Formatter):
    """Shows of a fault where it happened and of what kind it is, not its message, which may quote what was said."""

    def formatException(self, ei: ExcInfo) -> str:  # noqa: N802 - named by the library
        """The traceback of the fault and of those behind it, innermost last."""
        return "\n".join(_told(ei[1])) if ei[1] else ""


def _told(fault: BaseException) -> Iterator[str]:
    earlier = fault.__cause__ or (None if fault.__suppress_context__ else fault.__context__)
    if earlier:
        yield from _told(earlier)
        yield "and then"
    yield "".join(traceback.format_tb(fault.__traceback__)).rstrip()
    yield f"{type(fault).__module__}.{type(fault).__qualname__}"
    if isinstance(fault, BaseExceptionGroup):
        for each in fault.exceptions:
            yield from _told(each)
