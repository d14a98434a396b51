## Mise en place

mise-head = Mise pour { $name } (exercice { $label }), { $runs ->
    [one] un passage
   *[other] { $runs } passages
 } de { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 }, { $spare } % de réserve comprise. Vaisselle : { $total }{ $runs ->
    [one] {""}
   *[other] , lavée entre les passages
 }.
mise-need = - { $component } : { $total } ({ $plate } par assiette){ $where ->
    [nowhere] {""}
    [measured] , et { $stays } qui restent dans : { $tool }
   *[unmeasured] , et ce que contient : { $tool }
 }
mise-tools = Outils : { $tools }.
mise-back = Revient pour un autre passage : { $list }.
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }({ $runs } passages au plus)
 }
mise-lives = Tient sur l'assiette : { $list }.
mise-life = { $component } { $life }
mise-same-day = Au froid jusqu'au passage, jeté le jour même : { $list }.
mise-how = Dis pour combien de passages, de 1 à { $most }, et quel exercice, comme `mise 2` ou `mise 2 11B`.
help-mise = `mise` ou `mise 2 11B` : tout pour un passage, ou pour deux de l'exercice 11B.

## Ordres de travail

order-head = { $name } (exercice { $label }), { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 }. Temps, et attente de chaque composant :
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] {" "}: { $waits }
 }
order-component = étape par étape
order-waves = vagues de { $wave }
order-plate = assiette par assiette
order-own = { $way } (comme fixé)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (tient { $life })
order-best-life = Le plus grand qui respecte toutes les tenues : { $way }.
order-none-keeps = Aucun ne respecte toutes les tenues. Moins d'assiettes, ou une tenue plus longue.
order-fastest = Le plus rapide : { $way }. Avec une tenue sur une étape (`; life 90s`), je prends le plus grand qui la respecte.
help-order = `order` ou `order 6` : ordres de travail comparés, leurs temps et l'attente de chaque composant.

## Coûts (au chef, en privé)

cost-head = { $name } (exercice { $label }), ce qu'un passage de { $plates ->
    [one] { $plates } assiette
   *[other] { $plates } assiettes
 } perd de ses substituts :
cost-line = - { $component } : { $parts } ; { $total } x { $price } = { $cost }
cost-unpriced = - { $component } : { $parts } ; pas encore de prix, comme `price { $component } 0.02` pour un{ $unit ->
    [piece] {""}
   *[other] { " " }{ $unit }
 }
cost-used-up = { $amount } utilisés
cost-again = { $amount } pour les assiettes remontées
cost-thrown = { $amount } jetés en fin de journée
cost-week = Cette semaine : { $runs } passages, { $redo } à refaire, { $rebuilt } remontées.
cost-run = Un passage : { $run }. Les substituts d'une assiette remontée : { $again }.
cost-pass = { $redo ->
    [one] { $redo } à refaire au passe serait { $redo } assiette de { $dish } : { $cost }.
   *[other] { $redo } à refaire au passe seraient { $redo } assiettes de { $dish } : { $cost }.
 }
cost-no-dish = `price dish 14.50` dit ce que paie un client pour le vrai plat.
price-currency = Les prix sont en { $currency }. Ceux d'avant gardent leurs chiffres.
price-currency-first = Dis d'abord la monnaie de la cuisine, par son code, comme `price EUR`.
price-which-currency = Je ne connais pas la monnaie { $code }. Envoie son code de trois lettres, comme `price EUR`.
price-too-fine = { $currency } { $digits ->
    [0] n'a pas de pièce plus petite
   *[other] a { $digits } chiffres après la virgule
 }. Écris-le comme `price dish { $example }`.
price-no-component = Cet exercice n'a pas de { $component } ; il a { $components }.
price-how = Écris-le comme `price courgette 0.04` pour une pièce, un ml ou un g, `price dish 14.50`, ou `price EUR`.
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR` ; `price` ou `price 6` : ce que coûte un passage, dit en privé.
