## Perguntas e o que enviar em vez disso

how-many-good = Quantos dos { $plates } ficaram bons?
one-left = O exercício { $drill } tem { $plates } pratos. { $left ->
    [one] Ficou um
   *[other] Ficaram { $left }
 } por montar? `yes`, ou a contagem de novo, como `{ $again }`.
under-a-third = { $clock } é menos de um terço do tempo padrão. Está certo? `yes`, ou o tempo de novo.
same-again = Igual à sua rodada das { $at }. É uma segunda rodada? `again`. Se não for, não faça nada.
nothing-to-answer = Não há pergunta aberta com você agora. Se era sobre uma rodada, envie a rodada de novo, como `3:02 8/8`.
no-drill-yet = Ainda não foi publicado exercício aqui. Indique um, como `6 3:02 8/8` ou `!spec 6`; `!drills` mostra a lista.
no-such-drill = Não há exercício { $label } aqui. `!drills` mostra a lista.
unknown-word = Não conheço essa palavra. Parecidas: { $near }. `!words` mostra todas.
unknown-word-no-hint = Não conheço essa palavra. `!words` mostra as que conheço.
chef-only = Essa palavra é do chef.
chef-only-post = Quem define os exercícios é o chef. Quer enviar o seu como ideia?
which-mate = Não consigo saber quem é { $name } aqui. Mencione a pessoa, ou escreva um nome que só uma pessoa tenha.
mate-not-joined = { $name } ainda não entrou na contagem. Basta dizer `!join`; depois envie de novo.
which-kitchen = Você está em { $count } cozinhas. Qual delas? { $list }

## O resultado de um colega

waiting-for-mate = À espera de que { $name } diga `yes`.
kept-for-mate = Guardado em seu nome, { $name }.
not-kept = Não guardado.

## O que enviar em vez disso

edit-moves-run = Uma edição não pode passar uma rodada para outro exercício nem para outra pessoa. Apague a mensagem e envie a rodada de novo.
edit-unreadable = Não consegui ler essa edição, por isso a sua rodada fica como estava. Escreva como `3:02 8/8`, ou apague a mensagem para retirar a rodada.
too-many-plates = O exercício { $drill } tem { $plates } pratos. Se você remontou { $over ->
    [one] um
   *[other] { $over }
 }: `{ $clock } { $good }/{ $plates } rebuilt { $over }`.
far-too-many-plates = O exercício { $drill } tem { $plates } pratos; envie quantos dos { $plates } ficaram bons, como `{ $clock } { $plates }/{ $plates }`.
count-does-not-add-up = Bons, a refazer e por montar têm de somar { $plates } pratos; envie a contagem de novo, como `3:20 { $plates }/{ $plates }`.
more-mended-than-good = Os pratos remontados e corrigidos estão entre os bons, e { $mended } é mais do que { $good }; envie a linha de novo.
plates-out-of-range = Um exercício tem de 1 a { $most } pratos; escreva como `plates 8`.
rows-out-of-reach = Uma fileira, ou no máximo { $most }, para que ninguém se debruce sobre a comida; escreva como `plates 8 rows 2`.
more-rows-than-plates = { $rows } fileiras precisam de pelo menos { $rows } pratos; escreva como `plates 8 rows 2`.
waves-do-not-fit = Uma onda tem pelo menos 2 pratos e menos do que os { $plates } do exercício; escreva como `working waves 4`.
draft-name = Dê ao exercício um nome de no máximo { $most } caracteres na primeira linha, como `!draft Slipway`.
no-steps = Um exercício precisa de passos; escreva como `1. 7 courgette, shingle, at 10-4`.
no-plates = Quantos pratos? Acrescente uma linha como `plates 8 rows 2`.
steps-out-of-order = Li o passo { $read } onde devia vir o passo { $wanted }; numere os passos 1, 2, 3.
too-many-steps = No máximo { $most } passos; divida o prato em dois exercícios.
unreadable-line = Não consegui ler “{ $line }”, ou está lá duas vezes; os passos são como `2. 1 tea jus, sauce, at 7`, as outras linhas começam por plates, rows, accept, plate, mise, start, stop ou working.
not-a-number = Escreva um número inteiro depois da palavra, como `!plates 14`.
unreadable-step = Não consegui ler “{ $line }” como passo; escreva como `2 triangle, lean, at 11`.
pieces-out-of-range = Em “{ $line }” a quantidade tem de ir de 1 a { $most }, como `2 triangle, lean`.
unknown-technique = Não conheço a técnica “{ $word }”. Parecidas: { $near }.
unknown-technique-no-hint = Não conheço a técnica “{ $word }”. Conheço { $near }.
unknown-class = “{ $word }” não é classe de substituto; escolha uma de { $classes }.
unreadable-detail = Não consegui ler “{ $detail }”; depois de ponto e vírgula vem class, life, label ou price, como `; life 90s ; label wheat`.
clock-needed = Tenho { $good } de { $plates }; preciso do tempo, como `3:02 { $good }/{ $plates }`.
clock-missing = Preciso também do tempo, como `3:02 8/8`.
count-needed = Tenho { $clock }; preciso de saber quantos ficaram bons, como `{ $clock } 8/8`.
line-unreadable = Não consegui ler “{ $line }”. Envie o tempo e os pratos bons, como `3:02 8/8`.
too-many-lines = São { $lines } linhas; envie no máximo { $most } numa mensagem.
one-run-a-line = Uma rodada por linha, por favor: um tempo e uma contagem, como `3:02 8/8`.
said-twice = “{ $word }” está lá duas vezes; envie a linha de novo com a palavra uma só vez.
how-many = Quantos? Escreva o número depois da palavra, como `{ $word } 1`.
at-unreadable = Não consegui ler { $typed } como hora do dia; escreva como `at 02:10`.
clock-or-decimal = São { $minutes } min { $seconds } s ou { $decimal } minutos? Envie `{ $clock }` ou `{ $converted }`.
clock-in-decimals = { $decimal } minutos seriam { $converted }. Envie `{ $converted }`, ou o tempo tal como estava.
clock-unreadable = Não consegui ler { $typed } como tempo; escreva como `8:05`.
clock-past-59 = `{ $typed }` não pode ser um tempo: minutos e segundos vão de 00 a 59. Envie de novo, como `8:05`.
clock-over-a-day = { $typed } é mais do que um dia; escreva o tempo da rodada como `8:05`.
