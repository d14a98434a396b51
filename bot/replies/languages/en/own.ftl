## Bests

first-mark = First mark for { $name } on { $drill }: { $time }.
new-best = New best for { $name } on { $drill }: { $time }, by { $by } s.
best-again = Corrected: { $name }'s best on { $drill } is { $time }.
best-gone = Corrected: { $name } has no witnessed best on { $drill } now.
best-luck = New best by { $by } s. Your runs usually differ by about { $noise } s: two more near it will tell.
best-line = { $drill }: { $time }, { $day }, { $accepted } of { $plates }.
best-unwitnessed = { $drill }: first mark { $time }, { $day }. It becomes a best when somebody who watched raises a hand.
no-best = No run with a time yet. Send one like `3:02 8/8`.

## Why

why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } of { $attempted } good.
why-charge = One redo: plate change { $change } s + (one plate alone { $alone } s x your speed { $clock_s }/{ $standard }) = { $one } s.
why-net = { $redo } redo x { $attempted }/{ $accepted } for the chance of failing again x { $one } s = { $charge } s. Net { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / { $touches } touches = { $pace } s a touch.
why-levelled = Standard { $standard } s / 1.5 = { $levelled_touches } levelled touches; { $net } / { $levelled_touches } = { $levelled } levelled.
why-fitted = Computed standard { $standard }; the kitchen's runs say x { $factor } ({ $low } to { $high }), from { $runs } runs by { $cooks } cooks.
why-unfitted = The computed standard { $standard } stands. A fitted one still needs: { $missing }.
why-not-compared = The computed standard { $standard } stands: under 1:00, with calls or by two it is not held against other drills.
why-no-time = Fewer than { $gate } of { $attempted } good: a count, no time.
no-why = There is no run of yours to explain yet.
