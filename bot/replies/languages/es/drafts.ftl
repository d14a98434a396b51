## Drafts

draft-known = Es el ejercicio { $label }.
draft-other-set-up = Es el ejercicio { $label } en otra disposición; cada disposición tiene sus propios mejores tiempos y pizarras.
draft-new = Un ejercicio nuevo, con sus propios mejores tiempos y pizarras.
draft-child = Frente al ejercicio { $label }: { $percent } % de trabajo.
draft-publish = `!publish` le da su número; si editas tu mensaje, lo leo otra vez.
published = Publicado como ejercicio { $label }, { $name }. `!post mon 15:00` lo pone cada semana, `!post now` enseguida.
no-draft = No hay ningún borrador tuyo. Empieza uno con `!draft NAME` y sus pasos, o `!draft 6` para partir del ejercicio 6.
no-such-step = Aquí los pasos van de 1 a { $most }. Escríbelo como `!step 2 2 triangle, lean`.
nothing-changed = Así el ejercicio { $label } queda como está.
new-wording = El trabajo es el mismo: el ejercicio { $label } se explica así desde ahora, sus mejores tiempos y pizarras quedan.
new-spec = Eso cambia el trabajo en { $percent } %, así que es un ejercicio nuevo ({ $number }), no { $old }.
    `a` solo estaba mal escrito, todo el mundo lo hizo de la manera nueva: las tandas quedan, se publica una corrección.
    `b` el ejercicio nuevo desde ahora: esta pizarra se cierra como está.
    `c` dejarlo hasta la semana que viene.
new-set-up = Eso cambia el trabajo en { $percent } %: sigue siendo el ejercicio { $number }, pero en una disposición nueva con sus propios mejores tiempos y pizarras.
    `b` la disposición nueva desde ahora: esta pizarra se cierra como está.
    `c` dejarlo hasta la semana que viene.
is-another-drill = Escrito así es el ejercicio { $label }. Responde `b` para cambiar ahora o `c` la semana que viene.
set-up-not-misspelt = Otro número de platos o filas es una disposición nueva. Responde `b` desde ahora o `c` la semana que viene.
spec-corrected = Corrección del ejercicio { $label }: estaba mal escrito. Las tandas quedan. Los pasos son:
    { $steps }
left-for-next-week = El ejercicio { $label } queda para la semana que viene. El ejercicio { $old } sigue.
drill-line = { $label } { $name }: { $plates } platos, { $touches } toques, estándar { $standard }
drills-none = Aún no hay ejercicios.

## The list of drills

renamed = El ejercicio { $label } se llama { $name } desde ahora. Su número, mejores tiempos y pizarras quedan.
rename-how = Escríbelo como `!rename 6 Rope coil`, con un nombre de { $most } caracteres como máximo.
help-rename = `rename 6 Rope coil`: otro nombre para un ejercicio; lo demás queda.
retired = El ejercicio { $label }, { $name }, está fuera de la lista. Su historial y mejores tiempos quedan; `!retire { $label } back` lo devuelve.
brought-back = El ejercicio { $label }, { $name }, está otra vez en la lista.
not-retired = Ningún ejercicio { $label } está fuera de la lista.
drill-retired = El ejercicio { $label } está fuera de la lista. `!retire { $label } back` lo devuelve.
retire-scheduled = El ejercicio { $label } se publica cada semana. `!post` enumera las publicaciones; cancela esa antes, como `!post 1 off`.
retire-live = El ejercicio { $label } está abierto ahora. `!close { $label }` cierra antes su semana.
retire-how = Escríbelo como `!retire 6`, o `!retire 6 back`.
help-retire = `retire 6`: quitar un ejercicio de la lista, su historial queda; `retire 6 back` lo devuelve.
