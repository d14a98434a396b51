## La tendance des premiers passages

help-trend = `trend` ou `trend 6` : mes premiers passages du jour, plus vite ou hasard, et le prochain, en privé.
no-trend = Pas encore de passage. Ta tendance commence avec le premier.
trend-few = { $count } premiers passages sur { $needed }. Trop tôt pour trancher.
trend-runs = { $drill }, premier passage du jour : { $runs }.
trend-median = Médiane { $median }.
trend-luck = { $drill }, premier passage du jour, { $count } derniers : médiane { $median }, aucun changement qu'on distingue du hasard.
trend-real = { $drill }, premier passage du jour, { $count } derniers : { $first } à { $last }, environ { $percent } % par passage, deux examens concordent : réel.
trend-redo = À refaire, de { $was } % à { $now } %{ $verdict ->
    [faster-fewer] {" "}: plus vite et plus propre
    [faster-same] {" "}: plus vite, aussi propre qu'avant
    [faster-more] {" "}: plus vite, plus à refaire : tiens la vitesse
    [slower-fewer] {" "}: plus lent mais plus propre : bien, garde-le
    [slower-same] {" "}: plus lent, aussi propre qu'avant
    [slower-more] {" "}: plus lent, plus à refaire : essaie une semaine légère
   *[none] {""}
}.
trend-all = Les passages : { $runs }.
trend-next = Prochain passage : environ { $low } à { $high }, quatre fois sur cinq.
trend-short = * un passage court, ramené à la disposition entière par ses gestes.
trend-carried = ({ $letter }) fait sur la disposition { $letter }, repris par le rythme nivelé : standard { $there } là-bas, { $here } ici.
trend-slowest = Le plus lent face au standard : { $technique }.
level-question =
    { $drill } : tes { $count } derniers premiers passages restent à 3 %, 90 % des assiettes bonnes ou plus. L'une de ces choses aiderait-elle ?
    1. Changer l'ordre de travail : `order` les compare.
    2. Travailler seule l'étape la plus coûteuse.
    3. Moins d'assiettes avec une règle plus stricte.
    4. Une semaine légère.
    5. Une étape plus dure.
