## Steps that do not make the clock

steps-none-here = Steps are kept of a row worked one step at a time and without calls, which drill { $drill } is not. `yes` keeps the run without them.
steps-other-number = Drill { $drill } has { $steps ->
    [1] 1 step
   *[other] { $steps } steps
 } and I read { $read } of their times. Send them again, like `steps 0:41 0:33`, or `yes` to keep the run without them.
steps-off-clock = The steps make { $made } and the clock says { $clock }. Which is right? `{ $clock }` keeps the run without its steps, `{ $made }` takes that for the clock; or send the steps again.

## Hold or raise, and by how much

help-raise = `raise`: whether the drill is ready for a harder version, and what each way up adds; `raise 2` begins a draft of the second.
raise-nobody = Hold { $drill }: nobody has a counted run on it in the last 28 days.
raise-hold = Hold { $drill } as it is: { $ready } of this month's { $cooks ->
    [1] 1 cook
   *[other] { $cooks } cooks
 } { $ready ->
    [1] keeps
   *[other] keep
 } 11 in 12 good at { $target }. It takes half of them, two at least.
raise-ready = { $drill } is ready for a harder version: { $ready } of this month's { $cooks } cooks keep 11 in 12 good at { $target }.
raise-said-ready = Ready by their own word: { $names }.
raise-fitting = 5 to 10 % more work, the size to take: { $ways }.
raise-others = Less or more than that: { $ways }.
raise-refused = Refused, over 20 % at once: { $ways }.
raise-how = `raise { $label } { $nth }` begins a draft.
raise-item = `{ $nth }` { $way } { $percent } %
raise-too-much = { $way } is { $percent } % more work, and over 20 % at once is refused. Take a smaller one; `raise` lists them.
which-raise = Write `raise`, or a way from 1 to { $most }, like `raise 2` or `raise 6 2`.
raise-unreadable = Write `raise`, or one of its ways, like `raise 2` or `raise 6 2`.
way-plates = +{ $more } { $more ->
    [1] plate
   *[other] plates
 }
way-pieces = +{ $more } { $component }{ $technique ->
    [same] {""}
   *[other] {" "}({ $technique })
 }
way-waves = waves of { $of }

## The time to meet

help-target = `target`: the time to meet; `target house`, `target brisk`, `target opening` or `target 2:40` sets it.
target-is = { $drill }: the target is { $target }. Opening { $opening }, house { $house }, brisk { $brisk }.
target-set = The target of { $drill } is { $target }. The card says so, and bests stay.
target-out-of-range = { $target } is under a third of standard time, or over three times it. House time is { $house }; send one nearer to it, like `target { $house }`.
which-target = Write `target house`, `target brisk`, `target opening`, or a time like `target 2:40`.
card-target = Target { $target }.

## Ready, by one's own word

help-ready = `ready` or `ready 6`: I am ready for a harder version; the chef sees my name, and I see where my runs stand. `ready off` takes it back.
ready-kept = Kept: you are ready for a harder { $drill }. The chef sees that by your name; `ready off` takes it back.
ready-off = Taken back for { $drill }.
ready-when-joined = Say `join` first, then `ready` again.
which-ready = Write `ready`, `ready 6` or `ready off`.
standing-none = A harder version asks for three counted runs with a time; yours are still to come.
standing = Your last { $runs ->
    [1] counted run
   *[other] { $runs } counted runs
 }: { $accepted } of { $attempted } good, median { $median } for a target of { $target }, { $days ->
    [1] 1 day
   *[other] { $days } days
 } since the first.
standing-enough = That is what a harder version asks.
standing-lacks = A harder version still asks for { $lacks }.
lack-runs = three counted runs
lack-stopped = three runs without a stop
lack-good = eleven in twelve good over the three
lack-each = ten in twelve good in each
lack-redo = no more redos than before
lack-target = a median at the target
lack-days = a week on it

## Taking it easier

step-back-redo = Two of your last three runs on { $drill } had under three quarters good. For the next ones let the clock be and aim for { $gate } of { $plates }.
step-back-stopped = Two of your last three runs on { $drill } were stopped. { $left ->
    [0] Take the next one at an easy pace and let the clock be.
   *[other] Build { $few } of the { $plates } next, at an easy pace, and send the others as `left { $left }`.
 }
card-light = A light week: short, tidy, no board. { $left ->
    [0] Take your time
   *[other] { $few } of the { $plates } plates are enough (`left { $left }`)
 }.

## What to practise next

help-next = `next`: one drill to practise and why, from my steps and redo reasons, privately.
next-course = { $drill }, { $plates } plates. The course comes to it: week { $week } of { $of } on this drill.
next-drill = { $drill }, { $plates } plates.
next-lost = The { $technique } cost you { $lost } s or more over standard in each of your last 3 runs with steps.
next-redo = `{ $reason }` came with { $times } of your last { $runs } runs, and is of the { $technique }.
next-nothing-near = No drill here with the { $technique } is near your level: { $low } to { $high } times { $level } of standard time.
next-paces = The { $technique } in your last steps on { $drill }: { $pace } s a touch; your usual { $usual }, standard { $standard }{ $quarter ->
    [none] .
   *[other] , the quickest quarter of the house { $quarter }.
 }
next-nothing-lost = By your steps no technique cost over { $most } s more than standard three times running, and no redo reason came twice: nothing to single out.
next-needs = I cannot say yet. It takes steps with three runs (so far { $runs } of { $of }), like `3:02 8/8 steps 1:35 0:43 0:44`, or a redo reason that comes twice, like `fell`.
