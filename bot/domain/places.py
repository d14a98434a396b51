"""Places on a board and how much of it everybody may see: shared by those whom nothing tells apart, nobody last."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import groupby

from bot.domain.expected import Expected

FEWEST_COOKS = 3
MOST_SHOWN = 3
TOO_CLOSE = 1.28
"""Standard errors of a difference below which it is too close to call."""


@dataclass(frozen=True)
class Figure:
    """What a cook has on one board: whole seconds, a share or a score as ``value``, from so many ``runs``.

    ``spread`` is its standard error, of the log of a time. ``clean`` of ``attempted`` are the plates behind a share;
    ``actual_s`` and ``expected`` what a score compares.
    """

    user_id: str
    value: float
    runs: int
    spread: float = 0.0
    clean: int = 0
    attempted: int = 0
    actual_s: float = 0.0
    expected: Expected | None = None


@dataclass(frozen=True)
class Row:
    """A cook's place; ``close`` where somebody shares it whose value differs, but by too little to call."""

    place: int
    figure: Figure
    close: bool = False


@dataclass(frozen=True)
class Board:
    """One board: of the ranked ``rows`` the first ``shown`` are for everybody.

    ``apart`` are those who are off public boards, each at the place that they would have. ``too_close`` where nobody
    can be shown because too many share the places.
    """

    rows: tuple[Row, ...]
    shown: int = 0
    apart: tuple[Row, ...] = ()
    too_close: bool = False

    @property
    def public(self) -> tuple[Row, ...]:
        """The rows that everybody may see."""
        return self.rows[: self.shown]

    def row_of(self, user_id: str) -> Row | None:
        """A cook's own row, for them alone."""
        return next((row for row in (*self.rows, *self.apart) if row.figure.user_id == user_id), None)


Better = Callable[[Figure, Figure], bool]
"""Whether the first is distinguishably better than the second."""

Rank = Callable[[Figure], float]
"""What the figures of one place stand in order of, the lowest first."""


def board(figures: Sequence[Figure], better: Better, rank: Rank, off: frozenset[str] = frozenset()) -> Board:
    """A board of these figures; those who are ``off`` it count for nobody's place and for no half."""
    listed = [figure for figure in figures if figure.user_id not in off]
    rows = rank_figures(listed, better, rank)
    shown = how_many_shown([row.place for row in rows])
    apart = (_among(figure, listed, better, rank) for figure in figures if figure.user_id in off)
    return Board(rows, shown, tuple(apart), too_close=not shown and len(rows) >= FEWEST_COOKS)


def rank_figures(figures: Sequence[Figure], better: Better, rank: Rank) -> tuple[Row, ...]:
    """Places: one more than the cooks distinguishably better, never broken by the time of sending."""
    placed = [(1 + sum(better(other, figure) for other in figures), figure) for figure in figures]
    rows = [
        Row(place, figure, any(place == at and figure.value != other.value for at, other in placed))
        for place, figure in placed
    ]
    return tuple(sorted(rows, key=lambda row: (row.place, rank(row.figure), row.figure.user_id)))


def how_many_shown(places: Sequence[int]) -> int:
    """How many of the rows at these places everybody may see: at most half of them and three, a place whole or not.

    None below three cooks. A shared place that reaches beyond is left out, or it would leave the last one unnamed.
    """
    if len(places) < FEWEST_COOKS:
        return 0
    most, shown = min(len(places) // 2, MOST_SHOWN), 0
    for _, sharing in groupby(places):
        size = len(list(sharing))
        if shown + size > most:
            break
        shown += size
    return shown


def _among(figure: Figure, listed: Sequence[Figure], better: Better, rank: Rank) -> Row:
    rows = rank_figures([*listed, figure], better, rank)
    return next(row for row in rows if row.figure is figure)
