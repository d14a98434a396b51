## Kroki, które nie składają się na czas

steps-none-here = Kroki zapisuję dla rzędu składanego krok po kroku i bez komend, a ćwiczenie { $drill } takie nie jest. `yes` zapisuje próbę bez nich.
steps-other-number = Ćwiczenie { $drill } ma { $steps ->
    [one] 1 krok
    [few] { $steps } kroki
    [many] { $steps } kroków
   *[other] { $steps } kroku
 }, a czasów kroków czytam { $read }. Wyślij je jeszcze raz, na przykład `steps 0:41 0:33`, albo `yes`, żeby zapisać próbę bez nich.
steps-off-clock = Kroki dają razem { $made }, a stoper pokazuje { $clock }. Co się zgadza? `{ $clock }` zapisuje próbę bez kroków, `{ $made }` bierze to za czas; albo wyślij kroki jeszcze raz.

## Zostawić czy podnieść, i o ile

help-raise = `raise`: czy ćwiczenie jest gotowe na trudniejszą wersję i ile dodaje każdy sposób; `raise 2` zaczyna szkic drugiego.
raise-nobody = Zostaw { $drill }: nikt nie ma w nim liczonej próby z ostatnich 28 dni.
raise-hold = Zostaw { $drill } bez zmian: osób w tym miesiącu { $cooks }, z nich { $ready ->
    [one] 1 utrzymuje
    [few] { $ready } utrzymują
    [many] { $ready } utrzymuje
   *[other] { $ready } utrzymuje
 } 11 z 12 dobrych przy { $target }. Potrzeba połowy z nich, co najmniej dwóch.
raise-ready = { $drill } jest gotowe na trudniejszą wersję: osób w tym miesiącu { $cooks }, z nich { $ready ->
    [one] 1 utrzymuje
    [few] { $ready } utrzymują
    [many] { $ready } utrzymuje
   *[other] { $ready } utrzymuje
 } 11 z 12 dobrych przy { $target }.
raise-said-ready = Gotowość zgłaszają: { $names }.
raise-fitting = 5 do 10 % więcej pracy, tyle warto wziąć: { $ways }.
raise-others = Mniej albo więcej: { $ways }.
raise-refused = Odrzucone, ponad 20 % naraz: { $ways }.
raise-how = `raise { $label } { $nth }` zaczyna szkic.
raise-item = `{ $nth }` { $way } { $percent } %
raise-too-much = { $way } to { $percent } % pracy więcej, a ponad 20 % naraz odrzucam. Weź mniejszy krok; listę daje `raise`.
which-raise = Napisz `raise` albo sposób od 1 do { $most }, na przykład `raise 2` albo `raise 6 2`.
raise-unreadable = Napisz `raise` albo jeden ze sposobów, na przykład `raise 2` albo `raise 6 2`.
way-plates = +{ $more } { $more ->
    [one] talerz
    [few] talerze
    [many] talerzy
   *[other] talerza
 }
way-pieces = +{ $more } { $component }{ $technique ->
    [same] {""}
   *[other] {" "}({ $technique })
 }
way-waves = fale po { $of }

## Czas do osiągnięcia

help-target = `target`: czas do osiągnięcia; ustawia go `target house`, `target brisk`, `target opening` albo `target 2:40`.
target-is = { $drill }: cel to { $target }. Czas początkowy { $opening }, kuchni { $house }, szybki { $brisk }.
target-set = Cel, { $drill }: { $target }. Jest na karcie, a najlepsze czasy zostają.
target-out-of-range = { $target } to mniej niż jedna trzecia normy albo ponad trzy normy. Czas kuchni to { $house }; wyślij bliższy niego, na przykład `target { $house }`.
which-target = Napisz `target house`, `target brisk`, `target opening` albo czas, na przykład `target 2:40`.
card-target = Cel { $target }.

## Gotowość, według własnego słowa

help-ready = `ready` albo `ready 6`: zgłaszam gotowość na trudniejszą wersję; szef widzi moje imię, a ja widzę, jak stoją moje próby. `ready off` to wycofuje.
ready-kept = Zapisane: gotowość na trudniejszą wersję, { $drill }. Szef widzi to przy twoim imieniu; `ready off` to wycofuje.
ready-off = Wycofane: { $drill }.
ready-when-joined = Napisz najpierw `join`, potem `ready` jeszcze raz.
which-ready = Napisz `ready`, `ready 6` albo `ready off`.
standing-none = Trudniejsza wersja wymaga trzech liczonych prób z czasem; twoje są jeszcze przed tobą.
standing = { $runs ->
    [one] Twoja ostatnia liczona próba
    [few] Twoje { $runs } ostatnie liczone próby
    [many] Twoje { $runs } ostatnich liczonych prób
   *[other] Twoje { $runs } ostatnie liczone próby
 }: { $accepted } z { $attempted } dobrych, mediana { $median } przy celu { $target }, { $days ->
    [one] 1 dzień
    [few] { $days } dni
    [many] { $days } dni
   *[other] { $days } dnia
 } od pierwszej.
standing-enough = Tyle wymaga trudniejsza wersja.
standing-lacks = Trudniejsza wersja wymaga jeszcze: { $lacks }.
lack-runs = trzy liczone próby
lack-stopped = trzy próby bez przerwania
lack-good = jedenaście z dwunastu dobrych w trzech razem
lack-each = dziesięć z dwunastu dobrych w każdej
lack-redo = nie więcej powtórek niż wcześniej
lack-target = mediana zgodna z celem
lack-days = tydzień pracy nad nim

## Lżej

step-back-redo = Dwie z twoich trzech ostatnich prób, { $drill }, miały mniej niż trzy czwarte dobrych. W następnych nie patrz na czas i postaraj się o { $gate } z { $plates }.
step-back-stopped = Dwie z twoich trzech ostatnich prób, { $drill }, były przerwane. { $left ->
    [0] Następną zrób spokojnie i nie patrz na czas.
   *[other] Następnym razem złóż spokojnie { $few } z { $plates }, a resztę wyślij jako `left { $left }`.
 }
card-light = Lekki tydzień: krótko, porządnie, bez tablicy. { $left ->
    [0] Nie spiesz się
   *[other] Wystarczy talerzy { $few } z { $plates } (`left { $left }`)
 }.

## Co ćwiczyć dalej

help-next = `next`: jedno ćwiczenie do zrobienia i dlaczego, z moich kroków i powodów powtórek, prywatnie.
next-course = { $drill }, talerzy { $plates }. Tu prowadzi kurs: tydzień { $week } z { $of } w tym ćwiczeniu.
next-drill = { $drill }, talerzy { $plates }.
next-lost = Technika { $technique } kosztowała cię { $lost } s lub więcej ponad normę w każdej z 3 ostatnich prób z krokami.
next-redo = `{ $reason }`: prób z tym powodem { $times } z ostatnich { $runs }; dotyczy techniki { $technique }.
next-nothing-near = Żadne ćwiczenie z techniką { $technique } nie jest tu blisko twojego poziomu: od { $low } do { $high } razy { $level } normy.
next-paces = Technika { $technique } w twoich ostatnich krokach, { $drill }: { $pace } s na ruch; zwykle u ciebie { $usual }, norma { $standard }{ $quarter ->
    [none] .
   *[other] , najszybsza ćwierć kuchni { $quarter }.
 }
next-nothing-lost = Według kroków żadna technika nie kosztowała trzy razy z rzędu więcej niż { $most } s ponad normę i żaden powód powtórki nie wrócił: nie ma czego wskazać.
next-needs = Jeszcze nie mogę powiedzieć. Potrzeba kroków przy trzech próbach (na razie { $runs } z { $of }), na przykład `3:02 8/8 steps 1:35 0:43 0:44`, albo powodu powtórki, który wróci, na przykład `fell`.
