## Judging in the room and from photos

help-judge = En privado: las tandas que esperan a un juez, una foto cada vez y sin nombre; `judge` otra vez muestra la siguiente.
help-agree = Un juez responde a una tanda con `agree`, o con `9 good` si pasaron menos. Si dos jueces difieren, vale la cuenta menor hasta que haya un tercero.
help-check = `check` muestra a los jueces las mismas 12 fotos y cuánto coinciden; responde con `check` y doce signos. El chef lo empieza con `check start`.
judged = { $name }: { $good } de { $attempted } buenos según los jueces. { $line } (corregido)
judge-none = Ninguna tanda te espera.
judge-this = { $waiting ->
    [one] Espera { $waiting } tanda.
   *[other] Esperan { $waiting } tandas. Esta:
 } { $drill }, { $clock }, enviada como { $good } de { $attempted }.
judge-photo = Foto: { $photo }
judge-answers = Responde `agree`, o cuántos pasaron, como `{ $good } good`. Abierta hasta { $until }. `judge` muestra la siguiente.
judge-waiting = { $runs ->
    [one] { $runs } tanda espera
   *[other] { $runs } tandas esperan
 } a un juez. `judge` { $runs ->
    [one] la muestra
   *[other] las muestra
 }.
judges-only = Esa palabra es de los jueces. El chef dice quién juzga: `!role @bastian judge`.
verdict-kept = Guardado: vale { $good } de { $attempted }.
verdict-how = Responde al mensaje de la tanda con `agree`, o con cuántos pasaron, como `9 good`.
verdict-own = Nadie juzga su propia tanda, ni la de su pareja. Pide a alguien que no estuviera en ella.
verdict-closed = Una tanda se puede juzgar durante 48 horas; esta queda como está.
verdict-stopped = Una tanda parada es solo de quien la hizo; no hay nada que juzgar.
verdict-too-many = Esa tanda tiene { $attempted } platos; envía cuántos de ellos pasaron, como `{ $attempted } good`.
verdict-several = Ese mensaje tiene varias tandas. Ponle la mano levantada para ser testigo de todas; para una cuenta, la tanda tiene que ir en su propio mensaje.
verdict-gone = Esa tanda se ha retirado entretanto. `judge` muestra la siguiente.
hand-same-name = Tú y quien hizo esa tanda tenéis aquí el mismo nombre, así que no puedo tomarte por otra persona. Pide a otra que la juzgue, o cambia tu nombre visible.
check-started = La prueba de jueces está abierta, con las 12 fotos más nuevas. Cada juez escribe `check` aquí en privado, tú también.
check-too-few = Una prueba necesita { $of } fotos del último mes; hay { $photos }.
check-none = No hay ninguna prueba de jueces abierta. El chef la empieza con `check start`.
check-how = ¿Habría salido cada plato? Responde en una línea de doce signos, + para sí y - para no: `check + + - + + + - + + + + +`.
check-unreadable = Responde con doce signos, + para un plato que sale y - para uno que no: `check + + - + + + - + + + + +`.
check-other-number = Leo { $signs ->
    [one] { $signs } signo
   *[other] { $signs } signos
 }; hay { $of } fotos. Envía la línea otra vez.
check-alone = Guardado. Ningún otro juez ha respondido aún; `check` muestra después cuánto coincidís.
check-pair = { $one } y { $other }: { $agreed } de { $photos } iguales ({ $percent } %).
check-kappa = Kappa { $kappa }.
check-no-kappa = Kappa sin definir: ambos dijeron lo mismo de todas las fotos.
own-count = En { $runs } tandas juzgadas enviaste { $sent } platos como buenos; los jueces vieron buenos { $found } de ellos.
