## মিজ

mise-head = { $name }-এর মিজ (অনুশীলন { $label }): { $plates }টি প্লেটের { $runs } দফা, বাড়তি { $spare } % ধরা আছে। প্লেট: { $total }{ $runs ->
    [one] {""}
   *[other] , দফার মাঝে ধোয়া
 }।
mise-need = - { $component }: { $total } (প্রতি প্লেটে { $plate }){ $where ->
    [nowhere] {""}
    [measured] , আর { $stays }, যা থেকে যায় এতে: { $tool }
   *[unmeasured] , আর যতটা ধরে এতে: { $tool }
 }
mise-tools = হাতিয়ার: { $tools }।
mise-back = পরের দফায় ফেরে: { $list }।
mise-back-share = { $component } { $percent } %{ $runs ->
    [0] {""}
   *[other] { " " }(সর্বোচ্চ { $runs } দফা)
 }
mise-lives = প্লেটে টেকে: { $list }।
mise-life = { $component } { $life }
mise-same-day = দফা পর্যন্ত ঠান্ডায়, সেই দিনই ফেলে দেওয়া: { $list }।
mise-how = কয় দফার জন্য, 1 থেকে { $most }, আর কোন অনুশীলন, তা লেখো, যেমন `mise 2` বা `mise 2 11B`।
help-mise = `mise` বা `mise 2 11B`: এক দফার সবকিছু, বা 11B অনুশীলনের দুই দফার।

## কাজের ক্রম

order-head = { $name } (অনুশীলন { $label }), { $plates }টি প্লেট। সময়, আর কোন উপাদান কতক্ষণ পড়ে থাকে:
order-line = - { $way } { $time }{ $waits ->
    [none] {""}
   *[other] : { $waits }
 }
order-component = এক ধাপ এক ধাপ করে
order-waves = { $wave }টি করে ব্যাচে
order-plate = এক প্লেট এক প্লেট করে
order-own = { $way } (যেমন ঠিক করা)
order-wait = { $component } { $wait }
order-wait-too-long = { $component } { $wait } (টেকে { $life })
order-best-life = সবচেয়ে বড় ব্যাচ, যাতে সবকিছু টেকে: { $way }।
order-none-keeps = কোনোটিতেই সবকিছু টেকে না। প্লেট কমাও, নয়তো বেশিক্ষণ টেকে এমন কিছু নাও।
order-fastest = সবচেয়ে দ্রুত: { $way }। ধাপে টেকার সময় দেওয়া থাকলে (`; life 90s`) যে সবচেয়ে বড় ব্যাচে তা টেকে, সেটা বেছে নিই।
help-order = `order` বা `order 6`: কাজের ক্রমগুলোর তুলনা, সময়, আর কোন উপাদান কতক্ষণ পড়ে থাকে।

## খরচ (শেফের, ব্যক্তিগত ঘরে)

cost-head = { $name } (অনুশীলন { $label }), { $plates }টি প্লেটের এক দফায় বদলি উপাদান যতটা যায়:
cost-line = - { $component }: { $parts }; { $total } x { $price } = { $cost }
cost-unpriced = - { $component }: { $parts }; এখনো দাম নেই, যেমন `price { $component } 0.02`, { $unit ->
    [piece] একটির
   *[other] 1 { $unit }-এর
 } জন্য
cost-used-up = { $amount } খরচ হয়েছে
cost-again = { $amount } নতুন করে সাজানো প্লেটে
cost-thrown = { $amount } দিনশেষে ফেলা
cost-week = এই সপ্তাহে: দফা { $runs }টি, ফেরত { $redo }টি, নতুন করে সাজানো { $rebuilt }টি।
cost-run = এক দফা: { $run }। এক প্লেট নতুন করে সাজানোর বদলি উপাদান: { $again }।
cost-pass = { $redo ->
    [one] পাসে { $redo }টি ফেরত মানে { $dish } দামের { $redo }টি প্লেট।
   *[other] পাসে { $redo }টি ফেরত মানে { $dish } দামের { $redo }টি প্লেট: { $cost }।
 }
cost-no-dish = `price dish 14.50` বলে দেয় আসল পদের জন্য অতিথি কত দেয়।
price-currency = দাম { $currency }-তে। আগে দেওয়া দামের সংখ্যা একই থাকে।
price-currency-first = আগে রান্নাঘরের মুদ্রা বলো, তার কোড দিয়ে, যেমন `price EUR`।
price-which-currency = { $code } মুদ্রাটা আমি চিনি না। তার তিন অক্ষরের কোড পাঠাও, যেমন `price EUR`।
price-too-fine = { $currency }: { $digits ->
    [0] এর চেয়ে ছোট মুদ্রা নেই
   *[other] দশমিকের পরে { $digits }টি অঙ্ক
 }। এভাবে লেখো: `price dish { $example }`।
price-no-component = এই অনুশীলনে { $component } নেই; আছে { $components }।
price-how = এভাবে লেখো: একটি, এক ml বা এক g-এর জন্য `price courgette 0.04`, `price dish 14.50`, বা `price EUR`।
help-price = `price courgette 0.04`, `price dish 14.50`, `price EUR`; `price` বা `price 6`: এক দফার খরচ, ব্যক্তিগত ঘরে।
