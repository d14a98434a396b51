## Pictures (short, they stand in little room; the message beside them says all of it)

picture-guest = cliente
picture-standard = estándar
picture-touches = { $touches ->
    [one] toque por plato
   *[other] toques por plato
 }, { $run } en la tanda
picture-redo = un rechazo
picture-gate = de { $plates } buenos para tener tiempo
picture-free = Solo el contorno: el chef indica el lugar.

## Cautions in a few words (the message beside the picture says them whole)

short-mandoline = Mandolina: protector y guante.
short-heat = Cosas calientes: paño seco, «caliente por detrás».
short-floor = El suelo, siempre seco.
short-cold = En frío.
short-puree = Puré en frío, se tira el mismo día.
short-cooked-starch = Enfriado rápido, se tira el mismo día.
short-bottle = Nada vuelve al biberón.
short-pieces-counted = Cuenta las piezas al sacar y al guardar.
short-strain = Tres tandas al día.
short-chemicals = Sin químicos de limpieza cerca.
short-breakage = Rotura: para, que aparezcan todos los trozos.
short-hands = Lávate las manos antes y después del teléfono.
short-allergens = Lee cada etiqueta; el contacto cuenta.
short-never-served = Nunca se sirve, se prueba ni se devuelve.

## The table plan

picture-walk = Camina en el orden de los números, ida y vuelta.
picture-reach = Alcance desde el lado cercano: { $often } cm una y otra vez, { $seldom } cm de vez en cuando (a trazos).

## The trend

picture-redo-share = Rechazos, % de los platos
picture-line = Línea: el centro estable. Banda: lo que tus tandas suelen apartarse de él. Barra al final: la próxima tanda.
picture-ring = Círculo: un mejor tiempo.

## The week's close

picture-own = Frente al tiempo esperado de cada cual
picture-expected = La línea es el tiempo esperado de cada cual; la barra, cuánto más rápido.

## On paper

help-paper = `paper` o `paper 6`: el ejercicio en una hoja A4 para imprimir, con una tabla para las tandas.
paper-here = { $drill } en papel, con una tabla para las tandas. Envía las tandas después, como `yesterday 3:02 8/8`.
paper-date = Fecha
paper-name = Nombre
paper-clock = Tiempo
paper-good = Platos buenos
paper-reason = Motivo del rechazo
paper-watched = Testigo
