"""What happens in the week: a drill, a dozen runs, a few slips of the thumb, a board, and the close."""

from bot.demo.stage import Stage

MON, TUE, WED, THU, FRI, SUN, NEXT_MON = 0, 1, 2, 3, 4, 6, 7


async def play_week(stage: Stage) -> None:
    """Play it from Monday to Monday."""
    await _monday(stage)
    await _tuesday(stage)
    await _wednesday(stage)
    await _thursday(stage)
    await _friday(stage)
    await _the_close(stage)


async def _monday(stage: Stage) -> None:
    """The chef sets the drill; it is posted at three; the first cooks join and run it."""
    await stage.open_room("Tern & Lantern, plating", MON, "09:30")
    await stage.say("Ime", "!zone Europe/London")
    await stage.say("Ime", "!dayturn 07:00")
    await stage.say("Ime", "!post 6 mon 15:00")
    await stage.say("Petra", "!post mon")
    await stage.at(MON, "15:00")
    await stage.at(MON, "15:21")
    noor = await stage.run("Noor", "3:52 8/8")
    await stage.run("Noor", "yes")
    await stage.raise_hand("Bastian", noor)
    for name in ("Bastian", "Kwabena", "Lio", "Petra", "Anselm"):
        await stage.say(name, "!join")
    await stage.at(MON, "15:40")
    await stage.run("Lio", "3.40 8/8")
    lio = await stage.run("Lio", "3:40 7/8 fell")
    await stage.raise_hand("Bastian", lio)


async def _tuesday(stage: Stage) -> None:
    """A plate too many, a commis with a count goal, and talk that is none of the bot's business."""
    await stage.at(TUE, "14:34")
    await stage.run("Kwabena", "3:31 9/8")
    kwabena = await stage.run("Kwabena", "3:31 8/8 rebuilt 1")
    await stage.raise_hand("Bastian", kwabena)
    await stage.at(TUE, "14:43")
    await stage.run("Petra", "5:10 5/8")
    await stage.at(TUE, "14:52")
    petra = await stage.run("Petra", "4:58 7/8 rim")
    await stage.raise_hand("Bastian", petra)
    await stage.at(TUE, "19:05")
    await stage.say("Kwabena", "table 12?", in_thread=True)
    await stage.say("Lio", "86 the trout")


async def _wednesday(stage: Stage) -> None:
    """A clock too fast to be true is asked about in private; an edit is followed."""
    await stage.at(WED, "14:36")
    noor = await stage.run("Noor", "0:35 8/8")
    await stage.say_privately("Noor", "3:35")
    await stage.raise_hand("Bastian", noor)
    await stage.at(WED, "14:50")
    lio = await stage.run("Lio", "3:26 8/8")
    await stage.raise_hand("Bastian", lio)
    await stage.edit("Lio", lio, "3:26 7/8 fell")


async def _thursday(stage: Stage) -> None:
    """A better run, one deleted, and the chef's harder drill for next week."""
    await stage.at(THU, "14:33")
    noor = await stage.run("Noor", "3:28 8/8")
    hand = await stage.raise_hand("Bastian", noor)
    await stage.delete("Bastian", hand)
    await stage.raise_hand("Bastian", noor)
    await stage.at(THU, "14:47")
    wrong_drill = await stage.run("Kwabena", "2:58 8/8")
    await stage.delete("Kwabena", wrong_drill)
    await stage.at(THU, "16:10")
    await stage.say("Ime", "!step 2 2 triangle, lean")
    await stage.say("Ime", "c")


async def _friday(stage: Stage) -> None:
    """The board for all, own numbers in private."""
    await stage.at(FRI, "14:40")
    await stage.say("Lio", "!board")
    await stage.at(FRI, "15:30")
    await stage.say("Noor", "!best")
    await stage.say_privately("Noor", "trend")
    await stage.say("Lio", "!why")


async def _the_close(stage: Stage) -> None:
    """A run of Sunday night, sent on Monday morning; the board closes at seven and is told at nine."""
    await stage.at(NEXT_MON, "05:10")
    await stage.run("Anselm", "at 02:10 3:31 8/8")
    await stage.at(NEXT_MON, "09:30")
