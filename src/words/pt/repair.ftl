# Findings of repair: a line, and in full.

opening-larger = O recorte { $number } sai maior: ainda fica coberto?
    .detail = O recorte { $number }, { $what }, fica com { $long } × { $wide } em vez de { $long_asked } × { $wide_asked }: { $more } a mais em { $sides }. Se o rebordo do que vai lá dentro ainda cobre a borda do recorte, e ainda encontra pedra onde assentar ou ser preso com grampos, não se sabe aqui: o rebordo tem de chegar desse lado { $more } mais longe do que o recorte pedido exigia. Coloque a peça que vai lá dentro, ou meça o rebordo, antes de cortar mais alguma coisa.
