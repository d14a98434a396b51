## Passages à deux

pair-drill = { $name }, à deux
pair-names = { $one } et { $other }
kept-for-pair = Gardé pour { $runner } et { $partner }. { $line }
pair-by-one-of-two = Un passage à deux est envoyé par l'un des deux : `3:02 8/8 with @lio`, sans `for`.
pair-with-whom = L'exercice { $drill } est disposé pour deux. Dis avec qui, comme `3:02 8/8 with @lio`.
pair-with-self = Un passage à deux demande quelqu'un d'autre ; nomme la personne, comme `3:02 8/8 with @lio`.
pair-one-plate = L'exercice { $drill } a une assiette, il n'y a rien à partager. Envoie-le sans `with`.
