## Zdejmowanie i przywracanie

scrapped = Twoja próba z { $at } jest zdjęta. `undo` ją przywraca.
undone = Twoja próba z { $at } jest z powrotem.
nothing-to-scrap = Nie masz próby do zdjęcia.
nothing-to-undo = Nie masz próby do przywrócenia.

## Szef poprawia próbę

corrected-by = { $chef } poprawia twoją próbę z { $at }. { $line } Jeśli to się nie zgadza, porozmawiaj z tą osobą ({ $chef }); nic innego twojego się nie zmienia.
correct-own = Własną próbę poprawiasz, edytując jej wiadomość.
correct-which = Czyja próba? Odpowiedz na jej wiadomość przez `!correct 3:20 7/8` albo napisz `!correct @noor 3:20 7/8` dla ostatniej.
correct-how = Napisz na przykład `!correct @noor 3:20 7/8`: czas i dobre talerze tak, jak były.
help-correct = `correct @noor 3:20 7/8` albo w odpowiedzi na próbę: poprawia czyjąś próbę; ta osoba się o tym dowie.
