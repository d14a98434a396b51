## Przebieg pierwszych prób

help-trend = `trend` albo `trend 6`: moje pierwsze próby dnia, szybciej czy przypadek, i następna, prywatnie.
no-trend = Nie ma jeszcze próby. Twój przebieg w czasie zaczyna się od pierwszej.
trend-few = Pierwszych prób { $count } z { $needed }. Za wcześnie, by rozstrzygnąć.
trend-runs = { $drill }, pierwsza próba dnia: { $runs }.
trend-median = Mediana { $median }.
trend-luck = { $drill }, pierwsza próba dnia, ostatnich { $count }: mediana { $median }, żadnej zmiany, którą da się odróżnić od przypadku.
trend-real = { $drill }, pierwsza próba dnia, ostatnich { $count }: { $first } do { $last }, około { $percent } % na próbę, dwa spojrzenia się zgadzają: prawdziwe.
trend-redo = Powtórki { $was } % do { $now } %{ $verdict ->
    [faster-fewer] : szybciej i czyściej
    [faster-same] : szybciej, tak samo czysto
    [faster-more] : szybciej, więcej powtórek: zostań przy tym tempie
    [slower-fewer] : wolniej, ale czyściej: dobrze, zostań przy tym
    [slower-same] : wolniej, tak samo czysto
    [slower-more] : wolniej, więcej powtórek: spróbuj lżejszego tygodnia
   *[none] {""}
}.
trend-all = Próby: { $runs }.
trend-next = Następna próba: około { $low } do { $high }, w czterech przypadkach na pięć.
trend-short = * krótka próba, przeliczona na pełny układ według ruchów.
trend-carried = ({ $letter }) próba w układzie { $letter }, przeniesiona według tempa wyrównanego: norma { $there } tam, { $here } tutaj.
trend-slowest = Najwolniej wobec normy: { $technique }.
level-question =
    { $drill }: twoje ostatnie pierwsze próby ({ $count }) mieszczą się w 3 %, dobrych jest 90 % talerzy lub więcej. Czy coś z tego pomoże?
    1. Zmienić kolejność pracy: porównuje je `order`.
    2. Ćwiczyć osobno najkosztowniejszy krok.
    3. Mniej talerzy z ostrzejszą regułą.
    4. Lekki tydzień.
    5. Trudniejszy krok.
