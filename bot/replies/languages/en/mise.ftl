## Mise

mise-head = Mise for { $name } (drill { $label }), { $runs ->
    [1] one run
   *[other] { $runs } runs
 } of { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $spare } % spare in it. China: { $total }{ $runs ->
    [1] {""}
   *[other] , washed between runs
 }.
mise-need = - { $component }: { $total } ({ $plate } a plate){ $where ->
    [nowhere] {""}
    [measured] , and { $stays } that stay in the { $tool }
   *[unmeasured] , and what the { $tool } holds
 }
mise-tools = Tools: { $tools }.
mise-back = Comes back for another run: { $list }.
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }({ $runs } runs at most)
 }
mise-lives = Keeps on the plate: { $list }.
mise-life = { $component } { $life }
mise-same-day = Cold until the run, binned the same day: { $list }.
mise-how = Say for how many runs, from 1 to { $most }, and which drill, like `mise 2` or `mise 2 11B`.
help-mise = `mise` or `mise 2 11B`: everything for one run, or for two of drill 11B.

## Working orders

order-head = { $name } (drill { $label }), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }. Time, and how long each component waits:
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] : { $waits }
 }
order-component = step by step
order-waves = waves of { $wave }
order-plate = plate by plate
order-own = { $way } (as set)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (keeps { $life })
order-best-life = Largest that keeps every life: { $way }.
order-none-keeps = None keeps every life. Fewer plates, or a longer life.
order-fastest = Fastest: { $way }. With a life on a step (`; life 90s`) I pick the largest that keeps it.
help-order = `order` or `order 6`: working orders compared, their times and how long each component waits.

## Costs (the chef's, in private)

cost-head = { $name } (drill { $label }), what a run of { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 } loses of its stand-ins:
cost-line = - { $component }: { $parts }; { $total } x { $price } = { $cost }
cost-unpriced = - { $component }: { $parts }; no price yet, like `price { $component } 0.02` for one{ $unit ->
    [piece] {""}
   *[other] { " " }{ $unit }
 }
cost-used-up = { $amount } used up
cost-again = { $amount } for plates built again
cost-thrown = { $amount } thrown at the day's end
cost-week = This week: { $runs } runs, { $redo } redone, { $rebuilt } rebuilt.
cost-run = A run: { $run }. The stand-ins of one plate built again: { $again }.
cost-pass = { $redo ->
    [1] 1 redo on the pass would be 1 plate of { $dish }.
   *[other] { $redo } redos on the pass would be { $redo } plates of { $dish }: { $cost }.
 }
cost-no-dish = `price dish 14.50` says what a guest pays for the real dish.
price-currency = Prices are in { $currency }. Those given before keep their figures.
price-currency-first = Say the kitchen's currency first, by its code, like `price EUR`.
price-which-currency = I do not know the currency { $code }. Send its three-letter code, like `price EUR`.
price-too-fine = { $currency } has { $digits ->
    [0] no smaller coin
   *[other] { $digits } figures behind the point
 }. Write it like `price dish { $example }`.
price-no-component = This drill has no { $component }; it has { $components }.
price-how = Write it like `price courgette 0.04` for one piece, ml or g, `price dish 14.50`, or `price EUR`.
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR`; `price` or `price 6`: what a run costs, told privately.
