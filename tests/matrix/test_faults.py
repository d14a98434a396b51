"""Answers of a server that is unwell, locked, limiting or refusing are told apart by status, error code and header.

Sources: the error codes are the Matrix specification's ("Standard error response", "Rate limiting", "Account locking");
the two forms of Retry-After are RFC 9110, 10.2.3, whose examples are used.
"""

import pytest

from bot.matrix.faults import Locked, Refused, SignedOut, Unproven, fault
from bot.services.ports.messages import SendRefused, TryLater


@pytest.mark.parametrize(
    ("status", "errcode", "kind"),
    [
        (401, "M_UNKNOWN_TOKEN", SignedOut),
        (401, "M_MISSING_TOKEN", SignedOut),
        (401, "M_USER_LOCKED", Locked),
        (403, "M_USER_SUSPENDED", Locked),
        (403, "M_FORBIDDEN", Refused),
        (404, "M_NOT_FOUND", Refused),
        (400, "M_DUPLICATE_ANNOTATION", Refused),
        (413, "M_TOO_LARGE", Refused),
        (413, "", Refused),
        (403, "", TryLater),
        (404, "", TryLater),
        (401, "", TryLater),
        (429, "M_LIMIT_EXCEEDED", TryLater),
        (400, "M_LIMIT_EXCEEDED", TryLater),
        (500, "M_UNKNOWN", TryLater),
        (502, "", TryLater),
        (200, "", TryLater),
    ],
)
def test_each_answer_has_its_own_exception(status: int, errcode: str, kind: type[Exception]) -> None:
    """A refusal is believed only with an error code, for a proxy's 404 page says nothing of a message."""
    told = {"errcode": errcode, "error": "because"} if errcode else {}
    assert type(fault(status, {}, told)) is kind


def test_the_sender_need_know_two_kinds_only() -> None:
    """Whatever is no refusal for good is a reason to try later: also a lost login, which the sync loop mends."""
    assert issubclass(Refused, SendRefused)
    assert all(issubclass(kind, TryLater) for kind in (SignedOut, Locked))


def wish(headers: dict[str, str], told: dict[str, object]) -> float | None:
    """What a 429 asks for."""
    problem = fault(429, headers, told)
    assert isinstance(problem, TryLater)
    return problem.after_s


DATE = "Fri, 31 Dec 1999 23:59:59 GMT"


@pytest.mark.parametrize(
    ("headers", "told", "seconds"),
    [
        ({"Retry-After": "120"}, {}, 120.0),
        ({"Retry-After": DATE, "Date": "Fri, 31 Dec 1999 23:58:59 GMT"}, {}, 60.0),
        ({}, {"retry_after_ms": 2000}, 2.0),
        ({"Retry-After": "3"}, {"retry_after_ms": 2500}, 3.0),
        ({"Retry-After": "999999"}, {}, 3600.0),
        ({"Retry-After": DATE}, {}, None),
        ({"Retry-After": "soon"}, {"retry_after_ms": "2000"}, None),
        ({"Retry-After": "-5"}, {"retry_after_ms": float("nan")}, None),
        ({}, {}, None),
    ],
)
def test_the_wish_to_be_left_alone_is_read_in_every_form(
    headers: dict[str, str], told: dict[str, object], seconds: float | None
) -> None:
    """The longer of the two ways counts, up to an hour; nonsense is no wish."""
    assert wish(headers, told) == seconds


def test_a_question_for_the_password_is_told_apart_from_a_lost_login() -> None:
    """Its session is handed on. Source: T, specification, User-interactive authentication: 401, no error code."""
    asked = fault(401, {}, {"session": "xyz", "flows": [{"stages": ["m.login.password"]}], "params": {}})
    assert isinstance(asked, Unproven)
    assert asked.session == "xyz"
