"""What happens in the week: a drill, a dozen runs, a few slips of the thumb, a board, and the close."""

from bot.demo.stage import Stage

MON, TUE, WED, THU, FRI, NEXT_MON = 0, 1, 2, 3, 4, 7


async def play_week(stage: Stage) -> None:
    """Play it from Monday to Monday."""
    await _monday_morning(stage)
    await _monday_afternoon(stage)
    await _tuesday(stage)
    await _wednesday(stage)
    await _thursday(stage)
    await _friday(stage)
    await _next_monday(stage)


async def _monday_morning(stage: Stage) -> None:
    """The chef sets the drill and asks what it takes; cooks join."""
    await stage.open_room("Tern & Lantern, plating", MON, "09:30")
    await stage.at(MON, "09:32")
    await stage.say("Ime", "!zone Europe/London")
    await stage.say("Ime", "!dayturn 07:00")
    await stage.say("Ime", "!post 6 mon 15:00")
    await stage.at(MON, "09:41")
    await stage.say("Petra", "!post mon")
    await stage.at(MON, "09:44")
    await stage.say("Ime", "!table 6 180x70")
    await stage.say("Ime", "!mise 1 6")
    for name, time in (("Kwabena", "10:05"), ("Lio", "10:20"), ("Petra", "11:02")):
        await stage.at(MON, time)
        await stage.say(name, "!join")


async def _monday_afternoon(stage: Stage) -> None:
    """The drill is posted at three; one is held until its cook joins; a dot is asked about; an edit is followed."""
    await stage.at(MON, "15:00")
    await stage.at(MON, "15:21")
    noor = await stage.run("Noor", "3:24 8/8")
    await stage.run("Noor", "yes")
    await stage.raise_hand("Bastian", noor)
    await stage.at(MON, "15:40")
    await stage.run("Lio", "3.20 8/8")
    lio = await stage.run("Lio", "3:20 8/8")
    await stage.at(MON, "15:42")
    await stage.run("Bastian", "Lio, one triangle fell when I lifted the plates")
    await stage.edit("Lio", lio, "3:20 7/8 fell")
    await stage.raise_hand("Bastian", lio)
    await stage.say("Lio", "!why")
    await stage.at(MON, "23:48")
    await stage.say("Anselm", "!join")


async def _tuesday(stage: Stage) -> None:
    """A plate too many, a commis who goes too fast and then not, and talk that is none of the bot's business."""
    await stage.at(TUE, "14:34")
    await stage.run("Kwabena", "3:46 9/8")
    kwabena = await stage.run("Kwabena", "3:46 8/8 rebuilt 1")
    await stage.raise_hand("Bastian", kwabena)
    await stage.at(TUE, "14:43")
    await stage.raise_hand("Bastian", await stage.run("Petra", "3:10 5/8"))
    await stage.at(TUE, "14:55")
    await stage.raise_hand("Bastian", await stage.run("Petra", "4:40 8/8"))
    await stage.at(TUE, "19:05")
    await stage.run("Kwabena", "table 12?")
    await stage.say("Lio", "86 the trout")


async def _wednesday(stage: Stage) -> None:
    """A clock too fast to be true is asked about in private; a message that the phone sends twice counts once."""
    await stage.at(WED, "14:36")
    noor = await stage.run("Noor", "0:48 8/8")
    await stage.say_privately("Noor", "3:10")
    await stage.raise_hand("Bastian", noor)
    await stage.at(WED, "14:49")
    await stage.raise_hand("Bastian", await stage.run("Lio", "3:16 8/8"))
    await stage.at(WED, "14:53")
    await stage.run("Lio", "3:16 8/8")


async def _thursday(stage: Stage) -> None:
    """A better run, one put right by its witness and deleted, and the chef's harder drill for next week."""
    await stage.at(THU, "14:33")
    await stage.raise_hand("Bastian", await stage.run("Noor", "3:02 8/8"))
    await stage.at(THU, "14:47")
    misread = await stage.run("Kwabena", "3:18 8/8")
    hand = await stage.raise_hand("Bastian", misread)
    await stage.at(THU, "14:48")
    await stage.run("Kwabena", "wait, I read the timer of the other row")
    await stage.delete("Bastian", hand)
    await stage.delete("Kwabena", misread)
    await stage.raise_hand("Bastian", await stage.run("Kwabena", "3:37 8/8 rebuilt 1"))
    await stage.at(THU, "16:10")
    await stage.say("Ime", "!step 2 2 triangle, lean, on both twirls")
    await stage.say("Ime", "c")
    await stage.say("Ime", "!post 12 mon 15:00")


async def _friday(stage: Stage) -> None:
    """A short run; the board for all, hands for a real pickup, own numbers in private."""
    await stage.at(FRI, "14:25")
    await stage.run("Lio", "2:10 6/8 left 2")
    await stage.at(FRI, "14:40")
    await stage.say("Lio", "!board")
    await stage.at(FRI, "14:44")
    await stage.say("Ime", "!pickup 60 in 15")
    await stage.at(FRI, "15:30")
    await stage.say("Noor", "!best")
    await stage.say_privately("Noor", "trend")


async def _next_monday(stage: Stage) -> None:
    """A run of Sunday night, sent on Monday; the board closes at seven, is told at nine; the harder drill at three."""
    await stage.at(NEXT_MON, "05:10")
    await stage.run("Anselm", "at 02:10 3:31 8/8")
    await stage.at(NEXT_MON, "15:00")
