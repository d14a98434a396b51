"""What practice costs, told to the chef in private: prices of stand-ins and of the real dish, and what a run loses."""

from dataclasses import replace
from decimal import Decimal

from bot.domain.cost import Week
from bot.domain.mise import mise_of
from bot.errors import UserError
from bot.replies.cost import cost_lines, figures_of_cost
from bot.replies.money import check_currency, check_sum
from bot.services.meant import drill_meant, show_as_told
from bot.services.ports.drill_records import PublishedDrill
from bot.services.said import Said

FEWEST_COOKS = 5
"""Below so many a total of redos would tell of one person."""


async def set_currency(said: Said, code: str) -> None:
    """Give prices in this currency from now on."""
    currency = check_currency(code)
    await said.work.kitchens.save(replace(said.kitchen, currency=currency))
    await said.tell(said.phrases("price-currency", currency=currency))


async def set_price(said: Said, label: str, component: str, price: Decimal) -> None:
    """Keep what one piece, millilitre or gram of a component of the drill costs."""
    published = await _published(said, label)
    currency, spec = _currency(said), published.drill.spec
    named = component.casefold()
    if named not in {step.component.casefold() for step in spec.steps}:
        components = ", ".join(dict.fromkeys(step.component for step in spec.steps))
        raise UserError("price-no-component", component=component, components=components)
    steps = tuple(replace(s, price=price) if s.component.casefold() == named else s for s in spec.steps)
    kept = await said.work.drills.reprice(published, replace(spec, steps=steps), said.now)
    await show_as_told(said, kept.spec_id)  # so that a change of the posted drill keeps its prices
    await _tell_cost(said, kept, currency)


async def set_dish_price(said: Said, label: str, price: Decimal) -> None:
    """Keep what a guest pays for the real dish."""
    published = await _published(said, label)
    currency = _currency(said)
    wording = replace(published.drill.wording, dish_price=check_sum(price, currency))
    kept = await said.work.drills.reword(published, wording, said.now)
    await show_as_told(said, kept.spec_id)  # so that a change of the posted drill keeps its prices
    await _tell_cost(said, kept, currency)


async def tell_cost(said: Said, label: str) -> None:
    """What a run of the drill loses and what that costs."""
    await _tell_cost(said, await _published(said, label), _currency(said))


async def _tell_cost(said: Said, published: PublishedDrill, currency: str) -> None:
    """One run's losses, with this week's plates built again where enough people ran, and its redos on the pass."""
    mise = mise_of(published.drill, 1, said.house.seconds)
    week = await _week(said, published)
    lines = cost_lines(said.phrases, published.drill, mise, week, currency)
    await said.tell("\n".join(lines), figures_of_cost(published.drill, mise, week, currency))


async def _week(said: Said, published: PublishedDrill) -> Week | None:
    """This week's runs of the drill and their redone and rebuilt plates; None where too few people ran it."""
    for live in await said.work.drills.live_in(said.kitchen.room_id):
        if live.set_up_id == published.set_up_id:
            runs = await said.work.runs.on_board(live.id)
            counts = [run.result.count for run in runs]
            if len({run.user_id for run in runs}) >= FEWEST_COOKS:
                return Week(len(runs), sum(count.redo for count in counts), sum(count.rebuilt for count in counts))
    return None


async def _published(said: Said, label: str) -> PublishedDrill:
    """The drill named or meant, as it is stored."""
    meant = await drill_meant(said, label)
    published = await said.work.drills.get(meant.set_up_id)
    if published is None:
        raise UserError("no-drill-yet")
    return published


def _currency(said: Said) -> str:
    if said.kitchen.currency is None:
        raise UserError("price-currency-first")
    return said.kitchen.currency
