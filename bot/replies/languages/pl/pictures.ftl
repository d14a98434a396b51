## Rysunki (krótko, bo miejsca jest mało; całość podaje wiadomość obok)

picture-guest = gość
picture-standard = norma
picture-touches = { $touches ->
    [one] ruch na talerz
    [few] ruchy na talerz
    [many] ruchów na talerz
   *[other] ruchu na talerz
 }, { $run } w próbie
picture-redo = jedna powtórka
picture-gate = z { $plates } dobrych daje czas
picture-free = Tylko zarys: miejsce pokazuje szef.

## Ostrzeżenia w kilku słowach (całość podaje wiadomość obok rysunku)

short-mandoline = Mandolina: osłona i rękawica.
short-heat = Gorące: sucha ścierka, „gorące za tobą”.
short-floor = Podłoga ma być sucha.
short-cold = Trzymane w chłodzie.
short-puree = Puree w chłodzie, wyrzucane tego samego dnia.
short-cooked-starch = Szybko schłodzone, wyrzucane tego samego dnia.
short-bottle = Nic nie wraca do butelki.
short-pieces-counted = Policz elementy przed i po.
short-strain = Trzy próby dziennie.
short-chemicals = Żadnych środków czystości w pobliżu.
short-breakage = Stłuczenie: przerwij, znajdź każdy kawałek.
short-hands = Myj ręce przed telefonem i po nim.
short-allergens = Czytaj każdą etykietę; liczy się kontakt.
short-never-served = Nie podawać, nie próbować, nie zwracać na linię.

## Plan stołu

picture-walk = Idź w kolejności numerów, tam i z powrotem.
picture-reach = Zasięg z bliższej strony: { $often } cm stale, { $seldom } cm czasem (kreski).

## Przebieg w czasie

picture-redo-share = Powtórki, % talerzy
picture-line = Linia: stały środek. Pasmo: jak daleko od niego leżą zwykle twoje próby. Odcinek na końcu: następna próba.
picture-ring = Kółko: najlepszy czas.

## Zamknięcie tygodnia

picture-own = Wobec własnego oczekiwanego czasu
picture-expected = Linia to oczekiwany czas każdej osoby; słupek pokazuje, o ile szybciej.

## Na papierze

help-paper = `paper` albo `paper 6`: ćwiczenie na stronie A4 do wydruku, z tabelą na próby.
paper-here = { $drill } na papierze, z tabelą na próby. Próby wyślij później, na przykład `yesterday 3:02 8/8`.
paper-date = Data
paper-name = Imię
paper-clock = Czas
paper-good = Dobre talerze
paper-reason = Powód powtórki
paper-watched = Kto widział
