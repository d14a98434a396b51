## Tableaux

board-head = { $drill }, { $week }, fermé
board-open = { $drill }, cette semaine, ouvert jusqu'à { $until }
board-own = Face au temps attendu de chacun : { $rows }
board-fast = Rapides : { $rows }
board-steady = Réguliers : { $rows }
board-clean = Propres : { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [one] { $tries } essai
   *[other] { $tries } essais
 })
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % plus vite
board-as-expected = comme attendu
board-slower = { $percent } % plus lent
too-close = trop proche pour trancher
too-close-row = { $row }, trop proche pour trancher
board-not-yet = Pas encore de tableau { $kind }. Il faut trois personnes avec des passages que quelqu'un a vus, main levée.
board-not-yet-any = Pas encore de tableau. Il faut trois personnes avec des passages que quelqu'un a vus, main levée.
board-yours = Le tien sur { $kind } : place { $place }, { $figures }.
which-board = Les tableaux sont `own`, `fast`, `steady`, `clean`, `house`, `quarter` et `group`, comme `!board fast`.
no-live-drill = Aucun exercice n'est ouvert ici. Le chef en publie un avec `!post`.
a-cook = quelqu'un de la cuisine
light-no-board = Semaine légère : courte, soignée, sans tableau.

## Le principal : face à soi-même

own-not-yet = Pas encore de tableau face à soi-même. Il faut trois personnes avec des passages vus et d'autres avant pour comparer.
expected-on-it = { $actual } ; attendu { $expected }, le milieu de { $runs ->
    [one] ton passage précédent
   *[other] tes { $runs } derniers passages
 } sur cet exercice.
expected-fitted = { $actual } ; attendu { $expected }, ajusté sur tes passages précédents.
expected-held = { $actual } ; attendu { $expected }, qui monte de 2 % par semaine au plus.
expected-new = { $actual } ; attendu { $expected } : standard { $standard } x ton habitude { $usual }.
expected-new-drill = { $actual } ; attendu { $expected } : standard { $standard } x ton habitude { $usual } x { $drill } comme les autres l'ont trouvé.

## La maison

board-house = Maison : { $percent } % des personnes dans leur temps attendu, { $plates } assiettes propres.
board-house-plates = Maison : { $plates ->
    [one] { $plates } assiette propre
   *[other] { $plates } assiettes propres
 }.

## Hors des tableaux, et retour

boards-are-off = Tu n'es plus sur les tableaux publics. Tes passages et tes meilleurs temps restent, et `board` ici te dit toujours les tiens.
boards-are-on = Tu es de nouveau sur les tableaux publics.
boards-on-or-off = Envoie `boards off` ou `boards on`.
help-boards = `boards off` te retire des tableaux publics, ton historique reste ; `boards on` t'y remet.

## Clôture

closed = { $drill } : la semaine est fermée.
closed-no-board = Pas de tableau ; il faut trois personnes avec des passages vus. Chaque passage compte quand même pour qui l'a fait.
board-correction = Correction du tableau fermé de { $drill }, { $week }. { $board }
nothing-to-close = Ce tableau est déjà fermé.
