"""Cutting a line of work into runs of neighbours against the worked examples of a textbook."""

from bot.domain.pickup import share_out


def _runs(shares_s: tuple[float, ...], hands: int) -> tuple[float, list[int]]:
    line = share_out(shares_s, 1, hands)
    return line.largest_s, [station.end - station.first for station in line.stations]


def test_skiena() -> None:
    """1 to 9 in three runs are 1-5, 6-7, 8-9 with 17 the largest; nine ones are three threes.

    Source: S. S. Skiena, The Algorithm Design Manual, dynamic programming, "The partition problem" (from memory).
    """
    assert _runs(tuple(map(float, range(1, 10))), 3) == (17.0, [5, 2, 2])
    assert _runs((1.0,) * 9, 3) == (3.0, [3, 3, 3])
