"""`platepace rehearse FILE`: a scripted chat is played with no server; a line that cannot be played is named."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from bot.errors import BAD_SCRIPT, OperatorError
from bot.rehearse import rehearse

A_WEEK = Path(__file__).parents[1] / "scripts" / "a_week.jsonl"
NOON = '{"time": "2026-11-23T12:00+00:00", "sender": "ime"'


def played(script: Path) -> list[str]:
    """The replies as they are printed."""
    told: list[str] = []
    rehearse(script, as_json=False, write=told.append)
    return told


def figured(script: Path) -> list[dict[str, object]]:
    """The replies as `--json` prints them."""
    told: list[str] = []
    rehearse(script, as_json=True, write=told.append)
    return [json.loads(line) for line in told]


def rehearsed(script: Path, directory: Path) -> subprocess.CompletedProcess[str]:
    """The command as it is typed."""
    command = [sys.executable, "-m", "bot", "rehearse", str(script)]
    return subprocess.run(command, capture_output=True, text=True, check=False, cwd=directory)


@pytest.fixture(scope="module")
def week() -> list[str]:
    """The replies to the example of a week."""
    return played(A_WEEK)


@pytest.fixture
def script(tmp_path: Path) -> Path:
    """Where a script of one's own may be written."""
    return tmp_path / "script.jsonl"


@pytest.mark.parametrize(
    "told",
    [
        "Mon 23 Nov 09:01, kitchen: Set. Monday 15:00 (Europe/London): drill 6, Rope coil. Next: Monday 23 November.",
        "Mon 23 Nov 09:05, kitchen: The chef sets drills. Send yours as an idea?",
        "Mon 23 Nov 15:05, kitchen, thread: Net 4:09 (one redo cost 0:49). 4.45 s a touch.",
        "Mon 23 Nov 15:30, kitchen, thread: Is that 3 min 20 s or 3.2 minutes? Send `3:20` or `3:12`.",
        "Mon 23 Nov 15:32, kitchen, thread: First mark for Kwabena on Rope coil: 3:20.",
        "Tue 24 Nov 14:40, kitchen, thread: Five clean plates kept. No time this run; try for six.",
        "Wed 25 Nov 14:36, kitchen, thread: Corrected: Noor's best on Rope coil is 3:04.",
        "Thu 26 Nov 14:46, kitchen, thread: Heard. 3:12, 8 of 8. 3.43 s a touch, 1.75 levelled.",
        "Mon 23 Nov 15:05, kitchen: \N{MEMO}",
        "Mon 23 Nov 15:00, kitchen: (pinned)",
    ],
)
def test_a_week(week: list[str], told: str) -> None:
    """The week of the example is played; each reply stands with the kitchen's time and its place."""
    assert told in week


def test_a_week_is_told_line_by_line(week: list[str]) -> None:
    """Private replies are told as such, further lines are set in, talk gets none, the week is closed once."""
    first_lines = [reply.split("\n")[0] for reply in week]
    assert "Fri 27 Nov 10:01, private @noor: 2 of 8 first runs. Too early to call." in first_lines
    assert [reply for reply in week if reply.startswith("Mon 23 Nov 21:")] == []
    assert len([reply for reply in week if "the week is closed" in reply]) == 1
    (card,) = [reply for reply in week if reply.startswith("Mon 23 Nov 15:00, kitchen: Rope coil (drill 6)")]
    assert all(line.startswith("    ") for line in card.split("\n")[1:])
    assert card.endswith("\n    [drill-6.png]")


def test_json_has_the_numbers_behind_a_reply() -> None:
    """`--json` gives time, room, thread, style, text and the figures: 249 s net, 49 s of it for the redo."""
    replies = figured(A_WEEK)
    assert replies == sorted(replies, key=lambda reply: str(reply["time"]))
    (net,) = [reply for reply in replies if str(reply["text"]).startswith("Net 4:09")]
    assert net.keys() == {"time", "room", "thread", "style", "text", "attachment", "figures"}
    assert (net["time"], net["room"], net["style"]) == ("2026-11-23T15:05:00+00:00", "kitchen", "notice")
    figures = net["figures"]
    assert isinstance(figures, dict)
    assert (figures["clock_s"], figures["redo"], round(figures["net_s"])) == (200, 1, 249)


@pytest.mark.parametrize(
    ("rows", "told"),
    [
        pytest.param([NOON + ', "tetx": "!join"}'], "line 1: unknown key 'tetx'; did you mean 'text'?", id="key"),
        pytest.param([NOON + "}", NOON.replace("12:00", "11:59") + "}"], "line 2: time goes back", id="time"),
        pytest.param([NOON.replace("+00:00", "") + "}"], "line 1: time: ", id="no offset"),
        pytest.param(["", "{"], "line 2: Invalid JSON", id="no JSON"),
        pytest.param(['{"time": "2026-11-23T12:00Z"}'], "line 1: sender: Field required", id="sender"),
        pytest.param([NOON + ', "edit": "a", "text": "b"}'], "no earlier line has the id 'a'", id="id"),
        pytest.param(
            [NOON + ', "id": "noor-1"}', NOON + ', "delete": "nor-1"}'], "did you mean 'noor-1'?", id="near id"
        ),
        pytest.param([NOON + ', "id": "a"}', NOON + ', "id": "a"}'], "line 2: the id 'a' is taken", id="same id"),
        pytest.param([NOON + ', "react": "drill"}'], "line 1: react needs a key", id="react"),
        pytest.param([NOON + ', "react": "drill", "key": "x", "delete": "drill"}'], "one of the three", id="two"),
        pytest.param([NOON + ', "edit": "drill"}'], "an edit needs it", id="edit"),
        pytest.param([NOON + ', "text": "3:02 8/8", "thread": "drill"}'], "no drill has been posted", id="drill"),
    ],
)
def test_a_line_that_cannot_be_played_is_named(script: Path, rows: list[str], told: str) -> None:
    """Every fault is one sentence with the line's number and what was meant, and has an exit code of its own."""
    script.write_text("\n".join(rows), "utf-8")
    with pytest.raises(OperatorError) as fault:
        played(script)
    assert told in str(fault.value)
    assert fault.value.exit_code == BAD_SCRIPT


def test_nothing_is_played_before_all_is_read(script: Path) -> None:
    """A fault in the last line is found before the first is played."""
    script.write_text(NOON + ', "text": "!drills"}\n{"a": 1}', "utf-8")
    told: list[str] = []
    with pytest.raises(OperatorError, match="line 2: time: Field required; sender: Field required; unknown key 'a'"):
        rehearse(script, as_json=False, write=told.append)
    assert told == []


def test_an_empty_script_says_nothing(script: Path) -> None:
    """No lines, no replies."""
    script.write_text("\n\n", "utf-8")
    assert played(script) == []


def test_people_rooms_and_power(script: Path) -> None:
    """A sender in full, another name, a second kitchen and a power given are all as the script says."""
    rows: list[dict[str, object]] = [
        {"sender": "ime", "text": "!drills"},
        {"sender": "@noor:tern.example", "name": "Noor of the Pass", "text": "!join"},
        {"sender": "bastian", "text": "!close"},
        {"sender": "bastian", "power": 50, "text": "!close"},
        {"sender": "anselm", "room": "upper-lock", "text": "!close"},
    ]
    timed = [{"time": f"2026-11-23T12:0{nth}+00:00", **row} for nth, row in enumerate(rows)]
    script.write_text("\n".join(map(json.dumps, timed)), "utf-8")
    told = [str(reply["text"]) for reply in figured(script)]
    assert any(text.startswith("Counted in, Noor of the Pass.") for text in told)
    none_posted = "No drill has been posted here yet"
    assert [text[: len(none_posted)] for text in told if text.startswith(("That word", none_posted))] == [
        "That word is the chef's.",
        none_posted,
        none_posted,
    ]


def test_command_line(tmp_path: Path) -> None:
    """The command prints the replies and exits 0; for a fault it prints one sentence and exits with its code."""
    good = rehearsed(A_WEEK, tmp_path)
    assert (good.returncode, good.stderr) == (0, "")
    assert good.stdout.startswith("Mon 23 Nov 09:00, kitchen: I am Platepace")
    bad = rehearsed(tmp_path / "gone.jsonl", tmp_path)
    assert (bad.returncode, bad.stdout) == (BAD_SCRIPT, "")
    assert bad.stderr.startswith("platepace: cannot read ")
