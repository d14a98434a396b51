## Des mains pour un envoi

help-pickup = `pickup 120 in 20` ou `pickup 11 120 in 20` : combien de personnes dressent 120 en 20 minutes, et leurs tâches ; `pickup 120 in 20 with 4`.
pickup-fits = En { $limit } : { $hands }, { $time }.
pickup-not-with = Pas en { $limit } avec { $hands } : { $time }.
pickup-no-gain = Plus de monde n'y gagne rien.
pickup-not = Pas en { $limit }. { $many ->
    [one] Une personne met
   *[other] { $hands } mettent
 } { $time } ; { $narrowest } est l'étape la plus étroite.
pickup-divided = { $shared }, { $hands } : { $time }.
pickup-shared = { $many } sur : { $doing }
pickup-or-fewer = Ou { $pieces }, { $hands } : { $time }.
pickup-fewer = Avec { $pieces }, { $hands } : { $time }.
pickup-no-hands = Pas non plus à { $most } personnes qui partagent les étapes.
pickup-one-plate = Pas en { $limit } : les gestes d'une seule assiette prennent { $touch }.
pickup-plating-only = Dressage seul : ajoute ta cuisson, le transport et le contrôle.
pickup-tasks = Personnes { $tasks }.
pickup-task = { $who } : { $steps }
pickup-in-turn = { $steps }, assiettes à tour de rôle
pickup-step = { $component } { $technique }
pickup-sum = Une assiette { $touch } s, puis { $more } x { $largest } s : { $time }. { $limit }, c'est une assiette toutes les { $takt } s.
pickup-own-pace = Au rythme de cette cuisine, { $ratio } x standard : { $time }.
pickup-how = Écris les assiettes, puis les minutes, comme `pickup 120 in 20` ou `pickup 11 120 in 20` ; `with 4` pour quatre personnes.
pickup-out-of-range = Je sais prévoir de 1 à { $plates } assiettes, de 1 à { $hands } personnes et 12 heures au plus, comme `pickup 120 in 20`.

hands = { $many ->
    [one] une personne
    [2] deux personnes
    [3] trois personnes
    [4] quatre personnes
    [5] cinq personnes
    [6] six personnes
    [7] sept personnes
    [8] huit personnes
    [9] neuf personnes
    [10] dix personnes
   *[other] { $many } personnes
 }
hands-first = { $many ->
    [2] Deux personnes
    [3] Trois personnes
    [4] Quatre personnes
    [5] Cinq personnes
    [6] Six personnes
    [7] Sept personnes
    [8] Huit personnes
    [9] Neuf personnes
    [10] Dix personnes
   *[other] { $many } personnes
 }
counted = { $many ->
    [one] une
    [2] deux
    [3] trois
    [4] quatre
    [5] cinq
    [6] six
    [7] sept
    [8] huit
    [9] neuf
    [10] dix
   *[other] { $many }
 }
counted-first = { $many ->
    [one] Une
    [2] Deux
    [3] Trois
    [4] Quatre
    [5] Cinq
    [6] Six
    [7] Sept
    [8] Huit
    [9] Neuf
    [10] Dix
   *[other] { $many }
 }

## Comment s'appellent les étapes (une technique de la maison par son nom)

doing = { $technique ->
    [set] poser
    [place] placer
    [pair] apparier
    [leaf] feuilles
    [dot] points
    [bead] perles
    [mound] petits tas
    [pull] tirer
    [line] la ligne
    [brush] badigeonner
    [crumb] émietter
    [shingle] chevaucher
    [sauce] saucer
    [lean] appuyer
    [twirl] enrouler
    [quenelle] la quenelle
    [two-spoon-quenelle] la quenelle
    [ring-fill] remplir
    [press] presser
    [lift] lever
    [wipe] essuyer
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many ->
        [one] { $many } feuille
       *[other] { $many } feuilles
     }
    [dot] { $many ->
        [one] { $many } point
       *[other] { $many } points
     }
    [bead] { $many ->
        [one] { $many } perle
       *[other] { $many } perles
     }
    [shingle] { $many ->
        [one] { $many } tranche
       *[other] { $many } tranches
     }
    [twirl] { $many ->
        [one] { $many } nid
       *[other] { $many } nids
     }
    [quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [two-spoon-quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [sauce] { $many ->
        [one] { $many } cuillère
       *[other] { $many } cuillères
     }
   *[other] { $many } { $component }
 }
