# Platepace in English. One sentence a key; places are filled by name. Numbers first, no idiom, no exclamation marks.
# Times, paces and names arrive as finished text; counts arrive as numbers and take the plural of the language.

## One result

heard = Heard. { $clock }, { $accepted } of { $plates }{ $rebuilt ->
    [0] {""}
   *[other] , { $rebuilt } rebuilt
 }. { $pace } s a touch, { $levelled } levelled.
net = Net { $net } ({ $redo ->
    [1] one redo cost
   *[other] { $redo } redos cost
 } { $charge }). { $pace } s a touch.
no-time = { $accepted ->
    [1] One clean plate
    [2] Two clean plates
    [3] Three clean plates
    [4] Four clean plates
    [5] Five clean plates
    [6] Six clean plates
    [7] Seven clean plates
    [8] Eight clean plates
    [9] Nine clean plates
    [10] Ten clean plates
    [11] Eleven clean plates
    [12] Twelve clean plates
   *[other] { $accepted } clean plates
 } kept. No time this run; try for { $gate ->
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
    [10] ten
    [11] eleven
    [12] twelve
   *[other] { $gate }
 }.
none-accepted = Kept, without a time: no plate passed this run. Try for { $gate ->
    [1] one good plate
   *[other] { $gate } good plates
 }.
short = Short run, { $accepted } of { $attempted } built. { $pace } s a touch. Kept for your trend.
stopped = Stopped after { $attempted ->
    [1] 1 plate
   *[other] { $attempted } plates
 }. Kept for you alone, on no board.
rebuilt-hint = If it was rebuilt inside the clock: `{ $clock } { $plates }/{ $plates } rebuilt { $redo }`.
corrected = { $line } (corrected)
which-line = Line { $number }: { $problem }

## Remarks on a result

settling-in = Settling in, run { $nth } of { $of }: kept, on no board yet.
day-limit = That is { $today ->
    [3] three
    [4] four
    [5] five
   *[other] { $today }
 } today. Kept, not counted; rest the hands.
board-closed = Kept; that board is closed.
last-week = { $day } night's kitchen day, last week's board (open until { $until }). Counted.

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
no-pairs-yet = Pair runs are not kept here yet. Send it without `with`, as one cook's run on a drill laid out for one.
which-kitchen = You are in { $count } kitchens. Which one? { $list }

## A mate's result

waiting-for-mate = Waiting for { $name } to say yes.
kept-for-mate = Kept under your name, { $name }.
not-kept = Not kept.

## Being counted in

first-message = I am Platepace: I post one plating drill a week and take your times.
    I keep results only of people who say `!join`: the clock, the good plates and who raised a hand. Ordinary talk is not kept by me; the chat itself keeps what you write.
    Results are for practice, never for pay, rota, promotion or discipline. Employment and data law are local, ask.
    Chef: `!drills` lists twelve drills, `!post 1 mon 15:00` starts a week, `!zone { $zone }` and `!dayturn 05:00` set the clock. `!words` lists the rest.
join-first = Held, not kept yet. I keep your clock, your good plates and who watched, to show you your own pace and the week's board; never for pay, rota, promotion or discipline. The chat itself keeps what you write. `yes` counts you in; unanswered it is erased in 48 hours.
joined = Counted in, { $name }. For practice, never for pay, rota, promotion or discipline; the chat itself keeps what you write.
counted-in = Counted in, { $name }.
left = Counted out, { $name }. I keep nothing new of yours. `!join` counts you in again.

## Taking off and putting back

scrapped = Your { $at } run is off. `undo` puts it back.
undone = Your { $at } run is back.
nothing-to-scrap = You have no run to take off.
nothing-to-undo = You have no run to put back.

## Bests

first-mark = First mark for { $name } on { $drill }: { $time }.
new-best = New best for { $name } on { $drill }: { $time }, by { $by } s.
best-again = Corrected: { $name }'s best on { $drill } is { $time }.
best-gone = Corrected: { $name } has no witnessed best on { $drill } now.
best-luck = New best by { $by } s. Your runs usually differ by about { $noise } s: two more near it will tell.
best-line = { $drill }: { $time }, { $day }, { $accepted } of { $plates }.
best-unwitnessed = { $drill }: first mark { $time }, { $day }. It becomes a best when somebody who watched raises a hand.
no-best = No run with a time yet. Send one like `3:02 8/8`.

## Trend and why

trend-few = { $count } of { $needed } first runs. Too early to call.
trend-runs = { $drill }, first run of the day: { $runs }.
trend-median = Median { $median }.
trend-short = * a short run, scaled to the full set-up by its touches.
no-trend = No run yet. Your trend begins with your first one.
why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } of { $attempted } good.
why-charge = One redo: plate change { $change } s + one plate alone { $alone } s x your speed { $clock_s }/{ $standard } = { $one } s.
why-retry = { $redo } redo x { $attempted }/{ $accepted } for the chance of failing again x { $one } s = { $charge } s.
why-net = Net { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / { $touches } touches = { $pace } s a touch.
why-levelled = Standard { $standard } s / 1.5 = { $levelled_touches } levelled touches; { $net } / { $levelled_touches } = { $levelled } levelled.
why-no-time = Fewer than { $gate } of { $attempted } good: a count, no time.
no-why = There is no run of yours to explain yet.

## Boards

board-head = { $drill }, { $week }, closed
board-open = { $drill }, this week, open until { $until }
board-fast = Fast: { $rows }
board-steady = Steady: { $rows }
board-clean = Clean: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [1] 1 try
   *[other] { $tries } tries
 })
board-share = { $clean }/{ $attempted }
board-not-yet = No { $kind } board yet. It needs three cooks with runs that somebody watched and raised a hand on.
board-not-yet-any = No board yet. It needs three cooks with runs that somebody watched and raised a hand on.
board-yours = Yours on { $kind }: place { $place }, { $figures }.
which-board = Boards are `fast`, `steady` and `clean`, like `!board fast`.
no-live-drill = No drill is live here. The chef posts one with `!post`.
a-cook = a cook

## Closing

closed = { $drill }: the week is closed.
closed-house = Together: { $plates ->
    [1] 1 good plate
   *[other] { $plates } good plates
 }.
closed-no-board = No board; a board needs three cooks with witnessed runs. Every run counts for its own cook all the same.
board-correction = Correction to the closed board of { $drill }, { $week }. { $board }
nothing-to-close = That board is closed already.

## The drill card

card-head = { $name } (drill { $label }), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $rows ->
    [1] one row
   *[other] { $rows } rows
 }.
card-head-draft = { $name } (draft), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $rows ->
    [1] one row
   *[other] { $rows } rows
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , with { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , at { $at }
   *[words] , { $at }
 }
card-accept = Good when: { $accept }.
card-work = { $touches ->
    [1] 1 touch
   *[other] { $touches } touches
 } a plate, { $run } in the run. Standard { $standard }.
card-targets = Opening { $opening }, house { $house }, brisk { $brisk }.
card-redo = One redo costs about { $redo }. Under { $gate } good plates there is a count and no time; on the pass every plate must be good.
card-redo-one = On the pass every plate must be good.
card-send = Send the clock and the good plates, like `{ $example }`. A run counts for boards when somebody who watched raises a hand on it.
card-table = On { $plate }: a table of { $length } x { $depth } cm.
card-reaches = Both hands at once: { $reaches } reaches a plate.
card-working-component = One step along the whole row, then the next.
card-working-plate = One plate finished, then the next.
card-working-waves = In waves of { $wave }.
card-pressure = Calls level { $level }.
card-labels = No stand-in is free of allergens. By label: { $labels }.
card-label = { $component }, { $label }
card-caution = - { $caution }
card-take-care = Take care:
late = (late)

## Drafts

draft-known = This is drill { $label }.
draft-other-set-up = This is drill { $label } in another set-up; each set-up has bests and boards of its own.
draft-new = A new drill, with bests and boards of its own.
draft-child = Against drill { $label }: { $percent } % work.
draft-publish = `!publish` gives it its number; editing your message reads it again.
published = Published as drill { $label }, { $name }. `!post mon 15:00` posts it every week, `!post now` at once.
no-draft = There is no draft of yours. Start one with `!draft NAME` and its steps, or `!draft 6` to begin from drill 6.
no-such-step = Steps here go from 1 to { $most }. Write it like `!step 2 2 triangle, lean`.
nothing-changed = That leaves drill { $label } as it is.
new-spec = That changes the work by { $percent } %, so it is a new drill ({ $number }), not { $old }.
    `a` only written wrong, everybody did it the new way: runs stand, a correction is posted.
    `b` the new drill from now: this board closes as it is.
    `c` leave it until next week.
new-set-up = That changes the work by { $percent } %: still drill { $number }, but a new set-up with its own bests and boards.
    `b` the new set-up from now: this board closes as it is.
    `c` leave it until next week.
is-another-drill = Written like that it is drill { $label }. Answer `b` to change over now or `c` next week.
set-up-not-misspelt = Another number of plates or rows is a new set-up. Answer `b` from now or `c` next week.
spec-corrected = Correction to drill { $label }: it was written wrong. Runs stand. The steps are:
    { $steps }
left-for-next-week = Drill { $label } is kept for next week. Drill { $old } runs on.
drill-line = { $label } { $name }: { $plates } plates, { $touches } touches, standard { $standard }
drills-none = No drills yet.

## Posting

scheduled = Set. { $post }
schedule-line = { $when } ({ $zone }): { $what }. Next: { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } { $month }
week-of = the week of { $day }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
drill-named = drill { $label }, { $name }
the-newest = the drill published last
held = held
schedule-help = `!post move 1 tue 14:30` moves one, `!post 1 off` cancels it, `!skip 1` leaves out the next, `!hold 1` all until it is set again.
no-schedule = No weekly post is set yet. Set one like `!post 6 mon 15:00`.
which-schedule = { $most ->
    [1] There is one weekly post
   *[other] There are { $most } weekly posts
 }. Name it by its number in `!post`, like `!skip 1`.
post-what = Which drill? Name one, like `!post 6 mon 15:00`; `!drills` lists them.
post-when = Write a weekday and a time, like `!post mon 15:00`, or `!post now`.
cancelled = Cancelled: { $when }. Nothing is posted then any more.
skipping = { $day } is left out. The next post is { $after }.
holding = Held: { $when } posts nothing until you set it again, like `{ $again }`.
already-posted = Drill { $drill } was posted this week already; it can be posted again from Monday.
post-missed = Drill { $drill } was due more than 12 hours ago, while I was away, and was not posted. `!post now { $drill }` posts it.
nothing-published = A post was due, but no drill is published. `!drills` lists the course; `!post 6 mon 15:00` names one.

## Settings of the kitchen

zone-set = Times are read and shown in { $zone }.
unknown-zone = I do not know that time zone. { $near ->
    [none] Write it like `!zone Europe/London`.
   *[other] Near it: { $near }.
 }
day-turn-set = The kitchen day turns at { $at }.
which-time = Write a time, like `!dayturn 05:00`.
replies-full = I answer each run with one line.
replies-short = I answer each run with the memo pad alone.
which-replies = Write `!replies full` or `!replies short`.

## Weekdays

weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday

## Faults

my-fault = Something went wrong on my side with that line, and whoever runs me has been told. Please send it again later.
dead-event = Event { $event } failed three times ({ $problem }) and was set aside.
dead-message = A message to { $lane } was refused ({ $problem }) and was set aside.

## Words

words-cook = Everybody: the clock and the good plates, like `3:02 8/8`; { $words }.
words-chef = Chef: { $words }.
words-how = In the room put `!` before a word; in our private room it stands bare. `!words trend` explains one.
help-join = `join`: count me in; says what is kept.
help-leave = `leave`: count me out; nothing new is kept.
help-scrap = `scrap`: take my last run off.
help-undo = `undo`: put it back.
help-best = `best` or `best 6`: my bests, privately.
help-trend = `trend` or `trend 6`: my first run of each day and its median, privately.
help-why = `why`: the whole sum of my last run, privately.
help-spec = `spec` or `spec 6`: the drill card.
help-drills = `drills`: every drill of this kitchen.
help-board = `board`, `board fast`, `board steady`, `board clean`: the first places; in private your own too.
help-draft = `draft NAME`, then a line `plates 8 rows 2`, then steps like `1. 7 courgette, shingle, at 10-4`. `draft 6` begins from drill 6.
help-step = `step 2 2 triangle, lean`: change one step of the draft, or of the live drill.
help-plates = `plates 10`: another number of plates.
help-rows = `rows 2`: another number of rows.
help-publish = `publish`: give the draft its number so that it can be posted.
help-post = `post 6 mon 15:00`: post drill 6 every week; `post mon 15:00` the newest; `post now 6` at once; `post` lists.
help-skip = `skip`: leave out the next weekly post.
help-hold = `hold`: no weekly post until it is set again.
help-close = `close`: close the live board now.
help-zone = `zone Europe/London`: the kitchen's time zone.
help-dayturn = `dayturn 05:00`: when the kitchen day turns.
help-replies = `replies short`: the memo pad alone; `replies full`: one line a run.
help-words = `words`: all words; `words trend`: one of them.
which-step = Write it like `!step 2 2 triangle, lean`.
label-unread = label not read yet

## Cautions (the card lists those that fit; the local rules always close)

caution-mandoline = Mandoline: guard and cut-resistant glove, stop before the last third, cut before the clock, nobody new alone.
caution-heat = Warm bath 45 degrees at most, wide-based, away from the edge, changed each run; hot things: dry cloth, handle in, called "hot behind".
caution-floor = Beans, oil and water on the floor are slips: one lane, one direction; "stop" stops the clock.
caution-reuse = Keep it cold, bin puree the same day; nothing goes from a plate back into a bottle. White beans from a tin, never raw-soaked.
caution-cooked-starch = Cooked rice and noodles: chilled fast, 5 degrees or below, binned the same day.
caution-pieces-counted = Silicone, plastic and parchment: count them out and in.
caution-strain = Three runs a day. Numbness, tingling or pain: stop and see a qualified person.
caution-chemicals = Cleaning chemicals stay away from the table.
caution-breakage = Something breaks: stop, bin open food in reach, brush, never bare hands, account for every piece.
caution-hands = Wash hands before and after the phone; cuts under a blue plaster and a nitrile glove.
caution-allergens = Contact counts, not only eating; your own allergy is told to the chef face to face, never here.
caution-never-served = Practice food is never served, tasted or returned: label it "practice, not for eating" with the date.
caution-local-rules = Local food-safety, employment and safety rules, and your chef, come first.

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
