## Being counted in

first-message = I am Platepace: I post one plating drill a week and take your times.
    I keep results only of people who say `!join`: the clock, the good plates and who raised a hand. Ordinary talk is not kept by me; the chat itself keeps what you write.
    Results are for practice, never for pay, rota, promotion or discipline. Employment and data law are local, ask.
    Chef: `!drills` lists twelve drills, `!post 1 mon 15:00` starts a week, `!zone { $zone }` and `!dayturn 05:00` set the clock. `!words` lists the rest.
join-first = Held, not kept yet. I keep your clock, your good plates and who watched, to show you your own pace and the week's board; never for pay, rota, promotion or discipline. The chat itself keeps what you write. `yes` counts you in; unanswered it is erased in 48 hours.
joined = Counted in, { $name }. For practice, never for pay, rota, promotion or discipline; the chat itself keeps what you write.
counted-in = Counted in, { $name }.
left = Counted out, { $name }. I keep nothing new of yours. `!join` counts you in again.
