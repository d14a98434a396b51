## Avant et après un passage

help-declare = `declare` avant un passage dit qu'il compte, bon ou mauvais : il prend dès maintenant un de mes cinq de la semaine. Envoie le résultat comme toujours.
help-clock = `clock` commence un passage chronométré par la conversation, jusqu'à `stop`. Marqué ainsi ; ni meilleur temps ni place. Ton propre chrono vaut mieux.
help-stop = `stop` termine un passage commencé par `clock`, et demande combien étaient bonnes.
declared = Annoncé : ton prochain passage sur { $drill } compte, quoi qu'il en soit.
declared-already = Tu as déjà annoncé un passage ; envoie son résultat, comme `3:02 8/8` ou `2:10 stopped 5`.
declare-when-joined = Annoncer est pour qui se fait compter : `!join` d'abord.
declare-no-board = L'exercice { $drill } n'a pas de tableau ouvert cette semaine, il n'y a rien à annoncer. Envoie le passage comme toujours.
chat-timed = Chronométré par la conversation : ni meilleur temps ni place.
clock-not-started = Aucun chrono à toi ne tourne. `!clock` en lance un ; ou envoie le temps de ton propre chrono, comme `3:02 8/8`.
