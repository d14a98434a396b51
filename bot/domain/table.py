"""Tables: which patterns of a drill's plates fit one, by how much the others do not, and how each is walked."""

from dataclasses import dataclass, replace

from bot.domain.drill import MOST_ROWS, SetUp, table_cm

COMFORTABLE_REACH_CM = 45
LONGEST_REACH_CM = 60
"""How far a cook reaches again and again, which is one row, and now and then (common practice, no source)."""

TRIED_ROWS = MOST_ROWS + 1
"""One more than can be reached, so that it is said why it is refused."""


@dataclass(frozen=True)
class Table:
    """A table's top; the rows of plates run along its longer side."""

    length_cm: float
    depth_cm: float


@dataclass(frozen=True)
class Pattern:
    """One way of laying out the plates, and the table that it takes; ``short`` is how many cm a table lacks."""

    set_up: SetUp
    length_cm: float
    depth_cm: float
    short_length_cm: float = 0.0
    short_depth_cm: float = 0.0

    @property
    def in_reach(self) -> bool:
        """Whether somebody at the table reaches every row; of a third nobody does from one side."""
        return self.set_up.rows <= MOST_ROWS

    @property
    def fits(self) -> bool:
        """Whether it fits the table and can be reached."""
        return self.in_reach and not self.short_length_cm and not self.short_depth_cm


def pattern_of(set_up: SetUp, plate_cm: float, table: Table | None = None) -> Pattern:
    """What a set-up takes of a table, and by how much this one is short."""
    length, depth = table_cm(set_up, plate_cm)
    if table is None:
        return Pattern(set_up, length, depth)
    return Pattern(set_up, length, depth, max(length - table.length_cm, 0.0), max(depth - table.depth_cm, 0.0))


def patterns_on(set_up: SetUp, plate_cm: float, table: Table) -> tuple[Pattern, ...]:
    """The same plates in one row, in two, and in one more than can be reached."""
    rows = range(1, min(TRIED_ROWS, set_up.plates) + 1)
    return tuple(pattern_of(replace(set_up, rows=r), plate_cm, table) for r in rows)


def most_that_fit(set_up: SetUp, plate_cm: float, table: Table) -> Pattern | None:
    """The pattern with the most plates up to the drill's own that fits the table, with the fewest rows for them."""
    for plates in range(set_up.plates, 0, -1):
        for pattern in patterns_on(replace(set_up, plates=plates), plate_cm, table):
            if pattern.fits:
                return pattern
    return None


def walked(set_up: SetUp) -> list[list[int | None]]:
    """The plates' numbers as they lie, the far row first, each row from left to right; None where no plate is.

    They are numbered in walking order: there along the near row and back along the far one, so that nobody walks
    empty.
    """
    columns = set_up.columns
    near_to_far: list[list[int | None]] = []
    for row in range(set_up.rows):
        first = row * columns + 1
        numbers = [n if n <= set_up.plates else None for n in range(first, first + columns)]
        near_to_far.append(numbers if row % 2 == 0 else numbers[::-1])
    return near_to_far[::-1]
