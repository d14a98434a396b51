## Steps that do not make the clock

steps-none-here = Se guardan pasos de una fila trabajada paso a paso y sin voces, y el ejercicio { $drill } no es así. `yes` guarda la tanda sin ellos.
steps-other-number = El ejercicio { $drill } tiene { $steps ->
    [one] { $steps } paso
   *[other] { $steps } pasos
 } y leo { $read } de sus tiempos. Envíalos otra vez, como `steps 0:41 0:33`, o `yes` para guardar la tanda sin ellos.
steps-off-clock = Los pasos suman { $made } y el reloj dice { $clock }. ¿Qué es correcto? `{ $clock }` guarda la tanda sin sus pasos, `{ $made }` toma eso como tiempo; o envía los pasos otra vez.

## Hold or raise, and by how much

help-raise = `raise`: si el ejercicio está listo para una versión más difícil, y cuánto añade cada manera de subir; `raise 2` empieza un borrador de la segunda.
raise-nobody = Mantén { $drill }: nadie tiene una tanda contada en los últimos 28 días.
raise-hold = Mantén { $drill } como está: de { $cooks ->
    [one] { $cooks } cocinero
   *[other] { $cooks } cocineros
 } de este mes, { $ready } { $ready ->
    [one] mantiene
   *[other] mantienen
 } 11 de cada 12 buenos en { $target }. Hace falta la mitad, y al menos dos.
raise-ready = { $drill } está listo para una versión más difícil: { $ready } de los { $cooks } cocineros de este mes mantienen 11 de cada 12 buenos en { $target }.
raise-said-ready = Listos según ellos mismos: { $names }.
raise-fitting = De 5 a 10 % más de trabajo, el tamaño adecuado: { $ways }.
raise-others = Menos o más que eso: { $ways }.
raise-refused = No se admite, más del 20 % de una vez: { $ways }.
raise-how = `raise { $label } { $nth }` empieza un borrador.
raise-item = `{ $nth }` { $way } { $percent } %
raise-too-much = { $way } es { $percent } % más de trabajo, y más del 20 % de una vez no se admite. Toma una menor; `raise` las enumera.
which-raise = Escribe `raise`, o una manera de 1 a { $most }, como `raise 2` o `raise 6 2`.
raise-unreadable = Escribe `raise`, o una de sus maneras, como `raise 2` o `raise 6 2`.
way-plates = +{ $more } { $more ->
    [one] plato
   *[other] platos
 }
way-pieces = +{ $more } { $component }{ $technique ->
    [same] {""}
   *[other] {" "}({ $technique })
 }
way-waves = oleadas de { $of }

## The time to meet

help-target = `target`: el tiempo objetivo; `target house`, `target brisk`, `target opening` o `target 2:40` lo fija.
target-is = { $drill }: el objetivo es { $target }. Inicial { $opening }, casa { $house }, ágil { $brisk }.
target-set = El objetivo de { $drill } es { $target }. La ficha lo dice, y los mejores tiempos quedan.
target-out-of-range = { $target } es menos de un tercio del tiempo estándar o más del triple. El tiempo de la casa es { $house }; envía uno más cercano, como `target { $house }`.
which-target = Escribe `target house`, `target brisk`, `target opening`, o un tiempo como `target 2:40`.
card-target = Objetivo { $target }.

## Ready, by one's own word

help-ready = `ready` o `ready 6`: estoy para una versión más difícil; el chef ve mi nombre y yo veo cómo van mis tandas. `ready off` lo retira.
ready-kept = Guardado: estás para un { $drill } más difícil. El chef lo ve junto a tu nombre; `ready off` lo retira.
ready-off = Retirado en { $drill }.
ready-when-joined = Escribe primero `join`, y después `ready` otra vez.
which-ready = Escribe `ready`, `ready 6` o `ready off`.
standing-none = Una versión más difícil pide tres tandas contadas con tiempo; las tuyas aún faltan.
standing = { $runs ->
    [one] Tu última tanda contada
   *[other] Tus últimas { $runs } tandas contadas
 }: { $accepted } de { $attempted } buenos, mediana { $median } para un objetivo de { $target }, { $days ->
    [one] { $days } día
   *[other] { $days } días
 } desde la primera.
standing-enough = Es lo que pide una versión más difícil.
standing-lacks = Para una versión más difícil falta: { $lacks }.
lack-runs = tres tandas contadas
lack-stopped = tres tandas sin parar
lack-good = once de cada doce buenos en las tres
lack-each = diez de cada doce buenos en cada una
lack-redo = no más rechazos que antes
lack-target = la mediana en el objetivo
lack-days = una semana con él

## Taking it easier

step-back-redo = Dos de tus últimas tres tandas de { $drill } tuvieron menos de tres cuartos buenos. En las próximas deja el reloj y busca { $gate } de { $plates }.
step-back-stopped = Dos de tus últimas tres tandas de { $drill } se pararon. { $left ->
    [0] Haz la próxima a ritmo tranquilo y deja el reloj.
   *[other] Monta { $few } de los { $plates } la próxima vez, a ritmo tranquilo, y envía los demás como `left { $left }`.
 }
card-light = Una semana ligera: corta, ordenada, sin pizarra. { $left ->
    [0] Tómate tu tiempo
   *[other] { $few } de los { $plates } platos bastan (`left { $left }`)
 }.

## What to practise next

help-next = `next`: un ejercicio para practicar y por qué, según mis pasos y motivos de rechazo, en privado.
next-course = { $drill }, { $plates } platos. Toca en el curso: semana { $week } de { $of } con este ejercicio.
next-drill = { $drill }, { $plates } platos.
next-lost = La técnica { $technique } te costó { $lost } s o más sobre el estándar en cada una de tus 3 últimas tandas con pasos.
next-redo = `{ $reason }` vino con { $times } de tus últimas { $runs } tandas, y es de la técnica { $technique }.
next-nothing-near = Ningún ejercicio de aquí con la técnica { $technique } está cerca de tu nivel: de { $low } a { $high } veces { $level } del tiempo estándar.
next-paces = La técnica { $technique } en tus últimos pasos de { $drill }: { $pace } s por toque; lo habitual en ti { $usual }, estándar { $standard }{ $quarter ->
    [none] .
   *[other] , el cuarto más rápido de la casa { $quarter }.
 }
next-nothing-lost = Según tus pasos, ninguna técnica costó más de { $most } s sobre el estándar tres veces seguidas, y ningún motivo de rechazo vino dos veces: nada que señalar.
next-needs = Aún no puedo decirlo. Hacen falta pasos en tres tandas (hasta ahora { $runs } de { $of }), como `3:02 8/8 steps 1:35 0:43 0:44`, o un motivo de rechazo que venga dos veces, como `fell`.
