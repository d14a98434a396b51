## Un résultat

heard = Noté. { $clock }, { $accepted } sur { $plates }{ $rebuilt ->
    [0] {""}
   *[other] , remontées : { $rebuilt }
 }. { $pace } s par geste, { $levelled } nivelé.
net = Net { $net } ({ $redo ->
    [one] { $redo } à refaire a coûté
   *[other] { $redo } à refaire ont coûté
 } { $charge }). { $pace } s par geste.
no-time = { $accepted ->
    [one] { $accepted } assiette propre gardée
   *[other] { $accepted } assiettes propres gardées
 }. Pas de temps pour ce passage ; vise { $gate }.
none-accepted = Gardé, sans temps : aucune assiette n'a passé cette fois. Vise { $gate ->
    [one] { $gate } assiette bonne
   *[other] { $gate } assiettes bonnes
 }.
short = Passage court, { $accepted } sur { $attempted } montées. { $pace } s par geste. Gardé pour ta tendance.
stopped = Arrêté après { $attempted ->
    [one] { $attempted } assiette
   *[other] { $attempted } assiettes
 }. Gardé pour toi seul, sur aucun tableau.
rebuilt-hint = Si elle a été remontée dans le temps : `{ $clock } { $plates }/{ $plates } rebuilt { $redo }`.
corrected = { $line } (corrigé)
which-line = Ligne { $number } : { $problem }

## Remarques sur un résultat

settling-in = Prise en main, passage { $nth } sur { $of } : gardé, pas encore sur un tableau.
day-limit = { $today ->
    [3] C'est le troisième
    [4] C'est le quatrième
    [5] C'est le cinquième
   *[other] Cela fait { $today }
 } aujourd'hui. Gardé, pas compté ; repose les mains.
board-closed = Gardé ; ce tableau est fermé.
last-week = Journée de cuisine de la nuit de { $day }, tableau de la semaine passée (ouvert jusqu'à { $until }). Compté.
