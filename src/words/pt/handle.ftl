# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: esmaga aquilo sobre que cai
    .detail = { $mass } exercem uma força de { $weight }. De cutelo assenta em { $thickness }: um empurrão de { $push } na borda de cima vira-a, e com uma inclinação de mais de { $tips } cai sozinha, sobre uma faixa de { $shadow } de largura de cada lado: ninguém fica aí, e ninguém a tenta agarrar. Amarre-a a algo que aguente antes de alguém a largar, uma pedra de cada vez; aquilo a que se encosta tem de impedir que caia para a frente e que o pé lhe escorregue. Com uma inclinação de { $leans }°, a borda de cima puxa a amarração com { $pulls }, por esta ordem; a amarração e aquilo a que está presa têm de aguentar várias vezes isso. Pouse-a sobre duas ripas, nunca no chão: dedos das mãos e dos pés, e crianças, fora do espaço que fica por baixo.

way-in-blocked = o tampo não entra: { $place }
    .detail = De cutelo faltam { $edge_short } ({ $edge_measure }: são precisos { $edge_needs }, há { $edge_has }). Ao alto, sobre o lado curto, faltam { $upright_short } ({ $upright_measure }: são precisos { $upright_needs }, há { $upright_has }). O que ajuda, uma destas coisas, ou as duas se a uma posição faltam duas medidas: { $remedies }. Deitado também não passa.

way-in-upright = o tampo só passa ao alto, sobre o lado curto: { $place }
    .detail = De cutelo faltam { $edge_short } ({ $edge_measure }: são precisos { $edge_needs }, há { $edge_has }). Ao alto, sobre o lado curto, passa e sobram { $spare }. O que ajuda, uma destas coisas, ou as duas se a uma posição faltam duas medidas: { $remedies }. Pô-lo de pé sobre o lado curto pede { $stand_up } de altura livre: faça-o antes desse lugar, com o equipamento e as pessoas que o peso pede, e nunca numa escada.

way-in-flat-only = o tampo só passa deitado, o que não se aconselha: { $place }
    .detail = De cutelo faltam { $edge_short } ({ $edge_measure }: são precisos { $edge_needs }, há { $edge_has }). Ao alto, sobre o lado curto, faltam { $upright_short } ({ $upright_measure }: são precisos { $upright_needs }, há { $upright_has }). Deitado passa e sobram { $spare }. O que ajuda, uma destas coisas, ou as duas se a uma posição faltam duas medidas: { $remedies }. Deitado pode partir-se com o próprio peso: veja a tabela de flexão, e leve-o deitado sobre um painel que o apoie todo ou de maneira nenhuma.

way-in-tight = passagem justa: { $place }
    .detail = Com a pedra { $pose }, passa e só sobram { $spare }. Meça outra vez no ponto mais estreito, e passe antes da pedra uma ripa do comprimento dela e uma tábua da altura dela.

way-in-slab = corte antes de entrar: a chapa inteira fica retida neste lugar: { $place }
    .detail = De cutelo faltam { $edge_short } ({ $edge_measure }: são precisos { $edge_needs }, há { $edge_has }). Ao alto, sobre o lado curto, faltam { $upright_short } ({ $upright_measure }: são precisos { $upright_needs }, há { $upright_has }). O que ajuda, uma destas coisas, ou as duas se a uma posição faltam duas medidas: { $remedies }. O tampo acabado passa: descarregue e corte antes de chegar a esse lugar.

way-in-slab-flat = corte antes de entrar: a chapa inteira só passa deitada: { $place }
    .detail = De cutelo faltam { $edge_short } ({ $edge_measure }: são precisos { $edge_needs }, há { $edge_has }). Ao alto, sobre o lado curto, faltam { $upright_short } ({ $upright_measure }: são precisos { $upright_needs }, há { $upright_has }). Deitada passa e sobram { $spare }, e pode partir-se com o próprio peso. O que ajuda, uma destas coisas, ou as duas se a uma posição faltam duas medidas: { $remedies }. O tampo acabado passa: descarregue e corte antes de chegar a esse lugar.

tips-out-of-hands = { $stone }: com as pessoas nestes lugares vira-se
    .detail = O ponto de equilíbrio fica { $off } fora do que se consegue segurar desses lugares. Ponha pessoas dos dois lados dele.

lifter-off-the-edge = { $stone }: a pessoa { $lifter } não tem borda para agarrar
    .detail = O lugar indicado fica a { $away } da borda, mais de { $most }. Indique lugares na borda, nas coordenadas próprias do tampo.

lifter-at-cutout = { $stone }: a pessoa { $lifter } levanta junto a um recorte
    .detail = O lugar fica a { $away } de um recorte, menos do que a largura de uma mão, { $least }. Levante onde a pedra está inteira, nunca pela tira junto a um recorte.

carry-too-far = { $way }: longe demais para levar sem descanso
    .detail = Os pesos indicativos são para transportes até { $most } com a carga contra o corpo. Pouse a pedra de cutelo sobre duas ripas pelo caminho, ou leve-a num carrinho.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Tem { $width } de largura e { $length } de comprimento ({ $stone }). Com a pedra deitada ou nas mãos de pessoas, a tensão é de { $together } com a ajuda do resto da pedra e de { $alone } quando tem de aguentar sozinha a flexão, como quando esse lado é levantado primeiro; de cutelo sobre dois apoios: { $on_edge }; admissível { $allowed }. Antes de a levantar, prenda ao longo dela, de cutelo e encostada de ponta a ponta, madeira direita de { $timber_width } × { $timber_depth } (peças lado a lado: { $timbers }), com pelo menos { $timber_length } de comprimento, com grampos almofadados em pedra inteira nas duas pontas: assim ficam { $braced }. Leve a pedra de cutelo; nunca a agarre nem a aperte com grampos por aí.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Tem { $width } de largura e { $length } de comprimento ({ $stone }). Com a pedra deitada ou nas mãos de pessoas, a tensão é de { $together } com a ajuda do resto da pedra e de { $alone } quando tem de aguentar sozinha a flexão, como quando esse lado é levantado primeiro; de cutelo sobre dois apoios: { $on_edge }; admissível { $allowed }. Nenhuma madeira é suficientemente rígida: assente a pedra toda sobre uma armação ou um painel. Leve a pedra de cutelo; nunca a agarre nem a aperte com grampos por aí.

brace-the-neck = { $stone }, { $neck }: não pode ficar a aguentar a pedra que está para lá dele
    .detail = Tem { $width } de largura; com a pedra deitada, os { $hanging } que pendem dele causam-lhe { $stress }, admissível { $allowed }. Apoie a pedra dos dois lados dele sempre que estiver deitada. Antes de a levantar, prenda ao longo dele, de cutelo e encostada de ponta a ponta, madeira direita de { $timber_width } × { $timber_depth } (peças lado a lado: { $timbers }), com pelo menos { $timber_length } de comprimento, com grampos almofadados em pedra inteira nas duas pontas: assim ficam { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: não pode ficar a aguentar a pedra que está para lá dele
    .detail = Tem { $width } de largura; com a pedra deitada, os { $hanging } que pendem dele causam-lhe { $stress }, admissível { $allowed }. Apoie a pedra dos dois lados dele sempre que estiver deitada. Nenhuma madeira é suficientemente rígida: assente a pedra toda sobre uma armação ou um painel.

narrow-rail = { $rail } ({ $cutouts }): mais estreita do que o ofício a deixa
    .detail = Fica junto a um furo de torneira e tem { $width } de largura; { $least } é o mínimo publicado junto a um recorte, e para um furo de torneira não está publicado nada menor. Mude o furo ou faça-o mais pequeno, ou pergunte se a pedra pode ser reforçada por baixo de forma permanente.

guideline-is-not-a-limit = O valor indicativo para levantar não é um limite seguro
    .detail = { $each } por pessoa é para adultos em boa forma física que levantam com a carga junto ao corpo, à altura da cintura, com o corpo direito e poucas vezes; é menos para muitas pessoas, com mãos molhadas, em degraus e em chão irregular. Não é nenhuma promessa de que um levantamento abaixo dele seja seguro. A equação de levantamento é para levantar, não para transportar. Verifique as regras em vigor.

tips-off-supports = O tampo não fica imóvel sobre os apoios
    .detail = Os apoios não rodeiam o ponto de equilíbrio. Acrescente ou mude apoios antes de o pousar.

support-lifts-off = { $support }: não carrega nada
    .detail = O tampo não faz força sobre este apoio. Verifique o lugar e a altura; não force o tampo para baixo até ele.

falls-off-trestles = { $stone }: não fica sobre os cavaletes
    .detail = Com os cavaletes a { $first } e a { $second } da ponta da chapa, o ponto de equilíbrio não fica entre eles, ou a pedra não chega até eles. Mude-os antes desse corte, ou retire lift.trestles.

bends-on-trestles = { $stone }: dois cavaletes não são suficientes
    .detail = Sobre cavaletes a { $first } e a { $second } da ponta da chapa, a tensão é de { $stress }, { $times } vezes o admissível. Em vez disso, assente a pedra sobre um painel plano que a apoie toda.

aid-too-weak = { $stone }: o equipamento de elevação não está marcado para o seu peso
    .detail = O equipamento ({ $aid }) está marcado para { $rated }; esta pedra precisa de { $needs }. Use um que esteja marcado para isso, ou uma pedra mais leve: corte-a antes de a mover.

aid-without-mark = o que está marcado em: { $aid }? Precisa de { $needs }
    .detail = Leia a carga marcada e escreva-a aqui; o mais pesado: { $stone }. Sem marcação não se levanta. No ficheiro: lift.rated.

in-slings-no-place = { $stone }: não há lugar para duas lingas
    .detail = Onde quer que passem duas lingas, fica suspensa mais fletida do que o admissível. Reforce-a, ou leve-a assente numa armação.

on-a-trolley = o carrinho: a pedra de cutelo, amarrada, em chão plano
    .detail = O lado comprido mais pesado para baixo, a pedra amarrada à estrutura do carrinho, uma pessoa em cada ponta e ninguém ao lado. A descer, é retido a partir do lado de cima. As instruções do fabricante estão primeiro.

on-a-trolley-numbers = { $stone }: se virar, mata; um carrinho marcado para { $rated } ou mais
    .detail = No carrinho, o ponto de equilíbrio fica a { $height } do chão, e vira-se em chão com { $tips } de inclinação lateral (parado e com rodas duras: mais cedo quando anda). No plano é preciso empurrar com { $push } no mínimo, e numa rampa de 1 em { $run } com mais { $ramp }, que também o puxam pela rampa abaixo.

under-a-vacuum-lifter = o elevador de vácuo: marcado para o dobro do peso, e com uma segunda segurança
    .detail = Só numa face seca, limpa, sã, polida ou amaciada: nunca numa face áspera ou fendida, e em nenhum sítio por cima de um defeito ou de uma reparação. Numa face vertical as ventosas seguram só por atrito: use o valor do fabricante para isso. Uma segunda segurança (cinta, linga) por baixo da pedra a todo o momento. Levante-a um palmo, espere e veja se todas as ventosas seguram, antes de a mover. As instruções do fabricante estão primeiro.{ $wet ->
        [yes] {" "}Este trabalho corta com água: lave primeiro a lama e deixe secar a face.
       *[other] {""}
    }{ $face ->
        [porous] {" "}Esta pedra é porosa: o ar atravessa-a e a ventosa deixa de segurar. Pergunte ao fabricante, ou use lingas.
        [split] {" "}Esta pedra é muitas vezes vendida com a face fendida: aí nenhuma ventosa segura.
       *[other] {""}
    }

under-a-vacuum-lifter-numbers = { $stone }: se cair, mata; um elevador de vácuo marcado para { $rated } ou mais
    .detail = Ventosas aos pares, de um lado e do outro do ponto de equilíbrio: { $cups }, e cada uma carrega { $each }.

under-a-vacuum-lifter-no-room = { $stone }: não há lugar para um elevador de vácuo
    .detail = Teria de estar marcado para { $rated } ou mais, mas não há lugar para um par de ventosas de um lado e do outro do ponto de equilíbrio. Use lingas ou um carrinho.

in-slings = o pórtico: montado e usado por alguém competente
    .detail = Gancho por cima do ponto de equilíbrio, arestas almofadadas, as lingas amarradas de modo a não poderem escorregar uma para a outra, uma corda-guia em cada ponta, ninguém por baixo nem ao lado. O equipamento de elevação está inspecionado e marcado, e é montado por uma pessoa competente e, onde a lei o pede, habilitada com licença.

in-slings-numbers = { $stone }: se cair, mata; lingas a { $first } e a { $second } da ponta esquerda
    .detail = Da ponta de baixo se no desenho está ao alto. De cada linga pendem { $each }; com { $legs } entre os ramais, cada um puxa com { $factor } do peso, { $tension }, e o gancho fica { $hook } ou mais acima da pedra.

not-a-hand-lift = não se levanta à mão: { $stones }
    .detail = { $masses }. { $people ->
        [one] Uma pessoa pode contar com { $team }
       *[other] { $people } pessoas a levantar juntas podem contar com { $team }
    }; acima de cerca do dobro disso o risco é grave mesmo para pessoas aptas e treinadas. Indique um meio em lift.aid: um carrinho que leve a pedra de cutelo, marcado para { $rated } ou mais, só em chão plano (empurrão de pelo menos { $push }); um elevador de vácuo marcado para { $vacuum } ou mais, numa face seca, limpa e intacta; um pórtico ou uma talha com lingas, marcado para { $rated } ou mais e montado por alguém competente em equipamento de elevação. Pôr de cutelo a mais pesada exige, no início, { $tilt } no lado que se ergue.

breaks-in-hands = partia-se nas mãos das pessoas: { $stones }
    .detail = { $masses }. Como quer que { $people ->
        [one] uma pessoa a segure
       *[other] { $people } pessoas a segurem
    }, deitada ou de cutelo, fica mais fletida do que o admissível. Reforce-a, assente-a num painel, ou indique um meio em lift.aid: um carrinho marcado para { $rated } ou mais; um elevador de vácuo marcado para { $vacuum } ou mais; um pórtico com lingas, montado por alguém competente.

more-than-four = demasiadas pessoas para levantar ao mesmo tempo: { $people }
    .detail = É improvável que mais de { $most } pessoas trabalhem como uma equipa, e não está publicada nenhuma parte da sua força com que contar. Use equipamento de elevação ou um carrinho, ou menos pessoas e uma peça mais leve.

lifter-over-guideline = acima do valor indicativo: { $stones }
    .detail = { $masses }. { $people ->
        [one] Uma pessoa pode contar com { $team }
       *[other] { $people } pessoas a levantar juntas podem contar com { $team }
    }: um valor para ver melhor, não um limite. Antes de levantar, decida quem levanta, o caminho e onde se pousa; mais pessoas, uma peça mais leve ou um meio de elevação é melhor. Pôr de cutelo a mais pesada exige, no início, { $tilt } no lado que se ergue.

tilt-over-guideline = decida como se põe de cutelo; no lado oposto pede: { $stones }
    .detail = { $people ->
        [one] Uma pessoa pode contar com { $team }
       *[other] { $people } pessoas juntas podem contar com { $team } ao todo
    }. Leve-a de cutelo desde a entrega até onde é precisa. { $hands ->
            [0] O que exige mais do que cerca do dobro não se vira à mão: aí o risco é grave mesmo para gente forte e treinada. Uma talha, um elevador de vácuo ou uma armação que báscula com a pedra amarrada, por alguém competente: decida qual antes de chegar.
           *[other] Para a virar, calce o lado comprido sobre o qual roda, para que não deslize; todos no lado comprido oposto; erga-a por etapas sobre calços e tenha a amarração pronta antes de ela ficar em pé; ou vire-a com uma talha ou um elevador de vácuo.
        } Ninguém fica do lado para onde pode cair.

bends-flat-always = { $stone }: não pode ficar deitada sobre dois apoios
    .detail = Se está { $how }: { $stress } onde tem { $width } de largura, a { $at } da ponta; o admissível são { $allowed } (resistência ÷ coeficiente de segurança): { $times } vezes isso, mesmo sobre os dois melhores apoios. Mantenha-a de cutelo, ou assente-a num painel plano que a apoie toda.{ $flaws ->
        [0] {""}
        [one] {" "}A chapa tem um defeito: através dele a resistência não vale.
       *[other] {" "}A chapa tem { $flaws } defeitos: através deles a resistência não vale.
    }

bends-flat = { $stone }: deitada pode partir-se
    .detail = Se está { $how }: { $stress } onde tem { $width } de largura, a { $at } da ponta; o admissível são { $allowed } (resistência ÷ coeficiente de segurança): { $times } vezes isso. Nunca levante uma ponta enquanto está deitada. Deitada só pode ficar sobre apoios a { $first } e a { $second } da ponta esquerda (a de baixo se está ao alto), onde são { $best }; transporte-a de cutelo.{ $flaws ->
        [0] {""}
        [one] {" "}A chapa tem um defeito: através dele a resistência não vale.
       *[other] {" "}A chapa tem { $flaws } defeitos: através deles a resistência não vale.
    }

carry-on-edge-not-by-its-ends = { $stone }: levar de cutelo, nunca deitada, e não pelas pontas
    .detail = Se está { $how }: { $stress }; o admissível são { $allowed }: { $times } vezes isso. Segure-a ou apoie-a a { $first } e a { $second } da ponta, onde são { $best }. Supõe-se pedra sã.

carry-on-edge-braced = { $stone }: nem sequer de cutelo antes do reforço
    .detail = Se está { $how }: { $stress }; o admissível são { $allowed }: { $times } vezes isso. Reforce primeiro as partes estreitas, ou leve-a assente numa armação. Supõe-se pedra sã.

flaws-and-strength = { $count ->
        [one] A chapa tem um defeito
       *[other] A chapa tem { $count } defeitos
    }: os valores de resistência não valem através { $count ->
        [one] dele
       *[other] deles
    }
    .detail = Todas as tensões aqui supõem pedra sã; numa fissura ou numa reparação pode partir-se muito abaixo delas. Mantenha-a de cutelo, num painel ou numa armação que a apoie toda.

trestles-are-moved = os cavaletes mudam de lugar antes do corte { $cuts }
    .detail = Nenhum lugar serve para todos os cortes. Tire a pedra como o peso pede, mude-os, volte a deitá-la; os novos lugares estão na folha desse corte.

rests-poorly = ponha mais apoios debaixo do tampo: { $what }
    .detail = { $parts }. Apoios mais juntos, ao lado de cada recorte, mais para fora. Nem parafuso nem cola segura um tampo que se vira.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = saliência
rests-overhang-part = { $edges } { $count ->
        [one] sai
       *[other] saem
    } { $reach } para além dos apoios (limite publicado: { $limit })
rests-overhang-person = saliência
rests-overhang-person-part = { $edges } { $count ->
        [one] sai
       *[other] saem
    } { $reach } para além dos apoios (limite publicado: { $limit }) e, com uma pessoa no bordo, chega a { $times } do admissível
rests-span = vão
rests-span-part = o maior vão sem apoio é de { $span } (limite publicado: { $limit })
rests-tips = vira-se se alguém se apoiar
rests-tips-part = uma pessoa de { $force } { $place } vira-o dos apoios
rests-bends = alguém apoiado nele
rests-bends-part = uma pessoa de { $force } { $place } carrega-o a { $times } do admissível
rests-bends-elsewhere = alguém apoiado nele
rests-bends-elsewhere-part = uma pessoa de { $force } { $place } carrega-o a { $times } do admissível, sobretudo { $section }
lean-worst = no pior sítio
lean-rail = na { $rail } ({ $cutouts })
lean-overhang = na saliência ({ $edge })
lean-between = entre os apoios { $first } e { $second }
lean-over = sobre o apoio { $support }
rests-over = { $support }
rests-over-part = { $support } leva até { $carried }, mais do que o seu limite de { $limit }
rests-over-person = { $support } com uma pessoa
rests-over-person-part = { $support } leva até { $with_person } com uma pessoa de { $force } (limite { $limit })
none-published = nada para uma pedra tão fina

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = levá-la ao alto, o que precisa de { $n } de altura
remedy-cut-to = cortá-la para { $n } de comprimento, no máximo, antes deste sítio
remedy-widen-before = alargar o caminho antes do canto para pelo menos { $n }
remedy-widen-after = alargar o caminho depois do canto para pelo menos { $n }
remedy-widen = alargar para pelo menos { $n }: tirar a folha da porta, os batentes, um aro
remedy-raise = fazer pelo menos { $n } de altura livre para a passar { $how }
