"""Messages and reactions as the wire has them."""

from bot.services.ports.messages import Outgoing

MOST_BYTES = 16_000
"""Of text, and of rich text, in one message: an event holds 65,536 bytes, about 48 kB of them once encrypted."""

TXN = "platepace.txn"
"""Carries the transaction id in the content, so that the message is recognised after the server has forgotten it."""

_CUT = "\n\N{HORIZONTAL ELLIPSIS}"


def compose_message(note: Outgoing, txn_id: str) -> dict[str, object]:
    """The content of a message. Nobody is alerted but those mentioned, whatever the words say.

    The words of a file are its caption, and what stands for it where it cannot be shown.
    """
    text = _cut(note.text)
    content: dict[str, object] = {
        "msgtype": "m.notice" if note.style == "notice" else "m.text",
        "body": text,
        "m.mentions": {"user_ids": list(note.mentions)} if note.mentions else {},
        TXN: txn_id,
    }
    if note.html and text == note.text and len(note.html.encode()) <= MOST_BYTES:
        content |= {"format": "org.matrix.custom.html", "formatted_body": note.html}
    relation = _relation(note)
    return content | (note.uploaded or {}) | ({"m.relates_to": relation} if relation else {})


def compose_reaction(note: Outgoing, txn_id: str) -> dict[str, object]:
    """The content of a reaction."""
    return {"m.relates_to": {"rel_type": "m.annotation", "event_id": note.target, "key": note.key}, TXN: txn_id}


def _relation(note: Outgoing) -> dict[str, object]:
    answered = note.reply_to or note.thread
    reply: dict[str, object] = {"m.in_reply_to": {"event_id": answered}} if answered else {}
    if note.thread is None:
        return reply
    # In a thread the reply is there for clients that know no threads; the others show no quotation.
    return {"rel_type": "m.thread", "event_id": note.thread, "is_falling_back": True} | reply


def _cut(text: str) -> str:
    """The text or, as the last resort, as many whole lines as fit."""
    whole = text.encode()
    if len(whole) <= MOST_BYTES:
        return text
    fits = whole[: MOST_BYTES - len(_CUT.encode())].decode(errors="ignore")
    return (fits.rpartition("\n")[0] or fits) + _CUT
