"""The course that ships: every figure of its table, as the project's own model gives it.

The expected numbers are fixtures of that model, not measurements of a kitchen. They were worked out beforehand, apart
from this code.
"""

from dataclasses import dataclass, replace

import pytest

from bot.domain.cautions import ALWAYS, IN_ORDER, cautions_for, labels_of
from bot.domain.drill import Drill, laid_out, table_cm
from bot.domain.identity import set_up_fingerprint, spec_fingerprint
from bot.domain.pace import clock_text, levelled_s
from bot.domain.run import card_redo_s, day_limit, time_gate
from bot.domain.standard_time import alone_s, standard_s, targets, touches
from bot.library.course import load_course
from bot.library.seconds import load_seconds

SECONDS = load_seconds()
COURSE = {drill.label: drill for drill in load_course()}


@dataclass(frozen=True)
class Row:
    """One line of the table: label to alone in its order, then the time working plate by plate."""

    label: str
    name: str
    touches: int
    pattern: str
    table: str
    times: str
    a_touch: float
    redo: str
    gate: int
    alone: float
    plate_by_plate: str


TABLE = [
    Row("1", "Harbour clock", 4, "1x8", "236x30", "1:36/1:09/0:58", 2.15, "0:19", 6, 7.0, "1:04"),
    Row("2", "Low tide", 4, "1x8", "236x30", "2:14/1:36/1:21", 2.99, "0:33", 6, 18.5, "3:11"),
    Row("3", "Buoys", 6, "1x8", "236x30", "2:01/1:26/1:13", 1.80, "0:22", 6, 9.2, "1:22"),
    Row("4", "Both hands", 9, "1x8", "236x30", "2:16/1:37/1:22", 1.34, "0:23", 6, 10.5, "1:32"),
    Row("5", "Slipway", 9, "2x4", "120x59", "4:21/3:07/2:39", 2.59, "0:47", 6, 30.9, "4:47"),
    Row("6", "Rope coil", 7, "1x8", "236x30", "3:50/2:44/2:20", 2.94, "0:42", 6, 27.1, "4:20"),
    Row("7", "Gull egg", 3, "1x9", "265x30", "3:07/2:13/1:53", 4.94, "0:35", 7, 21.5, "4:02"),
    Row("8", "Dry rim", 8, "2x5", "149x59", "3:46/2:41/2:17", 2.02, "0:38", 8, 24.0, "4:51"),
    Row("9", "Lock gate", 11, "2x5", "149x59", "6:32/4:40/3:58", 2.55, "1:00", 8, 44.3, "8:14"),
    Row("10", "Two spoons", 6, "2x5", "149x59", "7:31/5:22/4:34", 5.37, "1:00", 8, 44.3, "8:14"),
    Row("11A", "Full tide", 18, "2x4", "120x59", "8:09/5:49/4:57", 2.43, "1:29", 6, 67.7, "9:42"),
    Row("11B", "Full tide", 18, "2x6", "178x59", "11:54/8:30/7:13", 2.36, "1:25", 9, 67.7, "14:34"),
]

each_row = pytest.mark.parametrize("row", TABLE, ids=lambda row: row.label)


def _by(working: str, drill: Drill, wave: int = 0) -> str:
    way = replace(drill.set_up, working=working, wave=wave)
    return clock_text(standard_s(drill.spec, way, SECONDS))


def _house_s(drill: Drill) -> float:
    return standard_s(drill.spec, drill.set_up, SECONDS)


@each_row
def test_what_the_card_counts(row: Row) -> None:
    """Name, touches, pattern, table, fewest accepted for a time and one plate alone are those of the table."""
    drill = COURSE[row.label]
    set_up = drill.set_up
    length, depth = table_cm(set_up, plate_cm=27)
    assert drill.wording.name == row.name
    assert touches(drill.spec) == row.touches
    assert f"{set_up.rows}x{set_up.columns}" == row.pattern
    assert f"{length:.0f}x{depth:.0f}" == row.table
    assert time_gate(set_up.plates) == row.gate
    assert round(alone_s(drill.spec, SECONDS), 6) == row.alone


@each_row
def test_what_the_card_times(row: Row) -> None:
    """Opening, house and brisk times, seconds a touch, one redo and plate by plate are those of the table.

    Two of the standards lie on half a second: 164.5 of Rope coil, and 186.5 of Slipway, whose sum in doubles ends a
    hair above it.
    """
    drill = COURSE[row.label]
    house = _house_s(drill)
    aims = targets(house)
    redo = card_redo_s(drill.spec, drill.set_up, SECONDS)
    assert "/".join(map(clock_text, (aims.opening_s, aims.house_s, aims.brisk_s))) == row.times
    assert round(house / (row.touches * drill.set_up.plates), 2) == row.a_touch
    assert redo is not None
    assert clock_text(redo) == row.redo
    assert _by("plate", drill) == row.plate_by_plate


def test_last_ferry_is_full_tide_on_a_longer_table() -> None:
    """Drill 12 is set-up C of drill 11: fourteen plates, 9:50 as one batch, 11:20 in waves of four, 17:00 by plate."""
    ferry, tide = COURSE["11C"], COURSE["11A"]
    redo = card_redo_s(ferry.spec, ferry.set_up, SECONDS)
    assert ferry.wording.name == "Last ferry"
    assert spec_fingerprint(ferry.spec) == spec_fingerprint(tide.spec)
    assert set_up_fingerprint(ferry.spec, ferry.set_up) != set_up_fingerprint(tide.spec, tide.set_up)
    assert (ferry.set_up.plates, ferry.set_up.rows, ferry.set_up.columns) == (14, 2, 7)
    assert table_cm(ferry.set_up, 27) == (207, 59)
    assert (ferry.set_up.working, ferry.set_up.wave, ferry.set_up.pressure) == ("waves", 4, 3)
    assert clock_text(_house_s(ferry)) == "11:20"
    assert (_by("component", ferry), _by("plate", ferry)) == ("9:50", "17:00")
    batch = standard_s(ferry.spec, replace(ferry.set_up, working="component"), SECONDS)
    assert round(batch / (18 * 14), 2) == 2.34
    assert redo is not None
    assert (clock_text(redo), time_gate(14)) == ("1:24", 11)


@pytest.mark.parametrize(("wave", "shown"), [(6, "9:00"), (4, "9:30"), (3, "10:10")])
def test_full_tide_in_waves(wave: int, shown: str) -> None:
    """Twelve plates of Full tide in smaller waves take longer, by the figures of the model."""
    assert _by("waves", COURSE["11B"], wave) == shown


def test_at_standard_every_drill_shows_one_and_a_half() -> None:
    """A cook exactly at standard shows 1.50 levelled on each, while plain pace runs from 1.34 to 5.37."""
    plain = []
    for row in TABLE:
        house = _house_s(COURSE[row.label])
        assert levelled_s(house, house) == 1.5
        plain.append(round(house / (row.touches * COURSE[row.label].set_up.plates), 2))
    assert (min(plain), max(plain)) == (1.34, 5.37)


def test_drills_that_strain_the_hand_have_three_runs_a_day() -> None:
    """Drills with a dot, a line or a quenelle have three counted runs a day, the others five."""
    limits = {label: day_limit(drill.spec, SECONDS) for label, drill in COURSE.items()}
    assert {label for label, limit in limits.items() if limit == 3} == {"3", "7", "9", "10", "11A", "11B", "11C"}
    assert set(limits.values()) == {3, 5}


def test_every_drill_can_be_laid_out_and_warns() -> None:
    """No drill of the course is refused, each has a warning that fits it alone, and no two are the same."""
    for drill in COURSE.values():
        assert laid_out(drill.set_up) is drill.set_up
        assert drill.wording.cautions or set(cautions_for(drill.spec, SECONDS)) - {*ALWAYS}
        assert drill.spec.accept
    assert len({set_up_fingerprint(drill.spec, drill.set_up) for drill in COURSE.values()}) == 13
    assert len({spec_fingerprint(drill.spec) for drill in COURSE.values()}) == 11


def test_no_stand_in_is_called_free_of_allergens() -> None:
    """Starch is to be looked at for wheat, beans for sulphites, and nothing says free."""
    looked_for = {component: labels for drill in COURSE.values() for component, labels in labels_of(drill.spec)}
    assert {component for component, labels in looked_for.items() if labels == ("sulphites",)} == {"bean", "bean puree"}
    wheat = {component for component, labels in looked_for.items() if labels == ("wheat",)}
    assert wheat == {"gel", "tea jus", "thin jus", "tea glaze", "noodle"}
    assert not any("free" in label for labels in looked_for.values() for label in labels)


def test_every_warning_of_a_technique_is_one_that_is_told() -> None:
    """A technique of the file cannot carry a warning that the cautions drop."""
    for technique in SECONDS.techniques.values():
        assert set(technique.cautions) <= set(IN_ORDER)


@pytest.mark.parametrize(
    ("label", "told"),
    [
        ("1", {"floor", "pieces-counted"}),
        ("2", {"floor", "pieces-counted", "puree"}),
        ("3", {"cold", "bottle", "strain"}),
        ("5", {"mandoline", "chemicals", "cold"}),
        ("6", {"cooked-starch", "floor", "cold", "bottle", "pieces-counted"}),
        ("7", {"heat", "puree", "pieces-counted", "strain"}),
        ("9", {"cooked-starch", "cold", "bottle", "pieces-counted", "strain"}),
        ("11C", {"mandoline", "heat", "floor", "cold", "puree", "bottle", "strain", "pieces-counted"}),
    ],
)
def test_the_warnings_that_fit_a_drill_go_with_it(label: str, told: set[str]) -> None:
    """What its techniques and stand-ins are known for is said of china, and nothing else."""
    assert set(cautions_for(COURSE[label].spec, SECONDS)) == {*told, *ALWAYS, "breakage"}
