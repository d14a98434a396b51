## Antes e depois de uma rodada

help-declare = `declare` antes de uma rodada diz que ela conta, boa ou má: ocupa desde já uma das minhas cinco da semana. Envie o resultado como sempre.
help-clock = `clock` começa uma rodada cronometrada pela conversa, até `stop`. Marcada assim; não dá melhor nem lugar. O seu próprio relógio é melhor.
help-stop = `stop` termina uma rodada começada com `clock`, e pergunta quantos ficaram bons.
declared = Declarado: a sua próxima rodada em { $drill } conta, seja qual for.
declared-already = Você já declarou uma rodada; envie o resultado, como `3:02 8/8` ou `2:10 stopped 5`.
declare-when-joined = Declarar é para quem está na contagem: `!join` primeiro.
declare-no-board = O exercício { $drill } não tem quadro aberto esta semana, por isso não há nada a declarar. Envie a rodada como sempre.
chat-timed = Cronometrada pela conversa: não dá melhor nem lugar.
clock-not-started = Não há relógio seu a contar. `!clock` começa um; ou envie o tempo do seu próprio relógio, como `3:02 8/8`.
