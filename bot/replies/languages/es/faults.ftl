## Faults

my-fault = Algo falló por mi parte con esa línea, y se ha avisado a quien me administra. Envíala otra vez más tarde.
unreadable-message = No pude leer este mensaje: no me ha llegado su clave. Envíalo otra vez, por favor.
dead-event = El evento { $event } falló tres veces ({ $problem }) y se apartó.
dead-message = Un mensaje a { $lane } fue rechazado ({ $problem }) y se apartó.
dead-join = El bot no puede entrar en { $room }, que sustituye a la sala de una cocina ({ $problem }). Invítalo allí.
not-replaced = { $room } fue declarada sustituida por alguien que no puede hacerlo. La cocina se queda donde está.
names-no-predecessor = { $old } fue declarada sustituida por { $new }, que no dice que la sustituya o ya es una cocina. La cocina se queda donde está.
kitchen-moved = La cocina de { $old } está ahora en { $new }. Donde la configuración nombra la sala antigua, pon la nueva.
moved-here = La cocina se ha mudado aquí: ejercicios, resultados y publicaciones siguen como antes.
moved-here-live = La cocina se ha mudado aquí: ejercicios, resultados y publicaciones siguen como antes. Abiertos: { $drills }, con los resultados en este hilo o en cualquier lugar de la sala.
flooding = Son más líneas de las que puedo contestar de una vez. Los resultados que puedo leer quedan guardados. Espera dos minutos y sigue.
post-missed-in = La publicación semanal del ejercicio { $drill } en { $room } debía salir hace más de 12 horas, mientras el bot no estaba, y se dejó fuera. La cocina está avisada.
somebody = una persona
