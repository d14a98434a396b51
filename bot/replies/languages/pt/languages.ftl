## A língua da sala e a própria

help-lang = `lang es`: o que lhe digo em privado, noutra língua; `lang off`: de novo a da sala; de um chef na sala, a língua da sala. `lang` mostra quais há.
languages =
    Esta sala: { $room }. O que lhe digo em privado: { $own ->
        [none] a mesma
       *[other] { $own }
    }.
    Falo { $known }. Diga `lang es` aqui para si, `lang off` para a da sala; na sala, `!lang es` de um chef define a da sala.
room-language-set = Esta sala: { $language }. O que cada pessoa definiu para si fica.
own-language-set = Em privado respondo a você em { $language }. `lang off` volta à língua da sala.
own-language-off = Em privado respondo a você na língua da sala, { $language }.
which-language = Essa língua ainda não falo. Falo { $known }.
