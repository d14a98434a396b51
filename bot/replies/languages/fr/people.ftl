## Se faire compter

first-message = Je suis Platepace : j'affiche un exercice de dressage par semaine et je prends vos temps.
    Je ne garde les résultats que de qui dit `!join` : le temps, les assiettes bonnes et qui a levé la main. La conversation ordinaire, je ne la garde pas ; le salon lui-même garde ce que vous écrivez.
    Les résultats servent à s'exercer, jamais à la paie, au planning, à l'avancement ni à la discipline. Le droit du travail et des données est local, demandez.
    Chef : `!drills` montre douze exercices, `!post 1 mon 15:00` lance une semaine, `!zone { $zone }` et `!dayturn 05:00` règlent l'heure. `!words` montre le reste.
join-first = Retenu, pas encore gardé. Je garde ton temps, tes assiettes bonnes et qui a regardé, pour te montrer ton rythme et le tableau de la semaine ; jamais pour la paie, le planning, l'avancement ni la discipline. Le salon lui-même garde ce que tu écris. `yes` te compte ; sans réponse, c'est effacé dans 48 heures.
joined = Tu comptes, { $name }. Pour s'exercer, jamais pour la paie, le planning, l'avancement ni la discipline ; le salon lui-même garde ce que tu écris.
counted-in = Tu comptes, { $name }.
left = Tu ne comptes plus, { $name }. Je ne garde rien de nouveau de toi. `!join` te compte à nouveau.
