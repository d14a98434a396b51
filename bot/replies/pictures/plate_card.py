"""The plate card: the plate with its clock, the figures of the drill beside it, and beneath what a cook has to know."""

from bot.domain.cautions import cautions_for
from bot.domain.drill import Drill
from bot.domain.pace import clock_text
from bot.domain.run import card_redo_s, time_gate
from bot.domain.standard_time import run_touches, standard_s, targets, touches
from bot.domain.techniques import Seconds
from bot.replies.card import head_line, step_lines, target_line
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import SOFT, Drawing, Sheet, new_sheet
from bot.replies.pictures.plate import Plate

RADIUS_PX = 102.0
WORDS_PX, SMALL_PX = 14, 12

LOCAL_RULES = "local-rules"


def plate_card(say: Phrases, drill: Drill, seconds: Seconds) -> Drawing:
    """The card of a drill; the text of the posted card says the same and more."""
    sheet = new_sheet(say)
    sheet.paragraph(head_line(say, drill), 17, bold=True)
    sheet.gap(8)
    _plate_and_figures(sheet, say, drill, seconds)
    for line in step_lines(say, drill.spec, seconds, every_tool=True):
        sheet.paragraph(line, WORDS_PX, bold=True)
    sheet.gap(4)
    for line in how_lines(say, drill, seconds):
        sheet.paragraph(line, WORDS_PX)
    sheet.gap(4)
    for line in short_cautions(say, drill, seconds):
        sheet.paragraph(line, SMALL_PX, ink=SOFT)
    return sheet.finished()


def drill_figures(say: Phrases, drill: Drill, seconds: Seconds) -> list[tuple[str, str]]:
    """The drill's figures, each with what it is of."""
    spec, set_up = drill.spec, drill.set_up
    redo = card_redo_s(spec, set_up, seconds)
    return [
        (clock_text(standard_s(spec, set_up, seconds)), say("picture-standard")),
        (str(touches(spec)), say("picture-touches", touches=touches(spec), run=run_touches(spec, set_up))),
        *([(clock_text(redo), say("picture-redo"))] if redo is not None else []),
        (str(time_gate(set_up.plates)), say("picture-gate", plates=set_up.plates)),
    ]


def how_lines(say: Phrases, drill: Drill, seconds: Seconds) -> list[str]:
    """When a plate is good, how to work and what to aim at."""
    spec, set_up = drill.spec, drill.set_up
    aims = targets(standard_s(spec, set_up, seconds))
    opening, house, brisk = (clock_text(aim) for aim in (aims.opening_s, aims.house_s, aims.brisk_s))
    how = [
        say(f"card-working-{set_up.working}", wave=set_up.wave),
        *([say("card-pressure", level=set_up.pressure)] if set_up.pressure else []),
        say("card-targets", opening=opening, house=house, brisk=brisk),
        *target_line(say, drill),
    ]
    return [*([say("card-accept", accept=spec.accept)] if spec.accept else []), " ".join(how)]


def short_cautions(say: Phrases, drill: Drill, seconds: Seconds) -> list[str]:
    """The drill's own cautions and those that fit, in a few words each, and last of all the local rules."""
    fitting = [key for key in cautions_for(drill.spec, seconds) if key != LOCAL_RULES]
    told = [*drill.wording.cautions, *(say(f"short-{key}") for key in fitting)]
    return [f"{say('card-take-care')} {' '.join(told)}", say(f"caution-{LOCAL_RULES}")]


def _plate_and_figures(sheet: Sheet, say: Phrases, drill: Drill, seconds: Seconds) -> None:
    top, left = sheet.below, 2 * RADIUS_PX + 18
    middle = sheet.across(sheet.margin + RADIUS_PX), top + RADIUS_PX
    plate = Plate(sheet, middle, RADIUS_PX, drill.spec)
    plate.draw()
    sheet.words((middle[0], top + 2 * RADIUS_PX + SMALL_PX + 1), say("picture-guest"), SMALL_PX, ink=SOFT)
    for figure, label in drill_figures(say, drill, seconds):
        sheet.paragraph(figure, 22, bold=True, left=left)
        sheet.paragraph(label, SMALL_PX, ink=SOFT, left=left)
        sheet.gap(4)
    sheet.below = max(sheet.below, top + 2 * RADIUS_PX + 16)
    if not plate.is_all_said:
        sheet.paragraph(say("picture-free"), SMALL_PX, ink=SOFT)
    sheet.gap(6)
