# The bench pages, the annex and the answers in a terminal.

bench-head = plano { $plan } · página { $number } de { $count }
bench-head-annex = plano { $plan } · anexo, página A{ $number } de A{ $count }
bench-foot = As regras locais, as instruções dos fabricantes e as pessoas competentes estão acima desta folha.
bench-foot-cut = Primeiro riscar. Nunca torcer, nunca empurrar de lado. Se o disco prender: desligar, esperar, soltar, voltar a entrar só à velocidade total.
bench-stop = PARE
bench-kills-now = mata
bench-kills-later = mata mais tarde
bench-maims = mutila
bench-lasting = fica para a vida
bench-breaks-stone = parte a pedra
bench-blank = preencher
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = Num relance
bench-glance-title = Num relance: { $work }
bench-work-straight = { $count ->
    [one] serrar um bordo
   *[other] serrar { $count } bordos
 }
bench-work-curves = { $count ->
    [one] mergulhar uma curva
   *[other] mergulhar { $count } curvas
 }
bench-work-openings = { $count ->
    [one] cortar uma abertura
   *[other] cortar { $count } aberturas
 }
bench-glance-alt = A chapa vista de cima com o tampo, { $length } por { $width }, os cortes por ordem e as sobras com os seus pesos.
bench-glance-open = Antes de a máquina arrancar: resolver cada ponto, escrever o resultado, assinalar
bench-glance-warnings = O que este trabalho lhe pode fazer, o pior primeiro
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = fica
bench-top-corner = canto { $corner }
bench-practice-here = ensaio
bench-tile-top = tampo acabado
bench-tile-slab = chapa
bench-tile-waste = sobra mais pesada
bench-tile-sawing = disco na pedra
bench-tile-setting = preparação
bench-tile-silica = sílica na lama
bench-tile-silica-dry = sílica no pó
bench-tile-likely = no máximo; provável { $mass }
bench-tile-likely-thick = no máximo; provável { $mass }; { $thick }
bench-tile-no-waste = não cai nenhuma peça
bench-tile-after = { $name }, corte { $cut }
bench-tile-shares = { $count ->
    [one] uma pessoa, um dia
   *[other] repartir por { $count } pessoas ou dias
 }
bench-tile-with-other = com { $other } de outro trabalho: { $shares }
bench-tile-without-edges = { $shares }; sem acabamento
bench-not-counted = Desbastar, polir e quebrar as arestas não entra em nenhum número daqui, a não ser que [[today]] o indique; conta no dia da mesma pessoa.
bench-tile-set-ups = { $count ->
    [one] uma montagem
   *[other] { $count } montagens
 }
bench-tile-of-dust = no máximo, em { $mass } de pedra

# Mark out
bench-mark = Marcar
bench-mark-title = Marcar todas as linhas antes do primeiro corte
bench-mark-rule = Traçar cada linha de lado a lado da chapa antes do primeiro corte. Um corte leva uma marca; a linha na pedra que fica ainda se vê.
bench-mark-alt = A chapa vista de cima com todas as linhas a traçar, as marcas nos bordos e todos os centros e furos.
bench-mark-what = ponto
bench-mark-off = da linha traçada
bench-mark-off-that = da linha { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = na { $cut }
bench-mark-off-line = linha { $cut }: { $distance }
bench-mark-on-line = na linha { $cut }
bench-mark-check = controlo
bench-mark-line-check = controlo da linha
bench-mark-on-curve = linha do corte { $cut }
bench-mark-keep = linha que fica
bench-mark-guide = guia, idem
bench-mark-tape-from = fita
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } centro
bench-mark-chord = { $mark } corda
bench-mark-hole = { $mark } furo
bench-mark-stop = { $mark } paragem
bench-mark-both = Corte { $cut }: { $distance } desde o canto { $corner } do tampo pelas duas linhas.
bench-mark-along = Corte { $cut }, desde o canto { $corner } do tampo: { $before } para trás, { $after } para a frente.
bench-mark-guides = Cada linha da guia corre a { $offset } da sua linha que fica, de ponta a ponta.
bench-mark-rough = Um canto numa aresta bruta fica onde se cruzam fios esticados ao longo das duas arestas: marque-o primeiro.
bench-mark-tape = O gancho da fita assenta no próprio canto. Se no controlo falhar mais de { $tape }: medir outra vez, não deslocar a linha. { $guides }
bench-mark-between = Um trinta e dois avos de polegada é o meio entre duas marcas de uma fita que mostra dezasseis avos.
bench-end = { $mark }: { $distance } desde { $corner } em { $edge }

# Straight cuts
bench-straight = Cortes retos
bench-straight-title = Reto, bordo { $edge }, { $length } de comprimento, pedra { $thick }
bench-relief-title = Corte de alívio em { $edge }, { $length } de comprimento, pedra { $thick }
bench-straight-alt = A chapa antes do corte ao longo do bordo { $edge }, vista de cima: guia, apoios, lugar do operador e o que se solta: { $waste }.
bench-you = você
bench-depth = profundidade
bench-depths = profundidades
bench-trestles-move = Primeiro levantar a pedra e mudar os cavaletes: { $first } e { $second } desde a ponta da chapa.
bench-trestles-board = Primeiro levantar a pedra: a partir daqui assenta numa prancha plana inteira.
bench-late = Só depois do corte { $cut }, que tem a sua própria página.
bench-fact-guide = guia
bench-fact-ends = pontas
bench-fact-moves = fica a
bench-fact-how = como
bench-fact-bearers = apoios
bench-fact-drill = furar antes
bench-fact-when = quando
bench-guide-kept = a { $offset } da linha que fica, sobre a pedra que fica
bench-guide-waste = a { $offset } da linha que fica, sobre a sobra
bench-ends = { $first }; { $second }
bench-moves = { $places } desde { $mark }, um após outro em cada profundidade{ $clamp ->
    [no] ; onde nenhum grampo chega, uma ventosa de fixação, experimentada à mão
   *[yes] {""}
 }
bench-stone-end = a ponta da pedra para o lado de { $mark }
bench-span = { $from } a { $to }
bench-how = { $parts }
bench-how-far-end = Em cada profundidade primeiro os últimos { $length } em { $last }, de fora para dentro; depois desde a outra ponta até lá.
bench-how-stop = Para em { $mark }: o centro do disco a não menos de { $short }. O que o disco redondo deixa tira-se no fim e por cima: coroa na sobra, depois rebarbar; nunca por baixo.
bench-how-stop-hole = Acaba no furo feito em { $mark }: o centro do disco a não menos de { $short }.
bench-how-allowance = Ficam { $left } para o acabamento.
bench-how-breaks = A partir de { $depth } pode partir-se.
bench-bearers = de cada lado, { $off }: a { $at } ao longo desde { $mark }
bench-bearers-even = { $count } de cada lado, { $off }: de { $first } a { $last } ao longo desde { $mark }, de { $step } em { $step }
bench-bearers-off = a { $off } da linha
bench-bearers-off-each = a { $kept } da linha, a { $waste } sob a sobra
bench-struck = pela linha traçada { $first } a { $second }: uma ponta já não existe
bench-drill = Ø { $bit } em { $marks }, a húmido, antes de o disco se aproximar
bench-free-heavy = { $name } solta-se: até { $mass }. Está sobre os seus próprios apoios, nivelada, antes da primeira passagem. Nem mão, nem pé, nem joelho por baixo; ninguém a segura.
bench-free-carried = { $name } solta-se: até { $mass }. Está sobre os seus próprios apoios, nivelada, antes da primeira passagem. Nem mão, nem pé, nem joelho por baixo; ninguém a segura. { $away }
bench-away = Depois { $people } pessoas { $how ->
            [flat] levam-na deitada para duas ripas no chão, a um quinto do comprimento das pontas.
           *[edge] põem-na sobre o lado comprido, levam-na ao alto para duas ripas junto a uma parede e atam-na aí.
        }
bench-away-more = São precisas { $people } pessoas para a levar { $how ->
            [flat] deitada
           *[edge] ao alto
        }, e este trabalho tem menos: arranje-as ou um meio auxiliar, ou serre-a de través onde está, com um apoio de cada lado da linha.
bench-away-aid = Depois { $aid ->
            [trolley] { $people } pessoas ({ $half }) põem-na ao alto e o carro leva-a, atada,
            [vacuum] o elevador a vácuo leva-a, ao alto,
           *[gantry] a talha leva-a, ao alto em duas cintas,
        } para duas ripas junto a uma parede; ate-a aí.
bench-away-sawn = Nenhuma equipa a leva: serre-a de través onde está, com um apoio de cada lado da linha, ou arranje um meio auxiliar.
bench-free-light = { $name } solta-se: até { $mass }. Um apoio por baixo antes da primeira passagem; nenhuma mão por baixo.
bench-free-flaw = «{ $flaw }» atravessa-a: pode partir aí. Apoios dos dois lados; madeira direita apertada por cima antes de a levantar.
bench-free-station = { $name } solta-se por volta da estação { $station }, última profundidade: até { $mass }. Um apoio por baixo antes da primeira passagem; nenhuma mão por baixo.
bench-measured = bordo { $edge }, falta ou sobra (deve ser 0)
bench-cut-by = cortado por, hora

# Curves
bench-curve = Curva, corte { $cuts }
bench-curve-title = { $count ->
    [one] Mergulhar uma estação da curva em { $corners }, { $depths } profundidades
   *[other] Mergulhar { $count } estações da curva em { $corners }, { $depths } profundidades
 }
bench-curve-alt = A curva vista de cima com as estações numeradas, o centro ou a corda, e a sobra.
bench-curve-how = Como
bench-curve-line = raio { $radius }; ficam { $left } para o acabamento
bench-curve-line-inside = raio { $radius }; ficam { $left } para o acabamento; as estações no raio { $stations }
bench-curve-rise = corda { $chord }, a curva sobe { $rise } acima dela no meio
bench-curve-struck = { $points }, traçado antes do corte 1: ver Marcar
bench-curve-swing = { $mark }: a { $radius } de cada uma de { $points }
bench-curve-stations = Traçar a linha à volta do centro. Medir cada estação a direito desde a marca ao lado do seu número; as vizinhas distam { $apart }.
bench-curve-ordinates = Traçar a corda. Marcar cada estação ao longo dela e em esquadria; as vizinhas distam { $apart }.
bench-curve-plunge = Disco em esquadria com o braço na estação: face próxima a { $near } do centro, marca do gabarito a { $arm }. Ficar ao lado da linha, nunca nela. A direito para baixo, a direito para cima. Nunca o conduzir em curva.
bench-curve-plunge-guide = Borda da guia a { $offset } da estação e a { $gap } da curva, { $half } para cada lado; face próxima na curva. Ficar ao lado da linha, nunca nela. A direito para baixo, a direito para cima. Nunca o conduzir em curva.
bench-curve-plunge-square = Marcar o centro do arco, a { $radius } das duas pontas da corda. O disco fica em esquadria com a linha do centro pela estação, a sua face exterior, a que está longe do centro, na estação; a aresta da guia { $offset } para lá. Ficar ao lado da linha dele, nunca nela. A direito para baixo, a direito para fora. Nunca o virar.
bench-curve-rings = Todas as estações a uma profundidade, depois todas à seguinte: { $depths }. A pedra tem { $thick }.
bench-curve-ridges = Ficam cristas de { $left }: desbastar a húmido com mó de taça diamantada ou disco de lamelas, grão 60, ao longo da curva, até à linha; depois 120, 200, 400.
bench-fact-pivot = centro
bench-fact-chord = corda
bench-fact-stands = assenta em
bench-fact-swing = acha-se
bench-fact-line = linha que fica
bench-arm = marca { $length }
bench-pivot-top = o tampo: fita ou ventosa, nunca furado
bench-pivot-cutout = pedra que cai mais tarde, ainda no lugar
bench-pivot-waste = a sobra: manter essa peça no lugar até a curva estar feita
bench-pivot-off = ao lado da pedra: fixar ali algo da mesma altura
bench-station = n.º
bench-station-along = ao longo
bench-station-off = afastado
bench-station-off-waste = fora, para a sobra
bench-relief-first = Primeiro os cortes de alívio, para a sobra sair em pedaços.
bench-relief-cut = corte
bench-relief-guide = guia nas marcas
bench-relief-length = comprimento
bench-two-marks = { $first } e { $second }

# Openings
bench-opening = Abertura { $number }
bench-opening-title = Abertura: { $what }, pedra { $thick }
bench-opening-alt = A abertura vista de cima com furos, cortes e linhas de guia, e a pedra mais estreita ao lado.
bench-opening-corner-alt = Um canto da abertura: as linhas traçadas e os pontos junto delas
bench-opening-what = o quê
bench-opening-marks = marcas
bench-opening-how = como
bench-opening-depths = profundidades
bench-depths-straight = reto
bench-depths-curve = redondo
bench-opening-stop = o centro fica { $short } antes de { $mark }
bench-opening-hole = furar Ø { $bit }
bench-opening-straight = reto, { $length }
bench-opening-curve = redondo, { $length }
bench-opening-swing = raio { $radius }, braço { $arm }, { $count } estações
bench-opening-plunges = { $count } mergulhos ao longo de uma corda de { $chord }, flecha { $rise }
bench-opening-drill = a húmido, a direito para baixo, por cima
bench-opening-stations-chord = Estações, corte { $cuts }: ao longo da corda desde a marca e, e em esquadria com ela
bench-opening-stations-pivot = Estações, corte { $cuts }: a direito desde as marcas traçadas
bench-opening-step-drill = Fazer primeiro todos os furos: o disco para então num furo e nenhum corte avança para o canto.
bench-opening-step-saw = Serrar de furo a furo, cada corte até à profundidade total antes do seguinte. O disco é redondo: por baixo as pontas dos cortes ainda seguram a peça. Soltá-la por cima, com a coroa na sobra sobre cada ponta, o resto rebarbado; ninguém trabalha por baixo. A pedra tem de estar apoiada a toda a volta e sob a peça que cai.
bench-opening-step-saw-parted = Serrar de furo a furo, cada corte até à profundidade total antes do seguinte. O disco é redondo: por baixo as pontas dos cortes ainda segurariam a peça; os furos ao lado delas separam-na aí, e o que fica é rebarbado. Ninguém trabalha por baixo. A pedra tem de estar apoiada a toda a volta e sob a peça que cai.
bench-opening-step-last = O último corte solta a peça: primeiro apoios por baixo, ninguém debaixo. A partir de agora a pedra está fraca junto à abertura: talas postas antes de a mover.
bench-rail = { $what }
bench-rail-holds = { $width } de largura: aguenta; transportar de cutelo, nunca pela faixa
bench-rail-brace = { $width } de largura: só com talas. { $splint }
bench-rail-weak = { $width } de largura: fraca demais mesmo com talas. { $splint }
bench-splint = { $count } × madeira { $wide } × { $high }, { $length } de comprimento, apertada antes do primeiro corte aqui

# Moving
bench-move = Mover e assentar
bench-move-title = De cutelo, à mão, amarrada quando está de pé
bench-move-title-trolley = De cutelo no carrinho, amarrada, em chão nivelado
bench-move-title-vacuum = De cutelo sob o elevador de vácuo
bench-move-title-gantry = De cutelo em duas cintas
bench-move-slab = Chapa para os cavaletes, { $alike ->
    [yes] um lado em baixo
   *[no] { $side } em baixo
 }
bench-move-top = Tampo para o lugar, { $alike ->
    [yes] um lado em baixo
   *[no] { $side } em baixo
 }
bench-move-alt = A pedra de cutelo com a ajuda e uma pessoa em cada ponta, à escala; pesa até { $mass }.
bench-move-on-edge = Nunca deitada pelas pontas: parte-se. De cutelo todo o caminho, deitada só sobre os dois cavaletes. Nunca levantar uma ponta.
bench-move-tied = De cutelo todo o caminho, amarrada sempre que está de pé.
bench-turn-slab = de cutelo junto aos dois cavaletes, o que a leva calçado; lado comprido de baixo nos dois ao mesmo tempo, depois deitada: { $hands ->
    [none] não à mão, mas com talha, elevador de vácuo ou armação basculante
    [open] como se decidir na página 1: todos no lado comprido oposto, ninguém por baixo
    [aid] virada pelo elevador, duas pessoas guiam
   *[team] todos no lado comprido oposto, ninguém por baixo
 }. A amarração por último.
bench-turn-top = de cutelo ao lado do seu lugar, depois sobre ripas forradas atravessadas: { $hands ->
    [none] não à mão, mas com talha, elevador de vácuo ou armação basculante
    [open] como se decidir na página 1: todos no lado comprido oposto, ninguém por baixo
    [aid] virado pelo elevador, duas pessoas guiam
   *[team] todos no lado comprido oposto, ninguém por baixo
 }. Ripas fora uma a uma, o lado comprido levantado com cunhas, nenhum dedo por baixo.
bench-fact-flat = chapa, deitada
bench-fact-set = tampo, pousado
bench-move-hands = Onde vão as mãos
bench-move-hands-on-edge = Onde vão as mãos: pende delas de cutelo, nunca deitada
bench-move-trestles = Dois cavaletes de lado: distâncias da ponta { $corner }, e o que cada um leva
bench-move-supports = Em que assenta: o meio de cada apoio, como desenhado
bench-hands-alt = A pedra vista de cima com uma pessoa em cada lugar e o que cada uma carrega.
bench-hands = { $number }: { $mass }
bench-trestles-alt = A chapa sobre dois cavaletes, a { $first } e { $second } da ponta.
bench-supports-alt = O tampo visto de cima sobre os apoios com o que cada um suporta.
bench-supports-short = Assim não chega: primeiro mais apoio, ver página 1.
bench-free-span = { $length } no mais largo; no máximo { $limit }
bench-overhang = { $edge }: { $length }; no máximo { $limit }. Ponha lá um apoio
bench-overhang-person = { $edge }: { $length }; ninguém se apoia aí, ou ponha aí um apoio
bench-bearing-over = uma pessoa encostada ao tampo põe-lhe { $person }, pode suportar { $limit }: ninguém se senta nem se encosta ali, ou mais um apoio
bench-support-name = { $number } { $what }
bench-support = { $along } da esquerda, { $up } de baixo; leva no máximo { $mass }
bench-fact-trolley = carrinho
bench-fact-vacuum = elevador de vácuo
bench-fact-slings = cintas
bench-fact-lift = à mão
bench-fact-fall = se cair
bench-fact-free = sem apoio
bench-fact-over = além dos apoios
bench-trolley = marcado para { $rated } ou mais; empurrar { $push } em chão nivelado
bench-rated = marcado para { $rated } ou mais
bench-slings = { $each } em cada uma, { $tension } em cada perna a { $angle }
bench-fall = ninguém a menos de { $clear } de cada lado; amarrar
bench-lift-never = nunca: { $people } juntos contam com { $limit } ao todo{ $two }
bench-lift-two = {""}, dois com { $mass }
bench-lift-above = acima do valor: uma pessoa carrega { $carried }, o valor é { $limit }; decidir primeiro (página 1)
bench-lift-over = assim não: uma pessoa carregaria { $carried }, o valor é { $limit }
bench-lift-tips = assim não: tomba
bench-lift-breaks = não à mão: deitada ou de cutelo dobra demais; reforçar ou usar uma ajuda
bench-lift-many = assim não: { $people } pessoas não levantam como uma só
bench-lift-within = { $people } pessoas, cada uma até { $most }; nenhum valor torna um levantamento seguro

# Dust, noise, hands
bench-dust = Pó, ruído, mãos
bench-dust-title = Pó, ruído, mãos
bench-dust-order = O mais forte primeiro: o que tira o pó
bench-dust-limits = Quanto, quanto tempo
bench-dust-settled = Resolvido neste trabalho
bench-control = { $state ->
    [done] { $what }: previsto
    [open] { $what }: AINDA EM ABERTO
   *[other] { $what }: cuidar disso no próprio dia
 }
bench-fact-mask = máscara
bench-fact-hands = mãos
bench-fact-ears = ouvidos
bench-fact-slurry = lama
bench-fact-slurry-dry = pó
bench-fact-silica = o que contém
bench-fact-vacuum-class = aspirador
bench-mask-at-hand = { $mask }; cara rapada, ajuste verificado; posta antes do primeiro corte, tirada com o chão limpo
bench-hands-allowed = { $action } por dia para cada pessoa, contando tudo o que vibra; este trabalho leva { $job }
bench-hands-other = { $hands }, outro trabalho conta { $other }
bench-hands-never = esta máquina vibra demais para um só minuto: outra máquina
bench-ears = { $level } no ouvido: proteção posta antes do primeiro arranque; sem ela { $minutes } enchem o dia
bench-slurry = cerca de { $mass }, baldes: { $buckets }; raspada e aspirada húmida, nunca para o esgoto
bench-bags = até { $bags } sacos do aspirador
bench-nothing-caught = nada o apanha
bench-silica = até { $dust } de pedra, { $silica } disso sílica
bench-wear-mask = Máscara: fator { $factor } ou mais
bench-wear-mask-here = { $mask }: fator { $factor }
bench-wear-mask-ready = Máscara posta durante o corte, até o chão estar limpo
bench-wear-mask-assess = Máscara: mandar primeiro avaliar a exposição
bench-wear-ears = Ouvidos: { $level }
bench-wear-eyes = Óculos estanques e viseira
bench-wear-hands = Luvas justas, sem punhos soltos
bench-wear-feet = Botas com biqueira que não escorregam
bench-wear-disc = Disco: continua a rodar depois de desligado

# Helper
bench-emergency = Número de emergência: { $number }
bench-vacuum-off = O aspirador desliga-se em
bench-helper-weight = A chapa pesa até { $slab }, o tampo até { $top }. { $hands ->
    [none] Ninguém os levanta à mão.
    [top] Ninguém levanta a chapa à mão, ninguém o tampo sozinho.
   *[both] Ninguém os levanta sozinho.
 }

# The day and its record
bench-day = Dia e registo
bench-day-title = O dia, e o que aconteceu
bench-day-what = o quê
bench-day-minutes = leva
bench-day-at = feito às
bench-day-read = Ler em voz alta a página do assistente, experimentar os sinais de paragem, preencher a página 1
bench-day-unload = Descarregar a chapa de cutelo, amarrada; depois deitada nos cavaletes
bench-day-mark = Marcar e controlar todas as linhas; praticar na sobra
bench-day-straight = Corte { $cut }, bordo { $edge }: sai { $waste }
bench-day-curve = Corte { $cuts }, curva { $edge }
bench-day-opening = Cortes { $cuts }, abertura: { $what }
bench-day-sum = Todos os cortes: { $stone } com o disco na pedra, { $setting } de preparação
bench-day-move = O tampo de cutelo, amarrado, para o seu lugar
bench-day-clean = Lama retirada ainda húmida, chão lavado, depois tirar as máscaras
bench-day-clean-dry = Pó aspirado por todo o lado, depois tirar as máscaras
bench-day-bring = Levar
bench-day-practice = Praticar primeiro na sobra
bench-day-wrong = Quando corre mal
bench-day-started = início
bench-day-ended = fim
bench-day-initials = rubrica
bench-day-date = data
bench-day-annex = Cálculos, tabelas, todos os avisos por extenso e as fontes: kerfwright sheet JOB --annex
bench-bring-guide = guia
bench-bring-guide-is = reta, { $length }, e dois grampos{ $suction ->
    [yes] , uma ventosa de fixação
   *[no] {""}
 }{ $jig ->
    [yes] ; braço de compasso e o seu pivô
   *[no] {""}
 }
bench-bring-discs = discos
bench-bring-discs-are = { $discs }, com reserva{ $grind ->
    [yes] ; mó de copo diamantada ou discos de lamelas para desbastar
   *[no] {""}
 }
bench-bring-bits = coroas
bench-bring-bits-are = { $bits }, feitas para a velocidade da máquina que as roda; um molde que as guie
bench-bring-bearers = apoios
bench-bring-bearers-are = { $count } calços da mesma altura, madeira macia, de { $long }, e cunhas; sobre o estrado{ $edges }
bench-bring-bearers-edges = {""}, dos quais { $count } sob os bordos sem corte
bench-bring-deck = estrado
bench-bring-deck-are = tábuas com pelo menos { $thick } de espessura ao comprido da chapa sobre os dois cavaletes, com { $length }, lado a lado { $wide } de largura; por cima os apoios e sobre eles a chapa
bench-bring-turn = para deitar
bench-bring-turn-is = talha, elevador de vácuo ou armação basculante
bench-bring-carry = para levar
bench-bring-carry-is = { $aid ->
    [trolley] carrinho marcado para { $rated }, dois cavaletes
    [vacuum] elevador de vácuo marcado para { $rated }, dois cavaletes
    [gantry] pórtico com lingas para { $rated }, dois cavaletes
   *[none] dois cavaletes
 }, cintas, ripas, aspirador; o que os sinais mostram
bench-bring-tape = marcação
bench-bring-tape-is = { $rolls ->
    [one] um rolo de fita de mascarar de { $roll }
   *[other] { $rolls } rolos de fita de mascarar de { $roll } cada
 }, fita métrica de aço, esquadro, lápis fino, linha de giz
bench-bring-water = água
bench-bring-water-is = { $water } no total; baldes para a lama: { $buckets }
bench-practice-cut = um corte
bench-practice-cut-is = em { $piece } onde está desenhado, { $length } de comprimento, até { $depths }
bench-practice-plunge = mergulhos
bench-practice-plunge-is = do mesmo modo em { $piece }, três lado a lado, até { $depths }
bench-practice-offset = borda da guia à face próxima do disco ({ $reckoned })
bench-practice-jig = marca do gabarito à face próxima do disco ({ $reckoned })
bench-practice-minutes = minutos na pedra; comprimento, profundidade
bench-practice-differs = Outro número que não o entre parênteses: deslocar outro tanto as marcas da guia ou o braço; as linhas que ficam não mudam.
bench-wrong-cracks = racha
bench-wrong-cracks-do = Desligar. Ninguém por baixo. Apoios sob as duas partes antes de mexer em algo; depois medir e planear o que resta.
bench-wrong-pinches = prende
bench-wrong-pinches-do = Desligar, deixar o disco parar, abrir o rasgo com cunhas, tirar a máquina. Voltar a entrar só à velocidade total.
bench-wrong-slips = foge da linha
bench-wrong-slips-do = Desligar. Medir quanto e a que profundidade, escrevê-lo no ficheiro do trabalho no que aconteceu: um novo plano diz o que resta do tampo.

# Repair
bench-repair = O que aconteceu
bench-repair-title = O que aconteceu, e o que resta
bench-repair-alt = A pedra como está, o tampo que resta e, a tracejado, o tampo como se queria.
bench-repair-as-planned = Tudo está na sua linha. Continuar como planeado.
bench-repair-within = A margem absorve-o: nada se perde. Desbastar até à linha acabada.
bench-repair-grind = Nada está perdido: numa borda ficou pedra a mais. Desbaste-a até à linha acabada.
bench-repair-again = Nada está perdido: numa borda ficou pedra a mais. Serre a tira, segundo a sua página.
bench-repair-smaller = O tampo fica mais pequeno. Perguntar a quem o encomendou antes do corte seguinte.
bench-repair-opening = Uma abertura fica diferente do que se queria. Perguntar a quem a encomendou antes do corte seguinte.
bench-repair-same-a = As letras são cantos da pedra como está agora. A está onde estava, AB segue como seguia; os outros são novos.
bench-repair-new = As letras são cantos da pedra como está agora: todos são novos. Escrevê-las na pedra.
bench-repair-wanted = queria-se
bench-repair-now = agora
bench-repair-weighs = pesa
bench-repair-first = primeiro
bench-repair-run-outs = acabar o que o corte deixou de pé: { $pieces }
bench-repair-grind-first = desbastar até à linha antes do corte seguinte: { $edges }
bench-repair-lines = no ficheiro do trabalho
bench-repair-part = parte
bench-repair-came = ficou
bench-repair-is-wanted = queria-se
bench-repair-is-now = agora
bench-repair-do = a fazer
bench-repair-edge = bordo { $name }
bench-repair-corner = canto { $name }, { $what }
bench-came-not-cut = não cortado
bench-came-on-line = na sua linha
bench-came-short = { $off } a menos
bench-came-over = { $off } a mais
bench-came-slanting-short = de { $start } a { $end } a menos
bench-came-slanting-over = de { $start } a { $end } a mais
bench-do-nothing = nada
bench-do-finish = só acabar
bench-do-grind = desbastar { $off }
bench-do-cut = cortar: ver a sua página

# The annex
annex-findings = Todas as constatações por extenso
annex-stops = Paragens: o trabalho não arranca enquanto uma delas existir
annex-open = Em aberto: a preencher ou a ver antes do arranque
annex-warnings = Avisos
annex-every = Sempre
annex-stone = Pedra, lugar e peças
annex-strength = Deitar, pôr de pé, levantar
annex-way = O caminho para dentro
annex-health = Pó, mãos, ouvidos: os valores
annex-assumed = Valores que o ficheiro do trabalho deixou em aberto
annex-sources = Fontes
annex-key = chave
annex-value = valor
annex-why = porquê
annex-what = o quê
annex-document = documento
annex-clause = cláusula
annex-year = ano
annex-no-year = nenhum indicado
annex-place = Onde o tampo fica na chapa
annex-pieces = Peças
annex-cuts = Cortes
annex-balance = Chapa { $slab } = tampo acabado { $top } + deixado nos bordos { $left } + rasgo { $kerf } + sobra { $waste }. As migalhas entre rasgos contam como rasgo.
annex-range = { $low } a { $high }
annex-three = { $low } a { $high }, provável { $likely }
annex-kind = pedra
annex-density = densidade
annex-thickness = espessura
annex-allowed = resistência
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = chapa, área
annex-slab-mass = a chapa pesa
annex-top-mass = o tampo pesa
annex-spare = folga mínima
annex-turn = rodado
annex-corner = canto do tampo
annex-corner-of-top = canto { $name }
annex-x = x desde A ao longo de AB
annex-y = y desde A em esquadria
annex-edge = bordo
annex-edge-sawn = serrado, ficam { $left }
annex-edge-flush = está no bordo { $edge } da chapa
annex-length = comprimento
annex-lies = como fica
annex-piece = peça
annex-after = depois do corte
annex-area = área
annex-mass = pesa
annex-rectangle = contém um retângulo de
annex-left = pedra que fica
annex-tool = ferramenta
annex-core-bit = coroa de { $bit }
annex-bending = Tensão sob o próprio peso, × 1.2 pelo manuseamento, na pedra mais fina; só pedra sã
annex-stone-state = pedra
annex-state = { $name }
annex-flat-best = deitada, melhores apoios
annex-flat-hands = deitada, nas mãos
annex-flat-ends = deitada, pelas pontas
annex-one-end = uma ponta levantada
annex-on-edge = de cutelo, pelas pontas
annex-may = admissível
annex-lifting = Levantar à mão, e o que as ajudas precisam
annex-slab = chapa
annex-top = tampo
annex-guideline = valor de orientação
annex-guideline-is = { $each } para uma pessoa ({ $source }); não promete que levantar menos seja seguro
annex-person = pessoa
annex-from-end = desde a ponta
annex-from-side = desde o lado
annex-carries = carrega
annex-figure = valor nesta equipa
annex-trolley-rated = carrinho marcado para
annex-trolley-push = empurrar, nivelado
annex-trolley-ramp = 1 em 12 acrescenta
annex-trolley-tips = tomba de lado
annex-vacuum-rated = vácuo marcado para
annex-sling-pull = tração na perna da cinta
annex-leans = de cutelo cai além de
annex-rails = Pedra estreita junto a aberturas
annex-rail-is = { $width } de largura, { $length } de comprimento: { $together } com a vizinha, { $alone } sozinha
annex-setting = Sobre os apoios
annex-support = apoio
annex-carries-most = carrega no máximo
annex-with-person = com uma pessoa encostada
annex-reaches = sai para fora
annex-person-stress = tensão com uma pessoa
annex-way-of = O caminho de: { $name }
annex-way-place = lugar
annex-way-carried = melhor transporte
annex-way-spare = espaço
annex-way-clears = { $spare } de folga
annex-way-tight = justo: { $spare } de folga
annex-way-short = faltam { $short }
annex-way-note = Medir outra vez cada lugar com as pessoas e a ajuda que transportam.
annex-limit = sílica
annex-vibration = vibração
annex-vibration-is = { $reckoned } com a incerteza, { $job } deste trabalho; o dia { $day }; ação { $action }, limite { $limit } ({ $source })
annex-noise = ruído
annex-noise-is = { $level } durante { $hours }; o dia { $day }; dever a partir de { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; verificar as regras em vigor
annex-cited-year = { $document }, { $year }{ $borrowed }; verificar as regras em vigor
annex-masks = máscaras que o atingem
annex-mask = { $mask } (fator { $factor })
annex-authority = perguntar pelas regras

# In a terminal
answer-job = trabalho
answer-fits = cabe
answer-fits-is = tampo { $length } × { $width }, { $spare } de folga no ponto mais justo
answer-weighs = pesa
answer-weighs-is = tampo até { $top }, chapa até { $slab }
answer-time = tempo
answer-time-is = { $stone } com o disco na pedra, { $setting } de preparação
answer-straight = reto, bordo { $edge }, { $length }
answer-relief = alívio em { $edge }, { $length }
answer-curve = curva em { $edge }, { $length }
answer-hole = furos em { $edge }
answer-guide = { $first } desde { $from }, { $second } desde { $to }
answer-chord = corda { $length }
answer-frees = solta
answer-more = Mais com --full:
answer-sheet = tampo acabado  { $low } a { $high }
    cortes        { $straight } retos, { $curves } curvos
    serragem      { $sawing } com o disco na pedra, { $setting } de preparação
    paragens      { $stops }
weigh-stone = { $name }
weigh-place = lugar
weigh-no-fit = o tampo não cabe nesta chapa: é pesado como se queria
weigh-region = região
weigh-balance = ponto de equilíbrio
weigh-balance-is = a { $end } da ponta, a { $side } do lado
weigh-mass = pesa
weigh-mass-is = no máximo { $high }: contar com este; provável { $likely }, no mínimo { $low }
weigh-size = medidas
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = pôr de pé

# On a telephone
phone-plan = plano { $plan }
phone-contents = Índice
phone-light = Claro ou escuro
phone-back = Voltar
phone-next = Seguinte
phone-bar = Percurso da folha
phone-clear = Desmarcar tudo neste telefone
phone-forgets = Este leitor esquece as marcas ao fechar. Abra o ficheiro num navegador.
