## বোর্ড

board-head = { $drill }, { $week }, বন্ধ
board-open = { $drill }, এই সপ্তাহ, { $until } পর্যন্ত খোলা
board-own = নিজের প্রত্যাশিত সময়ের তুলনায়: { $rows }
board-fast = দ্রুত: { $rows }
board-steady = স্থির: { $rows }
board-clean = পরিষ্কার: { $rows }
board-row = { $place } { $name } { $figures }
board-tries = { $time } ({ $tries }টি চেষ্টা)
board-share = { $clean }/{ $attempted }
board-faster = { $percent } % দ্রুত
board-as-expected = প্রত্যাশা মতো
board-slower = { $percent } % ধীর
too-close = তফাত এত কম যে বলা যায় না
too-close-row = { $row }, তফাত এত কম যে বলা যায় না
board-not-yet = “{ $kind }” বোর্ড এখনো নেই। এমন তিনজন লাগে, যাদের দফা কেউ দেখে হাত তুলেছে।
board-not-yet-any = এখনো কোনো বোর্ড নেই। এমন তিনজন লাগে, যাদের দফা কেউ দেখে হাত তুলেছে।
board-yours = “{ $kind }” বোর্ডে তোমার স্থান { $place }, { $figures }।
which-board = বোর্ডগুলো হলো `own`, `fast`, `steady`, `clean`, `house`, `quarter` আর `group`, যেমন `!board fast`।
no-live-drill = এখানে কোনো অনুশীলন চলছে না। শেফ `!post` দিয়ে একটা দেয়।
a-cook = একজন কুক
light-no-board = হালকা সপ্তাহ: ছোট, গোছানো, বোর্ড নেই।

## প্রধান বোর্ড: নিজের তুলনায়

own-not-yet = নিজের তুলনার বোর্ড এখনো নেই। এমন তিনজন লাগে, যাদের দফা কেউ দেখেছে আর মেলানোর মতো আগের দফাও আছে।
expected-on-it = { $actual }; প্রত্যাশিত { $expected }, { $runs ->
    [one] এই অনুশীলনে তোমার আগের দফা থেকে
   *[other] এই অনুশীলনে তোমার শেষ { $runs }টি দফার মাঝামাঝি
 }।
expected-fitted = { $actual }; প্রত্যাশিত { $expected }, তোমার আগের দফাগুলো থেকে মেলানো।
expected-held = { $actual }; প্রত্যাশিত { $expected }, যা সপ্তাহে সর্বোচ্চ 2 % বাড়ে।
expected-new = { $actual }; প্রত্যাশিত { $expected }: স্ট্যান্ডার্ড { $standard } x তোমার সাধারণ অনুপাত { $usual }।
expected-new-drill = { $actual }; প্রত্যাশিত { $expected }: স্ট্যান্ডার্ড { $standard } x তোমার সাধারণ অনুপাত { $usual } x { $drill }, অন্যদের কাছে অনুশীলনটা যেমন ছিল।

## পুরো রান্নাঘর

board-house = রান্নাঘর: { $percent } % কুক নিজের প্রত্যাশিত সময়ের মধ্যে, পরিষ্কার প্লেট { $plates }টি।
board-house-plates = রান্নাঘর: পরিষ্কার প্লেট { $plates }টি।

## বোর্ডের বাইরে ও ভিতরে

boards-are-off = এখন থেকে তুমি সবার বোর্ডে নেই। তোমার দফা আর সেরা সময় থাকছে, আর এখানে `board` তোমারটা তোমাকে দেখাবে।
boards-are-on = তুমি আবার সবার বোর্ডে আছ।
boards-on-or-off = `boards off` বা `boards on` পাঠাও।
help-boards = `boards off` তোমাকে সবার বোর্ড থেকে সরায়, তোমার ইতিহাস থাকে; `boards on` আবার ফেরায়।

## সপ্তাহ বন্ধ

closed = { $drill }: সপ্তাহ বন্ধ হলো।
closed-no-board = বোর্ড নেই; বোর্ডে এমন তিনজন লাগে, যাদের দফা কেউ দেখেছে। তবু যার দফা, তার জন্য প্রতিটি দফাই গোনা হয়।
board-correction = বন্ধ বোর্ডের সংশোধন: { $drill }, { $week }। { $board }
nothing-to-close = বোর্ডটা আগেই বন্ধ হয়েছে।
