## Hands for a pickup

help-pickup = `pickup 120 in 20` o `pickup 11 120 in 20`: cuántas personas emplatan 120 en 20 minutos, y sus tareas; `pickup 120 in 20 with 4`.
pickup-fits = En { $limit }: { $hands }, { $time }.
pickup-not-with = No en { $limit } con { $hands }: { $time }.
pickup-no-gain = Con más personas no se gana nada.
pickup-not = No en { $limit }. { $many ->
    [one] Una persona tarda
   *[other] { $hands } tardan
 } { $time }; el paso más estrecho es { $narrowest }.
pickup-divided = { $shared }, { $hands }: { $time }.
pickup-shared = { $many } para { $doing }
pickup-or-fewer = O { $pieces }, { $hands }: { $time }.
pickup-fewer = Con { $pieces }, { $hands }: { $time }.
pickup-no-hands = Tampoco con { $most } personas repartiendo los pasos.
pickup-one-plate = No en { $limit }: solo los toques de un plato llevan { $touch }.
pickup-plating-only = Solo el emplatado: suma tu propio calor, traslado y revisión.
pickup-tasks = Personas { $tasks }.
pickup-task = { $who }: { $steps }
pickup-in-turn = { $steps }, platos por turnos
pickup-step = { $component } { $technique }
pickup-sum = Un plato { $touch } s, luego { $more } x { $largest } s: { $time }. { $limit } es un plato cada { $takt } s.
pickup-own-pace = Al ritmo propio de esta cocina, { $ratio } x estándar: { $time }.
pickup-how = Escribe los platos y luego los minutos, como `pickup 120 in 20` o `pickup 11 120 in 20`; `with 4` para cuatro personas.
pickup-out-of-range = Puedo planear de 1 a { $plates } platos, de 1 a { $hands } personas y 12 horas como máximo, como `pickup 120 in 20`.

hands = { $many ->
    [one] una persona
   *[other] { $many } personas
 }
hands-first = { $many ->
    [2] Dos personas
    [3] Tres personas
    [4] Cuatro personas
    [5] Cinco personas
    [6] Seis personas
    [7] Siete personas
    [8] Ocho personas
    [9] Nueve personas
    [10] Diez personas
   *[other] { $many } personas
 }
counted = { $many ->
    [one] una
   *[other] { $many }
 }
counted-first = { $many ->
    [one] Una
   *[other] { $many }
 }

## What the steps are called (a technique of the house's own by its name)

doing = { $technique ->
    [set] asentar
    [place] colocar
    [pair] colocar a dos manos
    [leaf] poner hojas
    [dot] poner puntos
    [bead] poner gotas
    [mound] poner el montículo
    [pull] arrastrar
    [line] trazar la línea
    [brush] pincelar
    [crumb] poner el crumble
    [shingle] escalonar
    [sauce] salsear
    [lean] apoyar
    [twirl] enrollar
    [quenelle] formar la quenelle
    [two-spoon-quenelle] formar la quenelle
    [ring-fill] llenar el aro
    [press] prensar
    [lift] levantar el aro
    [wipe] limpiar
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many ->
        [one] { $many } hoja
       *[other] { $many } hojas
     }
    [dot] { $many ->
        [one] { $many } punto
       *[other] { $many } puntos
     }
    [bead] { $many ->
        [one] { $many } gota
       *[other] { $many } gotas
     }
    [shingle] { $many ->
        [one] { $many } lámina
       *[other] { $many } láminas
     }
    [twirl] { $many ->
        [one] { $many } rollo
       *[other] { $many } rollos
     }
    [quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [two-spoon-quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [sauce] { $many ->
        [one] { $many } cucharada
       *[other] { $many } cucharadas
     }
   *[other] { $many } { $component }
 }
