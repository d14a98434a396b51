"""Files on their way: rendered, locked up for an encrypted room, uploaded; and what their message says of them."""

import logging
from dataclasses import replace
from typing import Protocol

from bot.matrix.secrecy import Secrecy
from bot.services.ports.attachments import Attachment, Renderer
from bot.services.ports.messages import Outgoing, TryLater, Waiting
from bot.services.ports.world import Messenger, Storage

log = logging.getLogger(__name__)

_TRIES = 4
"""After so many a message goes without its file, so that a store of files that is broken holds nothing up."""

_LOCKED = "application/octet-stream"
"""What the homeserver is told of a file that it cannot read."""

_THUMBNAIL = "image/png"


class MediaServer(Protocol):
    """What uploading takes of the homeserver."""

    async def upload(self, content: bytes, media: str, name: str = "") -> str:
        """Keep these bytes on the homeserver; the address by which messages name them (``mxc://...``)."""


class Uploads:
    """Brings files to the homeserver, each under a new address."""

    def __init__(self, server: MediaServer, secrecy: Secrecy, renderer: Renderer) -> None:
        self._server = server
        self._secrecy = secrecy
        self._renderer = renderer

    async def put(self, room_id: str, attachment: Attachment, alt: str) -> dict[str, object]:
        """The content of the file's message, its words apart.

        A RenderFailed where there is no file, and ``SendRefused`` or ``TryLater`` where it cannot be uploaded.
        """
        rendered = await self._renderer.render(attachment, alt)
        info: dict[str, object] = {"mimetype": attachment.media, "size": len(rendered.content)}
        if attachment.width_px:
            info |= {"w": attachment.width_px, "h": attachment.height_px}
        if rendered.thumbnail is not None:
            wide, high = rendered.thumbnail_px
            small = {"mimetype": _THUMBNAIL, "size": len(rendered.thumbnail), "w": wide, "h": high}
            info |= await self._upload(room_id, rendered.thumbnail, _THUMBNAIL, "", "thumbnail_")
            info["thumbnail_info"] = small
        kept = await self._upload(room_id, rendered.content, attachment.media, attachment.name)
        kind = "m.image" if attachment.media.startswith("image/") else "m.file"
        return {"msgtype": kind, "filename": attachment.name, "info": info, **kept}

    async def _upload(self, room_id: str, content: bytes, media: str, name: str, prefix: str = "") -> dict[str, object]:
        """Under ``url`` the address of the bytes; in an encrypted room, under ``file``, also what opens them."""
        locked = await self._secrecy.lock_up(room_id, content)
        if locked is None:
            return {f"{prefix}url": await self._server.upload(content, media, name)}
        return {f"{prefix}file": {"url": await self._server.upload(locked.content, _LOCKED), **locked.opener}}


async def with_file(storage: Storage, messenger: Messenger, waiting: Waiting, room_id: str, note: Outgoing) -> Outgoing:
    """The note with its file uploaded, and kept so before it is sent; in the end without, for its words say the same.

    A ``TryLater`` where it may be uploaded later.
    """
    try:
        uploaded = await messenger.upload(room_id, note)
    except TryLater as problem:
        if waiting.attempts + 1 < _TRIES:
            raise
        log.warning("outbox: row %s goes without its file: %s", waiting.id, problem)
        uploaded = None
    async with storage.begin() as work:
        await work.outbox.keep(waiting.id, replace(waiting.note, attachment=None, uploaded=uploaded))
    return replace(note, attachment=None, uploaded=uploaded)
