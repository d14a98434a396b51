## What fits in a slot

help-slot = `slot 25` or `slot 6 25`: how many honest runs fit in 25 minutes, judged and reset; in private at your own median.
slot-fits = { $runs ->
    [1] One honest run
   *[other] { $many } honest runs
 } of { $drill } in { $slot }.
slot-none = No honest run of { $drill } fits in { $slot }; the shortest slot that holds one is { $shortest }.
slot-day-limit = More would fit; for the hands it is { $runs } a day at most.
slot-each = Each { $each }: run { $run } ({ $by ->
    [own] your median of { $count } runs
   *[standard] standard time
 }), judging { $judging }, reset { $reset }.
slot-sum = Laying out { $laying }, { $runs } x { $each }, clearing down { $clearing }: { $taken }.
slot-how = Write the minutes, like `slot 25`, or `slot 6 25` for drill 6.

## Call sheets

help-calls = `calls 2` or `calls 6 2`: a sheet of level 1 to 3 for a mate to read aloud, sent in private; `calls 2 sheet 417` gives that one again.
calls-head = { $drill }, calls level { $level }, sheet { $number }: { $plates } plates, { $touches } touches, standard { $standard }.
calls-sum = { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 } { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s hands off
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s left off
 } = { $total } s.
calls-read = For the mate who reads it aloud, the clock running; hold a call while a knife, flame or hot pan is in hand.
call-how-long = { $at } “How long?”
call-send-four = { $at } “Send four now.”
call-swap = { $at } “Plate { $plate } without { $component }.”
call-one-more = { $at } “One more plate.”
call-wait = { $at } “Wait, hands off { $wait } seconds.”
calls-send = Write down each answer to “How long?” and compare at the stop. Send the run as `{ $example }`.
calls-which-level = Which level? `calls 1`, `calls 2` or `calls 3`, or `calls 6 2` for drill 6.
calls-level-too-high = This run is too short for level { $level }: { $calls } calls at least { $gap } s apart, none at either end or over heat. `calls { $highest }` fits.
calls-too-short = This run is too short for calls; lay out more plates first.
