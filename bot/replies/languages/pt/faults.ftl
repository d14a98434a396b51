## Falhas

my-fault = Algo correu mal do meu lado com essa linha, e quem me opera foi avisado. Por favor envie de novo mais tarde.
unreadable-message = Não consegui ler esta mensagem: a chave dela não me chegou. Por favor envie de novo.
dead-event = O evento { $event } falhou três vezes ({ $problem }) e foi posto de lado.
dead-message = Uma mensagem para { $lane } foi recusada ({ $problem }) e foi posta de lado.
dead-join = O bot não consegue entrar em { $room }, que substitui a sala de uma cozinha ({ $problem }). Convide-o lá.
not-replaced = { $room } foi dada como substituída por quem não o pode fazer. A cozinha fica onde está.
names-no-predecessor = { $old } foi dada como substituída por { $new }, que não diz que a substitui, ou já é uma cozinha. A cozinha fica onde está.
kitchen-moved = A cozinha de { $old } está agora em { $new }. Onde as definições indicam a sala antiga, ponha a nova.
moved-here = A cozinha mudou-se para aqui: exercícios, resultados e publicações continuam como antes.
moved-here-live = A cozinha mudou-se para aqui: exercícios, resultados e publicações continuam como antes. Abertos: { $drills }, com resultados nesta conversa ou em qualquer parte da sala.
flooding = São mais linhas do que posso responder de uma vez. Os resultados que consigo ler ficam guardados. Espere dois minutos e continue.
post-missed-in = A publicação semanal do exercício { $drill } em { $room } devia ter saído há mais de 12 horas, enquanto o bot estava fora, e ficou de fora. A cozinha foi avisada.
somebody = uma pessoa
