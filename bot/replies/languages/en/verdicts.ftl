## Judging in the room and from photos

help-judge = In private: the runs that wait for a judge, one photo at a time without a name; `judge` again shows the next.
help-agree = A judge answers a run with `agree`, or with `9 good` where fewer passed. Two judges who differ: the lower count stands until a third.
help-check = `check` shows judges the same 12 photos and how far they agree; answer with `check` and twelve signs. The chef begins one with `check start`.
judged = { $name }: { $good } of { $attempted } good by the judges. { $line } (corrected)
judge-none = No run waits for you.
judge-this = { $waiting ->
    [1] 1 run waits.
   *[other] { $waiting } runs wait. This one:
 } { $drill }, { $clock }, sent as { $good } of { $attempted }.
judge-photo = Photo: { $photo }
judge-answers = Answer `agree`, or how many passed, like `{ $good } good`. Open until { $until }. `judge` shows the next.
judge-waiting = { $runs ->
    [1] 1 run waits
   *[other] { $runs } runs wait
 } for a judge. `judge` shows { $runs ->
    [1] it
   *[other] them
 }.
judges-only = That word is for judges. The chef says who judges: `!role @bastian judge`.
verdict-kept = Kept: { $good } of { $attempted } stands.
verdict-how = Answer the run's message with `agree`, or with how many passed, like `9 good`.
verdict-own = Nobody judges their own run, nor their partner's. Ask somebody else who was not in it.
verdict-closed = A run can be judged for 48 hours; this one stands as it is.
verdict-stopped = A stopped run is its cook's alone; there is nothing to judge.
verdict-too-many = That run has { $attempted } plates; send how many of them passed, like `{ $attempted } good`.
verdict-several = That message holds several runs. Raise a hand on it to witness them all; a count needs a run in a message of its own.
verdict-gone = That run has been taken off meanwhile. `judge` shows the next.
hand-same-name = You and the cook of that run go by the same name here, so I cannot take you for somebody else. Ask another to judge it, or change your display name.
check-started = The check of judges is open, with the 12 newest photos. Every judge says `check` here in private, you too.
check-too-few = A check needs { $of } photos of the last month; there are { $photos }.
check-none = No check of judges is open. The chef begins one with `check start`.
check-how = Would each plate have gone out? Answer in one line of twelve signs, + for yes and - for no: `check + + - + + + - + + + + +`.
check-unreadable = Answer with twelve signs, + for a plate that goes out and - for one that does not: `check + + - + + + - + + + + +`.
check-other-number = I read { $signs ->
    [1] 1 sign
   *[other] { $signs } signs
 }; there are { $of } photos. Send the line again.
check-alone = Kept. No other judge has answered yet; `check` shows later how far you agree.
check-pair = { $one } and { $other }: { $agreed } of { $photos } alike ({ $percent } %).
check-kappa = Kappa { $kappa }.
check-no-kappa = Kappa undefined: both said the same of every photo.
own-count = In { $runs } judged runs you sent { $sent } plates as good; the judges found { $found } of them good.
