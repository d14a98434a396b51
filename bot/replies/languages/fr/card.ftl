## La fiche d'exercice

card-head = { $name } (exercice { $label }), { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 }, { $rows ->
    [one] une rangée
   *[other] { $rows } rangées
 }.
card-head-draft = { $name } (brouillon), { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 }, { $rows ->
    [one] une rangée
   *[other] { $rows } rangées
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , avec { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , à { $at }
   *[words] , { $at }
 }
card-accept = Bonne quand : { $accept }.
card-work = { $touches ->
    [one] { $touches } geste
   *[other] { $touches } gestes
 } par assiette, { $run } dans le passage. Standard { $standard }.
card-targets = Début { $opening }, maison { $house }, vif { $brisk }.
card-redo = Une assiette à refaire coûte environ { $redo }. Sous { $gate } assiettes bonnes il y a un compte et pas de temps ; au passe, chaque assiette doit être bonne.
card-redo-one = Au passe, chaque assiette doit être bonne.
card-send = Envoie le temps et les assiettes bonnes, comme `{ $example }`. Un passage compte pour les tableaux quand quelqu'un qui a regardé lève la main dessus.
card-table = Sur { $plate } : une table de { $length } x { $depth } cm.
card-reaches = Les deux mains à la fois : { $reaches } gestes du bras par assiette.
card-working-component = Une étape sur toute la rangée, puis la suivante.
card-working-plate = Une assiette finie, puis la suivante.
card-working-waves = Par vagues de { $wave }.
card-pressure = Annonces de niveau { $level }.
card-labels = Lis chaque étiquette, “peut contenir” aussi : { $labels }.
card-label = { $component } ({ $label })
card-caution = - { $caution }
card-take-care = Attention :
late = (en retard)

## Précautions (la fiche montre celles qui conviennent ; les règles locales ferment toujours)

caution-mandoline = Mandoline : protection et gant anti-coupure, s'arrêter avant le dernier tiers, couper avant le chronométrage, personne de nouveau seul.
caution-heat = Bain chaud à 45 degrés au plus, à base large, loin du bord, changé à chaque passage ; choses chaudes : torchon sec, manche vers l'intérieur, annoncer "chaud derrière".
caution-floor = Glissades au sol : { $what }, eau. Un couloir, un sens ; "stop" arrête le temps.
caution-cold = Tenu au froid, aussi longtemps que le permet la règle alimentaire locale ; jeté s'il est tombé ou resté longtemps tiède : { $what }.
caution-puree = Tenu au froid, jeté le jour même : { $what }. De haricots blancs : en boîte, jamais trempés crus.
caution-cooked-starch = Cuit, refroidi vite, à 5 degrés ou moins, jeté le jour même : { $what }.
caution-bottle = Rien ne retourne d'une assiette dans un flacon.
caution-pieces-counted = Compté à la sortie et au retour : { $what }.
caution-strain = Trois passages par jour. Engourdissement, fourmillement ou douleur : arrête et consulte une personne qualifiée.
caution-chemicals = Les produits de nettoyage restent loin de la table.
caution-breakage = Quelque chose casse : s'arrêter, jeter la nourriture ouverte à portée, balayer, jamais à mains nues, retrouver chaque morceau.
caution-hands = Lave-toi les mains avant et après le téléphone ; coupures sous pansement bleu et gant en nitrile.
caution-allergens = Aucun substitut n'est sans allergène. Le contact compte, pas seulement manger ; ta propre allergie se dit au chef en face, jamais ici.
caution-never-served = La nourriture d'exercice n'est jamais servie, goûtée ni rendue : étiquette "exercice, ne pas manger" avec la date.
caution-local-rules = Les règles locales d'hygiène, de travail et de sécurité, et ton chef, passent d'abord.
