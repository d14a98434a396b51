## Tables

table-head = { $name } (ejercicio { $label }), { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 } de { $wide } cm, en una mesa de { $length } x { $depth } cm:
table-own = { $name } (ejercicio { $label }): { $pattern } ocupa una mesa de { $length } x { $depth } cm.
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern }: { $length } x { $depth } cm, { $verdict }.
table-fits = cabe
table-short = faltan { $cm } cm de largo
table-too-deep = sobran { $cm } cm de fondo
table-out-of-reach = no se admite, la tercera fila no se alcanza desde un lado
table-fewer = Lo que cabe: { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 }, { $pattern }, { $length } x { $depth } cm (chef: `plates { $plates }`, `rows { $rows }`; otra disposición).
table-none-fits = No cabe ni un plato.
table-one-row = Una fila: { $numbers }. Ve en un paso y vuelve en el siguiente, para que nadie camine en vacío.
table-two-rows = Fila lejana: { $far }; fila cercana: { $near }. Se camina en ese orden de números, ida y vuelta.
table-walk = { $reach ->
    [near] Dos filas: camina por ambos lados, o que la persona más baja alcance la marca lejana ({ $depth } cm) sin inclinarse sobre la comida, con las mangas sujetas.
   *[far] Dos filas: camina por ambos lados; { $depth } cm es demasiado para alcanzar desde uno.
 }
table-plate-unknown = No sé qué ancho tiene el plato ({ $plate }). El ejercicio lo dice como `plate flat 27 cm china`.
table-how = Escribe el largo y el fondo de la mesa en cm, como `table 180x70`, o `table 11B` para lo que ocupa un ejercicio.
help-table = `table 180x70`: disposiciones que caben en una mesa de esos cm; `table` o `table 11B`: lo que ocupa la del ejercicio.
