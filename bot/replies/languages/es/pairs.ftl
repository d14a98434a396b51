## Pair runs

pair-drill = { $name }, entre dos
pair-names = { $one } y { $other }
kept-for-pair = Guardado para { $runner } y { $partner }. { $line }
pair-by-one-of-two = Una tanda entre dos la envía uno de los dos: `3:02 8/8 with @lio`, sin `for`.
pair-with-whom = El ejercicio { $drill } está dispuesto para dos. Di con quién, como `3:02 8/8 with @lio`.
pair-with-self = Una tanda entre dos necesita a otra persona; nómbrala, como `3:02 8/8 with @lio`.
pair-one-plate = El ejercicio { $drill } tiene un plato, así que no hay nada que repartir. Envíalo sin `with`.
