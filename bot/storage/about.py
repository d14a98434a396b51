"""Within a stored record: what it says of one person, and the same record with that person's id taken out."""

import json
from typing import Any

from sqlalchemy import Column

from bot.storage.columns import Kept


def is_record(column: Column[Any]) -> bool:
    """Whether the column holds records as JSON."""
    return isinstance(column.type, Kept)


def named(text: str, user_id: str) -> bool:
    """Whether the id stands in this JSON as a text of its own."""
    return json.dumps(user_id, ensure_ascii=False) in text


def about(value: Any, user_id: str) -> list[Any]:
    """The parts of a record that tell of the person: entries under their id, and records that name it."""
    if isinstance(value, dict):
        if user_id in value.values():
            return [value]
        own = [{user_id: value[user_id]}] if user_id in value else []
        return own + [part for each in value.values() for part in about(each, user_id)]
    if isinstance(value, list):
        return [value] if user_id in value else [part for each in value for part in _of_item(each, user_id)]
    return []


def _of_item(item: Any, user_id: str) -> list[Any]:
    """The whole of a listed record that names the person one level down, as the row of a board does."""
    if isinstance(item, dict) and any(isinstance(v, dict) and user_id in v.values() for v in item.values()):
        return [item]
    return about(item, user_id)


def without(text: str, user_id: str, instead: str) -> str:
    """The JSON with another name wherever the id stood, canonical as every stored record is."""
    return json.dumps(
        _renamed(json.loads(text), user_id, instead), sort_keys=True, separators=(",", ":"), ensure_ascii=False
    )


def _renamed(value: Any, user_id: str, instead: str) -> Any:
    if isinstance(value, dict):
        return {instead if key == user_id else key: _renamed(each, user_id, instead) for key, each in value.items()}
    if isinstance(value, list):
        return [_renamed(each, user_id, instead) for each in value]
    return instead if value == user_id else value
