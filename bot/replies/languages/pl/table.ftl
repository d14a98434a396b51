## Stoły

table-head = { $name } (ćwiczenie { $label }), { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 } po { $wide } cm, na stole { $length } x { $depth } cm:
table-own = { $name } (ćwiczenie { $label }): układ { $pattern } zajmuje stół { $length } x { $depth } cm.
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern }: { $length } x { $depth } cm, { $verdict }.
table-fits = mieści się
table-short = brakuje { $cm } cm
table-too-deep = za głęboko o { $cm } cm
table-out-of-reach = odrzucone, do trzeciego rzędu nie da się sięgnąć z jednej strony
table-fewer = Zmieści się: { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }, { $pattern }, { $length } x { $depth } cm (szef: `plates { $plates }`, `rows { $rows }`; inny układ).
table-none-fits = Nie zmieści się ani jeden talerz.
table-one-row = Jeden rząd: { $numbers }. Jeden krok idąc tam, następny wracając, żeby nikt nie szedł na pusto.
table-two-rows = Dalszy rząd: { $far }; bliższy rząd: { $near }. Idzie się w tej kolejności numerów, tam i z powrotem.
table-walk = { $reach ->
    [near] Dwa rzędy: obchodź z obu stron albo najniższa osoba sięga do dalszego znaku ({ $depth } cm), nie pochylając się nad jedzeniem, z zabezpieczonymi rękawami.
   *[far] Dwa rzędy: obchodź z obu stron; { $depth } cm to za daleko, żeby sięgać z jednej.
 }
table-plate-unknown = Nie wiem, jak szeroki jest talerz ({ $plate }). Ćwiczenie podaje to na przykład tak: `plate flat 27 cm china`.
table-how = Napisz długość i głębokość stołu w cm, na przykład `table 180x70`, albo `table 11B`, żeby zobaczyć, ile zajmuje ćwiczenie.
help-table = `table 180x70`: układy, które mieszczą się na stole o tylu cm; `table` albo `table 11B`: ile zajmuje własny układ ćwiczenia.
