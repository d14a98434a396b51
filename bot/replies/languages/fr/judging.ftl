## Points mesurés sur une assiette

help-dots = `dots 10 10 9 11 10` : ces largeurs en mm sont-elles égales ; `dots 10 10 9 of 10` face à la largeur demandée ; `dots 14 12 9 of 14 12 10` en dégradé.
dots-even = Moyenne { $mean }, écart { $spread } % : accepter.
dots-uneven = Moyenne { $mean }, écart { $spread } % : refaire, { $most } % au plus est égal.
dots-as-called = Moyenne { $mean }, écart { $spread } %, chacun à { $leeway } mm de { $called } au plus : accepter.
dots-off-size = Moyenne { $mean }, écart { $spread } % : refaire, le point { $nth } ({ $width }) est à plus de { $leeway } mm de { $called }.
dots-graded = { $count } points, chacun plus petit d'au moins { $step } mm, les bouts à { $leeway } mm de { $first } et { $last } au plus : accepter.
dots-not-graded = Refaire : le point { $nth } ({ $width }) n'est pas plus petit d'au moins { $step } mm que le précédent ({ $before }).
dots-off-ends = Refaire : le point { $nth } ({ $width }) est à plus de { $leeway } mm de { $called }.
dots-too-few = Mesure deux points ou plus, comme `dots 10 10 9 11 10`.
dots-too-many = Mesure { $most } points au plus ; c'est un sondage.
dots-unreadable = Je n'ai pas pu lire “{ $typed }” comme largeur en mm ; écris les largeurs avec des espaces, comme `dots 10 9.5 11`.
dots-out-of-range = Un point a plus de 0 et au plus { $most } mm de large ; renvoie les largeurs, comme `dots 10 10 9 11 10`.
dots-how-called = Après `of` écris une largeur, comme `dots 10 10 9 of 10`, ou une par point, comme `dots 14 12 9 of 14 12 10`.
