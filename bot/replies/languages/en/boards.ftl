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
