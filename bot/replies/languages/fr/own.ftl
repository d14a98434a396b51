## Meilleurs temps

first-mark = Première marque de { $name } sur { $drill } : { $time }.
new-best = Nouveau meilleur temps de { $name } sur { $drill } : { $time }, de { $by } s.
best-again = Corrigé : le meilleur temps de { $name } sur { $drill } est { $time }.
best-gone = Corrigé : { $name } n'a plus de meilleur temps vu sur { $drill }.
best-luck = Nouveau meilleur temps de { $by } s. Tes passages diffèrent d'habitude d'environ { $noise } s : deux de plus tout près le diront.
best-line = { $drill } : { $time }, { $day }, { $accepted } sur { $plates }.
best-unwitnessed = { $drill } : première marque { $time }, { $day }. Elle devient un meilleur temps quand quelqu'un qui a regardé lève la main.
no-best = Pas encore de passage avec un temps. Envoies-en un comme `3:02 8/8`.

## Pourquoi

why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } sur { $attempted } bonnes.
why-charge = Une à refaire : changement d'assiette { $change } s + (une assiette seule { $alone } s x ta vitesse { $clock_s }/{ $standard }) = { $one } s.
why-net = { $redo } à refaire x { $attempted }/{ $accepted } pour le risque de rater encore x { $one } s = { $charge } s. Net { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / { $touches } gestes = { $pace } s par geste.
why-levelled = Standard { $standard } s / 1.5 = { $levelled_touches } gestes nivelés ; { $net } / { $levelled_touches } = { $levelled } nivelé.
why-fitted = Standard calculé { $standard } ; les passages de la cuisine disent x { $factor } ({ $low } à { $high }), de { $runs } passages par { $cooks } personnes.
why-unfitted = Le standard calculé { $standard } vaut. Pour un standard ajusté il faut encore : { $missing }.
why-not-compared = Le standard calculé { $standard } vaut : sous 1:00, avec annonces ou à deux, on ne le compare pas à d'autres exercices.
why-no-time = Moins de { $gate } sur { $attempted } bonnes : un compte, pas de temps.
no-why = Il n'y a pas encore de passage à toi à expliquer.
