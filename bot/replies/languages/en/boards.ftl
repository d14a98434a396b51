## Boards

board-head = { $drill }, { $week }, closed
board-open = { $drill }, this week, open until { $until }
board-own = Against their own expected time: { $rows }
board-fast = Fast: { $rows }
board-steady = Steady: { $rows }
board-clean = Clean: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [1] 1 try
   *[other] { $tries } tries
 })
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % faster
board-as-expected = as expected
board-slower = { $percent } % slower
too-close = too close to call
too-close-row = { $row }, too close to call
board-not-yet = No { $kind } board yet. It needs three cooks with runs that somebody watched and raised a hand on.
board-not-yet-any = No board yet. It needs three cooks with runs that somebody watched and raised a hand on.
board-yours = Yours on { $kind }: place { $place }, { $figures }.
which-board = Boards are `own`, `fast`, `steady`, `clean`, `house`, `quarter` and `group`, like `!board fast`.
no-live-drill = No drill is live here. The chef posts one with `!post`.
a-cook = a cook
light-no-board = A light week: short, tidy, no board.

## The headline: against one's own

own-not-yet = No board against their own yet. It needs three cooks with watched runs and earlier ones to compare with.
expected-on-it = { $actual }; expected { $expected }, the middle of your { $runs ->
    [1] earlier run
   *[other] last { $runs } runs
 } on this drill.
expected-fitted = { $actual }; expected { $expected }, fitted from your earlier runs.
expected-held = { $actual }; expected { $expected }, which grows by 2 % a week at most.
expected-new = { $actual }; expected { $expected }: standard { $standard } x your usual { $usual }.
expected-new-drill = { $actual }; expected { $expected }: standard { $standard } x your usual { $usual } x { $drill } as the others found it.

## The house

board-house = House: { $percent } % of cooks within their own expected time, { $plates } clean plates.
board-house-plates = House: { $plates ->
    [1] 1 clean plate
   *[other] { $plates } clean plates
 }.

## Off boards and on

boards-are-off = You are off public boards from now on. Your runs and bests stay, and `board` here still tells you yours.
boards-are-on = You are on public boards again.
boards-on-or-off = Send `boards off` or `boards on`.
help-boards = `boards off` takes you off public boards, your history stays; `boards on` puts you back.

## Closing

closed = { $drill }: the week is closed.
closed-no-board = No board; a board needs three cooks with witnessed runs. Every run counts for its own cook all the same.
board-correction = Correction to the closed board of { $drill }, { $week }. { $board }
nothing-to-close = That board is closed already.
