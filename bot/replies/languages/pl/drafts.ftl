## Szkice

draft-known = To jest ćwiczenie { $label }.
draft-other-set-up = To jest ćwiczenie { $label } w innym układzie; każdy układ ma własne najlepsze czasy i tablice.
draft-new = Nowe ćwiczenie, z własnymi najlepszymi czasami i tablicami.
draft-child = Wobec ćwiczenia { $label }: { $percent } % pracy.
draft-publish = `!publish` nadaje mu numer; po edycji twojej wiadomości czytam ją od nowa.
published = Opublikowane jako ćwiczenie { $label }, { $name }. `!post mon 15:00` ogłasza je co tydzień, `!post now` od razu.
no-draft = Nie masz szkicu. Zacznij przez `!draft NAME` i kroki albo `!draft 6`, żeby wyjść od ćwiczenia 6.
no-such-step = Kroki są tu od 1 do { $most }. Napisz na przykład `!step 2 2 triangle, lean`.
nothing-changed = Ćwiczenie { $label } zostaje takie, jak było.
new-wording = Praca jest ta sama: ćwiczenie { $label } jest odtąd tak zapisane, najlepsze czasy i tablice zostają.
new-spec = To zmienia pracę o { $percent } %, więc to nowe ćwiczenie ({ $number }), nie { $old }.
    `a` tylko błędnie zapisane, wszyscy robili po nowemu: próby zostają, idzie sprostowanie.
    `b` nowe ćwiczenie od teraz: ta tablica zamyka się tak, jak jest.
    `c` zostaw do następnego tygodnia.
new-set-up = To zmienia pracę o { $percent } %: nadal ćwiczenie { $number }, ale nowy układ z własnymi najlepszymi czasami i tablicami.
    `b` nowy układ od teraz: ta tablica zamyka się tak, jak jest.
    `c` zostaw do następnego tygodnia.
is-another-drill = Tak zapisane jest to ćwiczenie { $label }. Odpowiedz `b`, żeby zmienić teraz, albo `c` od następnego tygodnia.
set-up-not-misspelt = Inna liczba talerzy lub rzędów to nowy układ. Odpowiedz `b` od teraz albo `c` od następnego tygodnia.
spec-corrected = Sprostowanie do ćwiczenia { $label }: było błędnie zapisane. Próby zostają. Kroki:
    { $steps }
left-for-next-week = Ćwiczenie { $label } czeka na następny tydzień. Ćwiczenie { $old } trwa dalej.
drill-line = { $label } { $name }: talerzy { $plates }, ruchów { $touches }, norma { $standard }
drills-none = Nie ma jeszcze ćwiczeń.

## Lista ćwiczeń

renamed = Ćwiczenie { $label } nazywa się odtąd { $name }. Numer, najlepsze czasy i tablice zostają.
rename-how = Napisz na przykład `!rename 6 Rope coil`; nazwa może mieć znaków najwyżej { $most }.
help-rename = `rename 6 Rope coil`: inna nazwa ćwiczenia; wszystko inne zostaje.
retired = Ćwiczenia { $label }, { $name }, nie ma już na liście. Historia i najlepsze czasy zostają; `!retire { $label } back` przywraca je.
brought-back = Ćwiczenie { $label }, { $name }, jest znowu na liście.
not-retired = Ćwiczenie { $label } nie jest zdjęte z listy.
drill-retired = Ćwiczenie { $label } jest zdjęte z listy. `!retire { $label } back` przywraca je.
retire-scheduled = Ćwiczenie { $label } jest ogłaszane co tydzień. Ogłoszenia pokazuje `!post`; najpierw odwołaj to jedno, na przykład `!post 1 off`.
retire-live = Ćwiczenie { $label } jest teraz otwarte. Najpierw zamknij jego tydzień: `!close { $label }`.
retire-how = Napisz na przykład `!retire 6` albo `!retire 6 back`.
help-retire = `retire 6`: zdejmuje ćwiczenie z listy, historia zostaje; `retire 6 back` przywraca je.
