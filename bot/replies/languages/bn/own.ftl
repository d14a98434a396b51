## সেরা সময়

first-mark = { $name }-এর প্রথম সময়, { $drill }: { $time }।
new-best = { $name }-এর নতুন সেরা সময়, { $drill }: { $time }, { $by } s কম।
best-again = সংশোধন: { $drill }-এ { $name }-এর সেরা সময় { $time }।
best-gone = সংশোধন: { $drill }-এ { $name }-এর এমন কোনো সেরা সময় এখন নেই, যা কেউ দেখেছে।
best-luck = নতুন সেরা সময়, { $by } s কম। তোমার দফাগুলোয় সাধারণত প্রায় { $noise } s তফাত হয়: এর কাছাকাছি আরও দুটি হলে বোঝা যাবে।
best-line = { $drill }: { $time }, { $day }, { $plates }টির মধ্যে { $accepted }টি।
best-unwitnessed = { $drill }: প্রথম সময় { $time }, { $day }। যে দেখেছে সে হাত তুললে এটা সেরা সময় হয়।
no-best = এখনো সময়সহ কোনো দফা নেই। একটা পাঠাও, যেমন `3:02 8/8`।

## কেন

why-clock = { $drill }, { $clock } = { $seconds } s, { $attempted }টির মধ্যে { $accepted }টি ভালো।
why-charge = একটা ফেরত: প্লেট বদল { $change } s + (একটা প্লেট একা { $alone } s x তোমার গতি { $clock_s }/{ $standard }) = { $one } s।
why-net = ফেরত { $redo } x { $attempted }/{ $accepted } (আবারও ফেরত আসতে পারে বলে) x { $one } s = { $charge } s। নিট { $seconds } + { $charge } = { $net } s = { $time }।
why-pace = { $net } s / { $touches } ছোঁয়া = প্রতি ছোঁয়ায় { $pace } s।
why-levelled = স্ট্যান্ডার্ড { $standard } s / 1.5 = { $levelled_touches } সমমান ছোঁয়া; { $net } / { $levelled_touches } = সমমানে { $levelled }।
why-fitted = হিসাব করা স্ট্যান্ডার্ড { $standard }; রান্নাঘরের দফাগুলো বলে x { $factor } ({ $low } থেকে { $high }), { $cooks } জন কুকের { $runs }টি দফা থেকে।
why-unfitted = হিসাব করা স্ট্যান্ডার্ড { $standard } বহাল। মেলানো স্ট্যান্ডার্ডের জন্য এখনো লাগে: { $missing }।
why-not-compared = হিসাব করা স্ট্যান্ডার্ড { $standard } বহাল: 1:00-এর কম হলে, ডাক থাকলে বা দুজনে করলে অন্য অনুশীলনের সঙ্গে মেলানো হয় না।
why-no-time = { $attempted }টির মধ্যে { $gate }টির কম ভালো: সংখ্যা আছে, সময় নেই।
no-why = বোঝানোর মতো তোমার কোনো দফা এখনো নেই।
