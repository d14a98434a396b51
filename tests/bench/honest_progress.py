"""How honest the trend is: claims, findings and forecasts on thousands of simulated cooks whose truth is known."""

from tests.simulation.first_run_cooks import NOISE, RUNS, asked, called, called_by_an_ordinary_test, covered

COOKS = 4_000
SLOPES = (0.0, -0.005, -0.01, -0.02)


def measure() -> list[str]:
    """The lines to print."""
    unchanged, slower = called(1, COOKS, 0, "faster"), called(2, COOKS, 0, "slower")
    bands = ", ".join(f"{covered(4, COOKS, slope):.1%} at {100 * slope:g} % a run" for slope in SLOPES)
    return [
        f"{COOKS} simulated cooks a line, {RUNS} first runs each, looked at after every run, noise {NOISE:.0%}:",
        f"  unchanged cooks called faster: {unchanged:.1%} (bar: 10 %), slower: {slower:.1%};"
        f" by an ordinary test at one in ten: {called_by_an_ordinary_test(3, COOKS):.1%}",
        f"  1 % a run found: {called(5, COOKS, -0.01, 'faster'):.1%} (bar: 90 %)",
        f"  next run within its 80 % band: {bands} (bar: 75 to 85 %)",
        f"  asked whether they stay level: {asked(6, COOKS, 0):.1%} of cooks who do,"
        f" {asked(7, COOKS, -0.01):.1%} of those who gain 1 % a run",
    ]
