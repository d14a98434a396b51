## Funções na cozinha

role-given = { $name } é agora { $role } aqui.
role-line = { $role }: { $names }.
role-chef = chef
role-sous = sous
role-cook = cozinheiro
role-commis = commis
role-trainee = estagiário
role-judge = juiz
no-roles = Todos aqui são cozinheiros. `!role @noor sous` dá outra função.
which-role = Uma função é uma de { $roles }.
role-of-whom = Escreva como `!role @noor sous`.
help-role = `role @noor sous`: dar uma função (chef, sous, cook, commis, trainee, judge); `role` mostra quem tem qual.
