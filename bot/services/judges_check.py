"""The check of judges: the same twelve photos to each, and how far every two of them agree."""

from dataclasses import replace
from datetime import timedelta

from bot.domain.judging import check_judges
from bot.errors import UserError
from bot.replies.judging import check_lines, figures_of_check
from bot.replies.markup import link_to
from bot.services.boards import names_of
from bot.services.ports.run_records import PhotoCheck
from bot.services.said import Said
from bot.services.verdicts import is_judge

PHOTOS = 12
MONTH = timedelta(days=31)


async def start_check(said: Said) -> None:
    """Take the last month's twelve newest photos for a new check; the one before, and its answers, are dropped."""
    if not await said.is_chef():
        raise UserError("chef-only")
    runs = await said.work.runs.with_photo(said.kitchen.room_id, said.now - MONTH)
    photos = tuple(dict.fromkeys(run.photo for run in runs if run.photo))[-PHOTOS:]
    if len(photos) < PHOTOS:
        raise UserError("check-too-few", photos=len(photos), of=PHOTOS)
    await said.work.runs.save_check(
        PhotoCheck(room_id=said.kitchen.room_id, started_at=said.now, photos=photos),
    )
    await said.tell(said.phrases("check-started"))


async def show_check(said: Said) -> None:
    """Show a judge the photos until they have answered, and then how far the judges agree; the chef that at once."""
    check = await _check(said)
    if said.user_id in check.answers or (await said.is_chef() and len(check.answers) > 1):
        await _tell_agreement(said, check)
        return
    links = [f"{nth}. {link_to(check.room_id, photo)}" for nth, photo in enumerate(check.photos, 1)]
    await said.tell("\n".join([said.phrases("check-how"), *links]))


async def answer_check(said: Said, signs: str) -> None:
    """Keep a judge's twelve verdicts, and tell how far they agree with each of the others."""
    check = await _check(said)
    if len(signs) != len(check.photos):
        raise UserError("check-other-number", signs=len(signs), of=len(check.photos))
    answered = replace(check, answers={**check.answers, said.user_id: tuple(sign == "+" for sign in signs)})
    await said.work.runs.save_check(answered)
    await _tell_agreement(said, answered)


async def _check(said: Said) -> PhotoCheck:
    if not await is_judge(said):
        raise UserError("judges-only")
    check = await said.work.runs.check(said.kitchen.room_id)
    if check is None:
        raise UserError("check-none")
    return check


async def _tell_agreement(said: Said, check: PhotoCheck) -> None:
    """Every pair to the chef, to a judge the pairs that they are in."""
    everyone = await said.is_chef()
    pairs = {pair: c for pair, c in check_judges(check.answers).items() if everyone or said.user_id in pair}
    if not pairs:
        await said.tell(said.phrases("check-alone"))
        return
    names = await names_of(said.work, said.kitchen.room_id)
    await said.tell("\n".join(check_lines(said.phrases, pairs, names)), figures_of_check(pairs))
