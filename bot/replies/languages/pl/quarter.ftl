## Kwartał

quarter-open = Kwartał { $quarter } roku { $year } dotychczas, tempo wyrównane ze wszystkich ćwiczeń
quarter-closed = Kwartał { $quarter } roku { $year }, zamknięty: tempo wyrównane ze wszystkich ćwiczeń
quarter-board = { $rows }
quarter-row = { $place } { $name } { $pace }
quarter-shared = To samo miejsce: różnica zbyt mała, by rozstrzygnąć.
quarter-too-close = Różnica zbyt mała, by rozstrzygnąć: nikt nie jest wyraźnie z przodu.
quarter-divided = Niektórzy nie mają z innymi wspólnej osoby ani wspólnego ćwiczenia: nie ma jeszcze wspólnej podstawy, więc nie ma liczby dla wszystkich.
quarter-few = Nie ma jeszcze miejsc. Potrzeba trzech osób z podobnymi ćwiczeniami i próbami, które ktoś widział.
quarter-yours = Ty: miejsce { $place }, { $pace } s na ruch wyrównany, prób { $runs }.
quarter-no-place = Ty: { $pace } s na ruch wyrównany. Bez miejsca: { $why }.
quarter-why-ground = twoje ćwiczenia i ćwiczenia innych nie mają jeszcze wspólnej podstawy
quarter-why-work = mniej niż połowa twojej pracy jest podobna do pracy innych
quarter-why-judged = większość twoich prób jest oceniona przez ciebie
band = około { $low } do { $high }
standard-stands = Obowiązuje norma obliczona. Tempo między ćwiczeniami wymaga liczonych prób: { $runs }, osób: { $cooks }, z tego z próbami także w innym ćwiczeniu: { $linked }. Brakuje: { $missing }.
missing-runs = { $runs ->
    [one] jeszcze 1 próba
    [few] jeszcze { $runs } próby
    [many] jeszcze { $runs } prób
   *[other] jeszcze { $runs } próby
 }
missing-cooks = więcej osób
missing-links = osoby z próbami także w innym ćwiczeniu
missing-fit = niczego, będzie w ciągu minuty

## Kuchnie siostrzane

group-head = { $group }, kwartał { $quarter } roku { $year } dotychczas
site-line = { $name }: { $told }
site-met = { $percent } % osób w swoim oczekiwanym czasie w ostatnich dwóch tygodniach
site-few = ostatnio za mało osób, żeby porównać z ich własnym czasem
site-clean = { $percent } % talerzy dobrych za pierwszym razem
site-unwitnessed = nie ma jeszcze próby, którą ktoś widział
site-same = { $drill }, talerzy { $plates }, rozłożone tak samo: { $times }.
site-same-close = { $drill }, talerzy { $plates }, rozłożone tak samo: { $times }; różnica zbyt mała, by rozstrzygnąć.
group-apart = { $one } i { $other } nie mają wspólnej osoby ani wspólnego ćwiczenia: nie ma jeszcze wspólnej podstawy, więc nie ma liczby dla obu. Da ją to samo ćwiczenie w obu kuchniach.
group-one-site = { $group }: w tym kwartale liczone próby ma tylko jedna z kuchni albo żadna.
no-group = Ta kuchnia nie należy do żadnej grupy. Kuchnie siostrzane wpisuje w ustawieniach opiekun bota.
