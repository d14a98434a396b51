## Brouillons

draft-known = C'est l'exercice { $label }.
draft-other-set-up = C'est l'exercice { $label } dans une autre disposition ; chaque disposition a ses meilleurs temps et ses tableaux.
draft-new = Un nouvel exercice, avec ses meilleurs temps et ses tableaux.
draft-child = Face à l'exercice { $label } : { $percent } % de travail.
draft-publish = `!publish` lui donne son numéro ; modifier ton message le relit.
published = Publié comme exercice { $label }, { $name }. `!post mon 15:00` l'affiche chaque semaine, `!post now` tout de suite.
no-draft = Tu n'as pas de brouillon. Commence avec `!draft NAME` et ses étapes, ou `!draft 6` pour partir de l'exercice 6.
no-such-step = Ici les étapes vont de 1 à { $most }. Écris-le comme `!step 2 2 triangle, lean`.
nothing-changed = Cela laisse l'exercice { $label } comme il est.
new-wording = Le travail est le même : l'exercice { $label } se dit ainsi désormais, ses meilleurs temps et tableaux restent.
new-spec = Cela change le travail de { $percent } %, c'est donc un nouvel exercice ({ $number }), pas le { $old }.
    `a` seulement mal écrit, tout le monde l'a fait de la nouvelle façon : les passages restent, une correction est affichée.
    `b` le nouvel exercice dès maintenant : ce tableau ferme comme il est.
    `c` laisser jusqu'à la semaine prochaine.
new-set-up = Cela change le travail de { $percent } % : toujours l'exercice { $number }, mais une nouvelle disposition avec ses meilleurs temps et ses tableaux.
    `b` la nouvelle disposition dès maintenant : ce tableau ferme comme il est.
    `c` laisser jusqu'à la semaine prochaine.
is-another-drill = Écrit ainsi, c'est l'exercice { $label }. Réponds `b` pour changer maintenant ou `c` la semaine prochaine.
set-up-not-misspelt = Un autre nombre d'assiettes ou de rangées est une autre disposition. Réponds `b` dès maintenant ou `c` la semaine prochaine.
spec-corrected = Correction de l'exercice { $label } : il était mal écrit. Les passages restent. Les étapes sont :
    { $steps }
left-for-next-week = L'exercice { $label } est gardé pour la semaine prochaine. L'exercice { $old } continue.
drill-line = { $label } { $name } : { $plates } assiettes, { $touches } gestes, standard { $standard }
drills-none = Pas encore d'exercice.

## La liste des exercices

renamed = L'exercice { $label } s'appelle désormais { $name }. Son numéro, ses meilleurs temps et ses tableaux restent.
rename-how = Écris-le comme `!rename 6 Rope coil`, avec un nom de { $most } caractères au plus.
help-rename = `rename 6 Rope coil` : un autre nom pour un exercice ; le reste ne change pas.
retired = L'exercice { $label }, { $name }, n'est plus sur la liste. Son historique et ses meilleurs temps restent ; `!retire { $label } back` le ramène.
brought-back = L'exercice { $label }, { $name }, est de nouveau sur la liste.
not-retired = Aucun exercice { $label } n'est hors de la liste.
drill-retired = L'exercice { $label } est hors de la liste. `!retire { $label } back` le ramène.
retire-scheduled = L'exercice { $label } est affiché chaque semaine. `!post` donne la liste ; annule d'abord celui-là, comme `!post 1 off`.
retire-live = L'exercice { $label } est ouvert. `!close { $label }` ferme d'abord sa semaine.
retire-how = Écris-le comme `!retire 6`, ou `!retire 6 back`.
help-retire = `retire 6` : retire un exercice de la liste, son historique reste ; `retire 6 back` le remet.
