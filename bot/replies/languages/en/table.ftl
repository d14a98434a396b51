## Tables

table-head = { $name } (drill { $label }), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 } of { $wide } cm, on a table of { $length } x { $depth } cm:
table-own = { $name } (drill { $label }): { $pattern } takes a table of { $length } x { $depth } cm.
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern }: { $length } x { $depth } cm, { $verdict }.
table-fits = fits
table-short = { $cm } cm short
table-too-deep = { $cm } cm too deep
table-out-of-reach = refused, the third row is out of reach from one side
table-fewer = What fits: { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $pattern }, { $length } x { $depth } cm (chef: `plates { $plates }`, `rows { $rows }`; another set-up).
table-none-fits = Not one plate fits.
table-one-row = One row: { $numbers }. Walk there on one step and back on the next, so that nobody walks empty.
table-two-rows = Far row: { $far }; near row: { $near }. Walked in that order of numbers, there and back.
table-walk = { $reach ->
    [near] Two rows: walk both sides, or the shortest cook reaches the far mark ({ $depth } cm) without leaning over food, sleeves secured.
   *[far] Two rows: walk both sides; { $depth } cm is too far to reach from one.
 }
table-plate-unknown = I cannot tell how wide the plate is ({ $plate }). The drill says it like `plate flat 27 cm china`.
table-how = Write the table's length and depth in cm, like `table 180x70`, or `table 11B` for what a drill takes.
help-table = `table 180x70`: patterns that fit a table of so many cm; `table` or `table 11B`: what the drill's own pattern takes.
