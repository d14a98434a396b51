## জোড়ায় দফা

pair-drill = { $name }, জোড়ায়
pair-names = { $one } ও { $other }
kept-for-pair = { $runner } ও { $partner }-এর জন্য রাখা হলো। { $line }
pair-by-one-of-two = জোড়ার দফা পাঠায় দুজনের একজন: `3:02 8/8 with @lio`, `for` ছাড়া।
pair-with-whom = { $drill } নম্বর অনুশীলন দুজনের জন্য সাজানো। কার সঙ্গে, লেখো, যেমন `3:02 8/8 with @lio`।
pair-with-self = জোড়ার দফায় আরেকজন লাগে; তার নাম দাও, যেমন `3:02 8/8 with @lio`।
pair-one-plate = { $drill } নম্বর অনুশীলনে একটাই প্লেট, ভাগ করার কিছু নেই। `with` ছাড়া পাঠাও।
