## Język pokoju i własny

help-lang = `lang es`: to, co mówię ci prywatnie, w innym języku; `lang off`: znowu w języku pokoju; od szefa w pokoju: język pokoju. `lang` pokazuje wszystkie.
languages =
    Ten pokój: { $room }. To, co mówię ci prywatnie: { $own ->
        [none] tak samo
       *[other] { $own }
    }.
    Znam: { $known }. Napisz tutaj `lang es` dla siebie, `lang off`, żeby wrócić do języka pokoju; w pokoju język pokoju ustawia `!lang es` od szefa.
room-language-set = Ten pokój: { $language }. To, co każdy ma ustawione dla siebie, zostaje.
own-language-set = Język, w którym odpowiadam ci prywatnie: { $language }. `lang off` wraca do języka pokoju.
own-language-off = Prywatnie odpowiadam ci w języku pokoju: { $language }.
which-language = Tego języka jeszcze nie znam. Znam: { $known }.
