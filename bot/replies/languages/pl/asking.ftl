## Pytania i co wysłać zamiast tego

how-many-good = Ile talerzy z { $plates } było dobrych?
one-left = W ćwiczeniu { $drill } talerzy jest { $plates }. { $left ->
    [one] Czy jeden został niezłożony
    [few] Czy { $left } zostały niezłożone
    [many] Czy { $left } zostało niezłożonych
   *[other] Czy { $left } zostało niezłożonych
 }? `yes` albo liczba jeszcze raz, na przykład `{ $again }`.
under-a-third = { $clock } to mniej niż jedna trzecia normy. Zgadza się? `yes` albo czas jeszcze raz.
same-again = Tak samo jak twoja próba z { $at }. Druga próba? `again`. Jeśli nie, nic nie rób.
nothing-to-answer = Nie mam teraz do ciebie żadnego otwartego pytania. Jeśli chodziło o próbę, wyślij ją jeszcze raz, na przykład `3:02 8/8`.
no-drill-yet = Nie ma tu jeszcze żadnego ćwiczenia. Podaj numer, na przykład `6 3:02 8/8` albo `!spec 6`; listę daje `!drills`.
no-such-drill = Nie ma tu ćwiczenia { $label }. Listę daje `!drills`.
unknown-word = Nie znam tego słowa. Podobne: { $near }. Wszystkie daje `!words`.
unknown-word-no-hint = Nie znam tego słowa. Te, które znam, daje `!words`.
chef-only = To słowo należy do szefa.
chef-only-post = Ćwiczenia wyznacza szef. Wysłać twoje jako pomysł?
which-mate = Nie wiem, o kogo tu chodzi: { $name }. Oznacz tę osobę albo podaj imię, które ma tylko jedna osoba.
mate-not-joined = { $name }: tej osoby jeszcze tu nie liczę. Niech napisze `!join`; potem wyślij to jeszcze raz.
which-kitchen = Kuchnie, w których jesteś: { $count }. O którą chodzi? { $list }

## Wynik drugiej osoby

waiting-for-mate = Czekam na `yes` od: { $name }.
kept-for-mate = Zapisane jako twoja próba, { $name }.
not-kept = Nie zapisane.

## Co wysłać zamiast tego

edit-moves-run = Edycja nie może przenieść próby do innego ćwiczenia ani na inną osobę. Usuń wiadomość i wyślij próbę jeszcze raz.
edit-unreadable = Nie udało mi się odczytać tej edycji, więc próba zostaje taka, jak była. Napisz na przykład `3:02 8/8` albo usuń wiadomość, żeby zdjąć próbę.
too-many-plates = W ćwiczeniu { $drill } talerzy jest { $plates }. { $over ->
    [one] Jeśli jeden był złożony od nowa
    [few] Jeśli { $over } były złożone od nowa
    [many] Jeśli { $over } było złożonych od nowa
   *[other] Jeśli { $over } było złożonych od nowa
 }: `{ $clock } { $good }/{ $plates } rebuilt { $over }`.
far-too-many-plates = W ćwiczeniu { $drill } talerzy jest { $plates }; napisz, ile z { $plates } było dobrych, na przykład `{ $clock } { $plates }/{ $plates }`.
count-does-not-add-up = Dobre, powtórki i niezłożone muszą dać razem liczbę talerzy: { $plates }. Wyślij ją jeszcze raz, na przykład `3:20 { $plates }/{ $plates }`.
more-mended-than-good = Talerze złożone od nowa i poprawione liczą się do dobrych, a { $mended } to więcej niż { $good }; wyślij wiersz jeszcze raz.
plates-out-of-range = Ćwiczenie ma talerzy od 1 do { $most }; napisz na przykład `plates 8`.
rows-out-of-reach = Jeden rząd, a najwyżej { $most }, żeby nikt nie pochylał się nad jedzeniem; napisz na przykład `plates 8 rows 2`.
more-rows-than-plates = Rzędów jest { $rows }, więc talerzy musi być co najmniej { $rows }; napisz na przykład `plates 8 rows 2`.
waves-do-not-fit = Fala ma co najmniej 2 talerze i mniej niż całe ćwiczenie, czyli mniej niż { $plates }; napisz na przykład `working waves 4`.
draft-name = Podaj w pierwszym wierszu nazwę ćwiczenia, znaków najwyżej { $most }, na przykład `!draft Slipway`.
no-steps = Ćwiczenie musi mieć kroki; napisz je na przykład tak: `1. 7 courgette, shingle, at 10-4`.
no-plates = Ile talerzy? Dodaj wiersz, na przykład `plates 8 rows 2`.
steps-out-of-order = Czytam krok { $read } tam, gdzie powinien być krok { $wanted }; numeruj kroki 1, 2, 3.
too-many-steps = Kroków może być najwyżej { $most }; podziel talerz na dwa ćwiczenia.
unreadable-line = Nie udało mi się odczytać „{ $line }” albo jest to dwa razy; kroki wyglądają tak: `2. 1 tea jus, sauce, at 7`, inne wiersze zaczynają się od plates, rows, accept, plate, mise, start, stop albo working.
not-a-number = Po słowie napisz jedną liczbę całkowitą, na przykład `!plates 14`.
unreadable-step = Nie udało mi się odczytać „{ $line }” jako kroku; napisz na przykład `2 triangle, lean, at 11`.
pieces-out-of-range = W „{ $line }” liczba musi być od 1 do { $most }, na przykład `2 triangle, lean`.
unknown-technique = Nie znam techniki „{ $word }”. Podobne: { $near }.
unknown-technique-no-hint = Nie znam techniki „{ $word }”. Znam te: { $near }.
unknown-class = „{ $word }” nie jest klasą zamiennika; wybierz jedną z nich: { $classes }.
unreadable-detail = Nie udało mi się odczytać „{ $detail }”; po średniku stoi class, life, label albo price, na przykład `; life 90s ; label wheat`.
clock-needed = Mam { $good } z { $plates }; brakuje mi czasu, na przykład `3:02 { $good }/{ $plates }`.
clock-missing = Brakuje mi jeszcze czasu, na przykład `3:02 8/8`.
count-needed = Mam { $clock }; brakuje mi liczby dobrych, na przykład `{ $clock } 8/8`.
line-unreadable = Nie udało mi się odczytać „{ $line }”. Wyślij czas i dobre talerze, na przykład `3:02 8/8`.
too-many-lines = Wierszy jest { $lines }; w jednej wiadomości wyślij ich najwyżej { $most }.
one-run-a-line = Jedna próba w wierszu: jeden czas i jedna liczba, na przykład `3:02 8/8`.
said-twice = „{ $word }” stoi tu dwa razy; wyślij wiersz jeszcze raz, z tym słowem tylko raz.
how-many = Ile? Po słowie napisz liczbę, na przykład `{ $word } 1`.
at-unreadable = Nie udało mi się odczytać { $typed } jako godziny; napisz na przykład `at 02:10`.
clock-or-decimal = Czy to { $minutes } min { $seconds } s, czy { $decimal } minuty? Wyślij `{ $clock }` albo `{ $converted }`.
clock-in-decimals = { $decimal } minuty to { $converted }. Wyślij `{ $converted }` albo czas tak, jak go było widać na stoperze.
clock-unreadable = Nie udało mi się odczytać { $typed } jako czasu; napisz na przykład `8:05`.
clock-past-59 = `{ $typed }` nie może być czasem: minuty i sekundy idą od 00 do 59. Wyślij jeszcze raz, na przykład `8:05`.
clock-over-a-day = { $typed } to więcej niż doba; napisz czas próby, na przykład `8:05`.
