## Palavras

words-cook = Todos: o tempo e os pratos bons, como `3:02 8/8`; { $words }.
words-chef = Chef: { $words }.
words-how = Na sala ponha `!` antes de uma palavra; na nossa sala privada vai sem nada. `!words trend` explica uma.
help-join = `join`: conta-me; diz o que se guarda.
help-leave = `leave`: tira-me da contagem; nada de novo se guarda.
help-scrap = `scrap`: retira a minha última rodada.
help-undo = `undo`: repõe-na.
help-best = `best` ou `best 6`: os meus melhores, em privado.
help-why = `why`: a soma completa da minha última rodada, em privado.
help-spec = `spec` ou `spec 6`: a ficha do exercício.
help-drills = `drills`: todos os exercícios desta cozinha.
help-board = `board`, ou um de `own`, `fast`, `steady`, `clean`, `house`, `quarter`, `group`, como `board fast`: os primeiros lugares; em privado também o seu.
help-draft = `draft NAME`, depois uma linha `plates 8 rows 2`, depois passos como `1. 7 courgette, shingle, at 10-4`. `draft 6` parte do exercício 6.
help-step = `step 2 2 triangle, lean`: muda um passo do rascunho, ou do exercício aberto.
help-plates = `plates 10`: outro número de pratos.
help-rows = `rows 2`: outro número de fileiras.
help-publish = `publish`: dá ao rascunho o número para poder ser publicado.
help-post = `post 6 mon 15:00`: publica o exercício 6 todas as semanas; `post mon 15:00` o mais novo; `post now 6` já; `post` mostra a lista.
help-skip = `skip`: salta a próxima publicação semanal.
help-hold = `hold`: nenhuma publicação semanal até ser marcada de novo.
help-close = `close`: fecha já o quadro aberto.
help-zone = `zone Europe/London`: o fuso horário da cozinha.
help-dayturn = `dayturn 05:00`: quando muda o dia da cozinha.
help-replies = `replies short`: só o bloco de notas; `replies full`: uma linha por rodada.
help-words = `words`: todas as palavras; `words trend`: uma delas.
which-step = Escreva como `!step 2 2 triangle, lean`.
