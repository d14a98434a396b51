## Ce qui tient dans un créneau

help-slot = `slot 25` ou `slot 6 25` : combien de passages honnêtes tiennent en 25 minutes, jugés et remis en place ; en privé à ta médiane.
slot-fits = { $runs ->
    [one] Un passage honnête
   *[other] { $many } passages honnêtes
 } de { $drill } en { $slot }.
slot-none = Aucun passage honnête de { $drill } ne tient en { $slot } ; le créneau le plus court qui en contient un est { $shortest }.
slot-day-limit = Il en tiendrait plus ; pour les mains, c'est { $runs } par jour au plus.
slot-each = Chacun { $each } : passage { $run } ({ $by ->
    [own] ta médiane de { $count } passages
   *[standard] temps standard
 }), jugement { $judging }, remise en place { $reset }.
slot-sum = Disposer { $laying }, { $runs } x { $each }, ranger { $clearing } : { $taken }.
slot-how = Écris les minutes, comme `slot 25`, ou `slot 6 25` pour l'exercice 6.

## Feuilles d'annonces

help-calls = `calls 2` ou `calls 6 2` : une feuille de niveau 1 à 3 à faire lire par un collègue, envoyée en privé ; `calls 2 sheet 417` redonne celle-là.
calls-head = { $drill }, annonces de niveau { $level }, feuille { $number } : { $plates } assiettes, { $touches } gestes, standard { $standard }.
calls-sum = { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 } { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s sans toucher
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s retirées
 } = { $total } s.
calls-read = Pour le collègue qui lit à voix haute, le temps qui tourne ; retiens une annonce tant qu'un couteau, une flamme ou une poêle chaude est en main.
call-how-long = { $at } “Combien de temps ?”
call-send-four = { $at } “Envoie-en quatre.”
call-swap = { $at } “Assiette { $plate } sans { $component }.”
call-one-more = { $at } “Une assiette de plus.”
call-wait = { $at } “Attends, sans toucher { $wait } secondes.”
calls-send = Note chaque réponse à “Combien de temps ?” et compare à la fin. Envoie le passage comme `{ $example }`.
calls-which-level = Quel niveau ? `calls 1`, `calls 2` ou `calls 3`, ou `calls 6 2` pour l'exercice 6.
calls-level-too-high = Ce passage est trop court pour le niveau { $level } : { $calls } annonces à { $gap } s d'écart au moins, aucune au début, à la fin ni au-dessus du chaud. `calls { $highest }` tient.
calls-too-short = Ce passage est trop court pour des annonces ; dispose d'abord plus d'assiettes.
