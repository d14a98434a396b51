"""Results are read in any order, faulty ones are asked about, and ordinary talk stays talk."""

import time
from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from bot.domain.run import Sent
from bot.errors import UserError
from bot.words.result_words import ENGLISH, NUMBERED, REASONS
from bot.words.submission import MOST_LINES, lone_clock, lone_count, read_answer, read_lines

EIGHT_05 = Sent(485, accepted=11, plates=12)

READ = {
    "8:05 11/12": EIGHT_05,
    "11/12 8:05": EIGHT_05,
    "8 05 11 of 12": EIGHT_05,
    "11 of 12 8 05": EIGHT_05,
    "8 min 5 11/12": EIGHT_05,
    "8 m 05 s 11 / 12": EIGHT_05,
    "485s 11/12": EIGHT_05,
    "8m05 11/12": EIGHT_05,
    "8'05\" 11/12": EIGHT_05,
    "8’05” 11/12": EIGHT_05,
    "PT8M5S 11/12": EIGHT_05,
    "٨:٠٥ ١١/١٢": EIGHT_05,
    "۸:۰۵ ۱۱/۱۲": EIGHT_05,
    "৮:০৫ ১১/১২": EIGHT_05,
    "८:०५ ११/१२": EIGHT_05,
    "８：０５　１１／１２": EIGHT_05,
    "\u200f8:05 11/12\u200f": EIGHT_05,
    "`8:05 11/12`": EIGHT_05,
    "8:05, 11/12.": EIGHT_05,
    "8 min 11 of 12": replace(EIGHT_05, clock_s=480),
    "8:05 redo 1": Sent(485, redo=1),
    "8:05 all": Sent(485, all_good=True),
    "3:00 stopped 5": Sent(180, stopped=5),
    "3:20 7/8 fell": Sent(200, 7, 8, reasons=("fell",)),
    "8:05 11/12 Rim, flat rim": replace(EIGHT_05, reasons=("rim", "flat")),
    "3:20 8/8 rebuilt 1": Sent(200, 8, 8, rebuilt=1),
    "8:05 11/12 fix 2 wipe 1": replace(EIGHT_05, fixed=2, wipes=1),
    "2:10 6/8 left 2": Sent(130, 6, 8, left=2),
    "3:20 9/8": Sent(200, 9, 8),
    "at 02:10 3:31 8/8": Sent(211, 8, 8, at="02:10"),
    "3:31 8/8 at 2:10": Sent(211, 8, 8, at="02:10"),
    "yesterday 8:05 11/12": replace(EIGHT_05, yesterday=True),
    "3:34 8/8 steps 0:41 0:33 2:20": Sent(214, 8, 8, splits_s=(41, 33, 140)),
    "steps 0:41 0:33 8 of 8 1:14": Sent(74, 8, 8, splits_s=(41, 33)),
    "6B 8:05 11/12": replace(EIGHT_05, drill="6B"),
    "8:05 11/12 6b": replace(EIGHT_05, drill="6B"),
    "6 8:05 11/12": replace(EIGHT_05, drill="6"),
    "12 10 45 8/8": Sent(645, 8, 8, drill="12"),
    "6M 8:05 11/12": replace(EIGHT_05, drill="6M"),
    "6m 11/12": Sent(360, 11, 12),
    "2:58 8/8 for @lio": Sent(178, 8, 8, mate="@lio"),
    "2:58 8/8 for @lio:tern.example": Sent(178, 8, 8, mate="@lio:tern.example"),
    "2:58 8/8 for Lio:": Sent(178, 8, 8, mate="Lio"),
    "2:58 8/8 with Noor": Sent(178, 8, 8, partner="Noor"),
    "2:58 8/8 for Rim": Sent(178, 8, 8, mate="Rim"),
    "for Night Cook 2:58 8/8": Sent(178, 8, 8, mate="Night Cook"),
    "2:58 8/8 for [Lio](https://matrix.to/#/%40lio%3Atern.example)": Sent(178, 8, 8, mate="@lio:tern.example"),
}
NAMES = ["Night Cook", "Night", "Lio"]

ASKED = {
    "3.20 8/8": "clock-or-decimal",
    "8,05 11/12": "clock-or-decimal",
    "8.65 11/12": "clock-in-decimals",
    "8:65 11/12": "clock-past-59",
    "8:5 11/12": "clock-unreadable",
    "-3:20 8/8": "clock-unreadable",
    "25:00:00 8/8": "clock-over-a-day",
    "9" * 50 + ":00 8/8": "clock-unreadable",
    "8:65 redo 1": "clock-past-59",
    "8:05 11/12 7:50 12/12": "one-run-a-line",
    "8:05 8:06 11/12": "one-run-a-line",
    "8:05 11/12 all": "one-run-a-line",
    "8:05 11/12 rebuilt 1 rebuilt 2": "said-twice",
    "8:05 11/12 rebuilt": "how-many",
    "8:05 rebuilt 11/12": "how-many",
    "8:05 11/12 at 14.38": "at-unreadable",
    "8:05 11/12 at 24:00": "at-unreadable",
    "8:05 11/12 at 2:10 pm": "at-unreadable",
    "8:05 11/12 at 2pm": "at-unreadable",
    "8:05 11/12 steps 0.41 0:33": "clock-or-decimal",
    "8:05 11/12 steps 41 33": "clock-unreadable",
}

TALK = [
    *("table 12?", "86 the trout", "why", "next", "hold on", "see you at 8:05", "all at 8:05", "", "  ", "\n"),
    *("8:05 11/12 for the trout table was mad", "8:05 11/12?", "12 tops at 8:05", "all left 8:05", "wipe all 8:05"),
    *(
        "2/2 trout",
        "8:05",
        "3.20",
        "11/12",
        "all",
        "redo 1",
        "rim",
        "8:05 rim",
        "8:05 left 2",
        "11/12 at 10:30",
        "for 8/8",
    ),
    *("nan 8/8", "inf 8/8", "1e3 8/8", "8:05 11/x", "8:05 ½", "look\n8:05 11/12", "8:05 11/12\ndone\nsee you at 9"),
    *("9" * 20_000, "8:05 11/12 " * 2_000, "8:05 11/12 " + "rim " * 400),
]


def is_submission(text: str) -> bool:
    """Whether this is answered bare in the kitchen's room: results, or lines meant as such."""
    try:
        return bool(read_lines(text))
    except UserError:
        return True


@pytest.mark.parametrize("line", READ)
def test_read(line: str) -> None:
    """What chat.md lists as one line is read as it says."""
    assert read_lines(line, NAMES) == [(line, READ[line])]
    assert is_submission(line) or "Night Cook" in line


@pytest.mark.parametrize("line", ASKED)
def test_asked(line: str) -> None:
    """A line that was meant as a result is never passed over: what is wrong with it is asked."""
    assert is_submission(line)
    ((_, read),) = read_lines(line)
    assert isinstance(read, UserError)
    assert read.key == ASKED[line]


@pytest.mark.parametrize("text", TALK)
def test_talk(text: str) -> None:
    """Ordinary talk is silence, whatever numbers it holds."""
    assert read_lines(text) == []
    assert not is_submission(text)


def test_point_offers_both_readings() -> None:
    """3.20 is 3 min 20 s or 3.2 minutes: the answer offers 3:20 and 3:12."""
    ((_, read),) = read_lines("3.20 8/8")
    assert isinstance(read, UserError)
    assert (read.values["clock"], read.values["converted"], read.values["decimal"]) == ("3:20", "3:12", "3.2")


@pytest.mark.parametrize("pieces", list(permutations(["8:05", "11/12", "rim", "rebuilt 1", "yesterday"])))
def test_any_order(pieces: tuple[str, ...]) -> None:
    """The parts of a line may stand in any order."""
    line = " ".join(pieces)
    assert read_lines(line) == [(line, replace(EIGHT_05, reasons=("rim",), rebuilt=1, yesterday=True))]


def test_friday_names_the_bad_line() -> None:
    """Several lines in one message are judged singly and each bad one says what is wrong with it."""
    lines = ["8:05 11/12", "7:58 12/12 rim", "7.40 12/12", "7:4O 12/12", "7:31", "12/12", "tired", "7:20 all"]
    read = dict(read_lines("\n\n".join(lines)))
    assert list(read) == lines
    assert [line for line, result in read.items() if isinstance(result, Sent)] == [lines[0], lines[1], lines[7]]
    bad = [result for result in read.values() if isinstance(result, UserError)]
    assert [problem.key for problem in bad] == [
        *("clock-or-decimal", "line-unreadable", "count-needed", "clock-needed", "line-unreadable")
    ]
    assert bad[1].values == {"line": "7:4O 12/12"}
    assert bad[2].values == {"clock": "7:31"}
    assert bad[3].values == {"good": 12, "plates": 12}


def test_two_lines_one_bad() -> None:
    """A good line beside one that misses its count is taken, and the other is named."""
    (_, good), (_, bad) = read_lines("8:05 11/12\n7:58")
    assert good == EIGHT_05
    assert isinstance(bad, UserError)


def test_too_many_lines() -> None:
    """More lines than anybody runs in a month are refused as one; as many as allowed are read."""
    assert len(read_lines("\n".join(["8:05 11/12"] * MOST_LINES))) == MOST_LINES
    many = "\n".join(["8:05 11/12"] * (MOST_LINES + 1))
    assert is_submission(many)
    with pytest.raises(UserError, match="too-many-lines"):
        read_lines(many)


def test_lone_clock() -> None:
    """A clock alone, with or without details, is known as one; a faulty one is asked about; nothing else is one."""
    assert lone_clock("8:05") == Sent(485)
    assert lone_clock("6B 8:05 rim at 14:38") == Sent(485, reasons=("rim",), at="14:38", drill="6B")
    assert lone_clock("8:05 for Night Cook", NAMES) == Sent(485, mate="Night Cook")
    with pytest.raises(UserError, match="clock-or-decimal"):
        lone_clock("3.20")
    for other in ["11/12", "8:05 11/12", "see you at 8:05", "8:05\n8:06", "all", "", "86", "8:05?"]:
        assert lone_clock(other) is None


def test_lone_count() -> None:
    """A count alone answers a question; a whole result or talk does not."""
    assert lone_count("11/12") == Sent(None, accepted=11, plates=12)
    assert lone_count("11 of 12 rim") == Sent(None, accepted=11, plates=12, reasons=("rim",))
    assert lone_count("all") == Sent(None, all_good=True)
    assert lone_count("redo 1") == Sent(None, redo=1)
    for other in ["8:05 11/12", "8:05", "all of them", "86 the trout", "11/12\n11/12", "", "yes"]:
        assert lone_count(other) is None


def test_answer_without_a_clock() -> None:
    """8/8 quick as an answer is asked for its clock; a count is taken; anything else is no answer."""
    with pytest.raises(UserError, match="clock-needed") as asked:
        read_answer("8/8 quick")
    assert asked.value.values == {"good": 8, "plates": 8}
    assert read_answer("8/8") == Sent(None, accepted=8, plates=8)
    for other in ["2/2 trout and then two more for nine", "yes", "8:05 8/8", "8/8 at 8:05 sharp", "quick"]:
        assert read_answer(other) is None


def test_words_are_one_list() -> None:
    """Every reason and every numbered detail has its own word, and all are written in small letters."""
    assert set(ENGLISH.values()) >= REASONS | NUMBERED
    assert not REASONS & NUMBERED
    assert all(word == word.casefold() and not any(c.isspace() or c.isdigit() for c in word) for word in ENGLISH)


clocks = st.integers(1, 5_999).map(lambda s: (f"{s // 60}:{s % 60:02d}", s))
counts = st.tuples(st.integers(0, 200), st.integers(1, 200))


@given(clocks, counts, st.lists(st.sampled_from(sorted(REASONS)), max_size=3, unique=True), st.booleans())
def test_written_and_read_back(clock: tuple[str, int], count: tuple[int, int], why: list[str], first: bool) -> None:
    """Any clock, count and reasons that are written out are read back."""
    parts = [clock[0], f"{count[0]}/{count[1]}", *why]
    line = " ".join(parts if first else reversed(parts))
    expected = Sent(clock[1], *count, reasons=tuple(why if first else reversed(why)))
    assert read_lines(line) == [(line, expected)]


pieces = st.sampled_from([*ENGLISH, *" ".join([*READ, *ASKED, *TALK[:30]]).split(), "\n", "@lio", "👍", "\u202e", "/"])
mangled = st.builds(
    lambda line, at, put, cut: line[: at % (len(line) + 1)] + put + line[at % (len(line) + 1) + cut :],
    st.sampled_from([*READ, *ASKED]),
    st.integers(0, 80),
    st.text(max_size=3) | st.sampled_from(["0", ":", ".", "/", " ", "\n", "9" * 400, "%", "["]),
    st.integers(0, 4),
)


@given(st.text() | mangled | st.lists(pieces, max_size=12).map(" ".join))
@example("at ²")
@example("8:05 11/12 at 1" + "x" * 300)
@example("for")
@example("steps")
@example("[x](https://matrix.to/#/@)")
def test_any_text(text: str) -> None:
    """Any text at all is read, asked about or passed over, with no other error; and nothing impossible is read."""
    for _, read in read_lines(text, NAMES):
        if isinstance(read, UserError):
            assert all(len(str(value)) <= 100 for value in read.values.values())
        else:
            assert read.clock_s is not None
            assert 1 <= read.clock_s <= 86_400
            assert all(split > 0 for split in read.splits_s)
    for reader in (lone_clock, lone_count, read_answer):
        _answers_or_asks(reader, text)


def _answers_or_asks(reader: object, text: str) -> None:
    assert callable(reader)
    try:
        answer = reader(text)
    except UserError as asked:
        answer = asked
    assert answer is None or isinstance(answer, Sent | UserError)


@pytest.mark.parametrize(
    "unit",
    [
        *("8:05 11/12 rim\n", "8:05 ", "8 05 ", "9", ":", "'", "[a](", "at 1 ", "steps 0:41 ", "1 of ", "a\n", "6 "),
        *("8 05 " * 199 + "\n", "8 min 5 " * 120 + "\n", "1 " * 499 + "\n", "7 steps " + "0:41 " * 190 + "\n"),
    ],
)
def test_time_grows_with_length_alone(unit: str) -> None:
    """60 kB of anything is judged in a moment: in under two seconds, where a backtracking reader would take minutes."""
    text = unit * (60_000 // len(unit))
    began = time.process_time()
    for reader in (is_submission, lone_count, lone_clock, read_answer):
        _answers_or_asks_or_tells(reader, text)
    assert time.process_time() - began < 2


def _answers_or_asks_or_tells(reader: object, text: str) -> None:
    assert callable(reader)
    if reader is is_submission:
        assert reader(text) in (True, False)
    else:
        _answers_or_asks(reader, text)
