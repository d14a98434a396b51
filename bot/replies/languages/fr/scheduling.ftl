## Afficher

scheduled = Réglé. { $post }
schedule-line = { $when } ({ $zone }) : { $what }. Prochain : { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } { $month }
week-of = la semaine du { $day }
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre
drill-named = exercice { $label }, { $name }
the-newest = le dernier exercice publié
held = suspendu
schedule-help = `!post move 1 tue 14:30` en déplace un, `!post 1 off` l'annule, `!skip 1` saute le prochain, `!hold 1` tous jusqu'à nouvel ordre.
no-schedule = Aucun affichage hebdomadaire n'est réglé. Règles-en un comme `!post 6 mon 15:00`.
which-schedule = { $most ->
    [one] Il y a { $most } affichage hebdomadaire
   *[other] Il y a { $most } affichages hebdomadaires
 }. Nomme-le par son numéro dans `!post`, comme `!skip 1`.
post-what = Quel exercice ? Nommes-en un, comme `!post 6 mon 15:00` ; `!drills` donne la liste.
post-when = Écris un jour de la semaine et une heure, comme `!post mon 15:00`, ou `!post now`.
cancelled = Annulé : { $when }. Plus rien ne s'affiche alors.
skipping = { $day } est sauté. Le prochain affichage est { $after }.
holding = Suspendu : { $when } n'affiche rien jusqu'à ce que tu le règles à nouveau, comme `{ $again }`.
already-posted = L'exercice { $drill } a déjà été affiché cette semaine ; il peut l'être à nouveau dès lundi.
post-missed = L'exercice { $drill } était prévu il y a plus de 12 heures, pendant mon absence, et n'a pas été affiché. `!post now { $drill }` l'affiche.
nothing-published = Un affichage était prévu, mais aucun exercice n'est publié. `!drills` montre le cours ; `!post 6 mon 15:00` en nomme un.

## Réglages de la cuisine

zone-set = Les heures se lisent et s'affichent en { $zone }.
unknown-zone = Je ne connais pas ce fuseau horaire. { $near ->
    [none] Écris-le comme `!zone Europe/London`.
   *[other] Proches : { $near }.
 }
day-turn-set = La journée de cuisine tourne à { $at }.
which-time = Écris une heure, comme `!dayturn 05:00`.
replies-full = Je réponds à chaque passage par une ligne.
replies-short = Je réponds à chaque passage par le seul bloc-notes.
which-replies = Écris `!replies full` ou `!replies short`.
quiet-hours = Heures calmes : { $hours }. Affichages et rappels attendent leur fin ; les réponses, non.
quiet-off = Pas d'heures calmes : affichages et rappels viennent à toute heure.
quiet-how = Écris-le comme `!quiet 22:00-09:00`, ou `!quiet off`.
help-quiet = `quiet 22:00-09:00` : heures où affichages et rappels attendent ; `quiet off` pour aucune.

## La coupure

rest-set = Ton repos : { $hours }. Je ne te dis rien alors que tu n'aies demandé. Les pauses légales et le repos quotidien passent d'abord, et aucun exercice n'y a sa place.
rest-off = Plus aucun repos de toi n'est gardé.
rest-none = Tu ne m'as dit aucun repos. `rest 15:00-17:00` le fixe.
rest-how = Écris-le comme `rest 15:00-17:00`, ou `rest off`.
resting-then = { $people ->
    [one] { $people } personne a
   *[other] { $people } personnes ont
 } son repos à cette heure ; aucun exercice n'y a sa place.
help-rest = `rest 15:00-17:00` : la coupure de mon service, où l'on ne me dit rien que je n'aie demandé ; `rest off` y met fin.

## Jours de la semaine

weekday-1 = lundi
weekday-2 = mardi
weekday-3 = mercredi
weekday-4 = jeudi
weekday-5 = vendredi
weekday-6 = samedi
weekday-7 = dimanche
