"""What a bot takes by itself for an answer: from the sync that brings the line to the request that sends the answer."""

import asyncio
from pathlib import Path
from statistics import median

from bot.domain.pace import clock_text
from tests.bench.contenders import Contender, echo, platepace
from tests.bench.stub_homeserver import IME, NOOR, StubHomeserver, stub_homeserver

ROUNDS = 5
LINES = 40
BOT = "@bot:tern.example"


async def measure(directory: Path) -> list[str]:
    """The lines to print."""
    took: dict[str, list[float]] = {"echo": [], "platepace": []}
    for number in range(ROUNDS):
        async with stub_homeserver(BOT) as stub:
            took["echo"].append(await _median_s(stub, echo(stub.url, BOT), directory))
        async with stub_homeserver(BOT) as stub:
            bot = platepace("platepace", directory / f"stub{number}", stub.url, BOT, encryption=False)
            took["platepace"].append(await _median_s(stub, bot, directory))
    own = {name: 1000 * median(rounds) for name, rounds in took.items()}
    return [
        f"On an in-memory stub homeserver, {ROUNDS} interleaved rounds, medians of {LINES} answers:",
        f"  own part of an answer: platepace {own['platepace']:.1f} ms, echo {own['echo']:.1f} ms",
    ]


async def _median_s(stub: StubHomeserver, contender: Contender, directory: Path) -> float:
    with contender.running(directory / "stub.log"):
        await _set_up(stub, contender)
        return median([await _answer_s(stub, 510 + n) for n in range(LINES)])


async def _set_up(stub: StubHomeserver, contender: Contender) -> None:
    """Wait until the bot is there; of Platepace, have a drill of twelve plates posted and Noor counted in."""
    if contender.name == "echo":
        async with asyncio.timeout(20):
            while not stub.sent:
                await stub.say(NOOR, "there?")
                await asyncio.sleep(0.1)
    else:
        await stub.answer(0)
        await stub.say(IME, "!post now 11B")
        await stub.answer(1)
        await stub.say(NOOR, "!join")
        await stub.answer(2)
    await asyncio.sleep(1)


async def _answer_s(stub: StubHomeserver, clock_s: int) -> float:
    seen = len(stub.sent)
    said_s = await stub.say(NOOR, f"{clock_text(clock_s)} 11/12")
    answered_s = await stub.answer(seen)
    await asyncio.sleep(0.1)
    return answered_s - said_s
