## একবারে পাঠাতে কত হাত লাগে

help-pickup = `pickup 120 in 20` বা `pickup 11 120 in 20`: 20 মিনিটে 120টি প্লেট সাজাতে কয় জোড়া হাত লাগে, আর কার কী কাজ; `pickup 120 in 20 with 4`।
pickup-fits = { $limit }-এর মধ্যে হয়: { $hands }, { $time }।
pickup-not-with = { $limit }-এর মধ্যে হয় না, { $hands }: { $time }।
pickup-no-gain = হাত বাড়ালে লাভ নেই।
pickup-not = { $limit }-এর মধ্যে হয় না। { $many ->
    [one] এক জোড়া হাতে লাগে
   *[other] { $hands }, লাগে
 } { $time }; সবচেয়ে সরু ধাপ: { $narrowest }।
pickup-divided = { $shared }, { $hands }: { $time }।
pickup-shared = { $doing } ধাপে { $many } জোড়া
pickup-or-fewer = নয়তো { $pieces }, { $hands }: { $time }।
pickup-fewer = { $pieces } হলে, { $hands }: { $time }।
pickup-no-hands = ধাপ ভাগ করে { $most } জোড়া হাতেও হয় না।
pickup-one-plate = { $limit }-এর মধ্যে হয় না: একটা প্লেটের ছোঁয়াতেই লাগে { $touch }।
pickup-plating-only = শুধু সাজানো: গরম করা, বয়ে নেওয়া আর দেখে নেওয়া নিজে যোগ করো।
pickup-tasks = হাতের কাজ: { $tasks }।
pickup-task = { $who }: { $steps }
pickup-in-turn = { $steps }, প্লেট পালা করে
pickup-step = { $component } { $technique }
pickup-sum = একটা প্লেট { $touch } s, তারপর { $more } x { $largest } s: { $time }। { $limit } মানে প্রতি { $takt } s-এ একটা প্লেট।
pickup-own-pace = এই রান্নাঘরের নিজের গতিতে, স্ট্যান্ডার্ডের { $ratio } গুণ: { $time }।
pickup-how = আগে প্লেট, তারপর মিনিট লেখো, যেমন `pickup 120 in 20` বা `pickup 11 120 in 20`; চার জোড়া হাতের জন্য `with 4`।
pickup-out-of-range = আমি 1 থেকে { $plates }টি প্লেট, 1 থেকে { $hands } জোড়া হাত আর সর্বোচ্চ 12 ঘণ্টা হিসাব করতে পারি, যেমন `pickup 120 in 20`।

hands = { $many ->
    [1] এক জোড়া হাত
    [2] দুই জোড়া হাত
    [3] তিন জোড়া হাত
    [4] চার জোড়া হাত
    [5] পাঁচ জোড়া হাত
    [6] ছয় জোড়া হাত
    [7] সাত জোড়া হাত
    [8] আট জোড়া হাত
    [9] নয় জোড়া হাত
    [10] দশ জোড়া হাত
    [one] { $many } জোড়া হাত
   *[other] { $many } জোড়া হাত
 }
hands-first = { $many ->
    [2] দুই জোড়া হাত
    [3] তিন জোড়া হাত
    [4] চার জোড়া হাত
    [5] পাঁচ জোড়া হাত
    [6] ছয় জোড়া হাত
    [7] সাত জোড়া হাত
    [8] আট জোড়া হাত
    [9] নয় জোড়া হাত
    [10] দশ জোড়া হাত
   *[other] { $many } জোড়া হাত
 }
counted = { $many ->
    [1] এক
    [2] দুই
    [3] তিন
    [4] চার
    [5] পাঁচ
    [6] ছয়
    [7] সাত
    [8] আট
    [9] নয়
    [10] দশ
    [one] { $many }
   *[other] { $many }
 }
counted-first = { $many ->
    [1] এক
    [2] দুই
    [3] তিন
    [4] চার
    [5] পাঁচ
    [6] ছয়
    [7] সাত
    [8] আট
    [9] নয়
    [10] দশ
    [one] { $many }
   *[other] { $many }
 }

## ধাপগুলোর নাম (রান্নাঘরের নিজের কৌশল তার নিজের নামে)

doing = { $technique ->
    [set] মূল অংশ বসানো
    [place] বসানো
    [pair] দুই হাতে বসানো
    [leaf] পাতা
    [dot] বিন্দু
    [bead] ফোঁটা
    [mound] ঢিবি করা
    [pull] টানা
    [line] রেখা
    [brush] তুলি বোলানো
    [crumb] গুঁড়ো ছড়ানো
    [shingle] থাকে থাকে সাজানো
    [sauce] সস দেওয়া
    [lean] হেলানো
    [twirl] পেঁচানো
    [quenelle] কেনেল
    [two-spoon-quenelle] কেনেল
    [ring-fill] রিং ভরা
    [press] চাপা
    [lift] রিং তোলা
    [wipe] মোছা
   *[other] { $name }
 }
pieces = { $technique ->
    [leaf] { $many }টি পাতা
    [dot] { $many }টি বিন্দু
    [bead] { $many }টি ফোঁটা
    [shingle] { $many }টি টুকরো
    [twirl] { $many }টি প্যাঁচ
    [quenelle] { $many }টি কেনেল
    [two-spoon-quenelle] { $many }টি কেনেল
    [sauce] { $many } চামচ
   *[other] { $many } { $component }
 }
