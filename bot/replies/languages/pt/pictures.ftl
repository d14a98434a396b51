## Imagens (curto, há pouco espaço; a mensagem ao lado diz tudo)

picture-guest = cliente
picture-standard = padrão
picture-touches = { $touches ->
    [one] toque por prato
   *[other] toques por prato
 }, { $run } na rodada
picture-redo = um a refazer
picture-gate = de { $plates } bons para haver tempo
picture-free = Só contornado: o chef mostra o lugar.

## Cuidados em poucas palavras (a mensagem ao lado diz por inteiro)

short-mandoline = Mandolina: proteção e luva.
short-heat = Coisas quentes: pano seco, “quente atrás”.
short-floor = Chão seco.
short-cold = Mantido frio.
short-puree = Purê frio, fora no mesmo dia.
short-cooked-starch = Arrefecido depressa, fora no mesmo dia.
short-bottle = Nada volta à bisnaga.
short-pieces-counted = Contar peças ao sair e ao voltar.
short-strain = Três rodadas por dia.
short-chemicals = Sem produtos de limpeza por perto.
short-breakage = Se se parte: parar, dar conta de cada pedaço.
short-hands = Lavar as mãos antes e depois do telefone.
short-allergens = Ler cada rótulo; o contacto conta.
short-never-served = Nunca servir, provar ou devolver.

## O plano da mesa

picture-walk = Ande pela ordem dos números, ida e volta.
picture-reach = Alcance do lado de cá: { $often } cm muitas vezes, { $seldom } cm de vez em quando (tracejado).

## A tendência

picture-redo-share = A refazer, % dos pratos
picture-line = Linha: o meio firme. Faixa: quanto as suas rodadas costumam afastar-se dela. Barra no fim: a próxima rodada.
picture-ring = Anel: um melhor.

## O fecho da semana

picture-own = Face ao próprio tempo esperado
picture-expected = A linha é o tempo esperado de cada um; a barra é quanto mais rápido foi.

## No papel

help-paper = `paper` ou `paper 6`: o exercício numa página A4 para imprimir, com uma tabela para as rodadas.
paper-here = { $drill } em papel, com uma tabela para as rodadas. Envie as rodadas depois, como `yesterday 3:02 8/8`.
paper-date = Data
paper-name = Nome
paper-clock = Tempo
paper-good = Pratos bons
paper-reason = Motivo a refazer
paper-watched = Visto por
