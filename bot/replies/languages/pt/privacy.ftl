## O que está guardado sobre mim, esquecer-me, dor

help-records = `records`: tudo o que guardo sobre você, em privado, como arquivo JSON; `records csv` como tabela, `records text` em mensagens.
help-forget = `forget me`: apaga tudo o que guardo sobre você; pergunto mais uma vez na nossa sala privada.
help-sore = `sore`, só na nossa sala privada: o que fazer. Nada é guardado.

records =
    Guardado sobre você, tal como está, por tabela: { $counts }.
    Para o seu treino, nunca para salário, escala, promoção ou disciplina. As cópias de segurança feitas antes ficam com quem me opera: pergunte.
    Se não vier arquivo ao lado, diga `records text`.
records-spelt =
    Guardado sobre você, tal como está, por tabela: { $counts }.
    { $parts ->
        [one] Segue numa mensagem; copie para um arquivo tal como está.
       *[other] Segue em { $parts } mensagens; junte-as por ordem e são um só arquivo.
    }
which-records = Diga `records` para um arquivo JSON, `records csv` para uma tabela, ou `records text` para mensagens.
records-none = Não guardo nada sobre você além de estar na sala.
forget-whom = Só a si mesmo: `forget me`.
forget-first = Diga primeiro `forget me`; depois pergunto uma vez.
forget-sure =
    Isto apaga as suas rodadas, ligações a fotos, palavras, perguntas, rascunhos, função e nome aqui. Não se pode desfazer.
    Os quadros fechados ficam com as somas e dizem "alguém da cozinha". As mãos que você levantou ficam como número, sem você.
    O que você escreveu na própria sala fica lá. As cópias de segurança feitas antes ficam com quem me opera: pergunte.
    `yes, forget me`, aqui na nossa sala privada, faz isso dentro de 12 horas.
forgotten =
    Esquecido. Não guardo agora nada sobre você além de estar na sala.
    O que você escreveu na própria sala fica lá. As cópias de segurança feitas antes ficam com quem me opera: pergunte.
sore = Dormência, formigamento ou dor: pare, e procure um profissional qualificado. Nada disto é guardado.
sore-in-private = Na nossa sala privada, por favor: `sore` tem resposta lá, e nada é guardado.
