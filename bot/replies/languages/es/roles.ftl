## Roles in the kitchen

role-given = { $name } es ahora { $role } aquí.
role-line = { $role }: { $names }.
role-chef = chef
role-sous = sous chef
role-cook = cocinero
role-commis = commis
role-trainee = aprendiz
role-judge = juez
no-roles = Aquí todo el mundo es cocinero. `!role @noor sous` da otra función.
which-role = Una función es una de { $roles }.
role-of-whom = Escríbelo como `!role @noor sous`.
help-role = `role @noor sous`: dar una función (chef, sous, cook, commis, trainee, judge); `role` las enumera.
