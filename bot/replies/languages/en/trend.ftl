## The trend of first runs

help-trend = `trend` or `trend 6`: my first runs of a day, faster or luck, and the next one, privately.
no-trend = No run yet. Your trend begins with your first one.
trend-few = { $count } of { $needed } first runs. Too early to call.
trend-runs = { $drill }, first run of the day: { $runs }.
trend-median = Median { $median }.
trend-luck = { $drill }, first run of the day, last { $count }: median { $median }, no change that can be told from luck.
trend-real = { $drill }, first run of the day, last { $count }: { $first } to { $last }, about { $percent } % a run, two looks agree: real.
trend-redo = Redo { $was } % to { $now } %{ $verdict ->
    [faster-fewer] : faster and cleaner
    [faster-same] : faster, as clean as before
    [faster-more] : faster, more redos: hold the speed
    [slower-fewer] : slower but cleaner: good, keep it
    [slower-same] : slower, as clean as before
    [slower-more] : slower, more redos: try a lighter week
   *[none] {""}
}.
trend-all = The runs: { $runs }.
trend-next = Next run: about { $low } to { $high }, four times in five.
trend-short = * a short run, scaled to the full set-up by its touches.
trend-carried = ({ $letter }) run on set-up { $letter }, carried over by levelled pace: standard { $there } there, { $here } here.
trend-slowest = Slowest against standard: the { $technique }.
level-question =
    { $drill }: your last { $count } first runs stay within 3 %, 90 % of the plates or more good. Would one of these help?
    1. Change the working order: `order` compares them.
    2. Train the costliest step alone.
    3. Fewer plates with a tougher rule.
    4. A light week.
    5. A harder step.
