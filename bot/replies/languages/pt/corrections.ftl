## Retirar e repor

scrapped = A sua rodada das { $at } foi retirada. `undo` repõe.
undone = A sua rodada das { $at } está de volta.
nothing-to-scrap = Você não tem rodada para retirar.
nothing-to-undo = Você não tem rodada para repor.

## O chef corrige uma rodada

corrected-by = { $chef } corrigiu a sua rodada das { $at }. { $line } Se não for assim, fale com { $chef }; nada mais seu foi mudado.
correct-own = Uma rodada sua você corrige editando a própria mensagem.
correct-which = De quem é a rodada? Responda à mensagem com `!correct 3:20 7/8`, ou escreva `!correct @noor 3:20 7/8` para a última.
correct-how = Escreva como `!correct @noor 3:20 7/8`: o tempo e os pratos bons como foram.
help-correct = `correct @noor 3:20 7/8`, ou em resposta à rodada: corrige a rodada de alguém; a pessoa é avisada.
