# Findings of hazards: a line, and in full.

working-alone = una sola persona: nadie que pare el trabajo, nadie que pida ayuda
    .detail = Personas indicadas: { $people }; al menos 2 mientras gira un disco (criterio propio). Busque a alguien que se quede cerca, o indique en lift.check_call quién sabe dónde está usted y a qué horas le llama; si nadie contesta, esa persona viene.

second-person = Una segunda persona { $at ->
    [plug-tap] junto al enchufe y al grifo
    [plug] junto al enchufe
    [valve-tap] junto a la llave del aire y al grifo
    [valve] junto a la llave del aire
    [tap] junto al grifo
   *[sight] a la vista
 }, que ve al operario y no hace nada más
    .detail = De las { $people } personas, una se queda ahí, a la vista del operario, fuera de la línea del disco, con protección respiratoria y auditiva. Una mano en alto o una mano en el hombro significa apagar, y nadie pregunta por qué.

who-is-bound = Obra, taller o trabajo propio: saber qué regla vale
    .detail = En una obra (29 CFR 1926.1153) basta una fila de la tabla 1, cumplida al pie de la letra. Un taller que hace encimeras es industria general (29 CFR 1910.1053): allí no hay tabla, se evalúa la exposición. A un particular no le obliga ninguna de las dos; la tabla es la mejor guía publicada, y el polvo hace el mismo daño.

no-dry-sweeping = No barrer en seco, no usar aire comprimido
    .detail = { $rule }{ $borrowed } Tras los cortes quedan esparcidos unos { $stone } de piedra, de ellos hasta { $silica } de sílice: secos, vuelven a levantarse. Aspirador: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Polvo aspirado en todas partes antes de quitarse la mascarilla
    .detail = Ninguna caperuza de aspiración capta todos los { $stone }, y menos que nunca en los extremos de un corte. El suelo, los salientes, la máquina y la ropa se aspiran antes de que nadie se quite la mascarilla: { $vacuum }{ $vacuum_borrowed }.

cold-water = Manos calientes y secas; dedos blancos o dormidos: no siga ese día
    .detail = Manguitos impermeables, un par de guantes secos para cada hora, pausas en un sitio caliente. Dedos fríos, blancos o dormidos: no siga ese día; con frío la vibración hace daño antes.

frost = No cortar con agua cuando hiela
    .detail = Por debajo de unos 3 °C (criterio propio) el lodo se hiela bajo los pies y el agua se para en la manguera y la boquilla: sin agua no se corta. Vacíe la máquina y la manguera antes de la noche.

local-rules-first = Normas locales, instrucciones de los fabricantes y personas competentes van antes que esta hoja
    .detail = Esta hoja no es un permiso. Región de sus valores: { $region }. Compruebe las reglas vigentes con { $authority }. Los equipos de elevación, la electricidad, la estructura y la piedra que pueda contener amianto son para personal autorizado.

slurry-clean-up = Lodo recogido antes de que se seque; cubos necesarios: { $buckets }
    .detail = Unos { $kilos }: { $water } l de agua ({ $flow } l/min mientras corta el disco) y { $stone } de piedra; cubos de { $bucket } l: { $buckets }. Seco, es el polvo que usted retuvo. Lámina de plástico debajo de los caballetes; recoger con rasqueta y aspirador de líquidos mientras está mojado; enjuagar ropa, botas y máquina; dejar que el resto se asiente; nada a los desagües.

dust-bags = Bolsas del extractor cerradas y retiradas; bolsas necesarias: { $bags }
    .detail = Unos { $stone } de piedra si la caperuza de aspiración lo captara todo; bolsas de { $bag } como máximo: { $bags }. Cambie la bolsa con la protección respiratoria puesta, al aire libre, cerrada antes de sacarla del extractor, nunca sacudida ni vaciada para volver a usarla.

falling-stone = Nadie debajo de la piedra, nunca intente parar una tabla que cae
    .detail = { $mass } kg/m² con el mayor espesor medido y la piedra más pesada de su clase. El sobrante y la piedra que se conserva, los dos apoyados antes de la primera pasada; ni pies ni dedos de nadie debajo o en medio; nunca se ponga donde pueda caer una tabla puesta de canto, y nunca intente pararla.

wet-floor = El lodo resbala: botas, agua desviada, suelo enjuagado antes de levantar nada
    .detail = Botas antideslizantes, agua conducida lejos de donde se está de pie y se lleva carga{ $power ->
            [mains] , cables colgados fuera de lo mojado
           *[other] {""}
        }. Suelo enjuagado y despejado antes de levantar ninguna pieza.

vibration-over-limit = vibración A(8) { $day } m/s² en { $all } min del día, límite { $limit } m/s²
    .detail = { $a } durante { $minutes } minutos al día con esta máquina, { $points } puntos con todo lo demás: A(8) { $day }, límite { $limit }{ $borrowed }, alcanzado en { $to_limit } minutos. Reparta el trabajo entre { $people } personas o días, como máximo { $to_limit } minutos cada uno; para quedar por debajo del valor de acción { $action } hacen falta { $people_action }. Indique los días o las personas en dust.days. Mantenga el cuerpo caliente, disco afilado, agarre sin apretar. Compruebe las reglas vigentes.

vibration-over-action = vibración A(8) { $day } m/s² en { $all } min del día, valor de acción { $action } m/s²
    .detail = { $a } durante { $minutes } minutos al día con esta máquina, { $points } puntos con todo lo demás: A(8) { $day }, valor de acción { $action }{ $borrowed }, alcanzado en { $to_action } minutos. Reparta el trabajo entre { $people_action } personas o días, como máximo { $to_action } minutos cada uno; mantenga el cuerpo caliente, disco afilado, agarre sin apretar. Compruebe las reglas vigentes.

vibration-unknown = vibración de la máquina: léala en sus instrucciones
    .detail = Valor indicado { $a }: ninguna máquina portátil está libre de vibración. Tome el valor del fabricante, o { $usual } m/s² para una amoladora en piedra, e indique machine.vibration.

disc-over-marked-rpm = { $disc }: máquina { $machine } r/min, disco marcado { $marked } r/min
    .detail = La máquina gira { $over } r/min más rápido que las { $marked } marcadas en el disco ({ $speed }, marcado para { $marked_speed }). El disco puede reventar: use uno marcado para { $machine } o más, o una máquina más lenta.

disc-mark-unknown = { $disc }: no se conoce la velocidad máxima
    .detail = Máquina { $machine } r/min, marca del disco no conocida. Lea la marca en el disco e indique disc.max_rpm; un disco sin marca no se usa.

machine-speed-unknown = no se conoce la velocidad de la máquina
    .detail = Máquina { $machine } r/min: sin su velocidad real no se puede comprobar ningún disco. Lea la placa e indique machine.rpm.

kickback-pinched-disc = A un lado de la línea del disco; pinzado: parar, liberar, entrar a plena velocidad
    .detail = Póngase a un lado de la línea del disco, dos manos en la máquina, caperuza protectora puesta, nadie en esa línea. Si se pinza: pare, espere a que quede quieto, libérelo, entre otra vez solo a plena velocidad; nunca arranque dentro del corte.

resin-disc-expired = { $disc }: su último día fue el { $expires }
    .detail = Fecha del trabajo { $date }, último día del disco { $expires }. Los discos de resina duran como máximo { $years } años desde su fabricación: rómpalo, y tome uno nuevo o un disco de diamante.

resin-disc-age-unknown = { $disc }: ligado con resina, último día no conocido
    .detail = Los discos de resina duran como máximo { $years } años desde su fabricación, y la humedad acorta ese plazo. Lea el mes o el trimestre en el anillo o la etiqueta e indique disc.expires; un disco de resina sin fecha no se usa.

resin-disc-age = { $disc }: no usar después del { $expires }
    .detail = Último día del disco { $expires }: compárelo con el día del trabajo. Hasta entonces, guardado en seco y tumbado; uno que se humedeció o se cayó se rompe y se tira.

disc-before-use = Disco examinado: sin grietas, agujero y bridas encajan, caperuza de su tamaño
    .detail = Sin grietas, agujero que encaja, las dos bridas propias de la máquina y limpias, flecha en el sentido correcto, caperuza protectora del tamaño del disco, ranuras del borde de { $gap } como máximo, nunca un disco gastado de una máquina mayor. A { $speed } cada trozo suelto es un proyectil.

support-both-sides = Los dos lados del corte apoyados desde abajo, cerca de él
    .detail = Apoyos debajo de los dos lados, cerca del corte y en los bordes de la piedra, para que la ranura siga abierta hasta el final. El sobrante descansa sobre sus propios apoyos antes de la primera pasada; ninguna mano, pie ni rodilla debajo.

rim-speed-over-limit = { $disc }: velocidad periférica { $speed }, clase marcada más alta { $highest }
    .detail = Un disco de { $diameter } a { $machine } r/min va a { $speed }; ninguna banda de color permite más de { $highest }. Disco más pequeño o máquina más lenta.

rim-speed-above-hand-discs = { $disc }: velocidad periférica { $speed }, los discos portátiles están hechos para { $hand }
    .detail = Un disco de { $diameter } a { $machine } r/min va a { $speed }. Por encima de { $hand } m/s (banda roja), solo un disco con banda verde ({ $highest } m/s): busque esa banda, o use { $slower } r/min o menos.

disc-run-down = El disco sigue girando después de apagar: espere a que quede quieto
    .detail = Segundos, más con un disco grande: mantenga la máquina lejos de la piedra, la manguera y la ropa hasta que el disco quede quieto, y solo entonces déjela. { $power ->
            [mains] Enchufe fuera
            [battery] Batería fuera
            [air] Manguera de aire suelta
           *[engine] Motor parado
        } antes de tocar el disco.

new-disc-run = Disco nuevo: primero sin carga, nadie en su línea
    .detail = { $minutes } minuto a plena velocidad, caperuza protectora puesta, máquina apartada del cuerpo, nadie en el plano del disco, en cada montaje. Si tiembla o chirría: apague, espere a que quede quieto, mírelo otra vez.

never-steer-the-disc = El disco nunca se dirige, se tuerce ni se aprieta de lado
    .detail = La carga lateral dobla y rompe un disco. Carga lateral permitida: ninguna. Las curvas se hacen con cortes rectos por inmersión, como en el dibujo; no se amola con la cara de un disco de corte.

disc-bore = { $disc }: agujero de { $bore } en un asiento de { $seat }
    .detail = Agujero { $bore }, asiento { $seat }, habitual { $usual }, diferencia máxima { $play }. Un disco con holgura gira descentrado y se rompe, uno demasiado justo no entra. El disco correcto para la máquina: sin casquillo, sin limar, sin calzos.

protector-unknown = protector auditivo: ¿cuál, y qué pone en él?
    .detail = Lea SNR, H M L o NRR en la caja y anótelo aquí: { $level } en el oído al cortar, y desde { $duty } dB(A) a lo largo del día la protección es obligatoria. En el archivo del trabajo: [protector].

protector-too-weak = protector auditivo demasiado débil: { $day } dB(A) a lo largo del día bajo él
    .detail = { $level } al cortar, { $holds } dB retenidos{ $borrowed }: { $ear } en el oído, { $day } a lo largo del día, como máximo { $duty }. Un protector con un valor mayor, tapones debajo de las orejeras, o menos minutos.

protector-too-strong = protector auditivo demasiado fuerte: { $ear } dB(A) en el oído
    .detail = { $level } al cortar, { $holds } dB retenidos{ $borrowed }: { $ear } en el oído. Por debajo de { $quiet } no se oyen gritos ni avisos: acuerden señales con la mano, o tome uno con un valor menor.

protector-foreign-rating = el valor del protector no es el que se usa aquí para calcular
    .detail = SNR, H M L (EN 352) y NRR (americano) se ensayan de forma distinta y nunca se intercambian. Se calculó con su propio sistema, por la vía más estricta: { $holds } dB retenidos. Pida el valor que cuenta donde usted trabaja.

noise-over-limit = ruido del día { $under } dB(A) bajo el protector, límite { $limit } dB(A)
    .detail = { $level } dB(A) durante { $hours } horas del día con esta máquina: { $day_exact } dB(A) a lo largo del día sin protector, { $under } dB(A) bajo él, límite { $limit } dB(A){ $borrowed }. Tome un protector con un valor mayor ([protector]), tapones debajo de las orejeras, o reparta el corte en varios días (dust.days). Compruebe las reglas vigentes.

noise-unknown = ruido de la máquina: léalo en sus instrucciones
    .detail = Nivel { $level } dB(A): ninguna amoladora es silenciosa. Tome el valor del fabricante, o { $usual } dB(A) para un disco grande en piedra, e indique machine.noise. Hasta entonces lleve protección auditiva.

extractor-filter = Extractor con filtro limpio que retiene { $holds }, y que se limpia en marcha
    .detail = Caudal de aire { $has }, mínimo { $asks }. Ese caudal vale solo con un filtro limpio de al menos { $holds }, un ciclón o limpieza del filtro, y la caperuza de aspiración apoyada en la piedra: { $vacuum }{ $borrowed }; la clase M deja pasar como máximo { $m }. En los dos extremos de un corte y en las entradas por inmersión la caperuza de aspiración queda abierta: ahí, despacio.

control-cut-less = cortar menos
    .detail = se sierran { $face } m² de cara de corte, { $minutes } minutos con el disco en la piedra: cada borde que se queda como está no levanta polvo

control-shop = encargar el corte con agua a un taller
    .detail = una sierra puente con agua corta esto en unos minutos, y { $grams } de piedra nunca llegan a su sitio

control-at-the-disc = { $method ->
    [water] agua en el disco
    [shroud] caperuza con aspirador en el disco
   *[none] agua o aspiración en el disco
 }
    .detail = agua en una máquina apta para ella, o una caperuza de aspiración con al menos { $airflow } para un disco de { $disc }

control-outdoors = al aire libre
    .detail = con aire en movimiento, viento de lado, lejos de puertas y tomas de aire

control-distance = distancia
    .detail = nadie sin protección respiratoria donde pueda llegar polvo o niebla, y nadie en la línea del disco

control-mask = la mascarilla, lo último
    .detail = que ajuste a quien la lleva, sobre piel afeitada si es ajustada, puesta hasta que el sitio esté limpio

controls-open = más eficaz que la mascarilla, aún pendiente: { $what }
    .detail = Hágalo o anote por qué no: cada medida quita polvo que tendría que retener la mascarilla.

no-dust-control = corte en seco sin nada que retenga el polvo
    .detail = Control del polvo: ninguno; se pide al menos uno de dos. Use agua en una máquina apta para ella, o una caperuza de aspiración con un extractor de potencia suficiente para el disco, o encargue el corte con agua a un taller. En seco y sin caperuza de aspiración no está en ninguna fila de la tabla; ninguna protección respiratoria lo compensa, y alcanza a todos los que están cerca.

water-flow = Agua en el borde del disco antes de tocar la piedra y hasta salir de ella
    .detail = Se calcula con { $flow } litros por minuto. La regla no da ninguna cifra para amoladoras; para tronzadoras portátiles se aconsejan { $advised } litros por minuto. Agua en el borde del disco desde antes de que toque la piedra hasta que haya salido de ella. Si se ve polvo o vapor: pare, dirija el agua al borde del disco, destape la boquilla; más de { $advised } litros por minuto no retienen más polvo.

water-too-little = { $flow } litros por minuto es menos de lo aconsejado para una tronzadora portátil
    .detail = { $flow } litros por minuto, { $advised } aconsejados para tronzadoras portátiles: con menos agua se retiene menos polvo. Dirija el agua al borde del disco, destape la boquilla, llene el depósito.

shroud-airflow-unknown = no se conoce el caudal de aire del extractor
    .detail = Caudal de aire no conocido; un disco de { $disc } pide al menos { $asks } m³/h. Sin ese dato no está demostrado que la caperuza de aspiración retenga el polvo: lea la placa del extractor e indique dust.airflow, o corte con agua.

shroud-airflow-too-small = el extractor mueve { $has }, el disco pide { $asks }
    .detail = Caudal de aire { $has }, mínimo { $asks } m³/h para un disco de { $disc }. Use un extractor más potente, un disco más pequeño, o corte con agua.

not-in-table-indoors = no está en la tabla de la autoridad: hay que evaluar la exposición
    .detail = Esta máquina, esta medida, en interior, { $hours } h ese día: ninguna fila. Nadie ha publicado qué protección respiratoria basta. Para el exterior hay filas con agua y con caperuza de aspiración: cambie el lugar o la medida por uno que figure en la tabla, o haga evaluar la exposición por una persona competente.

not-in-table = no está en la tabla de la autoridad: hay que evaluar la exposición
    .detail = Esta máquina, esta medida, en exterior, { $hours } h ese día: ninguna fila. Nadie ha publicado qué protección respiratoria basta. Cambie la medida por una que figure en la tabla para esta máquina, o haga evaluar la exposición por una persona competente.

indoors-exhaust = en interior: además hay que extraer el aire
    .detail = Lugar: interior. Corte al aire libre si se puede. Si no, extraiga al exterior el polvo visible, cierre el recinto y no deje entrar a nadie sin protección respiratoria.

marble-veins = las vetas del mármol pueden tener mucha más sílice que la piedra
    .detail = El mármol en conjunto tiene como máximo { $share } % de sílice; sus vetas pueden tener mucha más. Trate un corte a lo largo o a través de una veta como un corte en piedra rica en sílice.

stone-kind-unknown = { $stone }: no se sabe con qué está ligada
    .detail = La piedra ligada con resina y con 1 % de sílice o más cuenta como piedra aglomerada. Pida la ficha técnica e indique stone.binder. Si lo es: { $rule }

silica-unknown = { $stone }: pregunte por su parte de sílice
    .detail = Sílice { $share } % como máximo, según lo indicado: casi ninguna piedra está libre de ella. Mientras una ficha técnica no diga que esta lo está, trátela como rica en sílice (más de { $threshold } %) e indique stone.silica.

engineered-stone-banned = aquí está prohibido cortar piedra aglomerada
    .detail = { $rule }

engineered-stone-dry = piedra aglomerada sin agua
    .detail = Métodos húmedos: ninguno; se piden. { $rule }

engineered-stone-powered-respirator = piedra aglomerada sin protección respiratoria con ventilador
    .detail = Protección respiratoria con ventilador: ninguna disponible; se pide. { $rule }

engineered-stone = piedra aglomerada: primero se aplican reglas más estrictas
    .detail = { $rule } Dejarlo en manos de un taller autorizado es la opción segura.

high-silica-stone = { $stone }: puede tener hasta { $high } % de sílice
    .detail = Sílice de { $low } a { $high } % de la piedra; por encima de { $threshold } % se considera rica (valor de California, usado aquí en todas partes). Su polvo deja cicatrices en los pulmones para siempre: control del polvo y protección respiratoria desde el primer contacto hasta el final de la limpieza, y nadie cerca sin protección respiratoria.

california-silica-rule = trabajo de alta exposición: con agua, en zona regulada, la mascarilla más eficaz
    .detail = Sílice hasta { $high } %. { $rule }

silica-rich-stone-dry = trabajo de alta exposición sin agua: California pide métodos húmedos
    .detail = Sílice hasta { $high } %. { $rule }

sparks-into-extractor = acero en la piedra: las chispas entran en el extractor
    .detail = Acero que se puede cortar con un extractor en marcha: ninguno. Las chispas prenden fuego a su bolsa. Quite antes el acero, mantenga los cortes lejos de él o corte con agua.

sparks-from-steel = el acero en la piedra lanza chispas
    .detail = Nada que arda a menos de { $clear } (criterio propio), un cubo lleno de agua y un extintor a mano, un disco que su fabricante admita para acero, sin apretar. Una hora después del último corte mire otra vez si hay humo.

steel-not-known = acero en la piedra: mire, ¿no hay o dónde?
    .detail = A menudo hay varillas y malla pegadas en el dorso de la tabla. Mire el dorso, pase un imán por cada línea de corte. En el archivo del trabajo: stone.steel ("none" o "some").

supply-unprotected = agua con máquina de red sin diferencial, GFCI ni 110 V con punto medio a tierra
    .detail = Protección: ninguna conocida; se pide: interruptor diferencial de { $rcd } o menos, GFCI clase A ({ $gfci }) o 110 V con el punto medio a tierra ({ $volts } a tierra). Aquí: { $rule }{ $borrowed }. Con agua de por medio, sin protección no se corta.

supply-unprotected-dry = máquina de red sin diferencial, GFCI ni 110 V con punto medio a tierra
    .detail = Protección: ninguna conocida; se pide: interruptor diferencial de { $rcd } o menos, GFCI clase A ({ $gfci }) o 110 V con el punto medio a tierra ({ $volts } a tierra). Aquí: { $rule }{ $borrowed }. Ponga uno en la línea de alimentación y pulse antes de nada su botón de prueba.

wet-mains = Botón de prueba (diferencial, GFCI), si lo hay, pulsado: se dispara. Enchufes secos y lejos del suelo
    .detail = Botón de prueba pulsado antes del primer corte, y la protección tiene que dispararse. Enchufes y conexiones levantados del suelo y secos, cables colgados en bucle para que el agua gotee antes del enchufe, manos secas en el enchufe y el interruptor. Si se dispara al cortar: pare, averigüe la causa, nunca lo mantenga conectado a la fuerza.

engine-indoors = motor de combustión en interior: monóxido de carbono
    .detail = Motores en interior o en un patio cerrado: ninguno permitido. El gas de escape mata sin avisar; corte al aire libre, o use una máquina de batería, de aire o de red.

engine-fumes = motor de combustión: gases de escape y combustible
    .detail = Al aire libre y con aire por todos los lados, nunca en una zanja, una carpa o un rincón entre muros. El escape, lejos de la cara del operario y de la del ayudante. Reposte con el motor frío y arranque en otro sitio.

water-on-mains-unrated = agua en una máquina de red que no está hecha para ella: descarga eléctrica
    .detail = Aptitud para el agua: ninguna; se pide: declarada por el fabricante, para corte con agua. Las advertencias normalizadas prohíben el agua en una amoladora de red corriente; ni un interruptor diferencial ni un GFCI la convierten en máquina para agua. Use una máquina apta para corte con agua, o una caperuza de aspiración y un extractor.

water-not-rated = agua en una máquina que no está hecha para ella
    .detail = Aptitud para el agua: ninguna; se pide: declarada por el fabricante, para corte con agua. Use una máquina cuyo fabricante admita el agua, o una caperuza de aspiración y un extractor.

battery-wet = Batería fuera antes de tocar el disco, baterías siempre secas
    .detail = Las baterías se cambian lejos del lodo y con las manos secas; una batería que se mojó por dentro no se vuelve a usar ni a cargar. La batería se saca antes de examinar o cambiar el disco.

air-hose = Manguera de aire entera, acoplamientos asegurados, sin agua en el aire
    .detail = La velocidad indicada de { $rpm } r/min vale solo con la presión de la placa: más presión, más velocidad. Regulador y acoplamientos de seguridad montados, escape de aire dirigido lejos del polvo y de las manos, manguera vaciada antes de tocar el disco. Nunca sople el polvo ni limpie la ropa con el aire.

respirator-class = lea la clase marcada en el equipo: { $mask }
    .detail = Su factor va de { $least } a { $most } según la clase ({ $marks }); se pide { $apf } o más{ $borrowed }. Cuenta como { $least } hasta que la marca esté indicada en dust.respirator: use un equipo marcado para { $apf } o más.

respirator-not-in-scheme = { $mask }: sin factor en el sistema de esta región
    .detail = Protección respiratoria: { $mask }; factor 0 aquí, se pide uno{ $borrowed }. Los factores de dos sistemas no se mezclan nunca; una mascarilla sin fila en este cuenta como ninguna. Primero los pasos pendientes del orden de las medidas; después una que esté aprobada donde usted trabaja.

respirator-unlisted = { $mask }: sin factor en el sistema de esta región
    .detail = Factor 0; la tabla no pide ninguno{ $borrowed }. Puede que retenga el polvo, pero aquí ninguna regla la cuenta: pida una que esté aprobada donde usted trabaja.

respirator-missing = no hay protección respiratoria disponible
    .detail = Protección respiratoria: ninguna; se pide factor { $apf } o más{ $borrowed }. Primero los pasos pendientes del orden de las medidas; después consiga una que ajuste a quien la lleva e indique dust.respirator.

respirator-missing-unassessed = no hay protección respiratoria disponible y nada establece cuál basta
    .detail = Protección respiratoria: ninguna; ninguna publicación establece el factor: hay que evaluar la exposición. Primero los pasos pendientes del orden de las medidas; después haga evaluar la exposición, consiga la protección respiratoria que resulte e indique dust.respirator.

respirator-none-asked = no hay protección respiratoria disponible; la tabla no la pide aquí
    .detail = Protección respiratoria: ninguna; la tabla no pide ninguna{ $borrowed }. La tabla vale solo mientras su medida funcione sin fallos, y el polvo dañino es demasiado fino para verse: tenga una que ajuste, y llévela mientras gira el disco y para limpiar.

respirator-not-fit-tested = haga probar el ajuste de la mascarilla en quien la lleva
    .detail = Protección respiratoria: { $mask }; su factor solo cuenta tras una prueba de ajuste y sobre piel afeitada; hasta entonces no se puede contar con ella. Haga la prueba de ajuste, o use una capucha con ventilador.

respirator-clean-shaven = Afeitado, estanqueidad de la mascarilla comprobada cada vez
    .detail = Protección respiratoria: { $mask }; con prueba de ajuste, y eso vale solo sobre piel afeitada: la barba de un día cuenta como barba. Compruebe la estanqueidad cada vez que se la ponga; otra talla u otra marca, u otra cara, exige una prueba nueva.

respirator-below-required = { $mask }: aquí cuenta como factor { $has }, se pide { $apf }
    .detail = Protección respiratoria: { $mask }; factor { $has }, se pide { $apf } o más{ $borrowed }. Primero los pasos pendientes del orden de las medidas: una medida más eficaz va antes que una mascarilla más eficaz. Después, una protección respiratoria con factor { $apf } o más; los factores de dos sistemas no se mezclan nunca.

nuisance-mask = una mascarilla sin clase no es protección respiratoria
    .detail = Factor 0: no lleva clase, y el polvo fino la atraviesa y se cuela por los bordes. No cuenta en absoluto como protección respiratoria. Consiga una con una clase que cuente aquí e indique dust.respirator.

asbestos-not-tested = { $stone }: puede contener minerales de amianto, no cortar antes de analizarla
    .detail = Amianto que se puede cortar: ninguno. Antes del primer corte haga analizar en un laboratorio una esquirla de esta tabla, o consiga el análisis de la propia cantera, e indique stone.asbestos, stone.report y stone.date. Sin un resultado claro, es trabajo para personal autorizado.

asbestos-declaration = { $stone }: pida la declaración de la cantera sobre minerales de amianto
    .detail = { $stone }: una de las rocas que pueden contenerlos. Pida al vendedor la declaración de la cantera e indique stone.asbestos, stone.report y stone.date.

binder-unknown = { $stone }: no se sabe con qué está ligada, así que cuenta como piedra aglomerada
    .detail = Una piedra con 1 % de sílice o más cuyo ligante nadie ha dicho cuenta como aglomerada mientras stone.binder no diga otra cosa. { $rule }

resin-in-fired-slab = { $stone }: ¿está libre de resina?
    .detail = El gres porcelánico y la piedra sinterizada quedan fuera de la prohibición solo si no llevan resina. Pida la ficha técnica e indique stone.binder. { $rule }

supply-unprotected-outdoors = máquina de red al aire libre sin diferencial, GFCI ni 110 V con punto medio a tierra
    .detail = Protección: ninguna conocida; se pide: interruptor diferencial de { $rcd } o menos, GFCI clase A ({ $gfci }) o 110 V con el punto medio a tierra ({ $volts } a tierra). Aquí: { $rule }{ $borrowed }. Al aire libre, el suelo mojado y los cables dañados hacen mortal un fallo: ponga uno en la línea, pulse su botón de prueba e indique machine.protected.

speed-assumed = lea la velocidad en la placa o el disco: { $what }, supuesto
    .detail = Supuesto: { $what }. Lea la placa de la máquina y la marca del disco, e indique machine.rpm y disc.max_rpm: la comprobación del disco con la máquina vale solo para los valores reales.

disc-larger-than-machine = { $disc }: { $diameter }, la máquina está hecha para { $largest } como máximo
    .detail = Diámetro { $diameter }, disco mayor de la máquina y de su caperuza protectora { $largest }. Use un disco más pequeño, o una máquina hecha para este; nunca quite la caperuza protectora.

respirator-filter = aquí no basta un N95: se pide un filtro de la serie 100 o HEPA
    .detail = Protección respiratoria: N95; se pide: factor 10 o más con filtro de la serie 100 o HEPA. Consiga una media máscara con filtros P100 o mejor, e indique dust.respirator.

no-water-flow = método con agua sin caudal: eso es cortar en seco
    .detail = Agua: 0 litros por minuto. En seco y sin caperuza de aspiración no está en ninguna fila de la tabla, y ninguna protección respiratoria lo compensa. Lleve agua al borde del disco e indique dust.water, o use una caperuza de aspiración y un extractor.

speed-assumed-of = { $what } { $speed } r/min

bystanders = Nadie más cerca: niños, vecinos y animales lejos y avisados
    .detail = El polvo, la niebla y el ruido llegan más allá del lugar de corte, y un trozo de disco roto vuela decenas de metros. Cierre el lugar, avise a los vecinos cuando empiece, y pare el disco si entra alguien sin mascarilla, gafas cerradas y protección auditiva.

windows-and-intakes = Ventanas, puertas y tomas de aire cerradas, ventilación parada
    .detail = El polvo dañino es demasiado fino para verse y llega lejos. Cierre ventanas y puertas de la casa y pida lo mismo a los vecinos; pare la ventilación, la bomba de calor y el aire acondicionado cerca del lugar; corte con el viento soplando desde ellos.

working-height = Piedra entre cadera y codo, suelo firme, nada de escaleras
    .detail = Caballetes a la altura de trabajo y suelo llano bajo los dos pies. Nunca corte desde una escalera o un escalón, por encima del hombro, ni de rodillas más abajo que la piedra: un retroceso lo tira y la máquina va detrás.

eyes = Gafas cerradas, pantalla facial por encima, lavaojos a mano
    .detail = Las gafas normales dejan entrar esquirlas y arenilla por debajo y por el lado. Gafas cerradas para todos los que están cerca; la pantalla sola no basta. Arenilla en el ojo: enjuague, nunca frote; una esquirla que se queda es para el médico.

side-handle = Empuñadura lateral y caperuza puestas, dos manos, interruptor nunca bloqueado
    .detail = Una mano no aguanta un retroceso. La caperuza protectora está entre el disco y la cara, y ningún corte vale quitarla. Un interruptor bloqueado mantiene el disco girando después de caerse la máquina{ $power ->
            [mains] ; tras un corte de luz, apague antes de volver a enchufar
           *[other] {""}
        }.

leads = Cable y mangueras detrás, enteros, desenrollados, lejos del disco y de los pies
    .detail = Por encima del hombro y detrás, nunca por delante del corte ni del paso. Un cable dañado no se usa. Conexiones secas y levantadas del suelo; un enrollador se desenrolla, o se calienta.

hoses = Mangueras detrás, enteras, lejos del disco y de los pies
    .detail = Por encima del hombro y detrás, nunca por delante del corte ni del paso. Una manguera que pierde o está doblada no se usa.

leaning-slabs = Tablas de canto atadas o en un caballete en A; una cada vez, nadie donde puedan caer
    .detail = En Gran Bretaña seis personas murieron en cinco años por tablas que cayeron al almacenarlas o moverlas. Caballete en A en suelo llano, pies separados de la pared, atadas; nunca suelte la atadura de un paquete con alguien delante; nadie entre dos tablas. La que empieza a caer se deja: corra, nunca la sujete.

not-for-everyone = No es para: embarazadas, enfermos de pulmón, corazón, manos o espalda, menores, cansados o bebidos
    .detail = Enfermedad de pulmón, dedos blancos, corazón débil, un marcapasos cuyo fabricante avisa contra las máquinas, espalda dañada, embarazo: pregunte antes a un médico. Ningún menor, nadie cansado, nadie tras tomar alcohol o drogas o medicinas que frenan.

first-aid = Primeros auxilios listos: venda compresiva, lavaojos, teléfono, dirección escrita
    .detail = Una arteria cortada mata en minutos: apriete fuerte la herida, venda compresiva o torniquete, llame. Corriente fuera antes de tocar a un electrocutado. Aplastado bajo la piedra: llame primero, levante solo con un equipo. Quién sabe primeros auxilios se dice antes de empezar.

moment-before = Antes

moment-cutting = Al cortar

moment-moving = Al mover la piedra

moment-after = Después

settled-asbestos = Analizada, sin minerales de amianto: { $report }, { $date }

settled-controlled = Piedra con { $share } de sílice cortada con control, como pide la regla

settled-noise = { $level } al cortar, { $under } dB(A) a lo largo del día bajo el protector, límite { $limit } dB(A)

settled-mask = { $mask }: cuenta como factor { $has }, se pide { $apf }

settled-check-call = Solo, con llamada acordada: { $who }

settled-supply = Alimentación de red protegida

settled-speed = { $disc }: marcado { $marked } r/min, máquina { $machine }
