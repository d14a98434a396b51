## Before and after a run

help-declare = `declare` before a run says that it counts, good or bad: it takes one of my five runs of the week from now on. Send the result as ever.
help-clock = `clock` starts a run timed by the chat, until `stop`. Marked chat-timed; no best and no place by it. Your own timer is better.
help-stop = `stop` ends a run begun with `clock`, and asks how many were good.
declared = Declared: your next run on { $drill } counts, whatever becomes of it.
declared-already = You have declared a run already; send its result, like `3:02 8/8` or `2:10 stopped 5`.
declare-when-joined = Declaring is for people who are counted in: `!join` first.
declare-no-board = Drill { $drill } has no open board this week, so there is nothing to declare for. Send the run as ever.
chat-timed = Chat-timed: no best and no place by it.
clock-not-started = No clock of yours is running. `!clock` starts one; or send the time on your own timer, like `3:02 8/8`.
