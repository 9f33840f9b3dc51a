# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Unos cortes que no se encuentran dejan sobrante en la encimera
    .detail = Partes del sobrante que siguen unidas tras el último corte: { $parts }, la mayor de { $area }, a unos { $along } a lo largo de AB y { $up } hacia arriba desde la esquina A. Sigue unido en: { $places }. No falta ningún corte, pero los de al lado no se encuentran entre sí ni con el borde de la piedra. Sepárelo ahí con un agujero de corona, o con una inmersión más junto a la última, por el lado del sobrante; no lo rompa nunca.

said-weight = El peso que da el vendedor y el calculado no coinciden
    .detail = Indicado { $said }, calculado { $computed }: { $off } %, más de { $tolerance }. La piedra, las medidas o el espesor: uno de los tres datos está mal. Planifique el levantamiento con el valor más pesado y pese la tabla si puede.

fissure-in-waste = "{ $flaw }" atraviesa { $pieces }: puede romperse ahí
    .detail = Antes de la primera pasada, apoyos a ambos lados bajo { $pieces }, para que cada parte descanse sola si se rompe. No levante nunca una pieza plana o por un extremo a través de ella: sujete antes maderas rectas encima por ambas caras, o deje que se rompa y llévese las partes.{ $crossed ->
            [yes] {" "}Donde el corte la cruza (cortes: { $cuts }): pasos pequeños y sin presión.
           *[no] {""}
        }

waste-needs-support = Se suelta un sobrante demasiado pesado para sujetarlo con la mano
    .detail = Sobrante (corte que lo suelta) y su peso como máximo: { $pieces }. Sostenga cada pieza de más de { $limit } sobre sus propios apoyos, a ras de la piedra que se conserva y a los dos lados del corte, antes de la primera pasada. Una pieza que se hunde cierra la ranura sobre el disco.

curve-waste-heavy = El sobrante de una curva cae en una pieza demasiado pesada para sujetarla
    .detail = Sobrante (corte que lo suelta) y su peso como máximo: { $pieces }. Es más de { $limit } (passes.waste_piece), y ningún corte recto que no toque la piedra que se conserva lo divide más. Sosténgalo desde abajo en todo su largo antes de la última vuelta de cortes por inmersión; nadie lo sujeta, ningún pie debajo.

stopped-cut-too-short = Ningún disco del equipo cabe: { $places }
    .detail = Hay { $room } entre los dos puntos donde el corte tiene que terminar; «{ $disc }» corta { $length } de largo en la cara cuando ha atravesado del todo. Con la misma brida, el disco más pequeño que atraviesa la piedra, de { $least } de diámetro, corta { $shortest } de largo; el más grande que cabe tiene { $most } de diámetro. { $verdict } Una broca de corona de unos { $bit } lo hace con una fila de agujeros.{ $waste }

sawn-with-another = El borde { $edge } se sierra con el borde que está en línea con él
    .detail = El corte del borde que está en línea con él hace también el borde { $edge }, y deja en él { $left } en lugar de { $allowance }. Amole la diferencia, { $over }, o dé a los dos bordes el mismo acabado.

disc-too-small = El disco no atraviesa la piedra
    .detail = «{ $disc }» corta { $deepest } de profundidad como máximo (diámetro { $diameter }, obstrucción { $obstruction }, placa { $plate }); hacen falta { $needed }: faltan { $short }. Con la misma brida hace falta un disco de al menos { $least }, en una máquina hecha para ese tamaño.

no-room-for-guide = No hay sitio para la guía en la tabla: { $places }
    .detail = El borde de la guía está a { $offset } del corte; la tabla es más estrecha que eso a los dos lados de él, así que el corte no está planificado. Ponga contra la tabla un tablero del grueso de la piedra ({ $thick }), cara con cara al mismo nivel, sujete los dos con mordazas al mismo banco y apoye la guía en el tablero. O use un útil con una separación menor (guide.offset).{ $waste }

core-holes-close = Agujeros del corte { $cut }: se solapan o dejan una pared delgada
    .detail = Los dos más próximos están a { $apart } de centro a centro, broca de { $bit } de diámetro: una broca que empieza junto a un agujero se desvía y se mete en él, y una pared de piedra de menos de { $web } entre dos agujeros se rompe. Guíe la broca con una plantilla sujeta con sargentos sobre cada centro (un tablero con un agujero del tamaño de la broca), y apriete poco.

rail-too-narrow = El hueco { $cutout }{ $called } deja una tira demasiado estrecha en { $edge }
    .detail = El hueco { $cutout } deja una { $rail } de { $width }{ $tap }, mínimo { $least }; muévalo { $by } { $away }. Esa tira va a lo largo de { $edge } de la encimera.

rails-add-up = Hueco { $cutout }{ $called }: las tiras de los dos lados son demasiado estrechas juntas
    .detail = { $rail } de { $width }{ $tap }, mínimo { $least }; { $other } de { $other_width }{ $other_tap }, mínimo { $other_least }. Juntas { $sum }, hacen falta { $needed }: mover el hueco no ayuda a ninguna. Lo que cede es el hueco, { $short } menor en ese sentido, o la encimera, otro tanto mayor; si no, refuerce las dos tiras antes de mover la piedra.

rail-too-narrow-between = Los huecos { $first }{ $called_first } y { $second }{ $called_second } dejan entre ellos una tira demasiado estrecha
    .detail = Los huecos { $first } y { $second } dejan entre ellos una tira de { $width }, mínimo { $least }; sepárelos { $by }.

hangs-on-a-strip = Solo quedan { $about } de piedra entre el hueco { $cutout } y el borde
    .detail = Esa tira tiene { $width } de ancho, menos que el espesor de la piedra ({ $thick }). Se rompe al serrar o al levantar. Mueva o cambie lo que deja esa tira, hasta que tenga al menos { $least }.

hangs-on-a-strip-between = Solo quedan { $about } de piedra entre los huecos { $first } y { $second }
    .detail = Esa tira tiene { $width } de ancho, menos que el espesor de la piedra ({ $thick }). Se rompe al serrar o al levantar. Mueva o cambie lo que deja esa tira, hasta que tenga al menos { $least }.

hangs-on-a-strip-corner = Solo quedan { $about } de piedra detrás de la esquina interior en { $edge }
    .detail = Esa tira tiene { $width } de ancho, menos que el espesor de la piedra ({ $thick }). Se rompe al serrar o al levantar. Mueva o cambie lo que deja esa tira, hasta que tenga al menos { $least }.

curve-without-arm = La curva ({ $part }) se traza desde su cuerda, sin el útil de círculos
    .detail = El brazo tendría { $arm }; el útil va de { $shortest } a { $longest }: { $by } { $which }. Trace la cuerda del arco y ponga la guía recta sobre las dos marcas de cada estación; o haga un brazo que sirva.

arm-out-of-reach = El útil de círculos no se puede ajustar para un círculo completo ({ $part })
    .detail = El brazo tendría { $arm }; el útil va de { $shortest } a { $longest }: { $by } { $which }. Un círculo completo no tiene ninguna cuerda desde la que trazarlo. Haga un brazo que sirva, o elija otro radio.

corner-ground-by-hand = La curva ({ $part }) se amola a mano
    .detail = Los cortes de borde contiguos y sus ranuras no dejan piedra para un corte por inmersión. Marque la curva en la piedra y amólela a mano después del último corte.

inside-corner-radius = { $part }: queda un radio de { $left }
    .detail = Radio pedido: { $given }{ $sharp }. En una esquina interior de menos de { $least } empieza una grieta. El plan deja ahí un radio de { $left }, el del agujero de corona.{ $still }

inside-corner-nearest-radius = { $part }: queda un radio de { $left }
    .detail = Radio pedido: { $given }. La broca de corona más próxima deja { $left }, { $ground } de piedra en la esquina. Amólela a mano, o déjela.

much-to-grind = { $part }: queda mucho por amolar
    .detail = «{ $disc }» corta { $length } de largo en la cara; por dentro de un radio de { $radius } tiene que quedar a { $face } del centro, y deja { $left } junto al medio de cada ranura, más de { $much }. Un disco más pequeño o una broca de corona de { $bit } o menos deja menos.

no-disc-for-hollow = { $places }: ningún disco del equipo puede cortar esta curva interior
    .detail = «{ $disc }» corta { $length } de largo en la cara; la curva interior tiene un radio de { $radius }, { $across } de diámetro. Con la misma brida, el disco más pequeño que atraviesa la piedra, de { $least } de diámetro, corta { $shortest } de largo; el más grande que cabe tiene { $most } de diámetro. { $verdict }{ $either } Una broca de corona de { $bit } la hace con un solo agujero, una más pequeña con una cadena de agujeros.{ $waste }

inside-corner-needs-core-bit = Hace falta un agujero de corona: { $places }
    .detail = { $kit } En una esquina interior viva empieza una grieta: necesita un radio de al menos { $radius }, es decir, una broca de corona de al menos { $least } de diámetro, y el agujero taladrado antes de los cortes que terminan ahí. Indíquela en el archivo de trabajo ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = borde { $name }
part-edge-opening = borde { $name } del hueco { $cutout }
part-corner = esquina { $name }
part-corner-opening = esquina { $name } del hueco { $cutout }
part-corners = esquinas { $name }
part-corners-opening = esquinas { $name } del hueco { $cutout }
part-all-round = el círculo entero
part-all-round-opening = el círculo entero del hueco { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Por eso queda sobrante unido a la encimera, partes: { $parts }, la mayor de { $area }, a unos { $along } a lo largo de AB y { $up } hacia arriba desde la esquina A. El trabajo no se puede terminar con esta hoja.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Ninguna broca de corona separa por debajo el trozo del hueco { $cutout }{ $called }
    .detail = El disco es redondo: por debajo cada corte acaba { $run_out } antes que en la cara, y ahí el trozo sigue sujeto. Unos agujeros junto a los finales, taladrados desde arriba antes de serrar, lo separan; ninguna broca disponible cabe ahí, así que no están ni marcados ni en los minutos. Traiga una y anótela como [[core_bit]], o encargue el hueco a un taller. Nadie trabaja debajo, y el trozo nunca se rompe a golpes: la grieta entra en la encimera.

opening-narrower-than-kerf = La ranura de corte no cabe en el hueco { $cutout }{ $called }
    .detail = Cortada por un lado, una ranura de { $kerf } entra por el otro en la piedra que debe quedar. Haga el hueco más ancho que la ranura, use un disco más fino o encárguelo a un taller.{ $waste }
