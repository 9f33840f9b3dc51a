# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · página { $number } de { $count }
bench-head-annex = plan { $plan } · anexo, página A{ $number } de A{ $count }
bench-foot = Normas locales, instrucciones de los fabricantes y personas competentes van antes que esta hoja.
bench-foot-cut = Primero un surco. Ni torcer ni empujar de lado. Disco pinzado: apagar, esperar, liberar, entrar solo a plena velocidad.
bench-stop = ALTO
bench-kills-now = mata
bench-kills-later = mata más tarde
bench-maims = mutila
bench-lasting = queda de por vida
bench-breaks-stone = rompe la piedra
bench-blank = rellenar
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = De un vistazo
bench-glance-title = De un vistazo: { $work }
bench-work-straight = { $count ->
    [one] serrar un borde
   *[other] serrar { $count } bordes
 }
bench-work-curves = { $count ->
    [one] cortar una curva
   *[other] cortar { $count } curvas
 }
bench-work-openings = { $count ->
    [one] abrir un hueco
   *[other] abrir { $count } huecos
 }
bench-glance-alt = La tabla vista desde arriba con la encimera, { $length } por { $width }, los cortes en su orden y los sobrantes con su peso.
bench-glance-open = Antes de arrancar la máquina: resolver cada punto, anotar lo hallado y marcar
bench-glance-warnings = Lo que este trabajo le puede hacer, lo peor primero
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = se queda
bench-top-corner = esquina { $corner }
bench-practice-here = practicar
bench-tile-top = encimera acabada
bench-tile-slab = tabla
bench-tile-waste = sobrante más pesado
bench-tile-sawing = disco en la piedra
bench-tile-setting = preparación
bench-tile-silica = sílice en el lodo
bench-tile-silica-dry = sílice en el polvo
bench-tile-likely = como máximo; probable { $mass }
bench-tile-likely-thick = como máximo; probable { $mass }; { $thick }
bench-tile-no-waste = no cae ningún trozo
bench-tile-after = { $name }, corte { $cut }
bench-tile-shares = { $count ->
    [one] una persona, un día
   *[other] repartir entre { $count } personas o días
 }
bench-tile-with-other = con { $other } de otro trabajo: { $shares }
bench-tile-without-edges = { $shares }; sin acabado
bench-not-counted = Amolar, pulir y matar los cantos no está en ninguna cifra de aquí, salvo si figura en [[today]]; cuenta en el día de la misma persona.
bench-tile-set-ups = { $count ->
    [one] una preparación
   *[other] { $count } preparaciones
 }
bench-tile-of-dust = como máximo, en { $mass } de piedra

# Mark out
bench-mark = Trazar
bench-mark-title = Trazar todas las líneas antes del primer corte
bench-mark-rule = Trace cada línea de lado a lado de toda la tabla antes del primer corte. Un corte se lleva una marca; la línea se sigue viendo en la piedra que queda.
bench-mark-alt = La tabla vista desde arriba con cada línea que se traza, sus marcas en los bordes y cada pivote y agujero.
bench-mark-what = punto
bench-mark-off = desde la línea trazada
bench-mark-off-that = desde la línea { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = en { $cut }
bench-mark-off-line = línea { $cut }: { $distance }
bench-mark-on-line = en la línea { $cut }
bench-mark-check = control
bench-mark-line-check = control de línea
bench-mark-on-curve = línea del corte { $cut }
bench-mark-keep = línea que se queda
bench-mark-guide = guía, ídem
bench-mark-tape-from = metro
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } pivote
bench-mark-chord = { $mark } cuerda
bench-mark-hole = { $mark } agujero
bench-mark-stop = { $mark } final
bench-mark-both = Corte { $cut }: { $distance } desde la esquina { $corner } de la encimera por las dos líneas.
bench-mark-along = Corte { $cut }, desde la esquina { $corner } de la encimera: { $before } hacia atrás, { $after } hacia delante.
bench-mark-guides = Cada línea de guía va a { $offset } de su línea que se queda, de un extremo a otro.
bench-mark-rough = Una esquina en un canto basto está donde se cruzan dos cordeles tendidos a lo largo de sus cantos: márquela primero.
bench-mark-tape = Ponga el gancho del metro en la esquina misma. Si un control se desvía más de { $tape }: mida otra vez, no corra la línea. { $guides }
bench-mark-between = Un treintaidosavo de pulgada es el medio entre dos marcas de un metro que muestra dieciseisavos.
bench-end = { $mark }: { $distance } desde { $corner } en { $edge }

# Straight cuts
bench-straight = Cortes rectos
bench-straight-title = Recto, borde { $edge }, { $length } de largo, piedra { $thick }
bench-relief-title = Corte de alivio en { $edge }, { $length } de largo, piedra { $thick }
bench-straight-alt = La tabla antes del corte por el borde { $edge }, vista desde arriba: guía, apoyos, dónde se pone el operario y lo que se suelta: { $waste }.
bench-you = usted
bench-depth = profundidad
bench-depths = profundidades
bench-trestles-move = Levante antes la piedra y mueva los caballetes: a { $first } y { $second } del extremo de la tabla.
bench-trestles-board = Levante antes la piedra: desde aquí descansa sobre un tablero plano y entero.
bench-late = Solo después del corte { $cut }, que tiene su propia página.
bench-fact-guide = guía
bench-fact-ends = sus extremos
bench-fact-moves = está a
bench-fact-how = cómo
bench-fact-bearers = apoyos
bench-fact-drill = taladrar antes
bench-fact-when = cuándo
bench-guide-kept = a { $offset } de la línea que se queda, sobre la piedra que se conserva
bench-guide-waste = a { $offset } de la línea que se queda, sobre el sobrante
bench-ends = { $first }; { $second }
bench-moves = { $places } desde { $mark }, una tras otra en cada profundidad{ $clamp ->
    [no] ; donde no llega ningún sargento, una ventosa de sujeción, probada a mano
   *[yes] {""}
 }
bench-stone-end = el extremo de la piedra hacia { $mark }
bench-span = { $from } a { $to }
bench-how = { $parts }
bench-how-far-end = En cada profundidad, primero los últimos { $length } en { $last }, de fuera hacia dentro; luego desde el otro extremo hasta allí.
bench-how-stop = Acaba en { $mark }: el centro del disco, no más cerca de { $short }. Lo que deja el disco redondo va al final y por arriba: broca de corona en el sobrante, luego amolar; nunca por debajo.
bench-how-stop-hole = Acaba en el agujero taladrado en { $mark }: el centro del disco, no más cerca de { $short }.
bench-how-allowance = Quedan { $left } para el acabado.
bench-how-breaks = A partir de { $depth } puede romperse.
bench-bearers = a cada lado, { $off }: a { $at } desde { $mark }
bench-bearers-even = { $count } a cada lado, { $off }: de { $first } a { $last } desde { $mark }, cada { $step }
bench-bearers-off = a { $off } de la línea
bench-bearers-off-each = a { $kept } de la línea, a { $waste } bajo el sobrante
bench-struck = por la línea trazada { $first } a { $second }: un extremo ya no está
bench-drill = Ø { $bit } en { $marks }, con agua, antes de que se acerque el disco
bench-free-heavy = { $name } se suelta: hasta { $mass }. Descansa sobre sus propios apoyos, a nivel, antes de la primera pasada. Ni mano, ni pie, ni rodilla debajo; nadie lo sujeta.
bench-free-carried = { $name } se suelta: hasta { $mass }. Descansa sobre sus propios apoyos, a nivel, antes de la primera pasada. Ni mano, ni pie, ni rodilla debajo; nadie lo sujeta. { $away }
bench-away = Después { $people } personas { $how ->
            [flat] lo llevan plano a dos listones en el suelo, a un quinto de su longitud de los extremos.
           *[edge] lo ponen sobre el lado largo, lo llevan de canto a dos listones junto a una pared y lo atan allí.
        }
bench-away-more = Hacen falta { $people } personas para llevárselo { $how ->
            [flat] plano
           *[edge] de canto
        }, y este trabajo tiene menos: búsquelas o una ayuda, o siérrelo de través donde está, con un apoyo a cada lado de la línea.
bench-away-aid = Después { $aid ->
            [trolley] { $people } personas ({ $half }) lo ponen de canto y el carro lo lleva, atado,
            [vacuum] el elevador de vacío lo lleva, de canto,
           *[gantry] el polipasto lo lleva, de canto en dos eslingas,
        } a dos listones junto a una pared; átelo allí.
bench-away-sawn = Ningún equipo se lo lleva: siérrelo de través donde está, con un apoyo a cada lado de la línea, o traiga una ayuda.
bench-free-light = { $name } se suelta: hasta { $mass }. Un apoyo debajo antes de la primera pasada; ninguna mano debajo.
bench-free-flaw = «{ $flaw }» lo atraviesa: puede romperse ahí. Apoyos a ambos lados; madera recta sujeta encima antes de levantarlo.
bench-free-station = { $name } se suelta hacia la estación { $station }, última profundidad: hasta { $mass }. Un apoyo debajo antes de la primera pasada; ninguna mano debajo.
bench-measured = borde { $edge }, falta o sobra (debe ser 0)
bench-cut-by = cortado por, hora

# Curves
bench-curve = Curva, corte { $cuts }
bench-curve-title = { $count ->
    [one] Una estación de la curva en { $corners } por inmersión, { $depths } profundidades
   *[other] { $count } estaciones de la curva en { $corners } por inmersión, { $depths } profundidades
 }
bench-curve-alt = La curva vista desde arriba con sus estaciones numeradas, el pivote o la cuerda, y el sobrante.
bench-curve-how = Cómo
bench-curve-line = radio { $radius }; quedan { $left } para el acabado
bench-curve-line-inside = radio { $radius }; quedan { $left } para el acabado; las estaciones en radio { $stations }
bench-curve-rise = cuerda { $chord }, la curva sube { $rise } sobre ella en el centro
bench-curve-struck = { $points }, trazado antes del corte 1: véase Trazar
bench-curve-swing = { $mark }: a { $radius } de cada una de { $points }
bench-curve-stations = Trace la línea alrededor del pivote. Mida cada estación en recto desde la marca que está junto a su número; las vecinas están a { $apart } una de otra.
bench-curve-ordinates = Trace la cuerda. Lleve cada estación a lo largo de ella y a escuadra; las vecinas están a { $apart } una de otra.
bench-curve-plunge = Disco a escuadra con el brazo en la estación: cara próxima a { $near } del pivote, marca del útil a { $arm }. Póngase al lado de su línea, nunca en ella. Baje recto, suba recto. Nunca lo lleve por la curva.
bench-curve-plunge-guide = Borde de la guía a { $offset } de la estación y a { $gap } de la curva, { $half } a cada lado de ella; cara próxima en la curva. Póngase al lado de su línea, nunca en ella. Baje recto, suba recto. Nunca lo lleve por la curva.
bench-curve-plunge-square = Trace el centro del arco, a { $radius } de los dos extremos de la cuerda. El disco va a escuadra de la línea del centro por la estación, su cara exterior, la que da lejos del centro, en la estación; el canto de la guía { $offset } más allá. Póngase al lado de su línea, nunca en ella. Recto abajo, recto fuera. Nunca lo gire.
bench-curve-rings = Todas las estaciones a una profundidad, luego todas a la siguiente: { $depths }. La piedra tiene { $thick }.
bench-curve-ridges = Quedan crestas de { $left }: rebájelas con agua con un plato de diamante o un disco de láminas, grano 60, a lo largo de la curva, hasta la línea; luego 120, 200, 400.
bench-fact-pivot = pivote
bench-fact-chord = cuerda
bench-fact-stands = está sobre
bench-fact-swing = se halla
bench-fact-line = línea que se queda
bench-arm = marca { $length }
bench-pivot-top = la encimera: cinta o ventosa, nunca taladrada
bench-pivot-cutout = piedra que cae más tarde, aún en su sitio
bench-pivot-waste = el sobrante: deje ese trozo en su sitio hasta acabar la curva
bench-pivot-off = al lado de la piedra: fije allí algo de la misma altura
bench-station = n.º
bench-station-along = a lo largo
bench-station-off = desvío
bench-station-off-waste = fuera, hacia el sobrante
bench-relief-first = Primero los cortes de alivio, para que el sobrante salga a trozos.
bench-relief-cut = corte
bench-relief-guide = guía en marcas
bench-relief-length = largo
bench-two-marks = { $first } y { $second }

# Openings
bench-opening = Hueco { $number }
bench-opening-title = Hueco: { $what }, piedra { $thick }
bench-opening-alt = El hueco visto desde arriba con sus agujeros, cortes y líneas de guía, y la piedra más estrecha junto a él.
bench-opening-corner-alt = Una esquina del hueco: las líneas trazadas y los puntos junto a ellas
bench-opening-what = qué
bench-opening-marks = marcas
bench-opening-how = cómo
bench-opening-depths = profundidades
bench-depths-straight = rectos
bench-depths-curve = curvos
bench-opening-stop = centro a { $short } antes de { $mark }
bench-opening-hole = taladrar Ø { $bit }
bench-opening-straight = recto, { $length }
bench-opening-curve = curvo, { $length }
bench-opening-swing = radio { $radius }, brazo { $arm }, { $count } estaciones
bench-opening-plunges = { $count } inmersiones por una cuerda de { $chord }, flecha { $rise }
bench-opening-drill = con agua, en recto, desde arriba
bench-opening-stations-chord = Estaciones, corte { $cuts }: a lo largo de la cuerda desde la marca e, y a escuadra de ella
bench-opening-stations-pivot = Estaciones, corte { $cuts }: en recto desde las marcas trazadas
bench-opening-step-drill = Taladre primero todos los agujeros: así el disco acaba en un agujero y ningún corte entra en la esquina.
bench-opening-step-saw = Sierre de agujero a agujero, cada corte hasta el fondo antes del siguiente. El disco es redondo: por debajo los finales de los cortes aún sujetan el trozo. Suéltelo por arriba, con la broca de corona en el sobrante sobre cada final, el resto amolado; nadie trabaja debajo. La piedra tiene que estar apoyada todo alrededor y debajo del trozo que cae.
bench-opening-step-saw-parted = Sierre de agujero a agujero, cada corte hasta el fondo antes del siguiente. El disco es redondo: por debajo los finales de los cortes aún sujetarían el trozo; los agujeros junto a ellos lo separan ahí, y lo que queda se amola. Nadie trabaja debajo. La piedra tiene que estar apoyada todo alrededor y debajo del trozo que cae.
bench-opening-step-last = El último corte suelta el trozo: antes, apoyos debajo; nadie debajo. Desde ahora la piedra es débil junto al hueco: refuerzos puestos antes de moverla.
bench-rail = { $what }
bench-rail-holds = { $width } de ancho: aguanta; se lleva de canto, nunca por la tira
bench-rail-brace = { $width } de ancho: solo con refuerzos. { $splint }
bench-rail-weak = { $width } de ancho: demasiado débil aun con refuerzos. { $splint }
bench-splint = { $count } × madera { $wide } × { $high }, { $length } de largo, sujeta con sargentos antes del primer corte aquí

# Moving
bench-move = Mover y posar
bench-move-title = De canto, a mano, atada cuando está de pie
bench-move-title-trolley = De canto en el carro, atada, en suelo llano
bench-move-title-vacuum = De canto bajo el elevador de vacío
bench-move-title-gantry = De canto en dos eslingas
bench-move-slab = Tabla a los caballetes, { $alike ->
    [yes] cualquier lado abajo
   *[no] { $side } abajo
 }
bench-move-top = Encimera a su sitio, { $alike ->
    [yes] cualquier lado abajo
   *[no] { $side } abajo
 }
bench-move-alt = La piedra de canto con su equipo y una persona en cada extremo, a escala; pesa hasta { $mass }.
bench-move-on-edge = Nunca tumbada por los extremos: se parte. De canto todo el camino; se tumba solo sobre los dos caballetes. Nunca levante un solo extremo.
bench-move-tied = De canto todo el camino, atada siempre que está de pie.
bench-turn-slab = de canto junto a los dos caballetes, lo que la lleva bloqueado; lado largo de abajo sobre los dos a la vez, luego plana: { $hands ->
    [none] no a mano, sino con polipasto, elevador de vacío o bastidor basculante
    [open] como se decida en la página 1: todos en el lado largo opuesto, nadie debajo
    [aid] la gira el elevador, dos personas la guían
   *[team] todos en el lado largo opuesto, nadie debajo
 }. La atadura, al final.
bench-turn-top = de canto junto a su sitio, luego sobre listones acolchados cruzados: { $hands ->
    [none] no a mano, sino con polipasto, elevador de vacío o bastidor basculante
    [open] como se decida en la página 1: todos en el lado largo opuesto, nadie debajo
    [aid] la gira el elevador, dos personas la guían
   *[team] todos en el lado largo opuesto, nadie debajo
 }. Listones fuera uno a uno, el lado largo alzado con cuñas, ningún dedo debajo.
bench-fact-flat = tabla, acostada
bench-fact-set = encimera, dejarla
bench-move-hands = Dónde van las manos
bench-move-hands-on-edge = Dónde van las manos: cuelga de canto en ellas, nunca tumbada
bench-move-trestles = Dos caballetes de lado: distancias desde el extremo { $corner }, y lo que lleva cada uno
bench-move-supports = En qué se apoya: el centro de cada apoyo, como está dibujado
bench-hands-alt = La piedra vista desde arriba con una persona en cada puesto, y lo que lleva cada una.
bench-hands = { $number }: { $mass }
bench-trestles-alt = La tabla sobre dos caballetes, a { $first } y { $second } de su extremo.
bench-supports-alt = La encimera vista desde arriba sobre sus apoyos, con lo que carga cada uno.
bench-supports-short = Así no basta: antes más apoyo, véase la página 1.
bench-free-span = { $length } en lo más ancho; como máximo { $limit }
bench-overhang = { $edge }: { $length }; como máximo { $limit }. Ponga allí un apoyo
bench-overhang-person = { $edge }: { $length }; que nadie se apoye allí, o ponga un apoyo
bench-bearing-over = con una persona apoyada en la encimera carga { $person }, admite { $limit }: nadie se sienta ni se apoya ahí, o añada un apoyo
bench-support-name = { $number } { $what }
bench-support = { $along } de la izquierda, { $up } de abajo; carga como máximo { $mass }
bench-fact-trolley = carro
bench-fact-vacuum = elevador de vacío
bench-fact-slings = eslingas
bench-fact-lift = a mano
bench-fact-fall = si cae
bench-fact-free = sin apoyo
bench-fact-over = más allá del apoyo
bench-trolley = marcado para { $rated } o más; empuje { $push } en llano
bench-rated = marcado para { $rated } o más
bench-slings = { $each } en cada una, { $tension } en cada ramal a { $angle }
bench-fall = nadie a menos de { $clear } a cada lado; átela
bench-lift-never = nunca: { $people } juntos cuentan con { $limit } en total{ $two }
bench-lift-two = {""}, dos con { $mass }
bench-lift-above = por encima del valor: una persona lleva { $carried }, el valor es { $limit }; decídalo antes (página 1)
bench-lift-over = así no: una persona llevaría { $carried }, el valor es { $limit }
bench-lift-tips = así no: vuelca
bench-lift-breaks = a mano no: tumbada o de canto se dobla demasiado; refuércela o use un equipo
bench-lift-many = así no: { $people } personas no levantan a la vez
bench-lift-within = { $people } personas, cada una hasta { $most }; ninguna cifra hace seguro un levantamiento

# Dust, noise, hands
bench-dust = Polvo, ruido, manos
bench-dust-title = Polvo, ruido, manos
bench-dust-order = Lo más eficaz primero: lo que quita el polvo
bench-dust-limits = Cuánto y cuánto tiempo
bench-dust-settled = Resuelto para este trabajo
bench-control = { $state ->
    [done] { $what }: previsto
    [open] { $what }: AÚN PENDIENTE
   *[other] { $what }: cuidarlo ese día
 }
bench-fact-mask = mascarilla aquí
bench-fact-hands = manos
bench-fact-ears = oídos
bench-fact-slurry = lodo
bench-fact-slurry-dry = polvo
bench-fact-silica = qué contiene
bench-fact-vacuum-class = aspirador
bench-mask-at-hand = { $mask }; afeitado, estanqueidad comprobada; puesta antes del primer corte, fuera cuando el suelo esté limpio
bench-hands-allowed = { $action } al día por persona, contando todo lo que vibra; este trabajo pide { $job }
bench-hands-other = { $hands }, otro trabajo cuenta { $other }
bench-hands-never = esta máquina vibra demasiado, ni un minuto: otra máquina
bench-ears = { $level } en el oído: protección puesta antes del primer arranque; sin ella, { $minutes } llenan el día
bench-slurry = unos { $mass }, cubos: { $buckets }; con rasqueta y aspirador mientras está mojado, nunca a un desagüe
bench-bags = { $bags ->
    [one] una bolsa de extractor
   *[other] hasta { $bags } bolsas de extractor
 }
bench-nothing-caught = nada lo retiene
bench-silica = hasta { $dust } de piedra, de ellos { $silica } de sílice
bench-wear-mask = Mascarilla: factor { $factor } o más
bench-wear-mask-here = { $mask }: factor { $factor }
bench-wear-mask-ready = Mascarilla puesta al cortar, hasta limpiar el suelo
bench-wear-mask-assess = Mascarilla: antes hay que evaluar la exposición
bench-wear-ears = Oídos: { $level }
bench-wear-eyes = Gafas cerradas y pantalla facial
bench-wear-hands = Guantes ajustados, sin puños sueltos
bench-wear-feet = Botas con puntera, antideslizantes
bench-wear-disc = Disco: sigue girando después de apagar

# Helper
bench-emergency = Número de emergencias: { $number }
bench-vacuum-off = Dónde se apaga la aspiración
bench-helper-weight = La tabla pesa hasta { $slab }, la encimera hasta { $top }. { $hands ->
    [none] Nadie las levanta a mano.
    [top] Nadie levanta la tabla a mano, nadie la encimera solo.
   *[both] Nadie las levanta solo.
 }

# The day and its record
bench-day = Jornada y registro
bench-day-title = La jornada y lo que pasó
bench-day-what = qué
bench-day-minutes = tarda
bench-day-at = hecho a las
bench-day-read = Leer en voz alta la página del ayudante, probar las señales de alto, rellenar la página 1
bench-day-unload = Descargar la tabla de canto, atada; luego plana en los caballetes
bench-day-mark = Trazar y comprobar cada línea; practicar en el sobrante
bench-day-straight = Corte { $cut }, borde { $edge }: sale { $waste }
bench-day-curve = Corte { $cuts }, curva { $edge }
bench-day-opening = Cortes { $cuts }, hueco: { $what }
bench-day-sum = Todos los cortes: { $stone } con el disco en la piedra, { $setting } de preparación
bench-day-move = La encimera de canto, atada, a su sitio
bench-day-clean = Lodo recogido mojado, suelo enjuagado, luego fuera mascarillas
bench-day-clean-dry = Polvo aspirado en todas partes, luego fuera mascarillas
bench-day-bring = Traer
bench-day-practice = Practicar antes en el sobrante
bench-day-wrong = Cuando algo va mal
bench-day-started = empezado
bench-day-ended = acabado
bench-day-initials = iniciales
bench-day-date = fecha
bench-day-annex = Cálculos, tablas, advertencias completas y fuentes: kerfwright sheet ARCHIVO --annex
bench-bring-guide = guía
bench-bring-guide-is = recta, { $length }, y dos sargentos{ $suction ->
    [yes] , una ventosa de sujeción
   *[no] {""}
 }{ $jig ->
    [yes] ; brazo de compás y su pivote
   *[no] {""}
 }
bench-bring-discs = discos
bench-bring-discs-are = { $discs }, y de repuesto{ $grind ->
    [yes] ; copa de diamante o discos de láminas para amolar
   *[no] {""}
 }
bench-bring-bits = brocas de corona
bench-bring-bits-are = { $bits }, hechas para la velocidad de la máquina que las gira; una plantilla que las guíe
bench-bring-bearers = apoyos
bench-bring-bearers-are = { $count } tacos de una misma altura, madera blanda, de { $long }, y cuñas; sobre el entablado{ $edges }
bench-bring-bearers-edges = {""}, { $count } de ellos bajo los bordes sin corte
bench-bring-deck = entablado
bench-bring-deck-are = tablones de { $thick } de grueso o más a lo largo de la tabla sobre ambos caballetes, { $length } de largo, juntos { $wide } de ancho; encima los apoyos y sobre ellos la tabla
bench-bring-turn = para volcar
bench-bring-turn-is = polipasto, elevador de vacío o bastidor basculante
bench-bring-carry = para llevar
bench-bring-carry-is = { $aid ->
    [trolley] carro marcado para { $rated }, dos caballetes
    [vacuum] elevador de vacío marcado para { $rated }, dos caballetes
    [gantry] pórtico con eslingas para { $rated }, dos caballetes
   *[none] dos caballetes
 }, correas, listones, aspirador; lo que muestran las señales
bench-bring-tape = trazado
bench-bring-tape-is = { $rolls ->
    [one] un rollo de cinta de carrocero de { $roll }
   *[other] { $rolls } rollos de cinta de carrocero, { $roll } cada uno
 }, metro de acero, escuadra, lápiz fino, tiralíneas
bench-bring-water = agua
bench-bring-water-is = { $water } en total; cubos para el lodo: { $buckets }
bench-practice-cut = un corte
bench-practice-cut-is = en { $piece } donde está dibujado, { $length } de largo, hasta { $depths }
bench-practice-plunge = inmersiones
bench-practice-plunge-is = también en { $piece }, tres juntas, hasta { $depths }
bench-practice-offset = borde de la guía a cara próxima del disco ({ $reckoned })
bench-practice-jig = marca del útil a cara próxima del disco ({ $reckoned })
bench-practice-minutes = minutos en la piedra; largo, profundidad
bench-practice-differs = Si no sale la cifra entre paréntesis: corra otro tanto las marcas de la guía o el brazo; las líneas que se quedan, no.
bench-wrong-cracks = se agrieta
bench-wrong-cracks-do = Apague. Nadie debajo. Apoyos debajo de las dos partes antes de mover nada; luego mida y vuelva a planificar lo que queda.
bench-wrong-pinches = el disco se pinza
bench-wrong-pinches-do = Apague, espere a que el disco quede quieto, abra la ranura con cuñas, saque la máquina. Entre otra vez solo a plena velocidad.
bench-wrong-slips = se sale de la línea
bench-wrong-slips-do = Apague. Mida cuánto y a qué profundidad, escríbalo en el archivo de trabajo en lo que pasó: un plan nuevo dice qué queda de la encimera.

# Repair
bench-repair = Lo que pasó
bench-repair-title = Lo que pasó y lo que queda
bench-repair-alt = La piedra como está, la encimera que queda y, a trazos, la encimera pedida.
bench-repair-as-planned = Todo está en su línea. Siga según el plan.
bench-repair-within = La demasía lo absorbe: no se pierde nada. Amole hasta la línea acabada.
bench-repair-grind = No se ha perdido nada: en un borde queda demasiado. Amuélelo hasta la línea acabada.
bench-repair-again = No se ha perdido nada: en un borde queda demasiado. Sierre la tira, según su página.
bench-repair-smaller = La encimera sale más pequeña. Pregunte a quien la encargó antes del corte siguiente.
bench-repair-opening = Un hueco sale distinto de lo pedido. Pregunte a quien lo encargó antes del corte siguiente.
bench-repair-same-a = Las letras son esquinas de la piedra como está ahora. A está donde estaba, AB va como antes; las demás son nuevas.
bench-repair-new = Las letras son esquinas de la piedra como está ahora: todas son nuevas. Escríbalas en la piedra.
bench-repair-wanted = pedido
bench-repair-now = ahora
bench-repair-weighs = pesa
bench-repair-first = primero
bench-repair-run-outs = acabar lo que el corte dejó en pie: { $pieces }
bench-repair-grind-first = amolar hasta la línea antes del corte siguiente: { $edges }
bench-repair-lines = en el archivo
bench-repair-part = parte
bench-repair-came = salió
bench-repair-is-wanted = pedido
bench-repair-is-now = ahora
bench-repair-do = por hacer
bench-repair-edge = borde { $name }
bench-repair-corner = esquina { $name }, { $what }
bench-came-not-cut = sin cortar
bench-came-on-line = en su línea
bench-came-short = { $off } de menos
bench-came-over = { $off } de más
bench-came-slanting-short = de { $start } a { $end } de menos
bench-came-slanting-over = de { $start } a { $end } de más
bench-do-nothing = nada
bench-do-finish = solo acabado
bench-do-grind = amolar { $off }
bench-do-cut = cortar: vea su página

# The annex
annex-findings = Cada punto completo
annex-stops = Altos: el trabajo no debe empezar mientras quede uno de ellos
annex-open = Pendiente: rellenar o mirar antes de empezar
annex-warnings = Advertencias
annex-every = Siempre
annex-stone = Piedra, sitio y piezas
annex-strength = Tumbada, de pie, levantada
annex-way = El camino de entrada
annex-health = Polvo, manos, oídos: las cifras
annex-assumed = Valores que el archivo de trabajo dejó abiertos
annex-sources = Fuentes
annex-key = clave
annex-value = valor
annex-why = por qué
annex-what = qué
annex-document = documento
annex-clause = apartado
annex-year = año
annex-no-year = no anotado
annex-place = Dónde está la encimera en la tabla
annex-pieces = Piezas
annex-cuts = Cortes
annex-balance = Tabla { $slab } = encimera acabada { $top } + demasía en los bordes { $left } + ranura { $kerf } + sobrantes { $waste }. Las migas entre ranuras cuentan como ranura.
annex-range = { $low } a { $high }
annex-three = { $low } a { $high }, probable { $likely }
annex-kind = piedra
annex-density = densidad
annex-thickness = espesor
annex-allowed = resistencia
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = tabla, superficie
annex-slab-mass = la tabla pesa
annex-top-mass = la encimera pesa
annex-spare = margen mínimo
annex-turn = girada
annex-corner = esquina de la encimera
annex-corner-of-top = esquina { $name }
annex-x = x desde A a lo largo de AB
annex-y = y desde A a escuadra
annex-edge = borde
annex-edge-sawn = serrado, quedan { $left } en él
annex-edge-flush = en el borde { $edge } de la tabla
annex-length = largo
annex-lies = cómo está
annex-piece = pieza
annex-after = tras corte
annex-area = superficie
annex-mass = pesa
annex-rectangle = contiene un rectángulo de
annex-left = piedra que se conserva
annex-tool = herramienta
annex-core-bit = broca de corona de { $bit }
annex-bending = Tensión por su propio peso, × 1,2 por manipulación, en la piedra más delgada; solo piedra sana
annex-stone-state = piedra
annex-state = { $name }
annex-flat-best = tumbada, mejores apoyos
annex-flat-hands = tumbada, en las manos
annex-flat-ends = tumbada, por los extremos
annex-one-end = un extremo levantado
annex-on-edge = de canto, por los extremos
annex-may = admisible
annex-lifting = Levantar a mano, y lo que piden los equipos
annex-slab = tabla
annex-top = encimera
annex-guideline = valor orientativo
annex-guideline-is = { $each } por persona ({ $source }); no promete que un levantamiento por debajo sea seguro
annex-person = persona
annex-from-end = desde el extremo
annex-from-side = desde el lado
annex-carries = lleva
annex-figure = valor en este equipo
annex-trolley-rated = carro marcado para
annex-trolley-push = empuje en llano
annex-trolley-ramp = rampa 1 en 12, además
annex-trolley-tips = vuelca de lado a
annex-vacuum-rated = elevador de vacío marcado para
annex-sling-pull = tiro por ramal de eslinga
annex-leans = de canto cae a más de
annex-rails = Piedra estrecha junto a los huecos
annex-rail-is = { $width } de ancho, { $length } de largo: { $together } con su vecina, { $alone } sola
annex-setting = Sobre sus apoyos
annex-support = apoyo
annex-carries-most = lleva como máximo
annex-with-person = con una persona apoyada
annex-reaches = sobresale
annex-person-stress = tensión con una persona
annex-way-of = El camino: { $name }
annex-way-place = lugar
annex-way-carried = mejor llevada
annex-way-spare = margen
annex-way-clears = { $spare } de margen
annex-way-tight = justo: { $spare } de margen
annex-way-short = faltan { $short }
annex-way-note = Mida otra vez cada lugar con las personas y el equipo que la llevan.
annex-limit = sílice
annex-vibration = vibración
annex-vibration-is = { $reckoned } con su incertidumbre, { $job } de este trabajo; el día { $day }; acción { $action }, límite { $limit } ({ $source })
annex-noise = ruido
annex-noise-is = { $level } durante { $hours }; el día { $day }; obligatorio desde { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; compruebe las reglas vigentes
annex-cited-year = { $document }, { $year }{ $borrowed }; compruebe las reglas vigentes
annex-masks = mascarillas que bastan
annex-mask = { $mask } (factor { $factor })
annex-authority = preguntar por las reglas a

# In a terminal
answer-job = trabajo
answer-fits = cabe
answer-fits-is = encimera { $length } × { $width }, { $spare } de margen en lo más justo
answer-weighs = pesa
answer-weighs-is = encimera hasta { $top }, tabla hasta { $slab }
answer-time = tiempo
answer-time-is = { $stone } con el disco en la piedra, { $setting } de preparación
answer-straight = recto, borde { $edge }, { $length }
answer-relief = alivio en { $edge }, { $length }
answer-curve = curva en { $edge }, { $length }
answer-hole = agujeros en { $edge }
answer-guide = { $first } desde { $from }, { $second } desde { $to }
answer-chord = cuerda { $length }
answer-frees = suelta
answer-more = Más con --full:
answer-sheet = encimera acabada  { $low } a { $high }
    cortes            { $straight } rectos, { $curves } curvos
    tiempo de corte   { $sawing } con el disco en la piedra, { $setting } de preparación
    altos             { $stops }
weigh-stone = { $name }
weigh-place = sitio
weigh-no-fit = la encimera no cabe en esta tabla: se pesa como se pidió
weigh-region = región
weigh-balance = punto de equilibrio
weigh-balance-is = a { $end } del extremo, a { $side } del lado
weigh-mass = pesa
weigh-mass-is = como máximo { $high }: levante con este valor; probable { $likely }, al menos { $low }
weigh-size = tamaño
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = al ponerla de canto

# On a telephone
phone-plan = plan { $plan }
phone-contents = Contenido
phone-light = Claro u oscuro
phone-back = Atrás
phone-next = Siguiente
phone-bar = Recorrido de la hoja
phone-clear = Desmarcar todo en este teléfono
phone-forgets = Este visor olvida las marcas al cerrarse. Abra el archivo en un navegador.
