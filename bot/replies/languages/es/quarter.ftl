## The quarter

quarter-open = Trimestre { $quarter } de { $year } hasta ahora, ritmo nivelado de todos sus ejercicios
quarter-closed = Trimestre { $quarter } de { $year }, cerrado: ritmo nivelado de todos sus ejercicios
quarter-board = { $rows }
quarter-row = { $place } { $name } { $pace }
quarter-shared = Mismo puesto: demasiado cerca para distinguir.
quarter-too-close = Demasiado cerca para distinguir: nadie va claramente delante.
quarter-divided = Algunos no comparten ni cocinero ni ejercicio con los demás: aún no hay base común, así que no hay número entre ellos.
quarter-few = Aún no hay puestos. Hacen falta tres cocineros con ejercicios parecidos y tandas que alguien haya visto.
quarter-yours = Lo tuyo: puesto { $place }, { $pace } s por toque nivelado, de { $runs } tandas.
quarter-no-place = Lo tuyo: { $pace } s por toque nivelado. Sin puesto: { $why }.
quarter-why-ground = tus ejercicios y los de los demás aún no tienen base común
quarter-why-work = menos de la mitad de tu trabajo se parece al de los demás
quarter-why-judged = la mayoría de tus tandas las juzgaste tú
band = de { $low } a { $high } aproximadamente
standard-stands = Vale el estándar calculado. Un ritmo entre ejercicios necesita { $runs } tandas contadas de { $cooks } cocineros, { $linked } de ellos también con otro ejercicio. Falta: { $missing }.
missing-runs = { $runs ->
    [one] { $runs } tanda más
   *[other] { $runs } tandas más
 }
missing-cooks = más cocineros
missing-links = cocineros que hagan también otro ejercicio
missing-fit = nada, llega en menos de un minuto

## Sister kitchens

group-head = { $group }, trimestre { $quarter } de { $year } hasta ahora
site-line = { $name }: { $told }
site-met = { $percent } % de los cocineros dentro de su propia línea en las dos últimas semanas
site-few = muy pocos cocineros últimamente para comparar con sus propias líneas
site-clean = { $percent } % de los platos bien a la primera
site-unwitnessed = aún ninguna tanda con testigo
site-same = { $drill }, { $plates } platos, dispuesto igual: { $times }.
site-same-close = { $drill }, { $plates } platos, dispuesto igual: { $times }; demasiado cerca para distinguir.
group-apart = { $one } y { $other } no comparten ni cocinero ni ejercicio: aún no hay base común, así que no hay número entre ellas. El mismo ejercicio hecho en ambas la da.
group-one-site = { $group }: solo una de sus cocinas, o ninguna, tiene tandas que cuenten este trimestre.
no-group = Esta cocina no está en ningún grupo. Quien me administra anota las cocinas hermanas en la configuración.
