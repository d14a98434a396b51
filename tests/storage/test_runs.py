"""Runs come back whole, in the order asked for, with those who raised a hand."""

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from bot.domain.drill import SetUp
from bot.domain.run import Count
from bot.services.ports.run_records import Past, Run
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, KWABENA, LIO, MONDAY, NOOR, a_drill, a_live_drill, a_result, a_run


class Bench:
    """A published drill in two set-ups, and runs put on it in stream order."""

    def __init__(self, work: UnitOfWork) -> None:
        self.work = work
        self.arrived = 0

    async def lay(self) -> "Bench":
        """Publish, and post the first set-up."""
        first = await self.work.drills.publish(KITCHEN_ROOM, a_drill(), None, MONDAY)
        second = await self.work.drills.publish(KITCHEN_ROOM, a_drill(set_up=SetUp(plates=14)), None, MONDAY)
        self.spec_id, self.set_ups = first.spec_id, (first.set_up_id, second.set_up_id)
        self.live_id = (await self.work.drills.save_live(a_live_drill(first.set_up_id, first.spec_id))).id
        return self

    async def run(self, set_up: int = 0, **changes: Any) -> Run:
        """One more run, each in a message of its own unless said otherwise."""
        self.arrived += 1
        changes = {"event_id": f"${self.arrived}", "arrived": self.arrived} | changes
        return await self.work.runs.save(a_run(self.set_ups[set_up], self.spec_id, **changes))


async def test_a_run_comes_back_whole_and_can_be_changed(storage: SqlStorage) -> None:
    """Every field, decimals of the result to the last place; witnesses are not saved with it."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        saved = await bench.run(
            live_id=bench.live_id,
            result=a_result(net_s=248.92307692307693, pace_s=0.1 + 0.2, count=Count(8, 7, redo=1, rebuilt=2, fixed=1)),
            reasons=("rim", "fell"),
            splits_s=(41, 33, 140),
            wipes=2,
            partner=LIO,
            sent_by=KWABENA,
            over_limit=True,
            status="pending",
        )
        assert saved.id > 0
        assert await work.runs.get(saved.id) == saved
        untimed = replace(saved, status="void", result=a_result(net_s=None, pace_s=None, levelled_s=None))
        assert await work.runs.save(replace(untimed, witnesses=(LIO,))) == replace(untimed, witnesses=(LIO,))
        assert await work.runs.get(saved.id) == untimed
        assert await work.runs.get(saved.id + 1) is None


async def test_the_runs_of_a_message_come_by_line_whatever_their_status(storage: SqlStorage) -> None:
    """Void ones too; other messages' not."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        second = await bench.run(event_id="$both", line=1)
        first = await bench.run(event_id="$both", line=0, status="void")
        await bench.run()
        assert await work.runs.of_event("$both") == [first, second]
        assert await work.runs.of_event("$none") == []


async def test_the_last_run_is_by_arrival_among_the_statuses_asked_for(storage: SqlStorage) -> None:
    """Neither a run dated later nor another person's is the last; of one message it is the lower line."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        await bench.run(ran_at=MONDAY + timedelta(hours=3))
        upper = await bench.run()
        lower = await bench.run(event_id=upper.event_id, line=1, arrived=upper.arrived)
        scrapped = await bench.run(status="scrapped")
        await bench.run(user_id=LIO)
        await bench.run(room_id="!lock:tern.example")
        assert await work.runs.last(KITCHEN_ROOM, NOOR) == lower
        assert await work.runs.last(KITCHEN_ROOM, NOOR, ("scrapped",)) == scrapped
        assert await work.runs.last(KITCHEN_ROOM, NOOR, ("kept", "scrapped")) == scrapped
        assert await work.runs.last(KITCHEN_ROOM, NOOR, ("void",)) is None


async def test_a_persons_runs_come_in_the_order_in_which_they_were_run(storage: SqlStorage) -> None:
    """By when, then by arrival, then by line; kept ones only, of that set-up or of all set-ups of its spec."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        third = await bench.run(ran_at=MONDAY + timedelta(hours=2))
        first = await bench.run(ran_at=MONDAY - timedelta(hours=2))
        other_set_up = await bench.run(1, ran_at=MONDAY - timedelta(hours=1))
        second = await bench.run(ran_at=MONDAY)
        again = await bench.run(ran_at=MONDAY)
        await bench.run(status="pending")
        await bench.run(user_id=LIO)
        assert await work.runs.on_set_up(NOOR, bench.set_ups[0]) == [first, second, again, third]
        assert await work.runs.on_set_up(NOOR, bench.set_ups[1]) == [other_set_up]
        await bench.run(ran_at=MONDAY + timedelta(hours=3), over_limit=True)
        looked_back_at = [_past(run) for run in (first, other_set_up, second, again, third)]
        assert await work.runs.on_spec(NOOR, first.spec_id) == looked_back_at
        assert await work.runs.on_spec(NOOR, first.spec_id, 2) == looked_back_at[-2:]


def _past(run: Run) -> Past:
    return Past(run.set_up_id, run.kitchen_day, run.result, run.splits_s)


async def test_a_board_has_its_kept_runs_by_cook(storage: SqlStorage) -> None:
    """In order of arrival; runs that count for no board or are off it are left out."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        noor = await bench.run(live_id=bench.live_id)
        lio = await bench.run(live_id=bench.live_id, user_id=LIO)
        noor_again = await bench.run(live_id=bench.live_id)
        await bench.run()
        await bench.run(live_id=bench.live_id, status="scrapped")
        assert await work.runs.on_board(bench.live_id) == [lio, noor, noor_again]


async def test_counted_runs_of_a_day(storage: SqlStorage) -> None:
    """Short and settling runs tire the hand like any; those stopped, over the limit or not kept do not count."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        for kind in ("counted", "short", "settling", "stopped"):
            await bench.run(result=a_result(kind=kind))
        await bench.run(over_limit=True)
        await bench.run(status="void")
        await bench.run(kitchen_day=date(2026, 11, 24))
        await bench.run(user_id=LIO)
        assert await work.runs.count_day(KITCHEN_ROOM, NOOR, date(2026, 11, 23)) == 3
        assert await work.runs.count_day(KITCHEN_ROOM, NOOR, date(2026, 11, 25)) == 0
        assert await work.runs.count_on_spec(KITCHEN_ROOM, NOOR, bench.spec_id, date(2026, 11, 23)) == 3
        assert await work.runs.count_on_spec(KITCHEN_ROOM, NOOR, bench.spec_id + 1, date(2026, 11, 23)) == 0
        assert await work.runs.count(KITCHEN_ROOM, NOOR) == 6
        assert await work.runs.count(KITCHEN_ROOM, KWABENA) == 0


async def test_a_correction_gets_every_kept_run_of_the_spec(storage: SqlStorage) -> None:
    """Of everybody and every set-up, in order of arrival."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        expected = [
            await bench.run(1),
            await bench.run(user_id=LIO),
            await bench.run(ran_at=MONDAY - timedelta(days=9)),
        ]
        await bench.run(status="void")
        assert await work.runs.of_spec(bench.spec_id) == expected


async def test_a_persons_runs_of_some_days(storage: SqlStorage) -> None:
    """Kept ones of any drill from the first day to the last, in the order in which they were run."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        sunday, monday, tuesday = (date(2026, 11, day) for day in (22, 23, 24))
        later = await bench.run(kitchen_day=tuesday, ran_at=MONDAY + timedelta(days=1))
        first = await bench.run(1, kitchen_day=monday)
        await bench.run(kitchen_day=sunday)
        await bench.run(kitchen_day=tuesday + timedelta(days=1))
        await bench.run(kitchen_day=monday, status="void")
        await bench.run(kitchen_day=monday, user_id=LIO)
        assert await work.runs.in_days(KITCHEN_ROOM, NOOR, monday, tuesday) == [first, later]
        assert await work.runs.in_days("!lock:tern.example", NOOR, monday, tuesday) == []


async def test_whole_runs_of_several_in_brief(storage: SqlStorage) -> None:
    """Of those asked about, by when they were run; no stopped run, no pair's, none beyond the day's safe number."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        day = date(2026, 11, 23)
        first = await bench.run(kitchen_day=day)
        lios = await bench.run(1, kitchen_day=day, user_id=LIO, result=a_result(kind="settling", net_s=None))
        await bench.run(kitchen_day=day, user_id=KWABENA)
        await bench.run(kitchen_day=day, over_limit=True)
        await bench.run(kitchen_day=day, partner=LIO)
        await bench.run(kitchen_day=day, result=a_result(kind="stopped"))
        await bench.run(kitchen_day=day, status="void")
        await bench.run(kitchen_day=day + timedelta(days=1))
        found = await work.runs.whole_in_days(KITCHEN_ROOM, [NOOR, LIO], day, day)
    assert [(ran.user_id, ran.set_up_id, ran.week, ran.net_s) for ran in found] == [
        (run.user_id, run.set_up_id, run.week, run.result.net_s) for run in (first, lios)
    ]
    assert {ran.standard_s for ran in found} == {first.result.standard_s}


async def test_a_raised_hand_witnesses_every_run_of_the_message(storage: SqlStorage) -> None:
    """One hand a person, the first to raise it first; lowered by the reaction that put it up."""
    async with storage.begin() as work:
        bench = await Bench(work).lay()
        run = await bench.run(event_id="$both")
        await bench.run(event_id="$both", line=1)
        other = await bench.run()
        assert await work.runs.raise_hand("$both", LIO, "$hand1")
        assert not await work.runs.raise_hand("$both", LIO, "$hand2")
        assert await work.runs.raise_hand("$both", KWABENA, "$hand3")
        assert [seen.witnesses for seen in await work.runs.of_event("$both")] == [(LIO, KWABENA)] * 2
        assert [seen.witnesses for seen in await work.runs.on_set_up(NOOR, run.set_up_id)] == [(LIO, KWABENA)] * 2 + [
            ()
        ]
        assert [seen.line for seen in await work.runs.witnessed_by("$hand1")] == [0, 1]
        assert await work.runs.witnessed_by("$hand2") == []
        await work.runs.lower_hand("$hand2")
        await work.runs.lower_hand("$hand1")
        assert [seen.witnesses for seen in await work.runs.of_event("$both")] == [(KWABENA,)] * 2
        assert await work.runs.raise_hand("$both", LIO, "$hand4")
        assert [seen.witnesses for seen in await work.runs.of_event("$both")] == [(KWABENA, LIO)] * 2
        assert await work.runs.get(other.id) == other
