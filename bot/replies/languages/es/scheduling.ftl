## Posting

scheduled = Fijado. { $post }
schedule-line = { $when } ({ $zone }): { $what }. Próxima: { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } de { $month }
week-of = la semana del { $day }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre
drill-named = ejercicio { $label }, { $name }
the-newest = el último ejercicio publicado
held = en pausa
schedule-help = `!post move 1 tue 14:30` mueve una, `!post 1 off` la cancela, `!skip 1` omite la próxima, `!hold 1` todas hasta que se fije otra vez.
no-schedule = Aún no hay ninguna publicación semanal. Fija una como `!post 6 mon 15:00`.
which-schedule = { $most ->
    [one] Hay { $most } publicación semanal
   *[other] Hay { $most } publicaciones semanales
 }. Indícala por su número en `!post`, como `!skip 1`.
post-what = ¿Qué ejercicio? Nombra uno, como `!post 6 mon 15:00`; `!drills` los enumera.
post-when = Escribe un día de la semana y una hora, como `!post mon 15:00`, o `!post now`.
cancelled = Cancelado: { $when }. Entonces ya no se publica nada.
skipping = { $day } se omite. La próxima publicación es { $after }.
holding = En pausa: { $when } no publica nada hasta que lo fijes otra vez, como `{ $again }`.
already-posted = El ejercicio { $drill } ya se publicó esta semana; se puede publicar otra vez desde el lunes.
post-missed = El ejercicio { $drill } tocaba hace más de 12 horas, cuando yo no estaba, y no se publicó. `!post now { $drill }` lo publica.
nothing-published = Tocaba una publicación, pero no hay ningún ejercicio publicado. `!drills` enumera el curso; `!post 6 mon 15:00` nombra uno.

## Settings of the kitchen

zone-set = Las horas se leen y se muestran en { $zone }.
unknown-zone = No conozco esa zona horaria. { $near ->
    [none] Escríbela como `!zone Europe/London`.
   *[other] Parecidas: { $near }.
 }
day-turn-set = El día de cocina cambia a las { $at }.
which-time = Escribe una hora, como `!dayturn 05:00`.
replies-full = Respondo a cada tanda con una línea.
replies-short = Respondo a cada tanda solo con la libreta.
which-replies = Escribe `!replies full` o `!replies short`.
quiet-hours = Horas de silencio: { $hours }. Las publicaciones y avisos esperan hasta que acaben; las respuestas no.
quiet-off = Sin horas de silencio: las publicaciones y avisos llegan a cualquier hora.
quiet-how = Escríbelo como `!quiet 22:00-09:00`, o `!quiet off`.
help-quiet = `quiet 22:00-09:00`: horas en que las publicaciones y avisos esperan; `quiet off` para ninguna.

## The break of a split shift

rest-set = Tu descanso: { $hours }. Entonces no te digo nada que no hayas pedido. Las pausas legales y el descanso diario van primero, y ningún ejercicio cabe en ellos.
rest-off = Ya no guardo ningún descanso tuyo.
rest-none = No me has dicho ningún descanso. `rest 15:00-17:00` lo fija.
rest-how = Escríbelo como `rest 15:00-17:00`, o `rest off`.
resting-then = { $people ->
    [one] { $people } persona tiene
   *[other] { $people } personas tienen
 } su descanso a esa hora; ningún ejercicio cabe en él.
help-rest = `rest 15:00-17:00`: la pausa de mi turno partido, en que no se me dice nada sin pedirlo; `rest off` la termina.

## Weekdays

weekday-1 = lunes
weekday-2 = martes
weekday-3 = miércoles
weekday-4 = jueves
weekday-5 = viernes
weekday-6 = sábado
weekday-7 = domingo
