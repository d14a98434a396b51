"""Tables in words: each pattern with what it takes and lacks, and the plates' numbers row by row."""

from collections.abc import Iterable

from bot.domain.drill import Drill, plate_cm
from bot.domain.table import LONGEST_REACH_CM, Pattern, Table, walked
from bot.replies.phrases import Phrases


def table_lines(
    say: Phrases, drill: Drill, table: Table, patterns: tuple[Pattern, ...], fewer: Pattern | None
) -> list[str]:
    """Every pattern, those that fit drawn; where none does, the most plates that would."""
    lines = [
        say(
            "table-head",
            name=drill.wording.name,
            label=drill.label,
            plates=drill.set_up.plates,
            wide=cm_text(say, plate_cm(drill.spec) or 0),
            length=cm_text(say, table.length_cm),
            depth=cm_text(say, table.depth_cm),
        )
    ]
    for pattern in patterns:
        lines.append(_pattern_line(say, pattern))
        lines += _drawn(say, pattern) if pattern.fits else []
    if any(pattern.fits for pattern in patterns):
        return lines
    if fewer is None:
        return [*lines, say("table-none-fits")]
    return [*lines, _fewer_line(say, fewer), *_drawn(say, fewer)]


def own_table_lines(say: Phrases, drill: Drill, pattern: Pattern) -> list[str]:
    """What the drill's own pattern takes, drawn."""
    head = say(
        "table-own",
        name=drill.wording.name,
        label=drill.label,
        pattern=_pattern_text(say, pattern),
        length=cm_text(say, pattern.length_cm),
        depth=cm_text(say, pattern.depth_cm),
    )
    return [head, *_drawn(say, pattern)]


def figures_of_patterns(patterns: Iterable[Pattern]) -> dict[str, float | int | str | None]:
    """The centimetres behind each pattern, by its rows and columns."""
    figures: dict[str, float | int | str | None] = {}
    for pattern in patterns:
        name = f"{pattern.set_up.rows}x{pattern.set_up.columns}"
        figures[f"{name}.length_cm"], figures[f"{name}.depth_cm"] = pattern.length_cm, pattern.depth_cm
        figures[f"{name}.short_length_cm"] = pattern.short_length_cm
        figures[f"{name}.short_depth_cm"] = pattern.short_depth_cm
    return figures


def _pattern_line(say: Phrases, pattern: Pattern) -> str:
    verdicts = []
    if not pattern.in_reach:
        verdicts.append(say("table-out-of-reach"))
    if pattern.short_length_cm:
        verdicts.append(say("table-short", cm=cm_text(say, pattern.short_length_cm)))
    if pattern.short_depth_cm:
        verdicts.append(say("table-too-deep", cm=cm_text(say, pattern.short_depth_cm)))
    return say(
        "table-pattern",
        pattern=_pattern_text(say, pattern),
        length=cm_text(say, pattern.length_cm),
        depth=cm_text(say, pattern.depth_cm),
        verdict="; ".join(verdicts) or say("table-fits"),
    )


def _fewer_line(say: Phrases, fewer: Pattern) -> str:
    return say(
        "table-fewer",
        plates=fewer.set_up.plates,
        rows=fewer.set_up.rows,
        pattern=_pattern_text(say, fewer),
        length=cm_text(say, fewer.length_cm),
        depth=cm_text(say, fewer.depth_cm),
    )


def _pattern_text(say: Phrases, pattern: Pattern) -> str:
    return say("table-rows", rows=pattern.set_up.rows, columns=pattern.set_up.columns)


def _drawn(say: Phrases, pattern: Pattern) -> list[str]:
    """The plates' numbers, the far row first, and how they are walked."""
    rows = [" ".join("–" if n is None else str(n) for n in row) for row in walked(pattern.set_up)]
    if len(rows) == 1:
        return [say("table-one-row", numbers=rows[0])]
    drawn = say("table-two-rows", far=rows[0], near=rows[1])
    reach = "far" if pattern.depth_cm > LONGEST_REACH_CM else "near"
    return [drawn, say("table-walk", reach=reach, depth=cm_text(say, pattern.depth_cm))]


def cm_text(say: Phrases, length: float) -> str:
    """``178``, or ``59.5`` where it is no whole centimetre."""
    return say.number(f"{length:.1f}".removesuffix(".0"))
