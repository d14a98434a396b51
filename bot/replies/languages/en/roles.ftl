## Roles in the kitchen

role-given = { $name } is { $role } here now.
role-line = { $role }: { $names }.
role-chef = chef
role-sous = sous
role-cook = cook
role-commis = commis
role-trainee = trainee
role-judge = judge
no-roles = Everybody here is cook. `!role @noor sous` gives another role.
which-role = A role is one of { $roles }.
role-of-whom = Write it like `!role @noor sous`.
help-role = `role @noor sous`: give a role (chef, sous, cook, commis, trainee, judge); `role` lists them.
