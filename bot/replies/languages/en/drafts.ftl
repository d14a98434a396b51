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
new-wording = The work is the same: drill { $label } is told so from now on, its bests and boards stay.
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

## The list of drills

renamed = Drill { $label } is called { $name } from now on. Its number, bests and boards stay.
rename-how = Write it like `!rename 6 Rope coil`, with a name of at most { $most } characters.
help-rename = `rename 6 Rope coil`: another name for a drill; everything else stays.
retired = Drill { $label }, { $name }, is off the list. Its history and bests stay; `!retire { $label } back` brings it back.
brought-back = Drill { $label }, { $name }, is on the list again.
not-retired = No drill { $label } is off the list.
drill-retired = Drill { $label } is off the list. `!retire { $label } back` brings it back.
retire-scheduled = Drill { $label } is posted every week. `!post` lists the posts; call that one off first, like `!post 1 off`.
retire-live = Drill { $label } is open now. `!close { $label }` closes its week first.
retire-how = Write it like `!retire 6`, or `!retire 6 back`.
help-retire = `retire 6`: take a drill off the list, its history stays; `retire 6 back` puts it back.
