## A tendência das primeiras rodadas

help-trend = `trend` ou `trend 6`: as minhas primeiras rodadas do dia, mais rápido ou sorte, e a próxima, em privado.
no-trend = Ainda sem rodada. A sua tendência começa com a primeira.
trend-few = { $count } de { $needed } primeiras rodadas. Cedo demais para dizer.
trend-runs = { $drill }, primeira rodada do dia: { $runs }.
trend-median = Mediana { $median }.
trend-luck = { $drill }, primeira rodada do dia, últimas { $count }: mediana { $median }, nenhuma mudança que se distinga da sorte.
trend-real = { $drill }, primeira rodada do dia, últimas { $count }: de { $first } a { $last }, cerca de { $percent } % por rodada, dois exames concordam: é real.
trend-redo = A refazer de { $was } % para { $now } %{ $verdict ->
    [faster-fewer] : mais rápido e mais limpo
    [faster-same] : mais rápido, tão limpo como antes
    [faster-more] : mais rápido, mais a refazer: mantenha a velocidade
    [slower-fewer] : mais lento mas mais limpo: bom, continue
    [slower-same] : mais lento, tão limpo como antes
    [slower-more] : mais lento, mais a refazer: experimente uma semana mais leve
   *[none] {""}
}.
trend-all = As rodadas: { $runs }.
trend-next = Próxima rodada: cerca de { $low } a { $high }, quatro vezes em cinco.
trend-short = * uma rodada curta, levada à disposição completa pelos toques.
trend-carried = ({ $letter }) feita na disposição { $letter }, trazida pelo ritmo nivelado: padrão { $there } lá, { $here } aqui.
trend-slowest = O mais lento face ao padrão: { $technique }.
level-question =
    { $drill }: as suas últimas { $count } primeiras rodadas ficam dentro de 3 %, com 90 % dos pratos bons ou mais. Ajudaria alguma destas coisas?
    1. Mudar a ordem de trabalho: `order` compara-as.
    2. Treinar sozinho o passo mais caro.
    3. Menos pratos com uma regra mais exigente.
    4. Uma semana leve.
    5. Um passo mais difícil.
