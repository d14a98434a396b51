## Karta ćwiczenia

card-head = { $name } (ćwiczenie { $label }), { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }, { $rows ->
    [one] jeden rząd
    [few] { $rows } rzędy
    [many] { $rows } rzędów
   *[other] { $rows } rzędu
 }.
card-head-draft = { $name } (szkic), { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }, { $rows ->
    [one] jeden rząd
    [few] { $rows } rzędy
    [many] { $rows } rzędów
   *[other] { $rows } rzędu
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , narzędzie: { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , na godzinie { $at }
   *[words] , { $at }
 }
card-accept = Dobry, gdy: { $accept }.
card-work = { $touches ->
    [one] 1 ruch
    [few] { $touches } ruchy
    [many] { $touches } ruchów
   *[other] { $touches } ruchu
 } na talerz, { $run } w próbie. Norma { $standard }.
card-targets = Czas początkowy { $opening }, kuchni { $house }, szybki { $brisk }.
card-redo = Jedna powtórka kosztuje około { $redo }. Gdy dobrych talerzy jest mniej niż { $gate }, jest liczba bez czasu; na wydawce dobry musi być każdy talerz.
card-redo-one = Na wydawce dobry musi być każdy talerz.
card-send = Wyślij czas i dobre talerze, na przykład `{ $example }`. Próba liczy się na tablice, gdy ktoś, kto ją widział, uniesie przy niej rękę.
card-table = Talerze: { $plate }; stół { $length } x { $depth } cm.
card-reaches = Obie ręce naraz: sięgnięć na talerz { $reaches }.
card-working-component = Jeden krok wzdłuż całego rzędu, potem następny.
card-working-plate = Jeden talerz do końca, potem następny.
card-working-waves = Falami po { $wave }.
card-pressure = Komendy, poziom { $level }.
card-labels = Przeczytaj każdą etykietę, także „może zawierać”: { $labels }.
card-label = { $component } ({ $label })
card-caution = - { $caution }
card-take-care = Uważaj:
late = (z opóźnieniem)

## Ostrzeżenia (karta podaje te, które pasują; na końcu zawsze przepisy miejscowe)

caution-mandoline = Mandolina: osłona i rękawica antyprzecięciowa, koniec przed ostatnią jedną trzecią, krojenie przed startem stopera, nikt nowy bez opieki.
caution-heat = Kąpiel wodna najwyżej 45 stopni, naczynie o szerokim dnie, z dala od krawędzi, wymieniana przed każdą próbą; gorące rzeczy: sucha ścierka, rączka do środka, okrzyk "gorące za tobą".
caution-floor = Ślisko na podłodze: { $what }, woda. Jedno przejście, jeden kierunek; "stop" zatrzymuje stoper.
caution-cold = Trzymane w chłodzie i nie dłużej, niż pozwalają miejscowe przepisy o bezpieczeństwie żywności; do kosza, gdy upadnie albo długo stoi w cieple: { $what }.
caution-puree = Trzymane w chłodzie, wyrzucane tego samego dnia: { $what }. Jeśli z białej fasoli, to z puszki, nigdy z surowej moczonej.
caution-cooked-starch = Ugotowane, szybko schłodzone, 5 stopni lub mniej, wyrzucane tego samego dnia: { $what }.
caution-bottle = Nic z talerza nie wraca do butelki.
caution-pieces-counted = Policzone przed próbą i po niej: { $what }.
caution-strain = Trzy próby dziennie. Drętwienie, mrowienie albo ból: przerwij i zgłoś się do specjalisty.
caution-chemicals = Środki czystości z dala od stołu.
caution-breakage = Coś się stłukło: przerwij, wyrzuć odkryte jedzenie w zasięgu, zmiotka, nigdy gołe ręce, znajdź każdy kawałek.
caution-hands = Myj ręce przed dotknięciem telefonu i po nim; skaleczenia pod niebieskim plastrem i rękawiczką nitrylową.
caution-allergens = Żaden zamiennik nie jest wolny od alergenów. Liczy się kontakt, nie tylko jedzenie; o własnej alergii mów szefowi osobiście, nigdy tutaj.
caution-never-served = Jedzenia z ćwiczeń nigdy się nie podaje, nie próbuje ani nie zwraca na linię: oznacz je "ćwiczenie, nie do jedzenia" z datą.
caution-local-rules = Pierwszeństwo mają miejscowe przepisy o bezpieczeństwie żywności, prawo pracy i BHP oraz twój szef.
