## Dots measured on a plate

help-dots = `dots 10 10 9 11 10`: si estos anchos en mm son parejos; `dots 10 10 9 of 10` frente al ancho pedido; `dots 14 12 9 of 14 12 10` en degradado.
dots-even = Media { $mean }, dispersión { $spread } %: aceptado.
dots-uneven = Media { $mean }, dispersión { $spread } %: rechazado, parejo es { $most } % como máximo.
dots-as-called = Media { $mean }, dispersión { $spread } %, cada uno a { $leeway } mm o menos de { $called }: aceptado.
dots-off-size = Media { $mean }, dispersión { $spread } %: rechazado, el punto { $nth } ({ $width }) se aparta más de { $leeway } mm de { $called }.
dots-graded = { $count } puntos, cada uno al menos { $step } mm menor, los extremos a { $leeway } mm o menos de { $first } y { $last }: aceptado.
dots-not-graded = Rechazado: el punto { $nth } ({ $width }) no es al menos { $step } mm menor que el anterior ({ $before }).
dots-off-ends = Rechazado: el punto { $nth } ({ $width }) se aparta más de { $leeway } mm de { $called }.
dots-too-few = Mide dos puntos o más, como `dots 10 10 9 11 10`.
dots-too-many = Mide { $most } puntos como máximo; es una comprobación al azar.
dots-unreadable = No pude leer «{ $typed }» como un ancho en mm; escribe los anchos separados por espacios, como `dots 10 9.5 11`.
dots-out-of-range = Un punto mide más de 0 y { $most } mm como máximo; envía los anchos otra vez, como `dots 10 10 9 11 10`.
dots-how-called = Después de `of` escribe un ancho, como `dots 10 10 9 of 10`, o uno por punto, como `dots 14 12 9 of 14 12 10`.
