"""Prices through the chat: what a run costs, who hears of money, and what is refused."""

import pytest

from tests.chat import COOKS, Chat, kitchen

PRICE_HOW = "Write it like `price courgette 0.04` for one piece, ml or g, `price dish 14.50`, or `price EUR`."


async def _priced(chat: Chat) -> list[str]:
    """Rope coil's stand-ins and dish priced by the chef, in the room; the last answer's lines."""
    for line in ("EUR", "oil 0.01", "Triangle 0,3", "noodle 0.002", "dish 14.50"):
        await chat.say("ime", f"!price {line}")
    return chat.told("ime")[0].split("\n")


async def test_what_a_run_costs(live: Chat) -> None:
    """Each stand-in with its loss and price, the sum of the lines, and a redo as a plate of the real dish."""
    assert [line.replace("\N{NO-BREAK SPACE}", " ") for line in await _priced(live)] == [
        "Rope coil (drill 6), what a run of 8 plates loses of its stand-ins:",
        "- noodle: 96 g used up, 115 g thrown at the day's end; 211 g x 0.002 = 0.42 EUR",
        "- triangle: 0.16 used up; 0.16 x 0.3 = 0.05 EUR",
        "- oil: 0.54 ml used up, 0.054 ml thrown at the day's end; 0.6 ml x 0.01 = 0.01 EUR",
        "A run: 0.48 EUR. The stand-ins of one plate built again: 0.05 EUR.",
        "1 redo on the pass would be 1 plate of 14.50.",
    ]
    assert live.heard[-1].note.figures["run_cost"] == "0.48"


async def test_money_is_kept_out_of_the_room(live: Chat) -> None:
    """Whatever the chef asks or sends about prices, the room hears nothing, and its card shows no price."""
    await _priced(live)
    for line in ("!price", "!price 6", "!price dish 1.234", "!price fish 2", "!price XQQ"):
        assert await live.say("ime", line) == live.told("ime") != []
    (card,) = await live.say("noor", "!spec")
    assert "14.50" not in card
    assert "0.002" not in card
    assert await live.say("noor", "!price") == ["That word is the chef's."]
    assert await live.whisper("noor", "price") == ["That word is the chef's."]


async def test_three_redos_are_three_plates(live: Chat) -> None:
    """With five cooks on the board the week's redos are told as plates of the dish; with four they are nobody's."""
    for cook in COOKS[:3]:
        await live.run(cook, "3:20 7/8")
    await live.run("petra", "3:20 8/8 rebuilt 1")
    few = await _priced(live)
    assert not any("week" in line for line in few)
    await live.say("bastian", "!join")
    await live.run("bastian", "3:20 8/8", watched=False)
    lines = (await live.whisper("ime", "price"))[0].replace("\N{NO-BREAK SPACE}", " ").split("\n")
    assert "This week: 5 runs, 3 redone, 1 rebuilt." in lines
    assert "- noodle: 96 g used up, 19 g for plates built again, 96 g thrown at the day's end" in lines[1]
    assert lines[-1] == "3 redos on the pass would be 3 plates of 14.50: 43.50 EUR."


async def test_a_price_is_a_revision(live: Chat) -> None:
    """Bests stay, the posted drill keeps the price when it is changed, and the number does not move."""
    await live.run("noor", "3:20 8/8")
    await _priced(live)
    assert await live.say("noor", "!best") == ["Rope coil: 3:20, Monday 23 November, 8 of 8."]
    await live.say("ime", "!plates 9")
    await live.say("ime", "b")
    lines = (await live.say("ime", "!price"))[0].split("\n")
    assert lines[0] == "Rope coil (drill 6B), what a run of 9 plates loses of its stand-ins:"
    assert "x 0.002 =" in lines[1]
    assert lines[-1] == "1 redo on the pass would be 1 plate of 14.50."


async def test_a_currency_with_no_minor_unit(live: Chat) -> None:
    """Yen are whole: a finer price of the dish is refused, one gram may still cost a part of one."""
    assert await live.say("ime", "!price jpy") == ["Prices are in JPY. Those given before keep their figures."]
    refused = "JPY has no smaller coin. Write it like `price dish 14`."
    assert await live.say("ime", "!price dish 14.50") == [refused]
    await live.say("ime", "!price noodle 0.4")
    (told,) = await live.say("ime", "!price dish 1450")
    assert "211 g x 0.4 = 84\N{NO-BREAK SPACE}JPY" in told
    assert told.endswith("1 redo on the pass would be 1 plate of 1450.")


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("!price", "Say the kitchen's currency first, by its code, like `price EUR`."),
        ("!price noodle 0.002", "Say the kitchen's currency first, by its code, like `price EUR`."),
        ("!price XQQ", "I do not know the currency XQQ. Send its three-letter code, like `price EUR`."),
        ("!price noodle", PRICE_HOW),
        ("!price noodle -2", PRICE_HOW),
        ("!price noodle NaN", PRICE_HOW),
        ("!price noodle 99999999999", PRICE_HOW),
    ],
)
async def test_prices_are_asked_for_as_they_are_written(live: Chat, line: str, told: str) -> None:
    """Before a currency, with an unknown one, or with no price that can be read, one sentence says what to send."""
    assert await live.say("ime", line) == [told]


async def test_only_components_of_the_drill_have_prices(live: Chat) -> None:
    """A component that the drill does not have is answered with those it has; another drill may be named."""
    await live.say("ime", "!price EUR")
    assert await live.say("ime", "!price fish 2") == ["This drill has no fish; it has noodle, triangle, oil."]
    (told,) = await live.say("ime", "!price 7 bean puree 0.003")
    assert told.startswith("Gull egg (drill 7), what a run of 9 plates loses")
    assert "x 0.003 =" in told


async def test_each_kitchen_has_its_own_prices() -> None:
    """What one kitchen pays is nothing to the other, even for the same drill of the course."""
    async with kitchen() as chat:
        await chat.say("ime", "!price EUR")
        await chat.say("ime", "!price 6 noodle 0.002")
        await chat.stage.open_kitchen("!lock:tern.example", "Upper Lock", "@bastian:tern.example")
        told = await chat.say("bastian", "!price 6", room="!lock:tern.example")
        assert told == ["Say the kitchen's currency first, by its code, like `price EUR`."]
