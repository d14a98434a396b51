## The language of the room and one's own

help-lang = `lang es`: lo que te digo en privado, en otro idioma; `lang off`: otra vez el de la sala; de un chef en la sala, el idioma de la sala. `lang` los enumera.
languages =
    Esta sala: { $room }. Lo que te digo en privado: { $own ->
        [none] igual
       *[other] { $own }
    }.
    Hablo { $known }. Escribe aquí `lang es` para ti, `lang off` para el de la sala; en la sala, el `!lang es` de un chef fija el de la sala.
room-language-set = Esta sala: { $language }. Lo que cada cual fijó para sí queda.
own-language-set = En privado te respondo en este idioma: { $language }. `lang off` vuelve al idioma de la sala.
own-language-off = En privado te respondo en el idioma de la sala, { $language }.
which-language = Aún no hablo ese idioma. Hablo { $known }.
