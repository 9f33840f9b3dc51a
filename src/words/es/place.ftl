# Findings of placement: a line, and in full.

measure-again = Mida otra vez: lo que sobra está dentro del error de la cinta
    .detail = La encimera cabe y sobran { $spare }; con una cinta con un error de ±{ $tape } hacen falta al menos { $least } para estar seguro. Mida la tabla otra vez, o haga la encimera más pequeña.

edges-undescribed = Mire { $count ->
        [one] el borde
       *[other] los bordes
    } { $edges } de la tabla: la encimera { $count ->
        [one] lo usa como está
       *[other] los usa como están
    }
    .detail = Nadie ha dicho cómo { $count ->
        [one] es el borde { $edges } de la tabla. Se toma por serrado
       *[other] son los bordes { $edges } de la tabla. Se toman por serrados
    } y ahí no se hace ningún corte. Mire antes de empezar: recto a lo largo de una regla, a escuadra con la cara, limpio, sin desconchones ni grietas que entren. Si es así, escriba { $sawn } bajo [slab]. Si no, escriba ahí { $rough } y planifique otra vez: eso hace { $cuts ->
        [one] un corte
       *[other] { $cuts } cortes
    } más como mínimo.

turn-saves = Un poco girada, la misma encimera lleva un { $saved } menos de serrado
    .detail = Girada { $turn } respecto a la tabla, sin ningún borde a lo largo de otro, se sierra un { $saved } menos de superficie que en el lugar elegido aquí. Es más difícil de trazar. Para tenerlo, escriba bajo [place]: { $to } y { $at }.

# Why there is no place, in one line.

place-none-at-any-turn = En la tabla no hay sitio para la encimera en ningún giro, ni para una más pequeña en { $within } todo alrededor.
place-none-found = No se encontró sitio para la encimera en la tabla. Que no lo haya en ningún giro no está demostrado: pruebe uno en [place].
place-at-fault = El sitio de [place] es la causa: la encimera no puede estar ahí. Sin at ni turn se encuentra un sitio.
place-not-here = La encimera no puede estar donde está puesta.
place-none-begun = De lo que queda de la tabla ya no sale la encimera pedida.

# What stands against a position.

place-outside = la encimera con su demasía sobresale { $by } de la tabla en { $part }; hágala ahí al menos { $by } más pequeña, o tome una tabla mayor
place-outside-within-tape = la encimera con su demasía sobresale { $by } de la tabla en { $part }; eso está dentro del error del metro ({ $tape }): mida otra vez
place-on-flaw = la encimera queda { $by } demasiado cerca de "{ $flaw }" (distancia que se guarda { $clear }); muévala, o hágala más pequeña
place-near-rough-edge = la encimera queda { $by } demasiado cerca del borde { $edge } de la tabla, que es basto (slab.rough_margin { $margin }): ahí la piedra está desconchada, y agrietada más adentro; muévala, o hágala más pequeña
place-round-near-edge = la encimera queda { $by } demasiado cerca del borde { $edge } de la tabla: una encimera redonda pide una tira de { $least } todo alrededor para serrarla; muévala, o hágala más pequeña
place-along-flaw = el corte de borde { $part } iría por "{ $flaw }" a lo largo de { $long }, dentro de la distancia que se guarda { $clear }: la piedra puede romperse ahí; mueva o gire la encimera
place-narrow-strip = el borde { $edge } dejaría una tira de { $width } para serrar, mínimo { $least }; mueva la encimera para que ese borde quede en el de la tabla o más adentro
place-factory-bow = el borde { $edge } es curvo y está marcado factory, pero un borde curvo siempre se corta; dele otro acabado
place-not-on-factory-edge = el borde { $edge } está marcado factory pero no está en un borde de fábrica de la tabla; póngalo en uno, o dele otro acabado
place-no-sawn-outline = las demasías no dan la vuelta al contorno de la encimera: un borde es demasiado corto o un arco demasiado pequeño para ellas; cambie ahí el acabado, o la forma
place-no-sawn-cutout = la demasía no deja nada que serrar aquí: { $what }; el hueco es demasiado pequeño, o un arco suyo; hágalo mayor, o cambie su acabado
place-vein = el largo de la encimera forma { $angle } con la veta; ponga top.vein = "any" si eso no importa

# Sizes that fit, by the box round the finished top.

place-fits-smaller = con la misma forma cabe { $long } × { $deep }
place-fits-shorter = solo con menos largo cabe { $long } × { $deep }
place-fits-narrower = solo con menos fondo cabe { $long } × { $deep }
