## Przed próbą i po niej

help-declare = `declare` przed próbą mówi, że się liczy, dobra czy zła: zajmuje od teraz jedną z moich pięciu prób tygodnia. Wynik wyślij jak zawsze.
help-clock = `clock` zaczyna próbę mierzoną przez czat, aż do `stop`. Oznaczona jako mierzona przez czat; nie daje najlepszego czasu ani miejsca. Własny stoper jest lepszy.
help-stop = `stop` kończy próbę zaczętą przez `clock` i pyta, ile było dobrych.
declared = Zapowiedziane: twoja następna próba, { $drill }, liczy się, jakkolwiek wyjdzie.
declared-already = Jedna próba jest już zapowiedziana; wyślij jej wynik, na przykład `3:02 8/8` albo `2:10 stopped 5`.
declare-when-joined = Zapowiadać mogą osoby, które dołączyły: najpierw `!join`.
declare-no-board = Ćwiczenie { $drill } nie ma w tym tygodniu otwartej tablicy, więc nie ma czego zapowiadać. Wyślij próbę jak zawsze.
chat-timed = Mierzone przez czat: bez najlepszego czasu i bez miejsca.
clock-not-started = Twój zegar nie chodzi. Zaczyna go `!clock`; albo wyślij czas z własnego stopera, na przykład `3:02 8/8`.
