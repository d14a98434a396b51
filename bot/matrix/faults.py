"""What can go wrong between the bot and its homeserver: status codes and network errors end here, as exceptions.

Two of them are the ports' own, ``SendRefused`` and ``TryLater``; the rest are kinds of these that the sync loop tells
apart, so that the sender need not know them.
"""

import math
from collections.abc import Awaitable, Callable, Mapping
from contextlib import suppress
from email.utils import parsedate_to_datetime

from bot.errors import NOT_SIGNED_IN, OperatorError
from bot.services.ports.messages import SendRefused, TryLater

Report = Callable[[OperatorError], Awaitable[None]]
"""Tells whoever runs the bot of something that only they can mend."""

_UNPROVEN = 401
_TOO_LARGE = 413
_FINAL = frozenset({400, 403, 404, 405, 409, _TOO_LARGE})
_LONGEST_WISH_S = 3600.0


class Refused(SendRefused):
    """The server says no to this very request, for good."""

    def __init__(self, problem: str, status: int, errcode: str) -> None:
        super().__init__(problem)
        self.status = status
        self.errcode = errcode


class SignedOut(TryLater):
    """The access token is not known any more; whoever holds the password may sign in again."""


class Locked(TryLater):
    """The account is locked or suspended by the server's admins: the token stays good for when it is not."""


class TokenRefused(TryLater):
    """The server does not take the sync token that it gave."""


class Unproven(TryLater):
    """The server wants the password once more before it does this; ``session`` is its name for the asking."""

    def __init__(self, problem: str, session: str) -> None:
        super().__init__(problem)
        self.session = session


class LoggedOut(OperatorError):  # noqa: N818 - it is the state that the bot is in
    """There is no way to sign in again: the process has to end."""

    def __init__(self, told: str) -> None:
        super().__init__(told, NOT_SIGNED_IN)


def fault(status: int, headers: Mapping[str, str], told: Mapping[str, object]) -> SendRefused | TryLater:
    """The exception for an answer that is not a success.

    A refusal counts only where the server signs it with an error code: a proxy in front of it may say 403 or 404 of
    its own accord. Too large (413) is the exception, for there it is the proxy that knows.
    """
    errcode = str(told.get("errcode", ""))
    problem = f"{status} {errcode} {str(told.get('error', ''))[:200]}".strip()
    if status == _UNPROVEN and "flows" in told:
        return Unproven(problem, str(told.get("session", "")))
    if errcode in {"M_UNKNOWN_TOKEN", "M_MISSING_TOKEN"}:
        return SignedOut(problem)
    if errcode in {"M_USER_LOCKED", "M_USER_SUSPENDED"}:
        return Locked(problem)
    if status in _FINAL and errcode != "M_LIMIT_EXCEEDED" and (errcode or status == _TOO_LARGE):
        return Refused(problem, status, errcode)
    return TryLater(problem, _wish_s(headers, told))


def _wish_s(headers: Mapping[str, str], told: Mapping[str, object]) -> float | None:
    """How long the server wants to be left alone: of its two ways of saying so, the longer."""
    wishes = [_header_s(headers), _body_s(told)]
    stated = [min(wish, _LONGEST_WISH_S) for wish in wishes if wish is not None and wish >= 0]
    return max(stated, default=None)


def _body_s(told: Mapping[str, object]) -> float | None:
    wish = told.get("retry_after_ms")
    return wish / 1000 if isinstance(wish, int | float) and math.isfinite(wish) else None


def _header_s(headers: Mapping[str, str]) -> float | None:
    wish = headers.get("Retry-After", "")
    with suppress(ValueError):
        return float(int(wish))
    with suppress(ValueError):  # the other form is a date, measured by the server's own clock
        return (parsedate_to_datetime(wish) - parsedate_to_datetime(headers.get("Date", ""))).total_seconds()
    return None
