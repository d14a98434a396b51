## Taking off and putting back

scrapped = Your { $at } run is off. `undo` puts it back.
undone = Your { $at } run is back.
nothing-to-scrap = You have no run to take off.
nothing-to-undo = You have no run to put back.

## The chef puts a run right

corrected-by = { $chef } has put your { $at } run right. { $line } If that is not so, talk to { $chef }; nothing else of yours was changed.
correct-own = A run of your own you put right by editing its message.
correct-which = Whose run? Reply to its message with `!correct 3:20 7/8`, or write `!correct @noor 3:20 7/8` for the last one.
correct-how = Write it like `!correct @noor 3:20 7/8`: the clock and the good plates as they were.
help-correct = `correct @noor 3:20 7/8`, or as a reply to the run: put somebody's run right; they are told.
