"""The rooms as they are, printed for people who read them on paper: who said what, and when."""

from collections.abc import Mapping, Sequence
from datetime import UTC, date, datetime
from textwrap import wrap
from zoneinfo import ZoneInfo

from bot.demo.people import Cast
from bot.matrix.wire import News

_ZONE = ZoneInfo("Europe/London")
_WIDTH = 96
_NAME_WIDTH = 10
_LONGEST_QUOTE = 30


class Transcript:
    """Prints each event once, under its day's heading."""

    def __init__(self, bot_id: str, cast: Cast) -> None:
        self._names = {bot_id: "Platepace"} | {cast.user_id(name): name for name in cast.people}
        self._said: dict[str, tuple[str, str]] = {}
        self._seen: set[str] = set()
        self._day: date | None = None

    def show(self, rooms: Sequence[tuple[News, str, str]]) -> None:
        """Print what is new in some rooms (the news, the room, whom it is private with), the earliest first."""
        new = [
            (event, private_with)
            for news, room_id, private_with in rooms
            if room_id in news.rooms.join
            for event in news.rooms.join[room_id].timeline.events
            if isinstance(event, dict) and event["event_id"] not in self._seen
        ]
        for event, private_with in sorted(new, key=lambda told: int(told[0]["origin_server_ts"])):
            self._seen.add(event["event_id"])
            self._show(event, private_with)

    def note(self, text: str) -> None:
        """Print what happened to the room rather than in it."""
        _write(f"{'':7}({text})")

    def _show(self, event: Mapping[str, object], private_with: str) -> None:
        told = self._told(event, private_with)
        if told is None:
            return
        when = datetime.fromtimestamp(int(str(event["origin_server_ts"])) / 1000, UTC).astimezone(_ZONE)
        if when.date() != self._day:
            self._day = when.date()
            _write(f"\n{when:%A} {when.day} {when:%B}\n")
        name, text, in_thread = told
        where = f"(private, {private_with}) " if private_with else "  " if in_thread else ""
        _print_lines(f"{when:%H:%M}  {where}{name:<{_NAME_WIDTH}} ", text)

    def _told(self, event: Mapping[str, object], private_with: str) -> tuple[str, str, bool] | None:
        """Name, words and whether they stand in a thread; None for what nobody sees."""
        name = self._names.get(str(event["sender"]), str(event["sender"]))
        content = event["content"] if isinstance(event["content"], dict) else {}
        relation = content.get("m.relates_to", {})
        match event["type"]:
            case "m.room.message" if relation.get("rel_type") == "m.replace":
                _, before = self._said.get(relation["event_id"], ("", ""))
                text = content["m.new_content"]["body"]
                self._said[relation["event_id"]] = (name, text)
                return name, f'changes "{_cut(before)}" to "{_cut(text)}"', True
            case "m.room.message" if "body" in content:
                self._said[str(event["event_id"])] = (name, str(content["body"]))
                return name, str(content["body"]), relation.get("rel_type") == "m.thread"
            case "m.reaction":
                whose, what = self._said.get(relation["event_id"], ("", ""))
                self._said[str(event["event_id"])] = (name, f"{relation['key']} on {whose}'s {_cut(what)}")
                return name, f"{relation['key']} on {whose}'s {_cut(what)}", True
            case "m.room.redaction":
                _, what = self._said.get(str(event.get("redacts") or content.get("redacts")), ("", ""))
                return name, f'takes back "{_cut(what)}"', True
            case "m.room.member" if content.get("membership") == "join" and name == "Platepace":
                return name, "opens a room of two" if private_with else "comes in, invited by the chef", False
        return None


def _cut(text: str) -> str:
    """The beginning of what was said, enough to know it by."""
    line = text.splitlines()[0] if text else ""
    return line if len(line) <= _LONGEST_QUOTE else f"{line[:_LONGEST_QUOTE]}..."


def _print_lines(head: str, text: str) -> None:
    """The text beside its head, every further line under the first."""
    indent = " " * len(head)
    lines = [part for line in text.splitlines() for part in wrap(line, _WIDTH - len(head)) or [""]]
    for nth, line in enumerate(lines):
        _write(f"{indent if nth else head}{line}")


def _write(line: str) -> None:
    print(line, flush=True)  # noqa: T201 - the transcript is what the demo is for
