"""A word to a cook for whom a drill is too much now."""

from bot.domain.lighter import step_back, strain_of
from bot.replies.coaching import step_back_line
from bot.services.advice import advise
from bot.services.languages import own_phrases
from bot.services.meant import Meant
from bot.services.ports.run_records import Run
from bot.services.said import Said


async def advise_step_back(said: Said, run: Run, meant: Meant) -> None:
    """After a run that asks for less, suggest an easier one to its runner."""
    if strain_of(run.result) is None:
        return
    runs = await said.work.runs.on_set_up(run.user_id, run.set_up_id)
    strain = step_back([each.result for each in runs]) if runs[-1].id == run.id else None
    if strain:
        say = await own_phrases(said.house, said.work, run.room_id, run.user_id)
        await advise(said, run.user_id, step_back_line(say, meant.drill, strain))
