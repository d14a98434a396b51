## Questions and what to send instead

how-many-good = How many of { $plates } were good?
one-left = Drill { $drill } has { $plates } plates. { $left ->
    [1] Was one
   *[other] Were { $left }
 } left unbuilt? `yes`, or the count again, like `{ $again }`.
under-a-third = { $clock } is under a third of standard time. Is it right? `yes`, or the time again.
same-again = Same as your { $at } run. A second run? `again`. Otherwise do nothing.
nothing-to-answer = No question is open with you now. If it was about a run, send the run again, like `3:02 8/8`.
no-drill-yet = No drill has been posted here yet. Name one, like `6 3:02 8/8` or `!spec 6`; `!drills` lists them.
no-such-drill = There is no drill { $label } here. `!drills` lists them.
unknown-word = I do not know that word. Near it: { $near }. `!words` lists them all.
unknown-word-no-hint = I do not know that word. `!words` lists the ones I know.
chef-only = That word is the chef's.
chef-only-post = The chef sets drills. Send yours as an idea?
which-mate = I cannot tell who { $name } is here. Mention them, or write a name that only one person has.
mate-not-joined = { $name } has not joined yet. They can say `!join`; then send it again.
which-kitchen = You are in { $count } kitchens. Which one? { $list }

## A mate's result

waiting-for-mate = Waiting for { $name } to say yes.
kept-for-mate = Kept under your name, { $name }.
not-kept = Not kept.

## What to send instead

edit-moves-run = An edit cannot move a run to another drill or another person. Delete the message and send the run again.
edit-unreadable = I could not read that edit, so your run stands as it was. Write it like `3:02 8/8`, or delete the message to take the run off.
too-many-plates = Drill { $drill } has { $plates } plates. If you rebuilt { $over ->
    [1] one
   *[other] { $over }
 }: `{ $clock } { $good }/{ $plates } rebuilt { $over }`.
far-too-many-plates = Drill { $drill } has { $plates } plates; send how many of { $plates } were good, like `{ $clock } { $plates }/{ $plates }`.
count-does-not-add-up = Good, redo and left have to make { $plates } plates together; send the count again, like `3:20 { $plates }/{ $plates }`.
more-mended-than-good = Rebuilt and fixed plates are among the good ones, and { $mended } is more than { $good }; send the line again.
plates-out-of-range = A drill has 1 to { $most } plates; write it like `plates 8`.
rows-out-of-reach = One row, or at most { $most } so that nobody leans over food; write it like `plates 8 rows 2`.
more-rows-than-plates = { $rows } rows need at least { $rows } plates; write it like `plates 8 rows 2`.
waves-do-not-fit = A wave has at least 2 plates and fewer than the { $plates } of the drill; write it like `working waves 4`.
draft-name = Give the drill a name of at most { $most } characters on the first line, like `!draft Slipway`.
no-steps = A drill needs steps; write them like `1. 7 courgette, shingle, at 10-4`.
no-plates = How many plates? Add a line like `plates 8 rows 2`.
steps-out-of-order = I read step { $read } where step { $wanted } comes next; number the steps 1, 2, 3.
too-many-steps = At most { $most } steps; split the plate into two drills.
unreadable-line = I could not read “{ $line }”, or it is there twice; steps look like `2. 1 tea jus, sauce, at 7`, other lines begin with plates, rows, accept, plate, mise, start, stop or working.
not-a-number = Write one whole number after the word, like `!plates 14`.
unreadable-step = I could not read “{ $line }” as a step; write it like `2 triangle, lean, at 11`.
pieces-out-of-range = In “{ $line }” the count has to be 1 to { $most }, like `2 triangle, lean`.
unknown-technique = I do not know the technique “{ $word }”. Near it: { $near }.
unknown-technique-no-hint = I do not know the technique “{ $word }”. I know { $near }.
unknown-class = “{ $word }” is no class of stand-in; take one of { $classes }.
unreadable-detail = I could not read “{ $detail }”; after a semicolon comes class, life, label or price, like `; life 90s ; label wheat`.
clock-needed = I have { $good } of { $plates }; I need the clock, like `3:02 { $good }/{ $plates }`.
clock-missing = I need the clock too, like `3:02 8/8`.
count-needed = I have { $clock }; I need how many were good, like `{ $clock } 8/8`.
line-unreadable = I could not read “{ $line }”. Send the clock and the good plates, like `3:02 8/8`.
too-many-lines = That is { $lines } lines; send at most { $most } in one message.
one-run-a-line = One run a line, please: one clock and one count, like `3:02 8/8`.
said-twice = “{ $word }” is there twice; send the line again with it once.
how-many = How many? Write the number after the word, like `{ $word } 1`.
at-unreadable = I could not read { $typed } as a time of day; write it like `at 02:10`.
clock-or-decimal = Is that { $minutes } min { $seconds } s or { $decimal } minutes? Send `{ $clock }` or `{ $converted }`.
clock-in-decimals = { $decimal } minutes would be { $converted }. Send `{ $converted }`, or the clock as it stood.
clock-unreadable = I could not read { $typed } as a clock; write it like `8:05`.
clock-past-59 = `{ $typed }` cannot be a clock: minutes and seconds go from 00 to 59. Send it again, like `8:05`.
clock-over-a-day = { $typed } is more than a day; write the run's clock like `8:05`.
