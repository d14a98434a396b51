## The drill card

card-head = { $name } (drill { $label }), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $rows ->
    [1] one row
   *[other] { $rows } rows
 }.
card-head-draft = { $name } (draft), { $plates ->
    [1] 1 plate
   *[other] { $plates } plates
 }, { $rows ->
    [1] one row
   *[other] { $rows } rows
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , with { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , at { $at }
   *[words] , { $at }
 }
card-accept = Good when: { $accept }.
card-work = { $touches ->
    [1] 1 touch
   *[other] { $touches } touches
 } a plate, { $run } in the run. Standard { $standard }.
card-targets = Opening { $opening }, house { $house }, brisk { $brisk }.
card-redo = One redo costs about { $redo }. Under { $gate } good plates there is a count and no time; on the pass every plate must be good.
card-redo-one = On the pass every plate must be good.
card-send = Send the clock and the good plates, like `{ $example }`. A run counts for boards when somebody who watched raises a hand on it.
card-table = On { $plate }: a table of { $length } x { $depth } cm.
card-reaches = Both hands at once: { $reaches } reaches a plate.
card-working-component = One step along the whole row, then the next.
card-working-plate = One plate finished, then the next.
card-working-waves = In waves of { $wave }.
card-pressure = Calls level { $level }.
card-labels = Read each label, “may contain” too: { $labels }.
card-label = { $component } ({ $label })
card-caution = - { $caution }
card-take-care = Take care:
late = (late)

## Cautions (the card lists those that fit; the local rules always close)

caution-mandoline = Mandoline: guard and cut-resistant glove, stop before the last third, cut before the clock, nobody new alone.
caution-heat = Warm bath 45 degrees at most, wide-based, away from the edge, changed each run; hot things: dry cloth, handle in, called "hot behind".
caution-floor = Slips on the floor: { $what }, water. One lane, one direction; "stop" stops the clock.
caution-cold = Kept cold, as long as the local food code allows; out when dropped or warm for long: { $what }.
caution-puree = Kept cold, binned the same day: { $what }. If of white beans, from a tin, never raw-soaked.
caution-cooked-starch = Cooked, chilled fast, 5 degrees or below, binned the same day: { $what }.
caution-bottle = Nothing goes from a plate back into a bottle.
caution-pieces-counted = Counted out and in: { $what }.
caution-strain = Three runs a day. Numbness, tingling or pain: stop and see a qualified person.
caution-chemicals = Cleaning chemicals stay away from the table.
caution-breakage = Something breaks: stop, bin open food in reach, brush, never bare hands, account for every piece.
caution-hands = Wash hands before and after the phone; cuts under a blue plaster and a nitrile glove.
caution-allergens = No stand-in is free of allergens. Contact counts, not only eating; your own allergy is told to the chef face to face, never here.
caution-never-served = Practice food is never served, tasted or returned: label it "practice, not for eating" with the date.
caution-local-rules = Local food-safety, employment and safety rules, and your chef, come first.
