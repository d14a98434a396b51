"""Platepace beside an echo bot on the same Synapse, in interleaved rounds; ratios within a round, then medians."""

import asyncio
from collections.abc import Iterable, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import median
from typing import Any

from sqlalchemy import insert

from bot.homeserver import Homeserver, private_homeserver
from bot.matrix.client import Account, Client
from bot.services.ports.drill_records import PublishedDrill
from bot.storage.engine import open_engine
from bot.storage.repository import values_of
from bot.storage.runs import asked_by
from bot.storage.storage import SqlStorage
from bot.storage.tables import runs
from tests.bench.contenders import PASSWORD, Contender, database_url, echo, platepace
from tests.bench.room import Room
from tests.fakes import a_run

ROUNDS = 5
SINGLE_LINES = 30
BURST = 100
STORED_RUNS = 100_000


@dataclass(frozen=True)
class Round:
    """What one contender did in one round."""

    first_answer_s: float
    answer_s: float
    burst_s: float
    lost: int
    out_of_order: int
    peak_mib: float


async def measure(directory: Path) -> list[str]:
    """The lines to print."""
    async with private_homeserver(directory / "homeserver") as server:
        people = {name: await _person(server, name) for name in ("ime", "noor")}
        try:
            rooms = await _rooms(server, directory, people)
            return _told(await _rounds(rooms, directory))
        finally:
            for person in people.values():
                await person.close()


async def _person(server: Homeserver, name: str) -> Client:
    user_id = await server.register(name, PASSWORD)
    client = Client(server.url, Account(user_id, password=PASSWORD))
    await client.sign_in()
    return client


async def _rooms(server: Homeserver, directory: Path, people: dict[str, Client]) -> list[tuple[Contender, Room]]:
    bots = {name: await server.register(name, PASSWORD) for name in ("echo", "platepace", "stored")}
    contenders = [
        echo(server.url, bots["echo"]),
        platepace("platepace", directory / "empty", server.url, bots["platepace"]),
        platepace("with 100,000 runs", directory / "stored", server.url, bots["stored"]),
    ]
    rooms = []
    for contender in contenders:
        order = {
            "name": contender.name,
            "preset": "private_chat",
            "invite": [people["noor"].user_id, contender.user_id],
        }
        room_id = await people["ime"].create_room(order)
        await people["noor"].join(room_id)
        rooms.append((contender, Room(people["noor"], room_id, contender.user_id)))
    await _join_echo(server, rooms[0][1].room_id, bots["echo"])
    for contender, room in rooms[1:]:
        await _open(contender, room, people["ime"], directory)
    await _store_runs(directory / "stored", rooms[2][1].room_id)
    return rooms


async def _join_echo(server: Homeserver, room_id: str, user_id: str) -> None:
    client = Client(server.url, Account(user_id, password=PASSWORD))
    await client.sign_in()
    await client.join(room_id)
    await client.close()


async def _open(contender: Contender, room: Room, chef: Client, directory: Path) -> None:
    """Let the bot join, post a drill of twelve plates and count Noor in."""
    listening = asyncio.create_task(room.listen())
    with contender.running(directory / "setup.log"):
        await room.answers_after(0)
        posted = {"msgtype": "m.text", "body": "!post now 11B"}
        await chef.send(room.room_id, "m.room.message", posted, "post")
        await room.answers_after(1)
        await room.say("!join")
        await room.answers_after(2)
    await _stopped(listening)


async def _store_runs(directory: Path, room_id: str) -> None:
    """Put a hundred thousand runs of fifty cooks, Noor among them, into the database."""
    now = datetime.now(UTC)
    storage = SqlStorage(database_url(directory), lambda: now)
    async with storage.begin() as work:
        drills = list(await work.drills.every(room_id))
        cooks = [m.user_id for m in await work.kitchens.members(room_id)] + [f"@cook{n}:tern" for n in range(47)]
    await storage.close()
    engine = open_engine(database_url(directory))
    async with engine.begin() as connection:
        await connection.execute(
            insert(runs), [_stored_run(n, room_id, drills, cooks, now) for n in range(STORED_RUNS)]
        )
    await engine.dispose()


def _stored_run(
    nth: int, room_id: str, drills: Sequence[PublishedDrill], cooks: Sequence[str], now: datetime
) -> dict[str, Any]:
    """A run of the last two years, as its row."""
    published, when = drills[nth % len(drills)], now - timedelta(days=700) + timedelta(minutes=10 * nth)
    run = a_run(
        published.set_up_id,
        published.spec_id,
        room_id=room_id,
        user_id=cooks[nth % len(cooks)],
        event_id=f"$stored{nth}",
        arrived=nth + 1,
        sent_at=when,
        ran_at=when,
        kitchen_day=when.date(),
    )
    return values_of(runs, run) | asked_by(run)


async def _rounds(rooms: Sequence[tuple[Contender, Room]], directory: Path) -> dict[str, list[Round]]:
    results: dict[str, list[Round]] = {contender.name: [] for contender, _ in rooms}
    for _ in range(ROUNDS):
        for contender, room in rooms:
            results[contender.name].append(await _round(contender, room, directory))
    return results


async def _round(contender: Contender, room: Room, directory: Path) -> Round:
    listening = asyncio.create_task(room.listen())
    await asyncio.sleep(0.5)
    with contender.running(directory / f"{contender.name}.log") as process:
        first_s = await room.first_answer_s(process.started_s)
        singles = [await room.answer_s() for _ in range(SINGLE_LINES)]
        burst_s, lost, out_of_order = await room.burst(BURST)
        peak_mib = process.peak_mib()
    await _stopped(listening)
    return Round(first_s, median(singles), burst_s, lost, out_of_order, peak_mib)


async def _stopped(task: asyncio.Task[None]) -> None:
    task.cancel()
    with suppress(asyncio.CancelledError):
        await task


def _told(results: dict[str, list[Round]]) -> list[str]:
    lines = [f"Against a minimal echo bot on the same Synapse, {ROUNDS} interleaved rounds, medians:"]
    echoed = results["echo"]
    for name, rounds in results.items():
        lines.append(
            f"  {name}: answer {_ms(r.answer_s for r in rounds)}, first answer {_ms(r.first_answer_s for r in rounds)}"
            f" after the start, burst of {BURST} {_ms(r.burst_s for r in rounds)}, lost {sum(r.lost for r in rounds)},"
            f" out of order {sum(r.out_of_order for r in rounds)}, peak {median(r.peak_mib for r in rounds):.0f} MiB"
        )
        if name != "echo":
            pairs = list(zip(rounds, echoed, strict=True))
            lines.append(
                f"    ratios: answer {median(a.answer_s / b.answer_s for a, b in pairs):.2f} (at most 1.25),"
                f" start {median(a.first_answer_s / b.first_answer_s for a, b in pairs):.2f} (2.5),"
                f" memory {median(a.peak_mib / b.peak_mib for a, b in pairs):.2f} (2)"
            )
    return lines


def _ms(seconds: Iterable[float]) -> str:
    return f"{1000 * median(seconds):.0f} ms"
