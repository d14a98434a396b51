## শব্দ

words-cook = সবার জন্য: সময় আর ভালো প্লেট, যেমন `3:02 8/8`; { $words }।
words-chef = শেফ: { $words }।
words-how = ঘরে শব্দের আগে `!` দাও; আমাদের ব্যক্তিগত ঘরে শুধু শব্দটাই চলে। `!words trend` একটা বুঝিয়ে দেয়।
help-join = `join`: আমাকে যোগ করো; কী রাখা হয় তা বলে।
help-leave = `leave`: আমাকে বাদ দাও; নতুন কিছু রাখা হয় না।
help-scrap = `scrap`: আমার শেষ দফা তুলে নাও।
help-undo = `undo`: তা ফেরাও।
help-best = `best` বা `best 6`: আমার সেরা সময়, ব্যক্তিগত ঘরে।
help-why = `why`: আমার শেষ দফার পুরো হিসাব, ব্যক্তিগত ঘরে।
help-spec = `spec` বা `spec 6`: অনুশীলনের কার্ড।
help-drills = `drills`: এই রান্নাঘরের সব অনুশীলন।
help-board = `board`, বা `own`, `fast`, `steady`, `clean`, `house`, `quarter`, `group`-এর একটি, যেমন `board fast`: প্রথম স্থানগুলো; ব্যক্তিগত ঘরে তোমারটাও।
help-draft = `draft NAME`, তারপর একটা লাইন `plates 8 rows 2`, তারপর ধাপ, যেমন `1. 7 courgette, shingle, at 10-4`। `draft 6` শুরু করে 6 নম্বর অনুশীলন থেকে।
help-step = `step 2 2 triangle, lean`: খসড়ার বা খোলা অনুশীলনের একটা ধাপ বদলায়।
help-plates = `plates 10`: প্লেটের অন্য সংখ্যা।
help-rows = `rows 2`: সারির অন্য সংখ্যা।
help-publish = `publish`: খসড়াকে নম্বর দেয়, যাতে পোস্ট করা যায়।
help-post = `post 6 mon 15:00`: 6 নম্বর অনুশীলন প্রতি সপ্তাহে দেয়; `post mon 15:00` সবচেয়ে নতুনটা; `post now 6` এখনই; `post` তালিকা দেখায়।
help-skip = `skip`: পরের সাপ্তাহিক পোস্ট বাদ দেয়।
help-hold = `hold`: আবার ঠিক না করা পর্যন্ত সাপ্তাহিক পোস্ট নেই।
help-close = `close`: খোলা বোর্ড এখনই বন্ধ করে।
help-zone = `zone Europe/London`: রান্নাঘরের সময়-অঞ্চল।
help-dayturn = `dayturn 05:00`: রান্নাঘরের দিন কখন বদলায়।
help-replies = `replies short`: শুধু নোটপ্যাডের চিহ্ন; `replies full`: দফায় এক লাইন।
help-words = `words`: সব শব্দ; `words trend`: তার একটি।
which-step = এভাবে লেখো: `!step 2 2 triangle, lean`।
