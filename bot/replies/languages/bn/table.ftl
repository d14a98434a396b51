## টেবিল

table-head = { $name } (অনুশীলন { $label }), { $wide } cm-এর { $plates }টি প্লেট, { $length } x { $depth } cm টেবিলে:
table-own = { $name } (অনুশীলন { $label }): { $pattern } ছকে টেবিল লাগে { $length } x { $depth } cm।
table-rows = { $rows } x { $columns }
table-pattern = - { $pattern }: { $length } x { $depth } cm, { $verdict }।
table-fits = আঁটে
table-short = { $cm } cm কম পড়ে
table-too-deep = { $cm } cm বেশি গভীর
table-out-of-reach = বাতিল, এক দিক থেকে তৃতীয় সারি নাগালের বাইরে
table-fewer = যা আঁটে: { $plates }টি প্লেট, { $pattern }, { $length } x { $depth } cm (শেফ: `plates { $plates }`, `rows { $rows }`; অন্য বিন্যাস)।
table-none-fits = একটি প্লেটও আঁটে না।
table-one-row = এক সারি: { $numbers }। এক ধাপে যাও, পরের ধাপে ফেরো, যাতে কেউ খালি না হাঁটে।
table-two-rows = দূরের সারি: { $far }; কাছের সারি: { $near }। নম্বরের ওই ক্রমে হাঁটা, যাওয়া ও আসা।
table-walk = { $reach ->
    [near] দুই সারি: দুই দিক দিয়েই হাঁটো, নয়তো সবচেয়ে খাটো জন খাবারের উপর না ঝুঁকে দূরের দাগ ({ $depth } cm) পর্যন্ত নাগাল পায়, হাতা গুটিয়ে বাঁধা।
   *[far] দুই সারি: দুই দিক দিয়েই হাঁটো; এক দিক থেকে { $depth } cm নাগালের বাইরে।
 }
table-plate-unknown = প্লেট কত চওড়া বুঝতে পারছি না ({ $plate })। অনুশীলনে এভাবে লেখা থাকে: `plate flat 27 cm china`।
table-how = টেবিলের দৈর্ঘ্য আর গভীরতা cm-এ লেখো, যেমন `table 180x70`, নয়তো একটা অনুশীলনে কত লাগে জানতে `table 11B`।
help-table = `table 180x70`: এত cm টেবিলে যেসব ছক আঁটে; `table` বা `table 11B`: অনুশীলনের নিজের ছকে কত লাগে।
