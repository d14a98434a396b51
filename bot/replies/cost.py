"""What practice costs, in words for the chef: the losses of a run, their price, and what redos cost on the pass."""

from decimal import Decimal

from bot.domain.cost import Loss, Week, cost_of, losses_of, plate_cost
from bot.domain.drill import Drill
from bot.domain.mise import Mise
from bot.replies.amounts import amount_text
from bot.replies.money import digits_of, money, money_text
from bot.replies.phrases import Phrases


def cost_lines(say: Phrases, drill: Drill, mise: Mise, week: Week | None, currency: str) -> list[str]:
    """A line a component, what a run costs together, and what redos would cost on the pass."""
    losses = _losses(mise, week)
    lines = [
        say("cost-head", name=drill.wording.name, label=drill.label, plates=mise.plates),
        *(_loss_line(say, loss, currency) for loss in losses),
    ]
    if week:
        lines.append(say("cost-week", runs=week.runs, redo=week.redo, rebuilt=week.rebuilt))
    run, again = cost_of(losses, digits_of(currency)), plate_cost(mise)
    if run is not None and again is not None:
        lines.append(say("cost-run", run=money_text(say, run, currency), again=money_text(say, again, currency)))
    return [*lines, _pass_line(say, drill.wording.dish_price, week, currency)]


def figures_of_cost(drill: Drill, mise: Mise, week: Week | None, currency: str) -> dict[str, float | int | str | None]:
    """The numbers behind the costs; sums of money as text, exact."""
    losses, digits = _losses(mise, week), digits_of(currency)
    figures: dict[str, float | int | str | None] = {
        "run_cost": _exact(cost_of(losses, digits)),
        "plate_cost": _exact(plate_cost(mise)),
        "dish_price": _exact(drill.wording.dish_price),
    }
    for loss in losses:
        name = loss.need.component
        figures |= {f"{name}.used_up": float(loss.used_up), f"{name}.again": float(loss.again)}
        figures |= {f"{name}.thrown": float(loss.thrown), f"{name}.cost": _exact(loss.cost(digits))}
    return figures


def _losses(mise: Mise, week: Week | None) -> tuple[Loss, ...]:
    return losses_of(mise, week.built_again if week else Decimal(0))


def _loss_line(say: Phrases, loss: Loss, currency: str) -> str:
    """The parts of the loss that there are, their sum, and what it costs where the component has a price."""
    unit, component = loss.need.unit, loss.need.component
    parts = [("cost-used-up", loss.used_up), ("cost-again", loss.again), ("cost-thrown", loss.thrown)]
    told = [say(key, amount=amount_text(say, amount, unit)) for key, amount in parts if amount]
    cost = loss.cost(digits_of(currency))
    if cost is None or loss.need.price is None:
        return say("cost-unpriced", component=component, parts=", ".join(told), unit=unit)
    return say(
        "cost-line",
        component=component,
        parts=", ".join(told),
        total=amount_text(say, loss.total, unit),
        price=say.number(_exact(loss.need.price) or ""),
        cost=money_text(say, cost, currency),
    )


def _pass_line(say: Phrases, dish: Decimal | None, week: Week | None, currency: str) -> str:
    """Redos as plates of the real dish: this week's, or else one."""
    if dish is None:
        return say("cost-no-dish")
    redo = week.redo if week else 1
    cost = money_text(say, dish * redo, currency)
    return say("cost-pass", redo=redo, dish=say.number(money(dish, currency)), cost=cost)


def _exact(amount: Decimal | None) -> str | None:
    return None if amount is None else f"{amount.normalize():f}"
