## Próby w parze

pair-drill = { $name }, w parze
pair-names = { $one } i { $other }
kept-for-pair = Zapisane: { $runner } i { $partner }. { $line }
pair-by-one-of-two = Próbę w parze wysyła jedna z dwóch osób: `3:02 8/8 with @lio`, bez `for`.
pair-with-whom = Ćwiczenie { $drill } jest rozłożone dla dwojga. Napisz, z kim, na przykład `3:02 8/8 with @lio`.
pair-with-self = Próba w parze wymaga drugiej osoby; podaj ją, na przykład `3:02 8/8 with @lio`.
pair-one-plate = Ćwiczenie { $drill } ma jeden talerz, więc nie ma czego dzielić. Wyślij bez `with`.
