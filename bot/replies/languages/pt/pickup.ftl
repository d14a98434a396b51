## Pessoas para uma saída

help-pickup = `pickup 120 in 20` ou `pickup 11 120 in 20`: quantas pessoas empratam 120 em 20 minutos, e as tarefas; `pickup 120 in 20 with 4`.
pickup-fits = Em { $limit }: { $hands }, { $time }.
pickup-not-with = Não cabe em { $limit } com { $hands }: { $time }.
pickup-no-gain = Mais pessoas não ganham nada.
pickup-not = Não cabe em { $limit }. { $many ->
    [one] Uma pessoa precisa de
   *[other] { $hands } precisam de
 } { $time }; { $narrowest } é o passo mais estreito.
pickup-divided = { $shared }, { $hands }: { $time }.
pickup-shared = { $many } em { $doing }
pickup-or-fewer = Ou { $pieces }, { $hands }: { $time }.
pickup-fewer = Com { $pieces }, { $hands }: { $time }.
pickup-no-hands = Nem com { $most } pessoas a dividir passos.
pickup-one-plate = Não cabe em { $limit }: só os toques de um prato levam { $touch }.
pickup-plating-only = Só o empratamento: some o seu calor, transporte e verificação.
pickup-tasks = Pessoas { $tasks }.
pickup-task = { $who }: { $steps }
pickup-in-turn = { $steps }, pratos à vez
pickup-step = { $component } { $technique }
pickup-sum = Um prato { $touch } s, depois { $more } x { $largest } s: { $time }. { $limit } é um prato a cada { $takt } s.
pickup-own-pace = Ao ritmo desta cozinha, { $ratio } x padrão: { $time }.
pickup-how = Escreva os pratos, depois os minutos, como `pickup 120 in 20` ou `pickup 11 120 in 20`; `with 4` para quatro pessoas.
pickup-out-of-range = Posso planear de 1 a { $plates } pratos, de 1 a { $hands } pessoas e 12 horas no máximo, como `pickup 120 in 20`.

hands = { $many ->
    [one] uma pessoa
    [2] duas pessoas
    [3] três pessoas
    [4] quatro pessoas
    [5] cinco pessoas
    [6] seis pessoas
    [7] sete pessoas
    [8] oito pessoas
    [9] nove pessoas
    [10] dez pessoas
   *[other] { $many } pessoas
 }
hands-first = { $many ->
    [2] Duas pessoas
    [3] Três pessoas
    [4] Quatro pessoas
    [5] Cinco pessoas
    [6] Seis pessoas
    [7] Sete pessoas
    [8] Oito pessoas
    [9] Nove pessoas
    [10] Dez pessoas
   *[other] { $many } pessoas
 }
counted = { $many ->
    [one] uma
    [2] duas
    [3] três
    [4] quatro
    [5] cinco
    [6] seis
    [7] sete
    [8] oito
    [9] nove
    [10] dez
   *[other] { $many }
 }
counted-first = { $many ->
    [one] Uma
    [2] Duas
    [3] Três
    [4] Quatro
    [5] Cinco
    [6] Seis
    [7] Sete
    [8] Oito
    [9] Nove
    [10] Dez
   *[other] { $many }
 }

## Como se chamam os passos (uma técnica da casa pelo seu nome)

doing = { $technique ->
    [set] assentar
    [place] colocar
    [pair] emparelhar
    [leaf] folhas
    [dot] pontos
    [bead] gotas
    [mound] montinhos
    [pull] puxar
    [line] a linha
    [brush] pincelar
    [crumb] esfarelar
    [shingle] sobrepor
    [sauce] molho
    [lean] encostar
    [twirl] enrolar
    [quenelle] a quenelle
    [two-spoon-quenelle] a quenelle
    [ring-fill] encher
    [press] prensar
    [lift] levantar
    [wipe] limpar
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many ->
        [one] { $many } folha
       *[other] { $many } folhas
     }
    [dot] { $many ->
        [one] { $many } ponto
       *[other] { $many } pontos
     }
    [bead] { $many ->
        [one] { $many } gota
       *[other] { $many } gotas
     }
    [shingle] { $many ->
        [one] { $many } fatia
       *[other] { $many } fatias
     }
    [twirl] { $many ->
        [one] { $many } novelo
       *[other] { $many } novelos
     }
    [quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [two-spoon-quenelle] { $many ->
        [one] { $many } quenelle
       *[other] { $many } quenelles
     }
    [sauce] { $many ->
        [one] { $many } colher
       *[other] { $many } colheres
     }
   *[other] { $many } { $component }
 }
