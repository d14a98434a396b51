## Dołączanie

first-message = Jestem Platepace: co tydzień ogłaszam jedno ćwiczenie z układania na talerzu i przyjmuję wasze czasy.
    Wyniki trzymam tylko dla osób, które napiszą `!join`: czas, dobre talerze i kto uniósł rękę. Zwykłych rozmów nie zapisuję; sam czat przechowuje to, co piszecie.
    Wyniki są do ćwiczeń, nigdy do płacy, grafiku, awansu ani kar. Prawo pracy i ochrony danych jest miejscowe, zapytajcie.
    Szef: `!drills` pokazuje dwanaście ćwiczeń, `!post 1 mon 15:00` zaczyna tydzień, `!zone { $zone }` i `!dayturn 05:00` ustawiają zegar. Resztę daje `!words`.
join-first = Wstrzymane, jeszcze nie zapisane. Zapisuję czas, dobre talerze i kto widział, żeby pokazać ci twoje tempo i tablicę tygodnia; nigdy do płacy, grafiku, awansu ani kar. Sam czat przechowuje to, co piszesz. `yes` i jesteś z nami; bez odpowiedzi znika po 48 godzinach.
joined = Jesteś z nami, { $name }. Do ćwiczeń, nigdy do płacy, grafiku, awansu ani kar; sam czat przechowuje to, co piszesz.
counted-in = Jesteś z nami, { $name }.
left = Już cię nie liczę, { $name }. Niczego nowego o tobie nie zapisuję. `!join` liczy cię znowu.
