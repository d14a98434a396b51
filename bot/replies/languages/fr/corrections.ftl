## Retirer et remettre

scrapped = Ton passage de { $at } est retiré. `undo` le remet.
undone = Ton passage de { $at } est remis.
nothing-to-scrap = Tu n'as pas de passage à retirer.
nothing-to-undo = Tu n'as pas de passage à remettre.

## Le chef corrige un passage

corrected-by = { $chef } a corrigé ton passage de { $at }. { $line } Si ce n'est pas cela, parle à { $chef } ; rien d'autre de toi n'a changé.
correct-own = Un passage à toi se corrige en modifiant son message.
correct-which = Le passage de qui ? Réponds à son message avec `!correct 3:20 7/8`, ou écris `!correct @noor 3:20 7/8` pour le dernier.
correct-how = Écris-le comme `!correct @noor 3:20 7/8` : le temps et les assiettes bonnes tels qu'ils étaient.
help-correct = `correct @noor 3:20 7/8`, ou en réponse au passage : corrige le passage de quelqu'un ; la personne est prévenue.
