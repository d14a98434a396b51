## Words

words-cook = Everybody: the clock and the good plates, like `3:02 8/8`; { $words }.
words-chef = Chef: { $words }.
words-how = In the room put `!` before a word; in our private room it stands bare. `!words trend` explains one.
help-join = `join`: count me in; says what is kept.
help-leave = `leave`: count me out; nothing new is kept.
help-scrap = `scrap`: take my last run off.
help-undo = `undo`: put it back.
help-best = `best` or `best 6`: my bests, privately.
help-why = `why`: the whole sum of my last run, privately.
help-spec = `spec` or `spec 6`: the drill card.
help-drills = `drills`: every drill of this kitchen.
help-board = `board`, or one of `own`, `fast`, `steady`, `clean`, `house`, `quarter`, `group`, like `board fast`: the first places; in private your own too.
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
