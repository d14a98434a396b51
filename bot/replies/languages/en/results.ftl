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
