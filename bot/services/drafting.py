"""Writing a drill: drafted, changed step by step, published; and what happens when a live drill is changed."""

from dataclasses import replace

from bot.domain.drill import Drill, SetUp, Spec, Step, laid_out
from bot.domain.identity import set_up_fingerprint, spec_fingerprint
from bot.errors import UserError
from bot.replies.card import draft_card
from bot.services.identity_choice import ask_which_way
from bot.services.meant import drill_meant
from bot.services.ports.drill_records import Draft, PublishedDrill
from bot.services.said import Said


async def start_draft(said: Said, drill: Drill) -> None:
    """Keep a drill as this chef's draft and answer with its card; one of the same work is recognised."""
    known = await said.work.drills.by_fingerprint(said.kitchen.room_id, spec_fingerprint(drill.spec))
    parent = known or await _latest(said)
    await _keep(said, drill, parent, known=known is not None)


async def copy_to_draft(said: Said, label: str) -> None:
    """Begin a draft as a copy of an earlier drill."""
    original = await said.work.drills.find(said.kitchen.room_id, label)
    if original is None:
        raise UserError("no-such-drill", label=label)
    await draft_like(said, original.drill, original)


async def draft_like(said: Said, drill: Drill, original: PublishedDrill | None) -> None:
    """Begin a draft of this drill, which came from an earlier one."""
    await _keep(said, replace(drill, number=0, letter=""), original, known=True)


async def show_draft(said: Said) -> None:
    """Answer with the card of the draft as it stands."""
    draft = await _open_draft(said)
    await _answer_card(said, draft)


async def publish(said: Said) -> None:
    """Give the draft its number: from now on it can be posted and its results compared."""
    draft = await _open_draft(said)
    drill = await _with_what_is_known(said, draft.drill)
    published = await said.work.drills.publish(said.kitchen.room_id, drill, draft.parent, said.now)
    await said.work.drills.drop_draft(draft.id)
    drill = published.drill
    await said.answer(said.phrases("published", label=drill.label, name=drill.wording.name))


async def _with_what_is_known(said: Said, drill: Drill) -> Drill:
    """The drill with the lives, labels and prices, and the target, that it leaves unsaid and are known of its work."""
    known = await said.work.drills.by_fingerprint(said.kitchen.room_id, spec_fingerprint(drill.spec))
    if known is None:
        return drill
    pairs = zip(known.drill.spec.steps, drill.spec.steps, strict=True)
    steps = tuple(_with_what_stays(said, old, new) for old, new in pairs)
    alike = set_up_fingerprint(drill.spec, drill.set_up)
    every = [one.drill for one in await said.work.drills.every(said.kitchen.room_id)]
    same = next((one for one in every if set_up_fingerprint(one.spec, one.set_up) == alike), None)
    target_s = drill.wording.target_s or (same.wording.target_s if same else None)
    dish_price = drill.wording.dish_price or (same or known.drill).wording.dish_price
    wording = replace(drill.wording, target_s=target_s, dish_price=dish_price)
    return replace(drill, spec=replace(drill.spec, steps=steps), wording=wording)


async def change_step(said: Said, nth: int, step: Step) -> None:
    """Put another step in the place of the nth, or after the last one."""
    draft, drill = await _being_changed(said)
    steps = drill.spec.steps
    if not 1 <= nth <= len(steps) + 1:
        raise UserError("no-such-step", most=len(steps) + 1)
    if nth <= len(steps):
        step = _with_what_stays(said, steps[nth - 1], step)
    spec = replace(drill.spec, steps=(*steps[: nth - 1], step, *steps[nth:]))
    await _change(said, draft, drill, spec, drill.set_up)


def _with_what_stays(said: Said, old: Step, new: Step) -> Step:
    """The new step with what it leaves unsaid kept from the old one of the same component and technique."""
    if (old.component.casefold(), old.technique) != (new.component.casefold(), new.technique):
        return new
    usual = said.house.seconds.techniques[new.technique]
    return replace(
        new,
        tool=old.tool if new.tool == usual.tool else new.tool,
        stand_in=old.stand_in if new.stand_in == usual.stand_in else new.stand_in,
        at=new.at or old.at,
        life_s=old.life_s if new.life_s is None else new.life_s,
        labels=new.labels or old.labels,
        price=old.price if new.price is None else new.price,
    )


async def change_plates(said: Said, plates: int) -> None:
    """Lay out another number of plates."""
    draft, drill = await _being_changed(said)
    await _change(said, draft, drill, drill.spec, laid_out(replace(drill.set_up, plates=plates)))


async def change_rows(said: Said, rows: int) -> None:
    """Lay the plates out in so many rows."""
    draft, drill = await _being_changed(said)
    await _change(said, draft, drill, drill.spec, laid_out(replace(drill.set_up, rows=rows)))


async def reread_draft(said: Said, draft: Draft, drill: Drill) -> None:
    """The draft's message was edited: read it again."""
    await _answer_card(said, await said.work.drills.save_draft(replace(draft, drill=drill)))


async def _change(said: Said, draft: Draft | None, drill: Drill, spec: Spec, set_up: SetUp) -> None:
    changed = replace(drill, spec=spec, set_up=set_up)
    if (spec, set_up) != (drill.spec, drill.set_up):  # a time to meet was set for the work as it was
        changed = replace(changed, wording=replace(drill.wording, target_s=None))
    if draft:
        await _answer_card(said, await said.work.drills.save_draft(replace(draft, drill=changed)))
    else:
        await ask_which_way(said, await drill_meant(said), changed)


async def _being_changed(said: Said) -> tuple[Draft | None, Drill]:
    """The open draft and its drill, or else the live drill."""
    draft = await said.work.drills.draft(said.kitchen.room_id, said.user_id)
    if draft:
        return draft, draft.drill
    return None, (await drill_meant(said)).drill


async def _open_draft(said: Said) -> Draft:
    draft = await said.work.drills.draft(said.kitchen.room_id, said.user_id)
    if draft is None:
        raise UserError("no-draft")
    return draft


async def _latest(said: Said) -> PublishedDrill | None:
    """The drill that a new one follows: the one posted last."""
    live = await said.work.drills.last_live(said.kitchen.room_id)
    return await said.work.drills.get(live.set_up_id) if live else None


async def _keep(said: Said, drill: Drill, parent: PublishedDrill | None, *, known: bool) -> None:
    earlier = await said.work.drills.draft(said.kitchen.room_id, said.user_id)
    if earlier:
        await said.work.drills.drop_draft(earlier.id)
    draft = await said.work.drills.save_draft(
        Draft(
            room_id=said.kitchen.room_id,
            author=said.user_id,
            event_id=said.event_id,
            drill=drill,
            parent=parent.spec_id if parent else None,
        )
    )
    await _answer_card(said, draft)


async def _answer_card(said: Said, draft: Draft) -> None:
    """The card as parsed, whether this drill is known already, and what it changes against the one it came from."""
    known = await said.work.drills.by_fingerprint(said.kitchen.room_id, spec_fingerprint(draft.drill.spec))
    parent = await said.work.drills.first_of(draft.parent) if draft.parent else None
    await said.answer(
        draft_card(
            said.phrases,
            draft.drill,
            said.house.seconds,
            known=known.drill if known else None,
            parent=parent.drill if parent else None,
        )
    )
