"""Makes call sheets: told in private, so that only the mate who reads one knows what comes, and with its own set-up."""

from dataclasses import replace
from zlib import crc32

from bot.domain.calls import make_sheet
from bot.domain.standard_time import run_touches, standard_s
from bot.errors import UserError
from bot.replies.calls import sheet_lines
from bot.services.meant import drill_meant
from bot.services.ports.messages import Figure
from bot.services.said import Said

SHEETS = 900
"""As many different numbers are given to those who name none, all of three digits."""


async def tell_sheet(said: Said, label: str, level: int | None, number: int | None) -> None:
    """Tell the asker a sheet for the drill named or meant, under the label that the run is sent with."""
    meant = await drill_meant(said, label)
    drill, seconds = meant.drill, said.house.seconds
    level = level or drill.set_up.pressure
    if not level:
        raise UserError("calls-which-level")
    sheet = make_sheet(drill.spec, drill.set_up, seconds, level, number or _any_number(said))
    made = replace(drill, letter="", set_up=sheet.set_up)
    # No chef published it: posting "the newest" passes it over, as it does the course.
    published = await said.work.drills.publish(said.kitchen.room_id, made, None, said.now, seeded=True)
    figures: dict[str, Figure] = {f"call.{nth}.at_s": call.at_s for nth, call in enumerate(sheet.calls, 1)}
    figures |= {
        "sheet": sheet.number,
        "plates": sheet.set_up.plates,
        "touches": run_touches(drill.spec, sheet.set_up),
        "standard_s": standard_s(drill.spec, sheet.set_up, seconds),
    }
    await said.tell("\n".join(sheet_lines(said.phrases, published.drill, sheet, seconds)), figures)


def _any_number(said: Said) -> int:
    """A number that differs from message to message and stays the same for one."""
    return SHEETS // 9 + crc32(said.event_id.encode()) % SHEETS
