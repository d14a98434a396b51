## Ogłaszanie

scheduled = Ustawione. { $post }
schedule-line = { $when } ({ $zone }): { $what }. Następne: { $next }.
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } { $month }
week-of = tydzień od: { $day }
month-1 = stycznia
month-2 = lutego
month-3 = marca
month-4 = kwietnia
month-5 = maja
month-6 = czerwca
month-7 = lipca
month-8 = sierpnia
month-9 = września
month-10 = października
month-11 = listopada
month-12 = grudnia
drill-named = ćwiczenie { $label }, { $name }
the-newest = ćwiczenie opublikowane jako ostatnie
held = wstrzymane
schedule-help = `!post move 1 tue 14:30` przenosi jedno, `!post 1 off` odwołuje je, `!skip 1` pomija następne, `!hold 1` wszystkie, aż ustawisz je znowu.
no-schedule = Nie ma jeszcze cotygodniowego ogłoszenia. Ustaw je na przykład tak: `!post 6 mon 15:00`.
which-schedule = { $most ->
    [one] Jest jedno cotygodniowe ogłoszenie
    [few] Są { $most } cotygodniowe ogłoszenia
    [many] Jest { $most } cotygodniowych ogłoszeń
   *[other] Jest { $most } cotygodniowego ogłoszenia
 }. Podaj numer z `!post`, na przykład `!skip 1`.
post-what = Które ćwiczenie? Podaj je, na przykład `!post 6 mon 15:00`; listę daje `!drills`.
post-when = Napisz dzień tygodnia i godzinę, na przykład `!post mon 15:00`, albo `!post now`.
cancelled = Odwołane: { $when }. Nic już wtedy nie ogłaszam.
skipping = Pominięte: { $day }. Następne ogłoszenie: { $after }.
holding = Wstrzymane: { $when }, nic nie ogłaszam, aż ustawisz to znowu, na przykład `{ $again }`.
already-posted = Ćwiczenie { $drill } było już ogłoszone w tym tygodniu; znowu będzie można je ogłosić od poniedziałku.
post-missed = Ćwiczenie { $drill } miało być ogłoszone ponad 12 godzin temu, podczas mojej nieobecności, i nie zostało ogłoszone. Ogłasza je `!post now { $drill }`.
nothing-published = Przyszła pora ogłoszenia, ale żadne ćwiczenie nie jest opublikowane. Kurs pokazuje `!drills`; `!post 6 mon 15:00` wskazuje ćwiczenie.

## Ustawienia kuchni

zone-set = Godziny czytam i pokazuję w strefie { $zone }.
unknown-zone = Nie znam tej strefy czasowej. { $near ->
    [none] Napisz na przykład `!zone Europe/London`.
   *[other] Podobne: { $near }.
 }
day-turn-set = Dzień kuchni zmienia się o { $at }.
which-time = Napisz godzinę, na przykład `!dayturn 05:00`.
replies-full = Na każdą próbę odpowiadam jednym wierszem.
replies-short = Na każdą próbę odpowiadam samą ikoną notesu.
which-replies = Napisz `!replies full` albo `!replies short`.
quiet-hours = Cicha pora: { $hours }. Ogłoszenia i przypomnienia czekają do jej końca; odpowiedzi nie.
quiet-off = Bez cichej pory: ogłoszenia i przypomnienia przychodzą o każdej godzinie.
quiet-how = Napisz na przykład `!quiet 22:00-09:00` albo `!quiet off`.
help-quiet = `quiet 22:00-09:00`: pora, w której ogłoszenia i przypomnienia czekają; `quiet off`, żeby jej nie było.

## Przerwa w dzielonej zmianie

rest-set = Twoja przerwa: { $hours }. Nie wysyłam ci wtedy niczego, o co nie pytasz. Najpierw ustawowe przerwy i odpoczynek dobowy; ćwiczenia w nie nie wchodzą.
rest-off = Nie pilnuję już żadnej twojej przerwy.
rest-none = Nie znam żadnej twojej przerwy. Ustawia ją `rest 15:00-17:00`.
rest-how = Napisz na przykład `rest 15:00-17:00` albo `rest off`.
resting-then = { $people ->
    [one] Jedna osoba ma
    [few] { $people } osoby mają
    [many] { $people } osób ma
   *[other] { $people } osoby ma
 } wtedy przerwę; ćwiczenia w nią nie wchodzą.
help-rest = `rest 15:00-17:00`: przerwa w mojej dzielonej zmianie, w której nie dostaję niczego, o co nie pytam; `rest off` ją kończy.

## Dni tygodnia

weekday-1 = poniedziałek
weekday-2 = wtorek
weekday-3 = środa
weekday-4 = czwartek
weekday-5 = piątek
weekday-6 = sobota
weekday-7 = niedziela
