# Findings of repair: a line, and in full.

opening-larger = O recorte { $number } sai maior: ainda fica coberto?
    .detail = O recorte { $number }, { $what }, fica com { $long } × { $wide } em vez de { $long_asked } × { $wide_asked }: { $more } a mais em { $sides }. Se o rebordo do que vai lá dentro ainda cobre a borda do recorte, e ainda encontra pedra onde assentar ou ser preso com grampos, não se sabe aqui: o rebordo tem de chegar desse lado { $more } mais longe do que o recorte pedido exigia. Coloque a peça que vai lá dentro, ou meça o rebordo, antes de cortar mais alguma coisa.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = as faces dadas como cortadas não deixam pedra
repair-no-outline = a pedra como está agora não tem contorno que se possa nomear
repair-openings-meet = { $one } e { $other } romperiam um para o outro; faça dos dois um só recorte ([[top.cutout]])
repair-opening-breaks-edge = { $opening } romperia em { $by } o bordo do que resta do tampo; deixe-o de fora ([[top.cutout]]), faça-o mais pequeno, ou planeie outro tampo para a pedra
repair-opening-no-figure = { $opening } fica sem forma quando os seus lados são afastados até à pedra intacta; planeie-o de novo, maior ou com outra forma ([[top.cutout]])
repair-never-sawn = as_cut: o bordo { $edge } fica num bordo da chapa e nunca era para cortar; tire-o de as_cut.done e de as_cut.edge
repair-trims-first = as_cut: o canto { $corner } é dado como cortado, mas o bordo { $edges } não; os cortes de bordo vêm antes das curvas. Ponha-o em as_cut.done
repair-nothing-left = o tampo pedido, com as suas margens, sai { $by } da pedra intacta que resta, e nada da forma desejada se pode salvar: mesmo com os bordos recuados { $most } ficaria sobre pedra que já não existe. Meça a pedra e planeie outro tampo para ela
repair-no-such-cut = as_cut.cuts: não há corte { $number }; a folha deste ficheiro de trabalho tem os cortes 1 a { $last }
