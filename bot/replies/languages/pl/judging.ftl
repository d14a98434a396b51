## Kropki zmierzone na talerzu

help-dots = `dots 10 10 9 11 10`: czy te szerokości w mm są równe; `dots 10 10 9 of 10` wobec zadanej szerokości; `dots 14 12 9 of 14 12 10` malejące.
dots-even = Średnia { $mean }, rozrzut { $spread } %: dobre.
dots-uneven = Średnia { $mean }, rozrzut { $spread } %: powtórka, równe to najwyżej { $most } %.
dots-as-called = Średnia { $mean }, rozrzut { $spread } %, każda w granicach { $leeway } mm od { $called }: dobre.
dots-off-size = Średnia { $mean }, rozrzut { $spread } %: powtórka, kropka { $nth } ({ $width }) odbiega o ponad { $leeway } mm od { $called }.
dots-graded = Kropek { $count }, każda mniejsza o co najmniej { $step } mm, skrajne w granicach { $leeway } mm od { $first } i { $last }: dobre.
dots-not-graded = Powtórka: kropka { $nth } ({ $width }) nie jest mniejsza o co najmniej { $step } mm od poprzedniej ({ $before }).
dots-off-ends = Powtórka: kropka { $nth } ({ $width }) odbiega o ponad { $leeway } mm od { $called }.
dots-too-few = Zmierz dwie kropki lub więcej, na przykład `dots 10 10 9 11 10`.
dots-too-many = Zmierz kropek najwyżej { $most }; to kontrola wyrywkowa.
dots-unreadable = Nie udało mi się odczytać „{ $typed }” jako szerokości w mm; pisz szerokości z odstępami, na przykład `dots 10 9.5 11`.
dots-out-of-range = Kropka ma więcej niż 0 i najwyżej { $most } mm szerokości; wyślij szerokości jeszcze raz, na przykład `dots 10 10 9 11 10`.
dots-how-called = Po `of` napisz jedną szerokość, na przykład `dots 10 10 9 of 10`, albo po jednej dla każdej kropki, na przykład `dots 14 12 9 of 14 12 10`.
