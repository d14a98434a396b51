## Questions and what to send instead

how-many-good = ¿Cuántos de { $plates } salieron bien?
one-left = El ejercicio { $drill } tiene { $plates } platos. { $left ->
    [one] ¿Quedó { $left }
   *[other] ¿Quedaron { $left }
 } sin montar? `yes`, o la cuenta otra vez, como `{ $again }`.
under-a-third = { $clock } es menos de un tercio del tiempo estándar. ¿Es correcto? `yes`, o el tiempo otra vez.
same-again = Igual que tu tanda de las { $at }. ¿Es una segunda tanda? `again`. Si no, no hagas nada.
nothing-to-answer = Ahora no hay ninguna pregunta pendiente contigo. Si era sobre una tanda, envíala otra vez, como `3:02 8/8`.
no-drill-yet = Aquí aún no se ha publicado ningún ejercicio. Nombra uno, como `6 3:02 8/8` o `!spec 6`; `!drills` los enumera.
no-such-drill = Aquí no hay ningún ejercicio { $label }. `!drills` los enumera.
unknown-word = No conozco esa palabra. Parecidas: { $near }. `!words` las enumera todas.
unknown-word-no-hint = No conozco esa palabra. `!words` enumera las que conozco.
chef-only = Esa palabra es del chef.
chef-only-post = Los ejercicios los pone el chef. ¿Envías el tuyo como idea?
which-mate = No sé quién es { $name } aquí. Menciona a esa persona, o escribe un nombre que solo tenga una.
mate-not-joined = { $name } aún no participa. Puede escribir `!join`; después envíalo otra vez.
which-kitchen = Estás en { $count } cocinas. ¿Cuál? { $list }

## A mate's result

waiting-for-mate = A la espera de que { $name } diga que sí.
kept-for-mate = Guardado a tu nombre, { $name }.
not-kept = No se guarda.

## What to send instead

edit-moves-run = Con una edición no se puede pasar una tanda a otro ejercicio ni a otra persona. Borra el mensaje y envía la tanda otra vez.
edit-unreadable = No pude leer esa edición, así que tu tanda queda como estaba. Escríbela como `3:02 8/8`, o borra el mensaje para retirarla.
too-many-plates = El ejercicio { $drill } tiene { $plates } platos. Si rehiciste { $over ->
    [one] uno
   *[other] { $over }
 }: `{ $clock } { $good }/{ $plates } rebuilt { $over }`.
far-too-many-plates = El ejercicio { $drill } tiene { $plates } platos; envía cuántos de { $plates } salieron bien, como `{ $clock } { $plates }/{ $plates }`.
count-does-not-add-up = Los buenos, los rechazados y los no montados tienen que sumar { $plates } platos; envía la cuenta otra vez, como `3:20 { $plates }/{ $plates }`.
more-mended-than-good = Los platos rehechos y corregidos están entre los buenos, y { $mended } es más que { $good }; envía la línea otra vez.
plates-out-of-range = Un ejercicio tiene de 1 a { $most } platos; escríbelo como `plates 8`.
rows-out-of-reach = Una fila, o { $most } como máximo, para que nadie se incline sobre la comida; escríbelo como `plates 8 rows 2`.
more-rows-than-plates = Para { $rows } filas hacen falta al menos { $rows } platos; escríbelo como `plates 8 rows 2`.
waves-do-not-fit = Una oleada tiene al menos 2 platos y menos que los { $plates } del ejercicio; escríbelo como `working waves 4`.
draft-name = Da al ejercicio un nombre de { $most } caracteres como máximo en la primera línea, como `!draft Slipway`.
no-steps = Un ejercicio necesita pasos; escríbelos como `1. 7 courgette, shingle, at 10-4`.
no-plates = ¿Cuántos platos? Añade una línea como `plates 8 rows 2`.
steps-out-of-order = Leo el paso { $read } donde toca el paso { $wanted }; numera los pasos 1, 2, 3.
too-many-steps = { $most } pasos como máximo; divide el plato en dos ejercicios.
unreadable-line = No pude leer «{ $line }», o está dos veces; los pasos son como `2. 1 tea jus, sauce, at 7`, las demás líneas empiezan por plates, rows, accept, plate, mise, start, stop o working.
not-a-number = Escribe un número entero después de la palabra, como `!plates 14`.
unreadable-step = No pude leer «{ $line }» como paso; escríbelo como `2 triangle, lean, at 11`.
pieces-out-of-range = En «{ $line }» la cantidad tiene que ir de 1 a { $most }, como `2 triangle, lean`.
unknown-technique = No conozco la técnica «{ $word }». Parecidas: { $near }.
unknown-technique-no-hint = No conozco la técnica «{ $word }». Conozco { $near }.
unknown-class = «{ $word }» no es una clase de sustituto; toma una de { $classes }.
unreadable-detail = No pude leer «{ $detail }»; después de un punto y coma va class, life, label o price, como `; life 90s ; label wheat`.
clock-needed = Tengo { $good } de { $plates }; me falta el tiempo, como `3:02 { $good }/{ $plates }`.
clock-missing = Me falta también el tiempo, como `3:02 8/8`.
count-needed = Tengo { $clock }; me falta cuántos salieron bien, como `{ $clock } 8/8`.
line-unreadable = No pude leer «{ $line }». Envía el tiempo y los platos buenos, como `3:02 8/8`.
too-many-lines = Son { $lines } líneas; envía { $most } como máximo en un mensaje.
one-run-a-line = Una tanda por línea, por favor: un tiempo y una cuenta, como `3:02 8/8`.
said-twice = «{ $word }» está dos veces; envía la línea otra vez con una sola.
how-many = ¿Cuántos? Escribe el número después de la palabra, como `{ $word } 1`.
at-unreadable = No pude leer { $typed } como hora del día; escríbela como `at 02:10`.
clock-or-decimal = ¿Son { $minutes } min { $seconds } s o { $decimal } minutos? Envía `{ $clock }` o `{ $converted }`.
clock-in-decimals = { $decimal } minutos serían { $converted }. Envía `{ $converted }`, o el tiempo tal como lo marcaba el reloj.
clock-unreadable = No pude leer { $typed } como tiempo; escríbelo como `8:05`.
clock-past-59 = `{ $typed }` no puede ser un tiempo: los minutos y segundos van de 00 a 59. Envíalo otra vez, como `8:05`.
clock-over-a-day = { $typed } es más de un día; escribe el tiempo de la tanda como `8:05`.
