## O que cabe num intervalo

help-slot = `slot 25` ou `slot 6 25`: quantas rodadas honestas cabem em 25 minutos, julgadas e com tudo reposto; em privado, com a sua mediana.
slot-fits = { $runs ->
    [one] Cabe uma rodada honesta
   *[other] Cabem { $many } rodadas honestas
 } de { $drill } em { $slot }.
slot-none = Nenhuma rodada honesta de { $drill } cabe em { $slot }; o intervalo mais curto em que cabe uma é { $shortest }.
slot-day-limit = Caberiam mais; para as mãos são { $runs } por dia no máximo.
slot-each = Cada uma { $each }: rodada { $run } ({ $by ->
    [own] a sua mediana de { $count } rodadas
   *[standard] tempo padrão
 }), julgamento { $judging }, reposição { $reset }.
slot-sum = Preparar { $laying }, { $runs } x { $each }, arrumar { $clearing }: { $taken }.
slot-how = Escreva os minutos, como `slot 25`, ou `slot 6 25` para o exercício 6.

## Folhas de chamadas

help-calls = `calls 2` ou `calls 6 2`: uma folha de nível 1 a 3 para um colega ler em voz alta, enviada em privado; `calls 2 sheet 417` dá a mesma outra vez.
calls-head = { $drill }, chamadas de nível { $level }, folha { $number }: { $plates } pratos, { $touches } toques, padrão { $standard }.
calls-sum = { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 } { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s de mãos paradas
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s retirados
 } = { $total } s.
calls-read = Para o colega que lê em voz alta, com o relógio a contar; espere com uma chamada enquanto houver faca, chama ou frigideira quente na mão.
call-how-long = { $at } “Quanto falta?”
call-send-four = { $at } “Mande quatro já.”
call-swap = { $at } “Prato { $plate } sem { $component }.”
call-one-more = { $at } “Mais um prato.”
call-wait = { $at } “Esperar, mãos paradas { $wait } segundos.”
calls-send = Anote cada resposta a “Quanto falta?” e compare no fim. Envie a rodada como `{ $example }`.
calls-which-level = Que nível? `calls 1`, `calls 2` ou `calls 3`, ou `calls 6 2` para o exercício 6.
calls-level-too-high = Esta rodada é curta demais para o nível { $level }: { $calls } chamadas com pelo menos { $gap } s entre elas, nenhuma no começo, no fim ou sobre calor. `calls { $highest }` cabe.
calls-too-short = Esta rodada é curta demais para chamadas; disponha primeiro mais pratos.
