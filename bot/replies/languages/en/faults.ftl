## Faults

my-fault = Something went wrong on my side with that line, and whoever runs me has been told. Please send it again later.
flooding = Those are more lines than I can answer at once. Results that I can read are kept. Wait two minutes, then go on.
unreadable-message = I could not read this message: its key has not reached me. Please send it again.
dead-event = Event { $event } failed three times ({ $problem }) and was set aside.
dead-message = A message to { $lane } was refused ({ $problem }) and was set aside.
dead-join = The bot cannot come into { $room }, which replaces the room of a kitchen ({ $problem }). Invite it there.
post-missed-in = The weekly post of drill { $drill } in { $room } was due more than 12 hours ago, while the bot was away, and was left out. The kitchen has been told.
somebody = a person
not-replaced = { $room } was declared replaced by somebody who may not do that. The kitchen stays where it is.
names-no-predecessor = { $old } was declared replaced by { $new }, which does not say that it replaces it, or is a kitchen already. The kitchen stays where it is.
kitchen-moved = The kitchen of { $old } is now in { $new }. Where the settings name the old room, put the new one.
moved-here = The kitchen has moved here: drills, results and posts go on as before.
moved-here-live = The kitchen has moved here: drills, results and posts go on as before. Open: { $drills }, with results in this thread or anywhere in the room.
