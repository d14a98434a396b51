## La langue du salon et la sienne

help-lang = `lang es` : ce que je te dis en privé, dans une autre langue ; `lang off` : de nouveau celle du salon ; d'un chef dans le salon, la langue du salon. `lang` les montre.
languages =
    Ce salon : { $room }. Ce que je te dis en privé : { $own ->
        [none] la même
       *[other] { $own }
    }.
    Je parle { $known }. Dis `lang es` ici pour toi, `lang off` pour celle du salon ; dans le salon, `!lang es` d'un chef fixe celle du salon.
room-language-set = Ce salon : { $language }. Ce que chacun a choisi pour soi reste.
own-language-set = En privé je te réponds en { $language }. `lang off` reprend la langue du salon.
own-language-off = En privé je te réponds dans la langue du salon, { $language }.
which-language = Je ne parle pas encore cette langue. Je parle { $known }.
