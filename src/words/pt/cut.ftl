# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Cortes que não se encontram deixam sobra no tampo
    .detail = Partes da sobra que continuam agarradas depois do último corte: { $parts }, a maior com { $area }, a cerca de { $along } ao longo de AB e { $up } para cima a partir do canto A. Está agarrada em: { $places }. Não falta nenhum corte, mas os do lado não se encontram nem uns aos outros nem com a borda da pedra. Separe-a aí com um furo de coroa, ou com mais uma imersão ao lado da última, do lado da sobra; nunca a parta.

said-weight = O peso dado pelo vendedor e o calculado não coincidem
    .detail = Indicado { $said }, calculado { $computed }: { $off } %, mais de { $tolerance }. A pedra, as medidas ou a espessura: um dos três dados está errado. Planeie o levantamento com o valor mais pesado e pese a chapa se puder.

fissure-in-waste = "{ $flaw }" atravessa { $pieces }: pode partir aí
    .detail = Antes da primeira passagem, apoios dos dois lados por baixo de { $pieces }, para que cada parte assente sozinha se partir. Nunca levantar uma peça deitada ou por uma ponta através dela: primeiro apertar madeiras direitas por cima nas duas faces, ou deixar partir e levar as partes.{ $crossed ->
            [yes] {" "}Onde o corte a cruza (cortes: { $cuts }): passos pequenos e sem pressão.
           *[no] {""}
        }

waste-needs-support = Solta-se uma sobra pesada demais para segurar com a mão
    .detail = Sobra (corte que a solta) e o seu peso no máximo: { $pieces }. Sustente cada peça com mais de { $limit } sobre os seus próprios apoios, ao nível da pedra que fica e dos dois lados do corte, antes da primeira passagem. Uma peça que descai fecha o rasgo sobre o disco.

curve-waste-heavy = A sobra de uma curva cai numa peça pesada demais para segurar
    .detail = Sobra (corte que a solta) e o seu peso no máximo: { $pieces }. É mais de { $limit } (passes.waste_piece), e nenhum corte reto que não toque na pedra que fica a divide mais. Sustente-a por baixo em todo o comprimento antes da última volta de cortes por imersão; ninguém a segura, nenhum pé por baixo.

stopped-cut-too-short = Nenhum disco do equipamento cabe: { $places }
    .detail = Há { $room } entre os dois pontos onde o corte tem de acabar; «{ $disc }» corta { $length } de comprimento na face quando atravessou por completo. Com a mesma flange, o disco mais pequeno que atravessa a pedra, com { $least } de diâmetro, corta { $shortest } de comprimento; o maior que cabe tem { $most } de diâmetro. { $verdict } Uma broca de coroa de cerca de { $bit } fá-lo com uma fila de furos.{ $waste }

sawn-with-another = A borda { $edge } é serrada com a borda que está em linha com ela
    .detail = O corte da borda que está em linha com ela faz também a borda { $edge }, e deixa nela { $left } em vez de { $allowance }. Desbaste a diferença, { $over }, ou dê às duas bordas o mesmo acabamento.

disc-too-small = O disco não atravessa a pedra
    .detail = «{ $disc }» corta { $deepest } de profundidade no máximo (diâmetro { $diameter }, obstrução { $obstruction }, placa { $plate }); são precisos { $needed }: faltam { $short }. Com a mesma flange é preciso um disco de pelo menos { $least }, numa máquina feita para esse tamanho.

no-room-for-guide = A guia não tem lugar na chapa: { $places }
    .detail = A borda da guia fica a { $offset } do corte; a chapa é mais estreita do que isso dos dois lados dele, por isso o corte não está planeado. Encoste à chapa uma tábua da espessura da pedra ({ $thick }), face com face ao mesmo nível, aperte as duas na mesma bancada e apoie a guia na tábua. Ou use um dispositivo com um afastamento menor (guide.offset).{ $waste }

core-holes-close = Os furos de coroa do corte { $cut } sobrepõem-se ou deixam uma parede fina
    .detail = Os dois mais próximos estão a { $apart } de centro a centro, broca com { $bit } de diâmetro: uma broca que começa ao lado de um furo foge para dentro dele, e uma parede de pedra com menos de { $web } entre dois furos parte-se. Guie a broca com um molde preso com grampos por cima de cada centro (uma tábua com um furo do tamanho da broca), e carregue pouco.

rail-too-narrow = O recorte { $cutout }{ $called } deixa uma tira estreita demais em { $edge }
    .detail = O recorte { $cutout } deixa uma { $rail } de { $width }{ $tap }, mínimo { $least }; mude-o { $by } { $away }. Essa tira fica ao longo de { $edge } do tampo.

rails-add-up = Recorte { $cutout }{ $called }: as tiras dos dois lados são estreitas demais juntas
    .detail = { $rail } de { $width }{ $tap }, mínimo { $least }; { $other } de { $other_width }{ $other_tap }, mínimo { $other_least }. Juntas { $sum }, são precisos { $needed }: mudar o recorte não ajuda nenhuma. O que cede é o recorte, { $short } menor nesse sentido, ou o tampo, outro tanto maior; senão, reforce as duas tiras antes de mover a pedra.

rail-too-narrow-between = Os recortes { $first }{ $called_first } e { $second }{ $called_second } deixam entre eles uma tira estreita demais
    .detail = Os recortes { $first } e { $second } deixam entre eles uma tira com { $width }, mínimo { $least }; afaste-os { $by } um do outro.

hangs-on-a-strip = Só ficam { $about } de pedra entre o recorte { $cutout } e a borda
    .detail = Essa tira tem { $width } de largura, menos do que a espessura da pedra ({ $thick }). Parte-se ao serrar ou ao levantar. Mude de lugar ou altere o que deixa essa tira, até ela ter pelo menos { $least }.

hangs-on-a-strip-between = Só ficam { $about } de pedra entre os recortes { $first } e { $second }
    .detail = Essa tira tem { $width } de largura, menos do que a espessura da pedra ({ $thick }). Parte-se ao serrar ou ao levantar. Mude de lugar ou altere o que deixa essa tira, até ela ter pelo menos { $least }.

hangs-on-a-strip-corner = Só ficam { $about } de pedra atrás do canto interior em { $edge }
    .detail = Essa tira tem { $width } de largura, menos do que a espessura da pedra ({ $thick }). Parte-se ao serrar ou ao levantar. Mude de lugar ou altere o que deixa essa tira, até ela ter pelo menos { $least }.

curve-without-arm = A curva ({ $part }) é traçada a partir da sua corda, sem o dispositivo de círculos
    .detail = O braço teria { $arm }; o dispositivo vai de { $shortest } a { $longest }: { $by } { $which }. Trace a corda do arco e ponha a guia reta nas duas marcas de cada estação; ou faça um braço que sirva.

arm-out-of-reach = O dispositivo de círculos não se pode regular para um círculo completo ({ $part })
    .detail = O braço teria { $arm }; o dispositivo vai de { $shortest } a { $longest }: { $by } { $which }. Um círculo completo não tem nenhuma corda a partir da qual o traçar. Faça um braço que sirva, ou escolha outro raio.

corner-ground-by-hand = A curva ({ $part }) é desbastada à mão
    .detail = Os cortes das bordas ao lado e os seus rasgos não deixam pedra para um corte por imersão. Marque a curva na pedra e desbaste-a à mão depois do último corte.

inside-corner-radius = { $part }: fica um raio de { $left }
    .detail = Raio pedido: { $given }{ $sharp }. Num canto interior com menos de { $least } começa uma fissura. O plano deixa aí um raio de { $left }, o do furo de coroa.{ $still }

inside-corner-nearest-radius = { $part }: fica um raio de { $left }
    .detail = Raio pedido: { $given }. A broca de coroa mais próxima deixa { $left }, { $ground } de pedra no canto. Desbaste-a à mão, ou deixe-a ficar.

much-to-grind = { $part }: fica muito por desbastar
    .detail = «{ $disc }» corta { $length } de comprimento na face; por dentro de um raio de { $radius } tem de ficar a { $face } do centro, e deixa { $left } junto ao meio de cada rasgo, mais de { $much }. Um disco mais pequeno ou uma broca de coroa de { $bit } ou menos deixa menos.

no-disc-for-hollow = { $places }: nenhum disco do equipamento consegue cortar esta curva interior
    .detail = «{ $disc }» corta { $length } de comprimento na face; a curva interior tem um raio de { $radius }, { $across } de diâmetro. Com a mesma flange, o disco mais pequeno que atravessa a pedra, com { $least } de diâmetro, corta { $shortest } de comprimento; o maior que cabe tem { $most } de diâmetro. { $verdict }{ $either } Uma broca de coroa de { $bit } fá-la num só furo, uma mais pequena numa cadeia de furos.{ $waste }

inside-corner-needs-core-bit = É preciso um furo de coroa: { $places }
    .detail = { $kit } Num canto interior vivo começa uma fissura: precisa de um raio de pelo menos { $radius }, ou seja, de uma broca de coroa com pelo menos { $least } de diâmetro, e o furo feito antes dos cortes que acabam aí. Indique-a no ficheiro do trabalho ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = borda { $name }
part-edge-opening = borda { $name } do recorte { $cutout }
part-corner = canto { $name }
part-corner-opening = canto { $name } do recorte { $cutout }
part-corners = cantos { $name }
part-corners-opening = cantos { $name } do recorte { $cutout }
part-all-round = o círculo inteiro
part-all-round-opening = o círculo inteiro do recorte { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Por isso fica sobra agarrada ao tampo, partes: { $parts }, a maior com { $area }, a cerca de { $along } ao longo de AB e { $up } para cima a partir do canto A. O trabalho não se pode acabar com esta folha.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Nenhuma coroa separa por baixo a peça da abertura { $cutout }{ $called }
    .detail = O disco é redondo: por baixo cada corte acaba { $run_out } antes do seu fim na face, e aí a peça ainda está presa. Furos ao lado das pontas, feitos por cima antes de serrar, separam-na; nenhuma coroa disponível cabe aí, por isso não estão marcados nem nos minutos. Traga uma e escreva-a como [[core_bit]], ou mande cortar a abertura numa oficina. Ninguém trabalha por baixo, e a peça nunca se parte para fora: a fissura corre para o tampo.

opening-narrower-than-kerf = O corte não cabe na abertura { $cutout }{ $called }
    .detail = Serrado por um lado, um corte de { $kerf } entra pelo outro na pedra que deve ficar. Faça a abertura mais larga que o corte, use um disco mais fino ou mande fazê-la numa oficina.{ $waste }
