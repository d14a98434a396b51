## Passos que não somam o tempo

steps-none-here = Os passos guardam-se de uma fileira trabalhada um passo de cada vez e sem chamadas, e o exercício { $drill } não é assim. `yes` guarda a rodada sem eles.
steps-other-number = O exercício { $drill } tem { $steps ->
    [one] { $steps } passo
   *[other] { $steps } passos
 } e li os tempos de { $read }. Envie de novo, como `steps 0:41 0:33`, ou `yes` para guardar a rodada sem eles.
steps-off-clock = Os passos somam { $made } e o relógio diz { $clock }. Qual está certo? `{ $clock }` guarda a rodada sem os passos, `{ $made }` fica como tempo; ou envie os passos de novo.

## Manter ou subir, e quanto

help-raise = `raise`: se o exercício está pronto para uma versão mais difícil, e quanto acrescenta cada caminho; `raise 2` começa um rascunho do segundo.
raise-nobody = Manter { $drill }: ninguém tem uma rodada contada nele nos últimos 28 dias.
raise-hold = Manter { $drill } como está: { $ready } de { $cooks ->
    [one] { $cooks } pessoa
   *[other] { $cooks } pessoas
 } deste mês { $ready ->
    [one] mantém
   *[other] mantêm
 } 11 em 12 bons em { $target }. É precisa metade, duas pessoas pelo menos.
raise-ready = { $drill } está pronto para uma versão mais difícil: { $ready } das { $cooks } pessoas deste mês mantêm 11 em 12 bons em { $target }.
raise-said-ready = Prontos por palavra própria: { $names }.
raise-fitting = 5 a 10 % mais trabalho, a medida a escolher: { $ways }.
raise-others = Menos ou mais do que isso: { $ways }.
raise-refused = Recusado, mais de 20 % de uma vez: { $ways }.
raise-how = `raise { $label } { $nth }` começa um rascunho.
raise-item = `{ $nth }` { $way } { $percent } %
raise-too-much = { $way } é { $percent } % mais trabalho, e mais de 20 % de uma vez recusa-se. Escolha um menor; `raise` mostra a lista.
which-raise = Escreva `raise`, ou um caminho de 1 a { $most }, como `raise 2` ou `raise 6 2`.
raise-unreadable = Escreva `raise`, ou um dos caminhos, como `raise 2` ou `raise 6 2`.
way-plates = +{ $more } { $more ->
    [one] prato
   *[other] pratos
 }
way-pieces = +{ $more } { $component }{ $technique ->
    [same] {""}
   *[other] {" "}({ $technique })
 }
way-waves = ondas de { $of }

## O tempo a cumprir

help-target = `target`: o tempo a cumprir; `target house`, `target brisk`, `target opening` ou `target 2:40` define-o.
target-is = { $drill }: o alvo é { $target }. Início { $opening }, casa { $house }, ágil { $brisk }.
target-set = O alvo de { $drill } é { $target }. A ficha diz o mesmo, e os melhores ficam.
target-out-of-range = { $target } é menos de um terço do tempo padrão, ou mais de três vezes. O tempo da casa é { $house }; envie um mais próximo, como `target { $house }`.
which-target = Escreva `target house`, `target brisk`, `target opening`, ou um tempo como `target 2:40`.
card-target = Alvo { $target }.

## Pronto, por palavra própria

help-ready = `ready` ou `ready 6`: quero uma versão mais difícil; o chef vê o meu nome, e eu vejo onde estão as minhas rodadas. `ready off` desfaz.
ready-kept = Guardado: você está pronto para { $drill } mais difícil. O chef vê isso junto ao seu nome; `ready off` desfaz.
ready-off = Desfeito para { $drill }.
ready-when-joined = Diga primeiro `join`, depois `ready` de novo.
which-ready = Escreva `ready`, `ready 6` ou `ready off`.
standing-none = Uma versão mais difícil pede três rodadas contadas com tempo; as suas ainda estão por vir.
standing = { $runs ->
    [one] A sua última rodada contada
   *[other] As suas últimas { $runs } rodadas contadas
 }: { $accepted } de { $attempted } bons, mediana { $median } para um alvo de { $target }, { $days ->
    [one] { $days } dia
   *[other] { $days } dias
 } desde a primeira.
standing-enough = É o que pede uma versão mais difícil.
standing-lacks = Uma versão mais difícil pede ainda { $lacks }.
lack-runs = três rodadas contadas
lack-stopped = três rodadas sem parar
lack-good = onze em doze bons no conjunto das três
lack-each = dez em doze bons em cada uma
lack-redo = não mais pratos a refazer do que antes
lack-target = uma mediana no alvo
lack-days = uma semana com ele

## Com mais calma

step-back-redo = Duas das suas últimas três rodadas em { $drill } tiveram menos de três quartos bons. Nas próximas esqueça o relógio e procure { $gate } de { $plates }.
step-back-stopped = Duas das suas últimas três rodadas em { $drill } foram paradas. { $left ->
    [0] Faça a próxima com calma e esqueça o relógio.
   *[other] Monte { $few } dos { $plates } da próxima vez, com calma, e envie os outros como `left { $left }`.
 }
card-light = Semana leve: curta, arrumada, sem quadro. { $left ->
    [0] Com tempo
   *[other] Bastam { $few } dos { $plates } pratos (`left { $left }`)
 }.

## O que treinar a seguir

help-next = `next`: um exercício para treinar e porquê, pelos meus passos e motivos, em privado.
next-course = { $drill }, { $plates } pratos. É a vez dele no curso: semana { $week } de { $of } neste exercício.
next-drill = { $drill }, { $plates } pratos.
next-lost = { $technique }: custou-lhe { $lost } s ou mais acima do padrão em cada uma das suas últimas 3 rodadas com passos.
next-redo = `{ $reason }` veio com { $times } das suas últimas { $runs } rodadas, e vem de { $technique }.
next-nothing-near = Nenhum exercício daqui com { $technique } está perto do seu nível: { $low } a { $high } vezes { $level } do tempo padrão.
next-paces = { $technique } nos seus últimos passos em { $drill }: { $pace } s por toque; o seu habitual { $usual }, padrão { $standard }{ $quarter ->
    [none] .
   *[other] , o quarto mais rápido da casa { $quarter }.
 }
next-nothing-lost = Pelos seus passos nenhuma técnica custou mais de { $most } s acima do padrão três vezes seguidas, e nenhum motivo veio duas vezes: nada a destacar.
next-needs = Ainda não posso dizer. São precisos passos em três rodadas (até agora { $runs } de { $of }), como `3:02 8/8 steps 1:35 0:43 0:44`, ou um motivo que venha duas vezes, como `fell`.
