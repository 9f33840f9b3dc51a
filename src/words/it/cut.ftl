# Findings of cuts and pieces: a line, and in full.

waste-not-freed = Tagli che non si incontrano lasciano sfrido sul piano
    .detail = Parti dello sfrido ancora attaccate dopo l'ultimo taglio: { $parts }, la più grande di { $area }, a circa { $along } lungo AB e { $up } in su dall'angolo A. È attaccato in: { $places }. Non manca nessun taglio, ma quelli accanto non incontrano né l'altro né il bordo della pietra. Staccarlo lì con un foro di carotaggio, o con un altro affondo accanto all'ultimo, dalla parte dello sfrido; mai romperlo via.

said-weight = Il peso del venditore e il peso calcolato non coincidono
    .detail = Dichiarati { $said }, calcolati { $computed }: { $off } %, più del { $tolerance }. Pietra, misure o spessore: uno di questi dati è sbagliato. Preparare il sollevamento con il valore più pesante, e pesare la lastra se è possibile.

fissure-in-waste = "{ $flaw }" attraversa { $pieces }: lì può rompersi
    .detail = Prima della prima passata, appoggi su entrambi i lati sotto { $pieces }, così ogni parte poggia da sé se si rompe. Mai sollevare un pezzo di piatto o da un capo attraverso di essa: prima stringere legni dritti sopra, sulle due facce, oppure lasciarlo rompere e portar via le parti.{ $crossed ->
            [yes] {" "}Dove il taglio la incrocia (tagli: { $cuts }): passi piccoli e senza pressione.
           *[no] {""}
        }

waste-needs-support = Si stacca uno sfrido troppo pesante per tenerlo a mano
    .detail = Sfrido (taglio che lo libera) e suo peso massimo: { $pieces }. Reggere ogni pezzo sopra { $limit } su supporti suoi, a livello con la pietra da tenere, da tutte e due le parti del taglio, prima della prima passata. Un pezzo che cede chiude il taglio sul disco.

curve-waste-heavy = Lo sfrido di una curva cade in un pezzo troppo pesante da tenere
    .detail = Sfrido (taglio che lo libera) e suo peso massimo: { $pieces }. È più di { $limit } (passes.waste_piece), e nessun taglio diritto lontano dalla pietra da tenere lo divide ancora. Reggerlo da sotto per tutta la sua lunghezza prima dell'ultimo giro; nessuno lo tiene, nessun piede sotto.

stopped-cut-too-short = Nessun disco dell'attrezzatura trova posto: { $places }
    .detail = Fra due punti di arresto ci sono { $room }; «{ $disc }» taglia per { $length } di lunghezza in superficie quando ha attraversato tutta la pietra. Con la stessa flangia il disco più piccolo che la attraversa, di { $least } di diametro, taglia per { $shortest } di lunghezza; il più grande che vi trova posto ha { $most } di diametro. { $verdict } Una corona diamantata di circa { $bit } fa questo taglio con una fila di fori.{ $waste }

sawn-with-another = Il bordo { $edge } si taglia insieme al bordo allineato con esso
    .detail = Il taglio di rifilo del bordo allineato con esso fa anche il bordo { $edge }, e vi lascia { $left } invece di { $allowance }. Togliere la differenza smerigliando, { $over }, oppure dare ai due bordi la stessa finitura.

disc-too-small = Il disco non attraversa la pietra
    .detail = «{ $disc }» taglia al massimo { $deepest } di profondità (diametro { $diameter }, ingombro { $obstruction }, piastra { $plate }); servono { $needed }: mancano { $short }. Con la stessa flangia serve un disco di almeno { $least }, su una macchina fatta per quella misura.

no-room-for-guide = La guida non trova posto sulla lastra: { $places }
    .detail = Il bordo della guida è a { $offset } dal taglio; la lastra è più stretta di così da tutte e due le parti del taglio, che perciò non è previsto. Accostare alla lastra una tavola dello spessore della pietra ({ $thick }), facce a filo, serrare tutte e due sullo stesso banco e appoggiare la guida sulla tavola. Oppure usare una dima con uno scostamento minore (guide.offset).{ $waste }

core-holes-close = Fori del taglio { $cut }: si sovrappongono o lasciano una parete sottile
    .detail = I due più vicini distano { $apart } da centro a centro, corona di { $bit } di diametro: una corona che comincia accanto a un foro vi scivola dentro, e meno di { $web } di pietra fra due fori si spaccano via. Tenere la corona in una dima stretta con morsetti sopra ogni centro (una tavola con un foro della misura della corona), e premere poco.

rail-too-narrow = L'apertura { $cutout }{ $called } lascia una fascia troppo stretta in { $edge }
    .detail = L'apertura { $cutout } lascia questo: { $rail } di { $width }{ $tap }, minimo { $least }; spostare l'apertura di { $by } { $away }. Quella fascia corre lungo { $edge } del piano.

rails-add-up = Apertura { $cutout }{ $called }: le fasce ai due lati sono troppo strette insieme
    .detail = { $rail } di { $width }{ $tap }, minimo { $least }; { $other } di { $other_width }{ $other_tap }, minimo { $other_least }. Insieme { $sum }, ne servono { $needed }: spostare l'apertura non aiuta nessuna delle due. A cedere è l'apertura, più piccola di { $short } in quel verso, o il piano, più grande di altrettanto; altrimenti irrigidire le due fasce prima di muovere la pietra.

rail-too-narrow-between = Le aperture { $first }{ $called_first } e { $second }{ $called_second } lasciano fra loro una fascia troppo stretta
    .detail = Le aperture { $first } e { $second } lasciano fra loro una fascia di { $width }, minimo { $least }; distanziarle di altri { $by }.

hangs-on-a-strip = Restano solo { $about } di pietra fra l'apertura { $cutout } e il bordo
    .detail = Quella striscia è larga { $width }, meno dello spessore della pietra ({ $thick }). Si rompe nel taglio o nel sollevamento. Spostare o cambiare ciò che la lascia, fino ad almeno { $least }.

hangs-on-a-strip-between = Restano solo { $about } di pietra fra le aperture { $first } e { $second }
    .detail = Quella striscia è larga { $width }, meno dello spessore della pietra ({ $thick }). Si rompe nel taglio o nel sollevamento. Spostare o cambiare ciò che la lascia, fino ad almeno { $least }.

hangs-on-a-strip-corner = Restano solo { $about } di pietra dietro l'angolo interno in { $edge }
    .detail = Quella striscia è larga { $width }, meno dello spessore della pietra ({ $thick }). Si rompe nel taglio o nel sollevamento. Spostare o cambiare ciò che la lascia, fino ad almeno { $least }.

curve-without-arm = La curva ({ $part }) si traccia dalla sua corda, senza la dima per cerchi
    .detail = Il braccio dovrebbe essere di { $arm }; la dima va da { $shortest } a { $longest }: il braccio è { $which }, di { $by }. Tracciare la corda e appoggiare la guida diritta ai due segni di ogni stazione; oppure fare un braccio adatto.

arm-out-of-reach = La dima per cerchi non si può regolare per un cerchio intero ({ $part })
    .detail = Il braccio dovrebbe essere di { $arm }; la dima va da { $shortest } a { $longest }: il braccio è { $which }, di { $by }. Un cerchio intero non ha una corda da cui tracciarlo. Fare un braccio adatto, o scegliere un altro raggio.

corner-ground-by-hand = La curva ({ $part }) si smeriglia a mano
    .detail = I tagli di rifilo accanto e la loro larghezza di taglio non lasciano pietra per un affondo. Segnare la curva sulla pietra e smerigliarla a mano dopo l'ultimo taglio.

inside-corner-radius = { $part }: il raggio sarà di { $left }
    .detail = Raggio richiesto: { $given }{ $sharp }. In un angolo interno con meno di { $least } di raggio comincia una crepa. I tagli previsti lasciano lì un raggio di { $left }, quello del foro di carotaggio.{ $still }

inside-corner-nearest-radius = { $part }: il raggio sarà di { $left }
    .detail = Raggio richiesto: { $given }. La corona diamantata più vicina lascia { $left }, cioè { $ground } di pietra nell'angolo. Toglierli smerigliando a mano, o lasciarli.

much-to-grind = { $part }: resta molto da smerigliare
    .detail = «{ $disc }» taglia per { $length } di lunghezza in superficie; dentro un raggio di { $radius } deve stare a { $face } dal centro, e lascia { $left } accanto al mezzo di ogni intaglio, più di { $much }. Un disco più piccolo o una corona diamantata di { $bit } o meno lascia meno.

no-disc-for-hollow = { $places }: nessun disco dell'attrezzatura può tagliare questa curva interna
    .detail = «{ $disc }» taglia per { $length } di lunghezza in superficie; la curva interna ha un raggio di { $radius }, cioè { $across } da parte a parte. Con la stessa flangia il disco più piccolo che attraversa la pietra, di { $least } di diametro, taglia per { $shortest } di lunghezza; il più grande che vi trova posto ha { $most } di diametro. { $verdict }{ $either } Una corona diamantata di { $bit } la fa con un solo foro, una più piccola con una catena di fori.{ $waste }

inside-corner-needs-core-bit = Serve un foro di carotaggio: { $places }
    .detail = { $kit } In un angolo interno vivo comincia una crepa: serve un raggio di almeno { $radius }, quindi una corona diamantata di almeno { $least } di diametro, e il foro va fatto prima dei tagli che si fermano lì. Indicarla nel file di lavoro ([[core_bit]]).{ $waste }

# One piece of a list: its name, the cut that frees it, its weight.
piece-of-cut = { $piece } ({ $cut }): { $mass }

# A piece of the boundary of the top, or of an opening.
part-edge = bordo { $name }
part-edge-opening = bordo { $name } dell'apertura { $cutout }
part-corner = angolo { $name }
part-corner-opening = angolo { $name } dell'apertura { $cutout }
part-corners = angoli { $name }
part-corners-opening = angoli { $name } dell'apertura { $cutout }
part-all-round = tutto il cerchio
part-all-round-opening = tutto il cerchio dell'apertura { $cutout }

# What stays on the top for want of a cut, behind the cause.
waste-stays = {" "}Per questo resta sfrido attaccato al piano, parti: { $parts }, la più grande di { $area }, a circa { $along } lungo AB e { $up } in su dall'angolo A. Il lavoro non si può finire con questa scheda.

# What a job calls a cutout, behind its number.
cutout-called = {" "}({ $name })

piece-held-below = Nessuna corona separa sotto il pezzo dell'apertura { $cutout }{ $called }
    .detail = Il disco è tondo: sotto, ogni taglio finisce { $run_out } prima della sua fine in superficie, e lì il pezzo è ancora attaccato. Fori accanto alle estremità, fatti dall'alto prima di tagliare, lo separano; nessuna corona disponibile ci trova posto, perciò non sono né segnati né nei minuti. Portarne una e scriverla come [[core_bit]], o affidare l'apertura a un'officina. Nessuno lavora sotto, e il pezzo non si rompe mai via: la crepa corre nel piano.

opening-narrower-than-kerf = Il taglio non ha posto nell'apertura { $cutout }{ $called }
    .detail = Segato da un lato, un taglio di { $kerf } entra dall'altro nella pietra da tenere. Fare l'apertura più larga del taglio, usare un disco più sottile o affidarla a un'officina.{ $waste }
