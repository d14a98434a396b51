## Rascunhos

draft-known = Este é o exercício { $label }.
draft-other-set-up = Este é o exercício { $label } noutra disposição; cada disposição tem melhores e quadros próprios.
draft-new = Um exercício novo, com melhores e quadros próprios.
draft-child = Face ao exercício { $label }: { $percent } % de trabalho.
draft-publish = `!publish` dá-lhe o número; editar a sua mensagem lê tudo de novo.
published = Publicado como exercício { $label }, { $name }. `!post mon 15:00` publica todas as semanas, `!post now` já.
no-draft = Não há rascunho seu. Comece um com `!draft NAME` e os passos, ou `!draft 6` para partir do exercício 6.
no-such-step = Aqui os passos vão de 1 a { $most }. Escreva como `!step 2 2 triangle, lean`.
nothing-changed = Isso deixa o exercício { $label } como está.
new-wording = O trabalho é o mesmo: o exercício { $label } passa a ser descrito assim, os melhores e os quadros ficam.
new-spec = Isso muda o trabalho em { $percent } %, portanto é um exercício novo ({ $number }), não o { $old }.
    `a` só estava mal escrito, todos o fizeram da nova forma: as rodadas ficam, publica-se uma correção.
    `b` o exercício novo a partir de agora: este quadro fecha como está.
    `c` deixar para a próxima semana.
new-set-up = Isso muda o trabalho em { $percent } %: continua a ser o exercício { $number }, mas noutra disposição, com melhores e quadros próprios.
    `b` a nova disposição a partir de agora: este quadro fecha como está.
    `c` deixar para a próxima semana.
is-another-drill = Escrito assim é o exercício { $label }. Responda `b` para trocar já ou `c` para a próxima semana.
set-up-not-misspelt = Outro número de pratos ou de fileiras é outra disposição. Responda `b` a partir de agora ou `c` na próxima semana.
spec-corrected = Correção ao exercício { $label }: estava mal escrito. As rodadas ficam. Os passos são:
    { $steps }
left-for-next-week = O exercício { $label } fica guardado para a próxima semana. O exercício { $old } continua.
drill-line = { $label } { $name }: { $plates } pratos, { $touches } toques, padrão { $standard }
drills-none = Ainda não há exercícios.

## A lista de exercícios

renamed = O exercício { $label } chama-se { $name } a partir de agora. O número, os melhores e os quadros ficam.
rename-how = Escreva como `!rename 6 Rope coil`, com um nome de no máximo { $most } caracteres.
help-rename = `rename 6 Rope coil`: outro nome para um exercício; o resto fica.
retired = O exercício { $label }, { $name }, saiu da lista. O histórico e os melhores ficam; `!retire { $label } back` traz de volta.
brought-back = O exercício { $label }, { $name }, está de novo na lista.
not-retired = Nenhum exercício { $label } está fora da lista.
drill-retired = O exercício { $label } está fora da lista. `!retire { $label } back` traz de volta.
retire-scheduled = O exercício { $label } é publicado todas as semanas. `!post` mostra as publicações; cancele primeiro essa, como `!post 1 off`.
retire-live = O exercício { $label } está aberto agora. `!close { $label }` fecha primeiro a semana.
retire-how = Escreva como `!retire 6`, ou `!retire 6 back`.
help-retire = `retire 6`: tira um exercício da lista, o histórico fica; `retire 6 back` põe de volta.
