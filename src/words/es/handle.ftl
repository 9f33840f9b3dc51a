# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: aplasta aquello sobre lo que cae
    .detail = { $mass } aprietan con { $weight }. De canto se apoya en { $thickness }: un empuje de { $push } en su borde superior la vuelca, y si se inclina más de { $tips } cae sola, sobre una franja de { $shadow } de ancho a cada lado: allí no se pone nadie, y nadie intenta pararla. Átela a algo que aguante antes de que nadie la suelte, las piedras de una en una; aquello en lo que se recuesta tiene que impedir que caiga hacia delante y que se le escurra el pie. Inclinada { $leans }, su borde superior tira de la atadura con { $pulls }, en este orden; la atadura y aquello a lo que está fijada tienen que aguantar varias veces eso. Pósela sobre dos listones, nunca en el suelo: dedos de las manos y de los pies, y niños, fuera del espacio que queda debajo.

way-in-blocked = la encimera no entra: { $place }
    .detail = De canto faltan { $edge_short } ({ $edge_measure }: se necesitan { $edge_needs }, hay { $edge_has }). En vertical, sobre el lado corto, faltan { $upright_short } ({ $upright_measure }: se necesitan { $upright_needs }, hay { $upright_has }). Qué ayuda, una de estas cosas, o las dos si a una posición le faltan dos medidas: { $remedies }. Tumbada tampoco pasa.

way-in-upright = la encimera solo pasa en vertical, sobre el lado corto: { $place }
    .detail = De canto faltan { $edge_short } ({ $edge_measure }: se necesitan { $edge_needs }, hay { $edge_has }). En vertical, sobre el lado corto, pasa y sobran { $spare }. Qué ayuda, una de estas cosas, o las dos si a una posición le faltan dos medidas: { $remedies }. Levantarla sobre su lado corto pide { $stand_up } de altura libre: hágalo antes de ese lugar, con el equipo y las personas que pide su peso, y nunca en una escalera.

way-in-flat-only = la encimera solo pasa tumbada, lo que no se aconseja: { $place }
    .detail = De canto faltan { $edge_short } ({ $edge_measure }: se necesitan { $edge_needs }, hay { $edge_has }). En vertical, sobre el lado corto, faltan { $upright_short } ({ $upright_measure }: se necesitan { $upright_needs }, hay { $upright_has }). Tumbada pasa y sobran { $spare }. Qué ayuda, una de estas cosas, o las dos si a una posición le faltan dos medidas: { $remedies }. Tumbada puede partirse por su propio peso: vea la tabla de flexión, y llévela tumbada sobre un tablero que la sostenga entera o de ninguna manera.

way-in-tight = paso justo: { $place }
    .detail = Llevada { $pose } pasa y solo sobran { $spare }. Mida otra vez en el punto más estrecho, y pase antes que la piedra un listón de su largo y un tablero de su altura.

way-in-slab = corte antes de entrar: la tabla entera queda detenida en este lugar: { $place }
    .detail = De canto faltan { $edge_short } ({ $edge_measure }: se necesitan { $edge_needs }, hay { $edge_has }). En vertical, sobre el lado corto, faltan { $upright_short } ({ $upright_measure }: se necesitan { $upright_needs }, hay { $upright_has }). Qué ayuda, una de estas cosas, o las dos si a una posición le faltan dos medidas: { $remedies }. La encimera acabada pasa: descargue y corte antes de llegar a ese lugar.

way-in-slab-flat = corte antes de entrar: la tabla entera solo pasa tumbada: { $place }
    .detail = De canto faltan { $edge_short } ({ $edge_measure }: se necesitan { $edge_needs }, hay { $edge_has }). En vertical, sobre el lado corto, faltan { $upright_short } ({ $upright_measure }: se necesitan { $upright_needs }, hay { $upright_has }). Tumbada pasa y sobran { $spare }, y puede partirse por su propio peso. Qué ayuda, una de estas cosas, o las dos si a una posición le faltan dos medidas: { $remedies }. La encimera acabada pasa: descargue y corte antes de llegar a ese lugar.

tips-out-of-hands = { $stone }: vuelca con las personas en estos puestos
    .detail = El punto de equilibrio queda { $off } fuera de lo que se puede sujetar desde esos puestos. Ponga personas a los dos lados de él.

lifter-off-the-edge = { $stone }: la persona { $lifter } no tiene borde que agarrar
    .detail = El puesto indicado queda a { $away } del borde, más de { $most }. Indique puestos en el borde, en las coordenadas propias de la encimera.

lifter-at-cutout = { $stone }: la persona { $lifter } levanta junto a un hueco
    .detail = El puesto queda a { $away } de un hueco, menos que el ancho de una mano, { $least }. Levante donde la piedra está entera, nunca por la tira junto a un hueco.

carry-too-far = { $way }: demasiado lejos para llevarla sin descanso
    .detail = Los pesos orientativos son para transportes de hasta { $most } con la carga contra el cuerpo. Pose la piedra de canto sobre dos listones por el camino, o llévela en un carro.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = Tiene { $width } de ancho y { $length } de largo ({ $stone }). Con la piedra tumbada o en manos de personas, su tensión es de { $together } con la ayuda del resto de la piedra y de { $alone } cuando tiene que soportar sola la flexión, como cuando ese lado se levanta primero; de canto sobre dos apoyos: { $on_edge }; admisible { $allowed }. Antes de levantarla sujete a lo largo de ella, de canto y en contacto de punta a punta, madera recta de { $timber_width } × { $timber_depth } (piezas una junto a otra: { $timbers }), de al menos { $timber_length } de largo, con sargentos acolchados sobre piedra entera en los dos extremos: así quedan { $braced }. Lleve la piedra de canto; nunca la agarre ni la apriete con sargentos por ahí.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = Tiene { $width } de ancho y { $length } de largo ({ $stone }). Con la piedra tumbada o en manos de personas, su tensión es de { $together } con la ayuda del resto de la piedra y de { $alone } cuando tiene que soportar sola la flexión, como cuando ese lado se levanta primero; de canto sobre dos apoyos: { $on_edge }; admisible { $allowed }. Ninguna madera es bastante rígida: asiente la piedra entera sobre un bastidor o un tablero. Lleve la piedra de canto; nunca la agarre ni la apriete con sargentos por ahí.

brace-the-neck = { $stone }, { $neck }: no debe cargar con la piedra que sigue más allá
    .detail = Tiene { $width } de ancho; con la piedra tumbada, los { $hanging } que cuelgan de él le causan { $stress }, admisible { $allowed }. Sostenga la piedra a los dos lados de él siempre que esté tumbada. Antes de levantarla sujete a lo largo de él, de canto y en contacto de punta a punta, madera recta de { $timber_width } × { $timber_depth } (piezas una junto a otra: { $timbers }), de al menos { $timber_length } de largo, con sargentos acolchados sobre piedra entera en los dos extremos: así quedan { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: no debe cargar con la piedra que sigue más allá
    .detail = Tiene { $width } de ancho; con la piedra tumbada, los { $hanging } que cuelgan de él le causan { $stress }, admisible { $allowed }. Sostenga la piedra a los dos lados de él siempre que esté tumbada. Ninguna madera es bastante rígida: asiente la piedra entera sobre un bastidor o un tablero.

narrow-rail = { $rail } ({ $cutouts }): más estrecha de lo que la deja el oficio
    .detail = Está junto a un agujero de grifo y tiene { $width } de ancho; { $least } es el mínimo publicado junto a un hueco, y para un agujero de grifo no hay publicado nada menor. Mueva el agujero o hágalo más pequeño, o pregunte si la piedra se puede reforzar por debajo de forma permanente.

guideline-is-not-a-limit = El valor orientativo para levantar no es un límite seguro
    .detail = { $each } por persona es para adultos en buena forma que levantan con la carga pegada al cuerpo, a la altura de la cintura, con el cuerpo recto y pocas veces; es menos para muchas personas, con manos mojadas, en escalones y en suelo irregular. No es ninguna promesa de que un levantamiento por debajo de él sea seguro. La ecuación de levantamiento vale para levantar, no para transportar. Compruebe las reglas vigentes.

tips-off-supports = La encimera no se queda quieta sobre sus apoyos
    .detail = Los apoyos no rodean el punto de equilibrio. Añada o mueva apoyos antes de posarla.

support-lifts-off = { $support }: no carga nada
    .detail = La encimera no se apoya en él. Compruebe su lugar y su altura; no fuerce la encimera hacia abajo hasta él.

falls-off-trestles = { $stone }: no se sostiene sobre los caballetes
    .detail = Con los caballetes a { $first } y a { $second } del extremo de la tabla, su punto de equilibrio no queda entre ellos, o no llega a ellos. Muévalos antes de ese corte, o quite lift.trestles.

bends-on-trestles = { $stone }: dos caballetes no bastan
    .detail = Sobre caballetes a { $first } y a { $second } del extremo de la tabla, la tensión es de { $stress }, { $times } veces lo admisible. En lugar de eso, asiéntela sobre un tablero plano que la sostenga entera.

aid-too-weak = { $stone }: el equipo de elevación no está marcado para su peso
    .detail = El equipo ({ $aid }) está marcado para { $rated }; esta piedra necesita { $needs }. Use uno marcado para ello, o una piedra más ligera: córtela antes de moverla.

aid-without-mark = ¿qué carga lleva marcada: { $aid }? Hacen falta { $needs }
    .detail = Lea la carga marcada en el equipo y anótela aquí; lo más pesado: { $stone }. Sin marca no se levanta. En el archivo del trabajo: lift.rated.

in-slings-no-place = { $stone }: no hay sitio para dos eslingas
    .detail = Pasen por donde pasen dos eslingas, cuelga más doblada de lo admisible. Refuércela, o llévela asentada sobre un bastidor.

on-a-trolley = el carro: la piedra de canto, atada, en suelo llano
    .detail = El lado largo más pesado abajo, la piedra atada al bastidor del carro, una persona en cada extremo y nadie al lado. Para cargarla, ponga el carro contra ese lado largo, con las ruedas calzadas, gire la piedra sobre ese lado hasta subirla a la plataforma y átela antes de que nadie la suelte. Cuesta abajo se retiene desde arriba. Las instrucciones del fabricante van primero.

on-a-trolley-numbers = { $stone }: si vuelca, mata; un carro marcado para { $rated } o más
    .detail = En el carro, su punto de equilibrio queda a { $height } del suelo, y vuelca en un suelo inclinado { $tips } de lado (parado y con ruedas duras: antes si se mueve). En llano hay que empujar con { $push } como mínimo, y en una rampa de 1 en { $run } con otros { $ramp }, que además tiran de él cuesta abajo.

under-a-vacuum-lifter = el elevador de vacío: marcado para el doble del peso, y con una segunda sujeción
    .detail = Solo en una cara seca, limpia, sana, pulida o apomazada: nunca en una áspera o hendida, y en ningún sitio encima de un defecto o una reparación. En una cara vertical las ventosas sujetan solo por rozamiento: use el valor que da el fabricante para eso. Una segunda sujeción (cinta, eslinga) por debajo de la piedra en todo momento. Levántela un palmo, espere y mire que sujeten todas las ventosas antes de moverla. Las instrucciones del fabricante van primero.{ $wet ->
        [yes] {" "}En este trabajo se corta con agua: lave antes la piedra hasta quitar el lodo y deje secar la cara.
       *[other] {""}
    }{ $face ->
        [porous] {" "}Esta piedra es porosa: el aire la atraviesa y la sujeción falla. Pregunte al fabricante, o use eslingas.
        [split] {" "}Esta piedra se vende a menudo con la cara hendida: en ella no sujeta ninguna ventosa.
       *[other] {""}
    }

under-a-vacuum-lifter-numbers = { $stone }: si cae, mata; un elevador de vacío marcado para { $rated } o más
    .detail = Ventosas por parejas a los lados del punto de equilibrio: { $cups }, y cada una carga { $each }.

under-a-vacuum-lifter-no-room = { $stone }: no hay sitio para un elevador de vacío
    .detail = Tendría que estar marcado para { $rated } o más, pero no hay sitio para una pareja de ventosas a los lados del punto de equilibrio. Use eslingas o un carro.

in-slings = el pórtico: montado y manejado por alguien competente
    .detail = Gancho sobre el punto de equilibrio, cantos acolchados, las eslingas atadas para que no puedan deslizarse una hacia otra, una cuerda guía en cada extremo, nadie debajo ni al lado. Levántela un palmo y mire que cuelgue a nivel antes de moverla. El equipo de elevación está inspeccionado y marcado, y lo monta una persona competente y, donde la ley lo pide, con licencia.

in-slings-numbers = { $stone }: si cae, mata; eslingas a { $first } y a { $second } de su extremo izquierdo
    .detail = Desde el extremo inferior si en el dibujo está en vertical. De cada eslinga cuelgan { $each }; con { $legs } entre los ramales, cada uno tira con { $factor } del peso, { $tension }, y el gancho cuelga { $hook } o más por encima de la piedra.

not-a-hand-lift = no se levanta a mano: { $stones }
    .detail = { $masses }. { $people ->
        [one] Una persona puede contar con { $team }
       *[other] { $people } personas que levantan juntas pueden contar con { $team }
    }; por encima de más o menos el doble, el riesgo es grave incluso para personas en forma y formadas. Indique un equipo en lift.aid: un carro que la lleve de canto, marcado para { $rated } o más, solo en suelo llano (empuje mínimo { $push }); un elevador de vacío marcado para { $vacuum } o más, sobre una cara seca, limpia y sin roturas; un pórtico o un polipasto con eslingas, marcado para { $rated } o más y montado por alguien competente en equipos de elevación. Poner de canto la más pesada exige al principio { $tilt } en el lado que se alza.

breaks-in-hands = se rompería en las manos: { $stones }
    .detail = { $masses }. La sujete como la sujete { $people ->
        [one] una persona
       *[other] un equipo de { $people } personas
    }, tumbada o de canto, se dobla más de lo admisible. Refuércela, asiéntela sobre un tablero, o indique un equipo en lift.aid: un carro marcado para { $rated } o más; un elevador de vacío marcado para { $vacuum } o más; un pórtico con eslingas, montado por alguien competente.

more-than-four = demasiadas personas para levantar a la vez: { $people }
    .detail = Es improbable que más de { $most } personas trabajen como un equipo, y no hay publicada ninguna parte de su fuerza con la que contar. Use un equipo de elevación o un carro, o menos personas y una pieza más ligera.

lifter-over-guideline = más que el valor orientativo: { $stones }
    .detail = { $masses }. { $people ->
        [one] Una persona puede contar con { $team }
       *[other] { $people } personas que levantan juntas pueden contar con { $team }
    }: un valor para mirar con más cuidado, no un límite. Antes de levantar, decidan quién levanta, por dónde y dónde se posa; es mejor más personas, una pieza más ligera o un equipo. Poner de canto la más pesada exige al principio { $tilt } en el lado que se alza.

tilt-over-guideline = decida cómo se pone de canto; en el lado opuesto pide: { $stones }
    .detail = { $people ->
        [one] Una persona puede contar con { $team }
       *[other] { $people } personas juntas pueden contar con { $team } en total
    }. Llévela de canto desde la entrega hasta donde hace falta. { $hands ->
            [0] Lo que exige más de aproximadamente el doble no se gira a mano: ahí el riesgo es grave incluso para gente fuerte y formada. Un polipasto, un elevador de vacío o un bastidor que bascula con la piedra atada, por alguien competente: decida cuál antes de que llegue.
           *[other] Para girarla, calce el lado largo sobre el que gira para que no pueda deslizarse, todos en el lado largo opuesto, súbala por pasos sobre tacos y tenga lista la atadura antes de que quede de pie; o gírela con un polipasto o un elevador de vacío.
        } Nadie se pone en el lado hacia el que puede caer.

bends-flat-always = { $stone }: nunca tumbada sobre dos apoyos
    .detail = Si está { $how }: { $stress } donde tiene { $width } de ancho, a { $at } del extremo; lo admisible son { $allowed } (resistencia ÷ coeficiente de seguridad): { $times } veces eso, incluso sobre los dos apoyos mejor puestos. Manténgala de canto, o asiéntela sobre un tablero plano que la sostenga entera.{ $flaws ->
        [0] {""}
        [one] {" "}La tabla tiene un defecto: a través de él la resistencia no vale.
       *[other] {" "}La tabla tiene { $flaws } defectos: a través de ellos la resistencia no vale.
    }

bends-flat = { $stone }: tumbada puede partirse si se sujeta por los extremos
    .detail = Si está { $how }: { $stress } donde tiene { $width } de ancho, a { $at } del extremo; lo admisible son { $allowed } (resistencia ÷ coeficiente de seguridad): { $times } veces eso. Nunca levante un extremo mientras está tumbada. Tumbada solo puede estar sobre apoyos a { $first } y a { $second } del extremo izquierdo (el inferior si en el dibujo está en vertical), donde son { $best }; llévela de canto.{ $flaws ->
        [0] {""}
        [one] {" "}La tabla tiene un defecto: a través de él la resistencia no vale.
       *[other] {" "}La tabla tiene { $flaws } defectos: a través de ellos la resistencia no vale.
    }

carry-on-edge-not-by-its-ends = { $stone }: ni siquiera de canto por los extremos
    .detail = Si está { $how }: { $stress }; lo admisible son { $allowed }: { $times } veces eso. Sujétela o apóyela a { $first } y a { $second } del extremo, donde son { $best }. Se supone piedra sana.

carry-on-edge-braced = { $stone }: ni siquiera de canto antes de reforzarla
    .detail = Si está { $how }: { $stress }; lo admisible son { $allowed }: { $times } veces eso. Refuerce primero sus partes estrechas, o llévela asentada sobre un bastidor. Se supone piedra sana.

flaws-and-strength = { $count ->
        [one] La tabla tiene un defecto
       *[other] La tabla tiene { $count } defectos
    }: los valores de resistencia no valen a través de { $count ->
        [one] él
       *[other] ellos
    }
    .detail = Todas las tensiones de aquí suponen piedra sana; en una fisura o una reparación puede romperse muy por debajo. Manténgala de canto, sobre un tablero o un bastidor que la sostenga entera.

trestles-are-moved = los caballetes se mueven antes del corte { $cuts }
    .detail = Ningún sitio sirve para todos los cortes. Levante la piedra como pide su peso, muévalos y pósela otra vez; los sitios nuevos están en la ficha de ese corte.

rests-poorly = ponga más apoyo bajo la encimera: { $what }
    .detail = { $parts }. Apoyos más juntos, junto a cada hueco, más afuera. Ni tornillo ni adhesivo sujeta una encimera que vuelca.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = voladizo
rests-overhang-part = { $edges } { $count ->
        [one] sobresale
       *[other] sobresalen
    } { $reach } de los apoyos (límite publicado: { $limit })
rests-overhang-person = voladizo
rests-overhang-person-part = { $edges } { $count ->
        [one] sobresale
       *[other] sobresalen
    } { $reach } de los apoyos (límite publicado: { $limit }) y con una persona en el borde llega al { $times } de lo admisible
rests-span = tramo libre
rests-span-part = el mayor tramo sin apoyo es de { $span } (límite publicado: { $limit })
rests-tips = vuelca si alguien se apoya
rests-tips-part = una persona de { $force } { $place } la vuelca de sus apoyos
rests-bends = alguien apoyado en ella
rests-bends-part = una persona de { $force } { $place } la carga al { $times } de lo admisible
rests-bends-elsewhere = alguien apoyado en ella
rests-bends-elsewhere-part = una persona de { $force } { $place } la carga al { $times } de lo admisible, sobre todo { $section }
lean-worst = en el peor sitio
lean-rail = en la { $rail } ({ $cutouts })
lean-overhang = en el voladizo ({ $edge })
lean-between = entre los apoyos { $first } y { $second }
lean-over = sobre el apoyo { $support }
rests-over = { $support }
rests-over-part = { $support } carga hasta { $carried }, más que su límite de { $limit }
rests-over-person = { $support } con una persona
rests-over-person-part = { $support } carga hasta { $with_person } con una persona de { $force } (límite { $limit })
none-published = nada para una piedra tan delgada

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = llevarla en vertical, sobre el lado corto, lo que pide { $n } de altura
remedy-cut-to = cortarla antes de este lugar a un largo de { $n } como máximo
remedy-widen-before = dar al paso antes de la esquina un ancho de al menos { $n }
remedy-widen-after = dar al paso después de la esquina un ancho de al menos { $n }
remedy-widen = dar a este paso un ancho de al menos { $n }: quitar la hoja, los topes, un marco
remedy-raise = conseguir al menos { $n } de altura libre para pasarla { $how }
