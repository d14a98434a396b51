## Fonctions dans la cuisine

role-given = { $name } est maintenant { $role } ici.
role-line = { $role } : { $names }.
role-chef = chef
role-sous = second
role-cook = cuisinier
role-commis = commis
role-trainee = stagiaire
role-judge = juge
no-roles = Tout le monde ici est cuisinier. `!role @noor sous` donne une autre fonction.
which-role = Une fonction est une de { $roles }.
role-of-whom = Écris-le comme `!role @noor sous`.
help-role = `role @noor sous` : donner une fonction (chef, sous, cook, commis, trainee, judge) ; `role` les montre.
