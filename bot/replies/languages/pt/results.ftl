## Um resultado

heard = Anotado. { $clock }, { $accepted } de { $plates }{ $rebuilt ->
    [0] {""}
   *[other] , { $rebuilt } remontados
 }. { $pace } s por toque, { $levelled } nivelado.
net = Líquido { $net } ({ $redo ->
    [one] um a refazer custou
   *[other] { $redo } a refazer custaram
 } { $charge }). { $pace } s por toque.
no-time = { $accepted ->
    [one] Um prato limpo guardado
    [2] Dois pratos limpos guardados
    [3] Três pratos limpos guardados
    [4] Quatro pratos limpos guardados
    [5] Cinco pratos limpos guardados
    [6] Seis pratos limpos guardados
    [7] Sete pratos limpos guardados
    [8] Oito pratos limpos guardados
    [9] Nove pratos limpos guardados
    [10] Dez pratos limpos guardados
    [11] Onze pratos limpos guardados
    [12] Doze pratos limpos guardados
   *[other] { $accepted } pratos limpos guardados
 }. Sem tempo nesta rodada; procure { $gate ->
    [one] um
    [2] dois
    [3] três
    [4] quatro
    [5] cinco
    [6] seis
    [7] sete
    [8] oito
    [9] nove
    [10] dez
    [11] onze
    [12] doze
   *[other] { $gate }
 }.
none-accepted = Guardado, sem tempo: nenhum prato passou nesta rodada. Procure { $gate ->
    [one] um prato bom
   *[other] { $gate } pratos bons
 }.
short = Rodada curta, { $accepted } de { $attempted } montados. { $pace } s por toque. Guardada para a sua tendência.
stopped = Parada depois de { $attempted ->
    [one] { $attempted } prato
   *[other] { $attempted } pratos
 }. Guardada só para você, em nenhum quadro.
rebuilt-hint = Se foi remontado dentro do tempo: `{ $clock } { $plates }/{ $plates } rebuilt { $redo }`.
corrected = { $line } (corrigido)
which-line = Linha { $number }: { $problem }

## Observações a um resultado

settling-in = Adaptação, rodada { $nth } de { $of }: guardada, ainda em nenhum quadro.
day-limit = { $today ->
    [3] São três
    [4] São quatro
    [5] São cinco
   *[other] São { $today }
 } hoje. Guardada, não contada; descanse as mãos.
board-closed = Guardada; esse quadro está fechado.
last-week = Dia de cozinha da noite de { $day }, quadro da semana passada (aberto até { $until }). Contada.
