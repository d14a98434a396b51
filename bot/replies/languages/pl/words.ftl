## Słowa

words-cook = Wszyscy: czas i dobre talerze, na przykład `3:02 8/8`; { $words }.
words-chef = Szef: { $words }.
words-how = W pokoju daj `!` przed słowem; w naszym prywatnym pokoju wystarczy samo słowo. `!words trend` wyjaśnia jedno.
help-join = `join`: dołączam; mówi, co się zapisuje.
help-leave = `leave`: rezygnuję; nic nowego się nie zapisuje.
help-scrap = `scrap`: zdejmuje moją ostatnią próbę.
help-undo = `undo`: przywraca ją.
help-best = `best` albo `best 6`: moje najlepsze czasy, prywatnie.
help-why = `why`: całe wyliczenie mojej ostatniej próby, prywatnie.
help-spec = `spec` albo `spec 6`: karta ćwiczenia.
help-drills = `drills`: wszystkie ćwiczenia tej kuchni.
help-board = `board` albo jedno z `own`, `fast`, `steady`, `clean`, `house`, `quarter`, `group`, na przykład `board fast`: pierwsze miejsca; prywatnie także twoje.
help-draft = `draft NAME`, potem wiersz `plates 8 rows 2`, potem kroki, na przykład `1. 7 courgette, shingle, at 10-4`. `draft 6` wychodzi od ćwiczenia 6.
help-step = `step 2 2 triangle, lean`: zmienia jeden krok szkicu albo otwartego ćwiczenia.
help-plates = `plates 10`: inna liczba talerzy.
help-rows = `rows 2`: inna liczba rzędów.
help-publish = `publish`: nadaje szkicowi numer, żeby można go było ogłosić.
help-post = `post 6 mon 15:00`: ogłasza ćwiczenie 6 co tydzień; `post mon 15:00` najnowsze; `post now 6` od razu; `post` pokazuje listę.
help-skip = `skip`: pomija następne cotygodniowe ogłoszenie.
help-hold = `hold`: bez cotygodniowego ogłoszenia, aż zostanie znowu ustawione.
help-close = `close`: zamyka teraz otwartą tablicę.
help-zone = `zone Europe/London`: strefa czasowa kuchni.
help-dayturn = `dayturn 05:00`: kiedy zmienia się dzień kuchni.
help-replies = `replies short`: sama ikona notesu; `replies full`: jeden wiersz na próbę.
help-words = `words`: wszystkie słowa; `words trend`: jedno z nich.
which-step = Napisz na przykład `!step 2 2 triangle, lean`.
