# Findings of handling: a line, and in full.

crush-and-falls = { $stone }: la pietra schiaccia ciò su cui cade
    .detail = I suoi { $mass } premono con { $weight }. Di costa la pietra poggia su { $thickness }: una spinta di { $push } sul bordo superiore la ribalta, e inclinata di più di { $tips } cade da sola, su una striscia larga { $shadow } da ciascun lato: lì non sta nessuno, e nessuno prova ad afferrarla. Legarla a qualcosa che tiene prima che chiunque la lasci, una pietra alla volta; ciò a cui si appoggia deve impedirle di cadere in avanti e impedire che il piede scivoli via. Inclinata di { $leans }, il suo bordo superiore tira sulla legatura con { $pulls }, in quest'ordine; la legatura e ciò a cui è fissata devono reggere più volte tanto. Posarla su due listelli, mai sul pavimento: niente dita delle mani o dei piedi e niente bambini nello spazio in mezzo.

way-in-blocked = il piano non entra: { $place }
    .detail = Di costa mancano { $edge_short } ({ $edge_measure }: servono { $edge_needs }, ci sono { $edge_has }). In piedi mancano { $upright_short } ({ $upright_measure }: servono { $upright_needs }, ci sono { $upright_has }). Che cosa aiuta, uno di questi rimedi, o tutti e due dove a una posizione mancano due misure: { $remedies }. Nemmeno di piatto passa.

way-in-upright = il piano passa solo in piedi: { $place }
    .detail = Di costa mancano { $edge_short } ({ $edge_measure }: servono { $edge_needs }, ci sono { $edge_has }). In piedi passa con { $spare } di margine. Che cosa aiuta, uno di questi rimedi, o tutti e due dove a una posizione mancano due misure: { $remedies }. Per metterlo in piedi sul lato corto servono { $stand_up } di altezza libera: farlo prima di questo passaggio, con il mezzo e le persone che il suo peso richiede, e mai sulle scale.

way-in-flat-only = il piano passa solo di piatto, cosa sconsigliata: { $place }
    .detail = Di costa mancano { $edge_short } ({ $edge_measure }: servono { $edge_needs }, ci sono { $edge_has }). In piedi mancano { $upright_short } ({ $upright_measure }: servono { $upright_needs }, ci sono { $upright_has }). Di piatto passa con { $spare } di margine. Che cosa aiuta, uno di questi rimedi, o tutti e due dove a una posizione mancano due misure: { $remedies }. Di piatto può spezzarsi di colpo sotto il proprio peso: vedere la tabella della flessione, e portarlo di piatto solo su un pannello intero, altrimenti non portarlo affatto.

way-in-tight = passaggio stretto: { $place }
    .detail = Portato { $pose } il piano passa con soli { $spare } di margine. Misurare di nuovo nel punto più stretto, e far passare prima della pietra un listello della lunghezza della pietra e una tavola della sua altezza.

way-in-slab = tagliare prima di portare dentro: la lastra intera si ferma qui: { $place }
    .detail = Di costa mancano { $edge_short } ({ $edge_measure }: servono { $edge_needs }, ci sono { $edge_has }). In piedi mancano { $upright_short } ({ $upright_measure }: servono { $upright_needs }, ci sono { $upright_has }). Che cosa aiuta, uno di questi rimedi, o tutti e due dove a una posizione mancano due misure: { $remedies }. Il piano finito passa: scaricare e tagliare da questa parte del passaggio.

way-in-slab-flat = tagliare prima di portare dentro: la lastra intera passa solo di piatto: { $place }
    .detail = Di costa mancano { $edge_short } ({ $edge_measure }: servono { $edge_needs }, ci sono { $edge_has }). In piedi mancano { $upright_short } ({ $upright_measure }: servono { $upright_needs }, ci sono { $upright_has }). Di piatto la lastra passa con { $spare } di margine, e può spezzarsi di colpo sotto il proprio peso. Che cosa aiuta, uno di questi rimedi, o tutti e due dove a una posizione mancano due misure: { $remedies }. Il piano finito passa: scaricare e tagliare da questa parte del passaggio.

tips-out-of-hands = { $stone }: la pietra si ribalta con le persone in questi posti
    .detail = Il punto di equilibrio è { $off } a lato di ciò che questi posti possono tenere. Mettere persone da tutte e due le parti di quel punto.

lifter-off-the-edge = { $stone }: la persona { $lifter } non ha un bordo da tenere
    .detail = Il posto indicato è a { $away } dal bordo, più di { $most }. Indicare posti sul bordo, nel sistema di coordinate proprio del piano di lavoro.

lifter-at-cutout = { $stone }: la persona { $lifter } solleva accanto a un'apertura
    .detail = Il posto è a { $away } da un'apertura, meno della larghezza di una mano, { $least }. Sollevare dove la pietra è piena, mai per una fascia stretta.

carry-too-far = { $way }: troppo lontano per portare senza una sosta
    .detail = I valori indicativi valgono per trasporti fino a { $most }, contro il corpo. Lungo la via posare la pietra di costa su due listelli, oppure spingerla su un carrello.

brace-the-rail = { $rail } ({ $cutouts }): { $verdict }
    .detail = La fascia è larga { $width } e lunga { $length } ({ $stone }). Di piatto o nelle mani delle persone subisce { $together } con l'aiuto del resto della pietra e { $alone } quando deve reggere la flessione da sola, come quando quel lato si solleva per primo; di costa su due appoggi: { $on_edge }; ammessi { $allowed }. Prima di sollevare stringere lungo la fascia, di costa e a contatto per tutta la lunghezza, legno diritto da { $timber_width } × { $timber_depth } (pezzi affiancati: { $timbers }), lungo almeno { $timber_length }, con morsetti imbottiti su pietra piena alle due estremità: così restano { $braced }. Portare la pietra di costa; mai tenerla o stringerla in quel punto.

brace-the-rail-on-a-frame = { $rail } ({ $cutouts }): { $verdict }
    .detail = La fascia è larga { $width } e lunga { $length } ({ $stone }). Di piatto o nelle mani delle persone subisce { $together } con l'aiuto del resto della pietra e { $alone } quando deve reggere la flessione da sola, come quando quel lato si solleva per primo; di costa su due appoggi: { $on_edge }; ammessi { $allowed }. Nessun legno è abbastanza rigido: stendere tutta la pietra su un telaio o un pannello. Portare la pietra di costa; mai tenerla o stringerla in quel punto.

brace-the-neck = { $stone }, { $neck }: non deve portare la pietra che sta oltre
    .detail = La strozzatura è larga { $width }; di piatto i { $hanging } che vi pendono producono { $stress }, ammessi { $allowed }. Sostenere la pietra da tutte e due le parti della strozzatura ogni volta che sta di piatto. Prima di sollevarla stringere lungo la strozzatura, di costa e a contatto per tutta la lunghezza, legno diritto da { $timber_width } × { $timber_depth } (pezzi affiancati: { $timbers }), lungo almeno { $timber_length }, con morsetti imbottiti su pietra piena alle due estremità: così restano { $braced }.

brace-the-neck-on-a-frame = { $stone }, { $neck }: non deve portare la pietra che sta oltre
    .detail = La strozzatura è larga { $width }; di piatto i { $hanging } che vi pendono producono { $stress }, ammessi { $allowed }. Sostenere la pietra da tutte e due le parti della strozzatura ogni volta che sta di piatto. Nessun legno è abbastanza rigido: stendere tutta la pietra su un telaio o un pannello.

narrow-rail = { $rail } ({ $cutouts }): più stretta di quanto si usa nel mestiere
    .detail = La fascia è accanto a un foro per rubinetto ed è larga { $width }; { $least } è il minimo pubblicato accanto a un'apertura, e niente di meno è pubblicato per un foro per rubinetto. Spostare il foro o farlo più piccolo, oppure chiedere se la pietra può essere irrigidita da sotto in modo definitivo.

guideline-is-not-a-limit = Il valore indicativo di sollevamento non è un limite sicuro
    .detail = { $each } a persona: vale per adulti in buona forma che sollevano vicino al corpo, all'altezza della vita, diritti e di rado; è meno per molte persone, e meno con mani bagnate, su gradini e su terreno irregolare. Non promette che un sollevamento al di sotto sia sicuro. L'equazione di sollevamento vale per sollevare, non per trasportare. Verificare le regole in vigore.

tips-off-supports = Il piano non sta fermo sui suoi appoggi
    .detail = Gli appoggi non stanno tutt'intorno al punto di equilibrio. Aggiungere o spostare appoggi prima di posare il piano.

support-lifts-off = { $support }: non porta niente
    .detail = Il piano non preme su questo appoggio. Controllarne posto e altezza; non tirare il piano giù fino a toccarlo.

falls-off-trestles = { $stone }: la pietra non poggia sui cavalletti
    .detail = Con i cavalletti a { $first } e { $second } dall'estremità della lastra, il suo punto di equilibrio non sta fra di essi, oppure la pietra non li raggiunge. Spostarli prima di quel taglio, oppure non inserire lift.trestles.

bends-on-trestles = { $stone }: due cavalletti non bastano
    .detail = Su cavalletti a { $first } e { $second } dall'estremità della lastra la pietra subisce { $stress }, { $times } volte ciò che è ammesso. Stenderla invece su un pannello intero e ben diritto, con tutta la superficie appoggiata.

aid-too-weak = { $stone }: il mezzo di sollevamento non è marcato per questo peso
    .detail = Il mezzo ({ $aid }) è marcato per { $rated }; questa pietra richiede { $needs }. Usarne uno marcato per questo, oppure una pietra più leggera: tagliare prima di spostarla.

aid-without-mark = che portata è marcata qui: { $aid }? Servono { $needs }
    .detail = Leggere la portata marcata sul mezzo e scriverla qui; la pietra più pesante: { $stone }. Senza marcatura non si solleva. Nel file del lavoro: lift.rated.

in-slings-no-place = { $stone }: nessun posto per due brache
    .detail = Dovunque passino due brache, pende più flessa di quanto è ammesso. Rinforzarla, o portarla stesa su un telaio.

on-a-trolley = il carrello: pietra di costa, legata, su terreno orizzontale
    .detail = Il lato lungo più pesante in basso, la pietra legata al telaio del carrello, qualcuno a ogni estremità e nessuno di fianco. Per caricarla mettere il carrello contro quel lato lungo, ruote bloccate, ribaltare la pietra intorno a quel lato sul pianale, e legarla prima che chiunque la lasci. In discesa il carrello si trattiene dalla parte alta. Le istruzioni del fabbricante vengono prima.

on-a-trolley-numbers = { $stone }: se si ribalta, uccide; un carrello marcato per { $rated } o più
    .detail = Sul carrello il punto di equilibrio è a { $height } dal pavimento, e tutto si ribalta su un terreno inclinato di traverso di { $tips } (da fermo, ruote dure: prima se è in movimento). Serve una spinta di almeno { $push } in orizzontale, e su una rampa di 1 su { $run } altri { $ramp }, che inoltre tirano verso il basso della rampa.

under-a-vacuum-lifter = il sollevatore a ventose: marcato per il doppio del peso, e una seconda sicurezza
    .detail = Solo su una faccia asciutta, pulita, sana, lucidata o levigata: mai su una grezza o a spacco, e in nessun punto sopra un difetto o una riparazione. Su una faccia verticale le ventose tengono solo per attrito: usare per questo il valore del fabbricante. Una seconda sicurezza (cinghia, braca) sotto la pietra in ogni momento. Sollevarla di un palmo, aspettare, e guardare che ogni ventosa tenga prima di muoverla. Le istruzioni del fabbricante vengono prima.{ $wet ->
        [yes] {" "}Questo lavoro si taglia ad acqua: prima lavare via il fango e lasciare asciugare la faccia.
       *[other] {""}
    }{ $face ->
        [porous] {" "}Questa pietra è porosa: l'aria la attraversa e la presa cede. Chiedere al fabbricante, o usare brache.
        [split] {" "}Questa pietra si vende spesso con la faccia a spacco: lì nessuna ventosa tiene.
       *[other] {""}
    }

under-a-vacuum-lifter-numbers = { $stone }: se cade, uccide; un sollevatore a ventose marcato per { $rated } o più
    .detail = Ventose a coppie attorno al punto di equilibrio: { $cups }, e ognuna porta { $each }.

under-a-vacuum-lifter-no-room = { $stone }: per un sollevatore a ventose non c'è posto
    .detail = Dovrebbe essere marcato per { $rated } o più, ma non c'è posto per una coppia di ventose attorno al punto di equilibrio. Usare brache o un carrello.

in-slings = la gru a portale: montata e usata da una persona competente
    .detail = Gancio sopra il punto di equilibrio, spigoli protetti, brache legate in modo che non possano scivolare l'una verso l'altra, una fune guida a ogni estremità, nessuno sotto o accanto. Sollevarla di un palmo e guardare che penda a livello prima di muoverla. I mezzi di sollevamento sono controllati, marcati e montati da una persona competente, abilitata dove la legge lo chiede.

in-slings-numbers = { $stone }: se cade, uccide; brache a { $first } e { $second } dall'estremità sinistra
    .detail = Dall'estremità in basso se è disegnata in piedi. A ogni braca pendono { $each }; con { $legs } fra i bracci ogni braccio tira { $factor } volte il peso, { $tension }, e il gancio sta a { $hook } o più sopra la pietra.

not-a-hand-lift = non si solleva a mano: { $stones }
    .detail = { $masses }. { $people ->
        [one] Una persona può contare su { $team }
       *[other] { $people } persone che sollevano insieme possono contare su { $team }
    }; oltre circa il doppio il rischio è grave anche per persone in forma e addestrate. Indicare un mezzo in lift.aid: un carrello che porta la pietra di costa, marcato per { $rated } o più, solo su terreno orizzontale (spinta di almeno { $push }); un sollevatore a ventose marcato per { $vacuum } o più, su una faccia asciutta, pulita e integra; una gru a portale o un paranco con brache, marcati per { $rated } o più e montati da una persona competente in mezzi di sollevamento. Per alzare di costa la più pesante servono all'inizio { $tilt } sul lato opposto.

breaks-in-hands = si romperebbe nelle mani: { $stones }
    .detail = { $masses }. Comunque la { $people ->
        [one] tenga una persona
       *[other] tengano { $people } persone
    }, di piatto o di costa, si flette più di quanto è ammesso. Rinforzarla, stenderla su un pannello, o indicare un mezzo in lift.aid: un carrello marcato per { $rated } o più; un sollevatore a ventose marcato per { $vacuum } o più; una gru a portale con brache, montata da una persona competente.

more-than-four = troppe persone per sollevare come una sola: { $people }
    .detail = È improbabile che più di { $most } persone lavorino come una squadra, e nessuna quota della loro forza su cui contare è pubblicata. Usare un mezzo di sollevamento, o meno persone e un pezzo più leggero.

lifter-over-guideline = più del valore indicativo: { $stones }
    .detail = { $masses }. { $people ->
        [one] Una persona può contare su { $team }
       *[other] { $people } persone che sollevano insieme possono contare su { $team }
    }: un valore che invita a guardare meglio, non un limite. Prima di sollevare decidere chi solleva, la strada e dove si posa; più persone, un pezzo più leggero o un mezzo è meglio. Per alzare di costa la più pesante servono all'inizio { $tilt } sul lato opposto.

tilt-over-guideline = decidere come si alza di costa; al lato opposto servono: { $stones }
    .detail = { $people ->
        [one] Una persona può contare su { $team }
       *[other] { $people } persone insieme possono contare su { $team } in tutto
    }. Tenerla di costa dalla consegna fino a dove serve. { $hands ->
            [0] Ciò che richiede più di circa il doppio non si gira a mano: lì il rischio è grave anche per persone forti e addestrate. Un paranco, un sollevatore a ventose o un telaio che ribalta con la pietra legata, da una persona competente: decidere quale prima che arrivi.
           *[other] Per girarla, bloccare il lato lungo intorno a cui gira perché non possa scivolare, tutti al lato lungo opposto, alzarla a passi su blocchi, e tenere pronta la legatura prima che sia in piedi; oppure girarla con un paranco o un sollevatore a ventose.
        } Nessuno sta dalla parte dove può cadere.

bends-flat-always = { $stone }: mai di piatto su due appoggi
    .detail = Pietra { $how }: { $stress } dove la sua larghezza è { $width }, a { $at } dall'estremità, cioè { $times } volte il valore ammesso di { $allowed } (resistenza ÷ coefficiente di sicurezza), anche sui due appoggi migliori. Tenerla di costa, oppure stenderla su un pannello intero e ben diritto.{ $flaws ->
        [0] {""}
        [one] {" "}La lastra ha un difetto: attraverso di esso la resistenza non vale.
       *[other] {" "}La lastra ha { $flaws } difetti: attraverso di essi la resistenza non vale.
    }

bends-flat = { $stone }: di piatto, tenuta per le estremità, può spezzarsi
    .detail = Pietra { $how }: { $stress } dove la sua larghezza è { $width }, a { $at } dall'estremità, cioè { $times } volte il valore ammesso di { $allowed } (resistenza ÷ coefficiente di sicurezza). Mai sollevare un'estremità mentre la pietra sta di piatto. Di piatto può poggiare solo su appoggi a { $first } e { $second } dall'estremità sinistra (estremità in basso se è disegnata in piedi), dove subisce { $best }; portarla di costa.{ $flaws ->
        [0] {""}
        [one] {" "}La lastra ha un difetto: attraverso di esso la resistenza non vale.
       *[other] {" "}La lastra ha { $flaws } difetti: attraverso di essi la resistenza non vale.
    }

carry-on-edge-not-by-its-ends = { $stone }: nemmeno di costa per le estremità
    .detail = Pietra { $how }: { $stress }, cioè { $times } volte il valore ammesso di { $allowed }. Tenerla o appoggiarla a { $first } e { $second } dall'estremità, dove subisce { $best }. Il calcolo suppone pietra sana.

carry-on-edge-braced = { $stone }: nemmeno di costa finché non c'è un rinforzo
    .detail = Pietra { $how }: { $stress }, cioè { $times } volte il valore ammesso di { $allowed }. Prima rinforzare le sue parti strette, oppure portarla stesa su un telaio. Il calcolo suppone pietra sana.

flaws-and-strength = { $count ->
        [one] La lastra ha un difetto
       *[other] La lastra ha { $count } difetti
    }: i valori di resistenza non valgono attraverso di { $count ->
        [one] esso
       *[other] essi
    }
    .detail = Qui ogni sollecitazione suppone pietra sana; a una fessura o a una riparazione può rompersi molto al di sotto. Tenerla di costa, su un pannello intero o su un telaio.

trestles-are-moved = i cavalletti si spostano prima del taglio { $cuts }
    .detail = Nessun posto va bene per tutti i tagli. Sollevare la pietra come richiede il suo peso, spostarli, posarla di nuovo; i nuovi posti sono sulla scheda di quel taglio.

rests-poorly = mettere più appoggi sotto il piano: { $what }
    .detail = { $parts }. Appoggi più vicini, accanto a ogni apertura, più in fuori. Né vite né colla trattiene un piano che si ribalta.

# What is wrong with how the top rests: in short, and in full.
rests-overhang = sporgenza
rests-overhang-part = { $edges } { $count ->
        [one] sporge
       *[other] sporgono
    } dagli appoggi di { $reach } (limite pubblicato: { $limit })
rests-overhang-person = sporgenza
rests-overhang-person-part = { $edges } { $count ->
        [one] sporge
       *[other] sporgono
    } dagli appoggi di { $reach } (limite pubblicato: { $limit }) e con una persona sul bordo arriva al { $times } dell'ammesso
rests-span = luce fra gli appoggi
rests-span-part = il tratto più lungo senza appoggio è { $span } (limite pubblicato: { $limit })
rests-tips = si ribalta se qualcuno si appoggia
rests-tips-part = una persona di { $force } { $place } lo ribalta dagli appoggi
rests-bends = qualcuno che si appoggia
rests-bends-part = una persona di { $force } { $place } lo carica al { $times } dell'ammesso
rests-bends-elsewhere = qualcuno che si appoggia
rests-bends-elsewhere-part = una persona di { $force } { $place } lo carica al { $times } dell'ammesso, soprattutto { $section }
lean-worst = nel punto peggiore
lean-rail = sulla { $rail } ({ $cutouts })
lean-overhang = sulla sporgenza ({ $edge })
lean-between = fra gli appoggi { $first } e { $second }
lean-over = sopra l'appoggio { $support }
rests-over = { $support }
rests-over-part = { $support } porta fino a { $carried }, più del suo limite di { $limit }
rests-over-person = { $support } con una persona
rests-over-person-part = { $support } porta fino a { $with_person } con una persona di { $force } (limite { $limit })
none-published = niente per una pietra così sottile

# A stone in a list of stones.
stone-of-mass = { $stone } { $mass }

# What would make a way passable.
remedy-upright = passare in piedi, che richiede { $n } di altezza
remedy-cut-to = tagliare a una lunghezza di { $n } al massimo prima di questo passaggio
remedy-widen-before = fare largo almeno { $n } il passaggio prima dell'angolo
remedy-widen-after = fare largo almeno { $n } il passaggio dopo l'angolo
remedy-widen = fare largo almeno { $n } il passaggio: togliere l'anta, le battute, un telaio
remedy-raise = fare almeno { $n } di altezza libera per il passaggio { $how }
