## Ręce do wydania

help-pickup = `pickup 120 in 20` albo `pickup 11 120 in 20`: ile par rąk wyda 120 talerzy w 20 minut i kto co robi; `pickup 120 in 20 with 4`.
pickup-fits = Zmieści się w { $limit }: { $hands }, { $time }.
pickup-not-with = Nie zmieści się w { $limit }; { $hands }: { $time }.
pickup-no-gain = Więcej rąk nic nie daje.
pickup-not = Nie zmieści się w { $limit }. { $many ->
    [one] Jedna para rąk potrzebuje
    [few] { $hands } potrzebują
    [many] { $hands } potrzebuje
   *[other] { $hands } potrzebują
 } { $time }; najwęższy krok jest przy { $narrowest }.
pickup-divided = { $shared }, { $hands }: { $time }.
pickup-shared = { $many } przy { $doing }
pickup-or-fewer = Albo { $pieces }, { $hands }: { $time }.
pickup-fewer = Gdy { $pieces }, { $hands }: { $time }.
pickup-no-hands = Nie wystarczy też { $most } par rąk, które dzielą kroki.
pickup-one-plate = Nie zmieści się w { $limit }: same ruchy na jednym talerzu zajmują { $touch }.
pickup-plating-only = Samo układanie: dodaj własne grzanie, noszenie i kontrolę.
pickup-tasks = Pary rąk { $tasks }.
pickup-task = { $who }: { $steps }
pickup-in-turn = { $steps }, talerze na zmianę
pickup-step = { $component } { $technique }
pickup-sum = Jeden talerz { $touch } s, potem { $more } x { $largest } s: { $time }. { $limit } to talerz co { $takt } s.
pickup-own-pace = W tempie tej kuchni, { $ratio } x norma: { $time }.
pickup-how = Napisz liczbę talerzy, potem minuty, na przykład `pickup 120 in 20` albo `pickup 11 120 in 20`; `with 4` to cztery pary rąk.
pickup-out-of-range = Planuję talerzy od 1 do { $plates }, par rąk od 1 do { $hands } i najwyżej 12 godzin, na przykład `pickup 120 in 20`.

hands = { $many ->
    [1] jedna para rąk
    [2] dwie pary rąk
    [3] trzy pary rąk
    [4] cztery pary rąk
    [5] pięć par rąk
    [6] sześć par rąk
    [7] siedem par rąk
    [8] osiem par rąk
    [9] dziewięć par rąk
    [10] dziesięć par rąk
    [few] { $many } pary rąk
    [many] { $many } par rąk
   *[other] { $many } pary rąk
 }
hands-first = { $many ->
    [2] Dwie pary rąk
    [3] Trzy pary rąk
    [4] Cztery pary rąk
    [5] Pięć par rąk
    [6] Sześć par rąk
    [7] Siedem par rąk
    [8] Osiem par rąk
    [9] Dziewięć par rąk
    [10] Dziesięć par rąk
   *[other] { $many } par rąk
 }
counted = { $many ->
    [1] jedna
    [2] dwie
    [3] trzy
    [4] cztery
    [5] pięć
    [6] sześć
    [7] siedem
    [8] osiem
    [9] dziewięć
    [10] dziesięć
    [few] { $many }
    [many] { $many }
   *[other] { $many }
 }
counted-first = { $many ->
    [1] Jedna
    [2] Dwie
    [3] Trzy
    [4] Cztery
    [5] Pięć
    [6] Sześć
    [7] Siedem
    [8] Osiem
    [9] Dziewięć
    [10] Dziesięć
    [few] { $many }
    [many] { $many }
   *[other] { $many }
 }

## Jak nazywają się kroki (w miejscowniku, po „przy”; własna technika kuchni pod swoją nazwą)

doing = { $technique ->
    [set] kładzeniu głównego elementu
    [place] kładzeniu
    [pair] kładzeniu oburącz
    [leaf] listkach
    [dot] kropkach
    [bead] kroplach
    [mound] kopczyku
    [pull] rozciąganiu
    [line] linii
    [brush] malowaniu pędzlem
    [crumb] kruszonce
    [shingle] układaniu na zakładkę
    [sauce] sosie
    [lean] opieraniu
    [twirl] zwijaniu
    [quenelle] quenelle
    [two-spoon-quenelle] quenelle
    [ring-fill] napełnianiu ringu
    [press] dociskaniu
    [lift] zdejmowaniu ringu
    [wipe] wycieraniu
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many ->
        [one] { $many } listek
        [few] { $many } listki
        [many] { $many } listków
       *[other] { $many } listka
     }
    [dot] { $many ->
        [one] { $many } kropka
        [few] { $many } kropki
        [many] { $many } kropek
       *[other] { $many } kropki
     }
    [bead] { $many ->
        [one] { $many } kropla
        [few] { $many } krople
        [many] { $many } kropli
       *[other] { $many } kropli
     }
    [shingle] { $many ->
        [one] { $many } plasterek
        [few] { $many } plasterki
        [many] { $many } plasterków
       *[other] { $many } plasterka
     }
    [twirl] { $many ->
        [one] { $many } zwitek
        [few] { $many } zwitki
        [many] { $many } zwitków
       *[other] { $many } zwitka
     }
    [quenelle] { $many ->
        [one] { $many } quenelle
        [few] { $many } quenelle
        [many] { $many } quenelle
       *[other] { $many } quenelle
     }
    [two-spoon-quenelle] { $many ->
        [one] { $many } quenelle
        [few] { $many } quenelle
        [many] { $many } quenelle
       *[other] { $many } quenelle
     }
    [sauce] { $many ->
        [one] { $many } łyżka
        [few] { $many } łyżki
        [many] { $many } łyżek
       *[other] { $many } łyżki
     }
   *[other] { $many } { $component }
 }
