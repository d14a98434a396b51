## প্লেটে মাপা বিন্দু

help-dots = `dots 10 10 9 11 10`: mm-এ এই মাপগুলো সমান কি না; `dots 10 10 9 of 10` বলা মাপের তুলনায়; `dots 14 12 9 of 14 12 10` ক্রমে ছোট।
dots-even = গড় { $mean }, হেরফের { $spread } %: ভালো।
dots-uneven = গড় { $mean }, হেরফের { $spread } %: ফেরত, সমান মানে সর্বোচ্চ { $most } %।
dots-as-called = গড় { $mean }, হেরফের { $spread } %, প্রতিটি { $called } থেকে { $leeway } mm-এর মধ্যে: ভালো।
dots-off-size = গড় { $mean }, হেরফের { $spread } %: ফেরত, { $nth } নম্বর বিন্দু ({ $width }) { $called } থেকে { $leeway } mm-এর বেশি সরা।
dots-graded = { $count }টি বিন্দু, প্রতিটি অন্তত { $step } mm ছোট, দুই প্রান্ত { $first } আর { $last } থেকে { $leeway } mm-এর মধ্যে: ভালো।
dots-not-graded = ফেরত: { $nth } নম্বর বিন্দু ({ $width }) আগেরটির ({ $before }) চেয়ে অন্তত { $step } mm ছোট নয়।
dots-off-ends = ফেরত: { $nth } নম্বর বিন্দু ({ $width }) { $called } থেকে { $leeway } mm-এর বেশি সরা।
dots-too-few = দুটি বা তার বেশি বিন্দু মাপো, যেমন `dots 10 10 9 11 10`।
dots-too-many = সর্বোচ্চ { $most }টি বিন্দু মাপো; এটা নমুনা পরীক্ষা।
dots-unreadable = “{ $typed }” mm-এর মাপ হিসেবে পড়তে পারিনি; মাপগুলোর মাঝে ফাঁক দাও, যেমন `dots 10 9.5 11`।
dots-out-of-range = বিন্দু 0-র বেশি আর সর্বোচ্চ { $most } mm চওড়া; মাপগুলো আবার পাঠাও, যেমন `dots 10 10 9 11 10`।
dots-how-called = `of`-এর পরে একটা মাপ লেখো, যেমন `dots 10 10 9 of 10`, নয়তো প্রতিটি বিন্দুর একটা করে, যেমন `dots 14 12 9 of 14 12 10`।
