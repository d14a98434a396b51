## পোস্ট করা

scheduled = ঠিক করা হলো। { $post }
schedule-line = { $when } ({ $zone }): { $what }। পরেরটা: { $next }।
weekly-at = { $weekday } { $at }
day = { $weekday } { $day } { $month }
week-of = { $day } থেকে শুরু সপ্তাহ
month-1 = জানুয়ারি
month-2 = ফেব্রুয়ারি
month-3 = মার্চ
month-4 = এপ্রিল
month-5 = মে
month-6 = জুন
month-7 = জুলাই
month-8 = আগস্ট
month-9 = সেপ্টেম্বর
month-10 = অক্টোবর
month-11 = নভেম্বর
month-12 = ডিসেম্বর
drill-named = অনুশীলন { $label }, { $name }
the-newest = সবার শেষে প্রকাশিত অনুশীলন
held = থামিয়ে রাখা
schedule-help = `!post move 1 tue 14:30` একটা সরায়, `!post 1 off` বাতিল করে, `!skip 1` পরেরটা বাদ দেয়, `!hold 1` আবার ঠিক না করা পর্যন্ত সব থামিয়ে রাখে।
no-schedule = এখনো কোনো সাপ্তাহিক পোস্ট ঠিক করা নেই। এভাবে ঠিক করো: `!post 6 mon 15:00`।
which-schedule = সাপ্তাহিক পোস্ট { $most }টি। `!post`-এর নম্বর দিয়ে বলো, যেমন `!skip 1`।
post-what = কোন অনুশীলন? একটির নম্বর দাও, যেমন `!post 6 mon 15:00`; তালিকা `!drills`-এ।
post-when = বার আর সময় লেখো, যেমন `!post mon 15:00`, বা `!post now`।
cancelled = বাতিল: { $when }। তখন আর কিছু দেওয়া হবে না।
skipping = { $day } বাদ। পরের পোস্ট { $after }।
holding = থামিয়ে রাখা হলো: { $when } কিছু দেওয়া হবে না, যতক্ষণ না আবার ঠিক করো, যেমন `{ $again }`।
already-posted = { $drill } নম্বর অনুশীলন এই সপ্তাহে দেওয়া হয়ে গেছে; সোমবার থেকে আবার দেওয়া যাবে।
post-missed = { $drill } নম্বর অনুশীলন দেওয়ার কথা ছিল 12 ঘণ্টারও আগে, যখন আমি ছিলাম না; দেওয়া হয়নি। `!post now { $drill }` তা দেয়।
nothing-published = একটা পোস্টের সময় হয়েছিল, কিন্তু কোনো অনুশীলন প্রকাশিত নেই। `!drills` কোর্সের তালিকা দেয়; `!post 6 mon 15:00` একটা বেছে নেয়।

## রান্নাঘরের সেটিংস

zone-set = সময় পড়া ও দেখানো হয় { $zone } ধরে।
unknown-zone = এই সময়-অঞ্চল আমি চিনি না। { $near ->
    [none] এভাবে লেখো: `!zone Europe/London`।
   *[other] কাছাকাছি: { $near }।
 }
day-turn-set = রান্নাঘরের দিন বদলায় { $at }-এ।
which-time = সময় লেখো, যেমন `!dayturn 05:00`।
replies-full = প্রতি দফার উত্তরে এক লাইন লিখি।
replies-short = প্রতি দফার উত্তরে শুধু নোটপ্যাডের চিহ্ন দিই।
which-replies = `!replies full` বা `!replies short` লেখো।
quiet-hours = নীরব সময়: { $hours }। পোস্ট আর মনে করানো এর শেষ পর্যন্ত অপেক্ষা করে; উত্তর করে না।
quiet-off = নীরব সময় নেই: পোস্ট আর মনে করানো যেকোনো সময় আসে।
quiet-how = এভাবে লেখো: `!quiet 22:00-09:00`, বা `!quiet off`।
help-quiet = `quiet 22:00-09:00`: যে সময়ে পোস্ট আর মনে করানো অপেক্ষা করে; না চাইলে `quiet off`।

## ভাঙা শিফটের বিরতি

rest-set = তোমার বিশ্রাম: { $hours }। না চাইলে তখন তোমাকে কিছু বলি না। আইনের বিরতি আর দৈনিক বিশ্রাম আগে, তার মধ্যে কোনো অনুশীলন নয়।
rest-off = তোমার কোনো বিশ্রামের সময় আর রাখা নেই।
rest-none = তুমি কোনো বিশ্রামের সময় বলোনি। `rest 15:00-17:00` তা ঠিক করে।
rest-how = এভাবে লেখো: `rest 15:00-17:00`, বা `rest off`।
resting-then = তখন { $people } জনের বিশ্রাম; তার মধ্যে কোনো অনুশীলন নয়।
help-rest = `rest 15:00-17:00`: আমার ভাঙা শিফটের বিরতি, তখন না চাইলে আমাকে কিছু বলা হয় না; `rest off` তা শেষ করে।

## বার

weekday-1 = সোমবার
weekday-2 = মঙ্গলবার
weekday-3 = বুধবার
weekday-4 = বৃহস্পতিবার
weekday-5 = শুক্রবার
weekday-6 = শনিবার
weekday-7 = রবিবার
