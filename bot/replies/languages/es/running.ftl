## Before and after a run

help-declare = `declare` antes de una tanda dice que cuenta, buena o mala: usa una de mis cinco tandas de la semana desde ahora. Envía el resultado como siempre.
help-clock = `clock` empieza una tanda cronometrada por el chat, hasta `stop`. Se marca así; no da mejor tiempo ni puesto. Mejor tu propio cronómetro.
help-stop = `stop` termina una tanda empezada con `clock`, y pregunta cuántos salieron bien.
declared = Declarada: tu próxima tanda de { $drill } cuenta, salga como salga.
declared-already = Ya has declarado una tanda; envía su resultado, como `3:02 8/8` o `2:10 stopped 5`.
declare-when-joined = Declarar es para quienes participan: primero `!join`.
declare-no-board = El ejercicio { $drill } no tiene pizarra abierta esta semana, así que no hay para qué declarar. Envía la tanda como siempre.
chat-timed = Cronometrada por el chat: no da mejor tiempo ni puesto.
clock-not-started = No tienes ningún reloj en marcha. `!clock` inicia uno; o envía el tiempo de tu propio cronómetro, como `3:02 8/8`.
