## Taking off and putting back

scrapped = Tu tanda de las { $at } está retirada. `undo` la devuelve.
undone = Tu tanda de las { $at } está de vuelta.
nothing-to-scrap = No tienes ninguna tanda que retirar.
nothing-to-undo = No tienes ninguna tanda que devolver.

## The chef puts a run right

corrected-by = { $chef } ha corregido tu tanda de las { $at }. { $line } Si no fue así, habla con { $chef }; nada más de lo tuyo ha cambiado.
correct-own = Una tanda tuya la corriges editando su mensaje.
correct-which = ¿La tanda de quién? Responde a su mensaje con `!correct 3:20 7/8`, o escribe `!correct @noor 3:20 7/8` para la última.
correct-how = Escríbelo como `!correct @noor 3:20 7/8`: el tiempo y los platos buenos tal como fueron.
help-correct = `correct @noor 3:20 7/8`, o como respuesta a la tanda: corregir la tanda de alguien; se le avisa.
