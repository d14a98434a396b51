## Mise

mise-head = Mise en place de { $name } (ejercicio { $label }), { $runs ->
    [one] una tanda
   *[other] { $runs } tandas
 } de { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 }, con { $spare } % de reserva incluida. Vajilla: { $total }{ $runs ->
    [one] {""}
   *[other] , lavada entre tandas
 }.
mise-need = - { $component }: { $total } ({ $plate } por plato){ $where ->
    [nowhere] {""}
    [measured] , y { $stays } que se quedan en: { $tool }
   *[unmeasured] , y lo que quede en: { $tool }
 }
mise-tools = Utensilios: { $tools }.
mise-back = Vuelve para otra tanda: { $list }.
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }({ $runs } tandas como máximo)
 }
mise-lives = Aguanta en el plato: { $list }.
mise-life = { $component } { $life }
mise-same-day = En frío hasta la tanda, se tira el mismo día: { $list }.
mise-how = Di para cuántas tandas, de 1 a { $most }, y qué ejercicio, como `mise 2` o `mise 2 11B`.
help-mise = `mise` o `mise 2 11B`: todo para una tanda, o para dos del ejercicio 11B.

## Working orders

order-head = { $name } (ejercicio { $label }), { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 }. El tiempo, y cuánto espera cada componente:
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] : { $waits }
 }
order-component = paso a paso
order-waves = oleadas de { $wave }
order-plate = plato a plato
order-own = { $way } (lo fijado)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (aguanta { $life })
order-best-life = El mayor que respeta todo lo que aguantan: { $way }.
order-none-keeps = Ninguno respeta lo que aguantan. Menos platos, o algo que aguante más.
order-fastest = El más rápido: { $way }. Con un aguante en un paso (`; life 90s`) elijo el mayor que lo respeta.
help-order = `order` o `order 6`: comparación de órdenes de trabajo, sus tiempos y cuánto espera cada componente.

## Costs (the chef's, in private)

cost-head = { $name } (ejercicio { $label }), lo que una tanda de { $plates ->
    [one] { $plates } plato
   *[other] { $plates } platos
 } pierde de sus sustitutos:
cost-line = - { $component }: { $parts }; { $total } x { $price } = { $cost }
cost-unpriced = - { $component }: { $parts }; aún sin precio, como `price { $component } 0.02` por uno{ $unit ->
    [piece] {""}
   *[other] { " " }({ $unit })
 }
cost-used-up = { $amount } gastado
cost-again = { $amount } por platos rehechos
cost-thrown = { $amount } a la basura al final del día
cost-week = Esta semana: { $runs } tandas, { $redo } rechazados, { $rebuilt } rehechos.
cost-run = Una tanda: { $run }. Los sustitutos de un plato montado otra vez: { $again }.
cost-pass = { $redo ->
    [one] { $redo } rechazo en el pase sería { $redo } plato de { $dish }.
   *[other] { $redo } rechazos en el pase serían { $redo } platos de { $dish }: { $cost }.
 }
cost-no-dish = `price dish 14.50` dice lo que paga un cliente por el plato real.
price-currency = Los precios van en { $currency }. Los dados antes conservan sus cifras.
price-currency-first = Di primero la moneda de la cocina, por su código, como `price EUR`.
price-which-currency = No conozco la moneda { $code }. Envía su código de tres letras, como `price EUR`.
price-too-fine = { $currency } tiene { $digits ->
    [0] su moneda menor sin decimales
   *[other] { $digits } cifras tras el punto
 }. Escríbelo como `price dish { $example }`.
price-no-component = Este ejercicio no tiene { $component }; tiene { $components }.
price-how = Escríbelo como `price courgette 0.04` por una pieza, ml o g, `price dish 14.50`, o `price EUR`.
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR`; `price` o `price 6`: lo que cuesta una tanda, en privado.
