"""How honest the headline board is: unchanged cooks, and one who runs slowly on purpose."""

from statistics import fmean

from tests.simulation.seasons import WEEKS, improved, loosened

KITCHENS = {False: 100, True: 20}
"""Seasons played, by whether there is a fit: with one each of their weeks is fitted."""
DRILLS = {1: "a new drill each week", 3: "a drill for three weeks", WEEKS: "one drill"}


def measure() -> list[str]:
    """The lines to print."""
    lines = [
        "The headline board over 13 weeks of 8 unchanged cooks, 1 to 5 runs a week, 6 % noise (promised 45 to 55 %):"
    ]
    for with_fit, seasons in KITCHENS.items():
        by = "by the fit" if with_fit else "by middles"
        for weeks_a_drill, drills in DRILLS.items():
            own, best = improved(seasons, weeks_a_drill, with_fit=with_fit)
            lines.append(
                f"  {by}, {drills}: {own:.1%} of weeks count as improved; a best of the week would make it {best:.1%}"
            )
    lines.append("Two weeks at 25 % over on purpose raise what is expected (promised at most 2 % a week):")
    for weeks_a_drill in (1, WEEKS):
        held, free = (loosened(KITCHENS[False], weeks_a_drill, held=held) for held in (True, False))
        lines.append(
            f"  {DRILLS[weeks_a_drill]}: mean {fmean(held):.1%}, most {max(held):.1%} a week;"
            f" without the rule {fmean(free):.1%}, most {max(free):.1%}"
        )
    return lines
