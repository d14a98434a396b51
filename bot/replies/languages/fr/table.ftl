## Tables

table-head = { $name } (exercice { $label }), { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 } de { $wide } cm, sur une table de { $length } x { $depth } cm :
table-own = { $name } (exercice { $label }) : { $pattern } demande une table de { $length } x { $depth } cm.
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern } : { $length } x { $depth } cm, { $verdict }.
table-fits = tient
table-short = { $cm } cm trop court
table-too-deep = { $cm } cm trop profond
table-out-of-reach = refusé, la troisième rangée est hors de portée d'un seul côté
table-fewer = Ce qui tient : { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 }, { $pattern }, { $length } x { $depth } cm (chef : `plates { $plates }`, `rows { $rows }` ; une autre disposition).
table-none-fits = Pas une assiette ne tient.
table-one-row = Une rangée : { $numbers }. Va dans un sens à une étape et reviens à la suivante, pour que personne ne marche à vide.
table-two-rows = Rangée du fond : { $far } ; rangée du bord : { $near }. On marche dans cet ordre, aller et retour.
table-walk = { $reach ->
    [near] Deux rangées : marche des deux côtés, ou le plus petit atteint la marque du fond ({ $depth } cm) sans se pencher sur la nourriture, manches attachées.
   *[far] Deux rangées : marche des deux côtés ; { $depth } cm, c'est trop loin d'un seul.
 }
table-plate-unknown = Je ne sais pas la largeur de l'assiette ({ $plate }). L'exercice la dit comme `plate flat 27 cm china`.
table-how = Écris la longueur et la profondeur de la table en cm, comme `table 180x70`, ou `table 11B` pour ce que demande un exercice.
help-table = `table 180x70` : dispositions qui tiennent sur une table de tant de cm ; `table` ou `table 11B` : ce que demande celle de l'exercice.
