## রান্নাঘরে ভূমিকা

role-given = { $name } এখন এখানে { $role }।
role-line = { $role }: { $names }।
role-chef = শেফ
role-sous = সু-শেফ
role-cook = কুক
role-commis = কমি
role-trainee = শিক্ষানবিশ
role-judge = বিচারক
no-roles = এখানে সবাই কুক। `!role @noor sous` অন্য ভূমিকা দেয়।
which-role = ভূমিকা এগুলোর একটি: { $roles }।
role-of-whom = এভাবে লেখো: `!role @noor sous`।
help-role = `role @noor sous`: ভূমিকা দেয় (chef, sous, cook, commis, trainee, judge); `role` তালিকা দেখায়।
