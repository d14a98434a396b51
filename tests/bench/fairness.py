"""How fair the quarter's order is on simulated kitchens, and how fast a quarter of the largest size is fitted."""

import os
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from random import Random
from statistics import median

from bot.domain.fairness.cells import TimedRun, cells_of
from bot.domain.fairness.reml import Quarter
from tests.simulation.kitchens import agreement, kitchen

KITCHENS = 200
COOKS, SET_UPS, RUNS = 200, 500, 100_000
ROUNDS = 5
ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1", "MKL_NUM_THREADS": "1"}


def measure() -> list[str]:
    """The lines to print, measured in a process of its own with one BLAS thread."""
    command = [sys.executable, "-m", "tests.bench.fairness"]
    return subprocess.run(
        command, env=os.environ | ONE_THREAD, check=True, capture_output=True, text=True
    ).stdout.splitlines()


def main() -> None:
    """Measure and print."""
    print("\n".join([*_fair(), *_fast()]))


def _fair() -> list[str]:
    taus = [agreement(kitchen(seed)) for seed in range(KITCHENS)]
    ways = [f"{way} {median(each[way] for each in taus):.3f}" for way in taus[0]]
    return [f"fairness: median Kendall tau with the true order over {KITCHENS} kitchens: {', '.join(ways)}"]


def _fast() -> list[str]:
    cells = cells_of(_runs())
    quarter = Quarter(cells)
    fit = quarter.fit()

    def one_more() -> None:
        quarter.put(cells[0].plus(0.0, 13.0, RUNS))
        quarter.fit(known=fit)

    size = f"{COOKS} cooks x {SET_UPS} set-ups x {RUNS} runs"
    return [
        f"fairness: refit of {size}: {_median_s(lambda: Quarter(cells).fit()):.2f} s (median of {ROUNDS})",
        f"fairness: one more run, all effects: {_median_s(one_more):.3f} s (median of {ROUNDS})",
    ]


def _runs() -> Iterator[TimedRun]:
    """A quarter of the largest size, of the model's own making."""
    draw = Random(1)  # noqa: S311 - a simulation, nothing secret
    cooks = [draw.gauss(0, 0.18) for _ in range(COOKS)]
    set_ups = [draw.gauss(0, 0.15) for _ in range(SET_UPS)]
    for nth in range(RUNS):
        cook, set_up = draw.randrange(COOKS), draw.randrange(SET_UPS)
        yield TimedRun(f"cook{cook}", set_up, cooks[cook] + set_ups[set_up] + draw.gauss(0, 0.08), 13 * nth / RUNS)


def _median_s(work: Callable[[], object]) -> float:
    took = []
    for _ in range(ROUNDS):
        began = time.perf_counter()
        work()
        took.append(time.perf_counter() - began)
    return median(took)


if __name__ == "__main__":
    main()
