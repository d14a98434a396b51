## Najlepsze czasy

first-mark = Pierwszy czas, { $name }, { $drill }: { $time }.
new-best = Nowy najlepszy czas, { $name }, { $drill }: { $time }, lepszy o { $by } s.
best-again = Poprawione: najlepszy czas, { $name }, { $drill }: { $time }.
best-gone = Poprawione: { $name }, { $drill }: nie ma teraz najlepszego czasu, który ktoś widział.
best-luck = Nowy najlepszy czas, lepszy o { $by } s. Twoje próby różnią się zwykle o około { $noise } s: pokażą to jeszcze dwie podobne.
best-line = { $drill }: { $time }, { $day }, { $accepted } z { $plates }.
best-unwitnessed = { $drill }: pierwszy czas { $time }, { $day }. Stanie się najlepszym, gdy ktoś, kto widział próbę, uniesie rękę.
no-best = Nie ma jeszcze próby z czasem. Wyślij ją, na przykład `3:02 8/8`.

## Dlaczego

why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } z { $attempted } dobrych.
why-charge = Jedna powtórka: zmiana talerza { $change } s + (jeden talerz osobno { $alone } s x twoje tempo { $clock_s }/{ $standard }) = { $one } s.
why-net = Powtórki: { $redo } x { $attempted }/{ $accepted } (powtórka też może się nie udać) x { $one } s = { $charge } s. Netto { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / ruchy: { $touches } = { $pace } s na ruch.
why-levelled = Norma { $standard } s / 1.5 = { $levelled_touches } ruchu wyrównanego; { $net } / { $levelled_touches } = { $levelled } po wyrównaniu.
why-fitted = Norma obliczona { $standard }; próby kuchni mówią x { $factor } ({ $low } do { $high }), prób { $runs }, osób { $cooks }.
why-unfitted = Obowiązuje norma obliczona { $standard }. Do dopasowanej brakuje jeszcze: { $missing }.
why-not-compared = Obowiązuje norma obliczona { $standard }: poniżej 1:00, z komendami albo we dwoje nie porównuję jej z innymi ćwiczeniami.
why-no-time = Dobrych mniej niż { $gate } z { $attempted }: liczba, bez czasu.
no-why = Nie ma jeszcze twojej próby do wyjaśnienia.
