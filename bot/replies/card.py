"""The drill card in words: what is on the plate, how it counts, what it costs, and what to take care of."""

from bot.domain.cautions import cautions_for, labels_of
from bot.domain.drill import Drill, Spec, Step, plate_cm, table_cm
from bot.domain.pace import clock_text
from bot.domain.run import card_redo_s, half_run, time_gate
from bot.domain.standard_time import change_percent, reaches, run_touches, standard_s, targets, touches
from bot.domain.techniques import Seconds
from bot.replies.phrases import Phrases


def posted_card(say: Phrases, drill: Drill, seconds: Seconds, *, light: bool = False) -> str:
    """The card as it is posted: everything a cook needs, closing with the cautions and the local rules.

    ``light`` says that its week is short, tidy and without a board.
    """
    plates, standard = drill.set_up.plates, standard_s(drill.spec, drill.set_up, seconds)
    aims = targets(standard)
    example = f"{clock_text(aims.opening_s)} {plates}/{plates}"
    lines = [
        head_line(say, drill),
        *_body(say, drill, seconds),
        say(
            "card-targets",
            opening=clock_text(aims.opening_s),
            house=clock_text(aims.house_s),
            brisk=clock_text(aims.brisk_s),
        ),
        *target_line(say, drill),
        *([_light_line(say, plates)] if light else []),
        say("card-send", example=example),
        *safety_lines(say, drill, seconds),
    ]
    return "\n".join(lines)


def draft_card(say: Phrases, drill: Drill, seconds: Seconds, *, known: Drill | None, parent: Drill | None) -> str:
    """The card of a draft as it was read, whether it is known already, and its work against the drill before it."""
    head = say("card-head-draft", name=drill.wording.name, plates=drill.set_up.plates, rows=drill.set_up.rows)
    same = known is not None and known.set_up == drill.set_up
    lines = [head, *_body(say, drill, seconds)]
    if known:
        lines.append(say("draft-known" if same else "draft-other-set-up", label=str(known.number)))
    else:
        lines.append(say("draft-new"))
    if parent and not same:
        before = standard_s(parent.spec, parent.set_up, seconds)
        percent = change_percent(before, standard_s(drill.spec, drill.set_up, seconds))
        lines.append(say("draft-child", label=parent.label, percent=say.decimal(percent, 1, signed=True)))
    return "\n".join([*lines, say("draft-publish")])


def step_lines(say: Phrases, spec: Spec, seconds: Seconds, *, every_tool: bool = False) -> list[str]:
    """The steps, numbered, one a line; a tool is named where it is not the technique's own, or always."""
    return [_step_line(say, nth, step, seconds, named=every_tool) for nth, step in enumerate(spec.steps, 1)]


def safety_lines(say: Phrases, drill: Drill, seconds: Seconds) -> list[str]:
    """The allergens by label, the cautions that fit, and last of all the local rules."""
    told = [
        say(f"caution-{key}", what=", ".join(components))
        for key, components in cautions_for(drill.spec, seconds).items()
    ]
    return [
        *labels_lines(say, drill.spec),
        say("card-take-care"),
        *(say("card-caution", caution=caution) for caution in (*drill.wording.cautions, *told[:-1])),
        told[-1],
    ]


def head_line(say: Phrases, drill: Drill) -> str:
    """What the drill is called, its plates and its rows."""
    return say(
        "card-head",
        name=drill.wording.name,
        label=drill.label,
        plates=drill.set_up.plates,
        rows=drill.set_up.rows,
    )


def _body(say: Phrases, drill: Drill, seconds: Seconds) -> list[str]:
    spec, set_up = drill.spec, drill.set_up
    lines = [
        *step_lines(say, spec, seconds),
        say(f"card-working-{set_up.working}", wave=set_up.wave),
        *_table_line(say, drill),
        say(
            "card-work",
            touches=touches(spec),
            run=run_touches(spec, set_up),
            standard=clock_text(standard_s(spec, set_up, seconds)),
        ),
    ]
    if spec.accept:
        lines.insert(len(spec.steps), say("card-accept", accept=spec.accept))
    if set_up.pressure:
        lines.append(say("card-pressure", level=set_up.pressure))
    if reaches(spec, seconds) != touches(spec):
        lines.append(say("card-reaches", reaches=reaches(spec, seconds)))
    return [*lines, _redo_line(say, drill, seconds)]


def target_line(say: Phrases, drill: Drill) -> list[str]:
    """The time to meet, where the chef set one."""
    target_s = drill.wording.target_s
    return [] if target_s is None else [say("card-target", target=clock_text(target_s))]


def _light_line(say: Phrases, plates: int) -> str:
    few = half_run(plates)
    return say("card-light", few=few, plates=plates, left=plates - few)


def _table_line(say: Phrases, drill: Drill) -> list[str]:
    """How much table the pattern takes, where the spec says how wide its plate is."""
    wide = plate_cm(drill.spec)
    if wide is None:
        return []
    length, depth = table_cm(drill.set_up, wide)
    return [say("card-table", plate=drill.spec.plate, length=f"{length:.0f}", depth=f"{depth:.0f}")]


def _redo_line(say: Phrases, drill: Drill, seconds: Seconds) -> str:
    redo = card_redo_s(drill.spec, drill.set_up, seconds)
    if redo is None:
        return say("card-redo-one")
    return say("card-redo", redo=clock_text(redo), gate=time_gate(drill.set_up.plates))


def _step_line(say: Phrases, nth: int, step: Step, seconds: Seconds, *, named: bool) -> str:
    usual = not named and step.tool == seconds.techniques[step.technique].tool
    return say(
        "card-step",
        nth=nth,
        pieces=step.pieces,
        component=step.component,
        technique=step.technique,
        tool="usual" if usual else step.tool,
        where=_kind_of_place(step),
        at=step.at,
    )


def _kind_of_place(step: Step) -> str:
    """Whether the place is told by hours, which take a preposition, by words that have their own, or not at all."""
    if not step.at:
        return "nowhere"
    return "hours" if step.at[0].isdecimal() else "words"


def labels_lines(say: Phrases, spec: Spec) -> list[str]:
    """One line of labels to read, with what is known to stand on them; none where nothing is put on the plate."""
    labels = [
        say("card-label", component=component, label=", ".join(read)) if read else component
        for component, read in labels_of(spec)
    ]
    return [say("card-labels", labels=", ".join(labels))] if labels else []
