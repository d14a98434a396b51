"""Clocks are read as people type them, asked about where they may mean two times, and never misread."""

import math
import unicodedata

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from bot.domain.durations import DAY_S, fold_digits, is_clocklike, read_clock
from bot.domain.pace import clock_text
from bot.errors import UserError

SCRIPTS = {"Arabic-Indic": "٠", "Persian": "۰", "Bengali": "০", "Devanagari": "०", "full-width": "０"}


@pytest.mark.parametrize(
    "typed",
    [
        *("8:05", "08:05", "8m05", "8m05s", "8m 5s", "8'05\"", "8’05”", "8′05″", "8'05''", "485s", "485 sec", '485"'),
        *("8 min 5", "8 min 05 s", "8 minutes 5 seconds", "8 05", " 8:05 ", "8∶05", "PT8M5S", "pt485s", "0:08:05"),
    ],
)
def test_ways_of_writing_8_05(typed: str) -> None:
    """Every way of writing eight minutes and five seconds in chat.md, and its near kin, is 485 seconds."""
    assert read_clock(typed) == 485


@pytest.mark.parametrize("script", SCRIPTS)
def test_scripts(script: str) -> None:
    """8:05 is read in every script's digits, with plain and full-width colons; the zeros are Unicode's own."""
    zero = SCRIPTS[script]
    assert unicodedata.decimal(zero) == 0
    eight, five = chr(ord(zero) + 8), chr(ord(zero) + 5)
    assert read_clock(f"{eight}:{zero}{five}") == read_clock(f"{eight}：{zero}{five}") == 485


def test_hours() -> None:
    """An hour, two minutes and three seconds; a whole day is the most."""
    assert read_clock("1:02:03") == read_clock("1h 2m 3s") == 3723
    assert read_clock("24:00:00") == DAY_S


@pytest.mark.parametrize(
    ("typed", "minutes", "seconds", "decimal", "clock", "converted"),
    [
        ("3.20", 3, 20, "3.2", "3:20", "3:12"),
        ("8.05", 8, 5, "8.05", "8:05", "8:03"),
        ("8,05", 8, 5, "8.05", "8:05", "8:03"),
        ("٨٫٠٥", 8, 5, "8.05", "8:05", "8:03"),
        ("8.5", 8, 5, "8.5", "8:05", "8:30"),
    ],
)
def test_clock_or_decimal(typed: str, minutes: int, seconds: int, decimal: str, clock: str, converted: str) -> None:
    """A point may part minutes from seconds or be decimal: asked, with both readings as they can be sent."""
    with pytest.raises(UserError, match="clock-or-decimal") as asked:
        read_clock(typed)
    assert asked.value.values == {
        "minutes": minutes,
        "seconds": seconds,
        "decimal": decimal,
        "clock": clock,
        "converted": converted,
    }


def test_point_that_means_one_time() -> None:
    """Where both readings are the same second nothing is asked; where only one is a time that one is offered."""
    assert read_clock("3.00") == 180
    with pytest.raises(UserError, match="clock-in-decimals") as asked:
        read_clock("8.65")
    assert asked.value.values == {"decimal": "8.65", "converted": "8:39"}


@pytest.mark.parametrize(
    ("typed", "key"),
    [("8:65", "clock-past-59"), ("1:75:00", "clock-past-59"), ("8m65", "clock-past-59"), ("8'60\"", "clock-past-59")]
    + [("24:00:01", "clock-over-a-day"), ("1441:00", "clock-over-a-day"), ("2000.5", "clock-over-a-day")]
    + [(wrong, "clock-unreadable") for wrong in ("nan", "inf", "-8:05", "-485s", "1e3", "8:5", "8", "", "0:00", "8²")]
    + [("9" * 10_000, "clock-unreadable"), ("9" * 10_000 + ":00", "clock-unreadable")]
    + [("8:05" + " " * 200 + "x", "clock-unreadable"), ("0." + "0" * 60 + "1", "clock-unreadable")],
)
def test_refused(typed: str, key: str) -> None:
    """What cannot be a clock is refused with a sentence of its own."""
    with pytest.raises(UserError, match=key):
        read_clock(typed)


@given(st.integers(1, DAY_S))
def test_shown_times_read_back(seconds: int) -> None:
    """Every time that the bot shows can be sent back to it."""
    assert read_clock(clock_text(seconds)) == seconds


@given(st.integers(0, 999), st.integers(0, 59), st.sampled_from([*SCRIPTS.values(), "0"]))
def test_all_ways_agree(minutes: int, seconds: int, zero: str) -> None:
    """Every way of writing one time, in every script, reads as the same seconds."""
    total = 60 * minutes + seconds
    ways = [f"{minutes}:{seconds:02d}", f"{minutes}m{seconds:02d}", f"{minutes}'{seconds:02d}\"", f"{total}s"]
    ways += [f"{minutes} min {seconds}", f"{minutes}m {seconds}s", f"PT{minutes}M{seconds}S"]
    in_script = {ord("0") + digit: chr(ord(zero) + digit) for digit in range(10)}
    if total:
        assert {read_clock(way.translate(in_script)) for way in ways} == {total}


@given(st.integers(0, 200), st.integers(0, 99), st.sampled_from(".,"))
def test_decimals_are_never_guessed(minutes: int, part: int, point: str) -> None:
    """Two figures after a point give a time only where the clock and the decimal minutes are the same second."""
    try:
        read = read_clock(f"{minutes}{point}{part:02d}")
    except UserError:
        return
    assert read == 60 * minutes + part
    assert math.isclose(read, 60 * (minutes + part / 100), abs_tol=0.5)


@given(st.text() | st.text(alphabet="0123456789:.,'\"hmspt +-²٠", max_size=60))
@example("p")
@example("::")
def test_nothing_but_seconds_or_a_kind_word(text: str) -> None:
    """Whatever is typed gives whole seconds within a day or a UserError whose values can stand in a sentence."""
    read: int | UserError
    try:
        read = read_clock(text)
    except UserError as refused:
        read = refused
    if isinstance(read, int):
        assert 1 <= read <= DAY_S
        assert is_clocklike(text)
    else:
        assert all(len(str(value)) <= 40 and "`" not in str(value) for value in read.values.values())


@given(st.text())
def test_folding_once_is_enough(text: str) -> None:
    """Folding leaves no decimal digit of another script, and a second folding changes nothing."""
    folded = fold_digits(text)
    assert not any(c.isdecimal() and not c.isascii() for c in folded)
    assert fold_digits(folded) == folded


@pytest.mark.parametrize(
    "typed", ["8:05", "8:65", "8.05", "8,05", "8:5", "-8:05", "485s", "8 min 5", "8'05\"", "PT90S"]
)
def test_clocklike(typed: str) -> None:
    """What was meant as a clock is told from other words even where it is wrong."""
    assert is_clocklike(typed)


@pytest.mark.parametrize("typed", ["8", "86", "11/12", "6B", "rim", "", "p", "10-4", "nan", "@lio:inn.example"])
def test_not_clocklike(typed: str) -> None:
    """Numbers, counts, labels and names are no clocks."""
    assert not is_clocklike(typed)
