## Boards

board-head = { $drill }, { $week }, cerrada
board-open = { $drill }, esta semana, abierta hasta { $until }
board-own = Frente al tiempo esperado de cada cual: { $rows }
board-fast = Rápidas: { $rows }
board-steady = Regulares: { $rows }
board-clean = Limpias: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [one] { $tries } intento
   *[other] { $tries } intentos
 })
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % más rápido
board-as-expected = como se esperaba
board-slower = { $percent } % más lento
too-close = demasiado cerca para distinguir
too-close-row = { $row }, demasiado cerca para distinguir
board-not-yet = Aún no hay pizarra { $kind }. Necesita tandas de tres cocineros que alguien haya visto y confirmado levantando la mano.
board-not-yet-any = Aún no hay pizarra. Necesita tandas de tres cocineros que alguien haya visto y confirmado levantando la mano.
board-yours = Lo tuyo en { $kind }: puesto { $place }, { $figures }.
which-board = Las pizarras son `own`, `fast`, `steady`, `clean`, `house`, `quarter` y `group`, como `!board fast`.
no-live-drill = Aquí no hay ningún ejercicio abierto. El chef publica uno con `!post`.
a-cook = una persona de cocina
light-no-board = Una semana ligera: corta, ordenada, sin pizarra.

## The headline: against one's own

own-not-yet = Aún no hay pizarra frente al tiempo propio. Necesita tandas vistas de tres cocineros y otras anteriores con que compararlas.
expected-on-it = { $actual }; esperado { $expected }, { $runs ->
    [one] lo de tu tanda anterior
   *[other] la mediana de tus últimas { $runs } tandas
 } en este ejercicio.
expected-fitted = { $actual }; esperado { $expected }, ajustado a partir de tus tandas anteriores.
expected-held = { $actual }; esperado { $expected }, que crece un 2 % por semana como máximo.
expected-new = { $actual }; esperado { $expected }: estándar { $standard } x lo habitual en ti { $usual }.
expected-new-drill = { $actual }; esperado { $expected }: estándar { $standard } x lo habitual en ti { $usual } x { $drill } según les fue a los demás.

## The house

board-house = Casa: { $percent } % de los cocineros dentro de su propio tiempo esperado, { $plates } platos limpios.
board-house-plates = Casa: { $plates ->
    [one] { $plates } plato limpio
   *[other] { $plates } platos limpios
 }.

## Off boards and on

boards-are-off = Desde ahora no sales en las pizarras públicas. Tus tandas y mejores tiempos quedan, y `board` aquí te sigue diciendo los tuyos.
boards-are-on = Sales otra vez en las pizarras públicas.
boards-on-or-off = Envía `boards off` o `boards on`.
help-boards = `boards off` te saca de las pizarras públicas, tu historial queda; `boards on` te devuelve a ellas.

## Closing

closed = { $drill }: la semana está cerrada.
closed-no-board = Sin pizarra; una pizarra necesita tandas con testigo de tres cocineros. Cada tanda cuenta igualmente para quien la hizo.
board-correction = Corrección de la pizarra cerrada de { $drill }, { $week }. { $board }
nothing-to-close = Esa pizarra ya está cerrada.
