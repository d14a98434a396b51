## প্রশ্ন, আর বদলে কী পাঠাতে হবে

how-many-good = { $plates }টির মধ্যে কয়টি ভালো ছিল?
one-left = { $drill } নম্বর অনুশীলনে প্লেট { $plates }টি। { $left }টি কি সাজানো হয়নি? `yes`, নয়তো সংখ্যাটা আবার, যেমন `{ $again }`।
under-a-third = { $clock } স্ট্যান্ডার্ড সময়ের তিন ভাগের এক ভাগেরও কম। ঠিক আছে? `yes`, নয়তো সময়টা আবার।
same-again = তোমার { $at }-এর দফার সঙ্গে হুবহু এক। দ্বিতীয় দফা? `again`। না হলে কিছু করতে হবে না।
nothing-to-answer = এখন তোমার কাছে আমার কোনো প্রশ্ন নেই। কোনো দফার কথা হলে দফাটা আবার পাঠাও, যেমন `3:02 8/8`।
no-drill-yet = এখানে এখনো কোনো অনুশীলন দেওয়া হয়নি। একটির নম্বর লেখো, যেমন `6 3:02 8/8` বা `!spec 6`; তালিকা `!drills`-এ।
no-such-drill = এখানে { $label } নম্বর অনুশীলন নেই। তালিকা `!drills`-এ।
unknown-word = এই শব্দটা আমি চিনি না। কাছাকাছি: { $near }। সবগুলো `!words`-এ।
unknown-word-no-hint = এই শব্দটা আমি চিনি না। যেগুলো চিনি, সেগুলো `!words`-এ।
chef-only = এই শব্দটা শেফের।
chef-only-post = অনুশীলন ঠিক করে শেফ। তোমারটা প্রস্তাব হিসেবে পাঠাবে?
which-mate = এখানে { $name } কে, তা বুঝতে পারছি না। তাকে মেনশন করো, নয়তো এমন নাম লেখো যা শুধু একজনেরই আছে।
mate-not-joined = { $name } এখনো যোগ দেয়নি। সে `!join` লিখতে পারে; তারপর এটা আবার পাঠাও।
which-kitchen = তুমি { $count }টি রান্নাঘরে আছ। কোনটি? { $list }

## সঙ্গীর ফল

waiting-for-mate = { $name }-এর `yes`-এর অপেক্ষায় আছি।
kept-for-mate = তোমার নামে রাখা হলো, { $name }।
not-kept = রাখা হলো না।

## বদলে কী পাঠাতে হবে

edit-moves-run = সম্পাদনা করে কোনো দফা অন্য অনুশীলনে বা অন্যের নামে সরানো যায় না। বার্তাটা মুছে দফাটা আবার পাঠাও।
edit-unreadable = সম্পাদনাটা পড়তে পারিনি, তাই তোমার দফা আগের মতোই আছে। এভাবে লেখো: `3:02 8/8`; দফাটা তুলে নিতে হলে বার্তাটা মুছে দাও।
too-many-plates = { $drill } নম্বর অনুশীলনে প্লেট { $plates }টি। { $over }টি নতুন করে সাজিয়ে থাকলে: `{ $clock } { $good }/{ $plates } rebuilt { $over }`।
far-too-many-plates = { $drill } নম্বর অনুশীলনে প্লেট { $plates }টি; { $plates }টির মধ্যে কয়টি ভালো ছিল পাঠাও, যেমন `{ $clock } { $plates }/{ $plates }`।
count-does-not-add-up = ভালো, ফেরত আর না-সাজানো মিলে { $plates }টি প্লেট হতে হবে; সংখ্যাটা আবার পাঠাও, যেমন `3:20 { $plates }/{ $plates }`।
more-mended-than-good = নতুন করে সাজানো আর ঠিক করা প্লেট ভালোগুলোর মধ্যেই পড়ে, আর { $mended } তো { $good }-এর চেয়ে বেশি; লাইনটা আবার পাঠাও।
plates-out-of-range = একটি অনুশীলনে 1 থেকে { $most }টি প্লেট থাকে; এভাবে লেখো: `plates 8`।
rows-out-of-reach = এক সারি, বা সর্বোচ্চ { $most } সারি, যাতে কাউকে খাবারের উপর ঝুঁকতে না হয়; এভাবে লেখো: `plates 8 rows 2`।
more-rows-than-plates = { $rows } সারিতে অন্তত { $rows }টি প্লেট লাগে; এভাবে লেখো: `plates 8 rows 2`।
waves-do-not-fit = এক ব্যাচে অন্তত 2টি প্লেট থাকে, আর অনুশীলনের { $plates }টির চেয়ে কম; এভাবে লেখো: `working waves 4`।
draft-name = প্রথম লাইনে অনুশীলনের নাম দাও, সর্বোচ্চ { $most } অক্ষর, যেমন `!draft Slipway`।
no-steps = অনুশীলনে ধাপ লাগে; এভাবে লেখো: `1. 7 courgette, shingle, at 10-4`।
no-plates = কয়টি প্লেট? এমন একটা লাইন যোগ করো: `plates 8 rows 2`।
steps-out-of-order = যেখানে { $wanted } নম্বর ধাপ আসার কথা, সেখানে { $read } নম্বর পড়ছি; ধাপের নম্বর 1, 2, 3 করে দাও।
too-many-steps = সর্বোচ্চ { $most }টি ধাপ; প্লেটটাকে দুটি অনুশীলনে ভাগ করো।
unreadable-line = “{ $line }” পড়তে পারিনি, নয়তো এটা দুবার আছে; ধাপ দেখতে এরকম: `2. 1 tea jus, sauce, at 7`, অন্য লাইন শুরু হয় plates, rows, accept, plate, mise, start, stop বা working দিয়ে।
not-a-number = শব্দটার পরে একটা পূর্ণ সংখ্যা লেখো, যেমন `!plates 14`।
unreadable-step = “{ $line }” ধাপ হিসেবে পড়তে পারিনি; এভাবে লেখো: `2 triangle, lean, at 11`।
pieces-out-of-range = “{ $line }”-এ সংখ্যাটা 1 থেকে { $most } হতে হবে, যেমন `2 triangle, lean`।
unknown-technique = “{ $word }” কৌশলটা আমি চিনি না। কাছাকাছি: { $near }।
unknown-technique-no-hint = “{ $word }” কৌশলটা আমি চিনি না। যেগুলো চিনি: { $near }।
unknown-class = “{ $word }” বদলি উপাদানের কোনো শ্রেণি নয়; এগুলোর একটি নাও: { $classes }।
unreadable-detail = “{ $detail }” পড়তে পারিনি; সেমিকোলনের পরে আসে class, life, label বা price, যেমন `; life 90s ; label wheat`।
clock-needed = { $plates }টির মধ্যে { $good }টি পেয়েছি; সময়টা লাগবে, যেমন `3:02 { $good }/{ $plates }`।
clock-missing = সময়টাও লাগবে, যেমন `3:02 8/8`।
count-needed = { $clock } পেয়েছি; কয়টি ভালো ছিল তা লাগবে, যেমন `{ $clock } 8/8`।
line-unreadable = “{ $line }” পড়তে পারিনি। সময় আর ভালো প্লেট পাঠাও, যেমন `3:02 8/8`।
too-many-lines = এখানে { $lines }টি লাইন; এক বার্তায় সর্বোচ্চ { $most }টি পাঠাও।
one-run-a-line = এক লাইনে একটাই দফা: একটা সময় আর একটা সংখ্যা, যেমন `3:02 8/8`।
said-twice = “{ $word }” দুবার আছে; একবার রেখে লাইনটা আবার পাঠাও।
how-many = কয়টি? শব্দটার পরে সংখ্যা লেখো, যেমন `{ $word } 1`।
at-unreadable = { $typed } দিনের সময় হিসেবে পড়তে পারিনি; এভাবে লেখো: `at 02:10`।
clock-or-decimal = এটা কি { $minutes } min { $seconds } s, নাকি { $decimal } মিনিট? `{ $clock }` বা `{ $converted }` পাঠাও।
clock-in-decimals = { $decimal } মিনিট মানে { $converted }। `{ $converted }` পাঠাও, নয়তো ঘড়িতে যা ছিল তা-ই।
clock-unreadable = { $typed } সময় হিসেবে পড়তে পারিনি; এভাবে লেখো: `8:05`।
clock-past-59 = `{ $typed }` কোনো সময় হতে পারে না: মিনিট আর সেকেন্ড 00 থেকে 59 পর্যন্ত যায়। আবার পাঠাও, যেমন `8:05`।
clock-over-a-day = { $typed } এক দিনের বেশি; দফার সময়টা লেখো, যেমন `8:05`।
