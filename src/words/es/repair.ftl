# Findings of repair: a line, and in full.

opening-larger = El hueco { $number } sale más grande: ¿sigue cubierto?
    .detail = El hueco { $number }, { $what }, queda de { $long } × { $wide } en lugar de { $long_asked } × { $wide_asked }: { $more } más en { $sides }. Si el reborde de lo que va dentro sigue cubriendo el borde del hueco, y sigue encontrando piedra en la que apoyarse o sujetarse con mordazas, no se sabe aquí: el reborde tiene que llegar en ese lado { $more } más lejos de lo que pedía el hueco previsto. Coloque la pieza que va dentro, o mida su reborde, antes de cortar ninguna otra cosa.

# Why what is left of a begun job cannot be planned, in one line.

repair-no-stone = las caras que se dan por cortadas no dejan piedra
repair-no-outline = la piedra tal como está ahora no tiene un contorno que se pueda nombrar
repair-openings-meet = { $one } y { $other } se romperían el uno en el otro; haga de los dos un solo hueco ([[top.cutout]])
repair-opening-breaks-edge = { $opening } rompería en { $by } el borde de lo que queda de la encimera; déjelo fuera ([[top.cutout]]), hágalo más pequeño, o planee otra encimera para la piedra
repair-opening-no-figure = { $opening } se queda sin forma cuando sus lados se corren hasta la piedra sana; planéelo de nuevo, mayor o de otra forma ([[top.cutout]])
repair-never-sawn = as_cut: el borde { $edge } está en un borde de la tabla y nunca había que cortarlo; quítelo de as_cut.done y de as_cut.edge
repair-trims-first = as_cut: la esquina { $corner } se da por cortada, pero no el borde { $edges }; los cortes de borde van antes que las curvas. Póngalo en as_cut.done
repair-nothing-left = la encimera pedida, con sus demasías, sobresale { $by } de la piedra sana que queda, y no se puede salvar nada de la forma deseada: aun metiendo sus bordes { $most } estaría sobre piedra que ya no está. Mida la piedra y planee otra encimera para ella
repair-no-such-cut = as_cut.cuts: no hay corte { $number }; la hoja de este archivo de trabajo tiene los cortes 1 a { $last }
