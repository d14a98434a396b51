## Ce qui est gardé sur moi, l'oubli, la douleur

help-records = `records` : tout ce que je garde sur toi, en privé, en fichier JSON ; `records csv` en tableau, `records text` en messages.
help-forget = `forget me` : efface tout ce que je garde sur toi ; je redemande une fois dans notre salon privé.
help-sore = `sore`, dans notre salon privé seulement : que faire. Rien n'est gardé.

records =
    Gardé sur toi, tel quel, par table : { $counts }.
    Pour t'exercer, jamais pour la paie, le planning, l'avancement ni la discipline. Les sauvegardes d'avant sont chez qui me fait tourner : demande.
    S'il n'y a pas de fichier à côté, dis `records text`.
records-spelt =
    Gardé sur toi, tel quel, par table : { $counts }.
    { $parts ->
        [one] La suite tient en un message ; copie-le tel quel dans un fichier.
       *[other] La suite tient en { $parts } messages ; mets-les bout à bout, et c'est un seul fichier.
    }
which-records = Dis `records` pour un fichier JSON, `records csv` pour un tableau, ou `records text` pour des messages.
records-none = Je ne garde rien sur toi, sauf que tu es dans le salon.
forget-whom = Seulement toi-même : `forget me`.
forget-first = Dis d'abord `forget me` ; ensuite je demande une fois.
forget-sure =
    Cela efface tes passages, liens de photos, mots, questions, brouillons, fonction et nom ici. On ne peut pas revenir dessus.
    Les tableaux fermés gardent leurs sommes et disent "quelqu'un de la cuisine". Les mains que tu as levées restent comme nombre, sans toi.
    Ce que tu as écrit dans le salon y reste. Les sauvegardes d'avant sont chez qui me fait tourner : demande.
    `yes, forget me`, ici dans notre salon privé, le fait dans les 12 heures.
forgotten =
    Oublié. Je ne garde plus rien sur toi, sauf que tu es dans le salon.
    Ce que tu as écrit dans le salon y reste. Les sauvegardes d'avant sont chez qui me fait tourner : demande.
sore = Engourdissement, fourmillement ou douleur : arrête, et consulte une personne qualifiée. Rien de cela n'est gardé.
sore-in-private = Dans notre salon privé, s'il te plaît : `sore` y trouve réponse, et rien n'en est gardé.
