## Role w kuchni

role-given = { $name }: rola w tej kuchni to teraz { $role }.
role-line = { $role }: { $names }.
role-chef = szef kuchni
role-sous = sous-chef
role-cook = kucharz
role-commis = commis
role-trainee = uczeń
role-judge = oceniający
no-roles = Wszyscy mają tu rolę kucharza. Inną rolę daje `!role @noor sous`.
which-role = Rola to jedna z tych: { $roles }.
role-of-whom = Napisz na przykład `!role @noor sous`.
help-role = `role @noor sous`: nadaje rolę (chef, sous, cook, commis, trainee, judge); `role` pokazuje je.
