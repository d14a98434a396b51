## The quarter

quarter-open = Quarter { $quarter } of { $year } so far, levelled pace over all its drills
quarter-closed = Quarter { $quarter } of { $year }, closed: levelled pace over all its drills
quarter-board = { $rows }
quarter-row = { $place } { $name } { $pace }
quarter-shared = The same place: too close to call.
quarter-too-close = Too close to call: nobody is clearly ahead.
quarter-divided = Some share no cook and no drill with the others: no common ground yet, so no number across them.
quarter-few = No places yet. They need three cooks whose drills are alike and whose runs somebody watched.
quarter-yours = Yours: place { $place }, { $pace } s a levelled touch, from { $runs } runs.
quarter-no-place = Yours: { $pace } s a levelled touch. No place: { $why }.
quarter-why-ground = your drills and the others' have no common ground yet
quarter-why-work = less than half of your work is like the others'
quarter-why-judged = most of your runs were judged by yourself
band = about { $low } to { $high }
standard-stands = The computed standard stands. A pace across drills needs { $runs } counted runs by { $cooks } cooks, { $linked } of whom also ran another drill. Missing: { $missing }.
missing-runs = { $runs ->
    [1] 1 more run
   *[other] { $runs } more runs
 }
missing-cooks = more cooks
missing-links = cooks who also run another drill
missing-fit = nothing, it comes within a minute

## Sister kitchens

group-head = { $group }, quarter { $quarter } of { $year } so far
site-line = { $name }: { $told }
site-met = { $percent } % of cooks within their own line in the last two weeks
site-few = too few cooks lately to hold against their own lines
site-clean = { $percent } % of plates right first time
site-unwitnessed = no witnessed run yet
site-same = { $drill }, { $plates } plates, laid out the same: { $times }.
site-same-close = { $drill }, { $plates } plates, laid out the same: { $times }; too close to call.
group-apart = { $one } and { $other } share no cook and no drill: no common ground yet, so no number across them. The same drill run in both gives it.
group-one-site = { $group }: only one of its kitchens has runs that count this quarter, or none.
no-group = This kitchen is in no group. Whoever runs me lists sister kitchens in the settings.
