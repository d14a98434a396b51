## O trimestre

quarter-open = Trimestre { $quarter } de { $year } até agora, ritmo nivelado em todos os exercícios
quarter-closed = Trimestre { $quarter } de { $year }, fechado: ritmo nivelado em todos os exercícios
quarter-board = { $rows }
quarter-row = { $place } { $name } { $pace }
quarter-shared = O mesmo lugar: perto demais para separar.
quarter-too-close = Perto demais para separar: ninguém está claramente à frente.
quarter-divided = Alguns não partilham pessoa nem exercício com os outros: ainda sem terreno comum, por isso sem número entre eles.
quarter-few = Ainda sem lugares. São precisas três pessoas com exercícios semelhantes e rodadas que alguém viu.
quarter-yours = O seu: lugar { $place }, { $pace } s por toque nivelado, de { $runs } rodadas.
quarter-no-place = O seu: { $pace } s por toque nivelado. Sem lugar: { $why }.
quarter-why-ground = os seus exercícios e os dos outros ainda não têm terreno comum
quarter-why-work = menos de metade do seu trabalho é como o dos outros
quarter-why-judged = a maior parte das suas rodadas foi julgada por você
band = cerca de { $low } a { $high }
standard-stands = Vale o padrão calculado. Um ritmo entre exercícios precisa de { $runs } rodadas contadas de { $cooks } pessoas, { $linked } das quais também fizeram outro exercício. Falta: { $missing }.
missing-runs = { $runs ->
    [one] mais { $runs } rodada
   *[other] mais { $runs } rodadas
 }
missing-cooks = mais pessoas
missing-links = pessoas que façam também outro exercício
missing-fit = nada, vem dentro de um minuto

## Cozinhas irmãs

group-head = { $group }, trimestre { $quarter } de { $year } até agora
site-line = { $name }: { $told }
site-met = { $percent } % das pessoas dentro da própria linha nas últimas duas semanas
site-few = poucas pessoas ultimamente para comparar com as próprias linhas
site-clean = { $percent } % dos pratos certos à primeira
site-unwitnessed = ainda sem rodada testemunhada
site-same = { $drill }, { $plates } pratos, com a mesma disposição: { $times }.
site-same-close = { $drill }, { $plates } pratos, com a mesma disposição: { $times }; perto demais para separar.
group-apart = { $one } e { $other } não partilham pessoa nem exercício: ainda sem terreno comum, por isso sem número entre elas. O mesmo exercício feito nas duas dá esse terreno.
group-one-site = { $group }: só uma das cozinhas tem rodadas que contam neste trimestre, ou nenhuma.
no-group = Esta cozinha não está em nenhum grupo. Quem me opera lista as cozinhas irmãs nas definições.
