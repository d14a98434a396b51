## Tablice

board-head = { $drill }, { $week }, zamknięte
board-open = { $drill }, ten tydzień, otwarte do { $until }
board-own = Wobec własnego oczekiwanego czasu: { $rows }
board-fast = Szybko: { $rows }
board-steady = Równo: { $rows }
board-clean = Czysto: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries ->
    [one] 1 próba
    [few] { $tries } próby
    [many] { $tries } prób
   *[other] { $tries } próby
 })
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % szybciej
board-as-expected = zgodnie z oczekiwaniem
board-slower = { $percent } % wolniej
too-close = różnica zbyt mała, by rozstrzygnąć
too-close-row = { $row }, różnica zbyt mała, by rozstrzygnąć
board-not-yet = Tablicy „{ $kind }” jeszcze nie ma. Potrzeba trzech osób z próbami, które ktoś widział i potwierdził uniesioną ręką.
board-not-yet-any = Tablicy jeszcze nie ma. Potrzeba trzech osób z próbami, które ktoś widział i potwierdził uniesioną ręką.
board-yours = Ty na tablicy „{ $kind }”: miejsce { $place }, { $figures }.
which-board = Tablice to `own`, `fast`, `steady`, `clean`, `house`, `quarter` i `group`, na przykład `!board fast`.
no-live-drill = Żadne ćwiczenie nie jest tu otwarte. Szef ogłasza je przez `!post`.
a-cook = ktoś z kuchni
light-no-board = Lekki tydzień: krótko, porządnie, bez tablicy.

## Tablica główna: wobec własnego czasu

own-not-yet = Tablicy wobec własnego czasu jeszcze nie ma. Potrzeba trzech osób z próbami, które ktoś widział, i wcześniejszymi do porównania.
expected-on-it = { $actual }; oczekiwane { $expected }, { $runs ->
    [one] według twojej wcześniejszej próby w tym ćwiczeniu
    [few] środek twoich { $runs } ostatnich prób w tym ćwiczeniu
    [many] środek twoich { $runs } ostatnich prób w tym ćwiczeniu
   *[other] środek twoich { $runs } ostatnich prób w tym ćwiczeniu
 }.
expected-fitted = { $actual }; oczekiwane { $expected }, dopasowane do twoich wcześniejszych prób.
expected-held = { $actual }; oczekiwane { $expected }, rośnie najwyżej o 2 % na tydzień.
expected-new = { $actual }; oczekiwane { $expected }: norma { $standard } x twój zwykły stosunek { $usual }.
expected-new-drill = { $actual }; oczekiwane { $expected }: norma { $standard } x twój zwykły stosunek { $usual } x { $drill }, jak wyszło to ćwiczenie innym.

## Kuchnia razem

board-house = Kuchnia: { $percent } % osób w swoim oczekiwanym czasie, czyste talerze: { $plates }.
board-house-plates = Kuchnia: { $plates ->
    [one] 1 czysty talerz
    [few] { $plates } czyste talerze
    [many] { $plates } czystych talerzy
   *[other] { $plates } czystego talerza
 }.

## Poza tablicami i z powrotem

boards-are-off = Od teraz nie ma cię na publicznych tablicach. Twoje próby i najlepsze czasy zostają, a `board` tutaj dalej pokazuje ci twoje.
boards-are-on = Znowu jesteś na publicznych tablicach.
boards-on-or-off = Wyślij `boards off` albo `boards on`.
help-boards = `boards off` zdejmuje cię z publicznych tablic, twoja historia zostaje; `boards on` przywraca.

## Zamknięcie

closed = { $drill }: tydzień zamknięty.
closed-no-board = Bez tablicy; tablica wymaga trzech osób z próbami, które ktoś widział. Każda próba i tak liczy się dla tego, czyja jest.
board-correction = Poprawka do zamkniętej tablicy: { $drill }, { $week }. { $board }
nothing-to-close = Ta tablica jest już zamknięta.
