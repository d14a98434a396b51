## Co o mnie wiadomo, zapomnij mnie, ból

help-records = `records`: wszystko, co o tobie trzymam, prywatnie, jako plik JSON; `records csv` jako tabela, `records text` w wiadomościach.
help-forget = `forget me`: usuwa wszystko, co o tobie trzymam; pytam o to jeszcze raz w naszym prywatnym pokoju.
help-sore = `sore`, tylko w naszym prywatnym pokoju: co robić. Nic się nie zapisuje.

records =
    Co o tobie trzymam, tak jak zapisane, według tabel: { $counts }.
    Do twoich ćwiczeń, nigdy do płacy, grafiku, awansu ani kar. Wcześniejsze kopie zapasowe trzyma opiekun bota: zapytaj tam.
    Jeśli nie ma obok pliku, napisz `records text`.
records-spelt =
    Co o tobie trzymam, tak jak zapisane, według tabel: { $counts }.
    { $parts ->
        [one] Przychodzi w jednej wiadomości; skopiuj ją do pliku bez zmian.
        [few] Przychodzi w wiadomościach, jest ich { $parts }; złóż je po kolei, razem to jeden plik.
        [many] Przychodzi w wiadomościach, jest ich { $parts }; złóż je po kolei, razem to jeden plik.
       *[other] Przychodzi w wiadomościach, jest ich { $parts }; złóż je po kolei, razem to jeden plik.
    }
which-records = Napisz `records`, żeby dostać plik JSON, `records csv`, żeby dostać tabelę, albo `records text`, żeby dostać wiadomości.
records-none = Nie trzymam o tobie niczego poza tym, że jesteś w pokoju.
forget-whom = Tylko ty o sobie: `forget me`.
forget-first = Napisz najpierw `forget me`; potem zapytam jeden raz.
forget-sure =
    To usuwa twoje próby, linki do zdjęć, słowa, pytania, szkice, rolę i imię w tej kuchni. Nie da się tego cofnąć.
    Zamknięte tablice zachowują sumy i pokazują "ktoś z kuchni". Uniesione przez ciebie ręce zostają jako liczba, bez ciebie.
    To, co zostało przez ciebie napisane w pokoju, tam zostaje. Wcześniejsze kopie zapasowe trzyma opiekun bota: zapytaj tam.
    `yes, forget me`, tutaj w naszym prywatnym pokoju, usuwa to w ciągu 12 godzin.
forgotten =
    Usunięte. Nie trzymam teraz o tobie niczego poza tym, że jesteś w pokoju.
    To, co zostało przez ciebie napisane w pokoju, tam zostaje. Wcześniejsze kopie zapasowe trzyma opiekun bota: zapytaj tam.
sore = Drętwienie, mrowienie albo ból: przerwij i zgłoś się do specjalisty. Nic z tego nie jest zapisywane.
sore-in-private = Proszę w naszym prywatnym pokoju: tam odpowiadam na `sore` i nic z tego nie jest zapisywane.
