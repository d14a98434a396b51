## Mise

mise-head = Mise, { $name } (ćwiczenie { $label }): { $runs ->
    [one] jedna próba
    [few] { $runs } próby
    [many] { $runs } prób
   *[other] { $runs } próby
 } na { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }, w tym { $spare } % zapasu. Talerze: { $total }{ $runs ->
    [one] {""}
    [few] , myte między próbami
    [many] , myte między próbami
   *[other] , myte między próbami
 }.
mise-need = - { $component }: { $total } ({ $plate } na talerz){ $where ->
    [nowhere] {""}
    [measured] , i { $stays }, które zostają w: { $tool }
   *[unmeasured] , i to, co mieści: { $tool }
 }
mise-tools = Narzędzia: { $tools }.
mise-back = Wraca do następnej próby: { $list }.
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }(prób najwyżej { $runs })
 }
mise-lives = Na talerzu trzyma się: { $list }.
mise-life = { $component } { $life }
mise-same-day = W chłodzie do próby, wyrzucane tego samego dnia: { $list }.
mise-how = Podaj, na ile prób, od 1 do { $most }, i na które ćwiczenie, na przykład `mise 2` albo `mise 2 11B`.
help-mise = `mise` albo `mise 2 11B`: wszystko na jedną próbę albo na dwie ćwiczenia 11B.

## Kolejność pracy

order-head = { $name } (ćwiczenie { $label }), { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }. Czas i jak długo czeka każdy składnik:
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] : { $waits }
 }
order-component = krok po kroku
order-waves = fale po { $wave }
order-plate = talerz po talerzu
order-own = { $way } (jak ustawiono)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (trzyma się { $life })
order-best-life = Największa partia, przy której wszystko się trzyma: { $way }.
order-none-keeps = Przy żadnej wszystko się nie utrzyma. Mniej talerzy albo dłuższa trwałość.
order-fastest = Najszybciej: { $way }. Gdy krok ma trwałość (`; life 90s`), wybieram największą partię, przy której się utrzyma.
help-order = `order` albo `order 6`: porównanie kolejności pracy, ich czasów i tego, jak długo czeka każdy składnik.

## Koszty (dla szefa, prywatnie)

cost-head = { $name } (ćwiczenie { $label }), ile zamienników zużywa próba na { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 }:
cost-line = - { $component }: { $parts }; { $total } x { $price } = { $cost }
cost-unpriced = - { $component }: { $parts }; bez ceny, na przykład `price { $component } 0.02` za { $unit ->
    [piece] sztukę
   *[other] 1 { $unit }
 }
cost-used-up = { $amount } zużyte
cost-again = { $amount } na talerze złożone od nowa
cost-thrown = { $amount } wyrzucone na koniec dnia
cost-week = W tym tygodniu: prób { $runs }, powtórek { $redo }, złożonych od nowa { $rebuilt }.
cost-run = Próba: { $run }. Zamienniki na jeden talerz złożony od nowa: { $again }.
cost-pass = { $redo ->
    [one] 1 powtórka na wydawce to 1 talerz po { $dish }.
    [few] { $redo } powtórki na wydawce to { $redo } talerze po { $dish }: { $cost }.
    [many] { $redo } powtórek na wydawce to { $redo } talerzy po { $dish }: { $cost }.
   *[other] { $redo } powtórki na wydawce to { $redo } talerza po { $dish }: { $cost }.
 }
cost-no-dish = `price dish 14.50` podaje, ile gość płaci za prawdziwe danie.
price-currency = Ceny są w { $currency }. Podane wcześniej zachowują swoje liczby.
price-currency-first = Podaj najpierw walutę kuchni, jej kodem, na przykład `price EUR`.
price-which-currency = Nie znam waluty { $code }. Wyślij jej trzyliterowy kod, na przykład `price EUR`.
price-too-fine = { $currency }: { $digits ->
    [0] nie ma mniejszej monety
   *[other] cyfr po przecinku jest { $digits }
 }. Napisz na przykład `price dish { $example }`.
price-no-component = W tym ćwiczeniu nie ma: { $component }; jest: { $components }.
price-how = Napisz na przykład `price courgette 0.04` za sztukę, ml albo g, `price dish 14.50` albo `price EUR`.
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR`; `price` albo `price 6`: ile kosztuje próba, prywatnie.
