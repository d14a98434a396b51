## Jeden wynik

heard = Przyjęte. { $clock }, { $accepted } z { $plates }{ $rebuilt ->
    [0] {""}
   *[other] , złożone od nowa: { $rebuilt }
 }. { $pace } s na ruch, { $levelled } po wyrównaniu.
net = Netto { $net } ({ $redo ->
    [one] jedna powtórka kosztowała
    [few] { $redo } powtórki kosztowały
    [many] { $redo } powtórek kosztowało
   *[other] { $redo } powtórki kosztowało
 } { $charge }). { $pace } s na ruch.
no-time = { $accepted ->
    [1] Jeden czysty talerz zapisany
    [2] Dwa czyste talerze zapisane
    [3] Trzy czyste talerze zapisane
    [4] Cztery czyste talerze zapisane
    [5] Pięć czystych talerzy zapisanych
    [6] Sześć czystych talerzy zapisanych
    [7] Siedem czystych talerzy zapisanych
    [8] Osiem czystych talerzy zapisanych
    [9] Dziewięć czystych talerzy zapisanych
    [10] Dziesięć czystych talerzy zapisanych
    [11] Jedenaście czystych talerzy zapisanych
    [12] Dwanaście czystych talerzy zapisanych
    [few] { $accepted } czyste talerze zapisane
    [many] { $accepted } czystych talerzy zapisanych
   *[other] { $accepted } czystego talerza zapisane
 }. Tym razem bez czasu; następnym razem postaraj się o { $gate ->
    [1] jeden
    [2] dwa
    [3] trzy
    [4] cztery
    [5] pięć
    [6] sześć
    [7] siedem
    [8] osiem
    [9] dziewięć
    [10] dziesięć
    [11] jedenaście
    [12] dwanaście
    [few] { $gate }
    [many] { $gate }
   *[other] { $gate }
 }.
none-accepted = Zapisane bez czasu: w tej próbie żaden talerz nie był dobry. Następnym razem postaraj się o { $gate ->
    [one] jeden dobry talerz
    [few] { $gate } dobre talerze
    [many] { $gate } dobrych talerzy
   *[other] { $gate } dobrego talerza
 }.
short = Krótka próba, złożone { $accepted } z { $attempted }. { $pace } s na ruch. Zapisane do twojego przebiegu w czasie.
stopped = Przerwane po { $attempted ->
    [one] 1 talerzu
    [few] { $attempted } talerzach
    [many] { $attempted } talerzach
   *[other] { $attempted } talerza
 }. Zapisane tylko dla ciebie, na żadnej tablicy.
rebuilt-hint = Jeśli był złożony od nowa przed zatrzymaniem stopera: `{ $clock } { $plates }/{ $plates } rebuilt { $redo }`.
corrected = { $line } (poprawione)
which-line = Wiersz { $number }: { $problem }

## Uwagi do wyniku

settling-in = Pierwsze próby, { $nth } z { $of }: zapisana, jeszcze na żadnej tablicy.
day-limit = To dziś próba { $today ->
    [3] trzecia
    [4] czwarta
    [5] piąta
   *[other] numer { $today }
 }. Zapisana, nie liczona; daj rękom odpocząć.
board-closed = Zapisane; ta tablica jest zamknięta.
last-week = Dzień kuchni: { $day }, noc; tablica zeszłego tygodnia (otwarta do { $until }). Liczy się.
