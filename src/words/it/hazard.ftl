# Findings of hazards: a line, and in full.

working-alone = una persona sola: nessuno per fermare il lavoro, nessuno per chiamare aiuto
    .detail = Persone inserite: { $people }, almeno 2 mentre un disco gira (giudizio). Trovare qualcuno che stia pronto, o indicare in lift.check_call chi sa dove siete e a quali ore chiama; se nessuno risponde, quella persona viene.

second-person = Una seconda persona { $at ->
    [plug-tap] alla spina e al rubinetto
    [plug] alla spina
    [valve-tap] alla valvola dell'aria e al rubinetto
    [valve] alla valvola dell'aria
    [tap] al rubinetto dell'acqua
   *[sight] in vista
 }, che vede l'operatore e non fa altro
    .detail = Delle { $people } persone una sta lì, in vista dell'operatore, fuori dalla linea del disco, con protezione respiratoria e protezione dell'udito. Una mano alzata o una mano sulla spalla vuol dire spegnere, e nessuno chiede perché.

who-is-bound = Cantiere, laboratorio o lavoro in proprio: sapere quale regola vale
    .detail = In un cantiere (29 CFR 1926.1153) basta una riga della tabella 1, seguita alla lettera. Un laboratorio che fa piani di lavoro è industria generale (29 CFR 1910.1053): lì non c'è tabella, l'esposizione si valuta. Un privato non è tenuto a nessuna delle due regole; la tabella è la migliore guida pubblicata, e la polvere fa lo stesso danno.

no-dry-sweeping = Niente spazzatura a secco, niente aria compressa
    .detail = { $rule }{ $borrowed } Dopo i tagli restano in giro circa { $stone } di pietra, di cui fino a { $silica } di silice: una volta asciutti, tornano nell'aria. Aspirapolvere: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Polvere aspirata dappertutto prima di togliere la maschera
    .detail = Nessuna cuffia aspirante prende tutti i { $stone }, meno che mai alle estremità di un taglio. Pavimento, sporgenze, macchina e vestiti si aspirano prima che chiunque tolga la maschera: { $vacuum }{ $vacuum_borrowed }.

cold-water = Mani calde e asciutte; dita bianche o intorpidite: smettere per oggi
    .detail = Maniche impermeabili, un paio di guanti asciutti per ogni ora, pause al caldo. Dita fredde, bianche o intorpidite: smettere per oggi, con il freddo le vibrazioni fanno danno prima.

frost = Niente taglio a umido con il gelo
    .detail = Sotto circa 3 °C (giudizio) il fango gela sotto i piedi e l'acqua si ferma nel tubo e nell'ugello: senza acqua non si taglia. Svuotare macchina e tubo prima della notte.

local-rules-first = Norme locali, istruzioni dei fabbricanti e persone competenti vengono prima di questa scheda
    .detail = La scheda non è un'autorizzazione. Regione dei suoi valori: { $region }. Verificare le regole in vigore con { $authority }. Mezzi di sollevamento, impianti elettrici, strutture e pietra che può contenere amianto spettano a persone abilitate.

slurry-clean-up = Fango raccolto prima che asciughi; secchi necessari: { $buckets }
    .detail = Circa { $kilos }: { $water } l d'acqua ({ $flow } l/min mentre il disco taglia) e { $stone } di pietra, { $buckets } secchi da { $bucket } l. Una volta asciutto ridiventa la polvere che l'acqua tratteneva. Telo sotto i cavalletti, raschiare e aspirare con un aspiraliquidi finché è bagnato, sciacquare vestiti, stivali e macchina, lasciar depositare il resto; niente negli scarichi.

dust-bags = Sacchi dell'aspiratore chiusi e portati via; sacchi necessari: { $bags }
    .detail = Circa { $stone } di pietra se la cuffia aspirante la prendesse tutta; sacchi: { $bags }, al massimo { $bag } l'uno. Cambiare il sacco con la protezione respiratoria indossata, all'aperto; il sacco si chiude prima che esca dall'aspiratore, non si scuote e non si svuota mai per riusarlo.

falling-stone = Nessuno sotto la pietra, mai afferrare una lastra che cade
    .detail = { $mass } kg/m² con lo spessore maggiore misurato e la pietra più pesante di quel tipo. Sfrido e pietra da tenere sono tutti e due sostenuti prima della prima passata; nessun piede e nessun dito sotto o in mezzo; mai stare dove può cadere una lastra messa di costa, e mai provare ad afferrarne una.

wet-floor = Il fango scivola: stivali, acqua convogliata via, pavimento sciacquato prima di sollevare
    .detail = Stivali antiscivolo, acqua convogliata lontano da dove si sta e si trasporta{ $power ->
            [mains] , cavi appesi fuori dal bagnato
           *[other] {""}
        }. Pavimento sciacquato e sgombro prima di sollevare qualsiasi pezzo.

vibration-over-limit = vibrazioni A(8) { $day } m/s² in { $all } min della giornata, limite { $limit } m/s²
    .detail = { $a } per { $minutes } minuti nella giornata con questa macchina, { $points } punti con tutto il resto: A(8) { $day }, limite { $limit }{ $borrowed }, raggiunto dopo { $to_limit } minuti. Dividere il lavoro fra { $people } persone o giorni, al massimo { $to_limit } minuti ciascuno; per stare sotto il valore di azione { $action } ne servono { $people_action }. Inserire i giorni o le persone in dust.days. Stare al caldo, disco che taglia bene, presa leggera. Verificare le regole in vigore.

vibration-over-action = vibrazioni A(8) { $day } m/s² in { $all } min della giornata, valore di azione { $action } m/s²
    .detail = { $a } per { $minutes } minuti nella giornata con questa macchina, { $points } punti con tutto il resto: A(8) { $day }, valore di azione { $action }{ $borrowed }, raggiunto dopo { $to_action } minuti. Dividere il lavoro fra { $people_action } persone o giorni, al massimo { $to_action } minuti ciascuno; stare al caldo, disco che taglia bene, presa leggera. Verificare le regole in vigore.

vibration-unknown = vibrazioni della macchina: leggerle nelle istruzioni
    .detail = Valore { $a }: nessuna macchina portatile è senza vibrazioni. Prendere il valore del fabbricante, o { $usual } m/s² per una smerigliatrice su pietra, e inserire machine.vibration.

disc-over-marked-rpm = { $disc }: macchina { $machine } giri/min, disco marcato { $marked }
    .detail = La macchina gira { $over } giri/min più veloce dei { $marked } marcati sul disco ({ $speed }, marcato per { $marked_speed }). Il disco può andare in pezzi e volare via: usarne uno marcato per { $machine } o più, o una macchina più lenta.

disc-mark-unknown = { $disc }: velocità massima non nota
    .detail = Macchina { $machine } giri/min, marcatura del disco non nota. Leggere la marcatura sul disco e inserire disc.max_rpm; un disco senza marcatura non si usa.

machine-speed-unknown = velocità della macchina non nota
    .detail = Macchina { $machine } giri/min: senza la sua velocità vera nessun disco si può controllare. Leggere la targhetta e inserire machine.rpm.

kickback-pinched-disc = Di lato alla linea del disco; stretto: fermare, liberare, rientrare a piena velocità
    .detail = Stare di lato rispetto alla linea del disco, due mani sulla macchina, cuffia di protezione montata, nessuno in quella linea. Se il disco si stringe: spegnere, aspettare che sia fermo, liberarlo, rientrare nel taglio solo a piena velocità; mai avviare la macchina con il disco nel taglio.

resin-disc-expired = { $disc }: il suo ultimo giorno era il { $expires }
    .detail = Lavoro datato { $date }, ultimo giorno del disco { $expires }. I dischi in resina durano al massimo { $years } anni dalla fabbricazione: rompere questo, e prenderne uno nuovo o un disco diamantato.

resin-disc-age-unknown = { $disc }: legato con resina, ultimo giorno non noto
    .detail = I dischi in resina durano al massimo { $years } anni dalla fabbricazione, e l'umidità accorcia questo tempo. Leggere il mese o il trimestre sull'anello o sull'etichetta e inserire disc.expires; un disco in resina senza data non si usa.

resin-disc-age = { $disc }: da non usare dopo il { $expires }
    .detail = Ultimo giorno del disco { $expires }: confrontarlo con il giorno del lavoro. Fino ad allora tenerlo all'asciutto e disteso in piano; un disco che ha preso umidità o che è caduto si rompe e si butta.

disc-before-use = Disco guardato: nessuna crepa, foro e flange giusti, cuffia della sua misura
    .detail = Nessuna crepa, foro giusto, le due flange originali della macchina e pulite, freccia nel verso giusto, cuffia di protezione della misura del disco, interruzioni del bordo al massimo { $gap }, mai un disco consumato di una macchina più grande. A { $speed } ogni pezzo che si stacca parte come un proiettile.

support-both-sides = I due lati del taglio sostenuti da sotto, vicino al taglio
    .detail = Supporti sotto tutte e due le parti, vicino al taglio e ai bordi della pietra, in modo che il taglio resti aperto fino alla fine. Prima della prima passata lo sfrido poggia su supporti suoi; niente mani, piedi o ginocchia sotto.

rim-speed-over-limit = { $disc }: velocità periferica { $speed }, classe marcata più alta { $highest }
    .detail = Un disco da { $diameter } a { $machine } giri/min va a { $speed }; nessuna striscia colorata ammette più di { $highest }. Disco più piccolo o macchina più lenta.

rim-speed-above-hand-discs = { $disc }: velocità periferica { $speed }, i dischi portatili sono fatti per { $hand }
    .detail = Un disco da { $diameter } a { $machine } giri/min va a { $speed }. Sopra { $hand } m/s (striscia rossa) solo un disco con striscia verde ({ $highest } m/s): cercarla sul disco, o restare a { $slower } giri/min o meno.

disc-run-down = Il disco gira ancora dopo lo spegnimento: aspettare che sia fermo
    .detail = Per alcuni secondi, di più con un disco grande: tenere la macchina lontana da pietra, tubo e vestiti finché il disco non è fermo, poi posarla. { $power ->
            [mains] Spina staccata
            [battery] Batteria tolta
            [air] Tubo dell'aria staccato
           *[engine] Motore spento
        } prima di toccare il disco.

new-disc-run = Disco nuovo: prima a vuoto, nessuno nella sua linea
    .detail = { $minutes } minuto a piena velocità, cuffia di protezione montata, macchina tenuta lontana dal corpo, nessuno nel piano del disco, a ogni montaggio. Se vibra o fischia: spegnere, aspettare che sia fermo, guardarlo di nuovo.

never-steer-the-disc = Mai guidare, torcere o spingere di lato il disco
    .detail = Il carico laterale piega e rompe un disco. Carico laterale ammesso: nessuno. Le curve si fanno con affondi diritti, come nel disegno; non smerigliare con il piatto di un disco da taglio.

disc-bore = { $disc }: foro { $bore } su una sede di { $seat }
    .detail = Foro { $bore }, sede { $seat }, usuale { $usual }, differenza al massimo { $play }. Un disco con gioco gira fuori centro e si rompe, uno stretto non entra. Il disco giusto per la macchina: nessuna boccola, nessuna limatura, nessuno spessore.

protector-unknown = protezione dell'udito: quale, e che cosa c'è scritto sopra?
    .detail = Leggere SNR, H M L o NRR sulla scatola e scriverlo qui: { $level } all'orecchio durante il taglio, e { $duty } dB(A) sulla giornata rendono obbligatoria la protezione. Nel file del lavoro: [protector].

protector-too-weak = protezione dell'udito troppo debole: sotto di essa { $day } dB(A) sulla giornata
    .detail = { $level } durante il taglio, { $holds } dB trattenuti{ $borrowed }: { $ear } all'orecchio, { $day } sulla giornata, al massimo { $duty } ammessi. Una protezione con valore più alto, tappi sotto le cuffie antirumore, o meno minuti.

protector-too-strong = protezione dell'udito troppo forte: { $ear } dB(A) all'orecchio
    .detail = { $level } durante il taglio, { $holds } dB trattenuti{ $borrowed }: { $ear } all'orecchio. Sotto { $quiet } non si sentono richiami e avvertimenti: concordare segnali con la mano, o prenderne una con valore più basso.

protector-foreign-rating = il valore della protezione dell'udito non è quello con cui si calcola qui
    .detail = SNR, H M L (EN 352) e NRR (americano) si misurano in modo diverso e non si scambiano mai l'uno con l'altro. È stata calcolata con il suo proprio sistema, nel modo più severo: { $holds } dB trattenuti. Chiedere il valore che conta nel luogo del lavoro.

noise-over-limit = rumore della giornata { $under } dB(A) sotto la protezione, limite { $limit } dB(A)
    .detail = { $level } dB(A) per { $hours } ore della giornata con questa macchina: { $day_exact } dB(A) sulla giornata senza protezione, { $under } dB(A) sotto di essa, limite { $limit } dB(A){ $borrowed }. Prendere una protezione con valore più alto ([protector]), tappi sotto le cuffie antirumore, o distribuire il taglio su più giorni (dust.days). Verificare le regole in vigore.

noise-unknown = rumore della macchina: leggerlo nelle istruzioni
    .detail = Livello { $level } dB(A): nessuna smerigliatrice è silenziosa. Prendere il valore del fabbricante, o { $usual } dB(A) per un disco grande su pietra, e inserire machine.noise. Fino ad allora portare la protezione dell'udito.

extractor-filter = Aspiratore con filtro pulito che trattiene { $holds }, pulito mentre lavora
    .detail = Portata d'aria { $has }, minimo { $asks }. L'aspiratore conta solo con un filtro pulito che trattiene almeno { $holds }, un ciclone o la pulizia del filtro, e la cuffia aspirante appoggiata alla pietra: { $vacuum }{ $borrowed }; la classe M lascia passare al massimo { $m }. Alle due estremità di un taglio e negli affondi la cuffia aspirante resta aperta: lì procedere lentamente.

control-cut-less = tagliare meno
    .detail = si segano { $face } m² di superficie, { $minutes } minuti con il disco nella pietra: nessun bordo lasciato com'è solleva polvere

control-shop = far tagliare a umido da un laboratorio
    .detail = una fresa a ponte ad acqua lo taglia in pochi minuti, e { $grams } di pietra non arrivano mai sul posto di lavoro

control-at-the-disc = { $method ->
    [water] acqua al disco
    [shroud] cuffia aspirante al disco
   *[none] acqua o aspirazione al disco
 }
    .detail = acqua su una macchina prevista per l'acqua, oppure una cuffia aspirante con almeno { $airflow } per un disco da { $disc }

control-outdoors = all'aperto
    .detail = in aria che si muove, vento di lato, lontano da porte e prese d'aria

control-distance = distanza
    .detail = nessuno senza protezione respiratoria dove può arrivare polvere o nebbia, e nessuno in linea con il disco

control-mask = la maschera, per ultima
    .detail = adatta al viso di chi la porta, viso ben rasato se è aderente, indossata finché il posto non è pulito

controls-open = più efficace della maschera, ancora da fare: { $what }
    .detail = Farlo, o scrivere perché no: ciascuno toglie polvere che la maschera dovrebbe trattenere.

no-dust-control = taglio a secco senza niente che trattenga la polvere
    .detail = Misura contro la polvere: nessuna; richiesta: almeno una delle due. Usare l'acqua su una macchina prevista per l'acqua, oppure una cuffia aspirante con un aspiratore abbastanza potente per il disco, oppure far tagliare a umido da un laboratorio. Il taglio a secco e senza cuffia aspirante non è in nessuna riga della tabella; nessuna protezione respiratoria compensa questa mancanza, e la polvere raggiunge tutti quelli che sono vicini.

water-flow = Acqua sul bordo del disco prima che tocchi la pietra, finché non l'ha lasciata
    .detail = Portata considerata: { $flow } litri al minuto. La regola non indica nessuna cifra per una smerigliatrice; per le troncatrici portatili a disco si consigliano { $advised } litri al minuto. Acqua sul bordo del disco prima che tocchi la pietra, e finché non l'ha lasciata. Se si vede polvere o vapore: fermarsi, puntare l'acqua sul bordo del disco, liberare l'ugello; più di { $advised } litri al minuto non trattengono più polvere.

water-too-little = { $flow } litri al minuto: meno di quanto si consiglia per una troncatrice portatile
    .detail = { $flow } litri al minuto, { $advised } consigliati per le troncatrici portatili a disco: meno acqua trattiene meno polvere. Puntare l'acqua sul bordo del disco, liberare l'ugello, riempire il serbatoio.

shroud-airflow-unknown = portata d'aria dell'aspiratore non nota
    .detail = Portata d'aria non nota, un disco da { $disc } richiede almeno { $asks } m³/h. Senza questo dato l'efficacia della cuffia aspirante non è provata: leggere la targhetta dell'aspiratore e inserire dust.airflow, o tagliare a umido.

shroud-airflow-too-small = l'aspiratore muove { $has }, il disco ne richiede { $asks }
    .detail = Portata d'aria { $has }, minimo { $asks } m³/h per un disco da { $disc }. Usare un aspiratore più potente o un disco più piccolo, o tagliare a umido.

not-in-table-indoors = non è nella tabella dell'autorità: l'esposizione va valutata
    .detail = Questa macchina, questa misura contro la polvere, al chiuso, { $hours } h nella giornata: nessuna riga. Nessuno ha pubblicato quale protezione respiratoria basta. All'aperto la tabella ha righe per l'acqua e per una cuffia aspirante: passare a un luogo o a una misura che la tabella elenca, o far valutare l'esposizione da una persona competente.

not-in-table = non è nella tabella dell'autorità: l'esposizione va valutata
    .detail = Questa macchina, questa misura contro la polvere, all'aperto, { $hours } h nella giornata: nessuna riga. Nessuno ha pubblicato quale protezione respiratoria basta. Cambiare la misura con una che la tabella elenca per questa macchina, o far valutare l'esposizione da una persona competente.

indoors-exhaust = al chiuso: bisogna anche aspirare via l'aria
    .detail = Luogo: al chiuso. Tagliare all'aperto, se è possibile. Altrimenti scaricare all'aperto la polvere visibile, isolare il locale, e non lasciar entrare nessuno senza protezione respiratoria.

marble-veins = le vene nel marmo possono contenere molta più silice della pietra
    .detail = Il marmo nel suo insieme contiene al massimo { $share } % di silice; le sue vene possono contenerne molta di più. Trattare un taglio lungo una vena o attraverso una vena come un taglio in pietra ricca di silice.

stone-kind-unknown = { $stone }: non si sa che cosa lega la pietra
    .detail = La pietra legata con resina che contiene l'1 % di silice o più conta come pietra agglomerata. Chiedere la scheda tecnica e inserire stone.binder. Se è pietra agglomerata: { $rule }

silica-unknown = { $stone }: chiedere la sua quota di silice
    .detail = Silice inserita: al massimo { $share } %, ma quasi nessuna pietra ne è priva. Finché una scheda tecnica non attesta quel valore, trattare la pietra come ricca di silice (sopra { $threshold } %), e inserire stone.silica.

engineered-stone-banned = qui la pietra agglomerata non si può tagliare
    .detail = { $rule }

engineered-stone-dry = pietra agglomerata senza acqua
    .detail = Metodi a umido: nessuno, ma sono richiesti. { $rule }

engineered-stone-powered-respirator = pietra agglomerata senza protezione respiratoria ventilata
    .detail = Protezione respiratoria ventilata: nessuna disponibile, ma è richiesta. { $rule }

engineered-stone = pietra agglomerata: prima valgono regole più severe
    .detail = { $rule } Lasciare questa pietra a un laboratorio autorizzato è la scelta sicura.

high-silica-stone = { $stone }: può contenere fino a { $high } % di silice
    .detail = Silice: da { $low } a { $high } % della pietra; sopra { $threshold } % la pietra conta come ricca di silice (valore della California, usato qui ovunque). La sua polvere lascia nei polmoni cicatrici per sempre: misura contro la polvere e protezione respiratoria dal primo contatto fino alla fine della pulizia, e nessuno nelle vicinanze senza protezione respiratoria.

california-silica-rule = lavoro ad alta esposizione: a umido, in area regolamentata, la maschera più forte
    .detail = Silice fino a { $high } %. { $rule }

silica-rich-stone-dry = lavoro ad alta esposizione senza acqua: la California chiede metodi a umido
    .detail = Silice fino a { $high } %. { $rule }

sparks-into-extractor = acciaio nella pietra: le scintille entrano nell'aspiratore
    .detail = Acciaio che si può tagliare con un aspiratore in funzione: nessuno. Le scintille danno fuoco al suo sacco. Togliere prima l'acciaio, tenere i tagli lontani dall'acciaio, o tagliare a umido.

sparks-from-steel = l'acciaio nella pietra fa scintille
    .detail = Niente che possa bruciare entro { $clear } (giudizio), un secchio pieno d'acqua e un estintore a portata di mano, un disco che il suo fabbricante ammette per l'acciaio, non forzare. Un'ora dopo l'ultimo taglio controllare di nuovo se c'è fumo.

steel-not-known = acciaio nella pietra: guardare, nessuno o dove?
    .detail = Spesso sul retro di una lastra sono incollati tondini e reti. Guardare il retro, passare una calamita lungo ogni linea di taglio. Nel file del lavoro: stone.steel ("none" per nessuno, "some" se ce n'è).

supply-unprotected = acqua con macchina a rete senza differenziale, GFCI o 110 V con il centro a terra
    .detail = Protezione: nessuna nota; richiesto: interruttore differenziale da { $rcd } o meno, GFCI classe A ({ $gfci }), oppure 110 V con il centro a terra ({ $volts } verso terra). Qui: { $rule }{ $borrowed }. Dove c'è acqua, senza protezione non si taglia.

supply-unprotected-dry = macchina a rete senza differenziale, GFCI o 110 V con il centro a terra
    .detail = Protezione: nessuna nota; richiesto: interruttore differenziale da { $rcd } o meno, GFCI classe A ({ $gfci }), oppure 110 V con il centro a terra ({ $volts } verso terra). Qui: { $rule }{ $borrowed }. Inserire una protezione nel cavo di alimentazione e premere prima il suo tasto di prova.

wet-mains = Tasto di prova (differenziale, GFCI), se c'è, premuto: scatta. Spine asciutte e sollevate da terra
    .detail = Tasto di prova premuto prima del primo taglio: la protezione deve scattare. Spine e giunzioni sollevate da terra e asciutte, cavi appesi ad ansa in modo che l'acqua goccioli prima della spina, mani asciutte su spina e interruttore. Se scatta durante il taglio: fermarsi, trovare la causa, non tenerla mai inserita a forza.

engine-indoors = motore a scoppio al chiuso: monossido di carbonio
    .detail = Motori a scoppio al chiuso o in un cortile chiuso: nessuno ammesso. I gas di scarico uccidono senza avvertire; tagliare all'aperto, o usare una macchina a batteria, ad aria o a rete.

engine-fumes = motore a scoppio: gas di scarico e carburante
    .detail = All'aperto con aria da tutti i lati, mai in una fossa, mai sotto una tenda, mai in un angolo fra muri. Scarico diretto lontano dai due volti. Fare rifornimento a motore freddo, e avviarlo in un altro posto.

water-on-mains-unrated = acqua su una macchina a rete che non è fatta per l'acqua: scossa elettrica
    .detail = Idoneità dichiarata all'acqua: nessuna; richiesta: quella del fabbricante, per il taglio a umido. Le avvertenze normalizzate vietano l'acqua su una normale smerigliatrice a rete; un interruttore differenziale o un GFCI non ne fa una macchina per il taglio a umido. Usare una macchina prevista per il taglio a umido, oppure una cuffia aspirante e un aspiratore.

water-not-rated = acqua su una macchina che non è fatta per l'acqua
    .detail = Idoneità dichiarata all'acqua: nessuna; richiesta: quella del fabbricante, per il taglio a umido. Usare una macchina il cui fabbricante ammette l'acqua, oppure una cuffia aspirante e un aspiratore.

battery-wet = Batteria tolta prima di toccare il disco, batterie all'asciutto
    .detail = Le batterie si cambiano lontano dal fango e con le mani asciutte; una batteria che si è bagnata all'interno non si usa e non si ricarica più. La batteria si toglie prima di guardare o cambiare il disco.

air-hose = Tubo dell'aria intero, raccordi assicurati, niente acqua nell'aria
    .detail = La velocità inserita di { $rpm } giri/min vale solo alla pressione della targhetta: più pressione, più velocità. Regolatore di pressione e raccordi di sicurezza montati, scarico diretto lontano dalla polvere e dalle mani, tubo svuotato dall'aria prima di toccare il disco. Mai soffiare via la polvere, mai pulire i vestiti con l'aria.

respirator-class = leggere la classe marcata sull'apparecchio: { $mask }
    .detail = Il suo fattore va da { $least } a { $most } secondo la classe ({ $marks }), richiesto { $apf } o più{ $borrowed }. Conta come { $least } finché la marcatura non è inserita in dust.respirator: usare un apparecchio marcato per { $apf } o più.

respirator-not-in-scheme = { $mask }: nessun fattore nel sistema di questa regione
    .detail = { $mask }: qui fattore 0, ma un fattore è richiesto{ $borrowed }. I fattori di due sistemi non si mescolano mai; una maschera senza riga in questo sistema conta come nessuna maschera. Prima ciò che resta DA FARE nell'ordine delle misure; poi una protezione respiratoria approvata dove si lavora.

respirator-unlisted = { $mask }: nessun fattore nel sistema di questa regione
    .detail = Fattore 0, nessuno richiesto dalla tabella{ $borrowed }. Può darsi che trattenga la polvere, ma qui nessuna regola la considera: chiedere una protezione respiratoria approvata dove si lavora.

respirator-missing = nessuna protezione respiratoria disponibile
    .detail = Protezione respiratoria: nessuna; fattore richiesto: { $apf } o più{ $borrowed }. Prima ciò che resta DA FARE nell'ordine delle misure; poi procurarsene una che si adatti bene a chi la porta, e inserire dust.respirator.

respirator-missing-unassessed = nessuna protezione respiratoria disponibile, e niente stabilisce quale basta
    .detail = Protezione respiratoria: nessuna; fattore: niente di pubblicato lo stabilisce, l'esposizione va valutata. Prima ciò che resta DA FARE nell'ordine delle misure; poi far valutare l'esposizione, procurarsi la protezione respiratoria che ne risulta, e inserire dust.respirator.

respirator-none-asked = nessuna protezione respiratoria disponibile; qui la tabella non ne richiede
    .detail = Protezione respiratoria: nessuna, nessuna richiesta dalla tabella{ $borrowed }. La tabella vale solo finché la sua misura contro la polvere funziona senza difetti, e la polvere che fa danno è troppo fine per vedersi: averne una adatta al viso, e indossarla mentre il disco gira e per la pulizia.

respirator-not-fit-tested = far provare la tenuta della maschera su chi la porta
    .detail = { $mask }: il suo fattore vale solo dopo una prova di adattabilità e sulla pelle ben rasata; fino ad allora non ci si può contare. Far fare la prova, o usare un cappuccio ventilato.

respirator-clean-shaven = Viso ben rasato, tenuta della maschera controllata ogni volta
    .detail = { $mask }: prova di adattabilità fatta, e vale solo sulla pelle ben rasata; anche la barba di un giorno conta come barba. Controllare la tenuta ogni volta che si indossa; un'altra taglia o marca, o un altro viso, richiede una nuova prova.

respirator-below-required = { $mask }: qui vale come fattore { $has }, richiesto { $apf }
    .detail = { $mask }: fattore { $has }, richiesto { $apf } o più{ $borrowed }. Prima ciò che resta DA FARE nell'ordine delle misure: una misura più forte viene prima di una maschera più forte. Poi una protezione respiratoria con fattore { $apf } o più; i fattori di due sistemi non si mescolano mai.

nuisance-mask = una maschera senza classe non è protezione respiratoria
    .detail = Fattore 0: non porta nessuna classe, e la polvere fine passa attraverso e ai lati. Non conta affatto come protezione respiratoria. Procurarsene una con una classe che qui vale, e inserire dust.respirator.

asbestos-not-tested = { $stone }: può contenere minerali di amianto, non tagliare prima di un'analisi
    .detail = Amianto che si può tagliare: nessuno. Prima del primo taglio far analizzare da un laboratorio una scheggia di questa lastra, o farsi dare l'analisi della cava stessa, e inserire stone.asbestos, stone.report e stone.date. Senza un risultato chiaro è un lavoro per persone abilitate.

asbestos-declaration = { $stone }: chiedere la dichiarazione della cava sui minerali di amianto
    .detail = { $stone }: una delle rocce che possono contenerli. Chiedere al venditore la dichiarazione della cava e inserire stone.asbestos, stone.report e stone.date.

binder-unknown = { $stone }: legante non noto, perciò conta come pietra agglomerata
    .detail = Una pietra con l'1 % di silice o più di cui nessuno ha indicato il legante conta come agglomerata finché stone.binder non dice altro. { $rule }

resin-in-fired-slab = { $stone }: è senza resina?
    .detail = Il gres porcellanato e la pietra sinterizzata restano fuori dal divieto solo se non contengono resina. Chiedere la scheda tecnica e inserire stone.binder. { $rule }

supply-unprotected-outdoors = macchina a rete all'aperto senza differenziale, GFCI o 110 V con il centro a terra
    .detail = Protezione: nessuna nota; richiesto: interruttore differenziale da { $rcd } o meno, GFCI classe A ({ $gfci }), oppure 110 V con il centro a terra ({ $volts } verso terra). Qui: { $rule }{ $borrowed }. All'aperto il terreno bagnato e i cavi danneggiati rendono mortale un guasto: inserire una protezione nel cavo, premere il suo tasto di prova, e inserire machine.protected.

speed-assumed = leggere la velocità su targa o disco: { $what }, supposto
    .detail = Supposto: { $what }. Leggere la targhetta della macchina e la marcatura del disco, e inserire machine.rpm e disc.max_rpm: il controllo del disco con la macchina vale solo per i valori veri.

disc-larger-than-machine = { $disc }: { $diameter }, la macchina è fatta per { $largest } al massimo
    .detail = Diametro { $diameter }, disco più grande della macchina e della sua cuffia di protezione { $largest }. Usare un disco più piccolo, o una macchina fatta per questo; mai togliere la cuffia di protezione.

respirator-filter = qui un N95 non basta: è richiesto un filtro della serie 100 o HEPA
    .detail = Protezione respiratoria: N95; richiesto: fattore 10 o più con filtro della serie 100 o HEPA. Procurarsi una semimaschera con filtri P100 o meglio, e inserire dust.respirator.

no-water-flow = metodo a umido senza portata: è taglio a secco
    .detail = Acqua: 0 litri al minuto. A secco e senza cuffia aspirante non è in nessuna riga della tabella, e nessuna protezione respiratoria lo compensa. Portare acqua al bordo del disco e inserire dust.water, o usare una cuffia aspirante e un aspiratore.

speed-assumed-of = { $what } { $speed } giri/min

bystanders = Nessun altro vicino: bambini, vicini e animali lontani e avvisati
    .detail = Polvere, nebbia e rumore arrivano oltre il posto del taglio, e un pezzo di disco rotto vola per decine di metri. Chiudere il posto, avvisare i vicini quando si comincia, e fermare il disco se entra qualcuno senza maschera, occhiali a mascherina e protezione dell'udito.

windows-and-intakes = Finestre, porte e prese d'aria chiuse, ventilazione spenta
    .detail = La polvere che fa danno è troppo fine per vedersi e va lontano. Chiudere finestre e porte della casa e chiedere lo stesso ai vicini; spegnere ventilazione, pompa di calore e condizionatore vicino al posto; tagliare sottovento rispetto a loro.

working-height = Pietra fra anca e gomito, terreno fermo, niente scale
    .detail = Cavalletti ad altezza di lavoro e terreno in piano sotto i due piedi. Mai tagliare da una scala o da un gradino, sopra la spalla, o in ginocchio più in basso della pietra: un contraccolpo vi butta giù e la macchina vi segue.

eyes = Occhiali a mascherina, sopra una visiera, lavaocchi a portata di mano
    .detail = Gli occhiali normali lasciano entrare schegge e granelli da sotto e di lato. Occhiali a mascherina per tutti quelli vicini; la sola visiera non basta. Granello nell'occhio: sciacquare, mai strofinare; una scheggia che resta è per il medico.

side-handle = Impugnatura laterale e cuffia montate, due mani, interruttore mai bloccato
    .detail = Una mano sola non regge un contraccolpo. La cuffia di protezione sta fra disco e viso, e nessun taglio vale il toglierla. Un interruttore bloccato fa girare il disco anche dopo che la macchina è caduta{ $power ->
            [mains] ; dopo un'interruzione di corrente spegnere prima di rimettere la spina
           *[other] {""}
        }.

leads = Cavo e tubi dietro di sé, interi, srotolati, lontani da disco e piedi
    .detail = Sopra la spalla e dietro, mai attraverso il taglio o il passaggio. Un cavo danneggiato non si usa. Giunzioni asciutte e sollevate da terra; un avvolgicavo si srotola, o si scalda.

hoses = Tubi dietro di sé, interi, lontani da disco e piedi
    .detail = Sopra la spalla e dietro, mai attraverso il taglio o il passaggio. Un tubo che perde o è piegato non si usa.

leaning-slabs = Lastre di costa legate o su un cavalletto ad A; una alla volta, nessuno dove possono cadere
    .detail = In Gran Bretagna sei persone sono morte in cinque anni per lastre cadute durante il deposito o lo spostamento. Cavalletto ad A su terreno in piano, piedi staccati dal muro, lastre legate; mai sciogliere la legatura di un pacco con qualcuno davanti; nessuno fra due lastre. Una lastra che comincia a cadere si lascia: scappare, mai trattenerla.

not-for-everyone = Non per: donne incinte, malati di polmoni, cuore, mani o schiena, minori, stanchi o ubriachi
    .detail = Malattia ai polmoni, dita bianche, cuore debole, un pacemaker il cui fabbricante mette in guardia dalle macchine, schiena lesa, gravidanza: prima chiedere a un medico. Nessun minore, nessuno stanco, nessuno dopo alcol o droghe o farmaci che rallentano.

first-aid = Primo soccorso pronto: benda compressiva, lavaocchi, telefono, indirizzo scritto
    .detail = Un'arteria tagliata uccide in pochi minuti: premere forte sulla ferita, benda compressiva o laccio, chiamare. Corrente staccata prima di toccare chi ha preso la scossa. Schiacciato sotto la pietra: prima chiamare, sollevare solo con un mezzo. Chi conosce il primo soccorso si indica prima di cominciare.

moment-before = Prima

moment-cutting = Durante il taglio

moment-moving = Muovendo la pietra

moment-after = Dopo

settled-asbestos = Analizzata, senza minerali di amianto: { $report }, { $date }

settled-controlled = Pietra con { $share } di silice tagliata sotto controllo, come chiede la regola

settled-noise = { $level } durante il taglio, { $under } dB(A) sulla giornata sotto la protezione, limite { $limit } dB(A)

settled-mask = { $mask }: vale come fattore { $has }, richiesto { $apf }

settled-check-call = Da solo, con chiamata concordata: { $who }

settled-supply = Alimentazione a rete protetta

settled-speed = { $disc }: marcato { $marked } giri/min, macchina { $machine }
