## Julgar na sala e por fotos

help-judge = Em privado: as rodadas que esperam juiz, uma foto de cada vez e sem nome; `judge` de novo mostra a seguinte.
help-agree = Um juiz responde a uma rodada com `agree`, ou com `9 good` se passaram menos. Dois juízes que diferem: vale a contagem menor até vir um terceiro.
help-check = `check` mostra aos juízes as mesmas 12 fotos e quanto concordam; responda com `check` e doze sinais. O chef começa uma com `check start`.
judged = { $name }: { $good } de { $attempted } bons segundo os juízes. { $line } (corrigido)
judge-none = Nenhuma rodada espera por você.
judge-this = { $waiting ->
    [one] Espera { $waiting } rodada.
   *[other] Esperam { $waiting } rodadas. Esta:
 } { $drill }, { $clock }, enviada como { $good } de { $attempted }.
judge-photo = Foto: { $photo }
judge-answers = Responda `agree`, ou quantos passaram, como `{ $good } good`. Aberto até { $until }. `judge` mostra a seguinte.
judge-waiting = { $runs ->
    [one] { $runs } rodada espera
   *[other] { $runs } rodadas esperam
 } por um juiz. `judge` { $runs ->
    [one] mostra-a
   *[other] mostra-as
 }.
judges-only = Essa palavra é dos juízes. O chef diz quem julga: `!role @bastian judge`.
verdict-kept = Guardado: vale { $good } de { $attempted }.
verdict-how = Responda à mensagem da rodada com `agree`, ou com quantos passaram, como `9 good`.
verdict-own = Ninguém julga a própria rodada, nem a do parceiro. Peça a alguém que não esteve nela.
verdict-closed = Uma rodada pode ser julgada durante 48 horas; esta fica como está.
verdict-stopped = Uma rodada parada é só de quem a fez; não há nada a julgar.
verdict-too-many = Essa rodada tem { $attempted } pratos; envie quantos passaram, como `{ $attempted } good`.
verdict-several = Essa mensagem tem várias rodadas. Levante a mão nela para testemunhar todas; uma contagem precisa de uma rodada numa mensagem só sua.
verdict-gone = Essa rodada foi entretanto retirada. `judge` mostra a seguinte.
hand-same-name = Você e quem fez essa rodada têm o mesmo nome aqui, por isso não posso tomar você por outra pessoa. Peça a outra pessoa que julgue, ou mude o seu nome visível.
check-started = A aferição dos juízes está aberta, com as 12 fotos mais novas. Cada juiz diz `check` aqui em privado, você também.
check-too-few = Uma aferição precisa de { $of } fotos do último mês; há { $photos }.
check-none = Não há aferição de juízes aberta. O chef começa uma com `check start`.
check-how = Cada prato teria saído? Responda numa linha de doze sinais, + para sim e - para não: `check + + - + + + - + + + + +`.
check-unreadable = Responda com doze sinais, + para um prato que sai e - para um que não sai: `check + + - + + + - + + + + +`.
check-other-number = Li { $signs ->
    [one] { $signs } sinal
   *[other] { $signs } sinais
 }; há { $of } fotos. Envie a linha de novo.
check-alone = Guardado. Nenhum outro juiz respondeu ainda; `check` mostra mais tarde quanto concordam.
check-pair = { $one } e { $other }: { $agreed } de { $photos } iguais ({ $percent } %).
check-kappa = Kappa { $kappa }.
check-no-kappa = Kappa indefinido: ambos disseram o mesmo de todas as fotos.
own-count = Em { $runs } rodadas julgadas você enviou { $sent } pratos como bons; os juízes acharam { $found } deles bons.
