"""What a thumb on a stopwatch does not know is never called progress."""

import random

from bot.domain.progress import LEAST_CHANGE, progress_of

START_STOP_SD_S = 0.10
TWO_TOTALS_95_S = 1.96 * 2**0.5 * START_STOP_SD_S
"""The scatter of a total timed by hand, and how far two totals of one length lie apart at most in 95 of 100: 0.277 s.

Source: Faux and Godolphin, American Journal of Physics 87(2), 2019 (the second recomputed from the first).
"""

SHORTEST_S = 60.0
"""Standard time below which more plates are suggested (common practice, no source)."""


def test_the_thumb_is_no_progress() -> None:
    """A cook who never varies, timed by hand in whole seconds on the shortest drill, is called neither way."""
    assert TWO_TOTALS_95_S / SHORTEST_S < LEAST_CHANGE / 8
    draw = random.Random(2019)  # noqa: S311 - a simulation
    for _ in range(300):
        length_s = SHORTEST_S + draw.random()
        nets_s = [float(round(draw.gauss(length_s, START_STOP_SD_S))) for _ in range(24)]
        for seen in range(8, 25):
            progress = progress_of(nets_s[:seen])
            assert progress is not None
            assert progress.speed is None
