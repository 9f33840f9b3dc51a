# The bench pages, the annex and the answers in a terminal.

bench-head = progetto { $plan } · pagina { $number } di { $count }
bench-head-annex = progetto { $plan } · allegato, pagina A{ $number } di A{ $count }
bench-foot = Norme locali, istruzioni dei fabbricanti e persone competenti vengono prima di questa scheda.
bench-foot-cut = Prima incidere. Né torcere né spingere di lato. Disco stretto: spegnere, aspettare, liberare, rientrare solo a piena velocità.
bench-stop = STOP
bench-kills-now = uccide
bench-kills-later = uccide più tardi
bench-maims = mutila
bench-lasting = resta per sempre
bench-breaks-stone = rompe la pietra
bench-blank = compilare
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = In breve
bench-glance-title = In breve: { $work }
bench-work-straight = { $count ->
    [one] tagliare un bordo
   *[other] tagliare { $count } bordi
 }
bench-work-curves = { $count ->
    [one] tagliare una curva
   *[other] tagliare { $count } curve
 }
bench-work-openings = { $count ->
    [one] fare un'apertura
   *[other] fare { $count } aperture
 }
bench-glance-alt = La lastra vista dall'alto con il piano, { $length } per { $width }, i tagli in ordine e gli sfridi con il loro peso.
bench-glance-open = Prima di avviare la macchina: chiarire ogni punto, scrivere l'esito, poi spuntare
bench-glance-warnings = Che cosa può farvi questo lavoro, il peggio per primo
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = tenere
bench-top-corner = angolo { $corner }
bench-practice-here = prove
bench-tile-top = piano finito
bench-tile-slab = lastra
bench-tile-waste = sfrido più pesante
bench-tile-sawing = disco nella pietra
bench-tile-setting = preparazione
bench-tile-silica = silice nel fango
bench-tile-silica-dry = silice nella polvere
bench-tile-likely = al massimo; probabile { $mass }
bench-tile-likely-thick = al massimo; probabile { $mass }; { $thick }
bench-tile-no-waste = non cade nessun pezzo
bench-tile-after = { $name }, taglio { $cut }
bench-tile-shares = { $count ->
    [one] una persona, un giorno
   *[other] dividere fra { $count } persone o giorni
 }
bench-tile-with-other = con { $other } di altro lavoro: { $shares }
bench-tile-without-edges = { $shares }; senza finitura
bench-not-counted = Molare, lucidare e smussare i bordi non è in nessuna cifra di qui, se [[today]] non lo indica; conta nella giornata della stessa persona.
bench-tile-set-ups = { $count ->
    [one] una preparazione
   *[other] { $count } preparazioni
 }
bench-tile-of-dust = al massimo, in { $mass } di pietra

# Mark out
bench-mark = Tracciare
bench-mark-title = Tracciare tutte le linee prima del primo taglio
bench-mark-rule = Tracciare ogni linea da parte a parte su tutta la lastra prima del primo taglio. Un taglio porta via un segno; la linea si vede ancora sulla pietra che resta.
bench-mark-alt = La lastra vista dall'alto con ogni linea da tracciare, i suoi segni ai bordi, e ogni perno e foro.
bench-mark-what = punto
bench-mark-off = dalla linea tracciata
bench-mark-off-that = dalla linea { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = sulla { $cut }
bench-mark-off-line = linea { $cut }: { $distance }
bench-mark-on-line = sulla linea { $cut }
bench-mark-check = controllo
bench-mark-line-check = controllo linea
bench-mark-on-curve = linea del taglio { $cut }
bench-mark-keep = linea da tenere
bench-mark-guide = guida, idem
bench-mark-tape-from = metro
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } perno
bench-mark-chord = { $mark } corda
bench-mark-hole = { $mark } foro
bench-mark-stop = { $mark } arresto
bench-mark-both = Taglio { $cut }: { $distance } dall'angolo { $corner } del piano lungo tutte e due le linee.
bench-mark-along = Taglio { $cut }, dall'angolo { $corner } del piano: { $before } indietro, { $after } avanti.
bench-mark-guides = Ogni linea di guida corre a { $offset } dalla sua linea da tenere, da un capo all'altro.
bench-mark-rough = Un angolo su un bordo grezzo è dove si incrociano due fili tesi lungo i suoi bordi: segnarlo per primo.
bench-mark-tape = Tenere il gancio del metro proprio sull'angolo. Se un controllo è fuori di più di { $tape }: misurare di nuovo, non spostare la linea. { $guides }
bench-mark-between = Un trentaduesimo di pollice è il mezzo tra due tacche di un metro che mostra i sedicesimi.
bench-end = { $mark }: { $distance } da { $corner } su { $edge }

# Straight cuts
bench-straight = Tagli diritti
bench-straight-title = Diritto, bordo { $edge }, lungo { $length }, pietra { $thick }
bench-relief-title = Taglio di scarico in { $edge }, lungo { $length }, pietra { $thick }
bench-straight-alt = La lastra prima del taglio lungo il bordo { $edge }, vista dall'alto: guida, supporti, dove sta l'operatore, e che cosa si stacca: { $waste }.
bench-you = voi
bench-depth = profondità
bench-depths = profondità
bench-trestles-move = Prima sollevare la pietra e spostare i cavalletti: a { $first } e { $second } dall'estremità della lastra.
bench-trestles-board = Prima sollevare la pietra: da qui in poi sta su un pannello intero e diritto.
bench-late = Solo dopo il taglio { $cut }, che ha una pagina sua.
bench-fact-guide = guida
bench-fact-ends = i suoi capi
bench-fact-moves = sta a
bench-fact-how = come
bench-fact-bearers = supporti
bench-fact-drill = prima forare
bench-fact-when = quando
bench-guide-kept = a { $offset } dalla linea da tenere, sulla pietra che resta
bench-guide-waste = a { $offset } dalla linea da tenere, sullo sfrido
bench-ends = { $first }; { $second }
bench-moves = { $places } da { $mark }, uno dopo l'altro a ogni profondità{ $clamp ->
    [no] ; dove nessun morsetto arriva, una ventosa di bloccaggio, provata a mano
   *[yes] {""}
 }
bench-stone-end = l'estremità della pietra verso { $mark }
bench-span = { $from } a { $to }
bench-how = { $parts }
bench-how-far-end = A ogni profondità prima gli ultimi { $length } in { $last }, da fuori verso dentro; poi dall'altra estremità fin lì.
bench-how-stop = Si ferma in { $mark }: il centro del disco non più vicino di { $short }. Ciò che il disco tondo lascia viene per ultimo e dall'alto: corona nello scarto, poi molare; mai da sotto.
bench-how-stop-hole = Finisce nel foro in { $mark }: il centro del disco non più vicino di { $short }.
bench-how-allowance = Restano { $left } per la finitura.
bench-how-breaks = Da { $depth } in poi può staccarsi.
bench-bearers = da ogni parte, { $off }: a { $at } da { $mark }
bench-bearers-even = { $count } da ogni parte, { $off }: da { $first } a { $last } da { $mark }, ogni { $step }
bench-bearers-off = a { $off } dalla linea
bench-bearers-off-each = a { $kept } dalla linea, a { $waste } sotto lo sfrido
bench-struck = secondo la linea tracciata { $first } a { $second }: un capo non c'è più
bench-drill = Ø { $bit } in { $marks }, a umido, prima che il disco si avvicini
bench-free-heavy = { $name } si stacca: fino a { $mass }. Poggia su supporti suoi, a livello, prima della prima passata. Niente mani, piedi o ginocchia sotto; nessuno lo tiene.
bench-free-carried = { $name } si stacca: fino a { $mass }. Poggia su supporti suoi, a livello, prima della prima passata. Niente mani, piedi o ginocchia sotto; nessuno lo tiene. { $away }
bench-away = Poi { $people } persone { $how ->
            [flat] lo portano di piatto su due listelli a terra, a un quinto della lunghezza dalle estremità.
           *[edge] lo alzano sul lato lungo, lo portano di taglio su due listelli contro un muro e lo legano lì.
        }
bench-away-more = Servono { $people } persone per portarlo via { $how ->
            [flat] di piatto
           *[edge] di taglio
        }, e questo lavoro ne ha meno: trovarle o un ausilio, oppure segarlo di traverso dove sta, con un appoggio su ogni lato della linea.
bench-away-aid = Poi { $aid ->
            [trolley] { $people } persone ({ $half }) lo alzano di taglio e il carrello lo porta, legato,
            [vacuum] il sollevatore a vuoto lo porta, di taglio,
           *[gantry] il paranco lo porta, di taglio in due fasce,
        } su due listelli contro un muro; legarlo lì.
bench-away-sawn = Nessuna squadra lo porta via: segarlo di traverso dove sta, con un appoggio su ogni lato della linea, o prendere un ausilio.
bench-free-light = { $name } si stacca: fino a { $mass }. Un supporto sotto prima della prima passata; nessuna mano sotto.
bench-free-flaw = «{ $flaw }» lo attraversa: può rompersi lì. Appoggi su entrambi i lati; legno diritto morsettato sopra prima di sollevarlo.
bench-free-station = { $name } si stacca circa alla stazione { $station }, ultima profondità: fino a { $mass }. Un supporto sotto prima della prima passata; nessuna mano sotto.
bench-measured = bordo { $edge }, manca o avanza (voluto 0)
bench-cut-by = tagliato da, ora

# Curves
bench-curve = Curva, taglio { $cuts }
bench-curve-title = { $count ->
    [one] Una stazione della curva in { $corners } ad affondo, { $depths } profondità
   *[other] { $count } stazioni della curva in { $corners } ad affondi, { $depths } profondità
 }
bench-curve-alt = La curva vista dall'alto con le stazioni numerate, il perno o la corda, e lo sfrido.
bench-curve-how = Come
bench-curve-line = raggio { $radius }; restano { $left } per la finitura
bench-curve-line-inside = raggio { $radius }; restano { $left } per la finitura; le stazioni su raggio { $stations }
bench-curve-rise = corda { $chord }, la curva sale di { $rise } nel mezzo
bench-curve-struck = { $points }, tracciato prima del taglio 1: vedi Tracciare
bench-curve-swing = { $mark }: a { $radius } da ognuno di { $points }
bench-curve-stations = Tracciare la linea intorno al perno. Misurare ogni stazione in linea retta dal segno accanto al suo numero; le vicine distano { $apart }.
bench-curve-ordinates = Tracciare la corda. Riportare ogni stazione lungo di essa e a squadra; le vicine distano { $apart }.
bench-curve-plunge = Disco a squadra con il braccio alla stazione: faccia vicina a { $near } dal perno, segno della dima a { $arm }. Stare accanto alla sua linea, mai dentro. Giù diritto, su diritto. Mai guidarlo lungo la curva.
bench-curve-plunge-guide = Bordo della guida a { $offset } dalla stazione e a { $gap } dalla curva, { $half } da ogni parte; faccia vicina sulla curva. Stare accanto alla sua linea, mai dentro. Giù diritto, su diritto. Mai guidarlo lungo la curva.
bench-curve-plunge-square = Tracciare il centro dell'arco, a { $radius } dai due capi della corda. Il disco sta a squadra della linea dal centro per la stazione, con la faccia esterna, quella lontana dal centro, alla stazione; il bordo della guida { $offset } più in là. Stare di fianco alla sua linea, mai su di essa. Dritto giù, dritto fuori. Mai farlo girare.
bench-curve-rings = Tutte le stazioni a una profondità, poi tutte alla successiva: { $depths }. La pietra è spessa { $thick }.
bench-curve-ridges = Restano creste di { $left }: toglierle a umido con una mola a tazza diamantata o un disco lamellare, grana 60, lungo la curva, fino alla linea; poi 120, 200, 400.
bench-fact-pivot = perno
bench-fact-chord = corda
bench-fact-stands = sta su
bench-fact-swing = si trova
bench-fact-line = linea da tenere
bench-arm = segno { $length }
bench-pivot-top = il piano: nastro o ventosa, mai forato
bench-pivot-cutout = pietra che cade più tardi, ancora al suo posto
bench-pivot-waste = lo sfrido: tenere quel pezzo al suo posto finché la curva è finita
bench-pivot-off = accanto alla pietra: fissare lì qualcosa della stessa altezza
bench-station = n.
bench-station-along = lungo
bench-station-off = scarto
bench-station-off-waste = fuori, nello scarto
bench-relief-first = Prima i tagli di scarico, così lo sfrido viene via a pezzi.
bench-relief-cut = taglio
bench-relief-guide = guida sui segni
bench-relief-length = lunghezza
bench-two-marks = { $first } e { $second }

# Openings
bench-opening = Apertura { $number }
bench-opening-title = Apertura: { $what }, pietra { $thick }
bench-opening-alt = L'apertura vista dall'alto con fori, tagli e linee di guida, e la pietra più stretta accanto.
bench-opening-corner-alt = Un angolo dell'apertura: le linee tracciate e i punti accanto
bench-opening-what = che cosa
bench-opening-marks = segni
bench-opening-how = come
bench-opening-depths = profondità
bench-depths-straight = diritti
bench-depths-curve = curvi
bench-opening-stop = centro a { $short } prima di { $mark }
bench-opening-hole = forare Ø { $bit }
bench-opening-straight = diritto, { $length }
bench-opening-curve = curvo, { $length }
bench-opening-swing = raggio { $radius }, braccio { $arm }, { $count } stazioni
bench-opening-plunges = { $count } affondi lungo una corda di { $chord }, freccia { $rise }
bench-opening-drill = a umido, ben diritto, dall'alto
bench-opening-stations-chord = Stazioni, taglio { $cuts }: lungo la corda dal segno e, e a squadra da essa
bench-opening-stations-pivot = Stazioni, taglio { $cuts }: in linea retta dai segni tracciati
bench-opening-step-drill = Prima fare tutti i fori: così il disco si ferma in un foro, e nessun taglio entra nell'angolo.
bench-opening-step-saw = Tagliare da foro a foro, ogni taglio a tutta profondità prima del successivo. Il disco è tondo: sotto, le estremità dei tagli tengono ancora il pezzo. Liberarlo dall'alto, con la corona nello scarto su ogni estremità, il resto molato; nessuno lavora sotto. La pietra va sostenuta tutto intorno e sotto il pezzo che cade.
bench-opening-step-saw-parted = Tagliare da foro a foro, ogni taglio a tutta profondità prima del successivo. Il disco è tondo: sotto, le estremità dei tagli terrebbero ancora il pezzo; i fori accanto a esse lo separano lì, e ciò che resta si mola. Nessuno lavora sotto. La pietra va sostenuta tutto intorno e sotto il pezzo che cade.
bench-opening-step-last = L'ultimo taglio libera il pezzo: prima i supporti sotto, nessuno sotto. Da ora la pietra è debole accanto all'apertura: rinforzi montati prima di muoverla.
bench-rail = { $what }
bench-rail-holds = larga { $width }: tiene; si porta di costa, mai per la fascia
bench-rail-brace = larga { $width }: solo con rinforzi. { $splint }
bench-rail-weak = larga { $width }: troppo debole anche con rinforzi. { $splint }
bench-splint = { $count } × legno { $wide } × { $high }, lungo { $length }, stretto con morsetti prima del primo taglio qui

# Moving
bench-move = Muovere e posare
bench-move-title = Di costa, a mano, legata quando è in piedi
bench-move-title-trolley = Di costa sul carrello, legata, su terreno orizzontale
bench-move-title-vacuum = Di costa sotto il sollevatore a ventose
bench-move-title-gantry = Di costa in due brache
bench-move-slab = Lastra sui cavalletti, { $alike ->
    [yes] un lato lungo in basso
   *[no] { $side } in basso
 }
bench-move-top = Piano al suo posto, { $alike ->
    [yes] un lato lungo in basso
   *[no] { $side } in basso
 }
bench-move-alt = La pietra di costa con il suo mezzo e una persona a ogni estremità, in scala; pesa fino a { $mass }.
bench-move-on-edge = Mai di piatto per le estremità: si spezza. Di costa per tutta la strada; si mette di piatto solo sopra i due cavalletti. Mai sollevare una sola estremità.
bench-move-tied = Di costa per tutta la strada, legata ogni volta che è in piedi.
bench-turn-slab = di costa accanto ai due cavalletti, il mezzo bloccato; lato lungo in basso su entrambi insieme, poi piana: { $hands ->
    [none] non a mano, ma con paranco, sollevatore a ventose o telaio ribaltabile
    [open] come deciso a pagina 1: tutti al lato lungo opposto, nessuno sotto
    [aid] la gira il sollevatore, due persone guidano
   *[team] tutti al lato lungo opposto, nessuno sotto
 }. La legatura per ultima.
bench-turn-top = di costa accanto al suo posto, poi su listelli imbottiti di traverso: { $hands ->
    [none] non a mano, ma con paranco, sollevatore a ventose o telaio ribaltabile
    [open] come deciso a pagina 1: tutti al lato lungo opposto, nessuno sotto
    [aid] lo gira il sollevatore, due persone guidano
   *[team] tutti al lato lungo opposto, nessuno sotto
 }. Listelli via uno alla volta, il lato lungo alzato con cunei, nessun dito sotto.
bench-fact-flat = lastra, coricata
bench-fact-set = piano, posato
bench-move-hands = Dove vanno le mani
bench-move-hands-on-edge = Dove vanno le mani: vi pende di costa, mai di piatto
bench-move-trestles = Due cavalletti di lato: distanze dall'estremità { $corner }, e quanto porta ciascuno
bench-move-supports = Su che cosa poggia: il centro di ogni appoggio, come disegnato
bench-hands-alt = La pietra vista dall'alto con una persona a ogni posto, e quanto porta ciascuna.
bench-hands = { $number }: { $mass }
bench-trestles-alt = La lastra su due cavalletti, a { $first } e { $second } dalla sua estremità.
bench-supports-alt = Il piano visto dall'alto sui suoi appoggi, con quanto porta ciascuno.
bench-supports-short = Così non basta: prima più appoggi, vedi pagina 1.
bench-free-span = { $length } nel punto più largo; al massimo { $limit }
bench-overhang = { $edge }: { $length }; al massimo { $limit }. Mettere lì un appoggio
bench-overhang-person = { $edge }: { $length }; nessuno si appoggi lì, o mettere un appoggio
bench-bearing-over = con una persona che si appoggia al piano porta { $person }, può portare { $limit }: lì nessuno si siede o si appoggia, oppure aggiungere un appoggio
bench-support-name = { $number } { $what }
bench-support = { $along } da sinistra, { $up } dal basso; porta al massimo { $mass }
bench-fact-trolley = carrello
bench-fact-vacuum = ventose
bench-fact-slings = brache
bench-fact-lift = a mano
bench-fact-fall = se cade
bench-fact-free = senza appoggio
bench-fact-over = oltre gli appoggi
bench-trolley = marcato per { $rated } o più; spinta { $push } in orizzontale
bench-rated = marcato per { $rated } o più
bench-slings = { $each } su ciascuna, { $tension } in ogni braccio a { $angle }
bench-fall = nessuno entro { $clear } da ciascun lato; legarla
bench-lift-never = mai: in { $people } insieme si conta su { $limit } in tutto{ $two }
bench-lift-two = {""}, in due su { $mass }
bench-lift-above = sopra il valore: una persona porta { $carried }, il valore è { $limit }; decidere prima (pagina 1)
bench-lift-over = così no: una persona porterebbe { $carried }, il valore è { $limit }
bench-lift-tips = così no: si ribalta
bench-lift-breaks = non a mano: di piatto o di costa si flette troppo; rinforzarla o usare un mezzo
bench-lift-many = così no: { $people } persone non sollevano come una sola
bench-lift-within = { $people } persone, ciascuna fino a { $most }; nessuna cifra rende sicuro un sollevamento

# Dust, noise, hands
bench-dust = Polvere, rumore, mani
bench-dust-title = Polvere, rumore, mani
bench-dust-order = Il più forte per primo: che cosa toglie la polvere
bench-dust-limits = Quanto e per quanto tempo
bench-dust-settled = Sistemato per questo lavoro
bench-control = { $state ->
    [done] { $what }: previsto
    [open] { $what }: ANCORA DA FARE
   *[other] { $what }: badarci il giorno stesso
 }
bench-fact-mask = maschera qui
bench-fact-hands = mani
bench-fact-ears = orecchie
bench-fact-slurry = fango
bench-fact-slurry-dry = polvere
bench-fact-silica = che cosa contiene
bench-fact-vacuum-class = aspirapolvere
bench-mask-at-hand = { $mask }; viso ben rasato, tenuta controllata; indossata prima del primo taglio, tolta a pavimento pulito
bench-hands-allowed = { $action } al giorno per persona, contando tutto ciò che vibra; questo lavoro richiede { $job }
bench-hands-other = { $hands }, altro lavoro conta { $other }
bench-hands-never = questa macchina vibra troppo, nemmeno un minuto: un'altra macchina
bench-ears = { $level } all'orecchio: protezione indossata prima del primo avvio; senza, { $minutes } riempiono la giornata
bench-slurry = circa { $mass }, secchi: { $buckets }; raschiare e aspirare da bagnato, mai in uno scarico
bench-bags = { $bags ->
    [one] un sacco dell'aspiratore
   *[other] fino a { $bags } sacchi dell'aspiratore
 }
bench-nothing-caught = niente la trattiene
bench-silica = fino a { $dust } di pietra, di cui { $silica } di silice
bench-wear-mask = Maschera: fattore { $factor } o più
bench-wear-mask-here = { $mask }: fattore { $factor }
bench-wear-mask-ready = Maschera indossata durante il taglio, finché il pavimento è pulito
bench-wear-mask-assess = Maschera: prima far valutare l'esposizione
bench-wear-ears = Orecchie: { $level }
bench-wear-eyes = Occhiali a mascherina e visiera
bench-wear-hands = Guanti aderenti, niente polsini larghi
bench-wear-feet = Scarpe con puntale, antiscivolo
bench-wear-disc = Disco: gira ancora dopo lo spegnimento

# Helper
bench-emergency = Numero di emergenza: { $number }
bench-vacuum-off = Dove si spegne l'aspirazione
bench-helper-weight = La lastra pesa fino a { $slab }, il piano fino a { $top }. { $hands ->
    [none] Nessuno li solleva a mano.
    [top] Nessuno solleva la lastra a mano, nessuno il piano da solo.
   *[both] Nessuno li solleva da solo.
 }

# The day and its record
bench-day = Giornata e registro
bench-day-title = La giornata, e che cosa è successo
bench-day-what = che cosa
bench-day-minutes = durata
bench-day-at = fatto alle
bench-day-read = Leggere ad alta voce la pagina dell'aiutante, provare i segnali di stop, compilare la pagina 1
bench-day-unload = Scaricare la lastra di costa, legata; poi piana sui cavalletti
bench-day-mark = Tracciare e controllare ogni linea; fare pratica nello sfrido
bench-day-straight = Taglio { $cut }, bordo { $edge }: si stacca { $waste }
bench-day-curve = Taglio { $cuts }, curva { $edge }
bench-day-opening = Tagli { $cuts }, apertura: { $what }
bench-day-sum = Tutti i tagli: { $stone } con il disco nella pietra, { $setting } di preparazione
bench-day-move = Il piano di costa, legato, al suo posto
bench-day-clean = Fango raccolto bagnato, pavimento sciacquato, poi via le maschere
bench-day-clean-dry = Polvere aspirata dappertutto, poi via le maschere
bench-day-bring = Da portare
bench-day-practice = Prima fare pratica nello sfrido
bench-day-wrong = Quando va storto
bench-day-started = inizio
bench-day-ended = fine
bench-day-initials = sigla
bench-day-date = data
bench-day-annex = Calcoli, tabelle, ogni avvertenza per intero e le fonti: kerfwright sheet FILE --annex
bench-bring-guide = guida
bench-bring-guide-is = diritta, { $length }, e due morsetti{ $suction ->
    [yes] , una ventosa di bloccaggio
   *[no] {""}
 }{ $jig ->
    [yes] ; braccio a compasso e il suo perno
   *[no] {""}
 }
bench-bring-discs = dischi
bench-bring-discs-are = { $discs }, con una riserva{ $grind ->
    [yes] ; mola a tazza diamantata o dischi lamellari per molare
   *[no] {""}
 }
bench-bring-bits = corone
bench-bring-bits-are = { $bits }, fatte per la velocità della macchina che le fa girare; una dima che le guidi
bench-bring-bearers = supporti
bench-bring-bearers-are = { $count } blocchi della stessa altezza, legno tenero, di { $long }, e cunei; sul tavolato{ $edges }
bench-bring-bearers-edges = {""}, di cui { $count } sotto i bordi senza taglio
bench-bring-deck = tavolato
bench-bring-deck-are = assi spesse almeno { $thick } per il lungo della lastra sui due cavalletti, lunghe { $length }, affiancate per { $wide }; sopra i supporti e su questi la lastra
bench-bring-turn = per coricare
bench-bring-turn-is = paranco, sollevatore a ventose o telaio ribaltabile
bench-bring-carry = per portare
bench-bring-carry-is = { $aid ->
    [trolley] carrello marcato per { $rated }, due cavalletti
    [vacuum] sollevatore a ventose marcato per { $rated }, due cavalletti
    [gantry] portale con brache per { $rated }, due cavalletti
   *[none] due cavalletti
 }, cinghie, listelli, aspiratore; ciò che mostrano i segnali
bench-bring-tape = tracciatura
bench-bring-tape-is = { $rolls ->
    [one] un rotolo di nastro per mascheratura da { $roll }
   *[other] { $rolls } rotoli di nastro per mascheratura, { $roll } ciascuno
 }, metro d'acciaio, squadra, matita fine, tracciafili
bench-bring-water = acqua
bench-bring-water-is = { $water } in tutto; secchi per il fango: { $buckets }
bench-practice-cut = un taglio
bench-practice-cut-is = in { $piece } dov'è disegnato, lungo { $length }, a { $depths }
bench-practice-plunge = affondi
bench-practice-plunge-is = così pure in { $piece }, tre affiancati, a { $depths }
bench-practice-offset = bordo della guida a faccia vicina del disco ({ $reckoned })
bench-practice-jig = segno della dima a faccia vicina del disco ({ $reckoned })
bench-practice-minutes = minuti nella pietra; lunghezza, profondità
bench-practice-differs = Se la cifra non è quella tra parentesi: spostare di altrettanto i segni della guida o il braccio; le linee da tenere restano.
bench-wrong-cracks = si crepa
bench-wrong-cracks-do = Spegnere. Nessuno sotto. Supporti sotto tutte e due le parti prima di muovere qualcosa; poi misurare e riprogettare ciò che resta.
bench-wrong-pinches = il disco si stringe
bench-wrong-pinches-do = Spegnere, aspettare che il disco sia fermo, aprire il taglio con cunei, tirare fuori la macchina. Rientrare solo a piena velocità.
bench-wrong-slips = esce dalla linea
bench-wrong-slips-do = Spegnere. Misurare di quanto e quanto a fondo, scriverlo nel file di lavoro sotto che cosa è successo: un nuovo progetto dice che cosa resta del piano.

# Repair
bench-repair = Che cosa è successo
bench-repair-title = Che cosa è successo, e che cosa resta
bench-repair-alt = La pietra com'è, il piano che resta, e tratteggiato il piano come richiesto.
bench-repair-as-planned = Tutto è sulla sua linea. Andare avanti come previsto.
bench-repair-within = Il materiale in più lo assorbe: niente è perso. Smerigliare fino alla linea finita.
bench-repair-grind = Niente è perduto: su un bordo resta troppa pietra. Smerigliarla fino alla linea finita.
bench-repair-again = Niente è perduto: su un bordo resta troppa pietra. Segare via la striscia, secondo la sua pagina.
bench-repair-smaller = Il piano viene più piccolo. Chiedere a chi l'ha ordinato prima del prossimo taglio.
bench-repair-opening = Un'apertura viene diversa da come richiesta. Chiedere a chi l'ha ordinata prima del prossimo taglio.
bench-repair-same-a = Le lettere sono angoli della pietra com'è ora. A è dov'era, AB va come prima; le altre sono nuove.
bench-repair-new = Le lettere sono angoli della pietra com'è ora: tutte sono nuove. Scriverle sulla pietra.
bench-repair-wanted = richiesto
bench-repair-now = ora
bench-repair-weighs = pesa
bench-repair-first = prima
bench-repair-run-outs = finire ciò che il taglio ha lasciato in piedi: { $pieces }
bench-repair-grind-first = smerigliare fino alla linea prima del taglio seguente: { $edges }
bench-repair-lines = nel file
bench-repair-part = parte
bench-repair-came = risultato
bench-repair-is-wanted = richiesto
bench-repair-is-now = ora
bench-repair-do = da fare
bench-repair-edge = bordo { $name }
bench-repair-corner = angolo { $name }, { $what }
bench-came-not-cut = non tagliato
bench-came-on-line = sulla sua linea
bench-came-short = { $off } in meno
bench-came-over = { $off } in più
bench-came-slanting-short = da { $start } a { $end } in meno
bench-came-slanting-over = da { $start } a { $end } in più
bench-do-nothing = niente
bench-do-finish = solo finitura
bench-do-grind = smerigliare { $off }
bench-do-cut = tagliare: vedi la sua pagina

# The annex
annex-findings = Ogni punto per intero
annex-stops = Stop: il lavoro non deve cominciare finché ne resta uno
annex-open = Aperti: da compilare o da guardare prima di cominciare
annex-warnings = Avvertenze
annex-every = Ogni volta
annex-stone = Pietra, posto e pezzi
annex-strength = Di piatto, in piedi, sollevata
annex-way = L'accesso
annex-health = Polvere, mani, orecchie: le cifre
annex-assumed = Valori che il file di lavoro ha lasciato aperti
annex-sources = Fonti
annex-key = chiave
annex-value = valore
annex-why = perché
annex-what = che cosa
annex-document = documento
annex-clause = punto
annex-year = anno
annex-no-year = non annotato
annex-place = Dove sta il piano sulla lastra
annex-pieces = Pezzi
annex-cuts = Tagli
annex-balance = Lastra { $slab } = piano finito { $top } + materiale lasciato ai bordi { $left } + larghezza di taglio { $kerf } + sfridi { $waste }. Le briciole fra gli intagli contano come larghezza di taglio.
annex-range = { $low } a { $high }
annex-three = { $low } a { $high }, probabile { $likely }
annex-kind = pietra
annex-density = densità
annex-thickness = spessore
annex-allowed = resistenza
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = lastra, superficie
annex-slab-mass = la lastra pesa
annex-top-mass = il piano pesa
annex-spare = margine minimo
annex-turn = girato di
annex-corner = angolo del piano
annex-corner-of-top = angolo { $name }
annex-x = x da A lungo AB
annex-y = y da A a squadra
annex-edge = bordo
annex-edge-sawn = tagliato, con { $left } lasciati
annex-edge-flush = sul bordo { $edge } della lastra
annex-length = lunghezza
annex-lies = come sta
annex-piece = pezzo
annex-after = dopo taglio
annex-area = superficie
annex-mass = pesa
annex-rectangle = contiene un rettangolo di
annex-left = pietra da tenere
annex-tool = utensile
annex-core-bit = corona da { $bit }
annex-bending = Sollecitazione per il proprio peso, × 1,2 per la movimentazione, nella pietra più sottile; solo pietra sana
annex-stone-state = pietra
annex-state = { $name }
annex-flat-best = di piatto, supporti migliori
annex-flat-hands = di piatto, in mano
annex-flat-ends = di piatto, per le estremità
annex-one-end = un'estremità sollevata
annex-on-edge = di costa, per le estremità
annex-may = ammesso
annex-lifting = Sollevare a mano, e che cosa serve ai mezzi
annex-slab = lastra
annex-top = piano
annex-guideline = valore indicativo
annex-guideline-is = { $each } per una persona ({ $source }); non promette che un sollevamento al di sotto sia sicuro
annex-person = persona
annex-from-end = dall'estremità
annex-from-side = dal lato
annex-carries = porta
annex-figure = valore in questa squadra
annex-trolley-rated = carrello marcato per
annex-trolley-push = spinta in orizzontale
annex-trolley-ramp = rampa 1 su 12, in più
annex-trolley-tips = si ribalta di traverso a
annex-vacuum-rated = ventose marcate per
annex-sling-pull = tiro per braccio di braca
annex-leans = di costa cade oltre
annex-rails = Pietra stretta accanto alle aperture
annex-rail-is = larga { $width }, lunga { $length }: { $together } con la vicina, { $alone } da sola
annex-setting = Sui suoi appoggi
annex-support = appoggio
annex-carries-most = porta al massimo
annex-with-person = con una persona appoggiata
annex-reaches = sporge
annex-person-stress = sollecitazione con una persona
annex-way-of = La strada: { $name }
annex-way-place = passaggio
annex-way-carried = meglio portato
annex-way-spare = margine
annex-way-clears = { $spare } di margine
annex-way-tight = stretto: { $spare } di margine
annex-way-short = mancano { $short }
annex-way-note = Misurare di nuovo ogni passaggio con le persone e il mezzo che portano.
annex-limit = silice
annex-vibration = vibrazioni
annex-vibration-is = { $reckoned } con la sua incertezza, { $job } per questo lavoro; la giornata { $day }; azione { $action }, limite { $limit } ({ $source })
annex-noise = rumore
annex-noise-is = { $level } per { $hours }; la giornata { $day }; obbligo da { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; verificare le regole in vigore
annex-cited-year = { $document }, { $year }{ $borrowed }; verificare le regole in vigore
annex-masks = maschere che bastano
annex-mask = { $mask } (fattore { $factor })
annex-authority = chiedere le regole a

# In a terminal
answer-job = lavoro
answer-fits = ci sta
answer-fits-is = piano { $length } × { $width }, { $spare } di margine nel punto più stretto
answer-weighs = pesa
answer-weighs-is = piano fino a { $top }, lastra fino a { $slab }
answer-time = tempo
answer-time-is = { $stone } con il disco nella pietra, { $setting } di preparazione
answer-straight = diritto, bordo { $edge }, { $length }
answer-relief = scarico in { $edge }, { $length }
answer-curve = curva in { $edge }, { $length }
answer-hole = fori in { $edge }
answer-guide = { $first } da { $from }, { $second } da { $to }
answer-chord = corda { $length }
answer-frees = libera
answer-more = Altro con --full:
answer-sheet = piano finito     { $low } a { $high }
    tagli            { $straight } diritti, { $curves } curvi
    tempo di taglio  { $sawing } con il disco nella pietra, { $setting } di preparazione
    stop             { $stops }
weigh-stone = { $name }
weigh-place = posto
weigh-no-fit = il piano non sta su questa lastra: è pesato come richiesto
weigh-region = regione
weigh-balance = punto di equilibrio
weigh-balance-is = a { $end } dall'estremità, a { $side } dal lato
weigh-mass = pesa
weigh-mass-is = al massimo { $high }: sollevare con questo valore; probabile { $likely }, almeno { $low }
weigh-size = misure
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = per alzarla

# On a telephone
phone-plan = piano { $plan }
phone-contents = Indice
phone-light = Chiaro o scuro
phone-back = Indietro
phone-next = Avanti
phone-bar = Percorso del foglio
phone-clear = Togli tutte le spunte su questo telefono
phone-forgets = Questo lettore dimentica le spunte quando si chiude. Aprire il file in un browser.
