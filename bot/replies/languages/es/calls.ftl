## What fits in a slot

help-slot = `slot 25` o `slot 6 25`: cuántas tandas completas caben en 25 minutos, revisadas y con todo repuesto; en privado, según tu propia mediana.
slot-fits = { $runs ->
    [one] Cabe una tanda completa
   *[other] Caben { $many } tandas completas
 } de { $drill } en { $slot }.
slot-none = No cabe ninguna tanda completa de { $drill } en { $slot }; el intervalo más corto en que cabe una es { $shortest }.
slot-day-limit = Cabrían más; por las manos, { $runs } al día como máximo.
slot-each = { $each } cada una: tanda { $run } ({ $by ->
    [own] mediana de tus { $count } tandas
   *[standard] tiempo estándar
 }), revisión { $judging }, reposición { $reset }.
slot-sum = Preparar la mesa { $laying }, { $runs } x { $each }, recoger { $clearing }: { $taken }.
slot-how = Escribe los minutos, como `slot 25`, o `slot 6 25` para el ejercicio 6.

## Call sheets

help-calls = `calls 2` o `calls 6 2`: una hoja de nivel 1 a 3 para que la lea en voz alta otra persona, enviada en privado; `calls 2 sheet 417` da esa misma otra vez.
calls-head = { $drill }, voces de nivel { $level }, hoja { $number }: { $plates } platos, { $touches } toques, estándar { $standard }.
calls-sum = { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 } { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s sin tocar
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s omitidos
 } = { $total } s.
calls-read = Para quien la lea en voz alta, con el reloj en marcha; espera con la voz mientras haya un cuchillo, una llama o una sartén caliente en la mano.
call-how-long = { $at } «¿Cuánto falta?»
call-send-four = { $at } «Manda cuatro ya.»
call-swap = { $at } «Plato { $plate } sin { $component }.»
call-one-more = { $at } «Un plato más.»
call-wait = { $at } «Espera, sin tocar { $wait } segundos.»
calls-send = Anota cada respuesta a «¿Cuánto falta?» y compárala al parar. Envía la tanda como `{ $example }`.
calls-which-level = ¿Qué nivel? `calls 1`, `calls 2` o `calls 3`, o `calls 6 2` para el ejercicio 6.
calls-level-too-high = Esta tanda es muy corta para el nivel { $level }: { $calls } voces con { $gap } s o más entre ellas, ninguna al principio ni al final ni sobre calor. `calls { $highest }` cabe.
calls-too-short = Esta tanda es muy corta para voces; pon antes más platos.
