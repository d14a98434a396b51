## Étapes qui ne font pas le temps

steps-none-here = Les étapes se gardent d'une rangée travaillée une étape à la fois et sans annonces, ce que l'exercice { $drill } n'est pas. `yes` garde le passage sans elles.
steps-other-number = L'exercice { $drill } a { $steps ->
    [one] { $steps } étape
   *[other] { $steps } étapes
 } et j'ai lu { $read } de leurs temps. Renvoie-les, comme `steps 0:41 0:33`, ou `yes` pour garder le passage sans elles.
steps-off-clock = Les étapes font { $made } et le chrono dit { $clock }. Lequel est juste ? `{ $clock }` garde le passage sans ses étapes, `{ $made }` prend cela pour temps ; ou renvoie les étapes.

## Tenir ou monter, et de combien

help-raise = `raise` : si l'exercice est prêt pour une version plus dure, et ce qu'ajoute chaque voie ; `raise 2` commence un brouillon de la deuxième.
raise-nobody = Tenir { $drill } : personne n'y a de passage compté dans les 28 derniers jours.
raise-hold = Tenir { $drill } comme il est : { $ready } sur { $cooks ->
    [one] { $cooks } personne
   *[other] { $cooks } personnes
 } de ce mois { $ready ->
    [one] garde
   *[other] gardent
 } 11 bonnes sur 12 à { $target }. Il en faut la moitié, deux au moins.
raise-ready = { $drill } est prêt pour une version plus dure : { $ready } des { $cooks } personnes de ce mois gardent 11 bonnes sur 12 à { $target }.
raise-said-ready = Prêts de leur propre mot : { $names }.
raise-fitting = 5 à 10 % de travail en plus, la mesure à prendre : { $ways }.
raise-others = Moins ou plus que cela : { $ways }.
raise-refused = Refusé, plus de 20 % d'un coup : { $ways }.
raise-how = `raise { $label } { $nth }` commence un brouillon.
raise-item = `{ $nth }` { $way } { $percent } %
raise-too-much = { $way }, c'est { $percent } % de travail en plus, et plus de 20 % d'un coup est refusé. Prends moins ; `raise` les montre.
which-raise = Écris `raise`, ou une voie de 1 à { $most }, comme `raise 2` ou `raise 6 2`.
raise-unreadable = Écris `raise`, ou une de ses voies, comme `raise 2` ou `raise 6 2`.
way-plates = +{ $more } { $more ->
    [one] assiette
   *[other] assiettes
 }
way-pieces = +{ $more } { $component }{ $technique ->
    [same] {""}
   *[other] {" "}({ $technique })
 }
way-waves = vagues de { $of }

## Le temps à tenir

help-target = `target` : le temps à tenir ; `target house`, `target brisk`, `target opening` ou `target 2:40` le fixe.
target-is = { $drill } : la cible est { $target }. Début { $opening }, maison { $house }, vif { $brisk }.
target-set = La cible de { $drill } est { $target }. La fiche le dit, et les meilleurs temps restent.
target-out-of-range = { $target } est sous un tiers du temps standard, ou au-dessus de trois fois. Le temps maison est { $house } ; envoies-en un plus proche, comme `target { $house }`.
which-target = Écris `target house`, `target brisk`, `target opening`, ou un temps comme `target 2:40`.
card-target = Cible { $target }.

## Prêt, de son propre mot

help-ready = `ready` ou `ready 6` : je suis prêt pour plus dur ; le chef voit mon nom, et je vois où en sont mes passages. `ready off` le retire.
ready-kept = Gardé : tu te dis prêt pour { $drill } en plus dur. Le chef le voit à ton nom ; `ready off` le retire.
ready-off = Retiré pour { $drill }.
ready-when-joined = Dis d'abord `join`, puis `ready` à nouveau.
which-ready = Écris `ready`, `ready 6` ou `ready off`.
standing-none = Une version plus dure demande trois passages comptés avec un temps ; les tiens sont encore à venir.
standing = { $runs ->
    [one] Ton dernier passage compté
   *[other] Tes { $runs } derniers passages comptés
 } : { $accepted } sur { $attempted } bonnes, médiane { $median } pour une cible de { $target }, { $days ->
    [one] { $days } jour
   *[other] { $days } jours
 } depuis le premier.
standing-enough = C'est ce que demande une version plus dure.
standing-lacks = Une version plus dure demande encore { $lacks }.
lack-runs = trois passages comptés
lack-stopped = trois passages sans arrêt
lack-good = onze bonnes sur douze sur les trois
lack-each = dix bonnes sur douze dans chacun
lack-redo = pas plus d'assiettes à refaire qu'avant
lack-target = une médiane à la cible
lack-days = une semaine dessus

## Plus doucement

step-back-redo = Deux de tes trois derniers passages sur { $drill } avaient moins de trois quarts de bonnes. Pour les prochains, laisse le chrono et vise { $gate } sur { $plates }.
step-back-stopped = Deux de tes trois derniers passages sur { $drill } ont été arrêtés. { $left ->
    [0] Fais le prochain tranquillement et laisse le chrono.
   *[other] Monte { $few } des { $plates } la prochaine fois, tranquillement, et envoie les autres comme `left { $left }`.
 }
card-light = Semaine légère : courte, soignée, sans tableau. { $left ->
    [0] Prends ton temps
   *[other] { $few } des { $plates } assiettes suffisent (`left { $left }`)
 }.

## Quoi travailler ensuite

help-next = `next` : un exercice à travailler et pourquoi, d'après mes étapes et mes raisons, en privé.
next-course = { $drill }, { $plates } assiettes. Le cours y arrive : semaine { $week } sur { $of } sur cet exercice.
next-drill = { $drill }, { $plates } assiettes.
next-lost = { $technique } : { $lost } s ou plus au-dessus du standard dans chacun de tes 3 derniers passages avec étapes.
next-redo = `{ $reason }` est venu avec { $times } de tes { $runs } derniers passages, et tient à : { $technique }.
next-nothing-near = Aucun exercice ici avec { $technique } n'est près de ton niveau : { $low } à { $high } fois { $level } du temps standard.
next-paces = { $technique } dans tes dernières étapes sur { $drill } : { $pace } s par geste ; ton habitude { $usual }, standard { $standard }{ $quarter ->
    [none] .
   *[other] , le quart le plus rapide de la maison { $quarter }.
 }
next-nothing-lost = D'après tes étapes, aucune technique n'a coûté plus de { $most } s au-dessus du standard trois fois de suite, et aucune raison n'est venue deux fois : rien à distinguer.
next-needs = Je ne peux pas encore le dire. Il faut des étapes sur trois passages (jusqu'ici { $runs } sur { $of }), comme `3:02 8/8 steps 1:35 0:43 0:44`, ou une raison qui vient deux fois, comme `fell`.
