## Hands for a pickup

help-pickup = `pickup 120 in 20` or `pickup 11 120 in 20`: how many hands plate 120 in 20 minutes, and their tasks; `pickup 120 in 20 with 4`.
pickup-fits = In { $limit }: { $hands }, { $time }.
pickup-not-with = Not in { $limit } with { $hands }: { $time }.
pickup-no-gain = More hands gain nothing.
pickup-not = Not in { $limit }. { $many ->
    [1] One pair of hands takes
   *[other] { $hands } take
 } { $time }; { $narrowest } is the narrowest step.
pickup-divided = { $shared }, { $hands }: { $time }.
pickup-shared = { $many } on { $doing }
pickup-or-fewer = Or { $pieces }, { $hands }: { $time }.
pickup-fewer = With { $pieces }, { $hands }: { $time }.
pickup-no-hands = Not with { $most } hands sharing steps either.
pickup-one-plate = Not in { $limit }: the touches of one plate alone take { $touch }.
pickup-plating-only = Plating only: add your own heat, carry and check.
pickup-tasks = Hands { $tasks }.
pickup-task = { $who }: { $steps }
pickup-in-turn = { $steps }, plates in turn
pickup-step = { $component } { $technique }
pickup-sum = One plate { $touch } s, then { $more } x { $largest } s: { $time }. { $limit } is a plate every { $takt } s.
pickup-own-pace = At this kitchen's own pace, { $ratio } x standard: { $time }.
pickup-how = Write the plates, then the minutes, like `pickup 120 in 20` or `pickup 11 120 in 20`; `with 4` for four pairs of hands.
pickup-out-of-range = I can plan 1 to { $plates } plates, 1 to { $hands } hands and 12 hours at most, like `pickup 120 in 20`.

hands = { $many ->
    [1] one pair of hands
    [2] two hands
    [3] three hands
    [4] four hands
    [5] five hands
    [6] six hands
    [7] seven hands
    [8] eight hands
    [9] nine hands
    [10] ten hands
   *[other] { $many } hands
 }
hands-first = { $many ->
    [2] Two hands
    [3] Three hands
    [4] Four hands
    [5] Five hands
    [6] Six hands
    [7] Seven hands
    [8] Eight hands
    [9] Nine hands
    [10] Ten hands
   *[other] { $many } hands
 }
counted = { $many ->
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
    [10] ten
   *[other] { $many }
 }
counted-first = { $many ->
    [1] One
    [2] Two
    [3] Three
    [4] Four
    [5] Five
    [6] Six
    [7] Seven
    [8] Eight
    [9] Nine
    [10] Ten
   *[other] { $many }
 }

## What the steps are called (a technique of the house's own by its name)

doing = { $technique ->
    [set] setting
    [place] placing
    [pair] pairing
    [leaf] leaves
    [dot] dotting
    [bead] beading
    [mound] mounding
    [pull] pulling
    [line] the line
    [brush] brushing
    [crumb] crumbing
    [shingle] shingling
    [sauce] saucing
    [lean] leaning
    [twirl] twirling
    [quenelle] the quenelle
    [two-spoon-quenelle] the quenelle
    [ring-fill] filling
    [press] pressing
    [lift] lifting
    [wipe] wiping
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many ->
        [one] { $many } leaf
       *[other] { $many } leaves
     }
    [dot] { $many ->
        [one] { $many } dot
       *[other] { $many } dots
     }
    [bead] { $many ->
        [one] { $many } bead
       *[other] { $many } beads
     }
    [shingle] { $many ->
        [one] { $many } slice
       *[other] { $many } slices
     }
    [twirl] { $many ->
        [one] { $many } twirl
       *[other] { $many } twirls
     }
    [quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [two-spoon-quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [sauce] { $many ->
        [one] { $many } spoon
       *[other] { $many } spoons
     }
   *[other] { $many } { $component }
 }
