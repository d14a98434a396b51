## Rodadas a dois

pair-drill = { $name }, a dois
pair-names = { $one } e { $other }
kept-for-pair = Guardado para { $runner } e { $partner }. { $line }
pair-by-one-of-two = Uma rodada a dois é enviada por um dos dois: `3:02 8/8 with @lio`, sem `for`.
pair-with-whom = O exercício { $drill } está disposto para dois. Diga com quem, como `3:02 8/8 with @lio`.
pair-with-self = Uma rodada a dois precisa de outra pessoa; indique quem, como `3:02 8/8 with @lio`.
pair-one-plate = O exercício { $drill } tem um prato, por isso não há nada a dividir. Envie sem `with`.
