## Posting

scheduled = Set. { $post }
schedule-line = { $when } ({ $zone }): { $what }. Next: { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } { $month }
week-of = the week of { $day }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
drill-named = drill { $label }, { $name }
the-newest = the drill published last
held = held
schedule-help = `!post move 1 tue 14:30` moves one, `!post 1 off` cancels it, `!skip 1` leaves out the next, `!hold 1` all until it is set again.
no-schedule = No weekly post is set yet. Set one like `!post 6 mon 15:00`.
which-schedule = { $most ->
    [1] There is one weekly post
   *[other] There are { $most } weekly posts
 }. Name it by its number in `!post`, like `!skip 1`.
post-what = Which drill? Name one, like `!post 6 mon 15:00`; `!drills` lists them.
post-when = Write a weekday and a time, like `!post mon 15:00`, or `!post now`.
cancelled = Cancelled: { $when }. Nothing is posted then any more.
skipping = { $day } is left out. The next post is { $after }.
holding = Held: { $when } posts nothing until you set it again, like `{ $again }`.
already-posted = Drill { $drill } was posted this week already; it can be posted again from Monday.
post-missed = Drill { $drill } was due more than 12 hours ago, while I was away, and was not posted. `!post now { $drill }` posts it.
nothing-published = A post was due, but no drill is published. `!drills` lists the course; `!post 6 mon 15:00` names one.

## Settings of the kitchen

zone-set = Times are read and shown in { $zone }.
unknown-zone = I do not know that time zone. { $near ->
    [none] Write it like `!zone Europe/London`.
   *[other] Near it: { $near }.
 }
day-turn-set = The kitchen day turns at { $at }.
which-time = Write a time, like `!dayturn 05:00`.
replies-full = I answer each run with one line.
replies-short = I answer each run with the memo pad alone.
which-replies = Write `!replies full` or `!replies short`.
quiet-hours = Quiet hours: { $hours }. Posts and reminders wait until they end; answers do not.
quiet-off = No quiet hours: posts and reminders come at any time.
quiet-how = Write it like `!quiet 22:00-09:00`, or `!quiet off`.
help-quiet = `quiet 22:00-09:00`: hours in which posts and reminders wait; `quiet off` for none.

## The break of a split shift

rest-set = Your rest: { $hours }. I tell you nothing then that you did not ask for. Legal breaks and daily rest come first, and no drill belongs in them.
rest-off = No rest of yours is kept any more.
rest-none = You have told me no rest. `rest 15:00-17:00` sets it.
rest-how = Write it like `rest 15:00-17:00`, or `rest off`.
resting-then = { $people ->
    [1] One person has
   *[other] { $people } people have
 } their rest at that time; no drill belongs in it.
help-rest = `rest 15:00-17:00`: the break of my split shift, in which I am told nothing unasked; `rest off` ends it.

## Weekdays

weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday
