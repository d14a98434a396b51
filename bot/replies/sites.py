"""Sister kitchens in words: own lines, first time right, and the clock where the set-up is the same."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bot.domain.pace import clock_text
from bot.replies.boards import Figures
from bot.replies.phrases import Phrases

MOST_LINES = 6


@dataclass(frozen=True)
class Site:
    """A kitchen: the share of its cooks who ``met`` their own line, None where too few; ``clean`` of ``attempted``."""

    name: str
    met: float | None
    clean: int
    attempted: int


@dataclass(frozen=True)
class SameDrill:
    """A drill laid out the same at several sites: the mean time of each, and whether they are too close to call."""

    name: str
    plates: int
    times_s: Mapping[str, float]
    close: bool


def group_head(say: Phrases, group: str, quarter: str) -> str:
    """Which group and which quarter."""
    year, number = quarter.split("-Q")
    return say("group-head", group=group, quarter=number, year=year)


def site_line(say: Phrases, site: Site) -> str:
    """One site, each figure only where there is enough behind it."""
    told = [
        say("site-few") if site.met is None else say("site-met", percent=_percent(site.met)),
        say("site-clean", percent=_percent(site.clean / site.attempted)) if site.attempted else say("site-unwitnessed"),
    ]
    return say("site-line", name=site.name, told=", ".join(told))


def drill_line(say: Phrases, drill: SameDrill) -> str:
    """One drill by the clock."""
    times = ", ".join(f"{site} {clock_text(time_s)}" for site, time_s in drill.times_s.items())
    return say("site-same-close" if drill.close else "site-same", drill=drill.name, plates=drill.plates, times=times)


def group_figures(sites: Sequence[Site], drills: Sequence[SameDrill]) -> Figures:
    """The numbers behind it."""
    figures: Figures = {}
    for site in sites:
        figures |= {f"{site.name}.met": site.met, f"{site.name}.clean": site.clean, f"{site.name}.of": site.attempted}
    for drill in drills:
        figures |= {f"{site}.{drill.name}.net_s": time_s for site, time_s in drill.times_s.items()}
    return figures


def _percent(share: float) -> int:
    return round(100 * share)
