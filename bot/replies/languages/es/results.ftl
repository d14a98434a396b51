## One result

heard = Oído. { $clock }, { $accepted } de { $plates }{ $rebuilt ->
    [0] {""}
   *[other] , rehechos: { $rebuilt }
 }. { $pace } s por toque, { $levelled } nivelado.
net = Neto { $net } ({ $redo ->
    [one] un rechazo costó
   *[other] { $redo } rechazos costaron
 } { $charge }). { $pace } s por toque.
no-time = { $accepted ->
    [one] { $accepted } plato limpio guardado
   *[other] { $accepted } platos limpios guardados
 }. Sin tiempo en esta tanda; intenta { $gate }.
none-accepted = Guardado, sin tiempo: ningún plato pasó en esta tanda. Intenta { $gate ->
    [one] { $gate } plato bueno
   *[other] { $gate } platos buenos
 }.
short = Tanda corta, { $accepted } de { $attempted } montados. { $pace } s por toque. Guardada para tu evolución.
stopped = Parada después de { $attempted ->
    [one] { $attempted } plato
   *[other] { $attempted } platos
 }. Guardada solo para ti, en ninguna pizarra.
rebuilt-hint = Si se rehízo con el reloj en marcha: `{ $clock } { $plates }/{ $plates } rebuilt { $redo }`.
corrected = { $line } (corregido)
which-line = Línea { $number }: { $problem }

## Remarks on a result

settling-in = Adaptación, tanda { $nth } de { $of }: guardada, aún en ninguna pizarra.
day-limit = Van { $today } hoy. Guardada, no contada; descansa las manos.
board-closed = Guardada; esa pizarra está cerrada.
last-week = Día de cocina de la noche del { $day }, pizarra de la semana pasada (abierta hasta { $until }). Contada.
