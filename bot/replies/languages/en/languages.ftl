## The language of the room and one's own

help-lang = `lang es`: what I tell you in private, in another language; `lang off`: the room's again; from a chef in the room, the room's language. `lang` lists them.
languages =
    This room: { $room }. What I tell you in private: { $own ->
        [none] the same
       *[other] { $own }
    }.
    I speak { $known }. Say `lang es` here for yourself, `lang off` for the room's; in the room a chef's `!lang es` sets the room's.
room-language-set = This room: { $language }. What each person set for themselves stays.
own-language-set = In private I answer you in { $language }. `lang off` takes the room's language again.
own-language-off = In private I answer you in the room's language, { $language }.
which-language = I do not speak that language yet. I speak { $known }.
