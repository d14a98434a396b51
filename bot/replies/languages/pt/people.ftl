## Entrar na contagem

first-message = Sou a Platepace: publico um exercício de empratamento por semana e recebo os seus tempos.
    Guardo resultados só de quem diz `!join`: o tempo, os pratos bons e quem levantou a mão. A conversa comum eu não guardo; a própria sala guarda o que você escreve.
    Os resultados são para treinar, nunca para salário, escala, promoção ou disciplina. As leis de trabalho e de dados são locais, pergunte.
    Chef: `!drills` mostra doze exercícios, `!post 1 mon 15:00` começa uma semana, `!zone { $zone }` e `!dayturn 05:00` acertam o relógio. `!words` mostra o resto.
join-first = Em espera, ainda não guardado. Guardo o seu tempo, os pratos bons e quem viu, para lhe mostrar o seu ritmo e o quadro da semana; nunca para salário, escala, promoção ou disciplina. A própria sala guarda o que você escreve. `yes` conta você; sem resposta apaga-se em 48 horas.
joined = Na contagem, { $name }. Para treinar, nunca para salário, escala, promoção ou disciplina; a própria sala guarda o que você escreve.
counted-in = Na contagem, { $name }.
left = Fora da contagem, { $name }. Não guardo nada de novo seu. `!join` conta você outra vez.
