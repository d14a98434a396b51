"""A script: one JSON object a line, all of them checked before the first is played."""

from difflib import get_close_matches
from pathlib import Path
from typing import Self

from pydantic import AwareDatetime, BaseModel, ConfigDict, Field, ValidationError, model_validator

from bot.errors import BAD_SCRIPT, OperatorError

HOME = "tern.example"
DRILL, KITCHEN, PRIVATE = "drill", "kitchen", "private"


class Line(BaseModel):
    """One line of a script: who does what, where and when."""

    model_config = ConfigDict(extra="forbid", frozen=True)

    time: AwareDatetime
    sender: str = Field(pattern=r"^@?[^@:\s]+(:\S+)?$")
    room: str = Field(default=KITCHEN, pattern=r"^[\w.-]+$")
    name: str | None = None
    power: int | None = None
    id: str | None = None
    text: str | None = None
    thread: str | None = None
    reply: str | None = None
    edit: str | None = None
    delete: str | None = None
    react: str | None = None
    key: str | None = None

    @model_validator(mode="after")
    def _does_one_thing(self) -> Self:
        if sum(deed is not None for deed in (self.edit, self.delete, self.react)) > 1:
            raise ValueError("a line edits, deletes or reacts, one of the three")
        if (self.key is None) != (self.react is None):
            raise ValueError("react needs a key, the emoji, and a key needs react")
        if (self.edit is not None and self.text is None) or (self.text is not None and (self.delete or self.react)):
            raise ValueError("text goes with a message or an edit, and an edit needs it")
        return self

    @property
    def person(self) -> str:
        """The sender's full user id."""
        person = self.sender if self.sender.startswith("@") else f"@{self.sender}"
        return person if ":" in person else f"{person}:{HOME}"

    @property
    def target(self) -> str | None:
        """The line that this one edits, deletes or reacts to."""
        return next((name for name in (self.edit, self.delete, self.react) if name is not None), None)

    @property
    def refers_to(self) -> list[str]:
        """The ids of the lines that this one concerns, and ``drill``."""
        return [name for name in (self.thread, self.reply, self.target) if name is not None]


def read_script(path: Path) -> list[tuple[str, Line]]:
    """The lines, each with where it stands, all of them checked before the first is played."""
    try:
        rows = path.read_text("utf-8").split("\n")
    except (OSError, UnicodeDecodeError) as fault:
        raise OperatorError(f"cannot read {path}: {fault}", BAD_SCRIPT) from fault
    script: list[tuple[str, Line]] = []
    named = {DRILL}
    for number, row in enumerate(rows, 1):
        if row.strip():
            where = f"{path}, line {number}"
            line = _read(where, row)
            _check(where, line, script[-1][1] if script else None, named)
            script.append((where, line))
            named |= {line.id} if line.id else set()
    return script


def _read(where: str, row: str) -> Line:
    try:
        return Line.model_validate_json(row)
    except ValidationError as fault:
        problems = "; ".join(
            _problem(str(e["loc"][0]) if e["loc"] else "", e["type"], e["msg"]) for e in fault.errors()
        )
        raise OperatorError(f"{where}: {problems}", BAD_SCRIPT) from fault


def _problem(key: str, kind: str, message: str) -> str:
    if kind == "extra_forbidden":
        near = get_close_matches(key, Line.model_fields, n=1, cutoff=0.4)
        return f"unknown key {key!r}" + (f"; did you mean {near[0]!r}?" if near else "")
    return f"{key}: {message}" if key else message.removeprefix("Value error, ")


def _check(where: str, line: Line, before: Line | None, named: set[str]) -> None:
    """Refuse a line that goes back in time, gives an id twice, or concerns one that has not been given."""
    if before and line.time < before.time:
        raise OperatorError(f"{where}: time goes back; lines stand in the order in which they were sent", BAD_SCRIPT)
    if line.id in named:
        raise OperatorError(f"{where}: the id {line.id!r} is taken", BAD_SCRIPT)
    for name in line.refers_to:
        if name not in named:
            near = get_close_matches(name, named, n=1)
            told = f"; did you mean {near[0]!r}?" if near else ""
            raise OperatorError(f"{where}: no earlier line has the id {name!r}{told}", BAD_SCRIPT)
