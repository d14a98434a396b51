## The drill card

card-head = { $name } (ejercicio { $label }), { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 }, { $rows ->
    [one] una fila
   *[other] { $rows } filas
 }.
card-head-draft = { $name } (borrador), { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 }, { $rows ->
    [one] una fila
   *[other] { $rows } filas
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , con { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , a las { $at }
   *[words] , { $at }
 }
card-accept = Bueno si: { $accept }.
card-work = { $touches ->
    [one] { $touches } toque
   *[other] { $touches } toques
 } por plato, { $run } en la tanda. Estándar { $standard }.
card-targets = Inicial { $opening }, casa { $house }, ágil { $brisk }.
card-redo = Un rechazo cuesta unos { $redo }. Con menos de { $gate } platos buenos hay cuenta y no hay tiempo; en el pase todos los platos tienen que estar bien.
card-redo-one = En el pase todos los platos tienen que estar bien.
card-send = Envía el tiempo y los platos buenos, como `{ $example }`. Una tanda cuenta para las pizarras cuando alguien que la vio le pone la mano levantada.
card-table = En { $plate }: una mesa de { $length } x { $depth } cm.
card-reaches = Las dos manos a la vez: { $reaches } alcances por plato.
card-working-component = Un paso a lo largo de toda la fila, luego el siguiente.
card-working-plate = Un plato terminado, luego el siguiente.
card-working-waves = En oleadas de { $wave }.
card-pressure = Voces de nivel { $level }.
card-labels = Lee cada etiqueta, también el «puede contener»: { $labels }.
card-label = { $component } ({ $label })
card-caution = - { $caution }
card-take-care = Precauciones:
late = (con retraso)

## Cautions (the card lists those that fit; the local rules always close)

caution-mandoline = Mandolina: protector y guante anticorte, para antes del último tercio, se corta antes del reloj, nadie nuevo a solas.
caution-heat = Baño caliente a 45 grados como máximo, de base ancha, lejos del borde, cambiado en cada tanda; cosas calientes: paño seco, mango hacia dentro, se avisa «caliente por detrás».
caution-floor = Resbalan en el suelo: { $what }, agua. Un solo pasillo, un solo sentido; «stop» para el reloj.
caution-cold = En frío, tanto como permita la norma alimentaria local; fuera si se cae o pasa mucho rato sin frío: { $what }.
caution-puree = En frío, se tira el mismo día: { $what }. Si es de alubias blancas, de lata, nunca crudas remojadas.
caution-cooked-starch = Cocido, enfriado rápido, a 5 grados o menos, se tira el mismo día: { $what }.
caution-bottle = Nada vuelve de un plato a un biberón.
caution-pieces-counted = Se cuentan al sacar y al guardar: { $what }.
caution-strain = Tres tandas al día. Entumecimiento, hormigueo o dolor: para y acude a un profesional sanitario cualificado.
caution-chemicals = Los productos químicos de limpieza, lejos de la mesa.
caution-breakage = Si algo se rompe: para, tira la comida descubierta al alcance, usa cepillo, nunca las manos desnudas, comprueba que aparecen todos los trozos.
caution-hands = Lávate las manos antes y después del teléfono; los cortes, bajo tirita azul y guante de nitrilo.
caution-allergens = Ningún sustituto está libre de alérgenos. Cuenta el contacto, no solo comer; tu propia alergia se le dice al chef cara a cara, nunca aquí.
caution-never-served = La comida de práctica nunca se sirve, se prueba ni se devuelve: etiquétala «práctica, no comer» con la fecha.
caution-local-rules = Las normas locales de seguridad alimentaria, laborales y de seguridad, y tu chef, van primero.
