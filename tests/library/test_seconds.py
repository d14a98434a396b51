"""The seconds that ship."""

import pytest

from bot.library.seconds import load_seconds

# Fixtures: the project's own standard seconds a touch, decided before this code (common practice, no source).
LISTED = {
    "set": 2.5, "place": 1.5, "pair": 1.0, "leaf": 2.4, "dot": 1.2, "bead": 0.9, "mound": 2.5, "pull": 3.0, "line": 3.2,
    "brush": 3.0, "crumb": 2.6, "shingle": 2.2, "sauce": 3.5, "lean": 3.5, "twirl": 5.0, "quenelle": 6.5,
    "two-spoon quenelle": 9.0, "ring fill": 5.0, "press": 3.0, "lift": 2.5, "wipe": 2.0,
}  # fmt: skip


def test_the_listed_seconds_are_loaded() -> None:
    """Every technique of the list has its seconds, and there is no other."""
    assert {name: t.seconds for name, t in load_seconds().techniques.items()} == LISTED


def test_handling_has_its_seconds() -> None:
    """Tool change, step along the row, start and stop, and a clean plate are those of the list."""
    seconds = load_seconds()
    handling = (seconds.tool_change_s, seconds.column_s, seconds.start_stop_s, seconds.change_plate_s)
    assert handling == (5.0, 0.7, 3.0, 10.0)


@pytest.mark.parametrize(
    ("name", "tool"),
    [("shingle", "fingers"), ("pair", "both hands"), ("bead", "dropper"), ("two-spoon quenelle", "two spoons")],
)
def test_default_tools(name: str, tool: str) -> None:
    """A step that names no tool gets the technique's own."""
    assert load_seconds().techniques[name].tool == tool


def test_both_hands_are_one_reach() -> None:
    """Only a pair sets two pieces in one reach."""
    reach = {t.name: t.pieces_a_reach for t in load_seconds().techniques.values() if t.pieces_a_reach != 1}
    assert reach == {"pair": 2}
