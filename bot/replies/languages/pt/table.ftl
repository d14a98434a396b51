## Mesas

table-head = { $name } (exercício { $label }), { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 } de { $wide } cm, numa mesa de { $length } x { $depth } cm:
table-own = { $name } (exercício { $label }): { $pattern } precisa de uma mesa de { $length } x { $depth } cm.
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern }: { $length } x { $depth } cm, { $verdict }.
table-fits = cabe
table-short = faltam { $cm } cm
table-too-deep = { $cm } cm fundo demais
table-out-of-reach = recusado, a terceira fileira fica fora do alcance de um lado
table-fewer = O que cabe: { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 }, { $pattern }, { $length } x { $depth } cm (chef: `plates { $plates }`, `rows { $rows }`; outra disposição).
table-none-fits = Não cabe nem um prato.
table-one-row = Uma fileira: { $numbers }. Vá num passo e volte no seguinte, para que ninguém ande de mãos vazias.
table-two-rows = Fileira de lá: { $far }; fileira de cá: { $near }. Anda-se por essa ordem de números, ida e volta.
table-walk = { $reach ->
    [near] Duas fileiras: ande pelos dois lados, ou quem é mais baixo alcança a marca de lá ({ $depth } cm) sem se debruçar sobre a comida, de mangas presas.
   *[far] Duas fileiras: ande pelos dois lados; { $depth } cm é longe demais para alcançar de um.
 }
table-plate-unknown = Não consigo saber a largura do prato ({ $plate }). O exercício diz isso como `plate flat 27 cm china`.
table-how = Escreva o comprimento e a profundidade da mesa em cm, como `table 180x70`, ou `table 11B` para o que um exercício precisa.
help-table = `table 180x70`: disposições que cabem numa mesa de tantos cm; `table` ou `table 11B`: o que precisa a disposição do exercício.
