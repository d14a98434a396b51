## একটু সময়ে কতটা আঁটে

help-slot = `slot 25` বা `slot 6 25`: 25 মিনিটে কয়টি সৎ দফা আঁটে, বিচার আর নতুন করে গোছানো সমেত; ব্যক্তিগত ঘরে তোমার নিজের মধ্যমা ধরে।
slot-fits = { $slot }-এর মধ্যে { $drill }: { $runs ->
   *[other] { $many }টি সৎ দফা
 }।
slot-none = { $slot }-এর মধ্যে { $drill }-এর একটিও সৎ দফা আঁটে না; একটির জন্য সবচেয়ে কম সময় { $shortest }।
slot-day-limit = আরও আঁটত; হাতের কথা ভেবে দিনে সর্বোচ্চ { $runs }টি।
slot-each = প্রতিটি { $each }: দফা { $run } ({ $by ->
    [own] তোমার { $count }টি দফার মধ্যমা
   *[standard] স্ট্যান্ডার্ড সময়
 }), বিচার { $judging }, নতুন করে গোছানো { $reset }।
slot-sum = সাজিয়ে রাখা { $laying }, { $runs } x { $each }, গুটিয়ে নেওয়া { $clearing }: { $taken }।
slot-how = মিনিট লেখো, যেমন `slot 25`, বা 6 নম্বর অনুশীলনের জন্য `slot 6 25`।

## ডাকের তালিকা

help-calls = `calls 2` বা `calls 6 2`: 1 থেকে 3 স্তরের ডাকের তালিকা, সঙ্গী জোরে পড়ে, ব্যক্তিগত ঘরে পাঠানো হয়; `calls 2 sheet 417` ওই তালিকাটাই আবার দেয়।
calls-head = { $drill }, ডাকের স্তর { $level }, তালিকা { $number }: প্লেট { $plates }টি, ছোঁয়া { $touches }টি, স্ট্যান্ডার্ড { $standard }।
calls-sum = { $plates }টি প্লেট { $built } s{ $wait ->
    [no] {""}
   *[other] {" "}+ { $wait } s হাত সরানো
 }{ $swap ->
    [no] {""}
   *[other] {" "}- { $swap } s বাদ দেওয়া
 } = { $total } s।
calls-read = যে সঙ্গী জোরে পড়বে তার জন্য, ঘড়ি চলা অবস্থায়; কারও হাতে ছুরি, আগুন বা গরম প্যান থাকলে ডাক থামিয়ে রাখো।
call-how-long = { $at } “আর কতক্ষণ?”
call-send-four = { $at } “এখন চারটা পাঠাও।”
call-swap = { $at } “{ $plate } নম্বর প্লেট, { $component } ছাড়া।”
call-one-more = { $at } “আর একটা প্লেট।”
call-wait = { $at } “থামো, { $wait } সেকেন্ড হাত সরিয়ে রাখো।”
calls-send = “আর কতক্ষণ?”-এর প্রতিটি উত্তর লিখে রাখো, থামার পরে মেলাও। দফাটা পাঠাও এভাবে: `{ $example }`।
calls-which-level = কোন স্তর? `calls 1`, `calls 2` বা `calls 3`, আর 6 নম্বর অনুশীলনের জন্য `calls 6 2`।
calls-level-too-high = { $level } স্তরের জন্য এই দফা খুব ছোট: { $calls }টি ডাক, অন্তত { $gap } s পর পর, শুরুতে, শেষে বা গরম কাজের সময় নয়। `calls { $highest }` আঁটে।
calls-too-short = ডাকের জন্য এই দফা খুব ছোট; আগে আরও প্লেট সাজাও।
