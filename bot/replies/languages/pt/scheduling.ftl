## Publicar

scheduled = Marcado. { $post }
schedule-line = { $when } ({ $zone }): { $what }. Próximo: { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday }, { $day } de { $month }
week-of = a semana de { $day }
month-1 = janeiro
month-2 = fevereiro
month-3 = março
month-4 = abril
month-5 = maio
month-6 = junho
month-7 = julho
month-8 = agosto
month-9 = setembro
month-10 = outubro
month-11 = novembro
month-12 = dezembro
drill-named = exercício { $label }, { $name }
the-newest = o exercício publicado por último
held = suspenso
schedule-help = `!post move 1 tue 14:30` muda um, `!post 1 off` cancela, `!skip 1` salta o próximo, `!hold 1` todos até ser marcado de novo.
no-schedule = Ainda não há publicação semanal. Marque uma como `!post 6 mon 15:00`.
which-schedule = { $most ->
    [one] Há uma publicação semanal
   *[other] Há { $most } publicações semanais
 }. Indique-a pelo número em `!post`, como `!skip 1`.
post-what = Que exercício? Indique um, como `!post 6 mon 15:00`; `!drills` mostra a lista.
post-when = Escreva um dia da semana e uma hora, como `!post mon 15:00`, ou `!post now`.
cancelled = Cancelado: { $when }. Já nada se publica nessa altura.
skipping = { $day } fica de fora. A próxima publicação é { $after }.
holding = Suspenso: { $when } não publica nada até você marcar de novo, como `{ $again }`.
already-posted = O exercício { $drill } já foi publicado esta semana; pode ser publicado de novo a partir de segunda-feira.
post-missed = O exercício { $drill } devia ter saído há mais de 12 horas, enquanto eu estava fora, e não foi publicado. `!post now { $drill }` publica.
nothing-published = Era hora de publicar, mas não há exercício publicado. `!drills` mostra o curso; `!post 6 mon 15:00` indica um.

## Definições da cozinha

zone-set = As horas leem-se e mostram-se em { $zone }.
unknown-zone = Não conheço esse fuso horário. { $near ->
    [none] Escreva como `!zone Europe/London`.
   *[other] Parecidos: { $near }.
 }
day-turn-set = O dia da cozinha muda às { $at }.
which-time = Escreva uma hora, como `!dayturn 05:00`.
replies-full = Respondo a cada rodada com uma linha.
replies-short = Respondo a cada rodada só com o bloco de notas.
which-replies = Escreva `!replies full` ou `!replies short`.
quiet-hours = Horas de sossego: { $hours }. Publicações e lembretes esperam que acabem; respostas não.
quiet-off = Sem horas de sossego: publicações e lembretes chegam a qualquer hora.
quiet-how = Escreva como `!quiet 22:00-09:00`, ou `!quiet off`.
help-quiet = `quiet 22:00-09:00`: horas em que publicações e lembretes esperam; `quiet off` para nenhumas.

## A pausa de um turno partido

rest-set = O seu descanso: { $hours }. Nesse tempo não lhe digo nada que você não tenha perguntado. As pausas legais e o descanso diário vêm primeiro, e nenhum exercício cabe neles.
rest-off = Já não se guarda descanso seu.
rest-none = Você não me disse descanso nenhum. `rest 15:00-17:00` marca.
rest-how = Escreva como `rest 15:00-17:00`, ou `rest off`.
resting-then = { $people ->
    [one] Uma pessoa tem
   *[other] { $people } pessoas têm
 } descanso a essa hora; nenhum exercício cabe nele.
help-rest = `rest 15:00-17:00`: a pausa do meu turno partido, em que não me dizem nada que não perguntei; `rest off` acaba com ela.

## Dias da semana

weekday-1 = segunda-feira
weekday-2 = terça-feira
weekday-3 = quarta-feira
weekday-4 = quinta-feira
weekday-5 = sexta-feira
weekday-6 = sábado
weekday-7 = domingo
