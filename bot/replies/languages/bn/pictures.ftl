## ছবি (অল্প জায়গায় বসে বলে ছোট; পাশের বার্তায় সবটা লেখা থাকে)

picture-guest = অতিথি
picture-standard = স্ট্যান্ডার্ড
picture-touches = { $touches ->
   *[other] ছোঁয়া প্রতি প্লেটে
 }, দফায় { $run }
picture-redo = একটা ফেরত
picture-gate = { $plates }টির মধ্যে ভালো, সময় পেতে
picture-free = শুধু আঁকা রেখা: জায়গা শেফ দেখায়।

## অল্প কথায় সতর্কতা (ছবির পাশের বার্তায় পুরোটা লেখা থাকে)

short-mandoline = ম্যান্ডোলিন: গার্ড আর দস্তানা।
short-heat = গরম জিনিস: শুকনো কাপড়, “পিছনে গরম”।
short-floor = মেঝে শুকনো রাখো।
short-cold = ঠান্ডায় রাখা।
short-puree = পিউরি ঠান্ডা, সেই দিনই ফেলা।
short-cooked-starch = দ্রুত ঠান্ডা করা, সেই দিনই ফেলা।
short-bottle = কিছুই বোতলে ফেরে না।
short-pieces-counted = টুকরো আগে ও পরে গোনো।
short-strain = দিনে তিন দফা।
short-chemicals = কাছে পরিষ্কারের রাসায়নিক নয়।
short-breakage = ভাঙলে: থামো, প্রতিটি টুকরোর হিসাব মেলাও।
short-hands = ফোনের আগে ও পরে হাত ধোও।
short-allergens = প্রতিটি লেবেল পড়ো; ছোঁয়াও ধরা হয়।
short-never-served = পরিবেশন নয়, চাখা নয়, লাইনে ফেরত নয়।

## টেবিলের নকশা

picture-walk = নম্বরের ক্রমে হাঁটো, যাওয়া ও আসা।
picture-reach = কাছের দিক থেকে নাগাল: বারবার { $often } cm, মাঝে মাঝে { $seldom } cm (কাটা রেখা)।

## গতিধারা

picture-redo-share = ফেরত, প্লেটের %
picture-line = রেখা: স্থির মাঝামাঝি। পটি: তোমার দফাগুলো সাধারণত তা থেকে কতটা সরে। শেষের দণ্ড: পরের দফা।
picture-ring = বৃত্ত: সেরা সময়।

## সপ্তাহ শেষ

picture-own = নিজের প্রত্যাশিত সময়ের তুলনায়
picture-expected = রেখাটা প্রত্যেকের নিজের প্রত্যাশিত সময়; দণ্ডটা কতটা দ্রুত।

## কাগজে

help-paper = `paper` বা `paper 6`: ছাপার জন্য এক পাতা A4-এ অনুশীলন, দফা লেখার ছক সমেত।
paper-here = { $drill } কাগজে, দফা লেখার ছক সমেত। দফাগুলো পরে পাঠাও, যেমন `yesterday 3:02 8/8`।
paper-date = তারিখ
paper-name = নাম
paper-clock = সময়
paper-good = ভালো প্লেট
paper-reason = ফেরতের কারণ
paper-watched = কে দেখেছে
