"""The settings file and the secrets beside it: read once at the start, refused with the nearest right key."""

import os
import tomllib
from collections.abc import Mapping
from difflib import get_close_matches
from pathlib import Path
from typing import Annotated, Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

from pydantic import AfterValidator, BaseModel, Field, SecretStr, ValidationError

from bot.errors import OperatorError
from bot.replies.accepted_words import languages


def _zone(name: str) -> str:
    try:
        return ZoneInfo(name).key
    except (ZoneInfoNotFoundError, ValueError, OSError):
        near = get_close_matches(name, available_timezones(), n=1, cutoff=0.5)
        raise ValueError(f"unknown time zone {name!r}" + (f"; did you mean {near[0]!r}?" if near else "")) from None


def _language(code: str) -> str:
    if code not in languages():
        raise ValueError(f"unknown language {code!r}; there are {', '.join(languages())}")
    return code


class MatrixSettings(BaseModel, extra="forbid"):
    """The bot's account. The password or the token comes from the environment, or from the file named here."""

    homeserver: str = Field(pattern=r"^https?://")
    user: str = Field(pattern=r"^@[^:]+:.+")
    password_file: Path | None = None
    token_file: Path | None = None
    device_name: str = "Platepace"
    messages_per_second: float = Field(default=0.2, gt=0)
    burst: int = Field(default=10, ge=1)


class EncryptionSettings(BaseModel, extra="forbid"):
    """Whether encrypted rooms are read and spoken in, where the crypto store and its key are, and who gets keys."""

    enabled: bool = True
    store: Path = Path("platepace.crypto")
    key_file: Path = Path("platepace.key")
    private_rooms: bool = True
    withhold_from_unsigned: bool = False


class StorageSettings(BaseModel, extra="forbid"):
    """Where everything is kept: a SQLite file by default, PostgreSQL by its URL."""

    url: str = "sqlite+aiosqlite:///platepace.db"


class PeopleSettings(BaseModel, extra="forbid"):
    """Who may invite the bot, and who is chef on top of the rooms' own power levels."""

    may_invite: frozenset[str] = frozenset()
    chefs: frozenset[str] = frozenset()


class KitchenSettings(BaseModel, extra="forbid"):
    """What a kitchen starts with until its chef says otherwise."""

    zone: Annotated[str, AfterValidator(_zone)] = "UTC"
    language: Annotated[str, AfterValidator(_language)] = "en"


class GroupSettings(BaseModel, extra="forbid"):
    """Sister kitchens, whose figures may stand side by side on `board group`."""

    name: str = Field(min_length=1)
    rooms: tuple[str, ...] = Field(min_length=2)


class AdminSettings(BaseModel, extra="forbid"):
    """Where faults are told, and figures."""

    room: str | None = None
    metrics: str | None = Field(default=None, pattern=r"^\S+:\d{1,5}$")
    log_level: str = Field(default="INFO", pattern="^(DEBUG|INFO|WARNING|ERROR)$")


class Settings(BaseModel, extra="forbid"):
    """The whole file."""

    matrix: MatrixSettings
    encryption: EncryptionSettings = EncryptionSettings()
    storage: StorageSettings = StorageSettings()
    people: PeopleSettings = PeopleSettings()
    kitchen: KitchenSettings = KitchenSettings()
    groups: tuple[GroupSettings, ...] = ()
    admin: AdminSettings = AdminSettings()


class Secrets(BaseModel):
    """How the bot logs in, by exactly one of the two; and the crypto store's key, where no file holds it."""

    password: SecretStr | None = None
    token: SecretStr | None = None
    pickle_key: SecretStr | None = None


def load_settings(path: Path) -> Settings:
    """The settings in a TOML file; an OperatorError says what to mend, naming the nearest right key."""
    try:
        return Settings.model_validate(tomllib.loads(path.read_text("utf-8")))
    except OSError as fault:
        raise OperatorError(f"cannot read {path}: {fault.strerror}. Copy config.example.toml to start with.") from fault
    except tomllib.TOMLDecodeError as fault:
        raise OperatorError(f"{path} is not valid TOML: {fault}") from fault
    except ValidationError as fault:
        raise OperatorError("\n".join(_told(error) for error in fault.errors())) from fault


def load_secrets(settings: Settings, environment: Mapping[str, str] = os.environ) -> Secrets:
    """Password or token, from ``PLATEPACE_PASSWORD`` or ``PLATEPACE_TOKEN`` or the files that the settings name.

    And ``PLATEPACE_PICKLE_KEY``, if it is set.
    """
    password = environment.get("PLATEPACE_PASSWORD") or _read_secret(settings.matrix.password_file)
    token = environment.get("PLATEPACE_TOKEN") or _read_secret(settings.matrix.token_file)
    if bool(password) == bool(token):
        which = "both are given" if password else "neither is given"
        raise OperatorError(
            f"give a password or a token for {settings.matrix.user}: {which}. Set PLATEPACE_PASSWORD or "
            "PLATEPACE_TOKEN, or name a file as matrix.password_file or matrix.token_file."
        )
    return Secrets(
        password=_secret(password), token=_secret(token), pickle_key=_secret(environment.get("PLATEPACE_PICKLE_KEY"))
    )


def _secret(given: str | None) -> SecretStr | None:
    return SecretStr(given) if given else None


def _read_secret(path: Path | None) -> str | None:
    if path is None:
        return None
    try:
        return path.read_text("utf-8").strip() or None
    except OSError as fault:
        raise OperatorError(f"cannot read the secret in {path}: {fault.strerror}") from fault


def _told(error: Any) -> str:
    where = ".".join(str(part) for part in error["loc"])
    if error["type"] == "extra_forbidden":
        near = get_close_matches(str(error["loc"][-1]), _keys_beside(error["loc"]), n=1, cutoff=0.4)
        return f"unknown key {where}" + (f"; did you mean {near[0]}?" if near else "")
    return f"{where}: {error['msg']}"


def _keys_beside(location: tuple[int | str, ...]) -> list[str]:
    """The keys that the section of a wrong one knows."""
    model: type[BaseModel] = Settings
    for part in location[:-1]:
        inner = model.model_fields[str(part)].annotation
        if not (isinstance(inner, type) and issubclass(inner, BaseModel)):
            return []
        model = inner
    return list(model.model_fields)
