## Juger dans le salon et sur photos

help-judge = En privé : les passages qui attendent un juge, une photo à la fois et sans nom ; `judge` à nouveau montre le suivant.
help-agree = Un juge répond à un passage par `agree`, ou par `9 good` s'il en a passé moins. Deux juges en désaccord : le compte le plus bas vaut jusqu'à un troisième.
help-check = `check` montre aux juges les mêmes 12 photos et combien ils s'accordent ; réponds par `check` et douze signes. Le chef en ouvre un avec `check start`.
judged = { $name } : { $good } sur { $attempted } bonnes selon les juges. { $line } (corrigé)
judge-none = Aucun passage ne t'attend.
judge-this = { $waiting ->
    [one] { $waiting } passage attend.
   *[other] { $waiting } passages attendent. Celui-ci :
 } { $drill }, { $clock }, envoyé comme { $good } sur { $attempted }.
judge-photo = Photo : { $photo }
judge-answers = Réponds `agree`, ou combien ont passé, comme `{ $good } good`. Ouvert jusqu'à { $until }. `judge` montre le suivant.
judge-waiting = { $runs ->
    [one] { $runs } passage attend
   *[other] { $runs } passages attendent
 } un juge. `judge` { $runs ->
    [one] le montre
   *[other] les montre
 }.
judges-only = Ce mot est aux juges. Le chef dit qui juge : `!role @bastian judge`.
verdict-kept = Gardé : { $good } sur { $attempted } vaut.
verdict-how = Réponds au message du passage par `agree`, ou par combien ont passé, comme `9 good`.
verdict-own = Personne ne juge son propre passage, ni celui de son partenaire. Demande à quelqu'un qui n'y était pas.
verdict-closed = Un passage peut être jugé pendant 48 heures ; celui-ci reste comme il est.
verdict-stopped = Un passage arrêté n'est qu'à qui l'a fait ; il n'y a rien à juger.
verdict-too-many = Ce passage a { $attempted } assiettes ; envoie combien ont passé, comme `{ $attempted } good`.
verdict-several = Ce message tient plusieurs passages. Lève la main dessus pour les attester tous ; un compte demande un passage dans un message à lui.
verdict-gone = Ce passage a été retiré entre-temps. `judge` montre le suivant.
hand-same-name = Toi et qui a fait ce passage portez le même nom ici, je ne peux donc pas te prendre pour quelqu'un d'autre. Demande à une autre personne de juger, ou change ton nom affiché.
check-started = L'étalonnage des juges est ouvert, avec les 12 photos les plus récentes. Chaque juge dit `check` ici en privé, toi aussi.
check-too-few = Un étalonnage demande { $of } photos du dernier mois ; il y en a { $photos }.
check-none = Aucun étalonnage des juges n'est ouvert. Le chef en ouvre un avec `check start`.
check-how = Chaque assiette serait-elle partie ? Réponds en une ligne de douze signes, + pour oui et - pour non : `check + + - + + + - + + + + +`.
check-unreadable = Réponds par douze signes, + pour une assiette qui part et - pour une qui ne part pas : `check + + - + + + - + + + + +`.
check-other-number = J'ai lu { $signs ->
    [one] { $signs } signe
   *[other] { $signs } signes
 } ; il y a { $of } photos. Renvoie la ligne.
check-alone = Gardé. Aucun autre juge n'a encore répondu ; `check` montrera plus tard combien vous êtes d'accord.
check-pair = { $one } et { $other } : { $agreed } sur { $photos } pareil ({ $percent } %).
check-kappa = Kappa { $kappa }.
check-no-kappa = Kappa indéfini : les deux ont dit pareil de chaque photo.
own-count = Sur { $runs } passages jugés, tu as envoyé { $sent } assiettes comme bonnes ; les juges en ont trouvé { $found } bonnes.
