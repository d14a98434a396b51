## Pictures (short, they stand in little room; the message beside them says all of it)

picture-guest = guest
picture-standard = standard
picture-touches = { $touches ->
    [1] touch a plate
   *[other] touches a plate
 }, { $run } in the run
picture-redo = one redo
picture-gate = of { $plates } good for a time
picture-free = Outlined only: the chef shows the place.

## Cautions in a few words (the message beside the picture says them whole)

short-mandoline = Mandoline: guard and glove.
short-heat = Hot things: dry cloth, “hot behind”.
short-floor = Keep the floor dry.
short-cold = Kept cold.
short-puree = Puree cold, binned the same day.
short-cooked-starch = Chilled fast, binned the same day.
short-bottle = Nothing back into a bottle.
short-pieces-counted = Count pieces out and in.
short-strain = Three runs a day.
short-chemicals = No cleaning chemicals near.
short-breakage = Breakage: stop, account for every piece.
short-hands = Wash hands before and after the phone.
short-allergens = Read every label; contact counts.
short-never-served = Never served, tasted or returned.

## The table plan

picture-walk = Walk in the order of the numbers, there and back.
picture-reach = Reach from the near side: { $often } cm again and again, { $seldom } cm now and then (dashed).

## The trend

picture-redo-share = Redo, % of the plates
picture-line = Line: the steady middle. Band: how far your runs usually lie from it. Bar at the end: the next run.
picture-ring = Ring: a best.

## The week's close

picture-own = Against their own expected time
picture-expected = The line is each cook’s own expected time; the bar is how much faster.

## On paper

help-paper = `paper` or `paper 6`: the drill on an A4 page to print, with a table for runs.
paper-here = { $drill } on paper, with a table for the runs. Send the runs later, like `yesterday 3:02 8/8`.
paper-date = Date
paper-name = Name
paper-clock = Clock
paper-good = Good plates
paper-reason = Redo reason
paper-watched = Watched by
