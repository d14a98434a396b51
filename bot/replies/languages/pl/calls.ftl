## Ile zmieści się w okienku

help-slot = `slot 25` albo `slot 6 25`: ile uczciwych prób zmieści się w 25 minutach, z oceną i przygotowaniem do następnej; prywatnie według twojej mediany.
slot-fits = { $runs ->
    [one] { $many } uczciwa próba mieści
    [few] { $many } uczciwe próby mieszczą
    [many] { $many } uczciwych prób mieści
   *[other] { $many } uczciwych prób mieści
 } się w { $slot }: { $drill }.
slot-none = Ani jedna uczciwa próba nie zmieści się w { $slot } ({ $drill }); najkrótsze okienko na jedną to { $shortest }.
slot-day-limit = Zmieściłoby się więcej; ze względu na ręce dziennie najwyżej { $runs }.
slot-each = Każda { $each }: próba { $run } ({ $by ->
    [own] twoja mediana, prób { $count }
   *[standard] norma
 }), ocena { $judging }, przygotowanie do następnej { $reset }.
slot-sum = Rozłożenie { $laying }, { $runs } x { $each }, sprzątanie { $clearing }: { $taken }.
slot-how = Napisz minuty, na przykład `slot 25`, albo `slot 6 25` dla ćwiczenia 6.

## Arkusze komend

help-calls = `calls 2` albo `calls 6 2`: arkusz komend poziomu od 1 do 3, który druga osoba czyta na głos, wysyłany prywatnie; `calls 2 sheet 417` daje ten sam jeszcze raz.
calls-head = { $drill }, komendy poziomu { $level }, arkusz { $number }: talerzy { $plates }, ruchów { $touches }, norma { $standard }.
calls-sum = { $plates ->
    [one] 1 talerz
    [few] { $plates } talerze
    [many] { $plates } talerzy
   *[other] { $plates } talerza
 } { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s ręce przy sobie
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s pominięte
 } = { $total } s.
calls-read = Dla osoby, która czyta na głos przy włączonym stoperze; wstrzymaj komendę, gdy ktoś ma w ręku nóż, ogień albo gorącą patelnię.
call-how-long = { $at } „Ile jeszcze?”
call-send-four = { $at } „Wydaj teraz cztery.”
call-swap = { $at } „Talerz { $plate } bez: { $component }.”
call-one-more = { $at } „Jeszcze jeden talerz.”
call-wait = { $at } „Czekaj, ręce przy sobie, { $wait } s.”
calls-send = Zapisz każdą odpowiedź na „Ile jeszcze?” i porównaj po zatrzymaniu. Wyślij próbę jako `{ $example }`.
calls-which-level = Który poziom? `calls 1`, `calls 2` albo `calls 3`, albo `calls 6 2` dla ćwiczenia 6.
calls-level-too-high = Ta próba jest za krótka na poziom { $level }: komend { $calls }, co najmniej { $gap } s odstępu, żadna na początku, na końcu ani przy gorącym. Zmieści się `calls { $highest }`.
calls-too-short = Ta próba jest za krótka na komendy; najpierw rozłóż więcej talerzy.
