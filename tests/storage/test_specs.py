"""Published drills: known again by fingerprint, numbered and lettered, reworded and corrected."""

from dataclasses import replace
from datetime import datetime, timedelta
from decimal import Decimal

import pytest

from bot.domain.drill import Drill, SetUp, Wording
from bot.domain.identity import spec_fingerprint
from bot.services.ports.drill_records import PublishedDrill
from bot.services.ports.world import UnitOfWork
from bot.storage.storage import SqlStorage
from tests.fakes import KITCHEN_ROOM, MONDAY, a_drill

UPPER_LOCK = "!lock:tern.example"


def with_pieces(pieces: int, **changes: object) -> Drill:
    """A drill of another spec: more or fewer slices."""
    spec = a_drill().spec
    steps = (replace(spec.steps[0], pieces=pieces), *spec.steps[1:])
    return a_drill(spec=replace(spec, steps=steps), **changes)


async def publish(work: UnitOfWork, drill: Drill, after_s: int = 0, *, seeded: bool = False) -> PublishedDrill:
    """Publish in the Tern & Lantern so long after Monday at three."""
    return await work.drills.publish(KITCHEN_ROOM, drill, None, MONDAY + timedelta(seconds=after_s), seeded=seeded)


async def test_a_new_drill_gets_the_next_number_and_the_letter_a(storage: SqlStorage) -> None:
    """Numbers count per kitchen from 1; what was written comes back whole, its price exact."""
    async with storage.begin() as work:
        assert await work.drills.next_number(KITCHEN_ROOM) == 1
        first = await publish(work, a_drill())
        assert first == PublishedDrill(
            set_up_id=first.set_up_id,
            spec_id=first.spec_id,
            room_id=KITCHEN_ROOM,
            drill=a_drill(number=1, letter="A"),
            published_at=MONDAY,
        )
        assert str(first.drill.spec.steps[0].price) == "0.02"
        second = await work.drills.publish(KITCHEN_ROOM, with_pieces(5), first.spec_id, MONDAY)
        assert (second.drill.label, second.parent) == ("2", first.spec_id)
        elsewhere = await work.drills.publish(UPPER_LOCK, with_pieces(5), None, MONDAY)
        assert elsewhere.drill.label == "1"
        assert await work.drills.next_number(KITCHEN_ROOM) == 3


async def test_a_new_set_up_gets_the_next_letter(storage: SqlStorage) -> None:
    """The letter is spoken only once there are two; after Z comes AA, and the list keeps that order."""
    async with storage.begin() as work:
        assert (await publish(work, a_drill())).drill.label == "1"
        assert (await publish(work, a_drill(set_up=SetUp(plates=14)))).drill.label == "1B"
        for plates in range(15, 41):
            last = await publish(work, a_drill(set_up=SetUp(plates=plates)))
        assert last.drill.label == "1AB"
        labels = [published.drill.label for published in await work.drills.every(KITCHEN_ROOM)]
        assert (labels[:2], labels[25:]) == (["1A", "1B"], ["1Z", "1AA", "1AB"])
        found = await work.drills.find(KITCHEN_ROOM, "1ab")
        assert found is not None
        assert found.set_up_id == last.set_up_id


async def test_the_course_keeps_its_numbers_and_letters_where_they_are_free(storage: SqlStorage) -> None:
    """A numbered drill keeps number and letter; a taken number means the next, and then the letter begins anew."""
    async with storage.begin() as work:
        assert (await publish(work, a_drill(number=11, letter="A"), seeded=True)).drill.label == "11"
        waves = SetUp(plates=14, working="waves", wave=4)
        assert (await publish(work, a_drill(number=11, letter="C", set_up=waves), seeded=True)).drill.label == "11C"
        assert (await publish(work, a_drill(number=11, letter="C", set_up=SetUp(plates=9)))).drill.label == "11B"
        assert (await publish(work, with_pieces(5, number=11, letter="C"))).drill.label == "12"


async def test_a_drill_written_twice_is_one_drill(storage: SqlStorage) -> None:
    """The same identity under another name is a new wording of the same set-up, and is now the newest."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        await publish(work, with_pieces(5), 10)
        again = await publish(work, a_drill(), 20)
        assert (again.set_up_id, again.drill.wording.revision) == (first.set_up_id, 1)
        renamed = await publish(work, a_drill(wording=Wording("Slip", notes="cold plates")), 30)
        assert renamed.set_up_id == first.set_up_id
        assert renamed.drill.wording == Wording("Slip", notes="cold plates", revision=2)
        assert await work.drills.newest(KITCHEN_ROOM) == renamed
        assert len(await work.drills.every(KITCHEN_ROOM)) == 2


async def test_another_allergen_is_a_new_wording_and_is_shown(storage: SqlStorage) -> None:
    """What is no identity of the spec, labels and prices, is replaced on publishing and counts as a revision."""
    spec = a_drill().spec
    labelled = replace(spec, steps=(replace(spec.steps[0], labels=("celery",)), *spec.steps[1:]))
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        again = await publish(work, a_drill(spec=labelled), 10)
    assert again.spec_id == first.spec_id
    assert again.drill.spec.steps[0].labels == ("celery",)
    assert again.drill.wording.revision == 2


async def test_seeding_again_changes_nothing(storage: SqlStorage) -> None:
    """The course never overwrites what a chef reworded, and is never the newest by itself."""
    async with storage.begin() as work:
        await publish(work, a_drill(number=6, letter="A"), seeded=True)
        assert await work.drills.newest(KITCHEN_ROOM) is None
        renamed = await publish(work, a_drill(wording=Wording("Slip")), 10)
        assert await publish(work, a_drill(number=6, letter="A"), 20, seeded=True) == renamed
        assert await work.drills.newest(KITCHEN_ROOM) == renamed


async def test_a_label_finds_its_drill(storage: SqlStorage) -> None:
    """A bare number is the newest set-up; what is no label of this kitchen finds nothing."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        second = await publish(work, a_drill(set_up=SetUp(plates=14)), 10)
        found = {
            label: await work.drills.find(KITCHEN_ROOM, label) for label in ("1", "1a", " 1B ", "1C", "2", "B", "")
        }
        assert {label: drill.set_up_id for label, drill in found.items() if drill} == {
            "1": second.set_up_id,
            "1a": first.set_up_id,
            " 1B ": second.set_up_id,
        }
        for nonsense in ("9" * 40, "1ABC", "1 B", "-1", "١", "1B; drop table spec"):
            assert await work.drills.find(KITCHEN_ROOM, nonsense) is None
        assert await work.drills.find(UPPER_LOCK, "1") is None


async def test_a_reworded_set_up_keeps_its_turn(storage: SqlStorage) -> None:
    """Another target is the next revision of the wording; the newest drill is still the one published last."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        newest = await publish(work, with_pieces(2), 10)
        aimed = await work.drills.reword(first, replace(first.drill.wording, target_s=140), MONDAY)
        assert (aimed.drill.wording.target_s, aimed.drill.wording.revision) == (140, 2)
        assert aimed == await work.drills.get(first.set_up_id)
        assert replace(aimed, drill=first.drill) == first
        assert await work.drills.newest(KITCHEN_ROOM) == newest


async def test_a_retired_set_up_leaves_the_list_and_keeps_its_history(storage: SqlStorage) -> None:
    """Not listed, not the newest, not what its number alone means; found by letter and id; back when republished."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        second = await publish(work, a_drill(set_up=SetUp(plates=14)), 10)
        await work.drills.retire(second.set_up_id)
        assert [drill.set_up_id for drill in await work.drills.every(KITCHEN_ROOM)] == [first.set_up_id]
        for newest in (await work.drills.newest(KITCHEN_ROOM), await work.drills.find(KITCHEN_ROOM, "1")):
            assert newest is not None
            assert newest.drill.label == "1A"
        retired = await work.drills.find(KITCHEN_ROOM, "1B")
        assert retired == await work.drills.get(second.set_up_id)
        assert retired is not None
        assert retired.retired
        assert not (await publish(work, a_drill(set_up=SetUp(plates=14)), 20)).retired


async def test_a_spec_is_found_by_fingerprint_and_by_id(storage: SqlStorage) -> None:
    """Both give its first set-up."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        await publish(work, a_drill(set_up=SetUp(plates=14)), 10)
        by_mark = await work.drills.by_fingerprint(KITCHEN_ROOM, spec_fingerprint(a_drill().spec))
        assert by_mark is not None
        assert by_mark.set_up_id == first.set_up_id
        assert await work.drills.first_of(first.spec_id) == by_mark
        assert await work.drills.by_fingerprint(UPPER_LOCK, spec_fingerprint(a_drill().spec)) is None


async def test_a_corrected_spec_keeps_its_number_and_is_known_by_its_new_identity(storage: SqlStorage) -> None:
    """After the correction the right drill is the known one, set-ups included, and the wrong one is new."""
    async with storage.begin() as work:
        wrong = await publish(work, a_drill())
        await work.drills.correct(wrong.spec_id, with_pieces(2))
        put_right = await work.drills.get(wrong.set_up_id)
        assert put_right is not None
        assert (put_right.drill.label, put_right.drill.spec) == ("1", with_pieces(2).spec)
        assert (await publish(work, with_pieces(2), 10)).set_up_id == wrong.set_up_id
        assert (await publish(work, a_drill(), 20)).drill.label == "2"


@pytest.mark.parametrize("moment", [MONDAY, MONDAY + timedelta(microseconds=1)])
async def test_a_moment_is_kept_to_the_microsecond(storage: SqlStorage, moment: datetime) -> None:
    """The time of publishing comes back equal and aware."""
    async with storage.begin() as work:
        published = await work.drills.publish(KITCHEN_ROOM, a_drill(), None, moment)
    assert published.published_at == moment
    assert published.published_at.utcoffset() == timedelta(0)


async def test_a_repriced_spec_is_a_revision_and_no_newer(storage: SqlStorage) -> None:
    """Another price of a component is stored exact, for every set-up of the spec, and the newest drill stays so."""
    async with storage.begin() as work:
        first = await publish(work, a_drill())
        second = await publish(work, with_pieces(5), 10)
        steps = (replace(first.drill.spec.steps[0], price=Decimal("0.03")), *first.drill.spec.steps[1:])
        repriced = await work.drills.reprice(first, replace(first.drill.spec, steps=steps), MONDAY)
        assert (repriced.drill.spec.steps, repriced.drill.wording.revision) == (steps, 2)
        assert (repriced.published_at, repriced.set_up_id) == (first.published_at, first.set_up_id)
        assert await work.drills.newest(KITCHEN_ROOM) == second
