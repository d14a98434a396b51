## Pontos medidos num prato

help-dots = `dots 10 10 9 11 10`: estas larguras em mm são iguais; `dots 10 10 9 of 10` face à largura pedida; `dots 14 12 9 of 14 12 10` em escala.
dots-even = Média { $mean }, dispersão { $spread } %: aceitar.
dots-uneven = Média { $mean }, dispersão { $spread } %: refazer, até { $most } % é igual.
dots-as-called = Média { $mean }, dispersão { $spread } %, cada um a menos de { $leeway } mm de { $called }: aceitar.
dots-off-size = Média { $mean }, dispersão { $spread } %: refazer, o ponto { $nth } ({ $width }) está a mais de { $leeway } mm de { $called }.
dots-graded = { $count } pontos, cada um pelo menos { $step } mm menor, os extremos a menos de { $leeway } mm de { $first } e { $last }: aceitar.
dots-not-graded = Refazer: o ponto { $nth } ({ $width }) não é pelo menos { $step } mm menor do que o anterior ({ $before }).
dots-off-ends = Refazer: o ponto { $nth } ({ $width }) está a mais de { $leeway } mm de { $called }.
dots-too-few = Meça dois pontos ou mais, como `dots 10 10 9 11 10`.
dots-too-many = Meça no máximo { $most } pontos; é uma amostra.
dots-unreadable = Não consegui ler “{ $typed }” como largura em mm; escreva larguras separadas por espaços, como `dots 10 9.5 11`.
dots-out-of-range = Um ponto tem mais de 0 e no máximo { $most } mm de largura; envie as larguras de novo, como `dots 10 10 9 11 10`.
dots-how-called = Depois de `of` escreva uma largura, como `dots 10 10 9 of 10`, ou uma para cada ponto, como `dots 14 12 9 of 14 12 10`.
