"""Working orders in words: a line each with its time and waits, and the one to take."""

from bot.domain.drill import Drill, SetUp
from bot.domain.pace import clock_text
from bot.domain.working_order import Wait, WorkingOrder
from bot.replies.phrases import Phrases

MOST_WAVES = 3
"""Sizes of waves that are shown, besides the one to take and the one in use."""


def order_lines(say: Phrases, drill: Drill, orders: tuple[WorkingOrder, ...], best: WorkingOrder | None) -> list[str]:
    """The orders worth showing, the largest batch first, and what follows."""
    head = say("order-head", name=drill.wording.name, label=drill.label, plates=drill.set_up.plates)
    shown = [_order_line(say, drill, order) for order in _shown(drill, orders, best)]
    return [head, *shown, _advice(say, orders, best)]


def figures_of_orders(orders: tuple[WorkingOrder, ...]) -> dict[str, float | int | str | None]:
    """The numbers behind the comparison, by order and component."""
    figures: dict[str, float | int | str | None] = {}
    for order in orders:
        name = f"{order.set_up.working}{order.set_up.wave or ''}"
        figures[f"{name}.standard_s"] = order.standard_s
        figures |= {f"{name}.{wait.component}.wait_s": wait.wait_s for wait in order.waits}
    return figures


def _shown(drill: Drill, orders: tuple[WorkingOrder, ...], best: WorkingOrder | None) -> list[WorkingOrder]:
    whole, *waves, single = orders
    kept = [order for nth, order in enumerate(waves) if nth < MOST_WAVES or order is best or _is_own(drill, order)]
    return [whole, *kept, single]


def _is_own(drill: Drill, order: WorkingOrder) -> bool:
    own = drill.set_up
    return own.working == order.set_up.working and (own.working != "waves" or own.wave == order.set_up.wave)


def _order_line(say: Phrases, drill: Drill, order: WorkingOrder) -> str:
    way = _way_text(say, order.set_up)
    waits = ", ".join(_wait_text(say, wait) for wait in order.minded)
    return say(
        "order-line",
        way=say("order-own", way=way) if _is_own(drill, order) else way,
        time=clock_text(order.standard_s),
        waits=waits or "none",
    )


def _way_text(say: Phrases, set_up: SetUp) -> str:
    return say(f"order-{set_up.working}", wave=set_up.wave)


def _wait_text(say: Phrases, wait: Wait) -> str:
    shown = clock_text(wait.wait_s)
    if wait.life_s is not None and wait.too_long:
        return say("order-wait-too-long", component=wait.component, wait=shown, life=clock_text(wait.life_s))
    return say("order-wait", component=wait.component, wait=shown)


def _advice(say: Phrases, orders: tuple[WorkingOrder, ...], best: WorkingOrder | None) -> str:
    if best is None:
        return say("order-none-keeps")
    lives = any(wait.life_s is not None for wait in orders[0].waits)
    way = _way_text(say, best.set_up)
    return say("order-best-life", way=way) if lives else say("order-fastest", way=way)
