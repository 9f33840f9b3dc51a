# Findings of hazards: a line, and in full.

working-alone = bare én person: ingen som kan stanse arbeidet, ingen som kan tilkalle hjelp
    .detail = Personer oppført: { $people }, minst 2 så lenge en skive går (skjønn). Finn en som står klar, eller skriv i lift.check_call hvem som vet hvor du er, og når de ringer; svarer ingen, kommer de.

second-person = En person nummer to { $at ->
    [plug-tap] ved støpsel og vannkran
    [plug] ved støpselet
    [valve-tap] ved luftkran og vannkran
    [valve] ved luftkranen
    [tap] ved vannkranen
   *[sight] innen synsvidde
 }, som ser operatøren og ikke gjør noe annet
    .detail = Av de { $people } personene står én der, synlig for operatøren, ikke i linje med skiva, med åndedrettsvern og hørselsvern. En løftet hånd eller en hånd på skulderen betyr slå av, og ingen spør hvorfor.

who-is-bound = Byggeplass, verksted eller eget arbeid: vit hvilken regel som gjelder
    .detail = På en byggeplass (29 CFR 1926.1153) er det nok med en rad i tabell 1, fulgt til punkt og prikke. Et verksted som lager benkeplater, er vanlig industri (29 CFR 1910.1053): ingen tabell der, eksponeringen vurderes. En privatperson er ikke bundet av noen av dem; tabellen er den beste publiserte veiledningen, og støvet gjør samme skade.

no-dry-sweeping = Ingen tørrfeiing, ingen trykkluft
    .detail = { $rule }{ $borrowed } Omtrent { $stone } stein, opptil { $silica } av det silika, ligger igjen etter kuttene: når det er tørt, virvles det opp igjen. Støvsuger: { $vacuum }{ $vacuum_borrowed }.

vacuum-before-the-mask-comes-off = Støv sugd opp overalt før masken tas av
    .detail = Ingen avsugshette fanger alle { $stone }, minst av alt ved endene av et kutt. Gulv, hyller og kanter, maskin og klær støvsuges før noen tar av masken: { $vacuum }{ $vacuum_borrowed }.

cold-water = Hendene varme og tørre; hvite eller numne fingre: slutt for dagen
    .detail = Vanntette ermer, et tørt par hansker for hver time, pauser i varmen. Kalde, hvite eller følelsesløse fingre: stopp for dagen, kulde gjør at vibrasjon skader tidligere.

frost = Ingen våtkutting i frost
    .detail = Under omtrent 3 °C (skjønn) fryser slammet under føttene, og vannet stopper i slange og dyse: uten vann, ingen kutting. Tøm maskin og slange før natten.

local-rules-first = Lokale regler, produsentenes anvisninger og fagkyndige går foran dette arket
    .detail = Arket er ingen tillatelse. Tallene gjelder for regionen: { $region }. Sjekk gjeldende regler hos { $authority }. Løfteutstyr, elektrisk anlegg, bærende konstruksjoner og stein som kan inneholde asbest, er for fagfolk med godkjenning.

slurry-clean-up = Slammet samlet opp før det tørker; bøtter som trengs: { $buckets }
    .detail = Omtrent { $kilos }: { $water } l vann ({ $flow } l/min mens skiva kutter) og { $stone } stein, { $buckets } bøtter på { $bucket } l. Når det tørker, er det igjen støvet du holdt nede. Plast under bukkene, skrap opp og sug opp med våtsuger mens det er vått, skyll klær, støvler og maskin, la resten synke til bunns; ingenting i sluk eller avløp.

dust-bags = Støvposene fra avsuget lukket og vekk; poser som trengs: { $bags }
    .detail = Omtrent { $stone } stein hvis avsugshetten fanget alt, poser på høyst { $bag }: { $bags }. Bytt posen med åndedrettsvern på, utendørs, lukket før den tas ut av avsuget, aldri ristet ut eller tømt for å brukes igjen.

falling-stone = Ingen under steinen, ta aldri imot en plate som faller
    .detail = { $mass } kg/m² ved den tykkeste målingen og den tyngste steinen av slaget. Både biten som skal av, og steinen som blir igjen, holdes før første gjennomgang; ingens føtter eller fingre under eller imellom; stå aldri der en plate på høykant kan falle, og prøv aldri å ta imot en.

wet-floor = Slam er glatt: støvler, vannet ledet bort, gulvet skylt før noe løftes
    .detail = Sklisikre støvler, vannet ledet bort fra der folk står og bærer{ $power ->
            [mains] , ledninger hengt opp over det våte
           *[other] {""}
        }. Gulvet skylt og ryddet før noe stykke løftes.

vibration-over-limit = vibrasjon A(8) { $day } m/s² i { $all } min av dagen, grenseverdi { $limit } m/s²
    .detail = { $a } i { $minutes } minutter av dagen med denne maskinen, { $points } poeng med alt annet: A(8) { $day }, grenseverdi { $limit }{ $borrowed }, nådd etter { $to_limit } minutter. Fordel arbeidet på { $people } personer eller dager, høyst { $to_limit } minutter hver; under tiltaksverdien { $action } trengs { $people_action }. Før inn dagene eller personene som dust.days. Hold varmen, skarp skive, lett grep. Sjekk gjeldende regler.

vibration-over-action = vibrasjon A(8) { $day } m/s² i { $all } min av dagen, tiltaksverdi { $action } m/s²
    .detail = { $a } i { $minutes } minutter av dagen med denne maskinen, { $points } poeng med alt annet: A(8) { $day }, tiltaksverdi { $action }{ $borrowed }, nådd etter { $to_action } minutter. Del arbeidet på { $people_action } personer eller dager, høyst { $to_action } minutter på hver; hold varmen, skarp skive, lett grep. Sjekk gjeldende regler.

vibration-unknown = vibrasjon fra maskinen: les den i bruksanvisningen
    .detail = Verdi { $a }: ingen håndmaskin er uten vibrasjon. Ta produsentens tall, eller { $usual } m/s² for en vinkelsliper på stein, og før inn machine.vibration.

disc-over-marked-rpm = { $disc }: maskin { $machine } omdr./min, skive merket { $marked }
    .detail = Maskinen går { $over } omdr./min fortere enn de { $marked } som er merket på skiva ({ $speed }, merket for { $marked_speed }). Skiva kan fly i stykker: bruk en som er merket for { $machine } eller mer, eller en langsommere maskin.

disc-mark-unknown = { $disc }: høyeste turtall er ikke kjent
    .detail = Maskin { $machine } omdr./min, merkingen på skiva er ikke kjent. Les merkingen på skiva og før inn disc.max_rpm; en skive uten merking brukes ikke.

machine-speed-unknown = turtallet til maskinen er ikke kjent
    .detail = Maskin { $machine } omdr./min: uten det virkelige turtallet kan ingen skive kontrolleres. Les merkeskiltet og før inn machine.rpm.

kickback-pinched-disc = Stå ved siden av skivas linje; i klem: stopp, løsne den, inn igjen på fullt turtall
    .detail = Stå ved siden av skivas linje, to hender, vernedekselet på, ingen i den linjen. Etter en klem: stopp, vent til skiva står stille, løsne den, gå inn igjen bare på fullt turtall; start aldri i kuttet.

resin-disc-expired = { $disc }: siste dag var { $expires }
    .detail = Arbeidet er datert { $date }, skivas siste dag { $expires }. Harpiksbundne skiver holder høyst { $years } år fra produksjonen: knekk den, og ta en ny eller en diamantskive.

resin-disc-age-unknown = { $disc }: harpiksbundet, siste dag er ikke kjent
    .detail = Harpiksbundne skiver holder høyst { $years } år fra produksjonen, og fukt forkorter det. Les måneden eller kvartalet på ringen eller etiketten og før inn disc.expires; en harpiksbundet skive uten dato brukes ikke.

resin-disc-age = { $disc }: ikke etter { $expires }
    .detail = Skivas siste dag { $expires }: sammenlign den med arbeidsdagen. Oppbevart tørt og liggende flatt til da; en skive som har vært fuktig eller har falt ned, knekkes og kastes.

disc-before-use = Skiva sett over: ingen sprekker, hull og flenser passer, vernedeksel i dens egen størrelse
    .detail = Ingen sprekker, hullet passer, begge flensene er maskinens egne og rene, pilen riktig vei, vernedeksel i skivas egen størrelse, mellomrom i kanten høyst { $gap }, aldri en slitt skive fra en større maskin. Ved { $speed } er hver løs bit et prosjektil.

support-both-sides = Begge sider av kuttet båret nedenfra, tett ved det
    .detail = Klosser under begge sider nær kuttet og ved kantene av steinen, slik at kuttesporet holder seg åpent helt til enden. Biten som skal av, ligger på egne klosser før første gjennomgang; aldri hånd, fot eller kne under den.

rim-speed-over-limit = { $disc }: periferifart { $speed }, høyeste merkede klasse { $highest }
    .detail = En skive på { $diameter } ved { $machine } omdr./min går med { $speed }; ingen fargestripe tillater mer enn { $highest }. Mindre skive eller langsommere maskin.

rim-speed-above-hand-discs = { $disc }: periferifart { $speed }, skiver til håndmaskiner er laget for { $hand }
    .detail = En skive på { $diameter } ved { $machine } omdr./min går med { $speed }. Over { $hand } m/s (rød stripe) bare en skive med grønn stripe ({ $highest } m/s): se etter den, eller gå ned til { $slower } omdr./min eller mindre.

disc-run-down = Skiva roterer videre etter at bryteren er av: vent til den står
    .detail = I sekunder, lenger med en stor skive: hold maskinen klar av stein, slange og klær til skiva står stille, legg den så ned. { $power ->
            [mains] Støpsel ut
            [battery] Batteri ut
            [air] Luftslange av
           *[engine] Motor av
        } før skiva berøres.

new-disc-run = Ny skive kjøres uten belastning først, alle ute av linjen
    .detail = { $minutes } minutt på fullt turtall, vernedekselet på, maskinen holdt unna, ingen i skivas plan, ved hver montering. Rister eller synger den: slå av, vent til den står stille, se på den igjen.

never-steer-the-disc = Skiva styres, vris eller skyves aldri sidelengs
    .detail = Sidebelastning bøyer og knekker en skive. Tillatt sidebelastning: ingen. Kurver lages av rette dykkutt som tegnet; ingen sliping med flatsiden av en kappeskive.

disc-bore = { $disc }: senterhull { $bore } på et skivefeste på { $seat }
    .detail = Senterhull { $bore }, skivefeste { $seat }, vanlig { $usual }, høyst { $play } forskjell. En løs skive går urundt og brister, en trang går ikke på. Riktig skive for maskinen: ingen foring, ingen filing, ikke noe mellomlegg.

protector-unknown = hørselsvern: hvilket, og hva står det på det?
    .detail = Les SNR, H M L eller NRR på esken og skriv det her: { $level } ved øret under kuttingen, og { $duty } dB(A) over dagen gjør vern til en plikt. I jobbfilen: [protector].

protector-too-weak = hørselsvernet er for svakt: { $day } dB(A) over dagen under det
    .detail = { $level } under kuttingen, { $holds } dB holdes tilbake{ $borrowed }: { $ear } ved øret, { $day } over dagen, høyst { $duty } tillatt. Et hørselsvern med høyere dempingsverdi, ørepropper under øreklokker, eller færre minutter.

protector-too-strong = hørselsvernet er for sterkt: { $ear } dB(A) ved øret
    .detail = { $level } under kuttingen, { $holds } dB holdes tilbake{ $borrowed }: { $ear } ved øret. Under { $quiet } høres ikke rop og varsler: avtal håndtegn, eller ta et med lavere dempingsverdi.

protector-foreign-rating = hørselsvernets dempingsverdi er ikke den det regnes med her
    .detail = SNR, H M L (EN 352) og NRR (amerikansk) prøves ulikt og byttes aldri om. Det er regnet etter sin egen ordning, på den strengere måten: { $holds } dB holdes tilbake. Spør etter den dempingsverdien som gjelder der du er.

noise-over-limit = støy over dagen { $under } dB(A) under hørselsvernet, grenseverdi { $limit } dB(A)
    .detail = { $level } dB(A) i { $hours } timer av dagen med denne maskinen: { $day_exact } dB(A) over dagen uten hørselsvern, { $under } dB(A) under det, grenseverdi { $limit } dB(A){ $borrowed }. Ta et hørselsvern med høyere dempingsverdi ([protector]), ørepropper under øreklokker, eller fordel sagingen på flere dager (dust.days). Sjekk gjeldende regler.

noise-unknown = støy fra maskinen: les den i bruksanvisningen
    .detail = Nivå { $level } dB(A): ingen vinkelsliper er lydløs. Ta produsentens tall, eller { $usual } dB(A) for en stor skive på stein, og før inn machine.noise. Bruk hørselsvern til da.

extractor-filter = Avsug med rent filter som holder tilbake { $holds }, renset mens det går
    .detail = Luftmengde { $has }, minst { $asks }. Den gjelder med et rent filter på minst { $holds }, syklon eller filterrensing, og avsugshetten inntil steinen: { $vacuum }{ $borrowed }; klasse M slipper gjennom høyst { $m }. Ved begge ender av et kutt og ved dykkutt står avsugshetten åpen: gå sakte der.

control-cut-less = kutt mindre
    .detail = { $face } m² snittflate sages, { $minutes } minutter med skiva i steinen: hver kant som får bli som den er, gir ikke noe støv

control-shop = få det kuttet vått på et verksted
    .detail = en brosag under vann kutter dette på få minutter, og { $grams } stein når aldri plassen din

control-at-the-disc = { $method ->
    [water] vann ved skiva
    [shroud] avsugshette ved skiva
   *[none] vann eller avsug ved skiva
 }
    .detail = vann på en maskin som er godkjent for det, eller en avsugshette med minst { $airflow } for en skive på { $disc }

control-outdoors = utendørs
    .detail = i luft som er i bevegelse, vind fra siden, unna dører og luftinntak

control-distance = avstand
    .detail = ingen uten åndedrettsvern der støv eller vanntåke kan drive, og ingen i linje med skiva

control-mask = masken, til slutt
    .detail = passer den som bruker den, glattbarbert der den sitter tett, på til plassen er ren

controls-open = sterkere enn masken, fortsatt åpent: { $what }
    .detail = Gjør det, eller skriv hvorfor ikke: hvert av dem fjerner støv som masken ellers måtte holde.

no-dust-control = tørrkutting uten noe som holder støvet
    .detail = Tiltak mot støv: ikke noe, minst ett av to kreves. Bruk vann på en maskin som er godkjent for det, eller en avsugshette med et avsug som er kraftig nok for skiva, eller få det kuttet vått på et verksted. Tørt og uten avsugshette står ikke i noen rad i tabellen; ikke noe åndedrettsvern veier opp for det, og støvet når alle i nærheten.

water-flow = Vann på skivekanten før skiva rører steinen, til den har forlatt den
    .detail = Det er regnet med { $flow } liter i minuttet. Regelen nevner ikke noe tall for en vinkelsliper; { $advised } liter i minuttet anbefales for håndholdte kappemaskiner. Vann på skivekanten før skiva rører steinen, og til den har forlatt den. Synlig støv eller damp: stopp, rett vannet mot skivekanten, åpne dysen; mer enn { $advised } liter i minuttet holder ikke nede mer støv.

water-too-little = { $flow } liter i minuttet er mindre enn det som anbefales for en håndholdt kappemaskin
    .detail = { $flow } liter i minuttet, { $advised } anbefales for håndholdte kappemaskiner: mindre vann holder nede mindre støv. Rett vannet mot skivekanten, åpne dysen, fyll beholderen.

shroud-airflow-unknown = luftmengden i avsuget er ikke kjent
    .detail = Luftmengden er ikke kjent, en skive på { $disc } krever minst { $asks } m³/h. Uten den er det ikke påvist at avsugshetten virker: les merkeskiltet på avsuget og før inn dust.airflow, eller kutt vått.

shroud-airflow-too-small = avsuget trekker { $has }, skiva krever { $asks }
    .detail = Luftmengde { $has }, minst { $asks } m³/h for en skive på { $disc }. Bruk et kraftigere avsug, en mindre skive, eller kutt vått.

not-in-table-indoors = ikke i tilsynsmyndighetens tabell: eksponeringen må vurderes
    .detail = Denne maskinen, dette tiltaket, innendørs, { $hours } h av dagen: ingen rad. Ingen har publisert hvilket åndedrettsvern som er nok. Utendørs finnes det rader for vann og for avsugshette: bytt til et sted eller et tiltak som tabellen har med, eller få eksponeringen vurdert av en fagkyndig.

not-in-table = ikke i tilsynsmyndighetens tabell: eksponeringen må vurderes
    .detail = Denne maskinen, dette tiltaket, utendørs, { $hours } h av dagen: ingen rad. Ingen har publisert hvilket åndedrettsvern som er nok. Bytt til et tiltak som tabellen har med for denne maskinen, eller få eksponeringen vurdert av en fagkyndig.

indoors-exhaust = innendørs: luften må i tillegg suges ut
    .detail = Sted: innendørs. Kutt utendørs hvis det lar seg gjøre. Ellers: sug det synlige støvet ut i friluft, steng av rommet, og slipp ingen inn uten åndedrettsvern.

marble-veins = årer i marmor kan inneholde langt mer silika enn steinen selv
    .detail = Marmor som helhet er høyst { $share } % silika; årene kan ha langt mer. Behandle et kutt langs eller gjennom en åre som et kutt i silikarik stein.

stone-kind-unknown = { $stone }: hva som binder den, er ikke kjent
    .detail = Stein som er bundet med harpiks og inneholder 1 % silika eller mer, regnes som komposittstein. Be om databladet og før inn stone.binder. Hvis den er det: { $rule }

silica-unknown = { $stone }: spør etter andelen silika
    .detail = Silika høyst { $share } % etter det som er ført inn: knapt noen stein er fri for silika. Inntil et datablad sier at denne er det, regn den som silikarik (over { $threshold } %), og før inn stone.silica.

engineered-stone-banned = komposittstein må ikke kuttes her
    .detail = { $rule }

engineered-stone-dry = komposittstein uten vann
    .detail = Kutt bare vått. { $rule }

engineered-stone-powered-respirator = komposittstein uten viftedrevet åndedrettsvern
    .detail = Viftedrevet åndedrettsvern: ikke noe for hånden, kreves. { $rule }

engineered-stone = komposittstein: strengere regler går foran
    .detail = { $rule } Å overlate det til et verksted med godkjenning er det trygge valget.

high-silica-stone = { $stone } kan inneholde opptil { $high } % silika
    .detail = Silika er { $low } til { $high } % av steinen, over { $threshold } % regnes som silikarikt (Californias tall, brukt overalt her). Støvet gir arr i lungene for alltid: tiltak mot støv og åndedrettsvern fra den første berøringen til rengjøringen er helt ferdig, og ingen i nærheten uten åndedrettsvern.

california-silica-rule = arbeid med høy eksponering: vått, i et avsperret område, med det sterkeste åndedrettsvernet
    .detail = Silika opptil { $high } %. { $rule }

silica-rich-stone-dry = arbeid med høy eksponering uten vann: California krever våte metoder
    .detail = Silika opptil { $high } %. { $rule }

sparks-into-extractor = stål i steinen: gnister går inn i avsuget
    .detail = Stål det er lov å kutte mens avsuget går: ikke noe. Gnister setter fyr på posen. Ta ut stålet først, hold kuttene klar av det, eller kutt vått.

sparks-from-steel = stål i steinen gir gnister
    .detail = Ikke noe brennbart innen { $clear } (skjønn), en full bøtte vann og et brannslokkeapparat for hånden, en skive som produsenten tillater for stål, ikke press maskinen. Se etter røyk igjen en time etter siste kutt.

steel-not-known = stål i steinen: se etter, ikke noe eller hvor?
    .detail = Stenger og netting er ofte limt inn i baksiden av en plate. Se på baksiden, dra en magnet langs hver kuttelinje. I jobbfilen: stone.steel ("none" eller "some").

supply-unprotected = vann og nettstrøm uten jordfeilbryter, GFCI eller 110 V med jordet midtpunkt
    .detail = Vern: ikke noe kjent, kreves: jordfeilbryter på { $rcd } eller mindre, GFCI klasse A ({ $gfci }), eller 110 V med jordet midtpunkt ({ $volts } til jord). Her: { $rule }{ $borrowed }. Der det er vann, gjelder: uten vern, ingen kutting.

supply-unprotected-dry = nettstrøm uten jordfeilbryter, GFCI eller 110 V med jordet midtpunkt
    .detail = Vern: ikke noe kjent, kreves: jordfeilbryter på { $rcd } eller mindre, GFCI klasse A ({ $gfci }), eller 110 V med jordet midtpunkt ({ $volts } til jord). Her: { $rule }{ $borrowed }. Sett et slikt vern i ledningen og trykk på testknappen først.

wet-mains = Testknapp (jordfeilbryter, GFCI), der det er en, trykket: løser ut. Støpsler tørre og opp fra bakken
    .detail = Testknappen trykkes inn før det første kuttet, og vernet må løse ut. Støpsler og skjøter tørre og opp fra bakken, ledninger hengt i en sløyfe slik at vannet drypper av før støpselet, tørre hender ved støpsel og bryter. Løser det ut under kuttingen: stopp, finn ut hvorfor, hold det aldri inne.

engine-indoors = forbrenningsmotor innendørs: karbonmonoksid (kullos)
    .detail = Forbrenningsmotorer innendørs eller i et lukket gårdsrom: ingen tillatt. Eksosen dreper uten forvarsel; kutt i friluft, eller bruk en batteri-, trykkluft- eller nettmaskin.

engine-fumes = forbrenningsmotor: eksos og drivstoff
    .detail = I friluft med luft på alle sider, aldri i en grop, et telt eller et hjørne med vegger rundt. Eksosen rettes bort fra ansiktene til begge. Fyll drivstoff når motoren er kald, og start den et annet sted.

water-on-mains-unrated = vann på en nettmaskin som ikke er laget for det: elektrisk støt
    .detail = Godkjenning for vann: ingen, kreves: fra produsenten, for våtkutting. Standardadvarslene forbyr vann på en vanlig vinkelsliper på nettstrøm; en jordfeilbryter eller GFCI gjør den ikke til en maskin for våtkutting. Bruk en maskin som er godkjent for våtkutting, eller avsugshette og avsug.

water-not-rated = vann på en maskin som ikke er laget for det
    .detail = Godkjenning for vann: ingen, kreves: fra produsenten, for våtkutting. Bruk en maskin der produsenten tillater vann, eller avsugshette og avsug.

battery-wet = Batteriet ut før skiva berøres, batterier holdes tørre
    .detail = Batterier byttes unna slammet og med tørre hender; et batteri som er blitt vått inni, brukes ikke og lades ikke igjen. Batteriet tas ut før skiva ses på eller byttes.

air-hose = Luftslangen hel, koblingene sikret, vannet ute av luftledningen
    .detail = Turtallet som er ført inn, { $rpm } omdr./min, gjelder bare ved trykket på merkeskiltet: mer trykk, høyere turtall. Trykkregulator og sikkerhetskoblinger montert, avluften ledet bort fra støv og hender, slangen tømt for trykk før skiva berøres. Blås aldri bort støv, og blås aldri klær rene.

respirator-class = les klassen som er merket på åndedrettsvernet: { $mask }
    .detail = Faktoren er { $least } til { $most } etter klasse ({ $marks }), { $apf } eller mer kreves{ $borrowed }. Det regnes som { $least } til merkingen er ført inn som dust.respirator: bruk et som er merket for { $apf } eller mer.

respirator-not-in-scheme = { $mask } har ingen faktor i denne regionens ordning
    .detail = { $mask }: faktor 0 her, en faktor kreves{ $borrowed }. Faktorer fra to ordninger blandes aldri; en maske uten rad i denne ordningen regnes som ingen maske. Først de åpne trinnene i rekkefølgen av tiltak; så et åndedrettsvern som er godkjent der du er.

respirator-unlisted = { $mask } har ingen faktor i denne regionens ordning
    .detail = Faktor 0, tabellen krever ingen{ $borrowed }. Det kan godt være at den holder støv tilbake, men ingen regel her regner den med: spør etter et åndedrettsvern som er godkjent der du er.

respirator-missing = ikke noe åndedrettsvern for hånden
    .detail = Åndedrettsvern: ikke noe, faktor { $apf } eller mer kreves{ $borrowed }. Først de åpne trinnene i rekkefølgen av tiltak; skaff så et som passer den som skal bruke det, og før inn dust.respirator.

respirator-missing-unassessed = ikke noe åndedrettsvern for hånden, og ingenting avgjør hvilket som er nok
    .detail = Åndedrettsvern: ikke noe; faktoren er ikke fastsatt av noe som er publisert: eksponeringen må vurderes. Først de åpne trinnene i rekkefølgen av tiltak; få så eksponeringen vurdert, skaff det åndedrettsvernet som følger av vurderingen, og før inn dust.respirator.

respirator-none-asked = ikke noe åndedrettsvern for hånden; tabellen krever ikke noe her
    .detail = Åndedrettsvern: ikke noe, tabellen krever ikke noe{ $borrowed }. Tabellen gjelder bare så lenge tiltaket virker uten feil, og støvet som skader, er for fint til å synes: ha et som passer, og bruk det mens skiva går og under rengjøringen.

respirator-not-fit-tested = få masken tilpasningsprøvd på den som bruker den
    .detail = { $mask }: faktoren gjelder bare etter en tetthetsprøving og på glattbarbert hud; til da kan den ikke regnes med. Få masken prøvd, eller bruk en viftedrevet hette.

respirator-clean-shaven = Glattbarbert, tettheten på masken sjekkes hver gang
    .detail = { $mask }: tetthetsprøvd, og det gjelder bare på glattbarbert hud, skjeggstubb regnes som skjegg. Sjekk tettheten hver gang den tas på; en ny størrelse eller et nytt fabrikat, eller et annet ansikt, krever ny prøving.

respirator-below-required = { $mask } regnes som faktor { $has } her, { $apf } kreves
    .detail = { $mask }: faktor { $has }, { $apf } eller mer kreves{ $borrowed }. Først de åpne trinnene i rekkefølgen av tiltak: et sterkere tiltak kommer før en sterkere maske. Så et åndedrettsvern med faktor { $apf } eller mer; faktorer fra to ordninger blandes aldri.

nuisance-mask = en maske uten klasse er ikke åndedrettsvern
    .detail = Faktor 0: den har ingen klasse, og fint støv går gjennom den og rundt den. Den regnes ikke som åndedrettsvern i det hele tatt. Skaff et med en klasse som gjelder her, og før inn dust.respirator.

asbestos-not-tested = { $stone } kan inneholde asbestmineraler: kuttes ikke før den er testet
    .detail = Asbest som kan kuttes: ingen. Få et laboratorium til å teste en flis av denne platen før det første kuttet, eller skaff steinbruddets egen test, og før inn stone.asbestos, stone.report og stone.date. Uten et klart resultat er det arbeid for fagfolk med godkjenning.

asbestos-declaration = { $stone }: be om steinbruddets erklæring om asbestmineraler
    .detail = { $stone } er blant bergartene som kan inneholde dem. Be forhandleren om steinbruddets erklæring og før inn stone.asbestos, stone.report og stone.date.

binder-unknown = { $stone }: hva som binder den, er ikke kjent, så den regnes som komposittstein
    .detail = En stein med 1 % silika eller mer, der ingen har oppgitt hva som binder den, regnes som komposittstein til stone.binder sier noe annet. { $rule }

resin-in-fired-slab = { $stone }: er den uten harpiks?
    .detail = Granittkeramikk og sintret stein er unntatt fra forbudet bare hvis de ikke inneholder harpiks. Be om databladet og før inn stone.binder. { $rule }

supply-unprotected-outdoors = nettstrøm utendørs uten jordfeilbryter, GFCI eller 110 V med jordet midtpunkt
    .detail = Vern: ikke noe kjent, kreves: jordfeilbryter på { $rcd } eller mindre, GFCI klasse A ({ $gfci }), eller 110 V med jordet midtpunkt ({ $volts } til jord). Her: { $rule }{ $borrowed }. Utendørs gjør våt grunn og skadde ledninger en feil dødelig: sett et slikt vern i ledningen, trykk på testknappen og før inn machine.protected.

speed-assumed = les turtallet på skilt eller skive: { $what } er antatt
    .detail = Antatt: { $what }. Les av skiltet på maskinen og merket på skiva, og før inn machine.rpm og disc.max_rpm: kontrollen av skive mot maskin gjelder bare for de virkelige tallene.

disc-larger-than-machine = { $disc }: { $diameter }, maskinen er laget for høyst { $largest }
    .detail = Diameter { $diameter }, største skive for maskinen og vernedekselet { $largest }. Bruk en mindre skive, eller en maskin som er laget for denne; ta aldri av vernedekselet.

respirator-filter = en N95 er ikke nok her: det kreves et filter i 100-serien eller HEPA
    .detail = Åndedrettsvern: N95, kreves: faktor 10 eller mer med et filter i 100-serien eller HEPA. Skaff en halvmaske med P100-filtre eller bedre, og før inn dust.respirator.

no-water-flow = våt metode uten vannmengde: det er tørrkutting
    .detail = Vann: 0 liter i minuttet. Tørt og uten avsugshette står ikke i noen rad i tabellen, og ikke noe åndedrettsvern veier opp for det. Få vann på skivekanten og før inn dust.water, eller bruk avsugshette og avsug.

speed-assumed-of = { $what } { $speed } omdreininger i minuttet

bystanders = Ingen andre i nærheten: barn, naboer og dyr unna og varslet
    .detail = Støv, vanntåke og støy når lenger enn kutteplassen, og en bit av en skive som brister, flyr titalls meter. Sperr av plassen, si fra til naboene når du begynner, og stopp skiva når noen kommer inn uten maske, tette vernebriller og hørselsvern.

windows-and-intakes = Vinduer, dører og luftinntak lukket, ventilasjonen av
    .detail = Støvet som skader, er for fint til å synes og driver langt. Lukk vinduer og dører i huset og be naboene gjøre det samme; slå av ventilasjon, varmepumpe og klimaanlegg nær plassen; kutt på lesiden av dem.

working-height = Steinen mellom hofte og albue, fast grunn, ingen stige
    .detail = Bukker i arbeidshøyde og jevn grunn under begge føtter. Kutt aldri fra en stige eller et trinn, over skulderen eller knelende under steinen: et kast velter deg, og maskinen kommer etter.

eyes = Tette vernebriller, ansiktsskjerm utenpå, øyeskyll innen rekkevidde
    .detail = Vanlige briller slipper inn splinter og grus fra undersiden og fra siden. Tette vernebriller til alle i nærheten; en skjerm alene er ikke nok. Grus i øyet: skyll, gni aldri; en splint som blir sittende, er for legen.

side-handle = Sidehåndtak og vernedeksel på, to hender, bryteren aldri låst i på
    .detail = Én hånd holder ikke et kast. Vernedekselet står mellom skiva og ansiktet, og ingen kutt er verdt å ta det av. En låst bryter lar skiva gå videre etter at maskinen er mistet{ $power ->
            [mains] ; slå av etter strømbrudd før støpselet settes i igjen
           *[other] {""}
        }.

leads = Ledning og slanger bak deg, hele, rullet ut, unna skive og føtter
    .detail = Over skulderen og bakover, aldri over kuttet eller veien. En skadd ledning brukes ikke. Skjøter tørre og opp fra bakken; en kabeltrommel rulles helt ut, ellers blir den varm.

hoses = Slanger bak deg, hele, unna skive og føtter
    .detail = Over skulderen og bakover, aldri over kuttet eller veien. En slange som lekker eller er knekt, brukes ikke.

leaning-slabs = Plater på høykant bundet fast eller på A-bukk; én flyttes om gangen, ingen der de kan falle
    .detail = Seks mennesker ble drept på fem år i Storbritannia av plater som falt under lagring eller håndtering. A-bukk på vannrett underlag, foten ut fra veggen, bundet fast; løsne aldri surringen på en stabel med noen foran den; ingen mellom to plater. En som begynner å falle, slippes: løp, hold den aldri igjen.

not-for-everyone = Ikke for denne jobben: gravide, syke i lunger, hjerte, hender eller rygg, unge, trette eller berusede
    .detail = Lungesykdom, hvite fingre, et svakt hjerte, en pacemaker der produsenten advarer mot maskiner, en vond rygg, graviditet: spør en lege først. Ingen under aldersgrensen, ingen som er trett, ingen etter alkohol, rusmidler eller medisin som sløver.

first-aid = Førstehjelp klar: trykkbandasje, øyeskyll, telefon, adressen skrevet ned
    .detail = En kuttet pulsåre dreper på minutter: trykk hardt på såret, bandasje eller tourniquet, ring. Strømmen av før noen som har fått støt, berøres. Klemt under stein: ring først, løft bare med et hjelpemiddel. Hvem som kan førstehjelp, er avtalt før start.

moment-before = Før

moment-cutting = Under kuttingen

moment-moving = Når stein flyttes

moment-after = Etter

settled-asbestos = Testet fri for asbestmineraler: { $report }, { $date }

settled-controlled = Stein med { $share } silika kuttes med tiltak, slik regelen krever

settled-noise = { $level } under kuttingen, { $under } dB(A) over dagen under hørselsvernet, grenseverdi { $limit } dB(A)

settled-mask = { $mask }: regnes som faktor { $has }, { $apf } kreves

settled-check-call = Alene, med avtalt oppringning: { $who }

settled-supply = Nettstrømmen er sikret

settled-speed = { $disc }: merket { $marked } omdreininger i minuttet, maskin { $machine }
