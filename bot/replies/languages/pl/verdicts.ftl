## Ocena w pokoju i ze zdjęć

help-judge = Prywatnie: próby, które czekają na ocenę, po jednym zdjęciu bez imienia; następne `judge` pokazuje kolejną.
help-agree = Oceniający odpowiada na próbę przez `agree` albo przez `9 good`, gdy dobrych było mniej. Gdy dwie oceny się różnią, obowiązuje niższa liczba, aż oceni trzecia osoba.
help-check = `check` pokazuje oceniającym te same 12 zdjęć i to, jak bardzo się zgadzają; odpowiedz przez `check` i dwanaście znaków. Szef zaczyna przez `check start`.
judged = { $name }: według oceniających dobrych { $good } z { $attempted }. { $line } (poprawione)
judge-none = Żadna próba na ciebie nie czeka.
judge-this = { $waiting ->
    [one] Czeka 1 próba.
    [few] Czekają { $waiting } próby. Ta:
    [many] Czeka { $waiting } prób. Ta:
   *[other] Czeka { $waiting } próby. Ta:
 } { $drill }, { $clock }, wysłana jako { $good } z { $attempted }.
judge-photo = Zdjęcie: { $photo }
judge-answers = Odpowiedz `agree` albo ile było dobrych, na przykład `{ $good } good`. Otwarte do { $until }. Następną pokazuje `judge`.
judge-waiting = { $runs ->
    [one] 1 próba czeka
    [few] { $runs } próby czekają
    [many] { $runs } prób czeka
   *[other] { $runs } próby czeka
 } na ocenę. `judge` pokazuje { $runs ->
    [one] ją
    [few] je
    [many] je
   *[other] je
 }.
judges-only = To słowo jest dla oceniających. Kto ocenia, mówi szef: `!role @bastian judge`.
verdict-kept = Zapisane: obowiązuje { $good } z { $attempted }.
verdict-how = Odpowiedz na wiadomość z próbą przez `agree` albo napisz, ile było dobrych, na przykład `9 good`.
verdict-own = Nikt nie ocenia własnej próby ani próby swojej pary. Poproś kogoś, kto w niej nie był.
verdict-closed = Próbę można ocenić przez 48 godzin; ta zostaje taka, jak jest.
verdict-stopped = Przerwana próba jest tylko dla tego, czyja jest; nie ma czego oceniać.
verdict-too-many = W tej próbie talerzy jest { $attempted }; napisz, ile z nich było dobrych, na przykład `{ $attempted } good`.
verdict-several = Ta wiadomość zawiera kilka prób. Unieś przy niej rękę, żeby potwierdzić wszystkie; liczba wymaga próby w osobnej wiadomości.
verdict-gone = Ta próba została w międzyczasie zdjęta. Następną pokazuje `judge`.
hand-same-name = Ty i osoba z tej próby macie tu tę samą nazwę, więc nie mogę was odróżnić. Poproś o ocenę kogoś innego albo zmień swoją wyświetlaną nazwę.
check-started = Sprawdzian oceniających jest otwarty, z 12 najnowszymi zdjęciami. Każda osoba, która ocenia, pisze tu prywatnie `check`, ty też.
check-too-few = Sprawdzian wymaga zdjęć z ostatniego miesiąca: { $of }; jest ich { $photos }.
check-none = Żaden sprawdzian oceniających nie jest otwarty. Szef zaczyna przez `check start`.
check-how = Czy każdy z talerzy poszedłby na salę? Odpowiedz w jednym wierszu dwunastoma znakami, + to tak, - to nie: `check + + - + + + - + + + + +`.
check-unreadable = Odpowiedz dwunastoma znakami, + gdy talerz idzie na salę, - gdy nie: `check + + - + + + - + + + + +`.
check-other-number = Czytam { $signs ->
    [one] 1 znak
    [few] { $signs } znaki
    [many] { $signs } znaków
   *[other] { $signs } znaku
 }; zdjęć jest { $of }. Wyślij wiersz jeszcze raz.
check-alone = Zapisane. Nie ma jeszcze odpowiedzi od nikogo innego; `check` pokaże później, jak bardzo się zgadzacie.
check-pair = { $one } i { $other }: zgodnie { $agreed } z { $photos } ({ $percent } %).
check-kappa = Kappa { $kappa }.
check-no-kappa = Kappa nieokreślona: obie oceny były takie same przy każdym zdjęciu.
own-count = Ocenione próby: { $runs }. Talerze wysłane przez ciebie jako dobre: { $sent }; z nich dobre według oceniających: { $found }.
