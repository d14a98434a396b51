## Images (court, la place manque ; le message à côté dit tout)

picture-guest = client
picture-standard = standard
picture-touches = { $touches ->
    [one] geste par assiette
   *[other] gestes par assiette
 }, { $run } dans le passage
picture-redo = une à refaire
picture-gate = de { $plates } bonnes pour un temps
picture-free = Seulement tracé : le chef montre la place.

## Précautions en peu de mots (le message à côté les dit en entier)

short-mandoline = Mandoline : protection et gant.
short-heat = Chaud : torchon sec, “chaud derrière”.
short-floor = Sol sec.
short-cold = Tenu au froid.
short-puree = Purée froide, jetée le jour même.
short-cooked-starch = Refroidi vite, jeté le jour même.
short-bottle = Rien ne retourne au flacon.
short-pieces-counted = Compter les pièces au départ et au retour.
short-strain = Trois passages par jour.
short-chemicals = Pas de produits de nettoyage près.
short-breakage = Casse : s'arrêter, retrouver chaque morceau.
short-hands = Mains lavées avant et après le téléphone.
short-allergens = Lire chaque étiquette ; le contact compte.
short-never-served = Jamais servi, goûté ni rendu.

## Le plan de table

picture-walk = Marche dans l'ordre des numéros, aller et retour.
picture-reach = Portée du bord : { $often } cm sans cesse, { $seldom } cm de temps en temps (pointillé).

## La tendance

picture-redo-share = À refaire, % des assiettes
picture-line = Ligne : le milieu stable. Bande : l'écart habituel de tes passages. Barre au bout : le prochain passage.
picture-ring = Anneau : un meilleur temps.

## La clôture de la semaine

picture-own = Face au temps attendu de chacun
picture-expected = La ligne est le temps attendu de chacun ; la barre, combien plus vite.

## Sur papier

help-paper = `paper` ou `paper 6` : l'exercice sur une page A4 à imprimer, avec un tableau pour les passages.
paper-here = { $drill } sur papier, avec un tableau pour les passages. Envoie les passages plus tard, comme `yesterday 3:02 8/8`.
paper-date = Date
paper-name = Nom
paper-clock = Temps
paper-good = Bonnes
paper-reason = Raison
paper-watched = Vu par
