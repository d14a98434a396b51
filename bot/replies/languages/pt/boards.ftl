## Quadros

board-head = { $drill }, { $week }, fechado
board-open = { $drill }, esta semana, aberto até { $until }
board-own = Face ao próprio tempo esperado: { $rows }
board-fast = Rápidos: { $rows }
board-steady = Constantes: { $rows }
board-clean = Limpos: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [one] { $tries } tentativa
   *[other] { $tries } tentativas
 })
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % mais rápido
board-as-expected = como esperado
board-slower = { $percent } % mais lento
too-close = perto demais para separar
too-close-row = { $row }, perto demais para separar
board-not-yet = Ainda não há quadro { $kind }. São precisas três pessoas com rodadas que alguém viu e em que levantou a mão.
board-not-yet-any = Ainda não há quadro. São precisas três pessoas com rodadas que alguém viu e em que levantou a mão.
board-yours = O seu em { $kind }: lugar { $place }, { $figures }.
which-board = Os quadros são `own`, `fast`, `steady`, `clean`, `house`, `quarter` e `group`, como `!board fast`.
no-live-drill = Não há exercício aberto aqui. O chef publica um com `!post`.
a-cook = alguém da cozinha
light-no-board = Semana leve: curta, arrumada, sem quadro.

## O principal: face a si próprio

own-not-yet = Ainda não há quadro face ao próprio tempo. São precisas três pessoas com rodadas testemunhadas e outras anteriores para comparar.
expected-on-it = { $actual }; esperado { $expected }, o meio { $runs ->
    [one] da sua rodada anterior
   *[other] das suas últimas { $runs } rodadas
 } neste exercício.
expected-fitted = { $actual }; esperado { $expected }, ajustado pelas suas rodadas anteriores.
expected-held = { $actual }; esperado { $expected }, que sobe no máximo 2 % por semana.
expected-new = { $actual }; esperado { $expected }: padrão { $standard } x o seu habitual { $usual }.
expected-new-drill = { $actual }; esperado { $expected }: padrão { $standard } x o seu habitual { $usual } x { $drill } como os outros o acharam.

## A casa

board-house = Casa: { $percent } % das pessoas dentro do próprio tempo esperado, { $plates } pratos limpos.
board-house-plates = Casa: { $plates ->
    [one] { $plates } prato limpo
   *[other] { $plates } pratos limpos
 }.

## Fora dos quadros e de volta

boards-are-off = A partir de agora você está fora dos quadros públicos. As suas rodadas e os seus melhores ficam, e `board` aqui continua a dizer o seu lugar.
boards-are-on = Você está de novo nos quadros públicos.
boards-on-or-off = Envie `boards off` ou `boards on`.
help-boards = `boards off` tira você dos quadros públicos, o histórico fica; `boards on` põe de volta.

## Fecho

closed = { $drill }: a semana está fechada.
closed-no-board = Sem quadro; um quadro precisa de três pessoas com rodadas testemunhadas. Cada rodada conta na mesma para quem a fez.
board-correction = Correção ao quadro fechado de { $drill }, { $week }. { $board }
nothing-to-close = Esse quadro já está fechado.
