## The trend of first runs

trend-few = { $count } of { $needed } first runs. Too early to call.
trend-runs = { $drill }, first run of the day: { $runs }.
trend-median = Median { $median }.
trend-short = * a short run, scaled to the full set-up by its touches.
no-trend = No run yet. Your trend begins with your first one.
