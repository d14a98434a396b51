## A ficha do exercício

card-head = { $name } (exercício { $label }), { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 }, { $rows ->
    [one] uma fileira
   *[other] { $rows } fileiras
 }.
card-head-draft = { $name } (rascunho), { $plates ->
    [one] { $plates } prato
   *[other] { $plates } pratos
 }, { $rows ->
    [one] uma fileira
   *[other] { $rows } fileiras
 }.
card-step = { $nth }. { $pieces } { $component }, { $technique }{ $tool ->
    [usual] {""}
   *[other] , com { $tool }
 }{ $where ->
    [nowhere] {""}
    [hours] , às { $at }
   *[words] , { $at }
 }
card-accept = Está bom quando: { $accept }.
card-work = { $touches ->
    [one] { $touches } toque
   *[other] { $touches } toques
 } por prato, { $run } na rodada. Padrão { $standard }.
card-targets = Início { $opening }, casa { $house }, ágil { $brisk }.
card-redo = Um prato a refazer custa cerca de { $redo }. Com menos de { $gate } pratos bons há contagem e não há tempo; no passe todos os pratos têm de estar bons.
card-redo-one = No passe todos os pratos têm de estar bons.
card-send = Envie o tempo e os pratos bons, como `{ $example }`. Uma rodada conta para os quadros quando alguém que viu levanta a mão nela.
card-table = Em { $plate }: uma mesa de { $length } x { $depth } cm.
card-reaches = As duas mãos ao mesmo tempo: { $reaches } alcances por prato.
card-working-component = Um passo ao longo de toda a fileira, depois o seguinte.
card-working-plate = Um prato acabado, depois o seguinte.
card-working-waves = Em ondas de { $wave }.
card-pressure = Chamadas de nível { $level }.
card-labels = Leia cada rótulo, também “pode conter”: { $labels }.
card-label = { $component } ({ $label })
card-caution = - { $caution }
card-take-care = Cuidados:
late = (com atraso)

## Cuidados (a ficha mostra os que se aplicam; as regras locais fecham sempre)

caution-mandoline = Mandolina: proteção e luva anticorte, parar antes do último terço, cortar antes do relógio, ninguém novo sozinho.
caution-heat = Banho quente a 45 graus no máximo, de base larga, longe da borda, trocado a cada rodada; coisas quentes: pano seco, cabo para dentro, avisar "quente atrás".
caution-floor = Escorregões no chão: { $what }, água. Um corredor, um sentido; "stop" para o relógio.
caution-cold = Mantido frio, só pelo tempo que as normas alimentares locais permitem; fora se cair ou ficar muito tempo quente: { $what }.
caution-puree = Mantido frio, deitado fora no mesmo dia: { $what }. Se for de feijão branco, de lata, nunca demolhado cru.
caution-cooked-starch = Cozido, arrefecido depressa, a 5 graus ou menos, deitado fora no mesmo dia: { $what }.
caution-bottle = Nada volta de um prato para uma bisnaga.
caution-pieces-counted = Contar ao sair e ao voltar: { $what }.
caution-strain = Três rodadas por dia. Dormência, formigamento ou dor: pare e procure um profissional qualificado.
caution-chemicals = Produtos de limpeza ficam longe da mesa.
caution-breakage = Se algo se parte: parar, deitar fora a comida aberta ao alcance, varrer, nunca com as mãos nuas, dar conta de cada pedaço.
caution-hands = Lave as mãos antes e depois do telefone; cortes sob penso azul e luva de nitrilo.
caution-allergens = Nenhum substituto está livre de alérgenos. O contacto conta, não só comer; a sua própria alergia diz-se ao chef cara a cara, nunca aqui.
caution-never-served = A comida de treino nunca se serve, prova ou devolve: etiqueta "treino, não comer" com a data.
caution-local-rules = As regras locais de segurança alimentar, de trabalho e de segurança, e o seu chef, vêm primeiro.
