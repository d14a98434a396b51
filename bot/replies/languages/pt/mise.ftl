## Mise

mise-head = Mise para { $name } (exercício { $label }), { $runs ->
    [one] uma rodada
   *[other] { $runs } rodadas
 } de { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 }, com { $spare } % de reserva incluída. Louça: { $total }{ $runs ->
    [one] {""}
   *[other] , lavada entre rodadas
 }.
mise-need = - { $component }: { $total } ({ $plate } por prato){ $where ->
    [nowhere] {""}
    [measured] , e { $stays } que ficam em: { $tool }
   *[unmeasured] , e o que fica em: { $tool }
 }
mise-tools = Utensílios: { $tools }.
mise-back = Volta para outra rodada: { $list }.
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }({ $runs } rodadas no máximo)
 }
mise-lives = Aguenta no prato: { $list }.
mise-life = { $component } { $life }
mise-same-day = Frio até à rodada, deitado fora no mesmo dia: { $list }.
mise-how = Diga para quantas rodadas, de 1 a { $most }, e que exercício, como `mise 2` ou `mise 2 11B`.
help-mise = `mise` ou `mise 2 11B`: tudo para uma rodada, ou para duas do exercício 11B.

## Ordens de trabalho

order-head = { $name } (exercício { $label }), { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 }. Tempo, e quanto espera cada componente:
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] : { $waits }
 }
order-component = passo a passo
order-waves = ondas de { $wave }
order-plate = prato a prato
order-own = { $way } (como definido)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (aguenta { $life })
order-best-life = A maior que respeita todas as durações: { $way }.
order-none-keeps = Nenhuma respeita todas as durações. Menos pratos, ou uma duração maior.
order-fastest = A mais rápida: { $way }. Com uma duração num passo (`; life 90s`) escolho a maior que a respeita.
help-order = `order` ou `order 6`: ordens de trabalho comparadas, os tempos e quanto espera cada componente.

## Custos (do chef, em privado)

cost-head = { $name } (exercício { $label }), o que uma rodada de { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 } perde dos substitutos:
cost-line = - { $component }: { $parts }; { $total } x { $price } = { $cost }
cost-unpriced = - { $component }: { $parts }; ainda sem preço, como `price { $component } 0.02` por um{ $unit ->
    [piece] {""}
   *[other] { " " }{ $unit }
 }
cost-used-up = { $amount } gasto
cost-again = { $amount } para pratos montados de novo
cost-thrown = { $amount } deitado fora no fim do dia
cost-week = Esta semana: { $runs } rodadas, { $redo } a refazer, { $rebuilt } remontados.
cost-run = Uma rodada: { $run }. Os substitutos de um prato montado de novo: { $again }.
cost-pass = { $redo ->
    [one] { $redo } prato a refazer no passe seria { $redo } prato de { $dish }: { $cost }.
   *[other] { $redo } pratos a refazer no passe seriam { $redo } pratos de { $dish }: { $cost }.
 }
cost-no-dish = `price dish 14.50` diz quanto paga um cliente pelo prato verdadeiro.
price-currency = Os preços são em { $currency }. Os dados antes ficam com os mesmos números.
price-currency-first = Diga primeiro a moeda da cozinha, pelo código, como `price EUR`.
price-which-currency = Não conheço a moeda { $code }. Envie o código de três letras, como `price EUR`.
price-too-fine = { $currency } { $digits ->
    [0] não tem moeda menor
   *[other] tem { $digits } casas decimais
 }. Escreva como `price dish { $example }`.
price-no-component = Este exercício não tem { $component }; tem { $components }.
price-how = Escreva como `price courgette 0.04` por uma peça, ml ou g, `price dish 14.50`, ou `price EUR`.
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR`; `price` ou `price 6`: quanto custa uma rodada, dito em privado.
