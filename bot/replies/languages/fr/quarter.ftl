## Le trimestre

quarter-open = Trimestre { $quarter } de { $year } jusqu'ici, rythme nivelé sur tous ses exercices
quarter-closed = Trimestre { $quarter } de { $year }, fermé : rythme nivelé sur tous ses exercices
quarter-board = { $rows }
quarter-row = { $place } { $name } { $pace }
quarter-shared = La même place : trop proche pour trancher.
quarter-too-close = Trop proche pour trancher : personne n'est clairement devant.
quarter-divided = Certains ne partagent ni personne ni exercice avec les autres : pas encore de terrain commun, donc pas de chiffre entre eux.
quarter-few = Pas encore de places. Il faut trois personnes aux exercices semblables et aux passages que quelqu'un a vus.
quarter-yours = Toi : place { $place }, { $pace } s par geste nivelé, de { $runs } passages.
quarter-no-place = Toi : { $pace } s par geste nivelé. Pas de place : { $why }.
quarter-why-ground = tes exercices et ceux des autres n'ont pas encore de terrain commun
quarter-why-work = moins de la moitié de ton travail ressemble à celui des autres
quarter-why-judged = la plupart de tes passages ont été jugés par toi
band = environ { $low } à { $high }
standard-stands = Le standard calculé vaut. Un rythme entre exercices demande { $runs } passages comptés par { $cooks } personnes, dont { $linked } ont aussi fait un autre exercice. Manque : { $missing }.
missing-runs = { $runs ->
    [one] encore { $runs } passage
   *[other] encore { $runs } passages
 }
missing-cooks = plus de personnes
missing-links = des personnes qui font aussi un autre exercice
missing-fit = rien, il vient dans la minute

## Cuisines sœurs

group-head = { $group }, trimestre { $quarter } de { $year } jusqu'ici
site-line = { $name } : { $told }
site-met = { $percent } % des personnes dans leur ligne ces deux dernières semaines
site-few = trop peu de personnes récemment pour comparer à leurs lignes
site-clean = { $percent } % des assiettes justes du premier coup
site-unwitnessed = pas encore de passage vu
site-same = { $drill }, { $plates } assiettes, même disposition : { $times }.
site-same-close = { $drill }, { $plates } assiettes, même disposition : { $times } ; trop proche pour trancher.
group-apart = { $one } et { $other } ne partagent ni personne ni exercice : pas encore de terrain commun, donc pas de chiffre entre elles. Le même exercice fait dans les deux le donne.
group-one-site = { $group } : une seule de ses cuisines a des passages qui comptent ce trimestre, ou aucune.
no-group = Cette cuisine n'est dans aucun groupe. Qui me fait tourner nomme les cuisines sœurs dans les réglages.
