## Melhores

first-mark = Primeira marca de { $name } em { $drill }: { $time }.
new-best = Novo melhor de { $name } em { $drill }: { $time }, por { $by } s.
best-again = Corrigido: o melhor de { $name } em { $drill } é { $time }.
best-gone = Corrigido: { $name } não tem agora melhor testemunhado em { $drill }.
best-luck = Novo melhor por { $by } s. As suas rodadas costumam diferir cerca de { $noise } s: mais duas perto dele o dirão.
best-line = { $drill }: { $time }, { $day }, { $accepted } de { $plates }.
best-unwitnessed = { $drill }: primeira marca { $time }, { $day }. Passa a melhor quando alguém que viu levanta a mão.
no-best = Ainda não há rodada com tempo. Envie uma como `3:02 8/8`.

## Porquê

why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } de { $attempted } bons.
why-charge = Um a refazer: troca de prato { $change } s + (um prato sozinho { $alone } s x a sua velocidade { $clock_s }/{ $standard }) = { $one } s.
why-net = { $redo } a refazer x { $attempted }/{ $accepted } pela hipótese de falhar de novo x { $one } s = { $charge } s. Líquido { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / { $touches } toques = { $pace } s por toque.
why-levelled = Padrão { $standard } s / 1.5 = { $levelled_touches } toques nivelados; { $net } / { $levelled_touches } = { $levelled } nivelado.
why-fitted = Padrão calculado { $standard }; as rodadas da cozinha dizem x { $factor } ({ $low } a { $high }), de { $runs } rodadas de { $cooks } pessoas.
why-unfitted = Vale o padrão calculado { $standard }. Para um ajustado falta ainda: { $missing }.
why-not-compared = Vale o padrão calculado { $standard }: com menos de 1:00, com chamadas ou a dois não se compara com outros exercícios.
why-no-time = Menos de { $gate } de { $attempted } bons: contagem, sem tempo.
no-why = Ainda não há rodada sua para explicar.
