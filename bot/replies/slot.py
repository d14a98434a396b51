"""What fits in a slot, in words."""

from bot.domain.pace import clock_text
from bot.domain.slot import Slot
from bot.replies.phrases import Phrases


def slot_lines(say: Phrases, drill: str, slot: Slot, own_runs: int) -> list[str]:
    """How many runs, what each takes and the sum; ``own_runs`` are behind the cook's median, 0 where it is standard."""
    length = clock_text(slot.length_s)
    if slot.runs:
        first = say("slot-fits", runs=slot.runs, many=say("counted-first", many=slot.runs), drill=drill, slot=length)
        if slot.more_fit:
            first = f"{first} {say('slot-day-limit', runs=say('counted', many=slot.runs))}"
    else:
        first = say("slot-none", drill=drill, slot=length, shortest=clock_text(slot.taken_s(1)))
    each = clock_text(slot.each_s)
    return [
        first,
        say(
            "slot-each",
            each=each,
            run=clock_text(slot.run_s),
            by="own" if own_runs else "standard",
            count=own_runs,
            judging=clock_text(slot.judging_s),
            reset=clock_text(slot.reset_s),
        ),
        say(
            "slot-sum",
            laying=clock_text(slot.laying_out_s),
            runs=max(slot.runs, 1),
            each=each,
            clearing=clock_text(slot.clearing_s),
            taken=clock_text(slot.taken_s(max(slot.runs, 1))),
        ),
    ]
