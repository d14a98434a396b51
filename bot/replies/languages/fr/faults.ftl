## Pannes

my-fault = Quelque chose s'est mal passé de mon côté avec cette ligne, et qui me fait tourner est prévenu. Renvoie-la plus tard, s'il te plaît.
flooding = Cela fait plus de lignes que je ne peux en traiter d'un coup. Les résultats que je peux lire sont gardés. Attends deux minutes, puis continue.
unreadable-message = Je n'ai pas pu lire ce message : sa clé ne m'est pas parvenue. Renvoie-le, s'il te plaît.
dead-event = L'événement { $event } a échoué trois fois ({ $problem }) et a été mis de côté.
dead-message = Un message pour { $lane } a été refusé ({ $problem }) et a été mis de côté.
dead-join = Le bot ne peut pas entrer dans { $room }, qui remplace le salon d'une cuisine ({ $problem }). Invite-le là.
post-missed-in = L'affichage hebdomadaire de l'exercice { $drill } dans { $room } était prévu il y a plus de 12 heures, pendant l'absence du bot, et a été laissé de côté. La cuisine est prévenue.
somebody = une personne
not-replaced = { $room } a été déclaré remplacé par quelqu'un qui n'en a pas le droit. La cuisine reste où elle est.
names-no-predecessor = { $old } a été déclaré remplacé par { $new }, qui ne dit pas le remplacer, ou est déjà une cuisine. La cuisine reste où elle est.
kitchen-moved = La cuisine de { $old } est maintenant dans { $new }. Là où les réglages nomment l'ancien salon, mets le nouveau.
moved-here = La cuisine a déménagé ici : exercices, résultats et affichages continuent comme avant.
moved-here-live = La cuisine a déménagé ici : exercices, résultats et affichages continuent comme avant. Ouverts : { $drills }, résultats dans ce fil ou n'importe où dans le salon.
