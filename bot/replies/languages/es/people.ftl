## Being counted in

first-message = Soy Platepace: publico un ejercicio de emplatado por semana y apunto tus tiempos.
    Guardo resultados solo de quienes escriben `!join`: el tiempo, los platos buenos y quién levantó la mano. Las charlas no las guardo; el propio chat guarda lo que escribes.
    Los resultados son para practicar, nunca para sueldo, turnos, ascensos ni sanciones. Las leyes laborales y de datos son locales, pregunta.
    Chef: `!drills` enumera doce ejercicios, `!post 1 mon 15:00` abre una semana, `!zone { $zone }` y `!dayturn 05:00` fijan el reloj. `!words` enumera lo demás.
join-first = Retenido, aún sin guardar. Guardo tu tiempo, tus platos buenos y quién miró, para mostrarte tu propio ritmo y la pizarra de la semana; nunca para sueldo, turnos, ascensos ni sanciones. El propio chat guarda lo que escribes. `yes` te incluye; sin respuesta se borra en 48 horas.
joined = Participas, { $name }. Para practicar, nunca para sueldo, turnos, ascensos ni sanciones; el propio chat guarda lo que escribes.
counted-in = Participas, { $name }.
left = Ya no participas, { $name }. No guardo nada nuevo tuyo. `!join` te incluye otra vez.
