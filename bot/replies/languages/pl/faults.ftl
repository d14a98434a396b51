## Usterki

my-fault = Z tym wierszem coś poszło nie tak po mojej stronie; opiekun bota już o tym wie. Wyślij go proszę później jeszcze raz.
unreadable-message = Nie mogę odczytać tej wiadomości: jej klucz do mnie nie dotarł. Wyślij ją proszę jeszcze raz.
dead-event = Zdarzenie { $event } nie powiodło się trzy razy ({ $problem }) i zostało odłożone.
dead-message = Wiadomość do { $lane } została odrzucona ({ $problem }) i odłożona.
dead-join = Bot nie może wejść do { $room }, który zastępuje pokój kuchni ({ $problem }). Zaproś go tam.
not-replaced = { $room }: zastąpienie tego pokoju ogłosił ktoś, kto nie ma do tego prawa. Kuchnia zostaje, gdzie jest.
names-no-predecessor = { $old } miał zostać zastąpiony przez { $new }, ale tamten pokój tego nie potwierdza albo jest już kuchnią. Kuchnia zostaje, gdzie jest.
kitchen-moved = Kuchnia z { $old } jest teraz w { $new }. Tam, gdzie ustawienia podają stary pokój, wpisz nowy.
moved-here = Kuchnia jest teraz tutaj: ćwiczenia, wyniki i ogłoszenia idą dalej jak dotąd.
moved-here-live = Kuchnia jest teraz tutaj: ćwiczenia, wyniki i ogłoszenia idą dalej jak dotąd. Otwarte: { $drills }, wyniki w tym wątku albo gdziekolwiek w pokoju.
flooding = To więcej linii, niż mogę naraz odpowiedzieć. Wyniki, które da się odczytać, są zachowane. Poczekaj dwie minuty i pisz dalej.
post-missed-in = Cotygodniowy wpis ćwiczenia { $drill } w { $room } miał się ukazać ponad 12 godzin temu, gdy bot nie działał, i został pominięty. Kuchnia o tym wie.
somebody = pewna osoba
