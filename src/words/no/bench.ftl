# The bench pages, the annex and the answers in a terminal.

bench-head = plan { $plan } · side { $number } av { $count }
bench-head-annex = plan { $plan } · vedlegg, side A{ $number } av A{ $count }
bench-foot = Lokale regler, produsentenes anvisninger og fagkyndige går foran dette arket.
bench-foot-cut = Riss først. Aldri vri, aldri skyv sidelengs. Etter en klem: av, vent, løsne, inn igjen bare på fullt turtall.
bench-stop = STOPP
bench-kills-now = dreper
bench-kills-later = dreper senere
bench-maims = lemlester
bench-lasting = varer livet ut
bench-breaks-stone = knekker steinen
bench-blank = fyll ut
bench-sentences = { $a } { $b }
bench-term = { $term }

# At a glance
bench-glance = Kort oversikt
bench-glance-title = Kort oversikt: { $work }
bench-work-straight = { $count ->
    [one] sag én kant
   *[other] sag { $count } kanter
 }
bench-work-curves = { $count ->
    [one] dykk én kurve
   *[other] dykk { $count } kurver
 }
bench-work-openings = { $count ->
    [one] kutt én utskjæring
   *[other] kutt { $count } utskjæringer
 }
bench-glance-alt = Platen ovenfra med benkeplaten, { $length } ganger { $width }, kuttene i rekkefølge og bitene som går av, med vekt.
bench-glance-open = Før maskinen starter: avklar hvert punkt, skriv hva som ble funnet, kryss så av
bench-glance-warnings = Hva jobben kan gjøre med deg, verst først
bench-top-size = { $length } × { $width }
bench-waste-name = { $name } { $mass }
bench-keep = blir
bench-top-corner = hjørne { $corner }
bench-practice-here = øv
bench-tile-top = ferdig benkeplate
bench-tile-slab = plate
bench-tile-waste = tyngste avkapp
bench-tile-sawing = skive i stein
bench-tile-setting = innstilling
bench-tile-silica = silika i slammet
bench-tile-silica-dry = silika i støvet
bench-tile-likely = høyst; trolig { $mass }
bench-tile-likely-thick = høyst; trolig { $mass }; { $thick }
bench-tile-no-waste = ingen bit faller av
bench-tile-after = { $name }, kutt { $cut }
bench-tile-shares = { $count ->
    [one] én person, én dag
   *[other] fordel på { $count } personer eller dager
 }
bench-tile-with-other = med { $other } annet arbeid: { $shares }
bench-tile-without-edges = { $shares }; uten kanter
bench-not-counted = Sliping, polering og bryting av kanter er ikke med i noe tall her, hvis det ikke står under [[today]]; det teller i dagen til samme person.
bench-tile-set-ups = { $count ->
    [one] én innstilling
   *[other] { $count } innstillinger
 }
bench-tile-of-dust = høyst, i { $mass } stein

# Mark out
bench-mark = Merk opp
bench-mark-title = Merk opp hver linje før det første kuttet
bench-mark-rule = Strek hver linje tvers over hele platen før det første kuttet. Et kutt tar bort et merke; linjen på steinen som blir igjen, synes fortsatt.
bench-mark-alt = Platen ovenfra med hver linje som skal strekes, merkene ved kantene og hvert dreiepunkt og hull.
bench-mark-what = punkt
bench-mark-off = fra den opprissede linjen
bench-mark-off-that = fra linje { $cut }
bench-mark-named = { $mark }
bench-mark-off-short = { $cut }: { $distance }
bench-mark-on-short = på { $cut }
bench-mark-off-line = linje { $cut }: { $distance }
bench-mark-on-line = på linje { $cut }
bench-mark-check = kontroll
bench-mark-line-check = kontroll av linje
bench-mark-on-curve = linjen for kutt { $cut }
bench-mark-keep = linje som blir
bench-mark-guide = skinne, samme
bench-mark-tape-from = målebånd
bench-marked = { $mark } { $distance }
bench-marked-from = { $mark } { $corner } { $distance }
bench-tape = { $corner } { $distance }
bench-mark-pivot = { $mark } dreiepunkt
bench-mark-chord = { $mark } korde
bench-mark-hole = { $mark } hull
bench-mark-stop = { $mark } stopp
bench-mark-both = Kutt { $cut }: { $distance } fra hjørne { $corner } på platen langs begge linjene.
bench-mark-along = Kutt { $cut }, fra hjørne { $corner } på platen: { $before } tilbake, { $after } videre.
bench-mark-guides = Hver føringslinje går { $offset } fra sin linje som blir, fra ende til ende.
bench-mark-rough = Et hjørne ved en ru kant er der snorer langs de to kantene krysser hverandre: merk det først.
bench-mark-tape = Hold kroken på målebåndet akkurat på hjørnet. Er en kontroll mer enn { $tape } feil: mål på nytt, ikke flytt linjen. { $guides }
bench-mark-between = En toogtrettidels tomme er midten mellom to streker på et målebånd som viser sekstendeler.
bench-end = { $mark }: { $distance } fra { $corner } på { $edge }

# Straight cuts
bench-straight = Rette kutt
bench-straight-title = Rett, kant { $edge }, { $length } langt, stein { $thick }
bench-relief-title = Avlastingskutt ved { $edge }, { $length } langt, stein { $thick }
bench-straight-alt = Platen før kuttet langs kant { $edge }, ovenfra: føring, klosser, hvor operatøren står, og hva som løsner: { $waste }.
bench-you = operatør
bench-depth = dybde
bench-depths = dybder
bench-trestles-move = Løft først steinen av og flytt bukkene: { $first } og { $second } fra platens ende.
bench-trestles-board = Løft først steinen av: herfra ligger den på en hel, plan underlagsplate.
bench-late = Først etter kutt { $cut }, som har sin egen side.
bench-fact-guide = føring
bench-fact-ends = ender
bench-fact-moves = den ligger på
bench-fact-how = hvordan
bench-fact-bearers = klosser
bench-fact-drill = bor først
bench-fact-when = når
bench-guide-kept = { $offset } fra linjen som blir, på steinen som blir igjen
bench-guide-waste = { $offset } fra linjen som blir, på avkappet
bench-ends = { $first }; { $second }
bench-moves = { $places } fra { $mark }, etter tur ved hver dybde{ $clamp ->
    [no] ; der ingen tvinge når, en sugeklemme, prøvd for hånd
   *[yes] {""}
 }
bench-stone-end = steinens ende mot { $mark }
bench-span = { $from } til { $to }
bench-how = { $parts }
bench-how-far-end = Ved hver dybde de siste { $length } ved { $last } først, utenfra og innover; så fra den andre enden bort til det.
bench-how-stop = Stopper ved { $mark }: skivas sentrum ikke nærmere enn { $short }. Det den runde skiva lar stå, tas sist og ovenfra: kjernebor i avfallet, så sliping; aldri fra undersiden.
bench-how-stop-hole = Ender i det borede hullet ved { $mark }: skivas sentrum ikke nærmere enn { $short }.
bench-how-allowance = { $left } blir stående til bearbeiding.
bench-how-breaks = Fra { $depth } kan den knekke av.
bench-bearers = på hver side, { $off }: { $at } bortover fra { $mark }
bench-bearers-even = { $count } på hver side, { $off }: fra { $first } til { $last } bortover fra { $mark }, for hver { $step }
bench-bearers-off = { $off } fra linjen
bench-bearers-off-each = { $kept } fra linjen, { $waste } under avkappet
bench-struck = etter den strekede linjen { $first } til { $second }: en ende er borte
bench-drill = Ø { $bit } ved { $marks }, vått, før skiva kommer nær
bench-free-heavy = { $name } løsner: inntil { $mass }. Den ligger på egne klosser, vannrett, før første gjennomgang. Ingen hånd, fot eller kne under; ingen holder den.
bench-free-carried = { $name } løsner: inntil { $mass }. Den ligger på egne klosser, vannrett, før første gjennomgang. Ingen hånd, fot eller kne under; ingen holder den. { $away }
bench-away = Så { $how ->
            [flat] bærer { $people } personer den flatt til to lekter på gulvet, en femtedel av lengden inn fra endene.
           *[edge] reiser { $people } personer den på langsiden, bærer den på høykant til to lekter ved en vegg og binder den der.
        }
bench-away-more = Det trengs { $people } personer for å bære den bort { $how ->
            [flat] flatt
           *[edge] på høykant
        }, og denne jobben har færre: skaff dem eller et hjelpemiddel, eller sag den på tvers der den ligger, med underlag på begge sider av linjen.
bench-away-aid = Så tar { $aid ->
            [trolley] vognen den, reist på høykant av { $people } personer ({ $half }) og bundet,
            [vacuum] vakuumløfteren den, på høykant,
           *[gantry] taljen den, på høykant i to stropper,
        } til to lekter ved en vegg; bind den der.
bench-away-sawn = Ikke noe lag bærer den bort: sag den på tvers der den ligger, med underlag på begge sider av linjen, eller skaff et hjelpemiddel.
bench-free-light = { $name } løsner: inntil { $mass }. En kloss under før første gjennomgang; ingen hånd under.
bench-free-flaw = «{ $flaw }» går gjennom den: den kan brekke der. Underlag på begge sider; rett trevirke klemt over før den løftes.
bench-free-station = { $name } løsner omtrent ved stasjon { $station }, siste dybde: inntil { $mass }. En kloss under før første gjennomgang; ingen hånd under.
bench-measured = kant { $edge }, for kort eller over (skal være 0)
bench-cut-by = kuttet av, tid

# Curves
bench-curve = Kurve, kutt { $cuts }
bench-curve-title = { $count ->
    [one] Dykk én stasjon av kurven ved { $corners }, { $depths } dybder
   *[other] Dykk { $count } stasjoner av kurven ved { $corners }, { $depths } dybder
 }
bench-curve-alt = Kurven ovenfra med stasjonene nummerert, dreiepunktet eller korden, og avkappet.
bench-curve-how = Hvordan
bench-curve-line = radius { $radius }; { $left } blir stående til kantbearbeiding
bench-curve-line-inside = radius { $radius }; { $left } blir stående til kantbearbeiding; stasjonene på radius { $stations }
bench-curve-rise = korde { $chord }, kurven stiger { $rise } over den på midten
bench-curve-struck = { $points }, streket før kutt 1: se Merk opp
bench-curve-swing = { $mark }: { $radius } fra hvert av { $points }
bench-curve-stations = Strek linjen om dreiepunktet. Mål hver stasjon rett fra merket ved siden av nummeret; naboer ligger { $apart } fra hverandre.
bench-curve-ordinates = Strek korden. Sett av hver stasjon langs den og vinkelrett ut fra den; naboer ligger { $apart } fra hverandre.
bench-curve-plunge = Skiva vinkelrett på armen ved stasjonen: nær side { $near } fra dreiepunktet, jiggens merke { $arm }. Stå ved siden av linjen, aldri i den. Rett ned, rett ut. Styr den aldri rundt.
bench-curve-plunge-guide = Føringens kant { $offset } fra stasjonen og { $gap } fra kurven { $half } til hver side; nær side på kurven. Stå ved siden av linjen, aldri i den. Rett ned, rett ut. Styr den aldri rundt.
bench-curve-plunge-square = Merk av buens sentrum, { $radius } fra begge ender av korden. Skiva står vinkelrett på linjen fra sentrum gjennom stasjonen, yttersiden, den som vender bort fra sentrum, ved stasjonen; føringens kant { $offset } utenfor. Stå ved siden av linjen dens, aldri i den. Rett ned, rett ut. Styr den aldri rundt.
bench-curve-rings = Alle stasjoner til én dybde, så alle til den neste: { $depths }. Steinen er { $thick }.
bench-curve-ridges = Rygger på { $left } blir stående: ta dem ned vått med diamantkopp eller lamellskive, korning 60, langs kurven, til linjen; så 120, 200, 400.
bench-fact-pivot = dreiepunkt
bench-fact-chord = korde
bench-fact-stands = det står på
bench-fact-swing = finnes ved
bench-fact-line = linje som blir
bench-arm = merke { $length }
bench-pivot-top = benkeplaten: teip eller sugekopp, aldri bor
bench-pivot-cutout = stein som faller ut senere, ennå på plass
bench-pivot-waste = avkappet: la biten ligge på plass til kurven er ferdig
bench-pivot-off = ved siden av steinen: fest noe med samme høyde der
bench-station = nr.
bench-station-along = langs
bench-station-off = ut
bench-station-off-waste = ut, inn i avfallet
bench-relief-first = Først avlastingskuttene, så avkappet går av i biter.
bench-relief-cut = kutt
bench-relief-guide = føring på merker
bench-relief-length = lengde
bench-two-marks = { $first } og { $second }

# Openings
bench-opening = Utskjæring { $number }
bench-opening-title = Utskjæring: { $what }, stein { $thick }
bench-opening-alt = Utskjæringen ovenfra med hull, kutt og føringslinjer, og den smaleste steinen ved siden av.
bench-opening-corner-alt = Et hjørne av utskjæringen: de opprissede linjene og punktene ved dem
bench-opening-what = hva
bench-opening-marks = merker
bench-opening-how = hvordan
bench-opening-depths = dybder
bench-depths-straight = rett
bench-depths-curve = rundt
bench-opening-stop = sentrum stanser { $short } før { $mark }
bench-opening-hole = bor Ø { $bit }
bench-opening-straight = rett, { $length }
bench-opening-curve = rundt, { $length }
bench-opening-swing = radius { $radius }, arm { $arm }, { $count } stasjoner
bench-opening-plunges = { $count } dykkutt langs en korde på { $chord }, pilhøyde { $rise }
bench-opening-drill = vått, rett ned, ovenfra
bench-opening-stations-chord = Stasjoner, kutt { $cuts }: langs korden fra merke e, og vinkelrett ut fra den
bench-opening-stations-pivot = Stasjoner, kutt { $cuts }: rett fra de strekede merkene
bench-opening-step-drill = Bor hvert hull først: da stopper skiva i et hull, og ingen kutt løper videre inn i hjørnet.
bench-opening-step-saw = Sag fra hull til hull, hvert kutt til full dybde før det neste. Skiva er rund: på undersiden holder endene av kuttene fortsatt biten. Løsne den ovenfra, kjerneboret i avfallet over hver ende, resten slipes; ingen arbeider under. Steinen må ligge støttet rundt hele, også under biten som faller.
bench-opening-step-saw-parted = Sag fra hull til hull, hvert kutt til full dybde før det neste. Skiva er rund: på undersiden ville endene av kuttene fortsatt holde biten; hullene ved siden av dem skiller den der, og det som står igjen, slipes av. Ingen arbeider under. Steinen må ligge støttet rundt hele, også under biten som faller.
bench-opening-step-last = Det siste kuttet løsner biten: klosser under først, ingen under. Fra nå av er steinen svak ved siden av utskjæringen: avstiving på før den flyttes.
bench-rail = { $what }
bench-rail-holds = { $width } bred: holder; bær på høykant, aldri i stripen
bench-rail-brace = { $width } bred: bare med avstiving. { $splint }
bench-rail-weak = { $width } bred: for svak selv med avstiving. { $splint }
bench-splint = { $count } × tre { $wide } × { $high }, { $length } langt, spent fast før det første kuttet her

# Moving
bench-move = Flytt og sett ned
bench-move-title = På høykant, for hånd, bundet fast når den står
bench-move-title-trolley = På høykant på trallen, bundet fast, på vannrett underlag
bench-move-title-vacuum = På høykant under vakuumløfteren
bench-move-title-gantry = På høykant i to løftestropper
bench-move-slab = Platen til bukkene, { $alike ->
    [yes] en langside ned
   *[no] { $side } ned
 }
bench-move-top = Benkeplaten til plassen, { $alike ->
    [yes] en langside ned
   *[no] { $side } ned
 }
bench-move-alt = Steinen på høykant med hjelpemiddelet og en person i hver ende, i målestokk; den veier inntil { $mass }.
bench-move-on-edge = Aldri flatt i endene: den knekker. På høykant hele veien, lagt flat bare over begge bukkene. Løft aldri den ene enden.
bench-move-tied = På høykant hele veien, bundet fast når den står.
bench-turn-slab = på høykant ved begge bukkene, det som bærer den sperret; nedre langside på begge samtidig, så flatt: { $hands ->
    [none] ikke for hånd, men med talje, vakuumløfter eller vippestativ
    [open] slik side 1 avklarer det: alle ved den motsatte langsiden, ingen under
    [aid] løfteren snur den, to personer styrer
   *[team] alle ved den motsatte langsiden, ingen under
 }. Surringen av sist.
bench-turn-top = på høykant ved plassen, så ned på polstrede lekter på tvers: { $hands ->
    [none] ikke for hånd, men med talje, vakuumløfter eller vippestativ
    [open] slik side 1 avklarer det: alle ved den motsatte langsiden, ingen under
    [aid] løfteren snur den, to personer styrer
   *[team] alle ved den motsatte langsiden, ingen under
 }. Lektene ut én for én, langsiden løftet med kiler, ingen finger under.
bench-fact-flat = plate, flatt
bench-fact-set = topp, satt ned
bench-move-hands = Hvor hendene skal
bench-move-hands-on-edge = Hvor hendene skal: den henger på høykant i dem, aldri flatt
bench-move-trestles = To bukker fra siden: avstander fra ende { $corner }, og hva hver bærer
bench-move-supports = Hva den står på: midten av hver støtte, som tegnet
bench-hands-alt = Steinen ovenfra med en person på hver plass, og hva hver bærer.
bench-hands = { $number }: { $mass }
bench-trestles-alt = Platen på to bukker, { $first } og { $second } fra enden.
bench-supports-alt = Benkeplaten ovenfra på støttene med det hver bærer.
bench-supports-short = Ikke nok slik det står: mer støtte først, se side 1.
bench-free-span = { $length } på det bredeste; høyst { $limit }
bench-overhang = { $edge }: { $length }; høyst { $limit }. Sett en støtte der
bench-overhang-person = { $edge }: { $length }; ingen lener seg der, eller sett en støtte der
bench-bearing-over = en person som lener seg på benkeplaten, gir { $person } på den, den tåler { $limit }: ingen sitter eller lener seg der, eller sett inn en støtte
bench-support-name = { $number } { $what }
bench-support = { $along } fra venstre, { $up } nedenfra; bærer høyst { $mass }
bench-fact-trolley = tralle
bench-fact-vacuum = vakuumløfter
bench-fact-slings = stropper
bench-fact-lift = for hånd
bench-fact-fall = hvis den faller
bench-fact-free = uten støtte
bench-fact-over = utenfor støttene
bench-trolley = merket for { $rated } eller mer; skyv { $push } på vannrett underlag
bench-rated = merket for { $rated } eller mer
bench-slings = { $each } i hver, { $tension } i hver part ved { $angle }
bench-fall = ingen innenfor { $clear } på noen av sidene; surr den
bench-lift-never = aldri: { $people } sammen regner med { $limit } i alt{ $two }
bench-lift-two = {""}, to med { $mass }
bench-lift-above = over veiledende verdi: én bærer { $carried }, verdien er { $limit }; avklar det først (side 1)
bench-lift-over = ikke slik: én ville bære { $carried }, veiledende verdi er { $limit }
bench-lift-tips = ikke slik: den tipper
bench-lift-breaks = ikke for hånd: flatt og på høykant bøyes den for mye; stiv av eller bruk hjelpemiddel
bench-lift-many = ikke slik: { $people } personer løfter ikke som én
bench-lift-within = { $people } personer, hver inntil { $most }; ingen verdi gjør et løft trygt

# Dust, noise, hands
bench-dust = Støv, støy, hender
bench-dust-title = Støv, støy, hender
bench-dust-order = Sterkest først: det som tar bort støvet
bench-dust-limits = Hvor mye, hvor lenge
bench-dust-settled = Avklart for denne jobben
bench-control = { $state ->
    [done] { $what }: planlagt
    [open] { $what }: FORTSATT ÅPENT
   *[other] { $what }: passes på den dagen
 }
bench-fact-mask = maske her
bench-fact-hands = hender
bench-fact-ears = ører
bench-fact-slurry = slam
bench-fact-slurry-dry = støv
bench-fact-silica = hva det inneholder
bench-fact-vacuum-class = støvsuger
bench-mask-at-hand = { $mask }; glattbarbert, tettheten sjekket; på før første kutt, av når gulvet er rent
bench-hands-allowed = { $action } om dagen for hver, alt som vibrerer regnet med; denne jobben tar { $job }
bench-hands-other = { $hands }, annet arbeid teller { $other }
bench-hands-never = denne maskinen rister for mye selv for ett minutt: bruk en annen
bench-ears = { $level } ved øret: hørselsvern på før første start; uten det er dagen full etter { $minutes }
bench-slurry = omtrent { $mass }, bøtter: { $buckets }; skrapes og suges opp vått, aldri i sluk
bench-bags = { $bags ->
    [one] én støvpose
   *[other] inntil { $bags } støvposer
 }
bench-nothing-caught = ingenting fanger det
bench-silica = inntil { $dust } stein, { $silica } av det silika
bench-wear-mask = Maske: faktor { $factor } eller mer
bench-wear-mask-here = { $mask }: faktor { $factor }
bench-wear-mask-ready = Maske på under sagingen, til gulvet er rent
bench-wear-mask-assess = Maske: få eksponeringen vurdert først
bench-wear-ears = Ører: { $level }
bench-wear-eyes = Tette vernebriller og ansiktsskjerm
bench-wear-hands = Tette hansker, ingen løse mansjetter
bench-wear-feet = Sklisikre støvler med tåhette
bench-wear-disc = Skiva: roterer videre etter at bryteren er av

# Helper
bench-emergency = Nødnummer: { $number }
bench-vacuum-off = Støvsugeren slås av ved
bench-helper-weight = Platen veier inntil { $slab }, benkeplaten inntil { $top }. { $hands ->
    [none] Ingen løfter dem for hånd.
    [top] Ingen løfter platen for hånd, ingen benkeplaten alene.
   *[both] Ingen løfter dem alene.
 }

# The day and its record
bench-day = Dagen og loggen
bench-day-title = Dagen, og hva som skjedde
bench-day-what = hva
bench-day-minutes = tar
bench-day-at = ferdig kl.
bench-day-read = Les hjelperens side høyt, prøv stopptegnene, fyll ut side 1
bench-day-unload = Last av platen på høykant, surret; så flatt på bukkene
bench-day-mark = Merk opp og kontroller hver linje; øv i avkappet
bench-day-straight = Kutt { $cut }, kant { $edge }: { $waste } går av
bench-day-curve = Kutt { $cuts }, kurve { $edge }
bench-day-opening = Kutt { $cuts }, utskjæring: { $what }
bench-day-sum = Alle kutt: { $stone } med skiva i steinen, { $setting } oppsett
bench-day-move = Benkeplaten på høykant, surret, til plassen
bench-day-clean = Slammet opp mens det er vått, gulvet skylt, så maskene av
bench-day-clean-dry = Støvet sugd opp overalt, så maskene av
bench-day-bring = Ta med
bench-day-practice = Øv i avkappet først
bench-day-wrong = Når det går galt
bench-day-started = begynt
bench-day-ended = ferdig
bench-day-initials = initialer
bench-day-date = dato
bench-day-annex = Utregning, tabeller, hver advarsel i sin helhet og kildene: kerfwright sheet JOBB --annex
bench-bring-guide = føring
bench-bring-guide-is = rett, { $length }, og to tvinger{ $suction ->
    [yes] , en sugeklemme
   *[no] {""}
 }{ $jig ->
    [yes] ; sirkelarm med dreiepunkt
   *[no] {""}
 }
bench-bring-discs = skiver
bench-bring-discs-are = { $discs }, med reserve{ $grind ->
    [yes] ; diamantkopp eller lamellskiver til sliping
   *[no] {""}
 }
bench-bring-bits = kjernebor
bench-bring-bits-are = { $bits }, laget for turtallet til maskinen som dreier dem; en mal som styrer dem
bench-bring-bearers = klosser
bench-bring-bearers-are = { $count } klosser med samme høyde, bartre, { $long } lange, og kiler; på plankene{ $edges }
bench-bring-bearers-edges = {""}, av dem { $count } under kantene uten kutt
bench-bring-deck = planker
bench-bring-deck-are = planker, minst { $thick } tykke, langs platen over begge bukkene, { $length } lange, side om side { $wide } brede; oppå dem klossene, oppå disse platen
bench-bring-turn = til vipping
bench-bring-turn-is = talje, vakuumløfter eller vippestativ
bench-bring-carry = til bæring
bench-bring-carry-is = { $aid ->
    [trolley] tralle merket for { $rated }, to bukker
    [vacuum] vakuumløfter merket for { $rated }, to bukker
    [gantry] portal med løftestropper for { $rated }, to bukker
   *[none] to bukker
 }, surrebånd, lekter, støvsuger; det skiltene viser
bench-bring-tape = oppmerking
bench-bring-tape-is = { $rolls ->
    [one] én rull maskeringsteip, { $roll }
   *[other] { $rolls } ruller maskeringsteip, { $roll } hver
 }, stålmålebånd, vinkel, fin blyant, kritsnor
bench-bring-water = vann
bench-bring-water-is = { $water } i alt; bøtter til slammet: { $buckets }
bench-practice-cut = et kutt
bench-practice-cut-is = i { $piece } der det er tegnet, { $length } langt, til { $depths }
bench-practice-plunge = dykkutt
bench-practice-plunge-is = likeså i { $piece }, tre ved siden av hverandre, til { $depths }
bench-practice-offset = føringens kant til skivas nære side ({ $reckoned })
bench-practice-jig = jiggens merke til skivas nære side ({ $reckoned })
bench-practice-minutes = minutter i steinen; lengde, dybde
bench-practice-differs = Annet tall enn i parentes: flytt føringens merker eller armen like mye; linjene som blir, står.
bench-wrong-cracks = den sprekker
bench-wrong-cracks-do = Av. Ingen under den. Klosser under begge deler før noe beveger seg; mål så, og planlegg det som er igjen.
bench-wrong-pinches = den klemmer
bench-wrong-pinches-do = Av, la skiva stå stille, kil opp kuttesporet, løft maskinen ut. Inn igjen bare på fullt turtall.
bench-wrong-slips = den sklir av linjen
bench-wrong-slips-do = Av. Mål hvor langt og hvor dypt, skriv det i jobbfilen under det som skjedde: en ny plan sier hva som er igjen av benkeplaten.

# Repair
bench-repair = Hva som skjedde
bench-repair-title = Hva som skjedde, og hva som er igjen
bench-repair-alt = Steinen som den er, benkeplaten som er igjen, og stiplet benkeplaten som ønsket.
bench-repair-as-planned = Alt ligger på linjen sin. Fortsett som planlagt.
bench-repair-within = Arbeidsmonnet tar det opp: ingenting er tapt. Slip til den ferdige linjen.
bench-repair-grind = Ingenting er tapt: det står for mye på en kant. Slip det ned til den ferdige linjen.
bench-repair-again = Ingenting er tapt: det står for mye på en kant. Sag av stripen, etter siden for det.
bench-repair-smaller = Benkeplaten blir mindre. Spør den som bestilte den, før neste kutt.
bench-repair-opening = En utskjæring blir annerledes enn ønsket. Spør den som bestilte den, før neste kutt.
bench-repair-same-a = Bokstavene er hjørner på steinen slik den er nå. A er der den var, AB går som før; de andre er nye.
bench-repair-new = Bokstavene er hjørner på steinen slik den er nå: alle er nye. Skriv dem på steinen.
bench-repair-wanted = ønsket
bench-repair-now = nå
bench-repair-weighs = veier
bench-repair-first = først
bench-repair-run-outs = gjør ferdig det kuttet lot stå: { $pieces }
bench-repair-grind-first = slip ned til linjen før neste kutt: { $edges }
bench-repair-lines = i jobbfilen
bench-repair-part = del
bench-repair-came = ble
bench-repair-is-wanted = ønsket
bench-repair-is-now = nå
bench-repair-do = gjør
bench-repair-edge = kant { $name }
bench-repair-corner = hjørne { $name }, { $what }
bench-came-not-cut = ikke kuttet
bench-came-on-line = på linjen
bench-came-short = { $off } for lite
bench-came-over = { $off } for mye
bench-came-slanting-short = { $start } til { $end } for lite
bench-came-slanting-over = { $start } til { $end } for mye
bench-do-nothing = ingenting
bench-do-finish = bare bearbeid
bench-do-grind = slip { $off }
bench-do-cut = kutt: se egen side

# The annex
annex-findings = Hvert funn i sin helhet
annex-stops = Stopp: arbeidet må ikke begynne så lenge ett av disse gjelder
annex-open = Åpent: fylles ut eller ses på før start
annex-warnings = Advarsler
annex-every = Hver gang
annex-stone = Stein, plass og biter
annex-strength = Ligge, stå, løfte
annex-way = Veien inn
annex-health = Støv, hender, ører: tallene
annex-assumed = Verdier som jobbfilen lot stå åpne
annex-sources = Kilder
annex-key = nøkkel
annex-value = verdi
annex-why = hvorfor
annex-what = hva
annex-document = dokument
annex-clause = punkt
annex-year = år
annex-no-year = ikke notert
annex-place = Hvor benkeplaten ligger på platen
annex-pieces = Biter
annex-cuts = Kutt
annex-balance = Plate { $slab } = ferdig benkeplate { $top } + arbeidsmonn på kantene { $left } + kuttespor { $kerf } + avkapp { $waste }. Smuler mellom spor regnes som kuttespor.
annex-range = { $low } til { $high }
annex-three = { $low } til { $high }, trolig { $likely }
annex-kind = stein
annex-density = densitet
annex-thickness = tykkelse
annex-allowed = fasthet
annex-strength-is = { $strength } ÷ { $factor } ({ $source })
annex-slab-area = plate, areal
annex-slab-mass = platen veier
annex-top-mass = benkeplaten veier
annex-spare = minst til overs
annex-turn = dreid
annex-corner = hjørne på benkeplaten
annex-corner-of-top = hjørne { $name }
annex-x = x fra A langs AB
annex-y = y fra A vinkelrett på den
annex-edge = kant
annex-edge-sawn = saget, { $left } arbeidsmonn igjen
annex-edge-flush = ligger på platekant { $edge }
annex-length = lengde
annex-lies = hvordan den ligger
annex-piece = bit
annex-after = etter kutt
annex-area = areal
annex-mass = veier
annex-rectangle = rommer et rektangel på
annex-left = resten av steinen
annex-tool = verktøy
annex-core-bit = kjernebor på { $bit }
annex-bending = Spenning under egenvekt, × 1,2 for håndtering, i den tynneste steinen; bare feilfri stein
annex-stone-state = stein
annex-state = { $name }
annex-flat-best = flatt, beste støtter
annex-flat-hands = flatt, i hender
annex-flat-ends = flatt, i endene
annex-one-end = én ende løftet
annex-on-edge = på høykant, i endene
annex-may = tillatt
annex-lifting = Løft for hånd, og hva hjelpemidler krever
annex-slab = plate
annex-top = benkeplate
annex-guideline = veiledende verdi
annex-guideline-is = { $each } for én person ({ $source }); ingen garanti for at et løft under den er trygt
annex-person = person
annex-from-end = fra enden
annex-from-side = fra siden
annex-carries = bærer
annex-figure = verdi i dette laget
annex-trolley-rated = tralle merket for
annex-trolley-push = skyv, vannrett
annex-trolley-ramp = 1:12 gir i tillegg
annex-trolley-tips = velter på tvers
annex-vacuum-rated = vakuumløfter merket for
annex-sling-pull = drag i hver part av stroppen
annex-leans = på høykant faller den over
annex-rails = Smal stein ved siden av utskjæringer
annex-rail-is = { $width } bred, { $length } lang: { $together } sammen med naboen, { $alone } alene
annex-setting = På støttene
annex-support = støtte
annex-carries-most = bærer høyst
annex-with-person = med en person som lener seg
annex-reaches = rager ut
annex-person-stress = spenning med en person
annex-way-of = Veien inn: { $name }
annex-way-place = sted
annex-way-carried = best båret
annex-way-spare = plass
annex-way-clears = { $spare } til overs
annex-way-tight = trangt: { $spare } til overs
annex-way-short = { $short } for lite
annex-way-note = Mål hvert sted på nytt med personene og hjelpemiddelet som bærer.
annex-limit = silika
annex-vibration = vibrasjon
annex-vibration-is = { $reckoned } med usikkerheten, { $job } av denne jobben; dagen { $day }; tiltaksverdi { $action }, grenseverdi { $limit } ({ $source })
annex-noise = støy
annex-noise-is = { $level } i { $hours }; dagen { $day }; påbud fra { $duty } ({ $source })
annex-cited = { $document }{ $borrowed }; sjekk gjeldende regler
annex-cited-year = { $document }, { $year }{ $borrowed }; sjekk gjeldende regler
annex-masks = masker som når den
annex-mask = { $mask } (faktor { $factor })
annex-authority = spør om reglene hos

# In a terminal
answer-job = jobb
answer-fits = passer
answer-fits-is = benkeplate { $length } × { $width }, { $spare } til overs der det er trangest
answer-weighs = veier
answer-weighs-is = benkeplate inntil { $top }, plate inntil { $slab }
answer-time = tid
answer-time-is = { $stone } med skiva i steinen, { $setting } innstilling
answer-straight = rett, kant { $edge }, { $length }
answer-relief = avlasting ved { $edge }, { $length }
answer-curve = kurve ved { $edge }, { $length }
answer-hole = hull ved { $edge }
answer-guide = { $first } fra { $from }, { $second } fra { $to }
answer-chord = korde { $length }
answer-frees = løsner
answer-more = Mer med --full:
answer-sheet = ferdig benkeplate  { $low } til { $high }
    kutt               { $straight } rette, { $curves } kurver
    sagetid            { $sawing } med skiva i steinen, { $setting } innstilling
    stopp              { $stops }
weigh-stone = { $name }
weigh-place = plass
weigh-no-fit = benkeplaten får ikke plass på denne platen: veid som ønsket
weigh-region = region
weigh-balance = tyngdepunkt
weigh-balance-is = { $end } fra enden, { $side } fra siden
weigh-mass = veier
weigh-mass-is = høyst { $high }: løft etter dette tallet; trolig { $likely }, minst { $low }
weigh-size = mål
weigh-size-is = { $length } × { $width } × { $thick }, { $area }
weigh-tilt = vippe den opp

# On a telephone
phone-plan = plan { $plan }
phone-contents = Innhold
phone-light = Lyst eller mørkt
phone-back = Tilbake
phone-next = Neste
phone-bar = Veien gjennom arket
phone-clear = Fjern alle haker på denne telefonen
phone-forgets = Dette programmet glemmer hakene når det lukkes. Åpne filen i en nettleser.
