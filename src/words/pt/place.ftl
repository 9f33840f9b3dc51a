# Findings of placement: a line, and in full.

measure-again = Meça outra vez: o que sobra está dentro do erro da fita
    .detail = O tampo cabe e sobram { $spare }; com uma fita com um erro de ±{ $tape } são precisos pelo menos { $least } para ter a certeza. Meça a chapa outra vez, ou faça o tampo mais pequeno.

edges-undescribed = Veja { $count ->
        [one] o bordo
       *[other] os bordos
    } { $edges } da chapa: o tampo usa-{ $count ->
        [one] o como está
       *[other] os como estão
    }
    .detail = Ninguém disse como { $count ->
        [one] é o bordo { $edges } da chapa. Toma-se por serrado
       *[other] são os bordos { $edges } da chapa. Tomam-se por serrados
    } e ali não se faz corte. Veja antes de começar: direito ao longo de uma régua, em esquadria com a face, limpo, sem lascas e sem fissuras que entrem. Se sim, escreva { $sawn } em [slab]. Se não, escreva lá { $rough } e volte a planear: dá pelo menos { $cuts ->
        [one] mais um corte
       *[other] mais { $cuts } cortes
    }.

turn-saves = Um pouco rodado, o mesmo tampo leva menos { $saved } de corte
    .detail = Rodado { $turn } em relação à chapa, sem nenhum bordo ao longo de outro, corta-se menos { $saved } de superfície do que no lugar escolhido aqui. É mais difícil de traçar. Para o ter, escreva em [place]: { $to } e { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = Não há lugar para o tampo na chapa em nenhuma rotação, nem para um mais pequeno em { $within } a toda a volta.
place-none-found = Não se encontrou lugar para o tampo na chapa. Que não haja nenhum noutra rotação não está provado: experimente uma em [place].
place-at-fault = O lugar em [place] está errado: o tampo não pode ficar ali. Sem at e turn, encontra-se um lugar.
place-not-here = O tampo não pode ficar onde está posto.
place-none-begun = O tampo pedido já não sai do que resta da chapa.

# What stands against a position.

place-outside = o tampo com a sua margem sai { $by } da chapa em { $part }; faça o tampo ali pelo menos { $by } mais pequeno, ou use uma chapa maior
place-outside-within-tape = o tampo com a sua margem sai { $by } da chapa em { $part }; está dentro do erro da fita ({ $tape }): meça outra vez
place-on-flaw = o tampo fica { $by } demasiado perto de “{ $flaw }” (distância { $clear }); mude-o de lugar, ou faça-o mais pequeno
place-near-rough-edge = o tampo fica { $by } demasiado perto do bordo { $edge } da chapa, que é bruto (slab.rough_margin { $margin }): ali a pedra está lascada, e fissurada mais para dentro; mude-o de lugar, ou faça-o mais pequeno
place-round-near-edge = o tampo fica { $by } demasiado perto do bordo { $edge } da chapa: um tampo redondo precisa de uma faixa de { $least } a toda a volta para ser serrado; mude-o de lugar, ou faça-o mais pequeno
place-along-flaw = o corte de { $part } correria ao longo de “{ $flaw }” em { $long }, dentro da sua distância de { $clear }: a pedra pode partir-se ali; mude ou rode o tampo
place-narrow-strip = o bordo { $edge } deixaria uma faixa de { $width } para serrar, mínimo { $least }; mude o tampo de modo que o bordo fique no bordo da chapa ou mais para dentro
place-factory-bow = o bordo { $edge } é curvo e está marcado factory, mas um bordo curvo é sempre serrado; dê-lhe outro acabamento
place-not-on-factory-edge = o bordo { $edge } está marcado factory, mas não fica num bordo de fábrica da chapa; ponha-o num, ou dê-lhe outro acabamento
place-no-sawn-outline = as margens não cabem à volta do contorno do tampo: um bordo é curto demais ou um arco pequeno demais para elas; mude ali o acabamento, ou a forma
place-no-sawn-cutout = a margem não deixa nada para serrar em { $what }: é pequeno demais, ou um dos seus arcos é; faça-o maior, ou mude o acabamento
place-vein = o comprimento do tampo fica a { $angle } do veio; ponha top.vein = "any" se isso não importa

# Sizes that fit, by the box round the finished top.

place-fits-smaller = com a mesma forma, cabe { $long } × { $deep }
place-fits-shorter = só com menos comprimento, cabe { $long } × { $deep }
place-fits-narrower = só com menos profundidade, cabe { $long } × { $deep }
