## What is held about me, forget me, sore

help-records = `records`: everything that I hold about you, in private, as a JSON file; `records csv` as a table, `records text` in messages.
help-forget = `forget me`: erases everything that I hold about you; asked once more in our private room.
help-sore = `sore`, in our private room alone: what to do. Nothing is stored.

records =
    Held about you, as kept, by table: { $counts }.
    For your practice, never for pay, rota, promotion or discipline. Backups made before are kept by whoever runs me: ask them.
    Without a file beside this, say `records text`.
records-spelt =
    Held about you, as kept, by table: { $counts }.
    { $parts ->
        [1] It follows in one message; copy it into a file as it is.
       *[other] It follows in { $parts } messages; put them together in order, and they are one file.
    }
which-records = Say `records` for a JSON file, `records csv` for a table, or `records text` for messages.
records-none = I hold nothing about you but that you are in the room.
forget-whom = Only you yourself: `forget me`.
forget-first = Say `forget me` first; then I ask once.
forget-sure =
    This erases your runs, photo links, words, questions, drafts, role and name here. It cannot be undone.
    Closed boards keep their sums and read "a cook". Hands you raised stay as a count, without you.
    What you wrote in the room itself stays there. Backups made before are kept by whoever runs me: ask them.
    `yes, forget me`, here in our private room, does it within 12 hours.
forgotten =
    Forgotten. I hold nothing about you now but that you are in the room.
    What you wrote in the room itself stays there. Backups made before are kept by whoever runs me: ask them.
sore = Numbness, tingling or pain: stop, and see a qualified person. Nothing of this is stored.
sore-in-private = In our private room, please: `sore` is answered there, and nothing of it is stored.
