## The trend of first runs

help-trend = `trend` o `trend 6`: mis primeras tandas del día, más rápidas o por azar, y la próxima, en privado.
no-trend = Aún no hay ninguna tanda. Tu evolución empieza con la primera.
trend-few = { $count } de { $needed } primeras tandas. Demasiado pronto para decirlo.
trend-runs = { $drill }, primera tanda del día: { $runs }.
trend-median = Mediana { $median }.
trend-luck = { $drill }, primera tanda del día, últimas { $count }: mediana { $median }, ningún cambio que se distinga del azar.
trend-real = { $drill }, primera tanda del día, últimas { $count }: de { $first } a { $last }, cerca de { $percent } % por tanda, dos cálculos coinciden: real.
trend-redo = Rechazos de { $was } % a { $now } %{ $verdict ->
    [faster-fewer] : más rápido y más limpio
    [faster-same] : más rápido, igual de limpio
    [faster-more] : más rápido, más rechazos: mantén la velocidad
    [slower-fewer] : más lento pero más limpio: bien, sigue así
    [slower-same] : más lento, igual de limpio
    [slower-more] : más lento, más rechazos: prueba una semana más ligera
   *[none] {""}
}.
trend-all = Las tandas: { $runs }.
trend-next = Próxima tanda: de { $low } a { $high } aproximadamente, cuatro veces de cada cinco.
trend-short = * una tanda corta, llevada a la disposición completa por sus toques.
trend-carried = ({ $letter }) hecha en la disposición { $letter }, trasladada por ritmo nivelado: estándar { $there } allí, { $here } aquí.
trend-slowest = Lo más lento frente al estándar: la técnica { $technique }.
level-question =
    { $drill }: tus últimas { $count } primeras tandas no se apartan más de 3 %, con 90 % de los platos o más buenos. ¿Ayudaría algo de esto?
    1. Cambiar el orden de trabajo: `order` los compara.
    2. Practicar solo el paso más costoso.
    3. Menos platos con una regla más estricta.
    4. Una semana ligera.
    5. Un paso más difícil.
