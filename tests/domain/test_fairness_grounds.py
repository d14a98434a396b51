"""What may be compared across drills, who may have a place, and when kitchens may stand side by side; constructed."""

from dataclasses import replace

import pytest

from bot.domain.drill import Drill, SetUp, Spec
from bot.domain.fairness.cells import Cell
from bot.domain.fairness.fit import Fit
from bot.domain.fairness.grounds import Ground, ground_of, in_common, may_compare, work_of
from bot.domain.fairness.ranking import Cook, rank_quarter
from bot.domain.fairness.sites import apart, met_own_line, same_set_ups
from bot.fitting import fit_here
from tests.domain.kitchen import ROPE_COIL, SECONDS, SLIPWAY

SPEC_OF = {1: 10, 2: 10, 3: 30}
"""Set-ups 1 and 2 are of one spec."""


def cell(cook: str, set_up: int, runs: int = 4, y: float = 0.0) -> Cell:
    """So many runs with this mean ln(net / standard), spread a little about it, one a week."""
    made = Cell(cook, set_up)
    for nth in range(1, runs + 1):
        made = made.plus(y + (0.01 if nth % 2 else -0.01), nth - 1, nth)
    return made


def fitted(*cells: Cell) -> Fit:
    """Their fit."""
    fit = fit_here(cells)
    assert fit
    return fit


def test_another_set_up_of_a_spec_is_no_link() -> None:
    """Who ran one spec in two set-ups has run one spec; of one set-up its own runs alone are counted."""
    cells = [cell("noor", 1), cell("noor", 2), cell("lio", 1), cell("lio", 3)]
    assert ground_of(cells, SPEC_OF) == Ground(runs=16, cooks=2, linked=1)
    assert ground_of(cells, SPEC_OF, 1) == Ground(runs=8, cooks=2, linked=1)


@pytest.mark.parametrize(
    ("ground", "enough"), [((15, 4, 3), True), ((14, 4, 3), False), ((15, 3, 3), False), ((15, 4, 2), False)]
)
def test_the_house_rule(ground: tuple[int, int, int], enough: bool) -> None:
    """Fifteen runs by four cooks, three of whom also ran another spec (a rule of the house, no source)."""
    assert Ground(*ground).enough is enough


def test_pairs_calls_and_short_drills_are_not_compared() -> None:
    """Rope coil is; by two, under calls, or on two plates, which takes under a minute, it is not."""
    set_up = ROPE_COIL.set_up
    others = [replace(set_up, cooks=2), replace(set_up, pressure=1), SetUp(plates=2)]
    assert may_compare(ROPE_COIL.spec, set_up, SECONDS)
    assert not any(may_compare(ROPE_COIL.spec, other, SECONDS) for other in others)


def works(*drills: Drill, surface: str = "") -> dict[int, dict[tuple[str, str], float]]:
    """The work of set-ups 1, 2 and so on."""
    specs: list[Spec] = [replace(drill.spec, plate=surface or drill.spec.plate) for drill in drills]
    return {
        n: dict(work_of(spec, drill.set_up, SECONDS))
        for n, (spec, drill) in enumerate(zip(specs, drills, strict=True), 1)
    }


def test_work_is_shared_by_technique_and_surface() -> None:
    """Whoever runs what the crew runs shares it; who alone runs another drill, or on paper discs, does not."""
    crew = [cell(cook, 1, runs=10) for cook in ("noor", "kwabena", "lio")]
    assert in_common([*crew, cell("petra", 2, 8)], works(ROPE_COIL, SLIPWAY)) == {"noor", "kwabena", "lio"}
    on_paper = works(ROPE_COIL) | {2: works(ROPE_COIL, surface="paper disc")[1]}
    assert in_common([*crew, cell("petra", 2, 8)], on_paper) == {"noor", "kwabena", "lio"}
    assert "petra" in in_common([*crew, cell("petra", 1, 8)], on_paper)


def test_a_technique_timed_seldom_is_shared_with_nobody() -> None:
    """Seven runs in all carry no comparison, the eighth does."""
    assert in_common([cell("noor", 1, 4), cell("lio", 1, 3)], works(ROPE_COIL)) == frozenset()
    assert in_common([cell("noor", 1, 4), cell("lio", 1, 4)], works(ROPE_COIL)) == {"noor", "lio"}


CREW = tuple(
    cell(cook, set_up, y=y)
    for cook, y in (("noor", -0.2), ("kwabena", 0.0), ("lio", 0.2), ("petra", 0.202))
    for set_up in (1, 3)
)


def test_places_are_shared_by_those_too_close_to_call() -> None:
    """Lio and Petra, two thousandths apart, share the third place; the others are told apart."""
    ranked = rank_quarter(fitted(*CREW), dict.fromkeys(("noor", "kwabena", "lio", "petra"), Cook(8, 8, True)))
    assert [(row.place, row.figure.user_id) for row in ranked.board.rows] == [
        (1, "noor"),
        (2, "kwabena"),
        (3, "lio"),
        (3, "petra"),
    ]
    assert not ranked.divided


def test_why_a_cook_has_no_place() -> None:
    """Other work, mostly self-judged, and no common ground: a pace of one's own all the same."""
    fit = fitted(*CREW, cell("anselm", 7), cell("sunniva", 7))
    cooks = dict.fromkeys(("noor", "kwabena", "lio", "petra", "anselm", "sunniva"), Cook(8, 8, True))
    ranked = rank_quarter(fit, cooks | {"lio": Cook(8, 3, True), "petra": Cook(8, 8, False)})
    assert ranked.without == {"lio": "judged", "petra": "work", "anselm": "ground", "sunniva": "ground"}
    assert ranked.divided
    assert ranked.bands.keys() == cooks.keys()


def test_of_two_groups_alike_in_size_nobody_is_ranked() -> None:
    """Neither can be held against the other."""
    fit = fitted(*(cell(cook, 1) for cook in ("a", "b", "c")), *(cell(cook, 3) for cook in ("x", "y", "z")))
    ranked = rank_quarter(fit, dict.fromkeys("abcxyz", Cook(4, 4, True)))
    assert ranked.board.rows == ()
    assert ranked.divided


def test_sites_are_joined_by_a_cook_a_spec_or_a_third_site() -> None:
    """Another set-up of the same spec is common ground, and so is a site that shares with both."""
    one, same_spec, other = [cell("noor", 1)], [cell("bea", 2)], [cell("tom", 3)]
    assert apart({"Tern": one, "Lock": same_spec}, SPEC_OF) is None
    assert apart({"Tern": one, "Lock": other}, SPEC_OF) == ("Tern", "Lock")
    assert apart({"Tern": one, "Lock": [cell("noor", 3)]}, SPEC_OF) is None
    assert apart({"Tern": one, "Lock": other, "Weir": [*same_spec, cell("bea", 3)]}, SPEC_OF) is None


def test_own_lines_need_three_cooks() -> None:
    """A share of two cooks would tell on them; of those who were quicker than ever before all are within their line."""
    fit = fitted(*CREW)
    assert met_own_line(fit, CREW[:4]) is None
    assert met_own_line(fit, [of._replace(sum_y=of.sum_y - of.runs) for of in CREW]) == 1
    assert met_own_line(fit, [of._replace(sum_y=of.sum_y + of.runs) for of in CREW]) == 0


def test_sites_are_compared_by_the_clock_on_the_same_set_up_alone() -> None:
    """Three cooks at each site; means of cooks, not of runs; too close where the cooks differ more than the sites."""
    tern = [cell("noor", 1, 8, y=0.0), cell("lio", 1, y=0.1), cell("petra", 1, y=0.2), cell("noor", 3)]
    lock = [cell("bea", 1, y=0.11), cell("tom", 1, y=0.01), cell("anselm", 1, y=0.21), cell("bea", 2)]
    (same,) = same_set_ups({"Tern": tern, "Lock": lock})
    assert (same.set_up, same.close) == (1, True)
    assert same.ratios["Tern"] == pytest.approx(1.10517, abs=1e-5)  # e to the 0.1
    slower = [of._replace(sum_y=of.sum_y + of.runs) for of in lock]
    assert [found.close for found in same_set_ups({"Tern": tern, "Lock": slower})] == [False]
