## Questions, et ce qu'il faut envoyer

how-many-good = Combien sur { $plates } étaient bonnes ?
one-left = L'exercice { $drill } a { $plates } assiettes. { $left ->
    [one] Une est restée
   *[other] { $left } sont restées
 } à monter ? `yes`, ou le compte à nouveau, comme `{ $again }`.
under-a-third = { $clock }, c'est moins d'un tiers du temps standard. C'est juste ? `yes`, ou le temps à nouveau.
same-again = Pareil que ton passage de { $at }. Un deuxième passage ? `again`. Sinon, ne fais rien.
nothing-to-answer = Aucune question n'est ouverte avec toi. S'il s'agissait d'un passage, renvoie-le, comme `3:02 8/8`.
no-drill-yet = Aucun exercice n'a encore été publié ici. Nommes-en un, comme `6 3:02 8/8` ou `!spec 6` ; `!drills` donne la liste.
no-such-drill = Il n'y a pas d'exercice { $label } ici. `!drills` donne la liste.
unknown-word = Je ne connais pas ce mot. Proches : { $near }. `!words` les montre tous.
unknown-word-no-hint = Je ne connais pas ce mot. `!words` montre ceux que je connais.
chef-only = Ce mot est au chef.
chef-only-post = C'est le chef qui fixe les exercices. Envoyer le tien comme idée ?
which-mate = Je ne sais pas qui est { $name } ici. Mentionne la personne, ou écris un nom qu'une seule personne porte.
mate-not-joined = { $name } ne s'est pas encore fait compter. Il suffit de dire `!join` ; ensuite, renvoie.
which-kitchen = Tu es dans { $count } cuisines. Laquelle ? { $list }

## Le résultat d'un collègue

waiting-for-mate = J'attends que { $name } dise `yes`.
kept-for-mate = Gardé sous ton nom, { $name }.
not-kept = Pas gardé.

## Ce qu'il faut envoyer

edit-moves-run = Une modification ne peut pas passer un passage à un autre exercice ni à une autre personne. Supprime le message et renvoie le passage.
edit-unreadable = Je n'ai pas pu lire cette modification, ton passage reste donc comme il était. Écris-la comme `3:02 8/8`, ou supprime le message pour retirer le passage.
too-many-plates = L'exercice { $drill } a { $plates } assiettes. Si tu en as remonté { $over ->
    [one] une
   *[other] { $over }
 } : `{ $clock } { $good }/{ $plates } rebuilt { $over }`.
far-too-many-plates = L'exercice { $drill } a { $plates } assiettes ; envoie combien sur { $plates } étaient bonnes, comme `{ $clock } { $plates }/{ $plates }`.
count-does-not-add-up = Bonnes, à refaire et non montées doivent faire { $plates } assiettes ensemble ; renvoie le compte, comme `3:20 { $plates }/{ $plates }`.
more-mended-than-good = Les assiettes remontées et corrigées sont parmi les bonnes, et { $mended } est plus que { $good } ; renvoie la ligne.
plates-out-of-range = Un exercice a de 1 à { $most } assiettes ; écris-le comme `plates 8`.
rows-out-of-reach = Une rangée, ou au plus { $most }, pour que personne ne se penche sur la nourriture ; écris-le comme `plates 8 rows 2`.
more-rows-than-plates = { $rows } rangées demandent au moins { $rows } assiettes ; écris-le comme `plates 8 rows 2`.
waves-do-not-fit = Une vague a au moins 2 assiettes et moins que les { $plates } de l'exercice ; écris-le comme `working waves 4`.
draft-name = Donne à l'exercice un nom de { $most } caractères au plus sur la première ligne, comme `!draft Slipway`.
no-steps = Un exercice demande des étapes ; écris-les comme `1. 7 courgette, shingle, at 10-4`.
no-plates = Combien d'assiettes ? Ajoute une ligne comme `plates 8 rows 2`.
steps-out-of-order = J'ai lu l'étape { $read } là où vient l'étape { $wanted } ; numérote les étapes 1, 2, 3.
too-many-steps = { $most } étapes au plus ; partage l'assiette en deux exercices.
unreadable-line = Je n'ai pas pu lire “{ $line }”, ou elle y est deux fois ; les étapes sont comme `2. 1 tea jus, sauce, at 7`, les autres lignes commencent par plates, rows, accept, plate, mise, start, stop ou working.
not-a-number = Écris un seul nombre entier après le mot, comme `!plates 14`.
unreadable-step = Je n'ai pas pu lire “{ $line }” comme étape ; écris-la comme `2 triangle, lean, at 11`.
pieces-out-of-range = Dans “{ $line }” la quantité doit aller de 1 à { $most }, comme `2 triangle, lean`.
unknown-technique = Je ne connais pas la technique “{ $word }”. Proches : { $near }.
unknown-technique-no-hint = Je ne connais pas la technique “{ $word }”. Je connais { $near }.
unknown-class = “{ $word }” n'est pas une classe de substitut ; prends-en une de { $classes }.
unreadable-detail = Je n'ai pas pu lire “{ $detail }” ; après un point-virgule vient class, life, label ou price, comme `; life 90s ; label wheat`.
clock-needed = J'ai { $good } sur { $plates } ; il me faut le temps, comme `3:02 { $good }/{ $plates }`.
clock-missing = Il me faut aussi le temps, comme `3:02 8/8`.
count-needed = J'ai { $clock } ; il me faut le nombre de bonnes, comme `{ $clock } 8/8`.
line-unreadable = Je n'ai pas pu lire “{ $line }”. Envoie le temps et les assiettes bonnes, comme `3:02 8/8`.
too-many-lines = Cela fait { $lines } lignes ; envoie-en { $most } au plus par message.
one-run-a-line = Un passage par ligne, s'il te plaît : un temps et un compte, comme `3:02 8/8`.
said-twice = “{ $word }” y est deux fois ; renvoie la ligne avec le mot une seule fois.
how-many = Combien ? Écris le nombre après le mot, comme `{ $word } 1`.
at-unreadable = Je n'ai pas pu lire { $typed } comme heure ; écris-la comme `at 02:10`.
clock-or-decimal = C'est { $minutes } min { $seconds } s ou { $decimal } minutes ? Envoie `{ $clock }` ou `{ $converted }`.
clock-in-decimals = { $decimal } minutes feraient { $converted }. Envoie `{ $converted }`, ou le temps tel qu'il était.
clock-unreadable = Je n'ai pas pu lire { $typed } comme temps ; écris-le comme `8:05`.
clock-past-59 = `{ $typed }` ne peut pas être un temps : minutes et secondes vont de 00 à 59. Renvoie-le, comme `8:05`.
clock-over-a-day = { $typed }, c'est plus d'un jour ; écris le temps du passage comme `8:05`.
